"""Decoration against what stands in print, and what is only a habit."""

import pytest

from handout_engine.amounts.sources import PRACTICE, SOURCES
from worked import said, work


@pytest.mark.parametrize(("kind", "wraps"), [("knots", "2"), ("bullions", "7")])
def test_the_usual_wraps_are_called_a_habit(kind, wraps):
    """Common practice, no source."""
    working = work("knots", kind=kind)
    assert said(working, "turns") == wraps
    assert working.values["turns"].basis == PRACTICE


def test_knots_are_cautioned_about_as_small_parts():
    """16 CFR 1501: what fits a cylinder 31.7 mm wide is small; for clothing advice, not law."""
    working = work("knots")
    assert SOURCES["cfr-1501"] in working.sources
    assert "advice, not law" in SOURCES["cfr-1501"].detail
    (caution,) = [each for each in working.cautions if each.key == "worked-knots"]
    assert "pull at each" in caution.text


@pytest.mark.parametrize(
    ("across", "count"), [("2 in", "1"), ("4 in", "1"), ("4 1/16 in", "2"), ("7 1/2 in", "2")]
)
def test_a_hoop_is_moved_only_when_its_field_is_passed(across, count):
    """Common practice, no source: a field of 4 in overlapping by 1/2 in covers 7 1/2 in in two."""
    working = work("hoop-placements", across=across, field_across="4 in", frame="0 in",
                   overlap="1/2 in")  # fmt: skip
    assert said(working, "placements_across") == count

"""Casings folded by `pleat_folding`, and elastic closed into a ring step by step."""

from fractions import Fraction
from random import Random

import pytest

from handout_engine.amounts.lengths import Length, inches
from handout_engine.amounts.refusals import RefusalError
from pleat_folding import fold
from worked import length, refusal, said, steps, work

SIXTEENTH = Fraction(127, 80)
FIELDS = {"body": (48, 480), "garment_edge": (60, 900), "elastic": (2, 16), "ease": (1, 6),
          "turn": (1, 8), "heading": (0, 24), "overlap": (4, 16)}  # fmt: skip


def test_a_waist_by_hand():
    """Body 20 in, 9/10 of it is 18 in, and 1/2 in of overlap: cut 18 1/2 in.

    Elastic 1/4 in and 1/8 in of ease need a casing of 3/8 in; with 1/4 in turned under 5/8 in are
    added above the edge. An edge of 30 in laid flat is 15 in spread and 9 in at rest.
    """
    working = work("elastic-casing", body="20 in", share="0.9", garment_edge="30 in")
    names = ("elastic_cut", "casing", "casing_allowance", "flat_at_rest", "flat_spread")
    assert [said(working, name) for name in names] == [
        "18 1/2 in", "3/8 in", "5/8 in", "9 in", "15 in",
    ]  # fmt: skip
    assert working.named["fullness"].amount == Fraction(3, 2)
    assert working.pieces == ()


def test_a_strip_by_hand():
    """1/4 + 1/8 in and two turns of 1/4 in: 7/8 in wide. 30 in and two ends of 1/4 in: 30 1/2."""
    working = work("elastic-casing", made="a strip sewn on", garment_edge="30 in")
    assert said(working, "strip_width") == "7/8 in"
    assert said(working, "strip_length") == "30 1/2 in"


def random_casings(made):
    """A thousand casings as written and worked; those that are refused are left out."""
    random = Random(1120)
    for _ in range(1000):
        written = {
            name: Length(random.randint(*bounds) * SIXTEENTH) for name, bounds in FIELDS.items()
        }
        written |= {"share": Fraction(random.randint(70, 100), 100), "made": made}
        try:
            yield written, work("elastic-casing", **written)
        except RefusalError:
            continue


def test_a_thousand_turned_edges_hold_their_elastic():
    """From the finished garment up: over the top fold, down to the inner fold, and under."""
    worked = 0
    for written, working in random_casings("turned from the edge"):
        worked += 1
        allowance = length(working, "casing_allowance").mm
        garment = inches(20).mm
        top, inner = garment, garment + allowance - written["turn"].mm
        outside, inside, under = fold(garment + allowance, [top, inner]).stretches
        depth = outside[1] - inside[1]
        assert depth == (written["heading"] + written["elastic"] + written["ease"]).mm
        assert length(working, "turned_depth").mm == depth
        assert min(under) >= inside[1] and max(under) <= outside[1], "the turn lies inside"
    assert worked > 400


def test_a_thousand_strips_are_as_wide_as_their_elastic_and_its_ease():
    worked = 0
    for written, working in random_casings("a strip sewn on"):
        worked += 1
        width, turn = length(working, "strip_width").mm, written["turn"].mm
        under, face, other = fold(width, [turn, width - turn]).stretches
        assert abs(face[1] - face[0]) == (written["elastic"] + written["ease"]).mm
        assert abs(under[1] - under[0]) == abs(other[1] - other[0]) == turn
        strips, each = working.named["strips"].whole, length(working, "strip_length")
        joined = each * strips - 2 * length(working, "strip_allowance") * (strips - 1)
        assert joined - 2 * length(working, "strip_allowance") == written["garment_edge"]
    assert worked > 400


def test_a_thousand_pieces_of_elastic_close_into_a_ring_that_goes_round_the_body():
    for written, working in random_casings("turned from the edge"):
        ring = length(working, "elastic_cut") - written["overlap"]
        assert ring == written["body"] * written["share"] <= written["body"]
        opened = length(working, "opens_to")
        assert written["body"] <= opened <= written["garment_edge"]
        assert opened <= ring * working.named["stretch"].amount


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"body": "18 in", "garment_edge": "17 in"}, "use at least 18 in"),
        ({"body": "18 in", "stretch": "1", "share": "0.9"},
         "use at least 1.12, or more of the elastic"),
        ({"body": "18 in", "garment_edge": "22 in", "must_pass": "24 in"},
         "use a garment_edge of at least 24 in"),
        ({"body": "18 in", "garment_edge": "50 in", "must_pass": "34 in", "share": "1"},
         "use a stretch of at least 1.89, or more of the elastic"),
        ({"elastic": "1/8 in", "ease": "1/16 in", "turn": "1/4 in"}, "at most 3/16 in (4 mm)"),
    ],
)  # fmt: skip
def test_the_refusals_name_the_nearest_that_can_be_sewn(written, sentence):
    assert sentence in refusal("elastic-casing", **written)


def test_what_the_refusals_name_is_enough():
    assert work("elastic-casing", body="18 in", stretch="1.12", share="0.9")
    assert work("elastic-casing", body="18 in", garment_edge="50 in", must_pass="34 in",
                share="1", stretch="1.89")  # fmt: skip


def test_a_heading_is_stitched_in_two_rows_and_a_long_strip_is_joined():
    assert any("second row 1/2 in below" in each for each in
               steps(work("elastic-casing", heading="1/2 in")))  # fmt: skip
    assert not any("second row" in each for each in steps(work("elastic-casing")))
    long = work("elastic-casing", made="a strip sewn on", garment_edge="60 in")
    assert any("Join 2 for each casing" in each for each in steps(long))


def test_it_cautions_about_tight_elastic():
    assert "tight-elastic" in {caution.key for caution in work("elastic-casing").cautions}


def test_laid_flat_it_opens_to_half_of_what_edge_and_elastic_give():
    """18 in x 0.95 = 17.1 in of elastic: 1.8 times that is more than the edge, 1.2 times less."""
    assert said(work("elastic-casing"), "flat_open") == "12 in"
    working = work("elastic-casing", stretch="1.2")
    assert length(working, "opens_to") == inches(Fraction(18 * 95 * 12, 1000))
    assert length(working, "flat_open") == inches(Fraction(18 * 95 * 6, 1000))


def test_the_gap_is_three_times_as_wide_as_the_elastic():
    assert said(work("elastic-casing", elastic="1/2 in"), "gap") == "1 1/2 in"

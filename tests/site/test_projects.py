"""The projects as they are published: what their blocks say of each other agrees at every size."""

from functools import cache
from pathlib import Path

import pytest

from handout_engine.amounts.lengths import ZERO
from handout_engine.bodies.measures import LENGTHS
from handout_site.reading import Terms, read_handout

PROJECTS = Path(__file__).parents[2] / "handouts" / "projects"


@cache
def page(name, size):
    """The page of a project, its garment made to a size."""
    text = (PROJECTS / f"{name}.md").read_text(encoding="utf-8")
    body = text.split("---\n", 2)[2]
    return read_handout(body, name, Terms(fit={"size": size})).page


def length(name, size, value):
    block, _, key = value.partition(".")
    return page(name, size).workings[block].named[key].length


GOWN_SIZES = ("50", "56", "62", "68", "74", "80")
ALL = tuple(LENGTHS)


@pytest.mark.parametrize("size", GOWN_SIZES)
def test_the_gowns_sleeve_is_cut_for_its_ruffle_and_its_yoke_out_of_its_tucks(size):
    gown = page("tucked-day-gown", size)
    assert not gown.problems

    def said(value):
        return length("tucked-day-gown", size, value)

    assert said("garment.sleeve_trim") == said("ruffle.hangs")
    assert said("tucks.tucked_width") == said("garment.front_yoke_across")
    assert said("tucks.panel_cut_length") >= said("garment.front_yoke_length")
    assert [each.name for each in gown.workings["garment"].pieces if each.worked] == ["front yoke"]
    # every tuck lies in the yoke between its armholes
    assert said("tucks.span") < said("garment.yoke_edge")


@pytest.mark.parametrize("size", ALL)
def test_the_dress_goes_into_its_yoke_by_the_tucks_of_its_panel(size):
    dress = page("tucked-summer-dress", size)
    assert not dress.problems

    def said(value):
        return length("tucked-summer-dress", size, value)

    taken = said("skirt.panel_cut_width") - said("skirt.tucked_width")
    assert said("garment.skirt_top") - taken == said("garment.yoke_edge")
    assert said("skirt.panel_cut_width") == said("garment.skirt_front_across")
    assert said("skirt.panel_cut_length") == said("garment.skirt_front_length")
    assert said("collar-tucks.tucked_width") == said("collar.upper_collar_across")
    assert float(said("collar.collar_neck")) == pytest.approx(
        float(said("garment.neck_edge")), abs=0.1
    )
    made = [piece for each in dress.workings.values() for piece in each.pieces]
    worked = [piece.name for piece in made if piece.worked]
    assert worked == ["skirt front", "upper collar"]


@pytest.mark.parametrize("size", ALL)
def test_the_dress_s_fewer_deeper_tucks_release_as_much_as_its_own(size):
    text = (PROJECTS / "tucked-summer-dress.md").read_text(encoding="utf-8")
    fewer = "Four of 1/2 in, 1 in from stitching to stitching, release as much as eight of 1/4 in"
    assert fewer in text
    for own, other in (("tucks: 8\ntuck_depth: 1/4 in", "tucks: 4\ntuck_depth: 1/2 in"),
                       ("tuck_spacing: 1/2 in", "tuck_spacing: 1 in")):  # fmt: skip
        assert text.count(own) == 1
        text = text.replace(own, other)
    deeper = read_handout(text.split("---\n", 2)[2], "deeper", Terms(fit={"size": size})).page
    assert not deeper.problems
    top = deeper.workings["garment"].named["skirt_top"].length
    assert top == length("tucked-summer-dress", size, "garment.skirt_top")


@pytest.mark.parametrize("size", ALL[1:])
def test_the_lattice_lies_between_neck_and_yoke_seam(size):
    dress = page("lattice-yoke-dress", size)
    assert not dress.problems

    def said(value):
        return length("lattice-yoke-dress", size, value)

    below = said("lattice.panel_depth") - said("garment.centre_panel_hollow")
    assert below == said("garment.front_yoke_depth") > ZERO
    assert said("lattice.panel_width") < 2 * said("garment.neck_half_width")

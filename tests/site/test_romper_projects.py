"""Projects round the romper, the bib and the towel: what their blocks say of each other agrees."""

from functools import cache
from pathlib import Path

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.bodies.measures import LENGTHS
from handout_site.reading import Terms, read_handout

HANDOUTS = Path(__file__).parents[2] / "handouts"
ALL = tuple(LENGTHS)


@cache
def page(name, size=None):
    """A handout worked out, its garment made to a size where it has one."""
    text = (HANDOUTS / f"{name}.md").read_text(encoding="utf-8")
    body = text.split("---\n", 2)[2]
    return read_handout(body, name, Terms(fit={"size": size} if size else {})).page


def said(found, value):
    block, _, key = value.partition(".")
    return found.workings[block].named[key].length


@pytest.mark.parametrize("size", ALL)
def test_everything_worked_on_the_romper_fits_its_edges(size):
    romper = page("projects/ruffled-romper", size)
    assert not romper.problems
    for one, other in (
        ("band.opening", "garment.front_edge"),
        ("band.band_width", "garment.front_overlap"),
        ("band.beyond_centre", "garment.beyond_centre"),
        ("buttons.opening", "garment.front_edge"),
        ("piping.seam_length", "garment.neck_with_bands"),
        ("ruffle.edge", "garment.shoulder_ruffle_edge"),
    ):
        assert said(romper, one) == said(romper, other), one
    # what is cut out of the front leaves the band's seam on the line of its edge
    edge = said(romper, "garment.cut_away") + said(romper, "band.seam")
    assert edge == said(romper, "garment.beyond_centre")
    # the strips of the band reach into neck and tongue
    more = said(romper, "band.band_length") - said(romper, "garment.front_edge")
    assert more == 2 * said(romper, "band.end_allowance")
    assert said(romper, "ruffle.edge") < said(romper, "garment.armhole_edge")


@pytest.mark.parametrize("size", ALL)
@pytest.mark.parametrize("name", ["garments/romper", "garments/baby-jacket",
                                  "projects/burp-cloth-set"])  # fmt: skip
def test_a_page_can_be_made_at_every_size(name, size):
    assert not page(name, size).problems


def test_the_bands_pieces_are_bought_once():
    """Bands, piping and ruffles are cloths of their own, beside what the romper is cut from."""
    workings = page("projects/ruffled-romper", "68").workings
    cloths = [piece.cloth for each in workings.values() for piece in each.pieces]
    assert set(cloths) == {"cloth", "band cloth", "edge cloth", "piping cloth", "ruffle cloth"}
    names = [piece.name for piece in workings["garment"].pieces]
    assert names == ["romper front", "romper back", "leg band", "crotch facing"]


def test_the_bib_of_the_set_is_bound_all_round():
    found = page("projects/burp-cloth-set", "68")
    assert said(found, "binding.edge") == said(found, "garment.edge_length")


def test_both_rows_of_the_towel_run_from_side_to_side_above_one_another():
    found = page("projects/hemstitched-towel")
    assert not found.problems
    assert said(found, "row.edge") == said(found, "towel.width")
    assert said(found, "row.from_edge") > said(found, "towel.hem_depth")
    assert said(found, "row.row_edge") == said(found, "towel.width") - 2 * said(
        found, "towel.side_hem"
    )


def test_the_motifs_of_the_cover_stand_in_its_border():
    found = page("projects/quilted-nap-cover")
    assert not found.problems
    assert said(found, "motif.edge") == said(found, "cover.top_width")
    assert said(found, "motif.other_side") == said(found, "cover.top_length")
    reach = said(found, "motif.above") + said(found, "motif.motif_height")
    assert Length(0) < reach < said(found, "cover.border")


def test_the_motifs_of_the_cover_are_marked_from_its_raw_edges():
    """The top is raw while it is marked: first and last motif lie alike from its two raw edges.

    Put back from the raw edge to the finished one, the first gap begins at the corner's square.
    """
    found = page("projects/quilted-nap-cover")
    motif, allowance = said(found, "motif.motif"), said(found, "cover.seam_allowance")
    sides = (("raw_width", "first_gap"), ("raw_length", "second_gap"))
    for chart, (raw, gap) in zip(found.workings["motif"].charts, sides, strict=True):
        centres = [row[1] for row in chart.rows]
        assert centres[0] + centres[-1] == said(found, f"cover.{raw}")
        beside = centres[0] - motif / 2 - said(found, f"motif.{gap}")
        assert beside == allowance + said(found, "cover.border")

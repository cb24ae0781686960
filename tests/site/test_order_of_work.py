"""Every project read once from top to bottom, as the order of work that its reader follows.

The steps of its blocks are taken in the order in which the page prints them. Nothing may be sewn to
a piece that a later step cuts, no step may be printed twice, and what the page says of an edge and
what its steps do there must agree.
"""

from __future__ import annotations

import re
from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from handout_engine.working.workings import Working
from handout_site.reading import Handout, Terms, read_handout

PROJECTS = Path(__file__).parents[2] / "handouts" / "projects"
NAMES = sorted(path.stem for path in PROJECTS.glob("*.md") if path.stem != "index")
SEWN_ON_TO = ("lattice-yoke-dress", "ruffled-romper", "tucked-day-gown", "tucked-summer-dress")
"""The projects in which other blocks sew something to the pieces that the garment's steps cut."""
PRINTED = ("steps", "begin", "finish")
every_project = pytest.mark.parametrize("name", NAMES)


@cache
def handout(name: str) -> Handout:
    text = (PROJECTS / f"{name}.md").read_text(encoding="utf-8")
    return read_handout(text.split("---\n", 2)[2], name, Terms())


def steps_shown(working: Working, part: str) -> list[str]:
    """The steps of one part, as they are written."""
    first, rest = working.steps[: working.put_by], working.steps[working.put_by :]
    return [step.text.template for step in {"steps": working.steps, "begin": first,
                                            "finish": rest}[part]]  # fmt: skip


@cache
def order(name: str) -> list[tuple[str, str]]:
    """Block and step, in the order in which the page prints them."""
    page = handout(name).page
    assert not page.problems
    found = []
    for block in page.blocks:
        own = block.of or block.name
        for part in PRINTED:
            if own in page.workings and part in block.show:
                found.extend((own, step) for step in steps_shown(page.workings[own], part))
    return found


def place(name: str, block: str, words: str) -> int:
    """Where the only step of a block with these words stands in the order of work."""
    (found,) = [number for number, (own, step) in enumerate(order(name))
                if own == block and words in step]  # fmt: skip
    return found


def test_there_are_nine_projects():
    assert len(NAMES) == 9


@every_project
def test_no_step_is_printed_twice_and_none_that_is_begun_is_left_out(name):
    assert [step for step, times in Counter(order(name)).items() if times > 1] == []
    page = handout(name).page
    for block in page.blocks:
        own = block.of or block.name
        shown = {part for each in page.blocks if (each.of or each.name) == own
                 for part in each.show}  # fmt: skip
        if "finish" in shown:
            assert "begin" in shown, own
            assert "steps" not in shown, own


@pytest.mark.parametrize("name", SEWN_ON_TO)
def test_a_piece_is_cut_before_anything_is_sewn_to_it(name):
    """The garment's own cutting stands before the first step that sews something on to it."""
    printed = order(name)
    cutting = [n for n, (own, step) in enumerate(printed)
               if own == "garment" and step.startswith("Cut ")]  # fmt: skip
    sewing = [n for n, (own, step) in enumerate(printed)
              if re.search(r"\bto (?:the front|its side of the opening|the neck|the yoke)\b|"
                           r"\bSew ruffle and edge|Pull the slit", step)]  # fmt: skip
    assert cutting and sewing
    assert max(cutting) < min(sewing)


def test_the_romper_s_front_is_opened_before_a_band_is_sewn_to_it():
    romper = "ruffled-romper"
    opened = place(romper, "garment", "side of the centre, down to {seam_allowance} above")
    sewn = place(romper, "band", "Sew the raw edge of the outer half of each band")
    lapped = place(romper, "garment", "Lap the bands. Turn the tongue")
    assert opened < sewn < lapped
    # its ends stay raw, as the page says, and nothing sews across them or cuts the front again
    assert "Both ends of a band stay raw to the end" in (PROJECTS / f"{romper}.md").read_text(
        encoding="utf-8"
    )
    of_band = " ".join(step for own, step in order(romper) if own == "band")
    assert "across both ends" not in of_band
    assert "Cut {seam} from that line" not in of_band
    assert "Both its ends stay raw" in of_band


@pytest.mark.parametrize(
    ("block", "made", "sewn_on"),
    [
        ("piping", "fold the strip over it", "Baste it to the right side of one piece"),
        ("ruffle", "run two rows of long stitches", "Match the quarter marks"),
        ("band", "Baste the firm cloth", "Sew the raw edge of the outer half"),
    ],
)
def test_what_the_romper_wears_is_made_up_and_put_by_before_it_is_sewn_on(block, made, sewn_on):
    romper = "ruffled-romper"
    put_by = [place(romper, each, words) for each, words in
              (("piping", "fold the strip over it"), ("ruffle", "run two rows of long stitches"),
               ("band", "Baste the firm cloth"))]  # fmt: skip
    assert place(romper, block, made) < place(romper, block, sewn_on)
    assert max(put_by) < place(romper, block, sewn_on)


@pytest.mark.parametrize(
    ("name", "block", "worked", "cut"),
    [
        ("tucked-day-gown", "tucks", "Press the tucks", "Cut the front yoke whole"),
        ("tucked-summer-dress", "skirt", "Press the sewn part", "out of the cloth that was tucked"),
    ],
)
def test_a_piece_is_cut_out_of_worked_cloth_once_and_afterwards(name, block, worked, cut):
    assert place(name, block, worked) < place(name, "garment", cut)
    text = (PROJECTS / f"{name}.md").read_text(encoding="utf-8").partition("## Sew")[2]
    assert not re.search(r"\bcut the (?:front yoke|skirt front|skirt back)\b", text, re.IGNORECASE)


@pytest.mark.parametrize("name", ["tucked-day-gown", "tucked-summer-dress", "lattice-yoke-dress"])
def test_the_placket_is_made_when_the_skirt_back_is_cut_and_marked(name):
    cut = place(name, "garment", "pair of back yokes")
    marked = place(name, "garment", "On the skirt back mark the slit")
    made = place(name, "placket", "Pull the slit straight")
    joined = place(name, "garment", "Pin each half of the skirt back")
    assert cut < marked < made < joined


def test_the_tucks_of_the_skirt_front_are_stitched_once():
    stitching = [step for _, step in order("tucked-summer-dress") if step.startswith("Stitch ")]
    assert len(stitching) == 1


def test_the_collar_is_made_before_it_is_sewn_to_the_neck():
    dress = "tucked-summer-dress"
    tucked = place(dress, "collar-tucks", "Press the tucks")
    cut = place(dress, "collar", "Cut upper and under collar")
    assert tucked < cut < place(dress, "collar", "Lay a bias strip over the collar")


def test_the_lattice_goes_on_to_the_yoke_and_not_behind_an_opening():
    dress = "lattice-yoke-dress"
    assert all("behind a faced opening" not in step for _, step in order(dress))
    assert place(dress, "garment", "Cut the front yoke") < place(dress, "garment", "Pin the skirt")


def test_the_bonnet_is_cut_before_its_edging_is_whipped_on():
    bonnet = "puffed-bonnet"
    banded = place(bonnet, "band", "square its ends")
    cut = place(bonnet, "bonnet", "Cut the straight piece")
    edged = place(bonnet, "edging", "Trim the free allowance of the entredeux")
    assert banded < cut < edged < place(bonnet, "bonnet", "The front edge is finished already")


def test_the_cover_is_embroidered_before_it_is_layered():
    cover = "quilted-nap-cover"
    top = place(cover, "cover", "Sew on the two side borders")
    work = place(cover, "motif", "Work the motifs one by one")
    assert top < work < place(cover, "cover", "the batting on it")


def test_the_towel_is_rinsed_when_both_rows_are_sewn():
    towel = "hemstitched-towel"
    assert place(towel, "row", "Stop at the end") < place(towel, "towel", "Rinse the starch out")


def test_the_bib_is_bound_before_its_closing_is_set():
    bib = "burp-cloth-set"
    quilted = place(bib, "garment", "quilt them together")
    bound = place(bib, "binding", "fell it by hand")
    assert quilted < bound < place(bib, "garment", "Set the closing")


def test_the_slip_s_neck_is_slit_and_its_binding_has_ends():
    """A binding joined to a ring would close the opening that the head passes."""
    page = handout("christening-slip").page
    assert page.workings["neck"].inputs["ends"].amount == "open"
    steps = " ".join(step for own, step in order("christening-slip") if own == "neck")
    assert "tail free" not in steps

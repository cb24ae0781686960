"""How a casing is sewn and its elastic drawn in."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.working.workings import Step
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """The elastic round the body, before any is cut."""
    sheet.sample.append(
        Step(
            sentence("Mark {ring} on the elastic, pull it out by hand as far as it goes, and let "
                     "it go.", ring=sheet["ring"]),
            sentence(
                "pulled out it is at least {opened} long, and at rest {ring} again. Hold it round "
                "the body at that mark: it stays up and leaves no line. Write your own share and "
                "stretch if it does not.",
                opened=sheet["opens_to"],
                ring=sheet["ring"],
            ),
        )
    )  # fmt: skip


def add_steps(sheet: Worksheet, turned: bool) -> None:
    """From the casing to the elastic."""
    add_washing_step(sheet)
    if turned:
        _add_turned_steps(sheet)
    else:
        _add_strip_steps(sheet)
    sheet.step(
        (
            "Cut {elastic_cut} of elastic. "
            if sheet["make"].whole == 1
            else "Cut {make} pieces of elastic, each {elastic_cut} long. "
        )
        + "Mark {overlap} at one end, and draw it through the "
        "casing on a bodkin, the other end pinned to the garment. It must not twist."
    )
    sheet.step(
        "Lay the ends {overlap} over one another, sew a square and across it, and let the elastic "
        "slip in.",
        "closed and at rest, laid flat, it is {flat_at_rest} long.",
    )
    sheet.step(
        "Close the opening. Pull the edge out to its full length a few times, so that the cloth "
        "spreads evenly, and sew through casing and elastic at each seam, so that it cannot roll.",
        "laid flat the edge is {flat_at_rest} at rest and opens to {half}.",
        half=sheet["opens_to"].length / 2,
    )


def _add_turned_steps(sheet: Worksheet) -> None:
    heading = bool(sheet["heading"].length)
    sheet.step(
        "Cut the garment {casing_allowance} above the finished edge. Sew its seams first, so that "
        "the edge is closed.",
        "laid flat the edge is {flat_spread}.",
    )
    sheet.step(
        "Turn {turn} under all round and press. Then turn the rest down along the finished edge.",
        "from the upper fold to the inner fold it is {turned_depth}.",
    )
    sheet.step(
        "Stitch close to the inner fold, leaving {gap} open beside a seam."
        + (" Stitch a second row {heading} below the upper fold." if heading else ""),
        "between the rows there is room for elastic of {elastic}."
        if heading
        else "between fold and stitching there is room for elastic of {elastic}.",
    )


def _add_strip_steps(sheet: Worksheet) -> None:
    joined = sheet["strips"].whole > 1
    sheet.step(
        "Cut the strips {strip_width} wide and {strip_length} long across the cloth."
        + (" Join {strips} for each casing with {strip_allowance} of seam." if joined else ""),
        "each strip is {whole_strip} long.",
    )
    sheet.step(
        "Turn {turn} under along both long edges and {strip_allowance} at both ends, and press.",
        "the strip is {casing} wide and {edge} long.",
    )
    sheet.step(
        "Pin it to the wrong side of the garment where the elastic is to lie, its ends meeting at "
        "a seam, and stitch close to both long folds. The ends stay open, to draw the elastic in.",
        "between the rows there is room for elastic of {elastic}.",
    )

"""The sample, steps, notions and cautions of a lattice panel, in the order of sewing."""

from __future__ import annotations

from handout_engine.amounts.values import sentence
from handout_engine.families.lattice.lattice_panel_measures import ALTERNATE, NONE, Lattice
from handout_engine.working.cautions import KNOTS_AS_SMALL_PARTS, OPEN_LATTICE, PINS_AND_IRON
from handout_engine.working.workings import Step, Supply
from handout_engine.working.worksheet import Worksheet


def add_sample(sheet: Worksheet) -> None:
    """One tube before all of them, and a small lattice for the size of its openings."""
    parts = {"strip": sheet["strip_width"], "seam": sheet["seam_in_tube"],
             "tube": sheet["tube_width"], "gap": sheet["gap"]}  # fmt: skip
    sheet.sample.append(
        Step(
            sentence(
                "Sew, turn and press one short tube from a bias strip {strip} wide, {seam} "
                "allowance, stretching the strip a little as you sew.",
                **parts,
            ),
            sentence(
                "pressed flat it is {tube} wide. Bias narrows when it is pulled through: if the "
                "tube is narrower, cut the strips wider by twice what is missing.",
                **parts,
            ),
        )
    )
    sheet.sample.append(
        Step(
            sentence("Pin three such tubes each way, {gap} apart, over a scrap.", **parts),
            sentence(
                "put a fingertip to an opening. Where the panel will be within reach of hands or "
                "feet it should not go in; make the gap smaller until it does not.",
                **parts,
            ),
        )
    )


def add_supplies(sheet: Worksheet, lattice: Lattice) -> None:
    """Notions, and the cautions they bring."""
    sheet.supplies.append(
        Supply("soluble stabiliser or thin paper to weave on, larger than the panel all round")
    )
    sheet.have("fine thread to match", "fine pins", "a tube turner")
    sheet.supplies.append(
        Supply("binding or cord for the finished edge, without joins or seams",
               sheet["edge_length"])
    )  # fmt: skip
    sheet.cautions.extend((OPEN_LATTICE, PINS_AND_IRON))
    if lattice.knots:
        sheet.supplies.append(Supply("stranded cotton or fine cord for the knots"))
        sheet.cautions.append(KNOTS_AS_SMALL_PARTS)


def add_steps(sheet: Worksheet, lattice: Lattice) -> None:
    """From the placement sheet to the finished edge."""
    _mark(sheet)
    _make_tubes(sheet, lattice)
    _weave(sheet)
    _fasten(sheet, lattice)
    _set_in(sheet)


def _mark(sheet: Worksheet) -> None:
    if sheet["shrinkage_length"].amount or sheet["shrinkage_width"].amount:
        sheet.step("Wash, dry and press the cloth as the garment will be washed; straighten it.")
    sheet.step(
        "Print the placement sheet at its actual size. Lay the stabiliser over it and trace the "
        "outline, every tube with its name, the cross at the centre and the places of the knots.",
        "on the print the two squares measure 5 cm and 2 in exactly, and the outline is "
        "{panel_width} wide and {panel_depth} deep.",
    )


def _make_tubes(sheet: Worksheet, lattice: Lattice) -> None:
    sheet.step(
        "Cut a piece {across} across the cloth and {along} along the selvage. From one corner mark "
        "{edge_step} again and again along both edges, join the marks by lines on the bias, and "
        "cut the strips of the table, {strip_width} wide.",
        "{strips} strips, each {strip_width} wide.",
    )
    sheet.step(
        "Fold each strip in half along its length, right sides together, and sew {seam_in_tube} "
        "from the raw edges with a short stitch, stretching a little. Turn it right side out. "
        "Press it flat with the seam along one edge.",
        "each tube is {tube_width} wide from end to end; press and ease it until it is.",
    )
    sheet.step(
        "Square one end of each tube and cut the pieces of the table, {tubes} in all, with their "
        "names pinned to them.",
        "the longest is {longest_tube}; all together they are {tube_total}.",
    )
    if any(tube.edge_only for _, tube in lattice.named):
        sheet.step(
            "{edge_tubes} of them enter by an edge only. Cut them too, or leave out those that the "
            "finished edge will cover."
        )


def _weave(sheet: Worksheet) -> None:
    sheet.step(
        "Pin all rising tubes (R) to the tracing, seams to one side, by both ends outside the "
        "outline. Start with the one through the centre and work outward.",
        "between two tubes it is {gap} everywhere, square to them.",
    )
    sheet.step(
        "Weave the falling tubes (F) in, the one through the centre first: at the centre it goes "
        "under, then over and under by turns; each next tube the other way. Pin the ends.",
        "along a tube a crossing comes every {crossing_spacing}, and every tube lies on its "
        "tracing.",
    )


def _fasten(sheet: Worksheet, lattice: Lattice) -> None:
    sheet.step(
        "Baste through tubes and stabiliser just outside the outline, then stitch once more "
        "a needle's width outside it with a short stitch. Take the pins out and count them."
    )
    if lattice.knots:
        which = sheet["knots"].amount
        how = (
            "at every second crossing, where the rising tube lies over,"
            if which == ALTERNATE
            else "at every crossing"
        )
        sheet.step(
            f"Knot the tubes to each other {how} as marked: {{knot_count}} knots, none nearer to "
            "the outline than {knot_clearance}. Sew each through all layers and bury its ends.",
            "pull at each knot; none slips.",
        )
    if sheet["knots"].amount == NONE or not lattice.knots:
        sheet.step(
            "Catch the tubes to each other at each of the {crossings} crossings with two small "
            "stitches from the wrong side, so that the weave cannot shift."
        )


def _set_in(sheet: Worksheet) -> None:
    sheet.step(
        "Trim the tube ends {margin} outside the outline, and tear or wash the stabiliser away "
        "from inside it. Let the panel dry flat.",
        "the panel is {panel_width} wide and {panel_depth} deep inside its stitching.",
    )
    sheet.put_by()
    sheet.step(
        "Set the panel behind a faced opening of the same outline, {edge_length} once round, its "
        "stitching just inside the fold, and edge-stitch twice; or bind its edge and apply it. "
        "Cover the tube ends on the wrong side.",
        "no tube end shows or can be pulled out.",
    )

"""What all pleated panels share: their inputs, the rules of their gaps, cut panels and sample."""

from __future__ import annotations

from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import ZERO, Length, inches
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE, Basis
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.cloth.cloth import Cloth, ClothInputs, note_usable_width
from handout_engine.shared.folds import FoldedPanel, Lie
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE, HemInputs, note_hem
from handout_engine.shared.marking import marking_chart
from handout_engine.shared.strips import plan_strips
from handout_engine.working.cautions import LONG_HEM, PINS_AND_IRON, THIN_COTTON
from handout_engine.working.workings import Grain, Piece, Seam
from handout_engine.working.worksheet import Worksheet

OPEN, RING = "open", "ring"
REFUSED, ALLOWED = "refused", "allowed"
USUAL_MARGIN = inches("1/4")
TAPE = Tape(finest=32)
LINE_NAMES = {
    Lie.LEFT: ("fold", "inner fold", "placement line"),
    Lie.RIGHT: ("placement line", "inner fold", "fold"),
}


class PleatedInputs(HemInputs, ClothInputs):
    """The inputs of every pleated piece: its finished width, its length, its edges."""

    finished_width = length(
        "finished width",
        "Width once pleated, between the seams, or all round in a ring.",
        "20 in",
        ("4 in", "5 yd"),
    )
    pleated_length = length(
        "finished length",
        "From the seam that holds the pleats to the finished hem.",
        "12 in",
        ("1 in", "60 in"),
    )
    hem = choice(
        "hem",
        "Double turned, single turned, rolled, or finished already.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    top_allowance = length(
        "top allowance",
        "Allowance of the seam that holds the pleats.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    side_allowance = length(
        "side allowance",
        "Allowance at each open side edge.",
        "1/4 in",
        ("0 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "How many such pieces are made.", 1, 50)


class PleatInputs(PleatedInputs):
    """The inputs of pleats that are folded from one width of joined cloth."""

    ends = choice(
        "ends",
        "Open when the sides are sewn into seams, ring when they join in a round.",
        OPEN,
        RING,
    )
    join_allowance = length(
        "join allowance",
        "Allowance of a seam between widths of cloth.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    overlap = choice(
        "overlap",
        "Whether the folded cloth of one pleat may lie over that of the next: refused, unless "
        "you want it to.",
        REFUSED,
        ALLOWED,
        group=SEWING,
    )

    @property
    def edge(self) -> Length:
        """The allowance at both ends of the joined cloth; none in a ring."""
        return self.side_allowance if self.ends == OPEN else ZERO


def check_gaps(inputs: PleatInputs, panel: FoldedPanel) -> None:
    """Refuse pleats whose folded cloth has no room behind the pleats beside them.

    Raises RefusalError with the greatest depth that fits.
    """
    gaps = panel.gaps(inputs.edge)
    fitting = [gap.length / (2 if _both_lie(panel, gap.before) else 1) for gap in gaps[1:-1]
               if gap.covered]  # fmt: skip
    for gap in gaps[1:-1]:
        if gap.crowded and inputs.overlap == REFUSED:
            lying = "two depths lie" if _both_lie(panel, gap.before) else "one depth lies"
            shallow = at_most(inputs, "depth", min(fitting), "a depth of at most {}")
            raise RefusalError(
                f"{lying} behind {TAPE.say(gap.length)} of pleat, {TAPE.say(gap.covered)} in all, "
                f"so the folds would overlap; use {ways(shallow, f'overlap: {ALLOWED}')}",
                "depth",
            )
    for gap in (gaps[0], gaps[-1]):
        if gap.crowded:
            shallow = at_most(inputs, "depth", gap.length, "a depth of at most {}")
            raise RefusalError(
                f"the outermost pleat has {TAPE.say(gap.length)} to the seam and lies "
                f"{TAPE.say(gap.covered)} behind it, so it would be caught in the seam; use "
                f"{ways(shallow, 'a wider panel')}",
                "depth",
            )


def _both_lie(panel: FoldedPanel, before: int) -> bool:
    """Whether the folds at both sides of a gap lie over it."""
    return panel.folds[before - 1].lies is Lie.RIGHT and panel.folds[before].lies is Lie.LEFT


def note_margin(sheet: Worksheet, inputs: PleatInputs, given: Length | None) -> Value:
    """Note the plain margin at each side; raises RefusalError when it leaves nothing to pleat."""
    label = "plain margin at each side"
    usual = USUAL_MARGIN if inputs.ends == OPEN else ZERO
    margin = usual if given is None else given
    if 2 * margin >= inputs.finished_width:
        raise RefusalError(
            f"margins of {TAPE.say(margin)} leave nothing to pleat; use less than "
            f"{TAPE.no_more(inputs.finished_width / 2)}",
            "margin",
        )
    return sheet.note("pleat_margin", label, margin, "", basis=PRACTICE if given is None else GIVEN)


def note_flat(sheet: Worksheet, inputs: PleatInputs, folds: Value, basis: Basis) -> Value:
    """Note what the pleats take, and the joined cloth before pleating; returns the latter.

    `folds` is how often the cloth is doubled: once in a knife pleat, twice in a box pleat.
    """
    take_up = sheet.note("take_up", "cloth taken by the pleats",
                         2 * folds.whole * sheet["pleat_depth"].length,
                         "2 × {pleat_depth} × {folds}", basis=basis, folds=folds)  # fmt: skip
    opened = inputs.ends == OPEN
    edge = sheet.note("edge", "allowance at each end of the joined cloth", inputs.edge,
                      "{side_allowance}" if opened else "",
                      basis=GEOMETRY if opened else GIVEN)  # fmt: skip
    sheet.note("pleated_width", "pleated width with its end allowances",
               inputs.finished_width + 2 * edge.length,
               "{finished_width} + 2 × {edge}")  # fmt: skip
    return sheet.note("flat_width", "joined cloth before pleating",
                      inputs.finished_width + take_up.length + 2 * edge.length,
                      "{finished_width} + {take_up} + 2 × {edge}")  # fmt: skip


def note_panels(sheet: Worksheet, inputs: PleatInputs, cloth: Cloth) -> None:
    """Note how many widths of cloth are joined, and how wide and long each is cut."""
    usable = note_usable_width(sheet, cloth)
    takes = sheet.note("join_takes", "width taken by each joining seam",
                       2 * inputs.join_allowance, "2 × {join_allowance}")  # fmt: skip
    ring = inputs.ends == RING
    plan = plan_strips(sheet["flat_width"].length, usable.length, takes.length, ring)
    panels = sheet.note(
        "panels", "widths of cloth for one", plan.count,
        "{flat_width} / ({usable_width} - {join_takes}), rounded up" if ring else
        "({flat_width} - {join_takes}) / ({usable_width} - {join_takes}), rounded up, at least 1",
    )  # fmt: skip
    sheet.note(
        "panel_cut_width", "each width, cut", plan.each,
        "{flat_width} / {panels} + {join_takes}" if ring else
        "({flat_width} + {join_takes} × ({panels} - 1)) / {panels}",
        saying=Saying.UP, panels=panels,
    )  # fmt: skip
    note_cut_length(sheet, inputs)


def note_cut_length(sheet: Worksheet, inputs: PleatedInputs) -> Value:
    """Note the cut length: finished length, seam at the top, hem at the foot."""
    hem = note_hem(sheet, inputs, sheet["pleated_length"])
    return sheet.note("panel_cut_length", "cut length",
                      inputs.pleated_length + inputs.top_allowance + hem.length,
                      "{pleated_length} + {top_allowance} + {hem_allowance}")  # fmt: skip


def add_panels(sheet: Worksheet, inputs: PleatInputs) -> None:
    """Put the cut widths and their seams on the sheet."""
    sheet.pieces.append(
        Piece("width for pleats", "cloth", sheet["panels"].whole * inputs.make.number,
              sheet["panel_cut_width"], sheet["panel_cut_length"], Grain.STRAIGHT)
    )  # fmt: skip
    sheet.seams.append(Seam("between widths of cloth", inputs.join_allowance))
    sheet.seams.append(Seam("seam that holds the pleats", inputs.top_allowance))


def add_pleat_chart(sheet: Worksheet, panel: FoldedPanel, what: str, folds_each: int = 1) -> None:
    """The marking chart of a pleated panel as a table; `what` names one pleat."""
    names = []
    for number, fold in enumerate(panel.folds):
        pleat = f"{what} {number // folds_each + 1}"
        names.append([f"{pleat}, {line}" for line in LINE_NAMES[fold.lies]])
    sheet.charts.append(marking_chart(panel, "Lines to mark on the joined cloth", names))


def add_pleat_supplies(sheet: Worksheet) -> None:
    """The notions and cautions of pleated work; cloth was added with what to buy of it."""
    sheet.have("fine thread to match", "basting thread of another colour")
    sheet.have("a removable marker tried on a scrap", "pins", "a pressing cloth")
    sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON, LONG_HEM))

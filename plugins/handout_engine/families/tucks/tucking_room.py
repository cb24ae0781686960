"""Whether tucks have room: between one another, and beside the seams of their panel."""

from __future__ import annotations

from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.families.tucks.tucking import ALLOWED, REFUSED, TAPE, edge_to_seam
from handout_engine.shared.folds import FoldedPanel
from handout_engine.working.worksheet import Worksheet


def check_gaps(sheet: Worksheet, panel: FoldedPanel, field: str) -> None:
    """Refuse a panel on which tucks lie over one another without having been asked to.

    `field` is the input that sets the gaps. Raises RefusalError with the least that would do.
    """
    tucks, gaps = sheet.technique, panel.gaps()[1:-1]
    least = max((gap.covered for gap in gaps), default=ZERO)
    for gap in gaps:
        if gap.length <= ZERO:
            raise RefusalError(f"{field} leaves two tucks on one line; give them a gap", field)
        if gap.crowded and sheet["overlap"].amount == REFUSED:
            way = ways(
                at_least(tucks, field, least, f"a {field} of at least {{}}"),
                f"shallower tucks, or write overlap: {ALLOWED}",
            )
            raise RefusalError(
                f"tucks {gap.before} and {gap.before + 1} stand {TAPE.say(gap.length)} apart, and "
                f"{TAPE.say(gap.covered)} of tuck would lie over that gap; use {way}",
                field,
            )


def check_margins(
    sheet: Worksheet, panel: FoldedPanel, symmetrical: bool, width: Length | None
) -> None:
    """Refuse a panel whose outermost tucks would be caught in its side seams.

    `width` is the input `finished_width`, where a wider one leaves the tucks as they are. Raises
    RefusalError with a width that does; where the tucks are set from one edge, the margin there is
    an input of its own, `first_margin`.
    """
    tucks, gaps = sheet.technique, panel.gaps(edge_to_seam(sheet).length)
    left, right = gaps[0], gaps[-1]
    if left.crowded and not symmetrical:
        way = at_least(tucks, "first_margin", left.covered, "a first_margin of at least {}")
        raise RefusalError(
            f"the margin at the left is {TAPE.say(left.length)}, and the tuck that lies over it "
            f"would be caught in the seam; use {ways(way, 'tucks pressed the other way')}",
            "first_margin",
        )
    crowded, side = (left, "left") if symmetrical and left.crowded else (right, "right")
    if not crowded.crowded:
        return
    lacking = max(gap.covered - gap.length for gap in ((left, right) if symmetrical else (right,)))
    way = "a wider panel"
    if width is not None:
        wider = width + lacking * (2 if symmetrical else 1)
        way = at_least(tucks, "finished_width", wider, "a finished_width of at least {}")
    found = (
        f"the tucks leave a margin of {TAPE.say(crowded.length)} at the {side}, and the last one "
        "would be caught in the seam"
        if crowded.length >= ZERO
        else "the tucks stand over more than the finished width"
    )
    raise RefusalError(
        f"{found}; use {ways(way, 'fewer, shallower or closer tucks')}", "finished_width"
    )

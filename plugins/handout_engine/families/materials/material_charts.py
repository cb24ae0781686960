"""The table of cloths as a page prints it: three narrow charts, each fit for a small screen."""

from __future__ import annotations

from handout_engine.amounts.saying import Amount, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.families.materials.materials import MATERIALS
from handout_engine.working.workings import Chart


def material_charts() -> tuple[Chart, ...]:
    """What each cloth asks for in sewing, and what is to be expected of it."""
    sewing = tuple(
        (
            name,
            each.needle.what,
            sentence("{a} to {b}", a=each.thread.what.least, b=each.thread.what.most),
        )
        for name, each in MATERIALS.items()
    )
    making = tuple(
        (
            name,
            _said(each.stitch.what, Saying.FINE),
            sentence("{a} to {b}", a=each.fullness.what.least, b=each.fullness.what.most),
        )
        for name, each in MATERIALS.items()
    )
    care = tuple(
        (name, each.weight.what, each.frays.what, _said(each.shrinkage.what, Saying.PERCENT))
        for name, each in MATERIALS.items()
    )
    return (
        Chart(
            "Needle and thread (common practice, no source)",
            ("Cloth", "Needle", "Thread, tex"),
            sewing,
        ),
        Chart(
            "Stitch, and times the edge (common practice; 2 to 3 is published)",
            ("Cloth", "Stitch", "Fullness"),
            making,
        ),
        Chart(
            "What to expect (common practice, no source)",
            ("Cloth", "g/m²", "Frays", "Shrinks"),
            care,
        ),
    )


def _said(amount: Amount, saying: Saying) -> Value:
    """A figure of the table, in a row that is named by its cloth."""
    return Value("", "", amount, PRACTICE, saying=saying)

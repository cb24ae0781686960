"""The table of cloths as a page prints it: two narrow charts, so that each fits a small screen."""

from __future__ import annotations

from handout_engine.materials import MATERIALS
from handout_engine.saying import Amount, Saying
from handout_engine.sources import PRACTICE
from handout_engine.values import Value, sentence
from handout_engine.workings import Chart


def material_charts() -> tuple[Chart, ...]:
    """What each cloth asks for in sewing, and what is to be expected of it."""
    sewing = tuple(
        (name, each.needle.what,
         sentence("{a} to {b}", a=each.thread.what.least, b=each.thread.what.most),
         _said(each.stitch.what, Saying.FINE),
         sentence("{a} to {b}", a=each.fullness.what.least, b=each.fullness.what.most))
        for name, each in MATERIALS.items()
    )  # fmt: skip
    care = tuple(
        (name, each.weight.what, each.frays.what,
         _said(each.shrinkage.what, Saying.PERCENT))
        for name, each in MATERIALS.items()
    )  # fmt: skip
    return (
        Chart("Where to begin (common practice, no source)",
              ("Cloth", "Needle", "Thread, tex", "Stitch", "Fullness"), sewing),
        Chart("What to expect (common practice, no source)",
              ("Cloth", "g/m²", "Frays", "Shrinks"), care),
    )  # fmt: skip


def _said(amount: Amount, saying: Saying) -> Value:
    """A figure of the table, in a row that is named by its cloth."""
    return Value("", "", amount, PRACTICE, saying=saying)

"""A thread in the trade's counts, how thick it is, and the needle that takes it."""

from __future__ import annotations

from fractions import Fraction
from math import ceil, pi, sqrt

from handout_engine.amounts.inputs import SEWING, percentage, ratio
from handout_engine.amounts.lengths import from_float, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, decimal
from handout_engine.amounts.sources import PRACTICE, published
from handout_engine.amounts.thread_counts import DENIER, NE_ONE, NM_ONE
from handout_engine.amounts.values import Value
from handout_engine.amounts.ways_out import at_most, ways
from handout_engine.families.materials.materials import NEEDLE_SIZES
from handout_engine.working.worksheet import Worksheet

TEX, FINE = Saying.TEX, Saying.FINE


class ThreadInputs:
    """What is assumed of a thread that passes a needle."""

    thread_density = ratio(
        "density of the thread",
        "Grams in a cubic centimetre, with the air between fibres; used for how thick it is.",
        "0.9",
        ("0.4", "1.6"),
        group=SEWING,
        basis=PRACTICE,
    )
    greatest_share = percentage(
        "thread to needle",
        "How thick a thread may be, as a share of the blade, to pass its eye freely.",
        "40 %",
        60,
        group=SEWING,
        basis=PRACTICE,
    )


def note_counts(sheet: Worksheet) -> None:
    """Note the thread in the other counts of the trade."""
    basis = published("iso-1144")
    for name, words, amount in (
        ("ne_one", "tex of English cotton number 1", NE_ONE),
        ("nm_one", "tex of metric number 1", NM_ONE),
    ):
        sheet.note(name, words, amount, "", basis=basis)
    sheet.note("denier_one", "denier of one tex", DENIER, "", basis=basis)
    thread = number(sheet, "thread")
    sheet.note("thread_ne", "thread in English cotton number, Ne", NE_ONE / thread,
               "{ne_one} / {thread}", basis=basis)  # fmt: skip
    sheet.note("thread_nm", "thread in metric number, Nm", NM_ONE / thread, "{nm_one} / {thread}",
               basis=basis)  # fmt: skip
    sheet.note("thread_denier", "thread in denier", DENIER * thread, "{denier_one} × {thread}",
               basis=basis)  # fmt: skip


def note_needle(sheet: Worksheet, asked: ThreadInputs, usual: Value) -> None:
    """Note how thick the thread is and which needle takes it; raises RefusalError for none."""
    unit = sheet.note("needle_unit", "one step of needle numbers", millimetres("1/100"), "",
                      basis=published("needle-systems"), saying=FINE)  # fmt: skip
    thread = number(sheet, "thread")
    area = 4 * float(thread) / (1000 * pi * float(asked.thread_density))
    thick = sheet.note("thread_diameter", "thickness of the thread", from_float(sqrt(area)),
                       "100 × {needle_unit} × √(4 × {thread} / (1000 × π × {thread_density}))",
                       saying=FINE)  # fmt: skip
    if not asked.greatest_share:
        raise RefusalError("greatest_share 0 % lets no thread pass; use 40 %", "greatest_share")
    least = sheet.note("least_needle", "needle that the thread needs, at least",
                       ceil(thick.length / (unit.length * asked.greatest_share)),
                       "{thread_diameter} / ({greatest_share} × {needle_unit}), rounded up"
                       )  # fmt: skip
    wanted = max(least.whole, usual.whole)
    needle = sheet.note("needle", "needle number", _sold(asked, thick, wanted), "", basis=PRACTICE)
    sheet.note("old_needle", "its old number", NEEDLE_SIZES[needle.whole], "",
               basis=published("needle-systems"))  # fmt: skip
    sheet.note("blade", "diameter of its blade", unit.length * needle.whole,
               "{needle} × {needle_unit}", saying=FINE)  # fmt: skip


def _sold(asked: ThreadInputs, thick: Value, wanted: int) -> int:
    """The smallest needle sold of at least that number; raises RefusalError where there is none."""
    sold = [number for number in NEEDLE_SIZES if number >= wanted]
    if sold:
        return sold[0]
    largest = max(NEEDLE_SIZES)
    passing = float(asked.greatest_share * largest / 100)
    fuller = "more of greatest_share, so that it fills more of the needle"
    most = Fraction(int(250 * pi * float(asked.thread_density) * passing**2 * 10), 10)
    raise RefusalError(
        f"a thread {decimal(thick.length.mm)} mm thick passes no needle up to number {largest}; "
        f"use {ways(at_most(asked, 'thread_at_hand', most, 'a thread of at most {}'), fuller)}",
        "thread_at_hand",
    )


def number(sheet: Worksheet, name: str) -> Fraction:
    """The amount of a value that is a plain number."""
    amount = sheet[name].amount
    assert isinstance(amount, Fraction)
    return amount

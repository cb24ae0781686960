"""The cautions a page must carry when they apply, in plain words, deferring to local rules."""

from __future__ import annotations

from dataclasses import dataclass

from handout_engine.sources import SOURCES, Source


@dataclass(frozen=True)
class Caution:
    """One caution: shown once a page however many blocks call for it."""

    key: str
    text: str
    sources: tuple[Source, ...] = ()


PINS_AND_IRON = Caution(
    "pins-and-iron",
    "Count pins in and out, keep blades and a hot iron out of a child's reach, and stop the "
    "machine before a hand comes near the needle.",
)
LOOSE_THREADS = Caution(
    "loose-threads",
    "Draw gathering threads out or fasten them, and trim every loose end on the wrong side: a long "
    "thread inside a sleeve or sock can wind round a finger or toe.",
)
NOT_SLEEPWEAR = Caution(
    "not-sleepwear",
    "A ruffled garment is not sleepwear. What a child sleeps in must meet the rules of the place "
    "where it is used; in the United States a ruffle rules out tight-fitting sleepwear.",
    (SOURCES["cfr-1615"],),
)
THIN_COTTON = Caution(
    "thin-cotton",
    "Thin cotton burns fast, and gathers burn faster: keep the garment away from open flame and "
    "heaters.",
    (SOURCES["cfr-1610"],),
)
LONG_HEM = Caution(
    "long-hem",
    "A hem below the foot can trip a child who crawls or walks, and whoever carries her.",
)
NEEDLE_BREAKS = Caution(
    "needle-breaks",
    "A twin needle breaks when the stitch is wider than plate and foot allow, and the pieces fly: "
    "turn the hand wheel through one whole stitch first, and count every piece of a broken needle.",
)

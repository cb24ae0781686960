"""The way out that a refusal names, taken: whoever writes what it says is not refused again for it.

A refusal that begins with the name of its input and says `use at most 1/4 in (6 mm)` promises that
1/4 in will do, and 6 mm too.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from handout_engine.kinds import Raw
from handout_engine.refusals import RefusalError, RefusalsError
from handout_engine.technique import Technique, make

INCHES, METRIC = r"[\d/ .]+ (?:in|yd|mm)", r"[\d.]+ (?:mm|cm|m)"
WAY = re.compile(rf"\buse at (?:most|least) ({INCHES})(?: \(({METRIC})\))?(?=$|[,)]| or)")
FIGURES = re.compile(r"[\d/. ]+")


def check_way_out(
    technique: type[Technique], written: Mapping[str, Raw], refusal: RefusalError
) -> None:
    """Write what the refusal says, in each of its units; it is not to be said again."""
    for way in _ways(refusal):
        again = _refusal(technique, {**written, str(refusal.field): way})
        assert again is None or _words(again) != _words(refusal), (
            f"{refusal.message}: with {way} it says again {again.message}"
        )


def _ways(refusal: RefusalError) -> Iterator[str]:
    named = refusal.field and refusal.message.startswith(f"{refusal.field} ")
    found = WAY.search(refusal.message) if named else None
    yield from filter(None, found.groups() if found else ())


def _refusal(technique: type[Technique], written: Mapping[str, Raw]) -> RefusalError | None:
    try:
        make(technique, written).work()
    except RefusalsError as several:
        return several.refusals[0]
    except RefusalError as refusal:
        return refusal
    return None


def _words(refusal: RefusalError) -> str:
    """The sentence without its figures."""
    return FIGURES.sub(" ", refusal.message)

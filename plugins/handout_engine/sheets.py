"""True-scale sheets of a working: each an SVG of its own, named by what is in it.

The name holds a number made from the content, so that a link never leads to the sheet of other
measures, and no two pages need to agree on names.
"""

from __future__ import annotations

from handout_engine.drawing.true_scale import true_scale
from handout_engine.markup import xml
from handout_engine.saying import Tape
from handout_engine.workings import Picture, Working

FOLDER = "sheets/"
_MODULUS = 2**64 - 59
"""The greatest prime below 2 to the 64th."""


def sheets(working: Working, tape: Tape) -> dict[str, str]:
    """Each sheet's address beside the page, and the sheet as an SVG document."""
    drawn = (picture_sheet(working.technique, each, tape) for each in working.pictures)
    return dict(each for each in drawn if each is not None)


def picture_sheet(technique: str, picture: Picture, tape: Tape) -> tuple[str, str] | None:
    """The sheet of one picture with its address; None where there is none."""
    if picture.sheet is None:
        return None
    document = xml(true_scale(picture.sheet, tape)) + "\n"
    return f"{FOLDER}{technique}-{picture.name}-{_mark(document)}.svg", document


def _mark(document: str) -> str:
    return f"{int.from_bytes(document.encode()) % _MODULUS:016x}"

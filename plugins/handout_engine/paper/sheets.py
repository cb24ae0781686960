"""True-scale sheets of a working, as printed pages, named by what is in them.

There is one for each picture that has a sheet, and one with all pieces that have an outline. The
name holds a number made from the content, so that a link never leads to the sheet of other
measures, and no two pages of a site need to agree on names. It does not depend on the paper.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import chain
from xml.etree.ElementTree import Element

from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import Sentence, Value, said
from handout_engine.bodies.measures import BODY_LENGTH, fit_in_words
from handout_engine.drawing.markup import element, xml
from handout_engine.drawing.scene import Scene, Shape
from handout_engine.geometry.polygons import extents
from handout_engine.paper.ink import inked
from handout_engine.paper.ink_svg import elements
from handout_engine.paper.pieces import piece_shapes
from handout_engine.paper.sheet_pages import print_document, sheet_pages
from handout_engine.paper.strip import Label
from handout_engine.paper.true_scale import reach_of
from handout_engine.working.workings import Grain, Picture, Piece, Working

FOLDER = "sheets/"
PIECES = "pieces"
LARGEST = 2.4e6
"""Square mm: a drawing in a larger box would take more than about 60 pages, and is not printed."""
MIRRORED = "one the mirror image of the other: turn this paper over, face down, for the second"
MIDDLE = (
    "The line of long dashes and dots is the middle of the piece: lay it to a fold of the cloth, "
    "or turn the paper over along it and draw the other half."
)
_MODULUS = 2**64 - 59
"""The greatest prime below 2 to the 64th."""


@dataclass(frozen=True)
class Drawing:
    """One thing on a sheet: its shapes, and what is said of it."""

    label: Label
    shapes: tuple[Shape, ...]

    @property
    def scene(self) -> Scene:
        """The same as a scene, to be drawn whole (`true_scale.true_scale`)."""
        return Scene(_plain(self.label.heading), _plain(" ".join(self.label.lines)), self.shapes)


@dataclass(frozen=True)
class Sheet:
    """What is printed in one go: its address beside the page, its title and its drawings."""

    address: str
    title: str
    drawings: tuple[Drawing, ...]

    def pages(self, paper: str, tape: Tape) -> list[str]:
        """The printed pages in order, each as an SVG document; `paper` is `a4` or `letter`."""
        return [xml(page) + "\n" for page in self._drawn(paper, tape)]

    def document(self, paper: str, tape: Tape) -> str:
        """All pages as one HTML document, to be printed from a browser."""
        return print_document(self.title, self._drawn(paper, tape))

    def _drawn(self, paper: str, tape: Tape) -> list[Element]:
        every = (sheet_pages(each.shapes, each.label, paper, tape) for each in self.drawings)
        return list(chain.from_iterable(every))


def sheets(working: Working, tape: Tape) -> list[Sheet]:
    """Every sheet of a working."""
    every = [picture_sheet(working, each, tape) for each in working.pictures]
    return [each for each in (*every, pieces_sheet(working, tape)) if each is not None]


def whole_sheet(working: Working, tape: Tape) -> Sheet:
    """All sheets of a working as one; raises RefusalError where there are none, with the reason."""
    every = sheets(working, tape)
    if not every:
        reasons = [*too_large(working), *_too_large_pictures(working, tape)]
        raise RefusalError(" ".join(reasons) or "it has no true-scale sheet")
    drawings = chain.from_iterable(each.drawings for each in every)
    return Sheet("", working.title, tuple(drawings))


def _too_large_pictures(working: Working, tape: Tape) -> list[str]:
    said_of = (too_large_picture(each, tape) for each in working.pictures)
    return [text for text in said_of if text]


def too_large(working: Working) -> list[str]:
    """A sentence for each piece that has an outline, but one that would take too many pages."""
    outlined = [piece for piece in working.pieces if piece.outline]
    return [
        f"The {piece.name} is too large to print at true scale; draw it from its measures."
        for piece in outlined
        if not can_be_printed(piece)
    ]


def picture_sheet(working: Working, picture: Picture, tape: Tape) -> Sheet | None:
    """The sheet of one picture; None where there is none, or it would take too many pages."""
    if picture.sheet is None or too_large_picture(picture, tape):
        return None
    heading = _heading(working, picture.sheet.title.first(tape))
    label = Label(heading, (picture.sheet.description.text(tape),))
    drawing = Drawing(label, picture.sheet.shapes)
    return _sheet(f"{working.technique}-{picture.name}", label.heading, (drawing,), tape)


def pieces_sheet(working: Working, tape: Tape) -> Sheet | None:
    """The sheet of all pieces that have an outline; None where there are none to print."""
    drawings = tuple(
        Drawing(
            piece_label(working, pieces, tape),
            piece_shapes(pieces[0], [_words_on(each) for each in pieces]),
        )
        for pieces in alike(each for each in working.pieces if can_be_printed(each))
    )
    if not drawings:
        return None
    return _sheet(f"{working.technique}-{PIECES}", f"{working.title}: pieces", drawings, tape)


def too_large_picture(picture: Picture, tape: Tape) -> str:
    """A sentence where a picture has a sheet, but one that would take too many pages; else none."""
    if picture.sheet is None:
        return ""
    reach = reach_of(inked(picture.sheet.shapes, tape))
    if reach.width * reach.height <= LARGEST:
        return ""
    return f"{picture.sheet.title.first(tape)}: this is too large to print at true scale."


def can_be_printed(piece: Piece) -> bool:
    """Whether a piece has an outline, and one that some tens of pages can hold."""
    if not piece.outline:
        return False
    (left, top), (right, bottom) = extents(piece.outline)
    return (right - left) * (bottom - top) <= LARGEST


def alike(pieces: Iterable[Piece]) -> list[list[Piece]]:
    """Pieces of one outline together, since one paper piece serves them all."""
    groups: dict[object, list[Piece]] = {}
    for each in pieces:
        drawn = (each.outline, each.seam_outline, each.notches, each.slit)
        key = (*drawn, each.grain, each.on_fold)
        groups.setdefault(key, []).append(each)
    return list(groups.values())


def piece_label(working: Working, pieces: Sequence[Piece], tape: Tape) -> Label:
    """Name, size, how often to cut from which cloth, fold, grain and lines of pieces alike."""
    names = " and ".join(piece.name for piece in pieces)
    lines = (*_worn(working), *_lines(pieces[0], pieces, tape))
    return Label(_heading(working, names), lines)


def _worn(working: Working) -> Iterable[str]:
    """For which size of baby, or which body length between two, a garment is."""
    length = working.inputs.get(BODY_LENGTH)
    if length is not None:
        yield f"For {fit_in_words(length.length)}, with the measures of its page."


def _heading(working: Working, name: str) -> str:
    """What a page is headed: the working's title, and the name, unless that says the title too."""
    if working.title.lower() in name.lower():
        return name[:1].upper() + name[1:]
    return f"{working.title}: {name}"


def _words_on(piece: Piece) -> str:
    """What is written on the paper piece itself."""
    return f"{piece.name}: cut {piece.count}" + (", one mirrored" if piece.pair else "")


def _lines(one: Piece, pieces: Sequence[Piece], tape: Tape) -> Iterable[str]:
    for each in pieces:
        name = f"{each.name}: cut" if len(pieces) > 1 else "Cut"
        worked = "the worked " if each.worked else ""
        pair = f", {MIRRORED}" if each.pair else ""
        yield f"{name} {each.count} from {worked}{each.cloth}{pair}."
    wide, high = _size(one)
    half = ", half of it" if one.on_fold else ""
    yield f"{_both(wide, tape)} wide, {_both(high, tape)} high{half}."
    if one.on_fold:
        yield MIDDLE
    if one.seam_outline:
        yield "Cut on the thick line; seams and turned edges lie on the dashed one."
    else:
        yield "Cut on the thick line; nothing is to be added to it."
    if one.notches:
        yield "Short lines at the edge are notches, to meet those of the next piece."
    slanting = one.grain is Grain.BIAS
    yield "Lengthwise grain: " + ("along the arrow." if slanting else "up and down the page.")


def _size(piece: Piece) -> tuple[Value, Value]:
    """How wide and how high a piece is on paper (`pieces.on_paper`)."""
    straight = piece.grain is Grain.STRAIGHT
    return (piece.width, piece.length) if straight else (piece.length, piece.width)


def _plain(text: str) -> Sentence:
    """A sentence of words alone."""
    return Sentence(text.replace("{", "{{").replace("}", "}}"))


def _both(value: Value, tape: Tape) -> str:
    return said(value, tape).both


def _sheet(name: str, title: str, drawings: tuple[Drawing, ...], tape: Tape) -> Sheet:
    return Sheet(f"{FOLDER}{name}-{_mark(drawings, tape)}.html", title, drawings)


def _mark(drawings: Sequence[Drawing], tape: Tape) -> str:
    """A number made from everything on a sheet."""
    written = element("g")
    for each in drawings:
        written.append(element("title", each.label.heading, *each.label.lines))
        written.extend(elements(inked(each.shapes, tape)))
    return f"{int.from_bytes(xml(written).encode()) % _MODULUS:016x}"

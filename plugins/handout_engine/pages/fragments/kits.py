"""What a seat of a course takes, what the class buys, and what is cut beforehand, as HTML."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import chain
from xml.etree.ElementTree import Element

from handout_engine.amounts.inputs import BODY
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.fragments.shopping import bought, kind, notion
from handout_engine.pages.fragments.tables import Cell, table
from handout_engine.pages.fragments.words import PAIR, amount, pair, phrase, whose
from handout_engine.pages.kits import Kit, Line, Need, Notion, Total
from handout_engine.working.workings import Piece, Working

GROUPS = {"cloths": "Cloth", "lengths": "Sold by length", "counts": "Counted"}
"""The parts of a kit in the order in which they are shown, and what each is called."""
NOTIONS = "To have at hand"
TOGETHER = (
    "Each cloth is laid out once for all that is sewn from it, so it is not the sum of what the "
    "handouts list."
)
MOST_COLUMNS = 4
"""Pieces side by side in a table of what is cut beforehand; more are put into further tables."""


@dataclass(frozen=True)
class Making:
    """A handout as it is sewn at a seat: its workings, by what each is called."""

    title: str
    workings: Mapping[str, Working]


@dataclass(frozen=True)
class Packed:
    """What one seat sews and takes; `cloths` says which cloth of its own each cloth is.

    `given` are the names of the size and the measures that were given for its baby.
    """

    name: str
    makings: tuple[Making, ...]
    kit: Kit
    cloths: Mapping[str, str] = field(default_factory=dict)
    given: frozenset[str] = frozenset()

    @property
    def every_piece(self) -> list[Piece]:
        """All its pieces, handout by handout."""
        return [
            piece
            for each in self.makings
            for working in each.workings.values()
            for piece in working.pieces
        ]


def kit_list(packed: Packed, tape: Tape) -> Element:
    """The kit of a seat: what to put into it, a box to tick for each thing."""
    parts = [
        _group(
            title,
            [_needed(each, tape) for each in getattr(packed.kit, group)],
            TOGETHER if group == "cloths" else "",
        )
        for group, title in GROUPS.items()
    ]
    notions = _group(NOTIONS, [notion(each, tape) for each in packed.kit.notions])
    return element("div", *parts, notions, class_="handout-block kit-list")


def _group(title: str, items: Sequence[Sequence[Child]], remark: str = "") -> Element | None:
    if not items:
        return None
    listed = element("ul", *(element("li", *each) for each in items), class_="supplies")
    below = element("p", remark, class_="detail") if remark else None
    heading = element("p", title, class_="part-title")
    return element("section", heading, listed, below, class_="part")


def _needed(need: Need, tape: Tape) -> list[Child]:
    return [need.name, ": ", bought(need, tape), *kind(need, tape)]


def kit_pieces(packed: Packed, tape: Tape) -> Element:
    """The cut list of a seat, a table for each handout."""
    tables = [
        table(each.title, ("Piece", "Cut", "Wide × long"), _cuts(each, packed.cloths, tape))
        for each in packed.makings
        if any(working.pieces for working in each.workings.values())
    ]
    return element("div", *tables, class_="handout-block kit-pieces")


def _cuts(making: Making, cloths: Mapping[str, str], tape: Tape) -> Iterable[Sequence[Cell]]:
    several = len(making.workings) > 1
    for called, working in making.workings.items():
        for piece in working.pieces:
            of = f"{called}; " if several else ""
            detail = element("span", of + _how(piece, cloths), class_="detail")
            named: list[Child] = [piece.name, detail]
            yield named, str(piece.count), pair(piece.width, piece.length, tape)


def baby_measures(packed: Packed, tape: Tape) -> Element | None:
    """The measures of the baby that a seat sews for: given for her, or the table's."""
    found: dict[str, Sequence[Cell]] = {}
    for making in packed.makings:
        for working in making.workings.values():
            for value in working.inputs.values():
                if value.group == BODY and value.amount is not None:
                    found.setdefault(
                        value.name,
                        (value.label, amount(value, tape), whose(value, working, packed.given)),
                    )
    if not found:
        return None
    listed = table("Her measures", ("Measure", "Sewn for", "Whose"), found.values())
    return element("div", listed, class_="handout-block kit-measures")


def class_list(total: Total, tape: Tape) -> Element:
    """What the class buys: what the kits take together, the spare, and both."""
    tables = [
        table(title, ("Thing", "Buy", "Kits take", "Spare"), [_line(each, tape) for each in lines])
        for group, title in GROUPS.items()
        if (lines := getattr(total, group))
    ]
    rows: list[Sequence[Cell]] = [(_sized(each, tape), str(kits)) for each, kits in total.notions]
    at_hand = table(NOTIONS, ("Thing", "For kits"), rows) if rows else None
    return element("div", *tables, at_hand, class_="handout-block class-list")


def _line(line: Line, tape: Tape) -> Sequence[Cell]:
    need = line.need
    known: list[Child] = []
    if need.width is not None:
        known = [amount(need.width, tape), " wide, "]
    elif need.note is not None:
        known = [*phrase(need.note, tape), "; "]
    kits = f"for {line.kits} kit{'' if line.kits == 1 else 's'}"
    named: list[Child] = [need.name, element("span", *known, kits, class_="detail")]
    spare: Cell = bought(line.spare, tape) if line.spare.steps else "none"
    buy = element("strong", bought(line.to_buy, tape))
    return named, buy, bought(need, tape), spare


def _sized(each: Notion, tape: Tape) -> list[Child]:
    """A notion with its size or number; what else is noted of it may hold for one kit only."""
    return [each.name] if each.size is None else [each.name, ": ", amount(each.size, tape)]


def cut_beforehand(seats: Sequence[Packed], names: Sequence[str], tape: Tape) -> Element:
    """Tables of the pieces of these names: seats down, pieces across, how many and how large."""
    groups = [names[start : start + MOST_COLUMNS] for start in range(0, len(names), MOST_COLUMNS)]
    tables = [
        table(f"To cut: {', '.join(group)}", ("Seat", *group), _rows(seats, group, tape))
        for group in groups
    ]
    return element("div", *tables, class_="handout-block cut-beforehand")


def _rows(seats: Iterable[Packed], names: Sequence[str], tape: Tape) -> Iterable[Sequence[Cell]]:
    for seat in seats:
        yield (
            seat.name,
            *(
                _sizes(
                    [piece for piece in seat.every_piece if piece.name == name], seat.cloths, tape
                )
                for name in names
            ),
        )


def _sizes(pieces: Sequence[Piece], cloths: Mapping[str, str], tape: Tape) -> Cell:
    if not pieces:
        return "none"
    return list(chain.from_iterable(_size(each, cloths, tape) for each in pieces))


def _size(piece: Piece, cloths: Mapping[str, str], tape: Tape) -> list[Child]:
    sized = pair(piece.width, piece.length, tape)
    return [f"{piece.count} of ", sized, element("span", _how(piece, cloths), class_="detail")]


def _how(piece: Piece, cloths: Mapping[str, str]) -> str:
    """The cloth of a piece, and whether it is cut by its outline."""
    cloth = cloths.get(piece.cloth, piece.cloth)
    ways = [f"from the worked {cloth}" if piece.worked else cloth]
    if piece.outline:
        ways.append("half its outline, to the fold line" if piece.on_fold else "by its outline")
    if piece.pair:
        ways.append(PAIR)
    return "; ".join(ways)

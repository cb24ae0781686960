"""The tables of a working: cut list, marks, measures, supplies, and where the numbers come from."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from xml.etree.ElementTree import Element

from handout_engine.amounts.inputs import BODY, MEASURES
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import Sentence, Value
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.fragments.words import (
    GIVEN_FOR_HER,
    PAIR,
    amount,
    pair,
    phrase,
    sheet_link,
    whose,
)
from handout_engine.paper.sheets import pieces_sheet, too_large
from handout_engine.working.workings import Cell as ChartCell
from handout_engine.working.workings import Piece, Supply, Working

Cell = Child | list[Child]


def table(caption: str, headings: Sequence[str], rows: Iterable[Sequence[Cell]]) -> Element:
    """A table whose first column heads its rows, in an area that scrolls by keyboard.

    The area is a named group and no landmark: a page has many tables of one name, and who goes
    from landmark to landmark looks for the parts of the page.

    It has a class: the theme's script puts tables without one into boxes of its own, and those
    that a reader's change brings would not have them.
    """
    head = element("tr", *(element("th", text, scope="col") for text in headings))
    body = [_row(row) for row in rows]
    made = element(
        "table",
        element("caption", caption),
        element("thead", head),
        element("tbody", *body),
        class_="handout-table",
    )
    return element("div", made, class_="table-area", tabindex="0", role="group", aria_label=caption)


def _row(cells: Sequence[Cell]) -> Element:
    first, *rest = (cell if isinstance(cell, list) else [cell] for cell in cells)
    return element(
        "tr", element("th", *first, scope="row"), *(element("td", *cell) for cell in rest)
    )


def cuts(working: Working, tape: Tape, identity: str) -> Element | None:
    """The cut list: piece, cloth, count, width × length, grain; and the pieces at true scale."""
    del identity
    if not working.pieces:
        return None
    rows = [_cut(piece, tape) for piece in working.pieces]
    listed = table("Cut list", ("Piece", "Cut", "Wide × long"), rows)
    printed = list(_printed(working, tape))
    return element("div", listed, *printed) if printed else listed


def _printed(working: Working, tape: Tape) -> Iterable[Element]:
    """The link to the outlined pieces at true scale, and which are too large for it."""
    sheet = pieces_sheet(working, tape)
    if sheet is not None:
        yield sheet_link("Print the pieces at true scale", sheet)
    yield from (element("p", text, class_="too-large") for text in too_large(working))


def _cut(piece: Piece, tape: Tape) -> Sequence[Cell]:
    cloth = f"from the worked {piece.cloth}" if piece.worked else piece.cloth
    half = "; half of it, to its fold line" if piece.on_fold else ""
    pair_of = f"; {PAIR}" if piece.pair else ""
    detail = f"{cloth}; {piece.grain.value}{half}{pair_of}"
    named: list[Child] = [piece.name, element("span", detail, class_="detail")]
    return named, str(piece.count), pair(piece.width, piece.length, tape)


def marks(working: Working, tape: Tape, identity: str) -> Element | None:
    """The lines to mark on each piece."""
    del identity
    rows: list[Sequence[Cell]] = [
        (piece.name, mark.label, amount(mark.distance, tape))
        for piece in working.pieces
        for mark in piece.marks
    ]
    return table("Lines to mark", ("Piece", "Line", "Distance"), rows) if rows else None


def charts(working: Working, tape: Tape, identity: str) -> Element | None:
    """The tables of the technique's own."""
    del identity
    made = [
        table(
            each.caption, each.headings, [[_cell(cell, tape) for cell in row] for row in each.rows]
        )
        for each in working.charts
    ]
    return element("div", *made) if made else None


def _cell(cell: ChartCell, tape: Tape) -> Cell:
    if isinstance(cell, Sentence):
        return phrase(cell, tape)
    return cell if isinstance(cell, str) else amount(cell, tape)


def measures(working: Working, tape: Tape, identity: str) -> Element:
    """The baby's measures, or else those of the thing itself; all others folded away."""
    del identity
    groups: dict[str, list[Sequence[Cell]]] = {}
    for value in working.inputs.values():
        if value.amount is not None:
            row = (value.label, amount(value, tape), _rests_on(value, working))
            groups.setdefault(value.group, []).append(row)
    headings = ("Measure", "Used here", "Basis")
    main = groups.pop(BODY, []) or groups.pop(MEASURES, [])
    made = element("div", table("Measures used", headings, main))
    shape = groups.pop(MEASURES, [])
    if shape:
        made.append(_folded_table("Ease and shape", headings, shape))
    rest = [row for rows in groups.values() for row in rows]
    if rest:
        made.append(_folded_table("Seams, hems and cloth that were reckoned with", headings, rest))
    return made


def _rests_on(value: Value, working: Working) -> str:
    """What an input rests on; of a baby's measure, whether it was given for her."""
    hers = whose(value, working) if value.group == BODY else ""
    if hers == GIVEN_FOR_HER:
        return hers
    return f"{hers}; {value.basis.text}" if hers else value.basis.text


def _folded_table(title: str, headings: Sequence[str], rows: Iterable[Sequence[Cell]]) -> Element:
    return element(
        "details", element("summary", title), table(title, headings, rows), class_="numbers"
    )


def supplies(working: Working, tape: Tape, identity: str) -> Element:
    """What to buy and have ready."""
    del identity
    return element("ul", *(_supply(supply, tape) for supply in working.supplies), class_="supplies")


def _supply(supply: Supply, tape: Tape) -> Element:
    item: list[Child] = [supply.name]
    if (told := supply.amount or supply.size) is not None:
        item.extend((": ", amount(told, tape)))
    if supply.note is not None:
        item.extend((", ", *phrase(supply.note, tape)))
    return element("li", *item)


def numbers(working: Working, tape: Tape, identity: str) -> Element:
    """Each value with its formula in words, its numbers put in, and its basis; folded away."""
    del identity
    rows = [_number(value, tape) for value in working.values.values()]
    made = table("Each number, and where it comes from", ("Value", "Result", "How"), rows)
    summary = element("summary", "Show how each number was worked out")
    return element("details", summary, made, class_="numbers")


def _number(value: Value, tape: Tape) -> Sequence[Cell]:
    how: list[Child] = []
    if value.formula is not None and value.how:
        put_in = element("span", *phrase(value.formula, tape), class_="detail")
        how = [value.how, put_in]
    how.append(element("span", value.basis.text, class_="detail basis"))
    return value.label, amount(value, tape), how

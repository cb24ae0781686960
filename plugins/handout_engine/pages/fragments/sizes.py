"""The graded table: sizes across, values down; what no size changes stands below it once."""

from __future__ import annotations

from collections.abc import Sequence
from xml.etree.ElementTree import Element

from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import Value
from handout_engine.drawing.markup import Child, element
from handout_engine.pages.fragments.words import amount
from handout_engine.working.workings import Working

Column = tuple[str, Working | str]


def sizes(working: Working, tape: Tape, identity: str) -> Element | None:
    """The values of a working at each size; a size where it is impossible says why."""
    del identity
    if not working.graded:
        return None
    possible = [each for _, each in working.graded if isinstance(each, Working)]
    changing = [name for name in working.values if _changes(name, possible)]
    parts: list[Element] = []
    if changing or len(possible) < len(working.graded):
        parts.append(_table(working, changing, tape))
    same = [value for name, value in working.values.items() if name not in changing]
    if same and possible:
        parts.append(_same(same, tape))
    return element("div", *parts)


def _changes(name: str, possible: Sequence[Working]) -> bool:
    amounts = [each.values[name].amount if name in each.values else None for each in possible]
    return any(each != amounts[0] for each in amounts)


def _table(working: Working, changing: Sequence[str], tape: Tape) -> Element:
    caption = f"{working.title}, by size"
    headings = ("Size", *(size for size, _ in working.graded))
    rows = [_row(name, working, tape) for name in changing] or [_row("", working, tape)]
    for size, each in working.graded:
        if isinstance(each, str):
            cell = element("td", each, rowspan=str(len(rows)), class_="impossible")
            rows[0].insert(1 + [name for name, _ in working.graded].index(size), cell)
    made = element(
        "table",
        element("caption", caption),
        element("thead", element("tr", *(element("th", text, scope="col") for text in headings))),
        element("tbody", *rows),
        class_="handout-table graded",
    )
    return element("div", made, class_="table-area", tabindex="0", role="group", aria_label=caption)


def _row(name: str, working: Working, tape: Tape) -> Element:
    label = working.values[name].label if name else "not possible"
    cells = [
        element("td", _cell(each.values.get(name), tape))
        for _, each in working.graded
        if isinstance(each, Working)
    ]
    return element("tr", element("th", label, scope="row"), *cells)


def _cell(value: Value | None, tape: Tape) -> Child:
    return "none" if value is None else amount(value, tape)


def _same(values: Sequence[Value], tape: Tape) -> Element:
    said: list[Child] = []
    for value in values:
        said.extend(["; " if said else "", f"{value.label} ", amount(value, tape)])
    return element("p", "The same in every size: ", *said, ".", class_="detail")

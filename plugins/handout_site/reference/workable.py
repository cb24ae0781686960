"""One page of the reference for each family: techniques, or garments, with inputs and values."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cache

from handout_engine.amounts.inputs import BODY, GROUPS, Input, declared_inputs
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.values import Value
from handout_engine.drafting.garment import Garment
from handout_engine.pages import kept
from handout_engine.register import find, keys
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Piece, Working
from handout_site.reference.writing import capital, code, rows, told

SHARED_BY = 20
"""An input that so many techniques declare alike is told once, on the first page."""
SHARED_TITLE = "Inputs of whatever is cut from cloth"
SHARED_PLACE = "index.md#inputs-of-whatever-is-cut-from-cloth"
EDGES = ("_edge", "finished_length", "finished_chest", "opening")


def title(family: str) -> str:
    """What a family's page is called."""
    return capital(family)


def page(family: str, members: Sequence[str]) -> str:
    """The page of a family of techniques as Markdown."""
    return "\n".join(_family(family, members))


def garments_page(members: Sequence[str]) -> str:
    """The page of all garments: what each is, and which edges it has."""
    return "\n".join(_garments(members))


def garment_page(key: str) -> str:
    """The page of one garment."""
    return "\n".join((f"# {find(key).title}: reference\n", *_one(find(key), headed=False)))


def address(key: str) -> str:
    """Where a technique or a garment is told, from another page of the reference."""
    technique = find(key)
    garment = issubclass(technique, Garment)
    return f"garment-{key}.md" if garment else f"{technique.family}.md#{key}"


def _family(family: str, members: Sequence[str]) -> Iterator[str]:
    yield f"# {title(family)}: reference\n"
    for key in members:
        yield from _one(find(key))


def _garments(members: Sequence[str]) -> Iterator[str]:
    yield "# Garments: reference\n"
    for key in members:
        yield f"- [{find(key).title}]({address(key)}): {find(key).summary}"
    yield "\n## Edges\n"
    yield "A garment's block is called `garment` unless it is given another name, and a technique"
    yield "takes its edge from it: `edge: garment.hem_edge`. These are the edges there are.\n"
    yield from rows("Edge", sorted(_edges(members).items()))


def _edges(members: Sequence[str]) -> dict[str, str]:
    """What each edge is, and of which garments."""
    found: dict[str, dict[str, list[str]]] = {}
    for key in members:
        for name, value in _working(key).values.items():
            if name.endswith(EDGES):
                labels = found.setdefault(name, {})
                labels.setdefault(capital(value.label), []).append(f"[{key}]({address(key)})")
    return {
        code(name): "; ".join(f"{label}: {', '.join(links)}" for label, links in labels.items())
        for name, labels in found.items()
    }


def _working(key: str) -> Working:
    """What comes of a technique or garment with all its inputs left out."""
    return kept.working(make(find(key), {}))


def _one(technique: type[Technique], *, headed: bool = True) -> Iterator[str]:
    kind = "garment" if issubclass(technique, Garment) else "technique"
    key = technique.key()
    if headed:
        yield f"## {technique.title} {{ #{key} }}\n"
    yield f"{technique.summary} In a block: `{kind}: {key}`.\n"
    yield from _inputs(declared_inputs(technique))
    yield from _made(_working(key))


def _inputs(inputs: Sequence[Input]) -> Iterator[str]:
    """The inputs by group; those of the baby and of all cloth are told on pages of their own."""
    common = shared()
    baby = [each.name for each in inputs if each.group == BODY]
    if baby:
        yield f"Of the baby: {_names(baby)} ([how they are taken](baby.md)).\n"
    for group in GROUPS:
        own = [each for each in inputs if each.group == group != BODY and each not in common]
        if own:
            told_of = ((code(each.name), told(each)) for each in own)
            yield from rows(f"Input: {group.lower()}", told_of)
            yield ""
    taken = [each.name for each in inputs if each in common]
    if taken:
        yield f"Of the cloth: {_names(taken)} ([what they are]({SHARED_PLACE})).\n"


def _made(working: Working) -> Iterator[str]:
    """What comes of the defaults: pieces, and values by name."""
    if working.pieces:
        yield "Pieces: " + ", ".join(map(_piece, working.pieces)) + ".\n"
    yield '??? note "Values, with all inputs left out"\n'
    listed = ((code(name), _value(value)) for name, value in working.values.items())
    for line in "\n".join(rows("Value", listed)).split("\n"):
        yield f"    {line}"
    yield ""


def _value(value: Value) -> str:
    said = Tape().both(value.amount, value.saying)
    return f"{capital(value.label)}: {said}"


def _piece(piece: Piece) -> str:
    return f"{piece.name} ({piece.count} from {piece.cloth})"


def _names(names: Sequence[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)


@cache
def shared() -> tuple[Input, ...]:
    """The inputs that so many techniques declare alike, in the order of their first."""
    every = [each for key in keys() for each in declared_inputs(find(key))]
    return tuple(each for each, number in Counter(every).items() if number >= SHARED_BY)

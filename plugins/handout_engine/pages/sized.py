"""The blocks of a page at another size, or for a baby whose measures are known."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import replace

from handout_engine.bodies.measures import BODY_LENGTH, MEASURES, SIZE
from handout_engine.pages.blocks import REFERENCE, Block, Written

OF_THE_BABY = (SIZE, BODY_LENGTH, *MEASURES)


def following(
    blocks: Sequence[Block], known: Mapping[str, Collection[str]] | None = None
) -> tuple[Block, ...]:
    """The blocks, every garment without a size of its own following the page's first.

    It follows in size, body length and each of the baby's measures that both ask for; `known` names
    the inputs of each garment.
    """
    first = next((each for each in blocks if each.is_garment), None)
    return tuple(
        _following(each, first, known or {})
        if first is not None and each.is_garment and each is not first
        else each
        for each in blocks
    )


def _following(block: Block, first: Block, known: Mapping[str, Collection[str]]) -> Block:
    if SIZE in block.fields or block.name == first.name:
        return block
    asked = [known.get(each.technique, ()) for each in (first, block)]
    both = [name for name in MEASURES if all(name in names for names in asked)]
    followed = {name: f"{first.name}.{name}" for name in (SIZE, BODY_LENGTH, *both)}
    return replace(block, fields={**followed, **block.fields})


def is_followed(block: Block, name: str) -> bool:
    """Whether a garment takes this size or measure from another, so that it is asked for once."""
    return block.is_garment and name in OF_THE_BABY and _is_reference(block.fields.get(name, ""))


def sized(blocks: Sequence[Block], size: str) -> list[Block]:
    """The blocks with the page's first garment at a size of the table, nothing of a baby's own.

    Garments that follow it keep nothing of a baby's own either.
    """
    return _altered(
        blocks,
        lambda first: {**_without(first, OF_THE_BABY), SIZE: size},
        lambda other: _without(other, MEASURES),
    )


def fitted(
    blocks: Sequence[Block],
    measures: Mapping[str, str],
    known: Mapping[str, Collection[str]] | None = None,
) -> list[Block]:
    """The blocks with the page's first garment, and those that follow it, at a baby's measures.

    `measures` are the texts of `size`, `body_length` and body measures, or of other inputs that go
    before the page's own; what is not given there of a baby is the table's, whatever the page says.
    `known` names the inputs of each garment: it is given only those.
    """

    def own(block: Block, names: Mapping[str, str]) -> dict[str, Written]:
        asked = names if known is None else known.get(block.technique, ())
        return {name: text for name, text in names.items() if name in asked}

    if not measures:
        return list(blocks)
    others = {name: text for name, text in measures.items() if name not in (SIZE, BODY_LENGTH)}
    return _altered(
        blocks,
        lambda first: {**_without(first, OF_THE_BABY), **own(first, measures)},
        lambda other: {**_without(other, MEASURES), **own(other, others)},
    )


Altered = Callable[[Block], Mapping[str, Written]]


def _altered(blocks: Sequence[Block], of_first: Altered, of_others: Altered) -> list[Block]:
    """The blocks with other fields in the first garment and in those that follow its size."""
    first = next((each for each in blocks if each.is_garment), None)
    return [
        replace(each, fields=(of_first if each is first else of_others)(each))
        if each is first or _follows(each)
        else each
        for each in blocks
    ]


def _follows(block: Block) -> bool:
    """Whether a garment has no size of its own."""
    size = block.fields.get(SIZE)
    return block.is_garment and (size is None or _is_reference(size))


def _is_reference(written: Written) -> bool:
    return isinstance(written, str) and REFERENCE.fullmatch(written.strip()) is not None


def _without(block: Block, names: Collection[str]) -> dict[str, Written]:
    return {name: text for name, text in block.fields.items() if name not in names}

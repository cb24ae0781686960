"""The blocks of a page at another size, or for a baby whose measures are known."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from handout_engine.blocks import Block
from handout_engine.bodies import MEASURES

SIZE, BODY_LENGTH = "size", "body_length"
OF_THE_BABY = (SIZE, BODY_LENGTH, *MEASURES)


def following(blocks: Sequence[Block]) -> tuple[Block, ...]:
    """The blocks, every garment without a size of its own following the page's first."""
    first = next((each for each in blocks if each.is_garment), None)
    return tuple(
        _following(each, first.name)
        if first is not None and each.is_garment and each is not first
        else each
        for each in blocks
    )


def _following(block: Block, first: str) -> Block:
    if SIZE in block.fields or block.name == first:
        return block
    followed = {name: f"{first}.{name}" for name in (SIZE, BODY_LENGTH)}
    return replace(block, fields={**followed, **block.fields})


def sized(blocks: Sequence[Block], size: str) -> list[Block]:
    """The blocks with the page's first garment at a size of the table, nothing of a baby's own."""
    first = next((each for each in blocks if each.is_garment), None)
    return [_at(each, size) if each is first else each for each in blocks]


def _at(block: Block, size: str) -> Block:
    fields = {name: text for name, text in block.fields.items() if name not in OF_THE_BABY}
    return replace(block, fields={**fields, SIZE: size})


def fitted(blocks: Sequence[Block], measures: Mapping[str, str]) -> list[Block]:
    """The blocks with the page's first garment at a baby's size and measures.

    `measures` are the texts of `size`, `body_length` and body measures; what is not given there
    is the table's, whatever the page says.
    """
    first = next((each for each in blocks if each.is_garment), None)
    if first is None or not measures:
        return list(blocks)
    fields = {name: text for name, text in first.fields.items() if name not in OF_THE_BABY}
    own = replace(first, fields={**fields, **measures})
    return [own if each is first else each for each in blocks]

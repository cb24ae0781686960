"""The blocks of a page named, and put in order of their references."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import count

from handout_engine.pages.blocks import GARMENT, Block
from handout_engine.pages.problems import Problem


def named(blocks: Sequence[Block]) -> tuple[Block, ...]:
    """Each working block with a name: its own, or its technique's with a number if taken."""
    taken = {block.name for block in blocks if block.name}
    every = []
    for block in blocks:
        if block.technique and not block.name:
            name = GARMENT if block.is_garment else _free_name(block.technique, taken)
            taken.add(name)
            every.append(replace(block, name=name))
        else:
            every.append(block)
    return tuple(every)


def _free_name(name: str, taken: Collection[str]) -> str:
    """A technique's name, with a number from 2 on where it is taken."""
    if name not in taken:
        return name
    return next(f"{name}-{number}" for number in count(2) if f"{name}-{number}" not in taken)


def twins(blocks: Sequence[Block]) -> Iterator[Problem]:
    """A problem for each block that has the name of an earlier one."""
    first: dict[str, Block] = {}
    for block in blocks:
        if block.technique and first.setdefault(block.name, block) is not block:
            line = first[block.name].line
            text = f"{block.title}: the name is taken by the block in line {line}; give it another"
            yield Problem(block.lines.get("name", block.line), text, block.name)


def in_order(blocks: Sequence[Block]) -> list[Block]:
    """Working blocks, each after those it refers to as far as they do not refer back to it."""
    by_name: dict[str, Block] = {}
    for block in blocks:
        if block.technique:
            by_name.setdefault(block.name, block)
    every: list[Block] = []
    seen: set[str] = set()
    for name in by_name:
        _after_mentioned(name, by_name, seen, every)
    return every


def _after_mentioned(
    name: str, by_name: Mapping[str, Block], seen: set[str], every: list[Block]
) -> None:
    if name in seen:
        return
    seen.add(name)
    for each in by_name:
        if each in by_name[name].mentioned:
            _after_mentioned(each, by_name, seen, every)
    every.append(by_name[name])

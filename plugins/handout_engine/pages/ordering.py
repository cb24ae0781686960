"""The blocks of a page named, and put in order of their references."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import replace
from graphlib import CycleError, TopologicalSorter
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


def in_order(blocks: Sequence[Block], problems: list[Problem]) -> list[Block]:
    """Working blocks, each after those it refers to; a circle is a problem of its first block.

    What refers into a circle waits for it in vain, and says nothing (`pages`).
    """
    by_name: dict[str, Block] = {}
    for block in blocks:
        if block.technique:
            by_name.setdefault(block.name, block)
    graph = {
        name: [each for each in by_name if each in block.mentioned]
        for name, block in by_name.items()
    }  # lists, since a set of names has another order in every run
    while True:
        try:
            return [by_name[name] for name in TopologicalSorter(graph).static_order()]
        except CycleError as error:
            circle = error.args[1]
            first = min((by_name[name] for name in circle), key=lambda found: found.line)
            text = f"{first.title}: these blocks refer to each other in a circle: "
            problems.append(Problem(first.line, text + ", ".join(circle), first.name))
            graph = _without(graph, set(circle))
            by_name = {name: by_name[name] for name in graph}


def _without(graph: Mapping[str, Sequence[str]], names: set[str]) -> dict[str, list[str]]:
    """The graph without these names; references to them are dropped."""
    return {
        name: [each for each in mentioned if each not in names]
        for name, mentioned in graph.items()
        if name not in names
    }

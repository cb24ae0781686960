"""A block as an author wrote it, before anything is worked out."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from handout_engine.amounts.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.bodies.measures import LENGTHS
from handout_engine.pages.fragments import LIBRARY_PARTS, ONLY_WHEN_ASKED, PAGE_PARTS, PARTS

NAME = re.compile(r"[a-z][a-z0-9-]{0,39}")
REFERENCE = re.compile(r"(?P<block>[a-z][a-z0-9-]{0,39})\.(?P<value>[a-z][a-z0-9_]{0,59})")
SPLIT = re.compile(r"[,\s]+")
RANGE = re.compile(r"(\S+)\s+to\s+(\S+)")
PAGE, LIBRARY, GARMENT = "page", "library", "garment"
TAKEN_NAMES = frozenset({PAGE, LIBRARY, GARMENT})
SIZES = "sizes"
RESERVED = frozenset({"technique", GARMENT, "name", "of", "show", SIZES})

Written = str | Sequence[str]


@dataclass(frozen=True)
class Block:
    """One `calc` block.

    `technique` is set for a block that works something out, to the name of a garment when it
    `is_garment`; `of` for one that shows further parts of another block, of the whole page
    (`of: page`) or of the engine's whole library (`of: library`). `sizes` are those that a garment
    is graded to. `lines` gives the source line of each field, `line` that of the block.
    """

    fields: Mapping[str, Written]
    technique: str = ""
    name: str = ""
    of: str = ""
    show: tuple[str, ...] = ()
    is_garment: bool = False
    sizes: tuple[str, ...] = ()
    line: int = 1
    lines: Mapping[str, int] = field(default_factory=dict)

    @property
    def title(self) -> str:
        """How messages name the block: `banded-ruffle "sleeve"`."""
        if self.of:
            return f'block of "{quoted(self.of)}"'
        named = self.name and self.name != self.technique
        technique = quoted(self.technique)
        return f'{technique} "{self.name}"' if named else technique

    def references(self) -> Iterator[tuple[str, re.Match[str]]]:
        """The fields that refer to another block's value."""
        for name, written in self.fields.items():
            for part in [written] if isinstance(written, str) else written:
                match = REFERENCE.fullmatch(part.strip())
                if match:
                    yield name, match

    @property
    def mentioned(self) -> set[str]:
        """The names of the blocks it refers to."""
        return {match["block"] for _, match in self.references()}


def read_block(
    written: Mapping[str, Written], line: int = 1, lines: Mapping[str, int] | None = None
) -> Block:
    """A block from its fields; raises RefusalsError for what no block may say."""
    refusals: list[RefusalError] = []
    words = {}
    for key in ("technique", GARMENT, "name", "of"):
        value = written.get(key, "")
        if isinstance(value, str):
            words[key] = value.strip()
        else:
            refusals.append(RefusalError(f"{key}: a list is not a name", key))
    if refusals:
        raise RefusalsError(refusals)
    block = Block(
        fields={key: value for key, value in written.items() if key not in RESERVED},
        technique=words["technique"] or words[GARMENT],
        name=words["name"],
        of=words["of"],
        show=_show(written.get("show", ()), words["of"], refusals),
        is_garment=bool(words[GARMENT]),
        sizes=read_sizes(written[SIZES], refusals) if SIZES in written else (),
        line=line,
        lines=lines or {},
    )
    refusals.extend(_slips(block))
    if words["technique"] and words[GARMENT]:
        refusals.append(RefusalError("a block has a technique or a garment, not both", GARMENT))
    if refusals:
        raise RefusalsError(refusals)
    return block


def _show(written: Written, of: str, refusals: list[RefusalError]) -> tuple[str, ...]:
    listed = SPLIT.split(written.strip()) if isinstance(written, str) else written
    special: dict[str, Collection[str]] = {PAGE: PAGE_PARTS, LIBRARY: LIBRARY_PARTS}
    known = special.get(of, PARTS)
    for part in listed:
        if part not in known:
            hint = nearest_name(part, known)
            refusals.append(RefusalError(f'show: there is no part "{quoted(part)}"{hint}', "show"))
    return tuple(listed) or tuple(part for part in known if part not in ONLY_WHEN_ASKED)


def read_sizes(written: Written, refusals: list[RefusalError]) -> tuple[str, ...]:
    """The sizes of a range (`50 to 74`, a list, or `all`), in order; notes what is no size."""
    words = [written.strip()] if isinstance(written, str) else list(written)
    if words == ["all"]:
        return tuple(LENGTHS)
    span = RANGE.fullmatch(words[0]) if len(words) == 1 else None
    listed = list(span.groups()) if span else [each for part in words for each in SPLIT.split(part)]
    if not listed:
        refusals.append(RefusalError("sizes: the list is empty; write sizes here, or all", SIZES))
    for size in listed:
        if size not in LENGTHS:
            text = f'sizes: "{quoted(size)}" is not one of {", ".join(LENGTHS)}'
            refusals.append(RefusalError(text, SIZES))
            return ()
    if span:
        first, last = sorted(int(each) for each in listed)
        return tuple(size for size in LENGTHS if first <= int(size) <= last)
    return tuple(size for size in LENGTHS if size in listed)


def _slips(block: Block) -> Iterator[RefusalError]:
    if block.technique and block.of:
        yield RefusalError("a block has a technique or is of another block, not both", "of")
    if not block.technique and not block.of:
        yield RefusalError(
            "the block names no technique; write for instance technique: gathered-ruffle",
            "technique",
        )
    if block.sizes and not block.is_garment:
        yield RefusalError("sizes: only a garment is graded; take sizes out", SIZES)
    if block.name and (not NAME.fullmatch(block.name) or block.name in TAKEN_NAMES):
        yield RefusalError(
            f'name: "{quoted(block.name)}" cannot name a block; use small letters, digits and '
            f"hyphens, but not {', '.join(sorted(TAKEN_NAMES))}",
            "name",
        )
    if block.of and block.name:
        yield RefusalError(f'name: a block of "{quoted(block.of)}" has no name of its own', "name")
    if block.of:
        for name in block.fields:
            yield RefusalError(
                f'{quoted(name)}: a block of "{quoted(block.of)}" takes only of and show', name
            )

"""Finds `calc` fences, headings and inline values in Markdown, with their true line numbers.

Fences are recognised as the fence extension does: after any indent or quotation mark, so in
lists, admonitions, tabs and quotations too, and never inside another fence. What stands in a
comment of several lines is left alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import count

_OPENING = re.compile(r"^(?P<prefix>[> \t]*)(?P<marks>`{3,}|~{3,})[ ]*(?P<info>[^`]*)$")
_CALC = re.compile(r"calc\b|\{\s*\.calc\b")
COMMENT = r"<!--(?:(?!<!--|-->).)*-->"
_UNREAD = re.compile(rf"(?<!`)(`+)(?!`).*?(?<!`)\1(?!`)|{COMMENT}")
OF_PAGE = re.compile(r"^\s*of:\s*page\s*$", re.MULTILINE)
INLINE = re.compile(r"\{\{(?P<words>[^{}]*)\}\}")
_ATTRIBUTES = re.compile(r"\{[^{}]*\}\s*$")
_UNDERLINE = re.compile(r"(?:=+|-+) *")


@dataclass(frozen=True)
class Fence:
    """A calc fence: the line of its opening, and its body without indent."""

    line: int
    body: str


@dataclass(frozen=True)
class Heading:
    """A heading, at its line: its level, and its words."""

    line: int
    level: int
    words: str


@dataclass(frozen=True)
class Mention:
    """Words between double braces in running text, and their line."""

    line: int
    words: str


@dataclass
class Scan:
    """What a page holds for us, and the lines of fences of any kind that are never closed."""

    fences: list[Fence] = field(default_factory=list)
    unclosed: list[int] = field(default_factory=list)
    mentions: list[Mention] = field(default_factory=list)
    headings: list[Heading] = field(default_factory=list)


def scan(markdown: str, numbers: Iterable[int] | None = None) -> Scan:
    """All calc fences, headings and inline values of a page.

    `numbers` are those of its lines in its file, where they do not count from 1.
    """
    found = Scan()
    text = markdown.replace("\r\n", "\n").split("\n")
    every = list(zip(count(1) if numbers is None else numbers, text, strict=False))
    last_comment = max((number for number, line in every if "-->" in line), default=0)
    lines = iter(every)
    paragraph: list[str] = []
    for number, line in lines:
        opening = _OPENING.match(line)
        if opening is None:
            found.headings.extend(_headings(number, line, paragraph))
            paragraph = [*paragraph[:1], line] if line.strip() else []
            read = _UNREAD.sub("", line)
            if "<!--" in read and number < last_comment:
                read = read.partition("<!--")[0]
                next(line for _, line in lines if "-->" in line)
            found.mentions.extend(_mentions(number, read))
            continue
        paragraph = []
        body, closed = _body(lines, opening)
        if not closed:
            found.unclosed.append(number)
        elif _CALC.match(opening["info"]):
            found.fences.append(Fence(number, body))
    return found


def _body(lines: Iterator[tuple[int, str]], opening: re.Match[str]) -> tuple[str, bool]:
    """The lines up to the closing marks, without the opening's indent and quotation marks."""
    closing = re.compile(rf"^[> \t]*{re.escape(opening['marks'])}[ \t]*$")
    body: list[str] = []
    for _, line in lines:
        if closing.match(line):
            return "\n".join(body), True
        body.append(_without(opening["prefix"], line))
    return "\n".join(body), False


def _without(prefix: str, line: str) -> str:
    start = 0
    for character in prefix:
        if start < len(line) and line[start] in {character, " ", ">"}:
            start += 1
    return line[start:]


def _headings(number: int, line: str, paragraph: Sequence[str]) -> Iterator[Heading]:
    """The heading that a line is, or makes of the only line before it by underlining it."""
    if line.startswith("#"):
        level = len(line) - len(line.lstrip("#"))
        yield Heading(number, level, _ATTRIBUTES.sub("", line).strip("# "))
    elif len(paragraph) == 1 and _UNDERLINE.fullmatch(line):
        yield Heading(number - 1, 1 if line.startswith("=") else 2, paragraph[0].strip())


def _mentions(number: int, line: str) -> Iterator[Mention]:
    for match in INLINE.finditer(line):
        yield Mention(number, match["words"].strip())


def signature(body: str) -> tuple[str, ...]:
    """A fence's body as it can be recognised again once Markdown has changed its white space."""
    lines = (line.replace(">", " ").split() for line in body.split("\n"))
    return tuple(" ".join(words) for words in lines if words)

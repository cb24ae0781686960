"""Finds `calc` fences and inline values in Markdown, with their true line numbers.

Fences are recognised as the fence extension does: after any indent or quotation mark, so in
lists, admonitions, tabs and quotations too, and never inside another fence. What stands in a
comment of several lines is left alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, field

_OPENING = re.compile(r"^(?P<prefix>[> \t]*)(?P<marks>`{3,}|~{3,})[ ]*(?P<info>[^`]*)$")
_CALC = re.compile(r"calc\b|\{\s*\.calc\b")
COMMENT = r"<!--(?:(?!<!--|-->).)*-->"
_UNREAD = re.compile(rf"(?<!`)(`+)(?!`).*?(?<!`)\1(?!`)|{COMMENT}")
OF_PAGE = re.compile(r"^\s*of:\s*page\s*$", re.MULTILINE)
INLINE = re.compile(r"\{\{(?P<words>[^{}]*)\}\}")


@dataclass(frozen=True)
class Fence:
    """A calc fence: the line of its opening, and its body without indent."""

    line: int
    body: str


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


def scan(markdown: str, first_line: int = 1) -> Scan:
    """All calc fences and inline values of a page whose text starts at `first_line`."""
    found = Scan()
    every = markdown.replace("\r\n", "\n").split("\n")
    last_comment = max((n for n, line in enumerate(every, first_line) if "-->" in line), default=0)
    lines = enumerate(every, first_line)
    for number, line in lines:
        opening = _OPENING.match(line)
        if opening is None:
            read = _UNREAD.sub("", line)
            if "<!--" in read and number < last_comment:
                read = read.partition("<!--")[0]
                next(line for _, line in lines if "-->" in line)
            found.mentions.extend(_mentions(number, read))
            continue
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


def _mentions(number: int, line: str) -> Iterator[Mention]:
    for match in INLINE.finditer(line):
        yield Mention(number, match["words"].strip())


def signature(body: str) -> tuple[str, ...]:
    """A fence's body as it can be recognised again once Markdown has changed its white space."""
    lines = (line.replace(">", " ").split() for line in body.split("\n"))
    return tuple(" ".join(words) for words in lines if words)

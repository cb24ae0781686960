"""YAML read safely: mappings of text, with the line of each key, and nothing else.

Every scalar stays text, so that `2:1`, `no` and `010` mean what the author wrote; anchors, tags
and deep nesting are refused, so that no document can grow or run.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

import yaml

from handout_engine.amounts.refusals import RefusalError, nearest_name, quoted
from handout_site.yaml_slips import (
    UNREADABLE_SIGN,
    first_sign,
    slip_in,
    slip_in_name,
    slip_in_text,
    slip_in_wrapped,
)

LONGEST = 20_000
DEEPEST = 6

_NO_TEXT = re.compile(
    "[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\x7f-\\x84\\x86-\\x9f\\ud800-\\udfff\\ufffe\\uffff]"
)

Plain = str | Sequence["Plain"] | Mapping[str, "Plain"]


@dataclass(frozen=True)
class Document:
    """A mapping with the line of each of its keys, counted from the document's first line.

    A key or an item further in is named by the way to it, items counted from 1: `seats/2/size`.
    """

    fields: Mapping[str, Plain]
    lines: Mapping[str, int] = field(default_factory=dict)


class DocumentError(Exception):
    """A document that cannot be read: the line (from 1) and what is wrong."""

    def __init__(self, line: int, message: str) -> None:
        """Keep line and sentence."""
        super().__init__(message)
        self.line = line
        self.message = message


class _Loader(yaml.SafeLoader):
    """Composes nodes and refuses what would make a document more than a plain tree."""

    depth = 0

    def compose_node(self, parent: yaml.Node | None, index: int) -> yaml.Node | None:
        event: yaml.Event = self.peek_event()  # type: ignore[no-untyped-call]
        line = event.start_mark.line + 1 if event.start_mark else 1
        if isinstance(event, yaml.AliasEvent):
            raise DocumentError(line, first_sign("*"))
        if getattr(event, "anchor", None) is not None:
            raise DocumentError(line, first_sign("&"))
        if getattr(event, "tag", None) is not None:
            raise DocumentError(line, first_sign("!"))
        if self.depth > DEEPEST:
            raise DocumentError(line, "this is nested too deeply")
        self.depth += 1
        node: yaml.Node | None = super().compose_node(parent, index)
        self.depth -= 1
        return node


def read_mapping(
    text: str, example: str, longest: int = LONGEST, *, wraps: bool = True
) -> Document:
    """Read a YAML mapping; raises DocumentError, which shows `example` when it is none.

    Where no value `wraps` over several lines, one that does is a line without its colon.
    """
    if len(text) > longest:
        raise DocumentError(1, f"{len(text)} characters are too many; the most is {longest}")
    try:
        node = _Loader(text).get_single_node()
    except yaml.YAMLError as error:
        line, words = slip_in(text, error)
        raise DocumentError(line, f"{words}; {example}") from None
    if node is None:
        return Document({})
    if not isinstance(node, yaml.MappingNode):
        line, words = slip_in_text(text)
        raise DocumentError(line, f"{words}; {example}")
    if not wraps:
        _refuse_wrapped(node, text, example)
    return Document(_mapping(node, text), dict(_lines(node, "")))


def _refuse_wrapped(node: yaml.Node, text: str, example: str) -> None:
    """Refuse values of several lines without quotation marks."""
    if isinstance(node, yaml.ScalarNode):
        first = node.start_mark.line + 1
        if not node.style and node.end_mark.line + 1 > first:
            line, words = slip_in_wrapped(text, first)
            raise DocumentError(line, f"{words}; {example}")
        return
    for child in node.value:
        for each in child if isinstance(child, tuple) else (child,):
            _refuse_wrapped(each, text, example)


def _lines(node: yaml.Node, way: str) -> Iterator[tuple[str, int]]:
    """The line of each key and item, by the way to it."""
    parts: list[tuple[object, yaml.Node, yaml.Node]] = []
    if isinstance(node, yaml.MappingNode):
        parts = [(key.value, key, value) for key, value in node.value]
    if isinstance(node, yaml.SequenceNode):
        parts = [(number, value, value) for number, value in enumerate(node.value, 1)]
    for name, marked, value in parts:
        yield f"{way}{name}", marked.start_mark.line + 1
        yield from _lines(value, f"{way}{name}/")


def _mapping(node: yaml.MappingNode, text: str) -> dict[str, Plain]:
    found: dict[str, Plain] = {}
    for key, value in node.value:
        line = key.start_mark.line + 1
        if not isinstance(key, yaml.ScalarNode):
            raise DocumentError(line, slip_in_name(text, line))
        _refuse_signs(key)
        if key.value in found:
            raise DocumentError(line, f"{quoted(key.value)} is written twice")
        found[key.value] = _plain(value, text)
    return found


def _plain(node: yaml.Node, text: str) -> Plain:
    if isinstance(node, yaml.SequenceNode):
        return [_plain(each, text) for each in node.value]
    if isinstance(node, yaml.MappingNode):
        return _mapping(node, text)
    _refuse_signs(node)
    return str(node.value)


def _refuse_signs(node: yaml.Node) -> None:
    """Refuse a sign that no page can hold, though YAML has a way to write it."""
    if _NO_TEXT.search(node.value):
        raise DocumentError(node.start_mark.line + 1, UNREADABLE_SIGN)


def refuse_unknown(document: Document, known: Mapping[str, str]) -> None:
    """Refuse a field that is not known, naming the nearest; raises DocumentError."""
    for name in document.fields:
        if name not in known:
            hint = nearest_name(name, known)
            raise DocumentError(document.lines[name], f'there is no field "{quoted(name)}"{hint}')


def refused(document: Document, name: str, refusal: RefusalError) -> DocumentError:
    """A refusal of one field's value as an error of the document.

    The line is that of the field, or of the place in it that the refusal names.
    """
    line = document.lines.get(f"{name}/{refusal.field}", document.lines[name])
    return DocumentError(line, f"{name}: {refusal.message}")

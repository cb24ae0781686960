"""YAML read safely: mappings of text, with the line of each key, and nothing else.

Every scalar stays text, so that `2:1`, `no` and `010` mean what the author wrote; anchors, tags
and deep nesting are refused, so that no document can grow or run.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

import yaml

from handout_engine.refusals import RefusalError, nearest_name, quoted

LONGEST = 20_000
DEEPEST = 6

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
            raise DocumentError(line, "a * reference cannot be used here")
        if getattr(event, "anchor", None) is not None:
            raise DocumentError(line, "an & anchor cannot be used here")
        if getattr(event, "tag", None) is not None:
            raise DocumentError(line, "a ! tag cannot be used here")
        if self.depth > DEEPEST:
            raise DocumentError(line, "this is nested too deeply")
        self.depth += 1
        node: yaml.Node | None = super().compose_node(parent, index)
        self.depth -= 1
        return node


def read_mapping(text: str, example: str, longest: int = LONGEST) -> Document:
    """Read a YAML mapping; raises DocumentError, which shows `example` when it is none."""
    if len(text) > longest:
        raise DocumentError(1, f"{len(text)} characters are too many; the most is {longest}")
    try:
        node = _Loader(text).get_single_node()
    except yaml.MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        line = mark.line + 1 if mark else 1
        words = ", ".join(filter(None, (error.context, error.problem))) or "this cannot be read"
        raise DocumentError(line, f"{words}; {example}") from None
    except yaml.YAMLError:
        raise DocumentError(1, f"a character here cannot be read; {example}") from None
    if node is None:
        return Document({})
    if not isinstance(node, yaml.MappingNode):
        raise DocumentError(1, f"this is not a list of fields; {example}")
    return Document(_mapping(node), dict(_lines(node, "")))


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


def _mapping(node: yaml.MappingNode) -> dict[str, Plain]:
    found: dict[str, Plain] = {}
    for key, value in node.value:
        line = key.start_mark.line + 1
        if not isinstance(key, yaml.ScalarNode):
            raise DocumentError(line, "a field's name must be one word")
        if key.value in found:
            raise DocumentError(line, f"{quoted(key.value)} is written twice")
        found[key.value] = _plain(value)
    return found


def _plain(node: yaml.Node) -> Plain:
    if isinstance(node, yaml.ScalarNode):
        return str(node.value)
    if isinstance(node, yaml.SequenceNode):
        return [_plain(each) for each in node.value]
    if isinstance(node, yaml.MappingNode):
        return _mapping(node)
    line = node.start_mark.line + 1
    raise DocumentError(line, "this is neither text, a list nor a mapping")


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

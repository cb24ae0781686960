"""The lines between `---` that a page may begin with: read strictly, since the theme trusts them.

MkDocs takes any YAML there, prints lines that it cannot read as the page's own text, and hands
dates and numbers on as what they look like. Here a title is what its author wrote, and a field that
the theme would stumble over is a slip with its line.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from sys import float_info
from typing import Any

import yaml
from mkdocs.utils.meta import get_data

from handout_engine.amounts.refusals import quoted
from handout_site.mappings import Document, DocumentError, Plain, read_mapping
from handout_site.slips import Slip

EXAMPLE = "such a line is title: Ruffles"
TEXTS = (
    "title",
    "summary",
    "practice",
    "time",
    "description",
    "author",
    "subtitle",
    "status",
    "revision_date",
    "location",
)
"""Fields that are one text: the handouts' own, and those that the theme prints."""
OURS = ("chapters", "handout", "on_paper", "picture", "seat", "size")
"""Fields that a build writes itself, for the site's own templates, which escape them."""
FILES = {"template": "{}", "icon": ".icons/{}.svg"}
"""Fields that name a file of the theme, and where it lies there."""
_BLOCK = re.compile(r"---[ \t]*\n(.*?\n)(?:\.{3}|-{3})[ \t]*\n", re.DOTALL)
_TEMPLATE = re.compile(r"[\w-]+\.html")

Has = Callable[[str], bool]
"""Whether the theme has a file."""


@dataclass(frozen=True)
class FrontMatter:
    """What a page says of itself: its fields as the theme gets them, and what must be mended."""

    fields: Mapping[str, Any]
    slips: tuple[Slip, ...] = ()


def read_front_matter(whole: str, file: str, has: Has | None = None) -> FrontMatter:
    """The front matter of a page's whole text; `has` knows the theme's files, where there is one.

    A field with a slip is left out, so that a page can be shown while its author mends it.
    """
    text = whole.replace("\r\n", "\n")
    found = _BLOCK.match(text)
    written = found[1] if found else ""
    try:
        document = read_mapping(written, EXAMPLE)
        _refuse_what_yaml_cannot_take(written)
    except DocumentError as error:
        line = error.line + 1
        return FrontMatter({}, (Slip(file, line, f"the lines between ---: {error.message}"),))
    taken: Mapping[str, Any] = get_data(text)[1]
    kept, slips = {}, []
    for name, value in taken.items():
        plain = document.fields.get(str(name), value if isinstance(value, str) else "")
        wrong = _wrong(str(name), plain, value, has)
        if wrong:
            line = _line(text, document, str(name))
            slips.append(Slip(file, line, f"{quoted(str(name))}: {wrong}"))
        elif plain or name not in TEXTS:
            kept[name] = plain if name in TEXTS else value
    return FrontMatter(kept, tuple(slips))


def front_matter_slips(whole: str, file: str) -> list[Slip]:
    """What is wrong in the front matter of a page, as far as it shows without the theme."""
    return list(read_front_matter(whole, file).slips)


def _line(text: str, document: Document, name: str) -> int:
    """The line of a field, between `---` or, without them, at the beginning of the page."""
    if name in document.lines:
        return document.lines[name] + 1
    lines = enumerate(text.split("\n"), 1)
    return next((n for n, line in lines if line.strip().lower().startswith(f"{name}:")), 1)


def _wrong(name: str, plain: Plain, value: object, has: Has | None) -> str:
    """What is wrong with a field as it is written, and as YAML takes it; nothing where it may be.

    `value` is what the theme would get, so that `yes` may stand for `true`.
    """
    if name in OURS:
        return "the page is given this when it is made; take the line out"
    if name in FILES and isinstance(plain, str):
        missing = has is not None and not (
            has(FILES[name].format(plain)) and (name != "template" or _TEMPLATE.fullmatch(plain))
        )
        return f'the theme has no {name} "{quoted(plain)}"; take the line out' if missing else ""
    if name in TEXTS or name in FILES:
        return "" if isinstance(plain, str) else "write one line of text here"
    fits, sentence = _SHAPES.get(name, (None, ""))
    return sentence if fits and not fits(value) else ""


def _names_parts(value: object) -> bool:
    """Whether something is the names of parts of a page, or nothing."""
    listed = value if isinstance(value, list) else [value or ""]
    return all(isinstance(each, str) for each in listed)


def _says_how_found(value: object) -> bool:
    """Whether something says how a page is found by searching, or nothing."""
    if not isinstance(value, dict):
        return value is None
    boost = value.get("boost", 1)
    return (
        isinstance(value.get("exclude", True), bool)
        and isinstance(boost, int | float)
        and abs(boost) <= float_info.max
    )


_SHAPES: Mapping[str, tuple[Callable[[object], bool], str]] = {
    "hide": (_names_parts, "write what the page is shown without, such as [navigation, toc]"),
    "search": (_says_how_found, "write {exclude: true}, or {boost: 2}"),
}
"""Fields that are no text: what they must be, and what to say where they are not."""


def _refuse_what_yaml_cannot_take(text: str) -> None:
    """Refuse what looks like a date or a number and is none; raises DocumentError."""
    node = yaml.compose(text, yaml.SafeLoader)
    for line, each in _values(node) if node else ():
        try:
            yaml.SafeLoader("").construct_document(each)
        except (ValueError, OverflowError, yaml.YAMLError):
            shown = quoted(each.value) if isinstance(each, yaml.ScalarNode) else "this"
            raise DocumentError(
                line,
                f"{shown} looks like a date or a number and is none; put quotation marks around it",
            ) from None


def _values(node: yaml.Node) -> Iterator[tuple[int, yaml.Node]]:
    """Every name and text in a document with its line, then the whole."""
    if isinstance(node, yaml.ScalarNode):
        yield node.start_mark.line + 1, node
        return
    for child in node.value:
        for each in child if isinstance(child, tuple) else (child,):
            yield from _values(each)
    yield node.start_mark.line + 1, node

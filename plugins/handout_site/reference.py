"""The reference page, generated from the code: all that an author may write, and what she gets.

It is Markdown, so that the site gives it the same menu, search and print as any other page.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

import click

from handout_engine.fragments import LIBRARY_PARTS, PAGE_PARTS, PARTS
from handout_engine.inputs import Input, declared_inputs
from handout_engine.register import find, keys
from handout_engine.saying import Tape
from handout_engine.sources import Ground
from handout_engine.technique import Technique, make
from handout_site.scenario import KEYS

ADDRESS = "reference.md"
TAPE = Tape(finest=32)
FIELDS = {
    "technique": "What the block works out, one of the techniques below.",
    "name": "How other blocks and `{{ name.value }}` speak of it; if left out, the technique's "
    "name.",
    "of": "Instead of a technique: show further parts of the block of that name, of `page`, or of "
    "`library`.",
    "show": "Which parts to show, a list or words in a row; all of them if left out.",
}


def reference(commands: click.Group) -> str:
    """The whole reference as Markdown; `commands` is the console script."""
    return "\n".join(_lines(commands))


def _lines(commands: click.Group) -> Iterable[str]:
    yield "# Reference"
    yield "\nGenerated from the code, so it says what is so.\n"
    yield "## Fields of a block\n"
    yield from _pairs("Field", FIELDS)
    yield "\nAll other fields are inputs of the technique, listed below.\n"
    yield "## Parts of a block\n"
    yield from _pairs("Part", {name: part.help for name, part in PARTS.items()})
    yield "\n## Parts of a page (`of: page`)\n"
    yield from _pairs("Part", {name: each[0] for name, each in PAGE_PARTS.items()})
    yield "\n## Parts of the library (`of: library`)\n"
    yield from _pairs("Part", {name: each[0] for name, each in LIBRARY_PARTS.items()})
    yield "\n## Keys of a scenario\n"
    yield from _pairs("Key", KEYS)
    yield "\n## Commands\n"
    yield from _pairs("Command", dict(_commands(commands)))
    yield "\n## Techniques\n"
    for technique in sorted(map(find, keys()), key=lambda each: (each.family, each.key())):
        yield from _technique(technique)


def _pairs(heading: str, pairs: Mapping[str, str]) -> Iterable[str]:
    yield f"| {heading} | What it is |\n|---|---|"
    for name, text in pairs.items():
        yield f"| `{name}` | {_cell(text)} |"


def _commands(commands: click.Group) -> Iterable[tuple[str, str]]:
    for name, command in sorted(commands.commands.items()):
        context = click.Context(command, info_name=f"handouts {name}")
        usage = " ".join(command.collect_usage_pieces(context))
        options = [each for each in command.params if isinstance(each, click.Option)]
        told = "".join(f" `{each.opts[0]}`: {each.help or each.type.name}." for each in options)
        yield f"handouts {name} {usage}", f"{command.get_short_help_str(200)}{told}"


def _technique(technique: type[Technique]) -> Iterable[str]:
    yield f"### {technique.title} (`{technique.key()}`)\n"
    yield f"{technique.summary}\n"
    yield "| Input | Default | Bounds | Help |\n|---|---|---|---|"
    for each in declared_inputs(technique):
        cells = (_default(each), each.kind.bounds(TAPE), each.help)
        yield f"| `{each.name}` | {' | '.join(map(_cell, cells))} |"
    yield "\nValues: " + ", ".join(f"`{name}`" for name in make(technique, {}).work().values)
    yield ""


def _default(each: Input) -> str:
    default = each.otherwise if each.default is None else each.default
    practice = each.basis.ground is Ground.PRACTICE
    return f"{default} (common practice, no source)" if practice else default


def _cell(text: str) -> str:
    """Text that cannot end its cell of the table."""
    return text.replace("|", "\\|").replace("\n", " ")

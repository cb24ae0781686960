"""The reference's page on the console script: each command with its options."""

from __future__ import annotations

from collections.abc import Iterator

import click

from handout_site.reference.writing import capital, pairs


def page(console: click.Group) -> str:
    """The page as Markdown."""
    return "\n".join(_lines(console))


def _lines(console: click.Group) -> Iterator[str]:
    yield "# Commands: reference\n"
    yield f"{(console.help or '').strip()} A command ends with 0 when all is well, with 1 when "
    yield "something must be mended (and says what), with 2 when it was called wrongly."
    for name, command in sorted(console.commands.items()):
        yield from _command(name, command)


def _command(name: str, command: click.Command) -> Iterator[str]:
    context = click.Context(command, info_name=f"handouts {name}")
    usage = " ".join(command.collect_usage_pieces(context))
    yield f"\n## {name}\n\n```text\nhandouts {name} {usage}\n```\n"
    yield f"{(command.help or '').strip()}\n"
    options = {
        ", ".join(each.opts): _option(each)
        for each in command.params
        if isinstance(each, click.Option)
    }
    if options:
        yield from pairs("Option", options)


def _option(option: click.Option) -> str:
    told = (option.help or "").rstrip(".")
    choices = getattr(option.type, "choices", ())
    if choices:
        told = f"{told}{': ' if told else ''}one of {', '.join(map(str, choices))}"
    told = capital(told or option.type.name)
    usual = option.default if option.show_default else None
    return f"{told}. If left out: {usual}." if usual else f"{told}."

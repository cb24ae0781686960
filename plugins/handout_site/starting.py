"""A commented page to start a handout from: `handouts new ruffles/cuff --technique ...`."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterable, Iterator
from pathlib import Path
from textwrap import fill, indent
from typing import NoReturn

import click

from handout_engine.amounts.inputs import MEASURES, Input, declared_inputs
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.refusals import RefusalError, quoted
from handout_engine.bodies.measures import USUAL_SIZE
from handout_engine.pages.blocks import PAGE
from handout_engine.register import find_of_kind
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Working
from handout_site.usual_sections import (
    AT_A_GLANCE,
    SECTIONS,
    SEW,
    YOUR_MEASURES,
    block_of,
    written_out,
)

USUAL_TECHNIQUE = "gathered-ruffle"
NAME = re.compile(r"[a-z][a-z0-9-]{0,39}/[a-z][a-z0-9-]{0,59}")
INTRODUCTION = "index"
WIDTH = 90
"""Of the lines of a note, in letters."""
SHORTEST_EDGE = millimetres(150)
"""An edge at least so long is taken for the example of a ruffle on a garment."""

OPENING = """\
---
title: {title}
summary: "One sentence on what is made, for lists and searches."
practice: First project
time: An evening
---

# {title}

<!-- Everything between these marks is a note to you and is not shown; take the notes out when you
     have read them. Check the page without building the site: handouts check {file}
     The page Reference lists what may be written into a block. -->

One or two sentences on what it is and when it is worn."""

SECTIONS_COME = """\
<!-- The block above does not say what it shows. So the usual sections come by themselves, as far as
     there is something to show in them:
{sections}
     To say something in one of them, write its heading and your words, as here. Headings of your
     own, such as Variations, stand where you put them. -->"""

GLANCE = """\
- **For:** whom it is for, and where it is worn.
- **Practice:** what one must have done before."""

ONE_LIST = """\
<!-- A block of yours in a section takes the place of what would stand there: this list is for all
     blocks of the page. -->"""

VALUE = """\
<!-- Say where to hold the tape. -->

<!-- A value in running text. Write no number by hand that hangs on a measure. -->

{label}: {{{{ {reference} }}}}."""

RUFFLE = """\
### {label}, with a ruffle

<!-- A technique takes its measure from the garment by name, and so follows every size. -->

```calc
technique: gathered-ruffle
name: ruffle
edge: garment.{edge}
show: [finished, cuts, steps]
```"""


@click.command("new")
@click.argument("name")
@click.option("--technique", help="What its first block works out; gathered-ruffle if left out.")
@click.option("--garment", help="A garment instead, sized to a baby.")
@click.option(
    "--folder",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    default=Path("handouts"),
    show_default=True,
    help="Where the handouts are.",
)
def new(name: str, technique: str | None, garment: str | None, folder: Path) -> None:
    """Start a handout NAME, such as ruffles/cuff: write a page with notes; overwrites nothing."""
    if technique and garment:
        raise click.UsageError("give --technique or --garment, not both")
    _refuse_name(name)
    file = folder / f"{name}.md"
    try:
        found = find_of_kind(garment or technique or USUAL_TECHNIQUE, garment=bool(garment))
    except RefusalError as refusal:
        _leave(refusal.message)
    text = starting_page(name, found, file.as_posix(), is_garment=bool(garment))
    _write(file, text, folder)
    click.echo(f"{file} is written; check it at any time with: handouts check {file}")


def starting_page(
    name: str, technique: type[Technique], file: str, *, is_garment: bool = False
) -> str:
    """The Markdown of a new handout: one block at its top, and the sections with words to write."""
    title = name.rpartition("/")[2].replace("-", " ").capitalize()
    block = "garment" if is_garment else technique.key().rpartition("-")[2]
    working = make(technique, {}).work()
    glance, sewing = [GLANCE], []
    if is_garment:
        glance += [ONE_LIST, block_of(PAGE, ("supplies",))]
        sewing = _ruffle(working)
    listed = fill(", ".join(section.heading for section in SECTIONS) + ".", WIDTH)
    parts = [
        OPENING.format(title=title, file=file),
        _block(technique, block, is_garment=is_garment),
        SECTIONS_COME.format(sections=indent(listed, " " * 5)),
        written_out(AT_A_GLANCE, glance),
        written_out(YOUR_MEASURES, [_value(working, block)]),
        *([written_out(SEW, sewing)] if sewing else []),
    ]
    return "\n\n".join(parts) + "\n"


def _block(technique: type[Technique], name: str, *, is_garment: bool) -> str:
    """The first block, with the inputs that an author will most likely write as notes in it."""
    key = technique.key()
    lines = [f"garment: {key}"] if is_garment else [f"technique: {key}", f"name: {name}"]
    if is_garment:
        lines += [
            f"size: {USUAL_SIZE}",
            "# The sizes that this page is offered in:",
            "sizes: 50 to 98",
        ]
    lines.append("# What is left out keeps its usual measure. To change one, take its # away:")
    lines.extend(_notes(declared_inputs(technique)))
    return "\n".join(["```calc", *lines, "```"])


def _notes(inputs: Iterable[Input]) -> Iterator[str]:
    for each in inputs:
        if each.group == MEASURES and each.default is not None:
            yield f"# {each.name}: {each.default}"


def _value(working: Working, block: str) -> str:
    """One value in running text: the first that is a length, or else the first."""
    values = list(working.values.values())
    value = next((each for each in values if isinstance(each.amount, Length)), values[0])
    label = value.label[:1].upper() + value.label[1:]
    return VALUE.format(label=label, reference=f"{block}.{value.name}")


def _ruffle(working: Working) -> list[str]:
    """A technique on one of the garment's edges; nothing where it has none long enough."""
    for value in working.values.values():
        if value.name.endswith("_edge") and value.length >= SHORTEST_EDGE:
            label = value.label[:1].upper() + value.label[1:]
            return [RUFFLE.format(label=label, edge=value.name)]
    return []


def _refuse_name(name: str) -> None:
    if not NAME.fullmatch(name):
        _leave(
            f'"{quoted(name)}" cannot name a handout; write its family and its own name in '
            "small letters, digits and hyphens, such as ruffles/cuff"
        )
    if name.endswith(f"/{INTRODUCTION}"):
        _leave(f'"{name}" is the introduction of a family, not a handout; give another name')


def _write(file: Path, text: str, folder: Path) -> None:
    """Write a file that is not there yet, inside the folder and nowhere else."""
    try:
        file.parent.mkdir(exist_ok=True)
        if not file.parent.resolve().is_relative_to(folder.resolve()):
            _leave(f"{file.parent} leads out of {folder}; give another family")
        with file.open("x", encoding="utf-8") as opened:
            opened.write(text)
    except FileExistsError:
        _leave(f"{file} is there already and stays as it is; give another name")
    except OSError as error:
        _leave(f"{file} cannot be written: {error.strerror}")


def _leave(sentence: str) -> NoReturn:
    click.echo(sentence, err=True)
    sys.exit(1)

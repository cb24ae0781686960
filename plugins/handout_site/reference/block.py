"""The reference's first page: what a block may say, how values are spoken of, what can be shown."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from handout_engine.bodies.measures import LENGTHS, USUAL_SIZE
from handout_engine.pages.fragments import LIBRARY_PARTS, ONLY_WHEN_ASKED, PAGE_PARTS, PARTS
from handout_site.reference import workable
from handout_site.reference.writing import code, pairs, rows, told
from handout_site.usual_sections import SECTIONS, Section

FIELDS = {
    "technique": "What the block works out, one of the techniques of this reference.",
    "garment": "What it works out, one of the garments, instead of a technique. The first garment "
    "of a page gives the page its size.",
    "name": "How other blocks and `{{ name.value }}` speak of it. If left out: the technique's "
    "name; a garment's block is called `garment`.",
    "of": "Instead of a technique or garment: show further parts of the block of that name, of "
    "`page`, or of `library`. Such a block has only `of` and `show`.",
    "show": "Which parts to show, a list or words in a row. If left out: all but "
    f"{', '.join(f'`{part}`' for part in ONLY_WHEN_ASKED)}. A page whose first block stands above "
    "all sections and leaves it out has the [usual sections](#usual-sections).",
    "sizes": "The sizes that a garment's page is offered in: `all`, a range such as `50 to 74`, or "
    f"a list; each of {', '.join(LENGTHS)}. Each has a page of its own.",
    "size": f"The size that a garment is made in. If left out: {USUAL_SIZE} for the page's first "
    "garment; another takes the first's, and with it every measure of the baby that both ask for.",
}
LAID_OUT = """
A page whose first block stands above all sections and has no `show` gets these by themselves, in
this order, as far as there is something to show; the block itself then shows the finished thing.
Words of yours below such a heading stand before its parts, a block there takes their place, and a
heading with nothing below it moves its section. No part comes that you show elsewhere.
"""
SPOKEN_OF = """
## How values are spoken of

Every input and every value of a block has a name, listed with its technique or garment.

- In running text `{{ name.value }}` puts in one value of a block of that name.
- In a field of another block `name.value`, with nothing around it, takes the value over exactly:
  `edge: garment.neck_edge`, wherever the other stands on the page. Two blocks may refer to each
  other, as a sleeve that is cut shorter by its ruffle and the ruffle that is as long as the
  sleeve's end, so long as no value needs itself; then the page says which way round it goes.
- Values are listed as they are with all inputs left to their defaults; other choices may give
  others. `handouts compute NAME` prints those of your own measures.

## Lengths, ratios, lists

Write a length with its unit (`9 in`, `1 1/2 in`, `23 mm`, `4.5 cm`, `3/8 yd`), a ratio as `2`,
`1.5` or `2:1`, a share as `3 %`. A list stands in brackets, `[2 in, 3 in]`, or below one another
with a hyphen before each. What cannot be read, or lies beyond the bounds, is said with its line and
nothing is published until it is mended.
"""


def page(families: Mapping[str, Sequence[str]]) -> str:
    """The page as Markdown."""
    return "\n".join(_lines(families))


def _lines(families: Mapping[str, Sequence[str]]) -> Iterator[str]:
    yield "# Reference\n"
    yield "All that may be written into a handout or a scenario, and what comes of it. It is made"
    yield "from the code at each build, so it says what is so.\n"
    yield from _contents(families)
    yield "\n## Fields of a block\n"
    yield from pairs("Field", FIELDS)
    yield "\nAll other fields are inputs of the technique or garment."
    yield SPOKEN_OF
    yield "## Parts of a block\n"
    yield from pairs("Part", {name: part.help for name, part in PARTS.items()})
    yield "\n## Parts of a page (`of: page`)\n"
    yield from pairs("Part", {name: each[0] for name, each in PAGE_PARTS.items()})
    yield "\n## Usual sections"
    yield LAID_OUT
    shown = ((each.heading, _shown(each)) for each in _sections())
    yield from rows("Section", shown, "What it shows")
    yield "\n## Parts of the library (`of: library`)\n"
    yield from pairs("Part", {name: each[0] for name, each in LIBRARY_PARTS.items()})
    yield f"\n## {workable.SHARED_TITLE}\n"
    yield "Everything that is cut from cloth takes these.\n"
    yield from rows("Input", ((code(each.name), told(each)) for each in workable.shared()))


def _sections() -> Iterator[Section]:
    """All usual sections, those inside another after it."""
    for section in SECTIONS:
        yield from (section, *section.below)


def _shown(section: Section) -> str:
    """The parts of a section, and of what."""
    parts = ", ".join(code(part) for group in section.shows for part in group)
    return f"{parts} of the page" if section.of_page else parts


def _contents(families: Mapping[str, Sequence[str]]) -> Iterator[str]:
    for family, members in families.items():
        names = ", ".join(f"[{key}]({workable.address(key)})" for key in members)
        yield f"- [{workable.title(family)}]({family}.md): {names}"
    yield "- [A baby's measures](baby.md): how to take them, and the table of sizes"
    yield "- [Scenarios](scenarios.md): who publishes what to whom"
    yield "- [Commands](commands.md): what can be done without building a site"

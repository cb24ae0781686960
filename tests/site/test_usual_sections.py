"""A page whose author lays nothing out has the usual sections, and hers go before."""

from __future__ import annotations

import re
from pathlib import Path
from time import perf_counter

import pytest
from click.testing import CliRunner
from hypothesis import given
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import html
from handout_engine.pages.fragments import PARTS
from handout_engine.pages.fragments.presence import has_part
from handout_engine.register import find
from handout_engine.working.technique import make
from handout_site.console import main
from handout_site.fences import scan
from handout_site.reading import MOST_BLOCKS, Handout, Terms, read_handout
from handout_site.usual_sections import LEVEL, SECTIONS
from small_sites import REPOSITORY, site_of, slips_of, small_site
from written_pages import calc, page, ruffle, set_in

USUAL = ["At a glance", "Your measures", "Before you cut", "Cautions", "Cut", "Mark", "Sew",
         "Where the numbers come from", "Sources"]  # fmt: skip
SLIP = calc("garment: slip", "size: 62", "sizes: 56 to 68")


def read(*parts: str) -> Handout:
    handout = read_handout(page(*parts), "page.md", Terms())
    assert handout.slips == []
    return handout


def outline(handout: Handout) -> list[str]:
    """The page from top to bottom: its headings, what each block shows, and `...` for words."""
    found: list[str] = []
    fences = iter(handout.page.blocks)
    plain = re.sub(r"```calc\n.*?\n```", "[block]", handout.markdown, flags=re.DOTALL)
    for line in filter(str.strip, plain.split("\n")[1:]):
        if line == "[block]":
            found.append(", ".join(next(fences).show))
        elif line.startswith("#"):
            found.append(line.strip("# "))
        elif found[-1:] != ["..."]:
            found.append("...")
    return found


def headings(handout: Handout) -> list[str]:
    return [each.words for each in scan(handout.markdown).headings][1:]


def test_a_page_of_one_block_has_all_sections_in_order():
    assert outline(read(ruffle("cuff"), "Words.\n")) == [
        "finished", "...",
        "At a glance", "supplies",
        "Your measures", "measures",
        "Before you cut", "sample", "Cautions", "cautions",
        "Cut", "cuts, layout",
        "Mark", "marks", "drawing",
        "Sew", "steps",
        "Where the numbers come from", "numbers",
        "Sources", "sources",
    ]  # fmt: skip


WRITTEN_OUT = """\
# A page

```calc
technique: gathered-ruffle
name: cuff
edge: 9 in
show: finished
```

## At a glance

```calc
of: cuff
show: supplies
```

## Your measures

```calc
of: cuff
show: measures
```

## Before you cut

```calc
of: cuff
show: sample
```

### Cautions

```calc
of: page
show: cautions
```

## Cut

```calc
of: cuff
show: [cuts, layout]
```

## Mark

```calc
of: cuff
show: marks
```

```calc
of: cuff
show: drawing
```

## Sew

Slowly.

```calc
of: cuff
show: steps
```

## Variations

None.

## Where the numbers come from

```calc
of: cuff
show: numbers
```

## Sources

```calc
of: page
show: sources
```
"""


def test_it_is_the_page_that_an_author_would_have_written_out(tmp_path: Path):
    short = page(ruffle("cuff"), "## Sew\n\nSlowly.\n\n## Variations\n\nNone.\n")
    built = site_of(tmp_path, {"ruffles/short.md": short, "ruffles/long.md": WRITTEN_OUT}).build()
    short_page, long_page = (f"handouts/ruffles/{name}.html" for name in ("short", "long"))
    assert built.article(short_page) == built.article(long_page)
    menus = [
        re.findall('<a href="(#[^"]*)"', built.page(each).partition('aria-label="Table of')[2])
        for each in (short_page, long_page)
    ]
    assert menus[0] == menus[1] and "#where-the-numbers-come-from" in menus[0]


def test_words_below_a_heading_stand_before_its_part_and_before_what_is_below():
    sew = "## Sew\n\nSlowly.\n\n### By hand\n\nSlower still.\n"
    found = outline(read(ruffle("cuff"), sew))
    start = found.index("Sew")
    assert found[start : start + 5] == ["Sew", "...", "steps", "By hand", "..."]


def test_a_block_takes_the_place_of_the_parts():
    found = outline(
        read(ruffle("cuff"), "## Cut\n", calc("of: cuff", "show: cuts"), "As it lies.\n")
    )
    start = found.index("Cut")
    assert found[start : start + 4] == ["Cut", "cuts", "...", "Mark"]


def test_what_is_shown_elsewhere_is_not_shown_again():
    own = [calc("of: page", "show: [supplies, layout]"), calc("of: cuff", "show: [steps, drawing]")]
    found = outline(read(ruffle("cuff"), "## All at once\n", *own))
    assert found[:3] == ["finished", "Your measures", "measures"]
    assert "Sew" not in found
    assert found[found.index("Mark") + 1] == "marks"
    assert found[found.index("Cut") + 1] == "cuts"


def test_steps_in_two_parts_are_the_steps():
    block = calc("garment: day-gown", "size: 62")
    shown = [calc("of: garment", f"show: {part}") for part in ("begin", "finish")]
    found = outline(read(block, "## Sew\n\n### First\n", shown[0], "### Then\n", shown[1]))
    assert found[found.index("Sew") :][:5] == ["Sew", "First", "begin", "Then", "finish"]
    assert "steps" not in found


@pytest.mark.parametrize(
    ("written", "order"),
    [
        ("## Variations\n", [*USUAL[:7], "Variations", *USUAL[7:]]),
        ("## Cut\n\n## Why\n\n## Sew\n",
         [*USUAL[:6], "Why", *USUAL[6:]]),
        ("## Why\n\n## Cut\n", [*USUAL[:4], "Why", *USUAL[4:]]),
        ("## Mark\n\n## Cut\n", [*USUAL[:4], "Mark", "Cut", *USUAL[6:]]),
        ("## Sources\n\n## Variations\n",
         [*USUAL[:8], "Sources", "Variations"]),
        ("## Before you sew\n\n### Cautions\n",
         [*USUAL[:3], *USUAL[4:7], "Before you sew", "Cautions", *USUAL[7:]]),
        ("## Before you cut\n\n### The iron\n",
         [*USUAL[:3], "The iron", *USUAL[3:]]),
        ("# Part two\n\n## Cut\n", [*USUAL[:4], "Part two", *USUAL[4:]]),
        ("## cut ##\n", [*USUAL[:4], "cut", *USUAL[5:]]),
        ("## Cut { #cutting }\n", USUAL),
        ("Cut\n---\n", USUAL),
    ],
)  # fmt: skip
def test_every_section_comes_once_and_what_is_written_keeps_its_place(written, order):
    assert headings(read(ruffle("cuff"), written)) == order


@pytest.mark.parametrize(
    "set_apart",
    ["~~~\n## Cut\n~~~\n", "<!--\n## Cut\n-->\n", "<!-- ## Cut -->\n", set_in("## Cut", "    ")],
)
def test_what_is_no_heading_is_taken_for_none(set_apart):
    assert [each for each in headings(read(ruffle("cuff"), set_apart)) if each == "Cut"] == ["Cut"]


def test_a_graded_garment_has_its_table_of_sizes_and_another_none():
    assert headings(read(SLIP))[-3:] == ["Other sizes", "Where the numbers come from", "Sources"]
    assert "Other sizes" not in headings(read(calc("garment: slip", "size: 62")))


@pytest.mark.parametrize(
    "text",
    [
        page(ruffle("cuff", "show: finished"), "## Sew\n"),
        page("## Sew\n", ruffle("cuff")),
        page("No block.\n", "## Sew\n"),
        page(calc("of: library", "show: gallery")),
    ],
    ids=[
        "it says what it shows",
        "it stands in a section",
        "nothing to work out",
        "of the library",
    ],
)
def test_any_other_page_has_what_is_written(text):
    found = {each.words for each in scan(read_handout(text, "page.md", Terms()).markdown).headings}
    assert found <= {"A page", "Sew", "Cautions", "Sources"}


def test_a_block_under_a_heading_still_shows_everything():
    (block, *_) = read("## Sew\n", ruffle("cuff")).page.blocks
    assert {"cuts", "steps", "numbers"} <= set(block.show)


def test_slips_below_have_the_lines_of_the_author_s_file(tmp_path: Path):
    low = calc("technique: hem", "name: low", "depth: 900 in")
    text = page(ruffle("cuff"), "## Cut\n\n{{ cuff.nothing }}\n", "## Sew\n", low)
    lines = text.split("\n")
    written = {lines.index(each) + 1 for each in ("{{ cuff.nothing }}", "depth: 900 in")}
    found = slips_of(small_site(tmp_path, text))
    assert {int(each.split(":")[1]) for each in found} == written


def test_a_page_of_the_most_blocks_gets_its_sections():
    other = [calc("of: cuff", "show: finished") for _ in range(MOST_BLOCKS - 1)]
    assert headings(read(ruffle("cuff"), *other)) == USUAL


def test_a_block_that_cannot_be_worked_out_keeps_its_sections():
    """So that the page does not lose its menu while a measure is being mended."""
    handout = read_handout(page(calc("technique: hem", "depth: 900 in")), "page.md", Terms())
    assert len(handout.slips) == 1
    assert headings(handout) == USUAL


def test_a_section_that_does_not_come_is_a_dead_end(tmp_path: Path):
    """`button-spacing` cuts nothing: a link to its Cut leads nowhere, one to its Sew does."""
    site = site_of(tmp_path, {"closures/buttons.md": page(calc("technique: button-spacing")),
                              "closures/try.md": "# Try\n\n[Sew](buttons.md#sew)\n"})  # fmt: skip
    assert site.build().warnings == []
    site.write("handouts/closures/try.md", "# Try\n\n[Cut](buttons.md#cut)\n")
    result = CliRunner().invoke(main, ["check", str(tmp_path / "handouts")])
    assert 'leads to a place that is not there: "#cut"' in result.stderr


@pytest.mark.parametrize("key", [*register.technique_keys(), *register.garment_keys()])
def test_a_part_is_said_to_be_there_when_something_is_made_of_it(key):
    working = make(find(key), {}).work()
    for part, each in PARTS.items():
        made = each.make(working, Tape(), "x")
        words = "" if made is None else re.sub("<[^>]*>", "", html(made))
        assert has_part(working, part) == bool(words.strip()), part


def test_the_guide_lists_the_sections_as_they_come():
    guide = (REPOSITORY / "site_src" / "pages" / "author" / "handout.md").read_text("utf-8")
    table = guide.partition("| Section |")[2].partition("\n\n")[0]
    listed = re.findall(r"^\| ([A-Z][^|]*) \|", table, re.MULTILINE)
    assert listed == [section.heading for section in SECTIONS]


MARKS = st.sampled_from(["\n", "# ", "## ", "### ", "Cut", "Sew", "Cautions", "Sources", "---\n",
                         "```\n", "~~~\n", "```calc\n", "of: cuff\n", "of: page\n", "show: steps\n",
                         "<!--", "-->", "> ", "    ", "- ", "{#x}", "\r\n"])  # fmt: skip


def sections_of(markdown: str) -> list[str]:
    return [each.words.casefold() for each in scan(markdown).headings if each.level == LEVEL]


@given(st.lists(MARKS, max_size=40).map("".join))
def test_whatever_stands_below_the_block_no_section_comes_twice_and_lines_stay(text):
    whole = page(ruffle("cuff"), text)
    handout = read_handout(whole, "page.md", Terms())
    lines = whole.replace("\r\n", "\n").split("\n")
    kept = iter(handout.markdown.split("\n"))
    assert all(line in kept for line in lines), "every line is there, in its order"
    assert all(1 <= fence.line <= len(lines) for fence in handout.fences)
    if not scan(whole).unclosed:
        written, found = sections_of(whole), sections_of(handout.markdown)
        for section in SECTIONS:
            name = section.heading.casefold()
            assert found.count(name) <= max(1, written.count(name))


@pytest.mark.parametrize(
    "line", ["#" * 20_000, "# " * 10_000, "## " + "{" * 20_000, "a\n-\n" * 9_000]
)
def test_long_headings_are_read_at_once(line):
    start = perf_counter()
    scan(line)
    assert perf_counter() - start < 1

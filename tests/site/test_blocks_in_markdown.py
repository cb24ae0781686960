"""Blocks wherever Markdown allows a fence, and left alone where it shows one as code."""

from __future__ import annotations

from pathlib import Path
from xml.etree.ElementTree import fromstring

import pytest

from small_sites import slips_of, small_site
from written_pages import calc, page, ruffle, set_in

CUTS = ruffle("sleeve", "show: cuts")
PLACES = {
    "alone": CUTS,
    "in a paragraph": f"Before.\n{CUTS}After.\n",
    "in a list": "- item\n\n" + set_in(CUTS, "    "),
    "in a numbered list by three": "1. item\n\n" + set_in(CUTS, "   "),
    "in a nested list": "- item\n    - inner\n\n" + set_in(CUTS, "        "),
    "in a list, by tabs": "- item\n\n" + set_in(CUTS, "\t"),
    "in an admonition": "!!! note\n\n" + set_in(CUTS, "    "),
    "in a folded admonition": "??? note\n\n" + set_in(CUTS, "    "),
    "in a content tab": '=== "One"\n\n' + set_in(CUTS, "    "),
    "in a tab in a list": '- item\n\n    === "One"\n\n' + set_in(CUTS, "        "),
    "in a quotation": "> Words.\n>\n" + set_in(CUTS, "> "),
    "in a quoted list": "> - item\n>\n" + set_in(CUTS, ">     "),
    "in HTML with Markdown": f"<div markdown>\n\n{CUTS}\n</div>\n",
    "with tildes": CUTS.replace("```", "~~~"),
    "with longer marks": CUTS.replace("```", "`````"),
    "with a space before calc": CUTS.replace("```calc", "``` calc"),
    "as a class": CUTS.replace("```calc", "```{.calc}"),
    "with blank lines": CUTS.replace("\n", "\n\n"),
    "with a comment": CUTS.replace("edge: 9 in", "edge: 9 in  # measured twice"),
    "with quoted text": CUTS.replace("9 in", "'9 in'"),
}
SHOWN = {
    "in a longer fence": f"````text\n{CUTS}````\n",
    "in a fence of the other marks": f"~~~markdown\n{CUTS}~~~\n",
    "in another fence that is not closed before it": f"```text\n{CUTS}",
}


@pytest.mark.parametrize("text", PLACES.values(), ids=PLACES)
def test_a_block_is_worked_out(text: str, tmp_path: Path):
    built = small_site(tmp_path, page(text)).build()
    article = built.article()
    assert article.count("Cut list") == 2, "once as caption, once as the area's label"
    assert "technique:" not in article
    assert "data-handout-place" not in article
    assert built.warnings == []


@pytest.mark.parametrize("text", SHOWN.values(), ids=SHOWN)
def test_a_block_in_another_fence_is_shown_as_it_is(text: str, tmp_path: Path):
    built = small_site(tmp_path, page(text)).build()
    article = built.article()
    assert "handout-block" not in article
    assert "edge" in article
    assert built.warnings == []


def test_a_block_in_a_comment_is_left_alone(tmp_path: Path):
    text = page(f"<!-- not yet\n\n{calc('technique: no-such-thing')}\n-->\n", CUTS)
    article = small_site(tmp_path, text).build().article()
    assert article.count('data-block="sleeve"') == 1


def test_blocks_with_the_same_lines_are_each_worked_out(tmp_path: Path):
    twin = calc("technique: gathered-ruffle", "edge: 9 in", "show: [cuts, drawing]")
    article = small_site(tmp_path, page(twin, twin)).build().article()
    assert 'data-block="gathered-ruffle"' in article
    assert 'data-block="gathered-ruffle-2"' in article


def test_a_block_may_refer_to_one_that_stands_below_it(tmp_path: Path):
    above = calc("technique: gathered-ruffle", "name: top", "edge: middle.ruffle_length",
                 "show: measures")  # fmt: skip
    middle = calc("technique: gathered-ruffle", "name: middle", "edge: low.edge", "show: cuts")
    low = calc("technique: gathered-ruffle", "name: low", "edge: 10 in", "show: cuts")
    article = small_site(tmp_path, page(above, middle, low)).build().article()
    measures = article.split('data-block="top"')[1].split("</table>")[0]
    assert "20 1/2 in" in measures.replace("\u00a0", " "), "2 × 10 in and twice 1/4 in"


def test_a_block_shows_further_parts_of_another(tmp_path: Path):
    further = calc("of: sleeve", "show: [steps, numbers]")
    article = small_site(tmp_path, page(further, "Words.\n", CUTS)).build().article()
    assert article.count('data-block="sleeve"') == 2
    first, second = article.split('data-block="sleeve"')[1:]
    assert "<ol" in first and "Cut list" not in first
    assert "Cut list" in second and "<ol" not in second


def test_two_pages_do_not_see_each_other(tmp_path: Path):
    site = small_site(tmp_path, page(CUTS))
    site.write("handouts/ruffles/other.md", page("A ruffle {{ sleeve.cut_width }} wide.\n"))
    assert slips_of(site) == [
        'handouts/ruffles/other.md:3: {{ sleeve.cut_width }}: there is no block "sleeve" '
        "on this page"
    ]


def test_site_pages_compute_too(tmp_path: Path):
    site = small_site(tmp_path, page("Words.\n"))
    site.write("site_src/pages/index.md", "# Home\n\n" + CUTS)
    assert "Cut list" in site.build().article("index.html")


def test_text_of_an_author_is_escaped(tmp_path: Path):
    text = page(calc("technique: gathered-ruffle", "edge: '\"><script>alert(1)</script>'"))
    (said,) = slips_of(small_site(tmp_path, text))
    assert "does not start with a number" in said


def test_a_block_is_well_formed(tmp_path: Path):
    text = page(ruffle("sleeve", "show: [cuts, steps, numbers, drawing]"))
    article = small_site(tmp_path, text).build().article()
    block = article.split('<div class="handout-block"', 1)[1].split("<h2", 1)[0]
    fromstring('<div class="handout-block"' + block)

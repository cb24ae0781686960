"""`{{ block.value }}` in running text: put in wherever words are, left alone in code."""

from __future__ import annotations

from pathlib import Path

import pytest

from small_sites import small_site
from written_pages import page, ruffle

WIDTH = "2 3/4 in"
"""2 in deep, 1/4 in of seam, and a hem of two turns of 1/4 in."""
NARROW = ruffle("sleeve", "depth: 2 in", "hem: double", "show: cuts")
PLACES = {
    "in text": "A strip {{ sleeve.cut_width }} wide.\n",
    "without spaces": "A strip {{sleeve.cut_width}} wide.\n",
    "twice in a line": "{{ sleeve.cut_width }} and {{ sleeve.cut_width }}.\n",
    "at the start of a line": "{{ sleeve.cut_width }} wide.\n",
    "in a heading": "## A strip {{ sleeve.cut_width }} wide\n",
    "in a table": "| Strip | Wide |\n| --- | --- |\n| one | {{ sleeve.cut_width }} |\n",
    "in a link's text": "[A strip {{ sleeve.cut_width }} wide](other.md)\n",
    "in bold": "A strip **{{ sleeve.cut_width }} wide**.\n",
    "in a list": "- a strip {{ sleeve.cut_width }} wide\n",
    "in an admonition's title": '!!! note "A strip {{ sleeve.cut_width }} wide"\n\n    Words.\n',
    "in a quotation": "> A strip {{ sleeve.cut_width }} wide.\n",
    "beside a code span": "`edge` gives {{ sleeve.cut_width }}.\n",
}
CODE = {
    "in a code span": "Write `{{ sleeve.cut_width }}`.\n",
    "in a longer code span": "Write `` `{{ sleeve.cut_width }}` ``.\n",
    "in a fence": "```text\n{{ sleeve.cut_width }}\n```\n",
    "in indented code": "Write:\n\n    {{ sleeve.cut_width }}\n",
}


def built_article(folder: Path, text: str) -> str:
    site = small_site(folder, page(text, NARROW))
    site.write("handouts/ruffles/other.md", "# Other\n")
    built = site.build()
    assert built.warnings == []
    return built.article().replace("\u00a0", " ")


def test_the_strip_is_as_wide_as_these_tests_say(tmp_path: Path):
    cuts = built_article(tmp_path, "Words.\n").split("Cut list", 1)[1]
    assert WIDTH in cuts.split("</table>")[0]


@pytest.mark.parametrize("text", PLACES.values(), ids=PLACES)
def test_a_value_is_put_in(text: str, tmp_path: Path):
    before_block = built_article(tmp_path, text).split("handout-block")[0]
    assert 'data-value="sleeve.cut_width"' in before_block
    assert WIDTH in before_block
    assert "{{" not in before_block


@pytest.mark.parametrize("text", CODE.values(), ids=CODE)
def test_a_value_in_code_is_shown_as_it_is(text: str, tmp_path: Path):
    before_block = built_article(tmp_path, text).split("handout-block")[0]
    assert "{{ sleeve.cut_width }}" in before_block
    assert WIDTH not in before_block


def test_a_value_in_a_comment_is_left_alone(tmp_path: Path):
    built_article(tmp_path, "<!-- {{ nothing.at_all }} -->\n\n<!-- {{ one.more }}\n-->\n")


def test_a_title_with_a_value_names_the_page_in_words(tmp_path: Path):
    text = "# A ruffle {{ sleeve.cut_width }} wide\n\n" + NARROW
    html = small_site(tmp_path, text).build().page().replace("\u00a0", " ")
    title = html.split("<title>")[1].split("</title>")[0]
    assert "A ruffle 2 3/4 in" in title
    assert "{{" not in html.split("<article")[0]

"""Every page that computes ends with its cautions and sources, each once."""

from __future__ import annotations

from pathlib import Path

import pytest

from small_sites import small_site
from written_pages import calc, page, ruffle

ONE = ruffle("one", "show: cuts")
TWO = ruffle("two", "show: cuts")


def headings(folder: Path, text: str) -> tuple[int, int, int, int]:
    """How often a page has the headings and the parts: cautions and sources."""
    article = small_site(folder, text).build().article()
    counted = ('id="cautions"', 'class="cautions"', 'id="sources"', 'class="sources"')
    return tuple(article.count(each) for each in counted)  # type: ignore[return-value]


@pytest.mark.parametrize(
    ("text", "found"),
    [
        (page("Words.\n"), (0, 0, 0, 0)),
        (page(ONE), (1, 1, 1, 1)),
        (page(ONE, TWO), (1, 1, 1, 1)),
        (page(ONE, calc("of: page", "show: cautions")), (0, 1, 1, 1)),
        (page(ONE, calc("of: page", "show: sources")), (1, 1, 0, 1)),
        (page(ONE, calc("of: page", "show: [cautions, sources]")), (0, 1, 0, 1)),
        (page(ONE, calc("of: page")), (0, 1, 0, 1)),
        (page(ONE) + "\n- a list\n\n    at its end\n", (1, 1, 1, 1)),
        (page(ONE).rstrip("\n"), (1, 1, 1, 1)),
    ],
    ids=[
        "no block", "one block", "two blocks", "own cautions", "own sources", "own both",
        "own both by default", "after a list", "without an end of line",
    ],
)  # fmt: skip
def test_closing_parts_stand_once(text: str, found: tuple[int, ...], tmp_path: Path):
    assert headings(tmp_path, text) == found


def test_a_caution_of_two_blocks_is_printed_once(tmp_path: Path):
    article = small_site(tmp_path, page(ONE, TWO)).build().article()
    cautions = article.split('class="cautions"')[1].split("</ul>")[0]
    items = cautions.split("<li>")[1:]
    assert items
    assert len(items) == len(set(items))


def test_a_page_of_the_most_blocks_keeps_its_closing_parts(tmp_path: Path):
    hundred = page(*(calc("of: one", "show: cuts") for _ in range(99)), ONE)
    assert headings(tmp_path, hundred) == (1, 1, 1, 1)

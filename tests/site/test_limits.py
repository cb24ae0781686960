"""No text of an author can hang a build or end it with a traceback."""

from __future__ import annotations

from time import perf_counter

import pytest

from handout_site.fences import scan
from handout_site.mappings import DEEPEST, LONGEST, DocumentError, read_mapping
from handout_site.placing import put_in
from handout_site.reading import MOST_BLOCKS, Terms, read_handout
from written_pages import calc, page, ruffle

SECONDS = 2.0
"""Far more than any of these takes; a search that goes through all ways takes minutes."""

LONG = 20_000
LINES = {
    "open braces": "{{" * LONG,
    "braces and spaces": "{{" + " " * LONG,
    "braces and words": "{{ a" * LONG,
    "code marks of every length": " ".join("`" * length for length in range(1, 200)),
    "code marks": "` `` " * LONG,
    "comments opened": "<!-- " * LONG,
    "comments opened in many lines": "<!--\n" * LONG,
    "quotation marks": "> " * LONG,
    "fences": "```calc\n" * LONG,
    "longer and longer fences": "\n".join("`" * length for length in range(3, 1500)),
}


@pytest.mark.parametrize("text", LINES.values(), ids=LINES)
def test_a_page_is_scanned_in_no_time(text: str):
    start = perf_counter()
    scan(text)
    assert perf_counter() - start < SECONDS


@pytest.mark.parametrize("text", LINES.values(), ids=LINES)
def test_blocks_are_put_into_a_page_in_no_time(text: str):
    start = perf_counter()
    put_in(text + "<pre>" * LONG + "<code <script>" * LONG, str)
    assert perf_counter() - start < SECONDS


DOCUMENTS = {
    "brackets": "edge: " + "[" * 9_000,
    "brackets in many lines": "edge:\n" + " [\n" * 6_000,
    "braces": "edge: " + "{a: " * 4_000,
    "lists": "edge: " + "- " * 9_000,
    "mappings": "\n".join(" " * depth + "a:" for depth in range(150)),
    "questions": "? " * 9_000,
}


@pytest.mark.parametrize("text", DOCUMENTS.values(), ids=DOCUMENTS)
def test_a_deep_document_is_refused_at_once(text: str):
    start = perf_counter()
    with pytest.raises(DocumentError):
        read_mapping(text, "example")
    assert perf_counter() - start < SECONDS


def test_the_deepest_document_is_read():
    text = "a: " + "[" * (DEEPEST - 1) + "b" + "]" * (DEEPEST - 1)
    assert read_mapping(text, "").fields
    with pytest.raises(DocumentError, match="nested too deeply"):
        read_mapping(text.replace("b", "[b]"), "")


def test_the_longest_document_is_read():
    assert read_mapping("a: " + "b" * (LONGEST - 3), "").fields
    with pytest.raises(DocumentError, match="20001 characters are too many; the most is 20000"):
        read_mapping("a: " + "b" * (LONGEST - 2), "")


def test_one_block_too_many_is_refused_and_none_is_worked_out():
    most = [ruffle("one"), *(calc("of: one", "show: cuts") for _ in range(MOST_BLOCKS - 1))]
    assert read_handout(page(*most), "page.md", Terms()).slips == []
    handout = read_handout(page(*most, calc("of: one")), "page.md", Terms())
    assert [slip.text for slip in handout.slips] == [
        "101 blocks are too many for a page; the most is 100"
    ]
    assert handout.page.workings == {}

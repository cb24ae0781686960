"""The line in a message is the line in the author's file, however the file begins and ends."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import CliRunner

from handout_site.console import main
from small_sites import slips_of, small_site
from written_pages import calc, page, set_in

WRONG = calc("technique: gathered-ruffle", "edge: WRONG")
PLAIN = page("Words.\n", WRONG)
FRONT = "---\ntitle: A page\n---\n"
FILES = {
    "plain": PLAIN,
    "with blank lines before": "\n\n\n" + PLAIN,
    "with front matter": FRONT + PLAIN,
    "with front matter and blank lines": FRONT + "\n\n" + PLAIN,
    "with long front matter": "---\ntitle: A page\ntags:\n  - one\n  - two\n...\n\n" + PLAIN,
    "with old front matter": "title: A page\n\n" + PLAIN,
    "without an end of line": PLAIN.rstrip("\n"),
    "with blank lines after": PLAIN + "\n\n\n\n",
    "with a list before": page("- item\n\n    more\n", "- \n", WRONG),
    "with tabs": page("- item\n\n" + set_in(WRONG, "\t")),
    "with a block before": page(calc("technique: gathered-ruffle"), WRONG),
    "with another fence before": page("~~~text\n```calc\n~~~\n", WRONG),
    "with a comment before": page("<!-- one\n\ntwo -->\n", WRONG),
    "with blank lines in the block": page(WRONG.replace("edge", "\n\nedge")),
    "with odd white space": page("one\x0ctwo\x0bthree\x85four\u2028five\n", WRONG),
}
ENDINGS = {
    "unix": lambda text: text.encode(),
    "windows": lambda text: text.replace("\n", "\r\n").encode(),
    "with a byte order mark": lambda text: b"\xef\xbb\xbf" + text.encode(),
    "both": lambda text: b"\xef\xbb\xbf" + text.replace("\n", "\r\n").encode(),
}


def line_of_wrong(text: str) -> int:
    return text.split("WRONG", maxsplit=1)[0].count("\n") + 1


@pytest.mark.parametrize("ending", ENDINGS.values(), ids=ENDINGS)
@pytest.mark.parametrize("text", FILES.values(), ids=FILES)
def test_line_of_a_wrong_field(text: str, ending, tmp_path: Path, monkeypatch):
    site = small_site(tmp_path, ending(text))
    (said,) = slips_of(site)
    assert said.startswith(f"handouts/ruffles/try.md:{line_of_wrong(text)}: gathered-ruffle")
    monkeypatch.chdir(tmp_path)
    checked = CliRunner().invoke(main, ["check", "handouts"])
    assert checked.stderr.splitlines() == [said]


def test_line_of_a_mention(tmp_path: Path):
    text = (FRONT + page("Words.\n", "A ruffle {{ no.where }}.\n")).replace("\n", "\r\n")
    (said,) = slips_of(small_site(tmp_path, text.encode()))
    assert said.startswith("handouts/ruffles/try.md:8: {{ no.where }}: ")

"""PDFs ready to download: printed once, of what stands on paper only, and said when left out."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from handout_site import paper, ready_pdfs
from handout_site.ready_pdfs import (
    DATE,
    MOST_ROUNDS,
    NO_BROWSER,
    Printing,
    find_program,
    printable,
    settled,
    with_page_numbers,
)
from small_sites import SmallSite, site_of

HANDOUT = """# Ruffle

[Hem](hem.md)

```calc
technique: gathered-ruffle
show: [finished]
```
"""
TEXTS = {"ruffles/ruffle.md": HANDOUT, "ruffles/hem.md": "# Hem\n\nOne sentence.\n"}
LINK = '<a href="ruffle.pdf">This page as PDF</a>'


class FakePress:
    """Stands for the browser: keeps what it is given, and gives it back as the PDF."""

    def __init__(self) -> None:
        self.printed: dict[str, str] = {}
        self.opened = 0

    @contextmanager
    def open(self, site: Path, program: str, url: str) -> Iterator[ready_pdfs.Press]:
        del site, program, url
        self.opened += 1
        yield self

    def __call__(self, address: str, document: str) -> bytes:
        self.printed[address] = document
        return document.encode()


@pytest.fixture
def press(monkeypatch: pytest.MonkeyPatch) -> FakePress:
    fake = FakePress()
    monkeypatch.setattr(ready_pdfs, "opened", fake.open)
    monkeypatch.setattr(paper, "find_program", lambda: ("a browser", ""))
    return fake


def with_pdfs(folder: Path, texts: dict[str, str] | None = None, wanted: str = "1") -> SmallSite:
    site = site_of(folder, texts or TEXTS)
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(f"{settings}      pdf: {wanted}\n", encoding="utf-8")
    return site


def test_each_handout_has_a_pdf_beside_it_and_a_link_to_it(tmp_path, press):
    built = with_pdfs(tmp_path).build()
    assert set(press.printed) == {"handouts/ruffles/hem.html", "handouts/ruffles/ruffle.html"}
    assert LINK in built.page("handouts/ruffles/ruffle.html")
    assert (built.folder / "handouts/ruffles/ruffle.pdf").read_bytes()
    assert "as PDF" not in built.page("index.html")


def test_an_unchanged_rebuild_prints_nothing_again(tmp_path, press):
    site = with_pdfs(tmp_path)
    first = (site.build().folder / "handouts/ruffles/ruffle.pdf").read_bytes()
    press.printed.clear()
    press.opened = 0
    second = (site.build().folder / "handouts/ruffles/ruffle.pdf").read_bytes()
    assert (press.printed, press.opened) == ({}, 0)
    assert first == second


def test_a_pdf_that_was_cut_short_is_printed_again(tmp_path, press):
    site = with_pdfs(tmp_path)
    first = (site.build().folder / "handouts/ruffles/ruffle.pdf").read_bytes()
    press.printed.clear()
    for path in (tmp_path / "site_src" / ".cache").rglob("*.pdf"):
        path.write_bytes(path.read_bytes()[:100])
    second = (site.build().folder / "handouts/ruffles/ruffle.pdf").read_bytes()
    assert set(press.printed) == {"handouts/ruffles/hem.html", "handouts/ruffles/ruffle.html"}
    assert first == second


def test_a_change_prints_only_what_it_changes(tmp_path, press):
    site = with_pdfs(tmp_path)
    site.build()
    press.printed.clear()
    site.write("handouts/ruffles/hem.md", "# Hem\n\nAnother sentence.\n")
    site.write("handouts/ruffles/third.md", "# A third one in the menu\n")
    site.build()
    assert set(press.printed) == {"handouts/ruffles/hem.html", "handouts/ruffles/third.html"}


def test_without_a_browser_the_site_has_no_link_and_says_once_why(tmp_path, monkeypatch, caplog):
    monkeypatch.setattr(ready_pdfs.shutil, "which", lambda _: None)
    with caplog.at_level(logging.INFO, logger="mkdocs.plugins.handouts"):
        built = with_pdfs(tmp_path).build()
    assert "as PDF" not in built.page("handouts/ruffles/ruffle.html")
    assert [each.message for each in caplog.records].count(NO_BROWSER) == 1
    assert not built.warnings, "what is left out is no warning, since builds are strict"


@pytest.mark.parametrize("package", ["playwright", "pypdf"])
def test_a_missing_package_is_named(package, monkeypatch):
    real = ready_pdfs.find_spec
    monkeypatch.setattr(
        ready_pdfs, "find_spec", lambda name: None if name == package else real(name)
    )
    program, missing = find_program()
    assert program is None
    assert 'pip install "heirloom-handouts[pdf]"' in missing


@pytest.mark.parametrize("wanted", ["0", "false"])
def test_pdfs_are_made_only_when_wanted(wanted, tmp_path, press):
    built = with_pdfs(tmp_path, wanted=wanted).build()
    assert press.opened == 0
    assert "as PDF" not in built.page("handouts/ruffles/ruffle.html")


def test_only_what_stands_on_paper_is_printed(tmp_path, press):
    with_pdfs(tmp_path).build()
    document = press.printed["handouts/ruffles/ruffle.html"]
    assert "<script" not in document and "<nav" not in document and "headerlink" not in document
    assert "as PDF" not in document and 'href="hem.html"' not in document
    assert "<a>Hem</a>" in document and "print-head" in document and "@page" in document


def test_links_stay_where_a_site_says_its_address():
    page = '<html><head></head><body><article><a href="hem.html">Hem</a></article></body></html>'
    assert '<a href="hem.html">' in printable(page, keep_links=True)
    assert "<a>Hem</a>" in printable(page, keep_links=False)


def test_a_pdf_is_settled_without_anything_in_it_moving():
    pdf = b"(D:20261125102144+00'00') /ID (node00002795) /Limits [(node00002795) (node00004000)]"
    other = b"(D:20301231235959+00'00') /ID (node00000007) /Limits [(node00000007) (node00000090)]"
    assert settled(pdf) == settled(other)
    assert len(settled(pdf)) == len(pdf) and DATE in settled(pdf)
    assert settled(pdf).count(b"node00000001") == 2


def test_contents_are_printed_until_their_numbers_are_true(monkeypatch):
    place = '<span class="page-number" data-of="handout-1"></span>'
    rounds = []

    def press(_, document):
        rounds.append(document)
        return document.encode()

    monkeypatch.setattr(ready_pdfs, "page_numbers", lambda _: {"handout-1": 3})
    pdf = Printing(press, "booklet.html", place).pdf()
    assert pdf.decode() == with_page_numbers(place, {"handout-1": 3}) == place.replace("><", ">3<")
    assert len(rounds) == 2
    counts = iter(range(9))
    monkeypatch.setattr(ready_pdfs, "page_numbers", lambda _: {"handout-1": next(counts)})
    rounds.clear()
    Printing(press, "booklet.html", place).pdf()
    assert len(rounds) == MOST_ROUNDS


def test_a_document_is_given_files_of_its_site_and_no_others(tmp_path):
    site = tmp_path / "site"
    (site / "assets").mkdir(parents=True)
    inside, outside = site / "assets" / "a b.css", tmp_path / "secret"
    inside.write_text("")
    outside.write_text("")
    (site / "link").symlink_to(outside)
    assert ready_pdfs.file_of(site, "assets/a%20b.css") == inside.resolve()
    for address in ("../secret", "..%2Fsecret", str(outside), f"/{outside}", "link", "none", ""):
        assert ready_pdfs.file_of(site, address) is None

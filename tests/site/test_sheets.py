"""True-scale sheets in a built site, and from the console."""

import builtins
import logging
import re

import pypdf
import pytest
from click.testing import CliRunner

from handout_site import extras, pdf, sheets
from handout_site.console import main
from small_sites import site_of

BLOCK = "```calc\ntechnique: lattice-panel\nname: yoke\n```\n"
WIDE = "```calc\ntechnique: lattice-panel\nname: wide\nwidth: 5 in\n```\n"
HANDOUTS = {
    "lattice/a.md": f"# A\n\n{BLOCK}",
    "lattice/b.md": f"# B\n\n{BLOCK}\n{WIDE}",
    "other/c.md": f"# C\n\n{WIDE}",
}
LINK = re.compile(r'href="(sheets/[^"]+)"')
LETTER = "publisher: The guild\npaper: letter\n"


def needs_cairo():
    if pdf.find_printer() is None:
        pytest.skip("libcairo is not installed")


def site_with_pdfs(folder, scenario=LETTER):
    site = site_of(folder, HANDOUTS, scenario=scenario)
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(settings + "      pictures: true\n", encoding="utf-8")
    return site


def linked(built):
    """The sheets that each page links to; every one of them is there."""
    found = {}
    for address in ("lattice/a", "lattice/b", "other/c"):
        folder = built.folder / "handouts" / address.split("/")[0]
        links = LINK.findall(built.page(f"handouts/{address}.html"))
        found[address] = [folder / link for link in links]
        assert all(each.is_file() for each in found[address])
    return found


def test_each_page_s_sheet_lies_where_its_link_leads(tmp_path):
    built = site_of(tmp_path, HANDOUTS).build()
    assert built.warnings == []
    found = linked(built)
    assert {address: len(each) for address, each in found.items()} == {
        "lattice/a": 1, "lattice/b": 2, "other/c": 1}  # fmt: skip
    assert len(list(built.folder.rglob("sheets/*.html"))) == 3
    assert "this square is 5 cm" in found["lattice/a"][0].read_text(encoding="utf-8")


def test_where_libcairo_is_the_links_lead_to_pdfs_on_the_scenario_s_paper(tmp_path):
    needs_cairo()
    built = site_with_pdfs(tmp_path).build()
    assert built.warnings == []
    every = {path for paths in linked(built).values() for path in paths}
    assert len(every) == 3 and {path.suffix for path in every} == {".pdf"}
    assert not list(built.folder.rglob("sheets/*.html"))
    for path in every:
        (page,) = pypdf.PdfReader(path).pages
        size = float(page.mediabox.width), float(page.mediabox.height)
        assert size == pytest.approx((612, 792), abs=0.1)
    assert re.search(r'data-sheet="sheets/[^"]+\.html"', built.page("handouts/other/c.html"))


def test_two_builds_write_the_same_pdfs_and_the_second_makes_none(tmp_path, monkeypatch):
    needs_cairo()
    made = []
    real = pdf.find_printer()

    def counting(title, pages):
        made.append(title)
        return real(title, pages)

    monkeypatch.setattr(extras, "find_printer", lambda: counting)
    site = site_with_pdfs(tmp_path / "one")
    written = []
    for _ in range(2):
        built = site.build()
        written.append({path: path.read_bytes() for path in sorted(built.folder.rglob("*.pdf"))})
    assert written[0] == written[1] and len(written[0]) == 3
    assert len(made) == 2, "one for each measure, and none again"
    elsewhere = site_with_pdfs(tmp_path / "two").build()
    again = [path.read_bytes() for path in sorted(elsewhere.folder.rglob("*.pdf"))]
    assert again == list(written[0].values()) and len(made) == 4


def test_without_libcairo_the_site_says_so_and_no_link_dangles(tmp_path, monkeypatch, caplog):
    monkeypatch.setattr(extras, "find_printer", lambda: None)
    with caplog.at_level(logging.INFO, logger="mkdocs.plugins.handouts"):
        built = site_with_pdfs(tmp_path).build()
    every = [path for paths in linked(built).values() for path in paths]
    assert every and {path.suffix for path in every} == {".html"}
    assert [each.message for each in caplog.records].count(sheets.MISSING) == 1
    assert built.warnings == [], "what is left out is no warning, since builds are strict"


def test_without_libcairo_there_is_no_printer(monkeypatch):
    real = builtins.__import__

    def refuse(name, *args, **kwargs):
        if name == "cairocffi":
            raise OSError("no library called cairo-2 was found")
        return real(name, *args, **kwargs)

    monkeypatch.setattr(builtins, "__import__", refuse)
    assert pdf.find_printer() is None


def run(*words):
    return CliRunner().invoke(main, ["sheet", *map(str, words)])


def test_the_console_writes_a_pdf(tmp_path):
    needs_cairo()
    file = tmp_path / "sheet.pdf"
    result = run("spiral-flounce", "depth=3 in", "--pdf", file, "--paper", "letter")
    assert result.exit_code == 0, result.output
    pages = pypdf.PdfReader(file).pages
    assert len(pages) > 1
    assert "3 in" not in result.output
    assert {round(float(max(page.mediabox.width, page.mediabox.height))) for page in pages} == {792}


def test_the_console_writes_pages_and_whole_drawings_without_libcairo(tmp_path, monkeypatch):
    monkeypatch.setattr("handout_site.console.find_printer", lambda: None)
    html, svg = tmp_path / "sheet.html", tmp_path / "sheet.svg"
    assert run("lattice-panel", "--html", html, "--svg", svg).exit_code == 0
    assert "297mm" in html.read_text(encoding="utf-8")
    assert "this square is 5 cm" in svg.read_text(encoding="utf-8")
    refused = run("lattice-panel", "--pdf", tmp_path / "sheet.pdf")
    assert refused.exit_code == 1 and "needs libcairo" in refused.output


def test_the_console_says_when_there_is_no_sheet_or_no_file(tmp_path):
    file = tmp_path / "sheet.pdf"
    result = run("gathered-ruffle", "--pdf", file)
    assert result.exit_code == 1
    assert "gathered-ruffle: it has no true-scale sheet" in result.output
    assert not file.exists()
    result = run(
        "circular-flounce", "edge=2 yd", "depth=30 in", "cloth_width=118 in", "--pdf", file
    )
    assert result.exit_code == 1 and "The flounce is too large to print" in result.output
    result = run("lattice-panel")
    assert result.exit_code == 2 and "say where to write it" in result.output

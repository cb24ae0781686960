"""True-scale sheets in a built site, and from the console."""

import re

from click.testing import CliRunner

from handout_site.console import main
from small_sites import site_of

BLOCK = "```calc\ntechnique: lattice-panel\nname: yoke\n```\n"
WIDE = "```calc\ntechnique: lattice-panel\nname: yoke\nwidth: 5 in\n```\n"
LINK = re.compile(r'href="(sheets/[^"]+\.svg)"')


def test_each_page_s_sheet_lies_where_its_link_leads(tmp_path):
    site = site_of(
        tmp_path,
        {"lattice/a.md": f"# A\n\n{BLOCK}", "lattice/b.md": f"# B\n\n{BLOCK}\n{WIDE}".replace(
            "name: yoke\nwidth", "name: wide\nwidth"), "other/c.md": f"# C\n\n{WIDE}"},
    )  # fmt: skip
    built = site.build()
    assert built.warnings == []
    counts = {}
    for address in ("lattice/a", "lattice/b", "other/c"):
        links = LINK.findall(built.page(f"handouts/{address}.html"))
        counts[address] = len(links)
        for link in links:
            sheet = built.folder / "handouts" / address.split("/")[0] / link
            assert 'width="' in sheet.read_text(encoding="utf-8")
    assert counts == {"lattice/a": 1, "lattice/b": 2, "other/c": 1}
    assert len(list(built.folder.rglob("sheets/*.svg"))) == 3


def test_two_builds_write_the_same_sheets(tmp_path):
    sheets = []
    for name in ("one", "two"):
        built = site_of(tmp_path / name, {"lattice/a.md": f"# A\n\n{BLOCK}"}).build()
        sheets.append({path.name: path.read_bytes() for path in built.folder.rglob("*.svg")})
    assert sheets[0] == sheets[1] and sheets[0]


def test_the_console_writes_a_sheet(tmp_path):
    file = tmp_path / "sheet.svg"
    result = CliRunner().invoke(main, ["compute", "lattice-panel", "--sheet", str(file)])
    assert result.exit_code == 0
    assert "this square is 5 cm" in file.read_text(encoding="utf-8")


def test_the_console_says_when_there_is_no_sheet(tmp_path):
    file = tmp_path / "sheet.svg"
    result = CliRunner().invoke(main, ["compute", "gathered-ruffle", "--sheet", str(file)])
    assert result.exit_code == 1
    assert "gathered-ruffle has no true-scale sheet" in result.output
    assert not file.exists()

"""What `handouts check` says of links and pictures that lead nowhere."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner
from mkdocs.exceptions import Abort

from handout_site.console import main
from small_sites import REPOSITORY, Built, SmallSite, site_of

HEM = "# Hem\n\n## Press it\n\nWords.\n"
LEADING = """\
---
title: Try
---
# Try

![A hem](hem.png) and [the hem](hem.md), [pressed](hem.md#press-it), [here](#try).
[Home](../../index.md), [a seam](mailto:guild@example.org), [a rule](https://example.org/a.md).

<div id="raw" markdown>

[Raw](#raw), [a button](hem.md){ .md-button }, `[code](gone.md)`

</div>

```calc
technique: gathered-ruffle
```

```text
[In code](gone.md)
```

[Its cautions](#cautions)
"""
NOWHERE = {
    "a picture": ("![A hem](gone.png)",
                  'the picture "gone.png" leads to a file that is not there; its place is '
                  "site_src/pages/handouts/ruffles/gone.png"),
    "a picture elsewhere": ("![A hem](../lace/hem.png)",
                            'the picture "../lace/hem.png" leads to a file that is not there; its '
                            "place is site_src/pages/handouts/lace/hem.png"),
    "a page": ("[Seam](seam.md)", 'the link "seam.md" leads to a file that is not there'),
    "a page of the site": ("[Seam](../../seam.md)",
                           'the link "../../seam.md" leads to a file that is not there'),
    "a page as it is published": ("[Hem](hem.html)",
                                  'the link "hem.html" leads to a file that is not there'),
    "a folder": ("[Lace](../lace/)", 'the link "../lace/" leads to a file that is not there'),
    "a place on the page": ("[Press](#press-it)",
                            'the link "#press-it" leads to a place that is not there: "#press-it"'),
    "a place on another": ("[Press](hem.md#iron)",
                           'the link "hem.md#iron" leads to a place that is not there: "#iron"'),
    "the top of a server": ("[Hem](/handouts/ruffles/hem.md)",
                            'the link "/handouts/ruffles/hem.md" begins at the top of a server; '
                            "write where it leads from this page"),
    "a name defined below": ("[Seam][s]\n\n[s]: seam.md",
                             'the link "seam.md" leads to a file that is not there'),
    "within HTML": ('<div markdown>\n\n[Seam](seam.md)\n\n</div>',
                    'the link "seam.md" leads to a file that is not there'),
    "with a space": ("![A hem](the%20hem.png)",
                     'the picture "the%20hem.png" leads to a file that is not there; its place is '
                     "site_src/pages/handouts/ruffles/the hem.png"),
}  # fmt: skip


def site_with(folder: Path, text: str) -> SmallSite:
    site = site_of(folder, {"ruffles/try.md": text, "ruffles/hem.md": HEM})
    site.write("site_src/pages/handouts/ruffles/hem.png", b"a picture")
    return site


def check(*paths: Path) -> tuple[int, list[str]]:
    """Its status, and what it says, each with the path from the top folder."""
    result = CliRunner().invoke(main, ["check", *map(str, paths)])
    assert result.exception is None or isinstance(result.exception, SystemExit)
    return result.exit_code, result.stderr.splitlines()


def test_what_leads_somewhere_is_right(tmp_path: Path):
    site = site_with(tmp_path, LEADING)
    assert check(tmp_path / "handouts") == (0, [])
    assert site.build().warnings == []


@pytest.mark.parametrize(("written", "sentence"), NOWHERE.values(), ids=NOWHERE)
def test_what_leads_nowhere_has_its_sentence_with_its_line(
    written: str, sentence: str, tmp_path: Path
):
    site_with(tmp_path, f"# Try\n\nWords.\n\n{written}\n")
    file = tmp_path / "handouts" / "ruffles" / "try.md"
    status, said = check(file)
    line = 7 if "\n\n" in written else 5
    assert (status, said) == (1, [f"{file}:{line}: {sentence}"])


def test_the_check_sees_what_a_strict_build_warns_of_and_nothing_else(tmp_path: Path):
    """One page with all of them: MkDocs names the same addresses, found in its own way."""
    text = "\n\n".join([LEADING, *(f"- {written}" for written, _ in NOWHERE.values())])
    site = site_with(tmp_path, text)
    built = Built(tmp_path / "site")
    with pytest.raises(Abort):
        site.build(built)
    warned = {found[1] for text in built.warnings if (found := re.search(r"link '(.*?)'", text))}
    _, said = check(tmp_path / "handouts")
    checked = {found[1] for text in said if (found := re.search(r'(?:link|picture) "(.*?)"', text))}
    assert checked == warned
    assert len(warned) == len(NOWHERE) - 2, "seam.md stands there three times"


def test_all_places_of_one_slip_are_said(tmp_path: Path):
    site_with(tmp_path, "# Try\n\n[Seam](seam.md)\n\nAnd [again](seam.md).\n")
    file = tmp_path / "handouts" / "ruffles" / "try.md"
    assert [line.split(": ")[0] for line in check(file)[1]] == [f"{file}:3", f"{file}:5"]


def test_an_address_that_another_begins_with_is_said_on_its_own_lines_only(tmp_path: Path):
    """A sign that ends a line elsewhere, such as a form feed, is no new line in an editor."""
    (tmp_path / "b.md").write_text("# B\n\n## Cutting\n")
    text = '# A\n\n[On](b.md#cutting)\f[x](#a)\n\n[To](b.md#cut "Cut") and [so](b.md#cut)\n'
    (tmp_path / "a.md").write_text(text)
    assert check(tmp_path) == (
        1,
        [f'{tmp_path}/a.md:5: the link "b.md#cut" leads to a place that is not there: "#cut"'],
    )


def test_a_handout_that_the_scenario_leaves_out_is_there_all_the_same(tmp_path: Path):
    site = site_with(tmp_path, "# Try\n\n[Hem](hem.md), [press](hem.md#press-it), [x](#x)\n")
    site.write("scenarios/guild.yml", "publisher: The guild\nhandouts: [ruffles/try]\n")
    hem = tmp_path / "handouts" / "ruffles" / "hem.md"
    hem.write_text(HEM + "\n[Gone](gone.md)\n")
    assert [line.partition(": ")[2] for line in check(tmp_path / "handouts")[1]] == [
        'the link "gone.md" leads to a file that is not there',
        'the link "#x" leads to a place that is not there: "#x"',
    ]


def test_a_scenario_that_cannot_be_read_is_said(tmp_path: Path):
    site_with(tmp_path, "# Try\n").write("scenarios/guild.yml", "paper: parchment\n")
    status, said = check(tmp_path / "handouts")
    assert status == 1
    assert [line.split(":")[0] for line in said] == ["scenarios/guild.yml"]


def test_settings_that_cannot_be_read_are_one_sentence(tmp_path: Path):
    site_with(tmp_path, "# Try\n").write("site_src/mkdocs.yml", "nav: 3\n")
    status, said = check(tmp_path / "handouts")
    assert status == 1 and "configuration error" in said[-1]


def test_what_is_wrong_in_blocks_is_said_where_settings_cannot_be_read(tmp_path: Path):
    text = "# Try\n\n```calc\ntechnique: gathered-rufle\n```\n"
    site_with(tmp_path, text).write("site_src/mkdocs.yml", "nav: 3\n")
    status, said = check(tmp_path / "handouts")
    assert status == 1 and "configuration error" in said[-1]
    assert "try.md:4: " in said[0] and "gathered-rufle" in said[0]


def test_a_folder_without_a_site_is_held_against_itself(tmp_path: Path):
    """What lies above it is not known, and not judged."""
    (tmp_path / "sub").mkdir()
    (tmp_path / "sub" / "hem.md").write_text(HEM)
    (tmp_path / "hem.png").write_bytes(b"a picture")
    (tmp_path / "one.md").write_text(
        "# One\n\n![A hem](hem.png) [Hem](sub/hem.md#press-it) [Up](../elsewhere.md)\n\n"
        "![A hem](gone.png)\n\n[Hem](sub/hem.md#iron)\n"
    )
    for place in (tmp_path, tmp_path / "one.md"):
        status, said = check(place)
        assert status == 1
        assert [line.partition("one.md:")[2] for line in said] == [
            '5: the picture "gone.png" leads to a file that is not there; its place is gone.png',
            '7: the link "sub/hem.md#iron" leads to a place that is not there: "#iron"',
        ]


@pytest.mark.parametrize("address", ["x" * 400, "%00", "http://[half", "?", "#", "..", "a.md#%"])
def test_no_address_is_too_odd(address: str, tmp_path: Path):
    (tmp_path / "one.md").write_text(f"# One\n\n[Odd]({address})\n\n![Odd]({address})\n")
    status, said = check(tmp_path)
    assert all(line.startswith(str(tmp_path / "one.md:")) for line in said), (status, said)
    site_with(tmp_path / "site", f"# One\n\n[Odd]({address})\n")
    check(tmp_path / "site" / "handouts")


def test_a_page_that_is_no_text_has_no_places(tmp_path: Path):
    site_with(tmp_path, "# Try\n\n[Hem](hem.md#iron)\n")
    (tmp_path / "handouts" / "ruffles" / "hem.md").write_bytes(b"# Hem \xff\n")
    status, said = check(tmp_path / "handouts" / "ruffles" / "try.md")
    assert (status, len(said)) == (1, 1)


def test_a_check_builds_nothing(tmp_path: Path):
    site_with(tmp_path, LEADING)
    before = sorted(tmp_path.rglob("*"))
    check(tmp_path / "handouts")
    assert sorted(tmp_path.rglob("*")) == before


def test_the_project_s_own_pages_lead_somewhere():
    pages = REPOSITORY / "site_src" / "pages"
    assert check(REPOSITORY / "handouts" / "bias", pages) == (0, [])

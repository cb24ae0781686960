"""What no reader of a file foresees, and what the environment does: one sentence, no traceback."""

from __future__ import annotations

import os
import resource
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from string import ascii_lowercase

import pytest
from mkdocs.exceptions import Abort

from handout_site import ready_pdfs
from handout_site.failures import Place, not_done, sentence_of, slip_of
from small_sites import REPOSITORY, Built, SmallSite, site_of, slips_of, small_site

RUFFLE = "# Try\n\n```calc\ntechnique: gathered-ruffle\nedge: 9 in\nshow: [finished, cuts]\n```\n"
SLIP = "# Slip\n\n```calc\ngarment: slip\nsize: {}\nsizes: 62 to 68\nshow: [cuts]\n```\n"


def with_options(site: SmallSite, options: str) -> SmallSite:
    settings = site.config_file.read_text(encoding="utf-8")
    site.write("site_src/mkdocs.yml", f"{settings}{options}")
    return site


def refusal(site: SmallSite) -> str:
    """The one message with which a build fails."""
    built = Built(site.folder / "site")
    with pytest.raises(Abort):
        site.build(built)
    (said,) = built.warnings
    return said


def slips_told(site: SmallSite) -> list[str]:
    """The slips of a build that fails while a page is made; MkDocs names that page beforehand."""
    built = Built(site.folder / "site")
    with pytest.raises(Abort):
        site.build(built)
    heading, *told = built.warnings[-1].splitlines()
    assert heading.startswith("nothing is published; ")
    return [line.strip() for line in told]


def ran(
    site: SmallSite, limit: Callable[[], None] | None = None, **environment: str
) -> subprocess.CompletedProcess[str]:
    """The command as it is run, in an environment."""
    words = [sys.executable, "-m", "mkdocs", "build", "--strict", "-f", str(site.config_file)]
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1", **environment}
    return subprocess.run(
        words, capture_output=True, text=True, env=told, check=False, preexec_fn=limit
    )


@pytest.mark.parametrize("size", ["sixty", "\u00b2"])
def test_a_size_that_is_none_is_refused_where_a_scenario_wants_all_sizes(size, tmp_path: Path):
    site = site_of(
        tmp_path, {"garments/slip.md": SLIP.format(size)}, scenario="publisher: g\nsizes: all\n"
    )
    (said,) = slips_of(site)
    assert said.startswith("handouts/garments/slip.md:5: ")
    assert "size" in said


def test_a_lesson_may_be_called_anything(tmp_path: Path):
    """Each has a booklet of its own, whatever its name would be."""
    titles = ["x" * 260, "x" * 261, "a", "a 4", "a", "\u00e9", "!", "2"]
    scenario = "publisher: The needlework guild\nlessons:\n" + "".join(
        f'  - title: "{title}"\n    handouts: [ruffles/a{number}]\n'
        for number, title in enumerate(titles)
    )
    handouts = {f"ruffles/a{number}.md": f"# A {number}\n" for number in range(len(titles))}
    site = site_of(tmp_path, handouts, scenario=scenario)
    built = with_options(site, "      booklets: true\n").build()
    booklets = [page for name, page in built.pages().items() if name.startswith("booklet-lesson")]
    assert len(booklets) == len(titles)
    for number, title in enumerate(titles, 1):
        said = f"<title>Lesson {number}: {title} in one booklet"
        assert [page for page in booklets if said in page], title


def test_a_page_that_is_named_as_a_booklet_stays_what_it_is(tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/try.md": RUFFLE})
    site.write("site_src/pages/booklet.md", "# My own booklet\n")
    settings = site.config_file.read_text(encoding="utf-8")
    site.write(
        "site_src/mkdocs.yml",
        settings.replace("  - Handouts:", "  - Mine: booklet.md\n  - Handouts:")
        + "      booklets: true\n",
    )
    built = site.build()
    assert "My own booklet" in built.article("booklet.html")
    assert "All handouts in one booklet" in built.article("booklet-2.html")


def test_a_handout_that_is_named_as_a_size_of_another_is_refused(tmp_path: Path):
    handouts = {"garments/slip.md": SLIP.format("62"), "garments/slip-size-68.md": RUFFLE}
    assert slips_of(site_of(tmp_path, handouts)) == [
        "handouts/garments/slip-size-68.md:1: a sized handout has a page of this name for one of "
        "its sizes; name the file anew"
    ]


FRONT = {
    "template: nope.html": 'template: the theme has no template "nope.html"; take the line out',
    "template: partials/nav.html": 'template: the theme has no template "partials/nav.html"; take '
    "the line out",
    "template: [a]": "template: write one line of text here",
    "icon: no/icon": 'icon: the theme has no icon "no/icon"; take the line out',
    "hide: 3": "hide: write what the page is shown without, such as [navigation, toc]",
    "hide: {a: b}": "hide: write what the page is shown without, such as [navigation, toc]",
    f"search: {{boost: {'9' * 400}}}": "search: write {exclude: true}, or {boost: 2}",
    "search: exclude": "search: write {exclude: true}, or {boost: 2}",
    "title: [a, b]": "title: write one line of text here",
    "chapters: 3": "chapters: the page is given this when it is made; take the line out",
    "a: [[[[[[[[b]]]]]]]]": "the lines between ---: this is nested too deeply",
    "a: 2026-13-45": "the lines between ---: 2026-13-45 looks like a date or a number and is none; "
    "put quotation marks around it",
    "a: !!python/name:os.system x": "the lines between ---: a value cannot begin with !; put it "
    "into quotation marks",
}


def test_odd_front_matter_is_refused_in_its_line(tmp_path: Path):
    pages = {
        f"ruffles/{name}.md": f"---\nsummary: A ruffle.\n{front}\n---\n{RUFFLE}"
        for name, front in zip(ascii_lowercase, FRONT, strict=False)
    }
    assert slips_of(site_of(tmp_path, pages)) == [
        f"handouts/{name}:3: {said}" for name, said in zip(pages, FRONT.values(), strict=True)
    ]


def test_front_matter_without_lines_around_it_is_read_as_strictly(tmp_path: Path):
    site = small_site(tmp_path, f"Summary: a\nTemplate: nope.html\n\n{RUFFLE}")
    assert slips_of(site) == [
        'handouts/ruffles/try.md:2: template: the theme has no template "nope.html"; take the line '
        "out"
    ]


def test_a_title_is_what_its_author_wrote(tmp_path: Path):
    titles = ["2026-01-01", "10:20:30", "yes", "1_000", "~", "0x10", ".inf"]
    pages = {
        f"ruffles/a{number}.md": f"---\ntitle: {title}\n---\nNo heading.\n"
        for number, title in enumerate(titles)
    }
    built = site_of(tmp_path, pages).build()
    for number, title in enumerate(titles):
        page = built.page(f"handouts/ruffles/a{number}.html")
        assert f"<title>{title} - " in page
        assert f"<h1>{title}</h1>" in page


PAGES = {
    "[x](http://[)": "an address cannot be read; look for a [ or ] behind its //",
    "[x](http://[abc]/)": "an address cannot be read; look for a [ or ] behind its //",
    "<http://[>": "an address cannot be read; look for a [ or ] behind its //",
    "a <![x": "<![ begins something that is not ended; write &lt;! in its place",
}


@pytest.mark.parametrize(("text", "said"), PAGES.items(), ids=PAGES)
def test_what_markdown_stumbles_over_is_told_with_its_line(text: str, said: str, tmp_path: Path):
    site = small_site(tmp_path, f"---\ntitle: A\n---\n{RUFFLE}\n{text}\n")
    assert slips_told(site) == [f"handouts/ruffles/try.md:12: {said}"]


def test_a_page_that_is_nested_too_deeply_is_named(tmp_path: Path):
    text = "<div markdown>\n" * 500 + "a\n" + "</div>\n" * 500
    assert slips_told(small_site(tmp_path, text)) == [
        "handouts/ruffles/try.md:1: this is nested too deeply: lists in lists, or notes in notes"
    ]


def test_what_was_found_wrong_before_is_told_as_well(tmp_path: Path):
    handouts = {"ruffles/a.md": "---\nhide: 3\n---\n# A\n", "ruffles/b.md": "# B\n\n<http://[>\n"}
    assert [each.partition(": ")[0] for each in slips_told(site_of(tmp_path, handouts))] == [
        "handouts/ruffles/a.md:2",
        "handouts/ruffles/b.md:3",
    ]


def test_booklets_without_their_template_are_refused(tmp_path: Path):
    site = with_options(small_site(tmp_path, RUFFLE), "      booklets: true\n")
    settings = site.config_file.read_text(encoding="utf-8")
    overrides = next(line for line in settings.splitlines() if "custom_dir" in line)
    site.write("site_src/mkdocs.yml", settings.replace(overrides, "  custom_dir: own"))
    site.write("site_src/own/note.txt", "Nothing.\n")
    line = settings.splitlines().index("      booklets: true") + 1
    assert slips_of(site) == [
        f"site_src/mkdocs.yml:{line}: booklets need the template booklet.html, which is not among "
        "the overrides; put it there, or write booklets: false"
    ]


def test_a_template_that_cannot_be_read_is_told_with_its_line(tmp_path: Path):
    site = small_site(tmp_path, RUFFLE)
    settings = site.config_file.read_text(encoding="utf-8")
    overrides = next(line for line in settings.splitlines() if "custom_dir" in line)
    site.write("site_src/mkdocs.yml", settings.replace(overrides, "  custom_dir: own"))
    file = site.write("site_src/own/main.html", "a\n{% if %}\n")
    assert f"{file}:2: the template cannot be used: " in refusal(site)


WORLD = {
    "SOURCE_DATE_EPOCH=abc": 'SOURCE_DATE_EPOCH is "abc"; write whole seconds since the beginning '
    "of 1970, such as 1767225600, or leave it out",
    "SOURCE_DATE_EPOCH=-1": 'SOURCE_DATE_EPOCH is "-1"; write whole seconds',
    "SOURCE_DATE_EPOCH=99999999999999": 'SOURCE_DATE_EPOCH is "99999999999999"; write whole',
    "HANDOUTS_PDF=abc": 'HANDOUTS_PDF is "abc"; write 1 to have PDFs, or leave it out',
    "HANDOUTS_PDF=[1": 'HANDOUTS_PDF is "[1"; write 1 to have PDFs, or leave it out',
    "HANDOUTS_SCENARIO=2026-13-45": 'there is no scenario "2026-13-45"; known: guild',
    "HANDOUTS_SCENARIO=12": 'there is no scenario "12"; known: guild',
    "HANDOUTS_SCENARIO=../a": '"../a" is not the name of a scenario in this folder',
    "HANDOUTS_SCENARIO=a\nb": '"a?b" is not the name of a scenario in this folder',
}


@pytest.mark.parametrize(("variable", "said"), WORLD.items(), ids=WORLD)
def test_the_environment_is_refused_in_a_sentence(
    variable: str, said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    name, _, value = variable.partition("=")
    site = small_site(tmp_path, RUFFLE)
    settings = site.config_file.read_text(encoding="utf-8")
    site.write("site_src/mkdocs.yml", settings.replace("      scenario: guild\n", ""))
    monkeypatch.setenv(name, value)
    assert said in refusal(site)


def small_files() -> None:
    """No file may grow beyond a few bytes, as on a disk that is full."""
    resource.setrlimit(resource.RLIMIT_FSIZE, (20_000, 20_000))


def test_a_full_disk_ends_a_build_with_a_sentence(tmp_path: Path):
    site = small_site(tmp_path, RUFFLE)
    result = ran(site, small_files)
    assert result.returncode == 1
    assert "Traceback" not in result.stdout + result.stderr
    assert f"{tmp_path}/.site.building-" in result.stderr
    assert "cannot be read or written: file too large" in result.stderr


def test_a_file_where_a_folder_belongs_ends_a_build_with_a_sentence(tmp_path: Path):
    site = with_options(small_site(tmp_path, RUFFLE), "      pictures: true\n")
    cache = site.write("site_src/.cache", "A file.\n")
    said = refusal(site)
    assert said.startswith(str(cache))
    assert said.endswith("cannot be read or written: not a directory")


def test_a_browser_that_does_not_print_ends_a_build_with_a_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
):
    pytest.importorskip("playwright")
    browser = tmp_path / "chromium"
    browser.write_text("#!/bin/sh\nexit 3\n")
    browser.chmod(0o755)
    monkeypatch.setattr(ready_pdfs, "PROGRAMS", (str(browser),))
    site = with_options(small_site(tmp_path, RUFFLE), "      pdf: 1\n")
    assert refusal(site).startswith("Chromium cannot print the pages: ")


def test_a_command_whose_output_finds_no_room_says_so():
    with Path("/dev/full").open("w") as full:
        words = [sys.executable, "-c", "from handout_site.console import main; main(['list'])"]
        result = subprocess.run(words, stdout=full, stderr=subprocess.PIPE, text=True, check=False)
    assert result.returncode == 1
    assert result.stderr == "what was made cannot be read or written: no space left on device\n"


def test_a_folder_whose_name_is_too_long_is_told():
    words = [sys.executable, "-c", "from handout_site.console import main; main()"]
    result = subprocess.run(
        [*words, "build", "guild", "--into", "x" * 300],
        cwd=REPOSITORY,
        capture_output=True,
        text=True,
        check=False,
    )
    assert result.returncode == 1
    assert (
        f"no site can be built in {REPOSITORY / ('x' * 300)}: File name too long" in result.stderr
    )
    assert "Traceback" not in result.stdout + result.stderr


def test_what_nobody_foresaw_names_its_page_and_the_way_to_see_more():
    slip = slip_of(ValueError("a\nb"), Place("handouts/a.md", "text", 5))
    assert str(slip) == (
        "handouts/a.md:1: the page cannot be made: a; run the build with --verbose to see where"
    )
    assert "the page cannot be made" in str(slip_of(ValueError("URL"), Place("handouts/a.md", "a")))
    assert sentence_of(ValueError("no")) == (
        "the site cannot be made: no; run the build with --verbose to see where"
    )
    assert not_done(OSError(28, "No space left on device", "a.html")) == (
        "a.html cannot be read or written: no space left on device"
    )

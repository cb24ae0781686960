"""`handouts new`: the page it writes can be checked and built as it is; it overwrites nothing."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.register import find
from handout_site.console import main
from handout_site.reading import Terms, read_handout
from handout_site.starting import starting_page
from small_sites import site_of


def run(*words: str) -> Result:
    return CliRunner().invoke(main, words)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    made = tmp_path / "handouts"
    made.mkdir()
    return made


def new(folder: Path, name: str, *words: str) -> Result:
    return run("new", name, "--folder", str(folder), *words)


def text_of(key: str) -> str:
    is_garment = register.is_garment(key)
    return starting_page("trial/page", find(key), "handouts/trial/page.md", is_garment=is_garment)


@pytest.mark.parametrize("key", register.keys())
def test_the_page_of_every_technique_and_garment_has_nothing_to_mend(key):
    text = text_of(key)
    handout = read_handout(text, "page.md", Terms())
    assert handout.slips == []
    assert handout.inlines, "a value in running text is shown"
    for number in range(len(handout.fences)):
        assert re.sub("<[^>]*>", "", handout.fragment(number)).strip(), "an empty section"
    for heading in ("At a glance", "Your measures", "Sew", "Where the numbers come from"):
        assert f"## {heading}\n" in handout.markdown


@pytest.mark.parametrize("key", register.keys())
def test_every_input_that_it_suggests_is_one_with_its_default(key):
    suggested = [line.removeprefix("# ").partition(": ") for line in text_of(key).split("\n")
                 if line.startswith("# ") and ": " in line]  # fmt: skip
    declared = {each.name: each for each in declared_inputs(find(key))}
    for name, _, default in suggested:
        if name in declared:
            assert declared[name].default == default


@pytest.mark.parametrize("key", ["gathered-ruffle", "tuck-fit", "slip", "bonnet"])
def test_its_suggestions_may_all_be_taken_at_once(key):
    lines = [line.removeprefix("# ") if line.startswith("# ") and ": " in line
             and line.removeprefix("# ").partition(":")[0].isidentifier() else line
             for line in text_of(key).split("\n")]  # fmt: skip
    assert len(lines) > 40
    assert read_handout("\n".join(lines), "page.md", Terms()).slips == []


@pytest.mark.parametrize(
    ("words", "block"),
    [
        ((), "technique: gathered-ruffle\nname: ruffle\n"),
        (("--technique", "pin-tucks"), "technique: pin-tucks\nname: tucks\n"),
        (("--garment", "slip"), "garment: slip\nsize: 62\n"),
    ],
)
def test_it_writes_a_page_that_check_and_a_strict_build_accept(tmp_path, words, block):
    site = site_of(tmp_path, {})
    result = new(tmp_path / "handouts", "ruffles/cuff-for-summer", *words)
    file = tmp_path / "handouts" / "ruffles" / "cuff-for-summer.md"
    assert (result.exit_code, result.stderr) == (0, "")
    assert result.output == (
        f"{file} is written; check it at any time with: handouts check {file}\n"
    )
    text = file.read_text(encoding="utf-8")
    assert block in text and "# Cuff for summer\n" in text
    assert run("check", str(file)).output == "1 file checked, nothing to mend\n"
    built = site.build()
    assert built.warnings == []
    words_of_page = built.words("handouts/ruffles/cuff-for-summer.html")
    assert "Where the numbers come from" in words_of_page
    assert "a note to you" not in words_of_page


def test_a_garment_s_page_has_every_size_and_a_ruffle_on_its_edge():
    text = text_of("slip")
    assert "sizes: 50 to 98" in text
    assert "of: garment\nshow: [sizes]" in read_handout(text, "page.md", Terms()).markdown
    assert "edge: garment.neck_edge" in text


def test_it_leaves_the_usual_sections_to_the_page():
    text = text_of("gathered-ruffle")
    assert "show:" not in text
    assert re.findall("^## (.*)$", text, re.MULTILINE) == ["At a glance", "Your measures"]


def test_it_never_overwrites(folder):
    assert new(folder, "ruffles/cuff").exit_code == 0
    file = folder / "ruffles" / "cuff.md"
    file.write_text("mine", encoding="utf-8")
    result = new(folder, "ruffles/cuff", "--technique", "hem")
    assert result.exit_code == 1
    assert result.stderr == f"{file} is there already and stays as it is; give another name\n"
    assert file.read_text(encoding="utf-8") == "mine"


@pytest.mark.parametrize(
    "name",
    ["cuff", "", "/cuff", "ruffles/", "../cuff", "ruffles/../cuff", "Ruffles/Cuff", "a/b/c",
     "ruffles/cuff.md", "ruffles/my cuff", "ruffles/" + "a" * 61, "ruffles/c\x00uff"],
)  # fmt: skip
def test_a_name_that_cannot_be_used_is_refused_in_one_sentence(folder, name):
    result = new(folder, name)
    assert result.exit_code == 1
    assert result.stderr.count("\n") == 1
    assert "cannot name a handout; write its family and its own name" in result.stderr
    assert list(folder.rglob("*")) == []


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (("ruffles/index",), '"ruffles/index" is the introduction of a family, not a handout'),
        (("a/b", "--technique", "hemm"), 'there is no technique "hemm"; did you mean "hem"?'),
        (("a/b", "--garment", "hem"), "hem is a technique; write technique: hem"),
        (("a/b", "--technique", "slip"), "slip is a garment; write garment: slip"),
        (("a/b", "--garment", "slipp"), 'there is no garment "slipp"; did you mean "slip"?'),
    ],
)
def test_what_cannot_be_started_is_one_sentence_and_no_file(folder, words, sentence):
    result = new(folder, *words)
    assert result.exit_code == 1
    assert result.stderr.startswith(sentence) and result.stderr.count("\n") == 1
    assert list(folder.rglob("*")) == []


def test_a_family_that_leads_elsewhere_is_refused(folder, tmp_path):
    (tmp_path / "elsewhere").mkdir()
    (folder / "ruffles").symlink_to(tmp_path / "elsewhere")
    result = new(folder, "ruffles/cuff")
    assert result.exit_code == 1
    assert "leads out of" in result.stderr
    assert list((tmp_path / "elsewhere").iterdir()) == []


@pytest.mark.parametrize(
    "words",
    [("new",), ("new", "a/b", "--garment", "slip", "--technique", "hem"),
     ("new", "a/b", "--folder", "no-such-folder")],
)  # fmt: skip
def test_wrong_use_is_status_2(words):
    assert run(*words).exit_code == 2

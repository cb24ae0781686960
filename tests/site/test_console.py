"""The console script: what it prints, and its status: 0, 1 for wrong input, 2 for wrong use."""

from __future__ import annotations

import inspect
import json
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from shutil import copytree
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner, Result
from mkdocs.exceptions import Abort

from handout_engine import register
from handout_engine.register import find, keys
from handout_site.console import main
from handout_site.standing_in import begin
from small_sites import site_of

BANDED = ("compute", "banded-ruffle", "edge=9 in", "shows=1 in", "band=1/4 in", "fullness=2")


def run(*words: str) -> Result:
    return CliRunner().invoke(main, words)


def test_compute_prints_what_is_cut_and_sewn():
    result = run(*BANDED)
    assert result.exit_code == 0
    assert result.stderr == ""
    for heading in ("Banded ruffle", "Cut", "Sew a sample first", "Sew", "Values", "Cautions"):
        assert f"{heading}\n" in result.output
    assert "facing strip, 2 in (51 mm) ×" in result.output


def test_where_leads_to_the_line_of_a_formula():
    said = run("where", "banded-ruffle", "facing_cut_width").output
    place, _, how = said.partition(": ")
    assert how == "facing strip, cut width = front strip, cut width + 2 × band + turn of cloth\n"
    path, _, line = place.rpartition(":")
    assert Path(path).name == "banded_ruffle.py"
    below = Path(path).read_text(encoding="utf-8").splitlines()[int(line) - 1 :]
    assert below[1].strip() == "def facing_cut_width(self) -> Length:"
    unknown = run("where", "banded-ruffle", "hang")
    assert unknown.exit_code == 1
    assert 'banded-ruffle has no value "hang"; did you mean "hangs"?' in unknown.stderr


@pytest.mark.parametrize("key", keys())
def test_every_value_is_worked_out_in_one_place_that_can_be_found(key: str):
    """In the technique's own room or below the families, by a method of the value's own name."""
    made = find(key)()
    families = Path(inspect.getfile(register)).parent / "families"
    room = Path(inspect.getfile(type(made))).parent
    for name in made.values:
        _, declared = made.declaration(name)
        path = Path(declared.work.__code__.co_filename)
        assert room in path.parents or families not in path.parents, name
        assert f"def {declared.name}(self" in path.read_text(encoding="utf-8"), name
        assert declared.name in name


def test_compute_speaks_metric_first_when_asked():
    assert "facing strip, 51 mm (2 in) ×" in run(*BANDED, "--units", "metric").output


def test_json_has_its_exact_shape():
    spelled = json.loads(run(*BANDED, "--json").output)
    assert list(spelled) == [
        "technique", "inputs", "values", "pieces", "steps", "cautions", "sources",
    ]  # fmt: skip
    assert spelled["technique"] == "banded-ruffle"
    assert spelled["inputs"]["edge"] == {"mm": 228.6, "text": "9 in"}
    assert spelled["inputs"]["fullness"] == 2
    assert spelled["inputs"]["ends"] == "open"
    assert spelled["values"]["facing_cut_width"] == {"mm": 50.8, "text": "2 in"}
    assert spelled["values"]["front_strips"] == 1
    piece = next(each for each in spelled["pieces"] if each["name"] == "facing strip")
    assert piece["count"] == 1
    assert piece["width"] == {"mm": 50.8, "text": "2 in"}
    assert spelled["steps"][0].keys() == {"text"}
    assert any(step.keys() == {"text", "measure"} for step in spelled["steps"])
    assert all(isinstance(text, str) for text in spelled["cautions"] + spelled["sources"])


@pytest.mark.parametrize("key", keys())
def test_every_value_of_every_technique_is_a_length_or_plain(key: str):
    spelled = json.loads(run("compute", key, "--json").output)
    for value in (spelled["values"] | spelled["inputs"]).values():
        for each in value if isinstance(value, list) else [value]:
            assert is_spelled(each), each


def is_spelled(value: object) -> bool:
    match value:
        case {"across": across, "down": down, **more}:
            return not more and is_spelled(across) and is_spelled(down)
        case {"mm": int() | float(), "text": str(), **more}:
            return more.keys() <= {"name"}
    return value is None or isinstance(value, str | int | float)


@pytest.mark.parametrize("key", keys())
def test_svg_is_well_formed_and_holds_every_drawing(key: str, tmp_path: Path):
    file = tmp_path / "drawings.svg"
    result = run("compute", key, "--svg", str(file))
    assert result.exit_code == 0
    sheet = ElementTree.fromstring(file.read_text(encoding="utf-8"))
    assert sheet.tag == "{http://www.w3.org/2000/svg}svg"
    assert len(sheet) >= 1
    ids = [each.get("id") for each in sheet.iter() if each.get("id")]
    assert len(ids) == len(set(ids))
    assert "var(" not in file.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (
            ("banded-rufle",),
            'banded-rufle: there is no technique "banded-rufle"; did you mean "banded-ruffle"?',
        ),
        (
            ("banded-ruffle", "edge=9"),
            'banded-ruffle: edge: "9" has no unit; write 9 in, 9 cm or 9 mm',
        ),
        (
            ("banded-ruffle", "edgee=9 in"),
            'banded-ruffle: there is no input "edgee"; did you mean "edge"?',
        ),
        (
            ("banded-ruffle", "edge=sleeve.edge"),
            'banded-ruffle: edge: "sleeve.edge" does not start with a number',
        ),
        (
            ("../../etc/passwd",),
            '../../etc/passwd: there is no technique "../../etc/passwd"; known: ',
        ),
    ],
)
def test_wrong_input_is_one_sentence_and_status_1(words: tuple[str, ...], sentence: str):
    result = run("compute", *words)
    assert result.exit_code == 1
    assert result.stdout == ""
    assert result.stderr.startswith(sentence)
    assert result.stderr.count("\n") == 1


def test_all_wrong_inputs_are_said_at_once():
    result = run("compute", "banded-ruffle", "edge=9", "band=1/0 in")
    assert result.stderr.splitlines() == [
        'banded-ruffle: edge: "9" has no unit; write 9 in, 9 cm or 9 mm',
        'banded-ruffle: band: "1/0 in" divides by nothing; the lower figure cannot be 0',
    ]


def test_a_ruffle_that_cannot_be_sewn_is_refused():
    result = run(*BANDED, "seam_allowance=1/2 in")
    assert result.exit_code == 1
    assert "seam_allowance 1/2 in is wider than band 1/4 in" in result.stderr


@pytest.mark.parametrize(
    "words",
    [
        ("compute",),
        ("compute", "banded-ruffle", "edge"),
        ("compute", "banded-ruffle", "edge=9 in", "edge=8 in"),
        ("compute", "banded-ruffle", "--units", "cubits"),
        ("compute", "banded-ruffle", "--unknown"),
        ("check",),
        ("check", "no-such-file.md"),
        ("mend",),
    ],
)
def test_wrong_use_is_status_2(words: tuple[str, ...]):
    result = run(*words)
    assert result.exit_code == 2
    assert "Usage: " in result.stderr


def test_a_drawing_that_cannot_be_written_is_one_sentence(tmp_path: Path):
    file = tmp_path / "no-such-folder" / "drawings.svg"
    result = run("compute", "banded-ruffle", "--svg", str(file))
    assert result.exit_code == 1
    assert result.stderr == f"{file} cannot be written: No such file or directory\n"


def test_list_names_every_technique_by_family():
    result = run("list")
    assert result.exit_code == 0
    lines = result.output.splitlines()
    assert lines == sorted(lines)
    assert sorted(line.split(": ")[1] for line in lines) == list(keys())


def test_check_of_sound_handouts(tmp_path: Path):
    (tmp_path / "sub").mkdir()
    (tmp_path / "one.md").write_text("# One\n")
    assert run("check", str(tmp_path)).output == "1 file checked, nothing to mend\n"
    (tmp_path / "sub" / "two.md").write_text("# Two\n")
    result = run("check", str(tmp_path))
    assert (result.exit_code, result.output) == (0, "2 files checked, nothing to mend\n")


def test_the_installed_command_gives_its_status_to_the_shell(tmp_path: Path):
    def status(*words: str) -> int:
        command = [sys.executable, "-c", "from handout_site.console import main; main()", *words]
        ran = subprocess.run(command, capture_output=True, text=True, check=False, cwd=tmp_path)
        assert "Traceback" not in ran.stderr
        return ran.returncode

    assert status("list") == 0
    assert status("compute", "banded-ruffle", "edge=9") == 1
    assert status("compute") == 2


def test_a_reader_that_stops_reading_leaves_no_traceback():
    program = "from handout_site.console import main; main()"
    with subprocess.Popen(
        [sys.executable, "-c", program, "compute", "banded-ruffle"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    ) as ran:
        assert ran.stdout is not None and ran.stderr is not None
        ran.stdout.close()
        assert "Traceback" not in ran.stderr.read()
    assert ran.returncode == 1


def test_build_makes_the_site_of_the_scenario_that_is_named(tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/try.md": "# A ruffle\n"})
    site.write("scenarios/other.yml", "publisher: The other guild\n")
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(
        settings.replace("scenario: guild", "scenario: !ENV [HANDOUTS_SCENARIO, guild]")
    )
    into = tmp_path / "built"
    words = ("build", "other", "--settings", str(site.config_file), "--into", str(into))
    result = run(*words)
    assert result.exit_code == 0, result.output
    assert "The other guild" in (into / "handouts/ruffles/try.html").read_text(encoding="utf-8")
    missing = run("build", "none", *words[2:])
    assert missing.exit_code == 1
    assert run(*words).exit_code == 0


def as_it_lies(folder: Path) -> None:
    """A letter, and nothing else."""


def beside_a_sitemap(folder: Path) -> None:
    """A site of somebody else, by its look."""
    (folder / "sitemap.xml").write_text("<urlset/>")
    (folder / "index.html").write_text("<h1>Not ours</h1>")


def where_a_site_was_copied_to(folder: Path) -> None:
    """A site of ours, copied among somebody's files with all that is in it."""
    new = begin(folder.parent / "site")
    (new.work / "sitemap.xml").write_text("<urlset/>")
    new.put_in_place()
    copytree(new.site, folder, dirs_exist_ok=True)


@pytest.mark.parametrize("lie", [as_it_lies, beside_a_sitemap, where_a_site_was_copied_to])
def test_build_empties_no_folder_of_other_files(lie: Callable[[Path], None], tmp_path: Path):
    site = site_of(tmp_path / "project", {"ruffles/try.md": "# A ruffle\n"})
    letter = tmp_path / "letters" / "letter.txt"
    letter.parent.mkdir()
    letter.write_text("Dear guild")
    lie(letter.parent)
    before = sorted(letter.parent.iterdir())
    result = run("build", "--settings", str(site.config_file), "--into", str(letter.parent))
    assert result.exit_code == 1
    assert "holds other files, which a build would delete" in result.output
    assert letter.read_text() == "Dear guild"
    assert sorted(letter.parent.iterdir()) == before


@pytest.mark.parametrize(
    "missing", ["![A ruffle](ruffle.png)", "[The hem](hem.md)", "[Press](#press)"]
)
def test_build_fails_for_what_is_missing_as_a_strict_build_does(missing: str, tmp_path: Path):
    site = site_of(tmp_path, {"ruffles/try.md": f"# A ruffle\n\n{missing}\n"})
    into = tmp_path / "built"
    result = run("build", "--settings", str(site.config_file), "--into", str(into))
    assert result.exit_code == 1
    assert not into.exists()
    with pytest.raises(Abort):
        site.build()

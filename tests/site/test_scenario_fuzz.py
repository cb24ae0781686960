"""Whatever stands in a scenario, between `---`, or in a page: a site, or sentences with a place.

A build never ends with an exception of its own, nor with the sentence that is kept for what nobody
foresaw; and while an author is looking on, every page is shown, whatever is wrong in it.
"""

from __future__ import annotations

import json
import logging
from collections.abc import Mapping
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from mkdocs.commands.build import build
from mkdocs.exceptions import Abort

from handout_site.course import LESSON_KEYS, SEAT_KEYS, SPARE_KEYS
from handout_site.failures import WHERE
from handout_site.front_matter import OURS, TEXTS, read_front_matter
from handout_site.library import Entry, entries, handout_names
from handout_site.scenario import KEYS, load_scenario
from handout_site.slips import Slip, SlipsError
from small_sites import REPOSITORY, Built, SmallSite, site_of
from thoroughness import SEARCHING

READ = settings(max_examples=5000 if SEARCHING else settings.default.max_examples)
"""For what is read without building a site."""
BUILT = settings(max_examples=300 if SEARCHING else 2)
"""For whole sites, each of many pages."""

RUFFLE = "# Try\n\n```calc\ntechnique: gathered-ruffle\nname: a\nedge: 9 in\nshow: [cuts]\n```\n"
SLIP = "# Slip\n\n```calc\ngarment: slip\nsize: 62\nsizes: 62 to 68\nshow: [cuts]\n```\n"
HANDOUTS = {"ruffles/index.md": "# Ruffles\n", "ruffles/try.md": RUFFLE, "garments/slip.md": SLIP}
COURSE = (REPOSITORY / "scenarios" / "course.yml").read_text(encoding="utf-8")
BABY = (REPOSITORY / "scenarios" / "baby.yml").read_text(encoding="utf-8")

WORDS = st.sampled_from(
    [
        "62",
        "68",
        "sixty",
        "\u00b2",
        "all",
        "none",
        "50 to 74",
        "74 to 50",
        "44 cm",
        "-44 cm",
        "10 %",
        "-1 %",
        "1e9 in",
        "a",
        "\u00e9",
        "",
        " ",
        "x" * 300,
        "<script>",
        "{{ a.b }}",
        "'",
        '"',
        "\\",
        "a: b",
        "# a",
        "\u2028",
        "\u0085",
        "\x07",
        "\ud800",
        "2026-01-01",
        "1e400",
        "nan",
        "0x10",
        "ruffles/try",
        "garments/slip",
        "ruffles/index",
        "../x",
        "garment",
        "cloth",
        "front",
    ]
)
NAMES = st.sampled_from(sorted({*KEYS, *LESSON_KEYS, *SEAT_KEYS, *SPARE_KEYS, "head", "fullness"}))
TREES = st.recursive(
    st.one_of(WORDS, st.text(max_size=8), st.integers(-9, 99), st.none(), st.booleans()),
    lambda inner: st.one_of(
        st.lists(inner, max_size=3), st.dictionaries(st.one_of(NAMES, WORDS), inner, max_size=3)
    ),
    max_leaves=8,
)
SEWN = st.lists(
    st.sampled_from(
        [
            "ruffles/try",
            "garments/slip",
            {"ruffles/try": ["a"]},
            {"ruffles/try": ["b"]},
            {"garments/slip": []},
        ]
    ),
    max_size=3,
)
MEASURES = st.dictionaries(
    st.sampled_from(["head", "chest", "body_length", "neck", "cloth_width", "fullness", "make"]),
    WORDS,
    max_size=3,
)
NEAR_RIGHT = st.fixed_dictionaries(
    {},
    optional={
        "publisher": WORDS,
        "licence": WORDS,
        "version": WORDS,
        "handouts": SEWN | TREES,
        "units": st.sampled_from(["inches", "metric"]),
        "size": WORDS,
        "sizes": WORDS | TREES,
        "measures": MEASURES,
        "inputs": MEASURES,
        "wardrobe": SEWN,
        "lessons": st.lists(
            st.fixed_dictionaries(
                {"title": WORDS},
                optional={
                    "aim": WORDS,
                    "handouts": SEWN,
                    "bring": st.lists(WORDS, max_size=2),
                    "prepare": st.lists(st.one_of(WORDS, st.just({"cut": ["front"]})), max_size=2),
                },
            ),
            max_size=3,
        ),
        "seats": st.lists(
            st.fixed_dictionaries(
                {},
                optional={
                    "name": WORDS,
                    "size": WORDS,
                    "measures": MEASURES,
                    "inputs": MEASURES,
                    "cloths": st.dictionaries(WORDS, WORDS, max_size=2),
                },
            ),
            max_size=3,
        ),
        "spares": st.dictionaries(st.sampled_from(sorted(SPARE_KEYS)), WORDS, max_size=3),
    },
)
LINE = st.tuples(st.integers(0, 200), WORDS | st.sampled_from(["- ", "  ", "\t", ": ", "[", "}"]))


def with_lines(text: str, changes: list[tuple[int, str]]) -> str:
    """A document in which something is written behind, before or in place of some lines."""
    lines = text.split("\n")
    for place, words in changes:
        number = place % len(lines)
        kept = lines[number]
        lines[number] = (f"{kept}{words}", f"{words}{kept}", words, f"{kept}\n{words}")[place % 4]
    return "\n".join(lines)


def as_yaml(tree: object) -> str:
    """YAML of a tree, in lines; what no file can hold is written as YAML writes it."""
    return json.dumps(tree, indent=1)


DOCUMENTS = st.one_of(
    st.dictionaries(NAMES, TREES, max_size=4).map(as_yaml),
    NEAR_RIGHT.map(as_yaml),
    NEAR_RIGHT.map(as_yaml),
    st.builds(with_lines, st.sampled_from([COURSE, BABY]), st.lists(LINE, min_size=1, max_size=3)),
    st.text(max_size=100),
)


def encoded(text: str) -> bytes:
    return text.encode("utf-8", errors="replace")


def said_with_a_place(slips: tuple[Slip, ...] | list[Slip]) -> None:
    """Every slip is one sentence with a place, and none of what nobody foresaw."""
    for slip in slips:
        assert slip.line >= 1
        assert slip.file
        assert slip.text
        assert len(str(slip).splitlines()) == 1, str(slip)
        assert WHERE not in slip.text


@pytest.fixture(scope="module")
def library(tmp_path_factory: pytest.TempPathFactory) -> tuple[Entry, ...]:
    site = site_of(tmp_path_factory.mktemp("library"), HANDOUTS)
    return entries(site.folder / "handouts")


@READ
@given(DOCUMENTS)
@example("size: sixty\nsizes: all\n")
@example('lessons: [{"title": "\\ud800"}]')
@example("lessons:\n - {}")
def test_any_scenario_is_read_or_refused_with_its_line(library: tuple[Entry, ...], text: str):
    with TemporaryDirectory() as folder:
        path = Path(folder) / "guild.yml"
        path.write_bytes(encoded(text))
        try:
            scenario = load_scenario(path, "scenarios/guild.yml", handout_names(library))
        except SlipsError as error:
            said_with_a_place(error.slips)
            lines = len(encoded(text).decode().splitlines()) + 1
            assert all(slip.line <= lines for slip in error.slips)
        else:
            assert scenario.file == "scenarios/guild.yml"


def shown(site: SmallSite) -> list[str]:
    """What is said while an author is looking on; the site is made, whatever is wrong."""
    config = site.config()
    config.strict = False
    config.plugins.on_startup(command="serve", dirty=False)
    said: list[str] = []
    keeper = logging.Handler(logging.ERROR)
    keeper.emit = lambda record: said.append(record.getMessage())  # type: ignore[method-assign]
    logging.getLogger("mkdocs").addHandler(keeper)
    try:
        build(config, serve_url="http://localhost/")
    except Abort:
        assert said
    finally:
        logging.getLogger("mkdocs").removeHandler(keeper)
    return said


def built_or_refused(handouts: Mapping[str, str | bytes], scenario: str) -> None:
    """A site is built strictly, or refused with sentences; and shown to its author."""
    with TemporaryDirectory() as folder:
        site = site_of(Path(folder), handouts)
        site.write("scenarios/guild.yml", encoded(scenario))
        settings_file = site.config_file.read_text(encoding="utf-8")
        site.write("site_src/mkdocs.yml", f"{settings_file}      booklets: true\n")
        built = Built(site.folder / "site")
        try:
            site.build(built)
        except Abort:
            assert not built.pages() or "not found" in str(built.warnings)
        said = [*built.warnings, *shown(site)]
        assert not [each for each in said if WHERE in each], said


@BUILT
@given(NEAR_RIGHT.map(as_yaml))
@example('{"sizes": "all", "lessons": [{"title": "' + "x" * 260 + '"}, {"title": "a"}]}')
def test_any_scenario_makes_a_site_or_says_why_not(text: str):
    built_or_refused(HANDOUTS, text)


FIELDS = st.one_of(
    st.sampled_from([*TEXTS, *OURS, "template", "icon", "hide", "search", "tags", "robots"]), WORDS
)
FRONT = st.one_of(
    st.dictionaries(FIELDS, TREES, max_size=4).map(
        lambda tree: "".join(
            f"{json.dumps(name)}: {json.dumps(value)}\n" for name, value in tree.items()
        )
    ),
    st.builds(
        "{}: {}\n".format,
        FIELDS,
        WORDS
        | st.sampled_from(
            [
                "nope.html",
                "main.html",
                "booklet.html",
                "redirect.html",
                "404.html",
                "sitemap.xml",
                "2026-01-01",
                "2026-13-45",
                "9" * 5000,
                "[" * 3000,
                "!!binary a",
                "&a [*a]",
                "*a",
                "~",
                "{exclude: true}",
                "{boost: 2}",
                "{boost: .nan}",
                "[navigation]",
                "10:20:30",
                ".inf",
                "material/sewing-machine",
                "!!python/object:os.system x",
                "<<: 3",
            ]
        ),
    ),
    st.text(max_size=60),
)


def page_with(front: str) -> str:
    return f"---\n{front}---\n{RUFFLE}"


@READ
@given(FRONT)
@example("a: " + "[" * 3000 + "\n")
@example("title: 2026-13-45\n")
def test_any_front_matter_is_read_or_refused_with_its_line(front: str):
    text = page_with(front)
    found = read_front_matter(text, "page.md")
    said_with_a_place(found.slips)
    assert all(slip.line <= len(text.splitlines()) for slip in found.slips)
    assert all(isinstance(found.fields[name], str) for name in TEXTS if name in found.fields)


@BUILT
@given(st.lists(FRONT, min_size=6, max_size=10))
@example(["template: nope.html\n", "hide: 3\n", "search: x\n", "title: 2026-01-01\n", "icon: a\n"])
def test_any_front_matter_makes_a_page_or_says_why_not(fronts: list[str]):
    pages = {
        f"ruffles/a{number}.md": encoded(page_with(front)) for number, front in enumerate(fronts)
    }
    built_or_refused({**HANDOUTS, **pages}, "publisher: The needlework guild\n")


PIECES = st.sampled_from(
    [
        "# ",
        "> ",
        "- ",
        "1. ",
        "    ",
        "\n",
        "\n\n",
        "```",
        "```calc\n",
        "~~~",
        "|",
        "|--|--|\n",
        "!!! note\n",
        '=== "a"\n',
        "??? note\n",
        "[a](",
        ")",
        "[a][b]",
        "[b]: http://[\n",
        "<http://[>",
        "//[",
        "]",
        "<div markdown>",
        "</div>",
        "<a>",
        "<img>",
        "<script>",
        "<!--",
        "-->",
        "<![",
        "<!",
        "<?",
        "&#0;",
        "{: #a .b c=d }",
        "{{ a.b }}",
        "{{",
        "}}",
        "`",
        "*",
        "**",
        "\\",
        "\x02",
        "\x03",
        "wzxhzdk:0",
        '<div data-handout-place="9"></div>',
        "a",
        "\u00e9 ",
        "\ud800",
        "edge: 9 in\n",
        "technique: hem\n",
    ]
)


@BUILT
@given(st.lists(st.lists(PIECES, max_size=30).map("".join), min_size=6, max_size=10))
@example(["[x](http://[)\n"])
@example(["a\n\n<![x[\n"])
def test_any_page_is_made_or_says_why_not(texts: list[str]):
    pages = {f"ruffles/a{number}.md": encoded(text) for number, text in enumerate(texts)}
    built_or_refused({**HANDOUTS, **pages}, "publisher: The needlework guild\n")

"""The reference: nothing that may be written is missing from it, and its pages can be read."""

from __future__ import annotations

import re
from functools import cache

import click
import pytest

from handout_engine import register
from handout_engine.amounts.inputs import BODY, declared_inputs
from handout_engine.bodies.body_table import CENTIMETRES
from handout_engine.bodies.measures import LENGTHS, MEASURES
from handout_engine.pages.fragments import LIBRARY_PARTS, PAGE_PARTS, PARTS
from handout_engine.register import find, keys
from handout_engine.working.technique import make
from handout_site import course, scenario
from handout_site.console import main
from handout_site.reference import FOLDER, menu, pages
from handout_site.reference.writing import bounds
from small_sites import SETTINGS, site_of

LONGEST = 60_000
"""So many characters of Markdown a page may have, to be read on a phone."""


@cache
def told() -> dict[str, str]:
    return pages(main)


@cache
def plain(name: str) -> str:
    return re.sub(r"<[^>]*>", "", told()[f"{FOLDER}{name}.md"])


def page_of(key: str) -> str:
    return plain(f"garment-{key}" if register.is_garment(key) else find(key).family)


def part_of(key: str) -> str:
    """What a page says of one technique, or the whole page of a garment."""
    text = page_of(key)
    if register.is_garment(key):
        return text
    return text.split(f"{{ #{key} }}", 1)[1].split("\n## ", 1)[0]


def addresses(nav: list) -> list[str]:
    found = []
    for item in nav:
        target = next(iter(item.values())) if isinstance(item, dict) else item
        found += addresses(target) if isinstance(target, list) else [target]
    return found


@pytest.mark.parametrize("key", keys())
def test_every_input_of_every_technique_and_garment_is_told_where_it_is(key):
    text, shared = part_of(key), plain("index")
    for each in declared_inputs(find(key)):
        assert each.name in text, each.name
        if each.help in text:
            assert each.group == BODY or bounds(each) in text.replace("From", "from").replace(
                "One of", "one of"
            )
        else:
            assert each.help in shared or each.help in plain("baby") or each.group == BODY


@pytest.mark.parametrize("key", keys())
def test_every_value_and_every_piece_of_the_defaults_is_named(key):
    working = make(find(key), {}).work()
    text = part_of(key)
    for name, value in working.values.items():
        assert f"| {name} | {value.label[:1].upper()}{value.label[1:]}: " in text.replace(
            "\\|", "|"
        )
    for piece in working.pieces:
        assert f"{piece.name} ({piece.count} from {piece.cloth})" in text


def test_every_edge_of_every_garment_is_in_the_table_of_edges():
    table = plain("garments").split("## Edges")[1]
    for key in register.garment_keys():
        for name in make(find(key), {}).work().values:
            if name.endswith("_edge"):
                row = next(line for line in table.split("\n") if line.startswith(f"| {name} |"))
                assert f"[{key}](garment-{key}.md)" in row


def test_everything_that_may_be_shown_is_told():
    for name in (*PARTS, *PAGE_PARTS, *LIBRARY_PARTS):
        assert f"| {name} |" in plain("index")


def test_every_key_of_a_scenario_is_told_and_those_of_lessons_seats_and_spares():
    every = (scenario.KEYS, course.LESSON_KEYS, course.SEAT_KEYS, course.SPARE_KEYS)
    for name, text in (pair for keys_of in every for pair in keys_of.items()):
        assert f"| {name} | {text} |" in plain("scenarios")


def test_every_command_and_every_option_is_told():
    text = plain("commands")
    for name, command in main.commands.items():
        assert f"\n## {name}\n" in text
        for each in command.params:
            if isinstance(each, click.Option):
                assert f"| {', '.join(each.opts)} |" in text


def test_every_measure_is_told_with_its_figures_and_what_they_rest_on():
    text = told()[f"{FOLDER}baby.md"]
    for name, measure in MEASURES.items():
        assert f"| {name} | {measure.help} " in plain("baby")
        assert f"| {measure.label} | {measure.basis.text} |" in text
        cells = "".join(f"<td>{figure}</td>" for figure in CENTIMETRES[name])
        assert cells in text, name
    assert text.count('scope="col"') == 2 * (1 + len(LENGTHS))


def test_what_is_estimated_is_marked_in_the_table():
    text = told()[f"{FOLDER}baby.md"]
    marked = set(re.findall(r'<th scope="row">([^<]*) \*</th>', text))
    assert marked == {"neck", "wrist", "back waist", "upper thigh"}


def test_no_page_is_too_long_for_a_phone():
    assert {name: len(text) for name, text in told().items() if len(text) > LONGEST} == {}


def test_the_menu_has_every_page_once():
    assert sorted(addresses(menu())) == sorted(told())


def test_the_pages_build_strictly_and_every_link_leads_somewhere(tmp_path):
    """The build is strict and checks every anchor of every link."""
    site = site_of(tmp_path, {})
    settings = site.config_file.read_text(encoding="utf-8")
    line = "  - Handouts: handouts/"
    site.write("site_src/mkdocs.yml", settings.replace(line, f"{line}\n  - Reference: reference/"))
    built = site.build()
    assert built.warnings == []
    for key in register.technique_keys():
        assert f'id="{key}"' in built.page(f"reference/{find(key).family}.html")
    assert "reference/" in SETTINGS.read_text(encoding="utf-8")


def test_metric_bounds_come_first_where_they_are_the_exact_ones():
    slip = {each.name: bounds(each) for each in declared_inputs(find("slip"))}
    assert slip["neck_ease"] == "from 5 mm to 15 cm (7/32 in to 5 7/8 in)"
    assert slip["hem"].startswith("from 1/8 in to 6 in (")

"""A scenario decides what is published and how it is said; its errors name file and line."""

from __future__ import annotations

from pathlib import Path

import pytest

from small_sites import SmallSite, site_of, slips_of
from written_pages import calc, page, ruffle

HANDOUTS = {
    "ruffles/index.md": "# All about ruffles\n",
    "ruffles/banded.md": "# Banded\n",
    "ruffles/plain.md": "# Plain\n",
    "tucks/pin.md": "# Pin tuck\n",
}
WRONG = {
    "unknown key": (
        "publisher: The guild\npaperr: a4\n",
        '2: there is no field "paperr"; did you mean "paper"?',
    ),
    "unknown handout": (
        "handouts:\n  - ruffles/banded\n  - ruffles/plian\n",
        '3: handouts: there is no handout "ruffles/plian"; did you mean "ruffles/plain"?',
    ),
    "introduction as a handout": (
        "handouts: [ruffles/index]\n",
        '1: handouts: there is no handout "ruffles/index"; did you mean "ruffles/banded"?',
    ),
    "wrong units": ("units: cubits\n", '1: units: "cubits" is not one of inches, metric'),
    "wrong tape": ("\nfinest: 64\n", '2: finest: "64" is not one of 8, 16, 32'),
    "wrong paper": ("paper: a5\n", '1: paper: "a5" is not one of a4, letter'),
    "list of units": ("units: [inches]\n", "1: units: this is not one of inches, metric"),
    "list where the mapping belongs": (
        "- publisher: The guild\n",
        "1: this is not a list of fields; "
        "a scenario has lines such as publisher: The guild",
    ),
    "list of inputs": (
        "inputs: [edge]\n",
        "1: inputs: write inputs here, such as order_step: 10 cm",
    ),
    "unknown input": (
        "inputs:\n  order_stepp: 10 cm\n",
        '2: inputs: there is no input "order_stepp"; did you mean "order_step"?',
    ),
    "input that cannot be read": (
        "inputs:\n  order_step: ten\n",
        '2: inputs: order_step: "ten" does not start with a number',
    ),
    "unknown size": (
        "size: 63\n",
        '1: size: "63" is not one of 50, 56, 62, 68, 74, 80, 86, 92, 98',
    ),
    "unknown measure": (
        "size: 68\nmeasures:\n  head: 44 cm\n  haed: 44 cm\n",
        '4: measures: there is no measure "haed"; did you mean "head"?',
    ),
    "measure of no baby": (
        "measures:\n  head: 4 m\n",
        "2: measures: head: 4 m is too large; use at most 22 1/32 in (56 cm)",
    ),
    "measures in a list": (
        "measures: [head]\n",
        "1: measures: write measures here, such as head: 44 cm",
    ),
    "sizes that are none": (
        "sizes: 50 to 75\n",
        "1: sizes: \"75\" is not one of 50, 56, 62, 68, 74, 80, 86, 92, 98",
    ),
    "mapping of handouts": (
        "handouts:\n  ruffles: all\n",
        "1: handouts: write all, or a list of handouts such as ruffles/banded-ruffle",
    ),
    "publisher as a list": ("publisher: [a]\n", "1: publisher: write one line of text here"),
    "written twice": ("units: metric\nunits: inches\n", "2: units is written twice"),
    "no YAML": (
        "publisher: a: b\n",
        "1: the value has a colon in it, which reads as another field; put the value into "
        "quotation marks; "
        "a scenario has lines such as publisher: The guild",
    ),
    "not UTF-8": (b"publisher: caf\xe9\n", "1: the file cannot be read as text"),
    "too large": ("#" * 200_001, "1: the file is larger than 200000 bytes"),
}  # fmt: skip


@pytest.mark.parametrize(("text", "expected"), WRONG.values(), ids=WRONG)
def test_a_wrong_scenario_is_refused(text: str | bytes, expected: str, tmp_path: Path):
    site = site_of(tmp_path, HANDOUTS)
    site.write("scenarios/guild.yml", text)
    assert slips_of(site) == [f"scenarios/guild.yml:{expected}"]


def test_a_missing_scenario_names_the_nearest(tmp_path: Path):
    assert slips_of(SmallSite(tmp_path, scenario="gild")) == [
        'scenarios/gild.yml:1: there is no scenario "gild"; did you mean "guild"?'
    ]


@pytest.mark.parametrize("name", ["../outside", "sub/guild", ".hidden", ".."])
def test_a_scenario_outside_its_folder_is_not_read(name: str, tmp_path: Path):
    site = SmallSite(tmp_path, scenario=name)
    site.write("outside.yml", "publisher: The guild\n")
    site.write("scenarios/sub/guild.yml", "publisher: The guild\n")
    site.write("scenarios/.hidden.yml", "publisher: The guild\n")
    assert slips_of(site) == [
        f'scenarios/:1: "{name}" is not the name of a scenario in this folder'
    ]


def test_an_empty_scenario_publishes_all(tmp_path: Path):
    built = site_of(tmp_path, HANDOUTS, scenario="").build()
    published = [address for address in built.pages() if address.startswith("handouts/")]
    assert published == [f"handouts/{name[:-3]}.html" for name in sorted(HANDOUTS)]


def test_only_the_wanted_handouts_are_published_with_their_introduction(tmp_path: Path):
    built = site_of(tmp_path, HANDOUTS, scenario="handouts: [ruffles/plain]\n").build()
    assert built.warnings == []
    published = [address for address in built.pages() if address.startswith("handouts/")]
    assert published == ["handouts/ruffles/index.html", "handouts/ruffles/plain.html"]


def test_a_handout_that_is_not_published_is_not_read(tmp_path: Path):
    wrong = {"tucks/pin.md": page(calc("technique: none"))}
    site_of(tmp_path, HANDOUTS | wrong, scenario="handouts: [ruffles/plain]\n").build()


def test_the_menu_has_a_section_for_each_family_in_the_place_of_handouts(tmp_path: Path):
    html = site_of(tmp_path, HANDOUTS).build().page("index.html")
    menu = html.split('class="md-nav md-nav--primary"')[1].split("</nav>\n  </div>")[0]
    titles = ["Home", "All about ruffles", "Banded", "Plain", "Tucks", "Pin tuck"]
    places = [menu.index(f"{title}\n") for title in titles]
    assert places == sorted(places)


@pytest.mark.parametrize(
    ("scenario", "said"),
    [
        ("units: inches\n", "Cut 2 9/16 in (65 mm)."),
        ("units: metric\n", "Cut 65 mm (2 9/16 in)."),
        ("units: metric\nfinest: 8\n", "Cut 65 mm (2 5/8 in)."),
    ],
)
def test_the_scenario_says_how_lengths_are_said(scenario: str, said: str, tmp_path: Path):
    text = page(ruffle("sleeve", "depth: 2 9/16 in", "show: cuts"), "Cut {{ sleeve.depth }}.\n")
    built = site_of(tmp_path, {"ruffles/try.md": text}, scenario=scenario).build()
    assert said in built.words().replace(" .", ".")


def test_inputs_of_the_scenario_stand_in_for_defaults_only(tmp_path: Path):
    own = ruffle("own", "depth: 3 in", "show: cuts")
    text = page(own, ruffle("usual", "show: cuts"), "{{ own.depth }}, {{ usual.depth }}\n")
    site = site_of(tmp_path, {"ruffles/try.md": text}, scenario="inputs:\n  depth: 5 in\n")
    assert "3 in (76 mm) , 5 in (12.7 cm)" in site.build().words()

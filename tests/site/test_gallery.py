"""Every technique has its handout, and the page of all techniques leads to each of them."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import urljoin

import pytest

from handout_engine import register
from handout_engine.drawing.scene import Dimension, Note, Tag
from handout_engine.pages.fragments.gallery import family_title, thumbnail
from handout_engine.working.technique import make
from shared_site import shared_site
from small_sites import REPOSITORY, Built, site_of
from written_pages import calc, page, ruffle

KEYS = register.keys()
FAMILIES = sorted({register.find(key).family for key in KEYS})
GALLERY = "handouts/index.html"
ENTRY = re.compile(r'<li class="gallery-entry".*?</li>', re.DOTALL)

every_technique = pytest.mark.parametrize("key", KEYS)


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Built:
    """The project's own site."""
    return shared_site(tmp_path_factory)


def name_of(key: str) -> str:
    return f"{register.find(key).family}/{key}"


def entries(site: Built) -> dict[str, str]:
    """The gallery's entries by the address that each leads to, from the site's root."""
    found = {}
    for entry in ENTRY.findall(site.article(GALLERY)):
        link = re.search(r'<a href="([^"]+)"', entry)
        assert link is not None
        found[urljoin(GALLERY, link[1])] = entry
    return found


@every_technique
def test_a_technique_has_a_handout_in_its_family_that_works_it_out(key: str):
    handout = REPOSITORY / "handouts" / f"{name_of(key)}.md"
    assert handout.is_file()
    assert re.search(
        rf"^(technique|garment): {key}$", handout.read_text(encoding="utf-8"), re.MULTILINE
    )


def test_the_gallery_leads_to_each_handout_and_to_nothing_else(site: Built):
    led_to = entries(site)
    assert sorted(led_to) == sorted(f"handouts/{name_of(key)}.html" for key in KEYS)
    assert [address for address in led_to if not (site.folder / address).is_file()] == []


@every_technique
def test_an_entry_shows_drawing_title_and_sentence(site: Built, key: str):
    technique = register.find(key)
    entry = entries(site)[f"handouts/{name_of(key)}.html"]
    assert entry.count("<svg") == 1
    assert f'<span class="gallery-title">{technique.title}</span>' in entry
    assert technique.summary in entry.replace("&amp;", "&")
    assert "<text" not in entry


@every_technique
def test_a_handout_shows_at_least_two_drawings(site: Built, key: str):
    assert site.article(f"handouts/{name_of(key)}.html").count("<svg") >= 2


def test_families_are_called_in_the_gallery_as_their_introductions_call_them(site: Built):
    for family in FAMILIES:
        text = (REPOSITORY / "handouts" / family / "index.md").read_text(encoding="utf-8")
        assert f"\n# {family_title(family)}\n" in text
        assert f'<a href="{family}/index.html">' in site.article(GALLERY)
        assert (site.folder / "handouts" / family / "index.html").is_file()


def test_the_gallery_stands_first_among_the_handouts_in_the_menu(site: Built):
    links = re.findall(r'href="(handouts/[^"]+)"', site.page("index.html").split("<article")[0])
    assert links[0] == GALLERY


def test_the_gallery_is_no_heavier_than_a_photograph(site: Built):
    assert len(site.article(GALLERY)) < 600_000


@every_technique
def test_a_small_drawing_has_no_words_and_keeps_every_face_and_line(key: str):
    scene = make(register.find(key), {}).work().pictures[0].scene
    small = thumbnail(scene).shapes
    words = [each for each in scene.shapes if isinstance(each, Dimension | Tag | Note)]
    assert len(small) == len(scene.shapes) - len(words)
    assert not any(isinstance(each, Dimension | Tag | Note) for each in small)


def test_what_a_scenario_leaves_out_is_not_in_its_gallery(tmp_path: Path):
    handouts = {
        "index.md": page(calc("of: library", "show: gallery")),
        "ruffles/gathered-ruffle.md": page(ruffle("collar")),
        "ruffles/banded-ruffle.md": page(ruffle("collar")),
        "bias/piping.md": page(ruffle("collar")),
    }
    chosen = "publisher: One\nhandouts: [ruffles/gathered-ruffle]\n"
    built = site_of(tmp_path, handouts, scenario=chosen).build()
    assert list(entries(built)) == ["handouts/ruffles/gathered-ruffle.html"]
    assert built.article(GALLERY).count("gallery-family") == 1

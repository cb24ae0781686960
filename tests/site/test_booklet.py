"""Booklets: all handouts in the order of the menu, nothing worked out twice, links that lead."""

from __future__ import annotations

import json
import re
from collections import Counter

import pytest

from handout_site.booklet import bound
from small_sites import GUILD, Built, SmallSite, site_of

RUFFLE = """# Ruffle

```calc
technique: gathered-ruffle
name: ruffle
show: [finished, cuts]
```

## Neighbours

[Hem](../edges/hem.md), [its measures](../edges/hem.md#measures), [here](#neighbours)

## Where the numbers come from

```calc
of: ruffle
show: [numbers]
```
"""
HEM = """# Hem & edge

```calc
technique: hem
name: ruffle
show: [finished]
```

## Measures

"""
SHARED = "# Ruffles\n\nThey are full.\n"
COURSE = """publisher: The needlework guild
lessons:
  - title: A first seam
    handouts:
      - ruffles/ruffle
  - title: An edge
    handouts:
      - ruffles/ruffle
      - edges/hem
"""


def with_booklets(site: SmallSite) -> SmallSite:
    settings = site.config_file.read_text(encoding="utf-8")
    settings = settings.replace("  - Handouts:", "  - Course: course/\n  - Handouts:")
    site.config_file.write_text(settings + "      booklets: true\n", encoding="utf-8")
    return site


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Built:
    texts = {"edges/hem.md": HEM, "ruffles/ruffle.md": RUFFLE,
             "ruffles/index.md": SHARED}  # fmt: skip
    return with_booklets(site_of(tmp_path_factory.mktemp("bound"), texts)).build()


def titles(built: Built, name: str) -> list[str]:
    found = re.findall(r"<h1[^>]*>([^<]*)", built.article(name))
    return found[1:]


def test_a_booklet_holds_its_handouts_in_the_order_of_the_menu(built: Built):
    assert built.warnings == []
    assert titles(built, "booklet.html") == ["Hem &amp; edge", "Ruffles", "Ruffle"]
    assert titles(built, "booklet-ruffles.html") == ["Ruffles", "Ruffle"]
    assert titles(built, "booklet-edges.html") == ["Hem &amp; edge"]


def test_every_id_is_the_only_one_and_every_link_inside_leads_somewhere(built: Built):
    for name in ("booklet.html", "booklet-ruffles.html"):
        text = built.article(name)
        ids = Counter(re.findall(r'\sid="([^"]*)"', text))
        assert [each for each, times in ids.items() if times > 1] == []
        inside = re.findall(r'href="#([^"]*)"', text)
        assert inside and set(inside) <= set(ids)
        for named in re.findall(r'aria-labelledby="([^"]*)"', text):
            assert set(named.split()) <= set(ids)


def test_links_lead_to_bound_handouts_and_else_to_their_pages(built: Built):
    assert '<a href="#handout-1" data-number="1">Hem</a>' in built.article("booklet.html")
    assert '<a href="#h1-measures" data-number="1">its measures</a>' in built.article(
        "booklet.html"
    )
    alone = built.article("booklet-ruffles.html")
    assert '<a href="handouts/edges/hem.html">Hem</a>' in alone
    assert '<a href="#h2-neighbours">here</a>' in alone


def test_nothing_is_said_otherwise_in_a_booklet(built: Built):
    def words(text: str) -> str:
        return " ".join(re.sub("<[^>]*>", " ", text).split())

    page = built.article("handouts/ruffles/ruffle.html")
    handout = words(page[page.index("<h1") :])
    assert handout in words(built.article("booklet.html"))


def test_a_handout_leads_to_its_booklets_and_has_lines_for_notes(built: Built):
    page = built.article("handouts/ruffles/ruffle.html")
    assert '<a href="../../booklet-ruffles.html">Ruffles in one booklet</a>' in page
    assert '<a href="../../booklet.html">All handouts in one booklet</a>' in page
    assert page.index('class="print-notes"') < page.index('id="where-the-numbers-come-from"')
    assert 'class="print-notes"' not in built.article("index.html")


def test_a_booklet_is_not_found_by_searching(built: Built):
    index = json.loads((built.folder / "search" / "search_index.json").read_text(encoding="utf-8"))
    places = [each["location"] for each in index["docs"]]
    assert "handouts/ruffles/ruffle.html" in places
    assert not [each for each in places if "booklet" in each]


def test_a_course_is_bound_by_lesson_each_handout_once(tmp_path):
    texts = {"edges/hem.md": HEM, "ruffles/ruffle.md": RUFFLE,
             "ruffles/index.md": SHARED}  # fmt: skip
    course = with_booklets(site_of(tmp_path, texts, scenario=COURSE)).build()
    first, second = ["Lesson 1: A first seam", "Ruffle"], ["Lesson 2: An edge", "Hem &amp; edge"]
    assert titles(course, "booklet.html") == [*first, *second]
    assert titles(course, "booklet-lesson-1-a-first-seam.html") == first
    assert titles(course, "booklet-lesson-2-an-edge.html") == second


def test_a_site_without_the_option_has_none(tmp_path):
    built = site_of(tmp_path, {"ruffles/ruffle.md": "# Ruffle\n"}, scenario=GUILD).build()
    assert not list(built.folder.glob("booklet*"))


def test_ids_and_addresses_are_made_the_booklet_s_own():
    numbers = {"handouts/a/one.html": 1, "handouts/b/two.html": 2}
    text = (
        '<h2 id="x">a id="x" b</h2><svg aria-labelledby="t d"><title id="t">T</title></svg>'
        '<img src="one.png"><a href="../b/two.html">2</a><a href="../c/three.html#z">3</a>'
        '<a href="#x">x</a><a href="mailto:a@b.example">m</a><label for="x">L</label>'
    )
    assert bound(text, "handouts/a/one.html", "booklet.html", numbers) == (
        '<h2 id="h1-x">a id="x" b</h2><svg aria-labelledby="h1-t h1-d"><title id="h1-t">T</title>'
        '</svg><img src="handouts/a/one.png"><a href="#handout-2" data-number="2">2</a>'
        '<a href="handouts/c/three.html#z">3</a><a href="#h1-x">x</a>'
        '<a href="mailto:a@b.example">m</a><label for="h1-x">L</label>'
    )

"""A sized handout has a page for each size, and links between them that need no script."""

import json
import re

import pytest

from handout_engine.amounts.saying import Tape
from handout_engine.register import find_garment
from handout_engine.working.technique import make
from small_sites import site_of

SLIP = """\
---
title: Slip
---

# Slip

Widening to the hem.

```calc
garment: slip
size: 56
sizes: 50 to 68
show: [measures, sizes]
```

Round the hem: {{ garment.hem_edge }}.

```calc
technique: gathered-ruffle
name: ruffle
edge: garment.hem_edge
show: cuts
```
"""


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    return site_of(tmp_path_factory.mktemp("sized"), {"garments/slip.md": SLIP}).build()


def page_of(size):
    return f"handouts/garments/slip{'' if size == '56' else f'-size-{size}'}.html"


def pages_of(built):
    return sorted(path.name for path in (built.folder / "handouts" / "garments").glob("*.html"))


def said(size, name):
    return Tape().say(make(find_garment("slip"), {"size": size}).work().named[name].amount)


@pytest.mark.parametrize("size", ["50", "56", "62", "68"])
def test_every_size_has_its_page_with_the_engines_numbers(built, size):
    assert f"Round the hem: {said(size, 'hem_edge')}" in built.words(page_of(size))


@pytest.mark.parametrize("size", ["50", "56", "62", "68"])
def test_the_sizes_are_plain_links_and_the_shown_one_is_marked(built, size):
    choice = re.search(r'<nav[^>]*class="size-choice".*?</nav>', built.article(page_of(size)), re.S)
    assert choice
    links = dict(re.findall(r'<a href="([^"]+)">(\d+)</a>', choice[0]))
    others = {"50", "56", "62", "68"} - {size}
    assert links == {page_of(each).rpartition("/")[2]: each for each in others}
    assert f'<span aria-current="page">{size}</span>' in choice[0]


def title_block(page):
    return re.search(r'<p class="print-size"[^>]*>(.*?)</p>', page)[1]


@pytest.mark.parametrize("size", ["50", "56", "62", "68"])
def test_the_title_block_says_the_size_of_the_page(built, size):
    assert title_block(built.page(page_of(size))) == f"Size {size}"


def test_the_title_block_of_a_measured_baby_says_so(tmp_path):
    own = "size: 68\nmeasures:\n  body_length: 70.5 cm\n  chest: 44 cm\n"
    site = site_of(tmp_path, {"garments/slip.md": SLIP}, scenario=own).build()
    said = title_block(site.page("handouts/garments/slip.html"))
    assert said == "Body length 70.5 cm, her own measures"


def test_only_the_handouts_own_page_is_in_menu_and_search(built):
    assert "slip-size-62" not in built.page("index.html")
    index = json.loads((built.folder / "search" / "search_index.json").read_text())
    assert not [each["location"] for each in index["docs"] if "slip-size" in each["location"]]


def test_the_graded_table_has_the_number_of_every_size(built):
    table = re.search(
        r'<table class="handout-table graded".*?</table>', built.page(page_of("56")), re.S
    )
    assert table
    row = next(row for row in re.findall(r"<tr>.*?</tr>", table[0], re.S) if "finished hem" in row)
    cells = [
        " ".join(re.sub("<[^>]*>", " ", cell).split()) for cell in re.findall("<td>.*?</td>", row)
    ]
    for size, cell in zip(["50", "56", "62", "68"], cells, strict=True):
        assert cell.replace("\xa0", " ").startswith(said(size, "hem_edge"))


def test_a_size_that_is_impossible_says_why_on_its_page_and_in_its_column(tmp_path):
    text = SLIP.replace("size: 56\n", "size: 68\nopening: 12 cm\nneck_ease: 14 cm\n")
    site = site_of(tmp_path, {"garments/slip.md": text}).build()
    page = site.words("handouts/garments/slip-size-50.html")
    assert "This cannot be made in size 50." in page
    assert "neck_ease" in page
    assert 'class="impossible"' in site.page("handouts/garments/slip.html")


def test_a_scenario_may_name_the_sizes_or_the_one_baby(tmp_path):
    two = site_of(tmp_path / "a", {"garments/slip.md": SLIP}, scenario="sizes: [56, 62]\n").build()
    assert pages_of(two) == ["slip-size-62.html", "slip.html"]
    own = "size: 62\nmeasures:\n  chest: 41 cm\n"
    one = site_of(tmp_path / "b", {"garments/slip.md": SLIP}, scenario=own).build()
    assert pages_of(one) == ["slip.html"]
    baby = make(find_garment("slip"), {"size": "62", "chest": "41 cm"}).work()
    hem = Tape().say(baby.named["hem_edge"].amount)
    assert f"Round the hem: {hem}" in one.words("handouts/garments/slip.html")

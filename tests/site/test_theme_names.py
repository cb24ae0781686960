"""The theme's regions are named, each by what a reader would call it."""

import re
from html.parser import HTMLParser

import pytest

from small_sites import site_of

INTRODUCED = "# Ruffles\n"
RUFFLE = "# Ruffle\n\n```calc\ntechnique: gathered-ruffle\nshow: cuts\n```\n"


@pytest.fixture(scope="module")
def built(tmp_path_factory):
    pages = {
        "index.md": "# Handouts\n",
        "ruffles/index.md": INTRODUCED,
        "ruffles/one.md": RUFFLE,
        "tucks/two.md": RUFFLE,
    }
    return site_of(tmp_path_factory.mktemp("named"), pages).build()


class Texts(HTMLParser):
    """The text of every element that has an id."""

    def __init__(self):
        super().__init__()
        self.open, self.texts = [], {}

    def handle_starttag(self, tag, attrs):
        if tag not in {"input", "meta", "link", "br", "hr", "path", "img"}:
            self.open.append(dict(attrs).get("id"))

    def handle_endtag(self, tag):
        del tag
        if self.open:
            self.open.pop()

    def handle_data(self, data):
        if self.open and self.open[-1]:
            self.texts[self.open[-1]] = self.texts.get(self.open[-1], "") + data


@pytest.mark.parametrize("address", ["handouts/ruffles/one.html", "404.html"])
def test_every_section_of_the_menu_is_named_by_its_title_and_those_around_it(built, address):
    page = built.page(address)
    read = Texts()
    read.feed(page)
    named = re.findall(r'<nav [^>]*aria-labelledby="([^"]+)"', page)
    names = [" ".join(read.texts[each].strip() for each in ids.split()) for ids in named]
    assert {"Handouts", "Handouts Ruffles", "Handouts Tucks"} <= set(names)
    assert len(names) == len(set(names))


@pytest.mark.parametrize("address", ["index.html", "404.html"])
def test_the_search_dialog_has_a_name(built, address):
    (dialog,) = re.findall(r'<div[^>]*role="dialog"[^>]*>', built.page(address))
    assert 'aria-label="Search"' in dialog


def test_a_table_s_area_is_no_landmark_and_is_named_by_its_caption(built):
    article = built.article("handouts/ruffles/one.html")
    areas = re.findall(r'<div class="table-area"[^>]*>', article)
    assert areas
    assert all('role="group"' in each and "aria-label=" in each for each in areas)

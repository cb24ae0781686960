"""The site's menu: places filled in, sections of its own left as they are."""

from __future__ import annotations

from handout_site.menu import filled_menu

PLACES = {"handouts/": ["handouts/a.md"], "course/": []}


def test_a_place_is_filled_and_one_without_anything_is_left_out():
    nav = [{"Home": "index.md"}, {"Handouts": "handouts/"}, {"Course": "course/"}, "more.md"]
    assert filled_menu(nav, PLACES) == [
        {"Home": "index.md"}, {"Handouts": ["handouts/a.md"]}, "more.md",
    ]  # fmt: skip


def test_a_section_of_the_site_s_own_stays():
    nav = [{"Guide": ["guide/index.md", {"One": "guide/one.md"}]}]
    assert filled_menu(nav, PLACES) == nav


def test_no_menu_is_no_menu():
    assert filled_menu(None, PLACES) is None

"""Every handout says which practice it asks for, in one of a few words, and is listed under it."""

from __future__ import annotations

from pathlib import Path

import pytest

from handout_site.library import Entry, entries
from handout_site.practice import LEVELS, by_practice, described
from small_sites import REPOSITORY, site_of

HANDOUTS = [each for each in entries(REPOSITORY / "handouts") if not each.is_introduction]


@pytest.mark.parametrize("entry", HANDOUTS, ids=lambda entry: entry.name)
def test_a_handout_says_its_practice_in_one_of_the_words(entry: Entry):
    found = described(entry)
    assert found.practice in LEVELS
    assert found.summary
    assert found.time


def test_every_published_handout_is_listed_once_under_its_practice(tmp_path: Path):
    front = "---\npractice: {}\nsummary: Cut | sew *it*.\ntime: An hour\n---\n\n# {}\n"
    site = site_of(tmp_path, {
        "tucks/hard.md": front.format("Experienced", "Hard"),
        "tucks/easy.md": front.format("First project", "Easy"),
        "tucks/other.md": "# Other\n",
        "tucks/index.md": "# Tucks\n",
    })  # fmt: skip
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(settings.replace("nav:\n", "nav:\n  - By practice: practice.md\n"))
    built = site.build()
    assert built.warnings == []
    words = built.words("practice.html")
    places = [words.index(each) for each in
              ("First project", "Easy", "Experienced", "Hard", "Not said", "Other")]  # fmt: skip
    assert places == sorted(places)
    assert "Cut | sew *it*." in words
    assert '<a href="handouts/tucks/easy.html">' in built.page("practice.html")


def test_the_page_of_the_project_lists_all():
    text = by_practice(entries(REPOSITORY / "handouts"))
    assert text.count("](handouts/") == len(HANDOUTS)

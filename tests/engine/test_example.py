"""The technique that DEVELOPERS.md shows whole: put where it says, it works like any other."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from handout_engine import register
from handout_engine.families import edges
from handout_engine.pages.blocks import read_block
from handout_engine.pages.page import work_page
from handout_engine.working.workings import Working
from worked import INCHES, refusal, said, steps, work

DEVELOPERS = Path(__file__).parents[2] / "DEVELOPERS.md"
LONGEST = 66
"""So many lines at most: about a page."""


def example() -> str:
    """The code that stands under its heading."""
    under = DEVELOPERS.read_text(encoding="utf-8").partition("### An example")[2]
    found = re.search(r"```python\n(.*?)```", under, re.DOTALL)
    assert found is not None
    return found[1]


@pytest.fixture(scope="module", autouse=True)
def copied(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """The module in the room of its family, as far as Python knows."""
    room = tmp_path_factory.mktemp("edges")
    (room / "patch_pocket.py").write_text(example(), encoding="utf-8")
    edges.__path__.append(str(room))
    forget()
    yield
    edges.__path__.remove(str(room))
    forget()


def forget() -> None:
    for kept in (register.keys, register.technique_keys, register._modules, register._loaded):
        kept.cache_clear()


def pocket(**written: str) -> Working:
    return work("patch-pocket", **written)


def test_it_is_as_long_as_a_page():
    assert len(example().splitlines()) <= LONGEST


def test_a_pocket_by_hand():
    """3 by 3 1/2 in: cut 3 + 2 × 1/4 = 3 1/2 in wide, 3 1/2 + 1/4 + 3/4 + 1/4 = 4 3/4 in deep."""
    made = pocket()
    assert said(made, "cut_width") == "3 1/2 in"
    assert said(made, "cut_depth") == "4 3/4 in"
    assert made.values["cut_depth"].how == "pocket depth + turn + hem + turn"
    assert "fold at 1 in" in steps(made)[0]


def test_it_is_refused_with_a_way_out():
    assert refusal("patch-pocket", hem="1 1/2 in", depth="1 in") == (
        "the hem is as deep as the pocket; use at most 1/2 in (12 mm), or a deeper pocket"
    )


def test_a_page_shows_it():
    block = read_block({"technique": "patch-pocket", "show": "cuts, steps, drawing, numbers"})
    page = work_page([block], INCHES)
    assert page.problems == []
    assert "pocket depth + turn" in page.fragment(0)

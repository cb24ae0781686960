"""One small drawing of each technique, compared with the one that was looked at and kept.

After a change that is meant, renew them and look at each:

    RENEW_DRAWINGS=1 python -m pytest tests/engine/test_drawing_golden.py
"""

import os
from pathlib import Path

import pytest

from handout_engine import register
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import xml
from handout_engine.drawing.svg import svg
from worked import work

GOLDEN = Path(__file__).parent / "golden"
LARGEST = 7000


def drawing_to_keep(key: str) -> str:
    """Of a technique's drawings the fullest that is still small enough to be read."""
    drawings = [
        xml(svg(picture.scene, Tape(), f"{key}-{picture.name}")) for picture in work(key).pictures
    ]
    small = [drawing for drawing in drawings if len(drawing) <= LARGEST]
    kept = max(small, key=len) if small else min(drawings, key=len)
    return kept.replace("><", ">\n<") + "\n"


@pytest.mark.parametrize("key", register.keys())
def test_the_drawing_is_the_one_that_was_looked_at(key):
    drawing, kept = drawing_to_keep(key), GOLDEN / f"{key}.svg"
    if os.environ.get("RENEW_DRAWINGS"):
        kept.write_text(drawing, encoding="utf-8")
    assert kept.is_file(), f"{kept.name} is missing; RENEW_DRAWINGS=1 writes it"
    assert drawing == kept.read_text(encoding="utf-8")


def test_no_drawing_is_kept_of_what_is_gone():
    assert {each.stem for each in GOLDEN.glob("*.svg")} <= set(register.keys())

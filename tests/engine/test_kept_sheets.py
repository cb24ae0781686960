"""All that a sheet says and draws is as it was when somebody last looked at it.

Every technique and garment is kept as it comes and in two other forms, which change all of its
inputs at once: amounts, pieces, steps, charts, and an account of every drawing (`kept_sheets.py`).
What a change moves shows as lines that differ. After one that is meant, renew them, read what
differs, and look at each drawing that moved:

    RENEW_SHEETS=1 python -m pytest tests/engine/test_kept_sheets.py

This holds nothing against the world, and a figure that was wrong is kept wrong: the worked examples
and simulations of each technique say what is right.
"""

import json
import os
from pathlib import Path

import pytest

from handout_engine import register
from kept_sheets import OTHERWISE, account, otherwise, sheet
from worked import work

KEPT = Path(__file__).parent / "kept"


def kept(key: str) -> list[str]:
    """What is kept of a technique, a line for each thing."""
    path = KEPT / f"{key}.txt"
    assert path.is_file(), f"{path.name} is missing; RENEW_SHEETS=1 writes it"
    return path.read_text(encoding="utf-8").splitlines()


@pytest.mark.parametrize("key", register.keys())
def test_a_sheet_is_as_it_was_looked_at(key):
    if os.environ.get("RENEW_SHEETS"):
        KEPT.mkdir(exist_ok=True)
        (KEPT / f"{key}.txt").write_text("\n".join(sheet(key)) + "\n", encoding="utf-8")
    lines = kept(key)
    whole = account(work(key))
    now = list(whole)
    for line in lines:
        if line.startswith(OTHERWISE):
            now += otherwise(key, json.loads(line.removeprefix(OTHERWISE)), whole)
    assert now == lines


def test_every_technique_is_kept_in_two_other_forms():
    keys = register.keys()
    assert {path.stem for path in KEPT.glob("*.txt")} == set(keys)
    for key in keys:
        others = [line for line in kept(key) if line.startswith(OTHERWISE)]
        assert len(others) == 2, key

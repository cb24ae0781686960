"""All that a sheet says and draws is as it was when somebody last looked at it.

Every technique and garment is kept as it comes and in two to four other forms, which change all of
its inputs at once and go through its choices: amounts, pieces, layouts, steps, charts, an account
of every drawing, and a checksum of each page at true scale (`kept_sheets.py`). What a change moves
shows as lines that differ. After one that is meant, renew them, read what differs, and look at each
drawing that moved:

    RENEW_SHEETS=1 python -m pytest tests/engine/test_kept_sheets.py

This holds nothing against the world, and a figure that was wrong is kept wrong: the worked examples
and simulations of each technique say what is right.
"""

import os
from pathlib import Path

import pytest

from handout_engine import register
from kept_sheets import can_be_sewn, other_forms, sheet, variations

KEPT = Path(__file__).parent / "kept"
FEWEST_FORMS = 2


def kept(key: str) -> list[str]:
    """What is kept of a technique, a line for each thing."""
    path = KEPT / f"{key}.txt"
    assert path.is_file(), f"{path.name} is missing; RENEW_SHEETS=1 writes it"
    return path.read_text(encoding="utf-8").splitlines()


def renew(key: str) -> None:
    """Keep a technique as it is now, in the forms that it was kept in where they can be sewn."""
    path = KEPT / f"{key}.txt"
    forms = other_forms(kept(key)) if path.is_file() else []
    if len(forms) < FEWEST_FORMS or not all(can_be_sewn(key, each) for each in forms):
        forms = list(variations(key))
    KEPT.mkdir(exist_ok=True)
    path.write_text("\n".join(sheet(key, forms)) + "\n", encoding="utf-8")


@pytest.mark.parametrize("key", register.keys())
def test_a_sheet_is_as_it_was_looked_at(key):
    if os.environ.get("RENEW_SHEETS"):
        renew(key)
    lines = kept(key)
    forms = other_forms(lines)
    assert len(forms) >= FEWEST_FORMS
    assert list(sheet(key, forms)) == lines


def test_no_sheet_is_kept_of_what_is_gone():
    assert {path.stem for path in KEPT.glob("*.txt")} == set(register.keys())

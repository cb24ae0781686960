"""A value's name leads to the one place where it is computed; how many do may only grow.

`values_found.py` says what is counted. The shares that were reached are kept beside this file;

    RENEW_LISTS=1 python -m pytest tests/engine/test_values_found.py

keeps what is reached now, where it is no less.
"""

import json
import os
from pathlib import Path

from values_found import (
    GROUP,
    GROUP_OF_ROOM,
    KEPT,
    NOWHERE,
    OWN,
    ROOM,
    SHARED,
    Method,
    counted,
    shares,
    where,
    without_prefix,
)

FAMILIES = Path("engine/families")
HOME = FAMILIES / "ruffles" / "banded_ruffle.py"
NEIGHBOUR = FAMILIES / "ruffles" / "heading.py"
OTHER = FAMILIES / "tucks" / "pin_tucks.py"
BELOW = Path("engine/shared/strips.py")
ROOMS = frozenset({HOME.parent, OTHER.parent})


def test_the_share_of_values_that_are_found_does_not_fall():
    now = shares(counted())
    kept = json.loads(KEPT.read_text(encoding="utf-8")) if KEPT.exists() else {}
    fallen = {family: (kept[family], share) for family, share in now.items()
              if share < kept.get(family, 0)}  # fmt: skip
    if os.environ.get("RENEW_LISTS") and not fallen:
        KEPT.write_text(json.dumps(now, indent=1) + "\n", encoding="utf-8")
    assert fallen == {}, "a value's name leads no longer to where it is computed"


def test_each_place_has_a_column_of_its_own():
    value, of_group, helper = (True, False), (True, True), (False, False)
    found = {
        "once": [Method(HOME, *value), Method(OTHER, *value)],
        "neighbour": [Method(NEIGHBOUR, *value)],
        "twice": [Method(HOME, *value), Method(NEIGHBOUR, *value)],
        "drawn_too": [Method(NEIGHBOUR, *value), Method(NEIGHBOUR, *helper)],
        "strips": [Method(BELOW, *of_group)],
        "rows": [Method(NEIGHBOUR, *of_group)],
        "helper": [Method(HOME, *helper)],
        "elsewhere": [Method(OTHER, *value)],
        "plain": [Method(BELOW, *value)],
    }
    assert [where(name, HOME, found, ROOMS) for name in found] == [
        ROOM, ROOM, OWN, NOWHERE, SHARED, ROOM, NOWHERE, NOWHERE, SHARED,
    ]  # fmt: skip
    assert where("front_strips", HOME, found, ROOMS) == GROUP
    assert where("edge_rows", HOME, found, ROOMS) == GROUP_OF_ROOM
    assert where("front_plain", HOME, found, ROOMS) == NOWHERE, "a prefix is that of a group"
    assert where("unknown", HOME, found, ROOMS) == NOWHERE


def test_a_prefix_may_be_of_several_words():
    assert list(without_prefix("facing_strip_length")) == ["strip_length", "length"]

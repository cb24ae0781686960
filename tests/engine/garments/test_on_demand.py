"""A figure of a garment is worked out from what it hangs on, and from nothing else."""

from unittest.mock import patch

import pytest

from handout_engine import register
from handout_engine.bodies.measures import LENGTHS
from handout_engine.cloth import cloth
from handout_engine.drafting import drafts
from handout_engine.drafting.pieces import DraftedGarment
from handout_engine.working.technique import make
from worked import work

DRAFTED = [
    key for key in register.garment_keys() if issubclass(register.find_garment(key), DraftedGarment)
]


def never(*_args: object, **_more: object) -> None:
    raise AssertionError("this is not needed for an edge")


@pytest.mark.parametrize("key", DRAFTED)
@pytest.mark.parametrize("size", LENGTHS)
def test_no_edge_needs_cloth_allowances_steps_or_pictures(key, size):
    garment = register.find_garment(key)
    whole = work(key, size=size).values
    edges = [name for name in whole if name.endswith("_edge") or name.startswith("finished_")]
    made = make(garment, {"size": size})
    with (
        patch.object(cloth, "lay", never),
        patch.object(drafts, "outside", never),
        patch.object(garment, "cut", never),
        patch.object(garment, "sew", never),
        patch.object(garment, "draw", never),
    ):
        for name in edges:
            found = made.find(name)
            assert found is not None
            assert found.amount == whole[name].amount


def test_neck_and_length_of_a_gown_need_no_draft_at_all():
    whole = work("day-gown", size="62").values
    gown = make(register.find_garment("day-gown"), {"size": "62"})
    with patch.object(drafts.Draft, "__init__", never):
        for name in ("neck_edge", "finished_length"):
            assert gown.find(name) == whole[name]


@pytest.mark.parametrize("key", DRAFTED)
def test_values_of_a_table_of_sizes_need_no_steps_and_no_pictures(key):
    garment = register.find_garment(key)
    whole = work(key, size="74").values
    with patch.object(garment, "draw", never):
        assert make(garment, {"size": "74"}).values.keys() == whole.keys()


@pytest.mark.parametrize("key", DRAFTED)
def test_the_order_of_values_does_not_hang_on_what_was_asked_for_first(key):
    garment = register.find_garment(key)
    straight = list(make(garment, {}).values)
    asked = make(garment, {})
    for name in reversed(straight):
        asked.find(name)
    assert list(asked.values) == straight
    assert list(make(garment, {}).work().values) == straight

"""Every refusal of every technique and garment, its advice taken.

Sentences that were found wrong stand here with what was written for them; random measures look for
more: a few of each in the ordinary run, a thousand under `HYPOTHESIS_PROFILE=search`.
"""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import Raw
from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.ways_out import (
    at_least,
    at_most,
    just,
    less_than,
    more_than,
    ways,
    would_be,
)
from handout_engine.working.technique import Technique
from thoroughness import SEARCHING
from ways_out import Way, check_way_out, faults, worked
from ways_out import ways as read_ways
from written_inputs import amounts

KEYS = register.keys()
GARMENTS = set(register.garment_keys())
DRAWS, DRAFTS = (1000, 1000) if SEARCHING else (5, 2)
"""How often a technique, and a garment, which takes longer, is tried."""

FOUND: list[tuple[str, dict[str, Raw]]] = [
    ("pillow-cover", {"cloth_width": "4 in"}),
    ("pillow-cover", {"cloth_width": "8 in", "pillow_length": "40 in"}),
    ("shawl-square", {"cloth_width": "4 in"}),
    ("shawl-square", {"cloth_width": "8 in", "hem": "2 in"}),
    ("shawl-square", {"finished": "70 in"}),
    ("summer-dress", {"size": "50", "hem_trim": "21 cm", "knee_share": "0.2"}),
    ("day-gown", {"size": "50", "sleeve_trim": "10 cm"}),
    ("day-gown", {"neck_ease": "11 cm", "chest": "29 cm"}),
    ("day-gown", {"lap": "1 3/4 in", "facing": "1 1/4 in"}),
    ("baby-jacket", {"extension": "3 in", "facing": "2 in"}),
    ("baby-jacket", {"size": "50", "flare": "12 cm", "hem": "1/2 in"}),
    ("slip", {"size": "50", "hem_trim": "30 cm"}),
    ("slip", {"size": "50", "reach": "22 cm", "hem": "6 in"}),
    ("single-binding", {"tail": "1 in", "strip_allowance": "1/2 in"}),
    ("single-binding", {"edge": "1 in", "corners": "3"}),
    ("button-loops", {"first": "0 in"}),
    ("box-pleats", {"pleats": "29", "box": "9 in", "finished_width": "4 in"}),
    ("knife-pleats", {"visible": "6 in", "finished_width": "4 in"}),
    ("gathered-edging", {"corners": "5", "edge": "1 in", "lace_width": "12 in"}),
    ("circular-flounce", {"cloth_width": "4 in"}),
    ("circular-flounce", {"edge": "60 in", "depth": "14 in", "ends": "closed"}),
    ("spiral-flounce", {"cloth_width": "4 in"}),
    ("continuous-bias", {"cloth_across": "2 in", "cloth_along": "2 in", "width": "2 in"}),
    ("mitred-corner", {"hem_depth": "12 in", "width": "18 in", "length": "4 in"}),
    ("mitred-lace", {"sides": "6 in; 5 in; 9 in", "measured": "outer line",
                     "lace_width": "12 in"}),
    ("graduated-tucks", {"depths": "1/4 in; 1/8 in; 3/8 in", "spacing": "1/8 in",
                         "press": "to the left"}),
    ("tuck-set", {"tucks": "40", "spacing": "1/2 in", "finished_width": "4 in"}),
    ("release-tucks", {"tucks": "40", "finished_width": "4 in"}),
    ("outline-ruffle", {"edge": "4 in"}),
    ("lace-shapes", {"edge": "1 in"}),
    ("lap-placket", {"edge_girth": "6 in", "must_pass": "59 in"}),
    ("hem", {"hem": "double", "hem_depth": "1/16 in"}),
    ("hem", {"hem": "double", "hem_depth": "18 in", "growth": "3 in"}),
    ("decorative-row", {"form": "round a ring", "edge": "20 in", "fit": "keep the repeat",
                        "repeat": "13 mm"}),
    ("twin-needle-clearance", {"foot_slot": "1 mm", "clearance": "0 mm"}),
    ("cloth-adviser", {"greatest_share": "3 %"}),
]  # fmt: skip


def found(key: str) -> type[Technique]:
    """The technique or garment of a name."""
    return register.find(key)


def few_inputs(technique: type[Technique]) -> st.SearchStrategy[Mapping[str, Raw]]:
    """One to five of its inputs, each anywhere within its bounds; the rest as usual."""
    kinds = {each.name: each.kind for each in declared_inputs(technique)}
    return st.lists(st.sampled_from(sorted(kinds)), min_size=1, max_size=5, unique=True).flatmap(
        lambda names: st.fixed_dictionaries({name: amounts(kinds[name]) for name in names})
    )


@pytest.mark.parametrize(("key", "written"), FOUND)
def test_what_was_found_is_advised_rightly(key, written):
    refusal = worked(found(key), written)
    assert isinstance(refusal, RefusalError), "it is sewn now; take another example"
    check_way_out(found(key), written, refusal)


@pytest.mark.parametrize("key", KEYS)
def test_the_way_out_of_every_refusal_is_one(key):
    technique = found(key)

    @settings(
        max_examples=DRAFTS if key in GARMENTS else DRAWS,
        phases=[Phase.generate],  # shrinking takes minutes here
        suppress_health_check=list(HealthCheck),
    )
    @given(few_inputs(technique))
    def refuse_and_look(written: Mapping[str, Raw]) -> None:
        refusal = worked(technique, written)
        if isinstance(refusal, RefusalError):
            check_way_out(technique, written, refusal)

    refuse_and_look()


SHAWL = register.find("shawl-square")()
"""Its side is 6 to 80 in long."""


def test_a_way_is_said_up_or_down_so_that_it_does():
    assert at_most(SHAWL, "finished", inches("81/8")) == "at most 10 1/8 in (25.7 cm)"
    assert at_least(SHAWL, "finished", inches("81/8")) == "at least 10 1/8 in (25.8 cm)"
    assert less_than(SHAWL, "finished", inches(8)) == "less than 8 in (20.3 cm)"
    assert more_than(SHAWL, "finished", inches(8), "a side over {}") == (
        "a side over 8 in (20.4 cm)"
    )


def test_what_lies_beyond_the_bounds_of_an_input_is_no_way():
    kind = next(each.kind for each in declared_inputs(type(SHAWL)) if each.name == "finished")
    assert at_most(SHAWL, "finished", inches(-2)) == ""
    assert at_most(SHAWL, "finished", kind.least - millimetres(1)) == ""
    assert at_least(SHAWL, "finished", kind.most + millimetres(1)) == ""
    assert less_than(SHAWL, "finished", kind.least) == ""
    assert more_than(SHAWL, "finished", kind.most) == ""
    # 6 in are 152.4 mm, so that 15.2 cm would be too small: only what can be written is said
    assert at_most(SHAWL, "finished", inches(6)) == "at most 6 in"


def test_a_figure_is_said_only_in_the_system_in_which_it_does():
    def whole_inches(size):
        return (size / inches(1)).number.denominator == 1

    assert just(SHAWL, "finished", inches(8), whole_inches) == "8 in"
    assert just(SHAWL, "finished", inches(8), lambda _: False) == ""


def test_a_closed_way_is_left_out_of_the_row():
    assert ways("", "wider cloth") == "wider cloth"
    assert ways("at most 3 in", "", "wider cloth") == "at most 3 in, or wider cloth"


def test_what_is_left_is_never_negative():
    assert would_be(inches(2), "long") == "would be 2 in (50 mm) long"
    assert would_be(inches(-2), "long") == "would vanish"


@pytest.mark.parametrize(
    ("sentence", "read"),
    [
        ("hem 3 in is deep; use at most 2 in (50 mm), or a wider side",
         [Way(("hem",), "2 in"), Way(("hem",), "50 mm")]),
        ("too small; use hems of less than 1 in, or more than 2 in for finished and hem",
         [Way(("hem",), "1 in", -1), Way(("finished", "hem"), "2 in", 1)]),
        ("too small; use a finished of at least 1 1/2 in", [Way(("finished",), "1 1/2 in")]),
        ("wide; use smaller arcs, make: 2 with hem: 1 in",
         [Way(("make",), "2", also=(("hem", "1 in"),))]),
        ("wide; use 8 in (20.3 cm) or 9 in, which need no change",
         [Way(("hem",), "8 in"), Way(("hem",), "20.3 cm"), Way(("hem",), "9 in")]),
        ("wide; use wider cloth", []),
        ("wide; use the hem with 3 in", [None]),
    ],
)  # fmt: skip
def test_advice_is_read_as_its_reader_does(sentence, read):
    kinds = {each.name: each.kind for each in declared_inputs(type(SHAWL))}
    assert list(read_ways(RefusalError(sentence, "hem"), kinds)) == read


@pytest.mark.parametrize(
    ("sentence", "fault"),
    [
        ("hem 3 in is deep; use at most 0 in", "cannot be written"),
        ("hem 3 in is deep; use at most -2 in", "names a negative figure"),
        ("hem 30 in leaves -4 in; use less hem", "names a negative figure"),
        ("hem 3 in is deep; use about 2 in", "cannot be read"),
    ],
)
def test_a_wrong_advice_is_told(sentence, fault):
    assert any(fault in each for each in faults(type(SHAWL), {}, RefusalError(sentence, "hem")))

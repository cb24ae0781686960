"""Numbers without a unit: refused in a block, in the form read in the units that she has chosen."""

import json
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import (
    AngleKind,
    CountKind,
    FineLengthKind,
    LengthKind,
    PercentageKind,
    RatioKind,
    ReelKind,
    ThreadCountKind,
    YardageKind,
)
from handout_engine.amounts.lengths import inches, millimetres
from handout_engine.amounts.list_kinds import ListKind, NamedLengthsKind, PlacesKind
from handout_engine.amounts.reading import read_length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.pages.authored import SYSTEMS, authored, to_json
from handout_engine.pages.blocks import read_block
from handout_engine.pages.browser import answer
from handout_engine.pages.page import work_page
from handout_engine.register import find, keys

BOUNDS = (millimetres(1), inches(200))
LENGTH = LengthKind(*BOUNDS)
DEPTHS = ListKind(LENGTH, 1, 5)
CORNERS = PlacesKind(LENGTH, 1, 5)
STRIPS = NamedLengthsKind(LENGTH, 1, 5, ("lace", "entredeux"))


@pytest.mark.parametrize(
    ("kind", "written", "in_inches", "in_metric"),
    [
        (LENGTH, "47", "47 in", "47 cm"),
        (LENGTH, " 1 1/2 ", "1 1/2 in", "1 1/2 cm"),
        (LENGTH, "1½", "1½ in", "1½ cm"),
        (LENGTH, "47,5", "47,5 in", "47,5 cm"),
        (DEPTHS, "3; 4; 5", "3 in; 4 in; 5 in", "3 cm; 4 cm; 5 cm"),
        (DEPTHS, "3, 4, 5", "3 in; 4 in; 5 in", "3 cm; 4 cm; 5 cm"),
        (DEPTHS, "1,5; 2", "1,5 in; 2 in", "1,5 cm; 2 cm"),
        (CORNERS, "0, 0; 4, 3", "0 in, 0 in; 4 in, 3 in", "0 cm, 0 cm; 4 cm, 3 cm"),
        (STRIPS, "lace 5/8; entredeux 1/4", "lace 5/8 in; entredeux 1/4 in",
         "lace 5/8 cm; entredeux 1/4 cm"),
        (YardageKind(*BOUNDS), "1/8", "1/8 yd", "1/8 cm"),
        (ReelKind(*BOUNDS), "100", "100 yd", "100 m"),
        (FineLengthKind(*BOUNDS), "2.5", "2.5 mm", "2.5 mm"),
    ],
)  # fmt: skip
def test_a_bare_number_has_the_unit_of_the_chosen_system(kind, written, in_inches, in_metric):
    assert kind.with_units(written, "inches") == in_inches
    assert kind.with_units(written, "metric") == in_metric


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize(
    ("kind", "written"),
    [
        *((LENGTH, text) for text in ("47 mm", '4"', "", "wide", "-4", "1,234", "4 5", "32L")),
        (DEPTHS, "3; 4 in"),
        (DEPTHS, ""),
        (DEPTHS, "3 in, 4"),
        (CORNERS, "0, 0 in; 4, 3"),
        (STRIPS, "lace"),
        (STRIPS, "lace  5/8 in"),
        (RatioKind(1, 3), "2"),
        (CountKind(1, 9), "2"),
        (AngleKind(1, 90), "45"),
        (PercentageKind(0, 1), "3"),
        (ThreadCountKind(1, 90), "50"),
    ],
)
def test_what_is_no_bare_length_stays_as_it_is_written(kind, written, system):
    assert kind.with_units(written, system) == written


@given(st.text(max_size=60) | st.from_regex(r"[0-9 /.,;a-z-]{0,40}", fullmatch=True))
def test_no_text_is_read_as_anything_but_itself_with_a_unit(text):
    for kind in (LENGTH, DEPTHS, CORNERS, STRIPS):
        for system, unit in (("inches", "in"), ("metric", "cm")):
            whole = kind.with_units(text, system)
            spoken = re.sub(r"[\s;,]", "", text)
            assert re.sub(r"[\s;,]", "", whole).replace(unit, "") in (
                spoken,
                spoken.replace(unit, ""),
            )


@pytest.mark.parametrize("key", keys())
@pytest.mark.parametrize("system", SYSTEMS)
def test_every_length_of_every_technique_takes_a_bare_number(key, system):
    for asked in declared_inputs(find(key)):
        kind = asked.kind
        if type(kind) is not LengthKind:
            continue
        unit, each = ("in", inches(1)) if system == "inches" else ("cm", millimetres(10))
        bare = f"{kind.most.mm / each.mm}"
        assert kind.read(kind.with_units(bare, system)) == read_length(f"{bare} {unit}")
        with pytest.raises(RefusalError, match=r"write .* in, .* cm or .* mm"):
            kind.read(bare)


def asked_of(block, choices, **more):
    page = authored(work_page([read_block(block)], Tape()), "a4", {}, [])
    question = {"page": json.loads(to_json(page)), "choices": choices, **more}
    return json.loads(answer(json.dumps(question)))


def field_of(told, name):
    return next(part for part in told["form"].split('<div class="form-field">') if name in part)


def read_back(told, name):
    return re.search(r"<output[^>]*>(.*?)</output>", field_of(told, name))[1]


@pytest.mark.parametrize(
    ("tape", "written", "read"),
    [("metric", "47", "47 cm"), ("inches", "18 1/2", "18 1/2 in"), ("metric", "470 mm", "")],
)
def test_the_form_reads_a_bare_number_in_its_units_and_says_so(tape, written, read):
    own = {"garment": {"chest": written}}
    told = asked_of({"garment": "slip"}, own, tape={"first": tape})
    assert told["problems"] == []
    assert read_back(told, "garment.chest") == (f"Read as {read}." if read else "")
    assert f'value="{read or written}"' in field_of(told, "garment.chest")
    assert f"chest {read or written}" in told["chosen"]
    with_unit = asked_of(
        {"garment": "slip"}, {"garment": {"chest": read or written}}, tape={"first": tape}
    )
    assert told["fragments"] == with_unit["fragments"]


def test_a_number_that_cannot_be_is_refused_with_the_unit_it_was_read_in():
    own = {"garment": {"chest": "47"}}
    (problem,) = asked_of({"garment": "slip"}, own, tape={"first": "inches"})["problems"]
    assert problem["text"].startswith("47 in is too large; use at most ")


def test_in_a_block_a_bare_number_stays_refused():
    page = work_page([read_block({"garment": "slip", "chest": "47"})], Tape("metric"))
    (problem,) = page.problems
    assert '"47" has no unit; write 47 in, 47 cm or 47 mm' in problem.text

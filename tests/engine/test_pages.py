"""Pages of blocks: their references, their problems and the lines these stand in."""

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.refusals import RefusalsError
from handout_engine.pages.blocks import read_block
from handout_engine.pages.page import work_page
from handout_engine.pages.problems import Inline
from worked import INCHES

SLEEVE = {"technique": "banded-ruffle", "name": "sleeve", "edge": "9 in"}
HEM = {
    "technique": "gathered-ruffle", "name": "hem", "edge": "60 in", "depth": "sleeve.hangs",
    "make": "2",
}  # fmt: skip
YOKE = {"technique": "gathered-ruffle", "name": "yoke", "depth": "hem.depth", "edge": "sleeve.edge"}


def page(*written, defaults=None, inlines=()):
    """A page of blocks, one every ten lines, the fields of each in the lines below it."""
    blocks = [
        read_block(each, 10 * number, {key: 10 * number + n for n, key in enumerate(each, 1)})
        for number, each in enumerate(written, 1)
    ]
    return work_page(blocks, INCHES, defaults, inlines)


def problems(*written, **more):
    return [(found.line, found.text) for found in page(*written, **more).problems]


def amount(made, reference):
    block, _, value = reference.partition(".")
    return made.workings[block].named[value].amount


def test_one_block_takes_its_depth_from_another():
    made = page(SLEEVE, HEM)
    assert not made.problems
    assert amount(made, "hem.depth") == amount(made, "sleeve.hangs") == inches("7/4")


@pytest.mark.parametrize("order", [*permutations([SLEEVE, HEM, YOKE])])
def test_blocks_may_stand_in_any_order(order):
    made = page(*order)
    assert not made.problems
    assert amount(made, "yoke.depth") == inches("7/4")
    assert amount(made, "yoke.edge") == inches(9)
    assert all(made.fragment(number) for number in range(3))


def test_a_reference_in_a_list():
    layered = {"technique": "layered-ruffle", "depths": ["sleeve.hangs", "3 in"]}
    assert amount(page(layered, SLEEVE), "layered-ruffle.depths") == (inches("7/4"), inches(3))


def test_a_block_without_a_name_is_called_by_its_technique():
    made = page({"technique": "gathered-ruffle"}, {"technique": "gathered-ruffle"})
    assert list(made.workings) == ["gathered-ruffle", "gathered-ruffle-2"]


def test_further_parts_of_a_block_and_of_the_page():
    made = page({**SLEEVE, "show": "cuts"}, {"of": "sleeve", "show": "steps"}, {"of": "page"})
    assert not made.problems
    assert "<table" in made.fragment(0) and "<ol" not in made.fragment(0)
    assert "<ol" in made.fragment(1) and "<table" not in made.fragment(1)
    assert "Local rules" in made.fragment(2)


def test_the_problem_of_a_field_stands_in_its_line():
    assert problems({**SLEEVE, "band": "1/4 in", "seam_allowance": "1/2 in"}) == [
        (
            15,
            'banded-ruffle "sleeve": seam_allowance 1/2 in is wider than band 1/4 in; it cannot '
            "lie flat inside it (use at most 1/4 in, trim it to 1/4 in after sewing and write "
            'that, or press it away: press: "away from the band")',
        )
    ]
    assert problems({**SLEEVE, "band": "7 in"}) == [
        (14, 'banded-ruffle "sleeve": band: 7 in is too large; use at most 6 in (15.2 cm)')
    ]


def test_the_problem_of_a_field_that_is_not_written_stands_in_the_line_of_its_block():
    ((line, text),) = problems({**SLEEVE, "edge_allowance": "1/8 in", "rows_apart": "1/2 in"})
    assert line == 15 and "rows_apart" in text
    ((line, text),) = problems({**SLEEVE, "cloth_width": "4 in", "selvage": "2 in"})
    assert line == 15 and "the selvages take the whole cloth" in text
    ((line, text),) = problems(SLEEVE, defaults={"cloth_width": "1 in"})
    assert line == 10 and "cloth_width: 1 in is too small" in text


def test_all_slips_of_a_page_are_told_in_the_order_of_its_lines():
    found = problems({**HEM, "depth": "-1 in", "edge": "9"}, {**SLEEVE, "bnad": "1 in"})
    assert [line for line, _ in found] == [13, 14, 24]
    assert found[2][1].endswith('there is no input "bnad"; did you mean "band"?')


@pytest.mark.parametrize(
    ("reference", "ending"),
    [
        ("sleev.hangs", 'depth: there is no block "sleev" on this page; did you mean "sleeve"?'),
        ("sleeve.hang", 'depth: "sleeve" has no value "hang"; did you mean "hangs"?'),
        ("sleeve.shows", 'depth: "sleeve" was given no shows'),
        ("garment.hem", "depth: this page names no garment to take it from"),
        ("sleeve.press", 'depth: "into the band" does not start with a number'),
        ("sleeve.fullness", "depth: 1.5 is not a length"),
    ],
)
def test_a_reference_to_what_is_not_there(reference, ending):
    ((line, text),) = problems(SLEEVE, {**HEM, "depth": reference})
    assert line == 24
    assert text == f'gathered-ruffle "hem": {ending}'


def test_an_unknown_technique_names_the_nearest():
    ((line, text),) = problems({"technique": "banded-rufle"})
    assert line == 11
    assert text.endswith('there is no technique "banded-rufle"; did you mean "banded-ruffle"?')


def test_what_depends_on_a_failed_block_says_nothing_of_its_own():
    made = page({**SLEEVE, "edge": "nine"}, HEM, YOKE, inlines=[Inline("yoke.depth", 40)])
    assert [found.line for found in made.problems] == [13]
    assert made.workings == {}
    assert [made.fragment(number) for number in range(3)] == [""] * 3
    assert made.inline("yoke.depth") == ""


def test_values_that_need_each_other_are_one_problem_with_the_way_round():
    found = problems({**SLEEVE, "edge": "hem.edge"}, {**HEM, "edge": "sleeve.edge"})
    assert found == [
        (
            13,
            'banded-ruffle "sleeve": sleeve.edge needs hem.edge, which needs sleeve.edge; write '
            "one of them as a measure",
        )
    ]


def test_the_way_round_goes_through_all_that_is_needed():
    """The trim is as deep as what hangs of the ruffle, which is cut by the trim's own depth."""
    trim = {"technique": "gathered-ruffle", "name": "trim", "edge": "9 in", "depth": "sleeve.hangs"}
    ((line, text),) = problems({**SLEEVE, "shows": "trim.depth"}, trim)
    assert line == 14
    assert text == (
        'banded-ruffle "sleeve": sleeve.shows needs trim.depth, which needs sleeve.hangs, which '
        "needs sleeve.front_shows, which needs sleeve.shows; write one of them as a measure"
    )


def test_blocks_may_refer_to_each_other_where_their_values_do_not():
    """A sleeve is cut shorter by what its ruffle hangs; the ruffle is as long as the sleeve's end.

    Left alone the sleeve ends at the wrist; it is drawn back by 1 1/2 in of front and 1/4 in band.
    """
    gown = {"garment": "day-gown", "sleeve_trim": "sleeve.hangs"}
    made = page(gown, {**SLEEVE, "edge": "garment.sleeve_edge", "band": "1/4 in"})
    assert made.problems == []
    assert amount(made, "garment.sleeve_trim") == inches("7/4")
    assert amount(made, "sleeve.edge") == amount(made, "garment.sleeve_edge")
    plain = page({"garment": "day-gown", "sleeve_trim": "1 3/4 in"})
    assert amount(made, "sleeve.edge") == amount(plain, "garment.sleeve_edge")


def test_a_block_that_refers_to_itself_is_a_ring():
    ((_, text),) = problems({**SLEEVE, "edge": "sleeve.edge"})
    assert text.endswith("sleeve.edge needs sleeve.edge; write one of them as a measure")


def test_two_rings_are_two_problems_and_the_rest_is_worked_out():
    def tied(name, other):
        return {"technique": "gathered-ruffle", "name": name, "edge": f"{other}.edge"}

    made = page(
        tied("front", "back"), tied("cuff", "collar"), tied("needs-cuff", "cuff"),
        tied("back", "front"), tied("collar", "cuff"), YOKE, HEM, SLEEVE,
    )  # fmt: skip
    assert [found.line for found in made.problems] == [13, 23]
    assert set(made.workings) == {"sleeve", "hem", "yoke"}


def test_twin_names_are_one_problem_of_the_second():
    found = problems(SLEEVE, {**SLEEVE, "edge": "10 in"})
    assert found == [
        (
            22,
            'banded-ruffle "sleeve": the name is taken by the block in line 10; give it another',
        )
    ]


def test_parts_of_a_block_that_is_not_there():
    ((line, text),) = problems(SLEEVE, {"of": "sleeves"})
    assert line == 21
    assert text == 'of: there is no block "sleeves" on this page; did you mean "sleeve"?'


def test_inline_values_are_said_where_they_are_known():
    inlines = [Inline("sleeve.hangs", 3), Inline("sleeve.hang", 5), Inline("hem", 6)]
    made = page(SLEEVE, inlines=inlines)
    assert "1\u00a03/4\u00a0in" in made.inline("sleeve.hangs")
    assert [(found.line, found.text) for found in made.problems] == [
        (5, '{{ sleeve.hang }}: "sleeve" has no value "hang"; did you mean "hangs"?'),
        (6, '{{ hem }}: there is no block "hem" on this page; known: sleeve'),
    ]


def test_the_page_s_defaults_apply_only_where_such_an_input_exists():
    banded = {"technique": "banded-ruffle", "name": "a"}
    without_cloth = {"technique": "twin-needle-clearance", "name": "b"}
    made = page(banded, without_cloth, defaults={"cloth_width": "60 in", "band": "1/2 in"})
    assert not made.problems
    assert amount(made, "a.cloth_width") == inches(60)
    assert amount(made, "a.band") == inches("1/2")


def test_what_the_author_wrote_goes_before_the_page_s_defaults():
    made = page({**SLEEVE, "band": "3/8 in"}, defaults={"band": "1/2 in"})
    assert amount(made, "sleeve.band") == inches("3/8")


hostile = st.sampled_from(
    ["", "9 in", "sleeve.edge", "hem.depth", "page.x", "garment.x", "<script>", "9", "\x00",
     "1/0 in", "ring", "2", "5 %", "{{ a.b }}", "'\"&", "a" * 300]
) | st.text(max_size=20)  # fmt: skip
names = st.sampled_from(["sleeve", "hem", "page", "", "<b>", "banded-ruffle"])
KEYS = register.keys()
registered = st.sampled_from([*KEYS[:4], "gathered-ruffle", ""]) | st.text(max_size=9)
every = [register.find(key) for key in KEYS]
input_names = sorted({each.name for technique in every for each in declared_inputs(technique)})
fields = st.dictionaries(
    st.sampled_from(input_names) | st.text(max_size=8), hostile | st.lists(hostile, max_size=3),
    max_size=4,
)  # fmt: skip
written_blocks = st.builds(
    lambda fields, technique, name, of, show: {
        **fields, "technique": technique, "name": name, **({"of": of} if of else {}), **show,
    },
    fields, registered, names, st.sampled_from(["", "", "", "sleeve", "page", "nowhere"]),
    st.sampled_from([{}, {"show": "cuts"}, {"show": ["steps", "x"]}]),
)  # fmt: skip


@given(st.lists(written_blocks, max_size=5), st.dictionaries(st.sampled_from(input_names), hostile))
def test_no_page_does_worse_than_have_problems(written, defaults):
    blocks = []
    for number, each in enumerate(written):
        try:
            blocks.append(read_block(each, number))
        except RefusalsError as several:
            assert all(refusal.message.isprintable() for refusal in several.refusals)
    inlines = [Inline("sleeve.edge"), Inline("<b>"), Inline("")]
    made = work_page(blocks, INCHES, defaults, inlines)
    for found in made.problems:
        assert found.text.isprintable() and len(found.text) < 2000
    for number in range(len(blocks)):
        assert "<script>" not in made.fragment(number)
    for inline in inlines:
        made.inline(inline.reference)

"""What holds of both garments with a yoke: seams that join, outlines, openings, growth."""

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon

from handout_engine import register
from handout_engine.amounts.lengths import millimetres
from handout_engine.drafting.curves import run
from handout_engine.working.technique import make
from measured_babies import SIZES, area, babies, check_outlines
from worked import length, refusal, steps, work

KEYS = ("day-gown", "summer-dress")
EXAMPLES = settings.default.max_examples // 5
both = pytest.mark.parametrize("key", KEYS)
styles = st.fixed_dictionaries(
    {},
    optional={
        "skirt_fullness": st.integers(12, 30).map(lambda tenths: Fraction(tenths, 10)),
        "taken_in": st.just("tucked"),
        "flare": st.integers(0, 120).map(millimetres),
        "hem_trim": st.integers(0, 60).map(millimetres),
        "button": st.integers(7, 12).map(millimetres),  # larger ones would touch at size 50
        "yoke_share": st.sampled_from(["0.72", "0.75", "0.8"]),
    },
)


class Drafted:
    """The drafts of a garment, and its working."""

    def __init__(self, key, written):
        self.garment = make(register.find_garment(key), written)
        self.working = self.garment.work()

    @property
    def drafts(self):
        yoke, skirt = self.garment.yoke, self.garment.drafted_skirt
        return (yoke.front, yoke.back, skirt.front, skirt.back)

    def mm(self, name):
        return float(self.working.named[name].length)


@both
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(st.data())
def test_seams_that_join_match(key, data):
    baby = data.draw(babies(register.find_garment(key), spread=5))
    drafted = Drafted(key, {**baby, "yoke_share": "0.75", **data.draw(styles)})
    front, back, lower, lower_back = drafted.drafts
    near = {"abs": 0.01}
    # shoulder to shoulder, side to side
    assert front.edge("shoulder").length == back.edge("shoulder").length
    assert lower.edge("side").length == pytest.approx(lower_back.edge("side").length, **near)
    # the armhole is divided between yoke and skirt
    for yoke, skirt in ((front, lower), (back, lower_back)):
        whole = yoke.edge("armhole").length + skirt.edge("armhole").length
        assert 2 * whole == pytest.approx(drafted.mm("armhole_edge"), **near)
    # the neck, front and back, the lap beyond the centre taken off
    beyond = drafted.mm("lap") / 2
    around = 2 * (front.edge("neck").length + back.edge("neck").length - beyond)
    assert around == pytest.approx(drafted.mm("neck_edge"), **near)
    assert around + 2 * beyond == pytest.approx(drafted.mm("neck_run"), **near)


@both
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(st.data())
def test_the_skirts_tops_go_into_the_yoke(key, data):
    baby = data.draw(babies(register.find_garment(key), spread=5))
    drafted = Drafted(key, {**baby, "yoke_share": "0.75", **data.draw(styles)})
    front, back, lower, lower_back = drafted.drafts
    full = float(drafted.garment.skirt_fullness)
    top = 2 * lower.edge("top").length
    if drafted.garment.taken_in == "tucked":
        taken = float(2 * drafted.garment.tucks * drafted.garment.tuck_depth)
        assert top - taken == pytest.approx(2 * front.edge("yoke").length, abs=0.01)
    else:
        assert top / full == pytest.approx(2 * front.edge("yoke").length, abs=0.01)
    # the slit divides the back: the upper half reaches to the fold of its facing, the lower one to
    # where its lap takes over; both are gathered alike
    half, aside = lower_back.edge("top").length, drafted.mm("slit_aside")
    upper, under = (half + aside) / full, (half - aside) / full + drafted.mm("lap")
    assert upper == pytest.approx(back.edge("yoke").length, abs=0.01)
    assert under == pytest.approx(back.edge("yoke").length, abs=0.01)
    assert back.edge("back").length == pytest.approx(drafted.mm("back_edge"), abs=0.01)


@both
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(st.data())
def test_outlines_are_whole_and_hold_their_seams_and_allowances(key, data):
    baby = data.draw(babies(register.find_garment(key), spread=5))
    drafted = Drafted(key, {**baby, "yoke_share": "0.75", **data.draw(styles)})
    check_outlines(drafted.working)
    for draft in drafted.drafts:
        cut = Polygon(draft.cut_outline)
        for edge in draft.edges:
            # what is turned up mirrors the piece above its fold (test_turned_hems)
            if edge.allowance and not edge.turned_up:
                strip = LineString(edge.points).buffer(edge.allowance, cap_style="flat")
                assert strip.difference(cut).area < 1.0, (draft.name, edge.name)
        # a notch lies on the line that is sewn
        line = LineString([*draft.seam_outline, draft.seam_outline[0]])
        for notch in draft.notches:
            assert line.distance(LineString([notch, notch])) < 0.01


@both
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(st.data())
def test_the_head_passes_and_the_placket_holds_its_lap(key, data):
    baby = data.draw(babies(register.find_garment(key), spread=5))
    working = work(key, **baby, yoke_share="0.75")
    opened = length(working, "neck_edge") + 2 * length(working, "opening")
    assert opened >= length(working, "head") + millimetres(20)
    placket = length(working, "opening") - length(working, "back_edge")
    assert placket == length(working, "placket_edge")
    assert placket > length(working, "lap")
    assert length(working, "front_yoke_depth") >= millimetres(25)
    assert length(working, "finished_chest") > length(working, "chest")


@both
def test_everything_grows_with_the_size(key):
    worked = [work(key, size=size) for size in SIZES]
    growing = ("finished_chest", "neck_edge", "armhole_edge", "shoulder_seam", "yoke_depth",
               "yoke_edge", "back_edge", "skirt_top", "hem_edge", "centre_panel_width",
               "centre_panel_depth")  # fmt: skip
    for smaller, larger in pairwise(worked):
        for name in growing:
            assert length(smaller, name) < length(larger, name), name
        for one, other in zip(smaller.pieces[:2], larger.pieces[:2], strict=True):
            assert area(one) < area(other), one.name


@both
def test_the_finest_baby_of_the_table_needs_no_other_yoke(key):
    for size in SIZES:
        assert length(work(key, size=size), "front_yoke_depth") >= millimetres(25)


@both
def test_tucks_widen_the_skirt_by_what_they_take(key):
    plain, tucked = work(key), work(key, taken_in="tucked", tucks="6", tuck_depth="5 mm")
    assert length(tucked, "skirt_top") == length(tucked, "yoke_edge") + millimetres(60)
    assert length(tucked, "skirt_back_top") == length(plain, "skirt_back_top")
    panel = 2 * length(tucked, "skirt_front_width") - millimetres(60)
    assert length(tucked, "skirt_panel_width") == panel


@both
def test_what_is_worked_first_is_not_bought_again(key):
    plain = work(key)
    worked = work(key, front="worked", skirt="front worked")
    assert [piece.name for piece in worked.pieces if piece.worked] == ["front yoke", "skirt front"]
    assert length(worked, "cloth_used") < length(plain, "cloth_used")
    both = work(key, skirt="worked")
    assert [piece.name for piece in both.pieces if piece.worked] == ["skirt front", "skirt back"]


@both
def test_a_trim_shortens_the_cloth_and_not_the_garment(key):
    plain, trimmed = work(key, hem="1/4 in"), work(key, hem="1/4 in", hem_trim="5 cm")
    assert length(trimmed, "finished_length") == length(plain, "finished_length")
    shorter = length(plain, "skirt_front_length") - length(trimmed, "skirt_front_length")
    assert float(shorter) == pytest.approx(50, abs=0.5)


@both
@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"size": "50", "yoke_share": "0.6"},
         "the front yoke would be 25/32 in (20 mm) deep at its centre, less than 1 in (25 mm); "
         "use a yoke_share of at least 0.65, or less neck_ease or neck_drop"),
        ({"size": "62", "lap": "3/4 in"},
         "lap 3/4 in leaves less than 1/4 in beside a button of 3/8 in; use at least 7/8 in "
         "(23 mm), or a smaller button"),
        ({"size": "62", "facing": "3/4 in"},
         "facing 3/4 in does not reach under the buttons; use at least 7/8 in (23 mm), or a "
         "narrower lap"),
        ({"size": "62", "head_room": "1 cm", "neck_ease": "6 cm", "neck_drop": "1.5 cm",
          "yoke_share": "0.9", "opening": "10 cm"},
         "opening 3 15/16 in leaves too little below the yoke for a placket that laps 7/8 in; use "
         "at least 4 25/32 in (12.1 cm), or a smaller lap"),
        ({"size": "62", "opening": "8 cm"},
         "the head, 16 5/16 in (41.4 cm), with 25/32 in (20 mm) of room does not pass a neck that "
         "opens to 15 3/32 in (38.3 cm); give opening at least 4 5/32 in (10.6 cm), or neck_ease "
         "more"),
        ({"size": "62", "taken_in": "tucked", "tuck_spacing": "1/8 in"},
         "tuck_spacing 1/8 in lays each tuck over the next one's stitching; use at least 1/4 in "
         "(7 mm), their depth"),
        ({"size": "50", "taken_in": "tucked", "tucks": "14", "tuck_spacing": "1/2 in"},
         "the tucks stand over 7 in (17.8 cm) and the yoke seam is only 5 3/16 in (13.2 cm) long; "
         "make fewer, or give tuck_spacing less"),
        ({"size": "50", "taken_in": "tucked", "tuck_length": "12 in", "reach": "30 cm"},
         "tuck_length 12 in is as long as the skirt; use at most 4 1/2 in (11.5 cm)"),
        ({"buttons": "8", "button": "3/4 in", "lap": "1 1/4 in"},
         "8 buttons of 3/4 in would touch on a back edge of 2 25/32 in (71 mm); use at most 2, or "
         "smaller buttons"),
        ({"back_neck_depth": "5 cm", "opening": "30 cm", "button": "3/4 in", "lap": "1 1/4 in"},
         "back_neck_depth 1 31/32 in leaves no room for a button of 3/4 in at the back edge of the "
         "yoke; use at most 1 21/32 in (42 mm), or a smaller button, or more yoke_share"),
        ({"back_neck_depth": "8 cm", "opening": "30 cm"},
         "the neck would be only 1 11/32 in (34 mm) wide for its depth; use at most 1 21/32 in "
         "(42 mm), or more neck_ease"),
    ],
)  # fmt: skip
def test_what_cannot_be_sewn_is_refused_with_the_way_out(key, written, sentence):
    alike = {"armhole_ease": "1.5 cm", "yoke_share": "0.7", "flare": "0 cm"}
    assert refusal(key, **{**alike, **written}) == sentence


def test_the_sleeves_cap_goes_into_the_armhole():
    for size in SIZES:
        drafted = Drafted("day-gown", {"size": size})
        sleeve = drafted.garment.sleeve_piece.draft
        eased = sleeve.edge("cap").length - 2 * run(drafted.garment.block.armhole)
        assert eased == pytest.approx(float(drafted.garment.cap_ease), abs=0.5)


@both
def test_buttons_stand_evenly_between_neck_and_yoke_seam(key):
    # 3/8 in below the neck and above the seam, the third halfway
    working = work(key, size="74")
    step = (length(working, "back_edge") - 2 * length(working, "button")) / 2
    assert length(working, "button_step") == step
    assert "button_step" not in work(key, buttons="1").values


@both
def test_a_collar_takes_the_place_of_the_neck_binding(key):
    bound, collared = work(key), work(key, neck_finish="collar")
    assert any("bind the raw edge from back edge" in step for step in steps(bound))
    assert any("Sew the collar to it from centre back" in step for step in steps(collared))
    assert not any("bind the raw edge from back edge" in step for step in steps(collared))

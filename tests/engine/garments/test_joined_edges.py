"""What a cutter sees when seams are pinned together: necks, armholes, caps and hems run on.

Where two like pieces are joined, each corner beside the seam is to be a right angle, or the edge
has a notch or a spike there. The figures (10 degrees, a baby's cap, a gathered head, a back neck)
are common practice, no source.
"""

from itertools import pairwise
from math import atan2, cos, degrees, dist, sin

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from drafted import corner, corners_at_seams, drafted
from handout_engine import register
from handout_engine.amounts.refusals import RefusalError
from measured_babies import SIZES, babies
from worked import length, refusal, steps, work

KEYS = register.garment_keys()
SLEEVES = (
    {},
    {"sleeve": "short"},
    {"sleeve": "short", "sleeve_fullness": "1"},
    {"sleeve": "short", "sleeve_fullness": "1.4"},
    {"sleeve": "short", "sleeve_fullness": "1.5"},
    {"sleeve": "short", "sleeve_head": "1.25"},
    {"sleeve": "short", "sleeve_head": "1.5"},
    {"sleeve": "short", "sleeve_head": "1.5", "sleeve_fullness": "1.5"},
    {"sleeve_fullness": "1.5"},
    {"sleeve_head": "1.5", "sleeve_fullness": "1.5"},
    {"sleeve_head": "1.75"},
)
EXAMPLES = settings.default.max_examples // 10
at_three_sizes = pytest.mark.parametrize("size", ["50", "68", "98"])
every_garment = pytest.mark.parametrize("key", KEYS)
every_sleeve = pytest.mark.parametrize("style", SLEEVES, ids=lambda style: " ".join(style.values()))


def sleeve(**written):
    working, drafts = drafted("day-gown", **written)
    return working, next(draft for draft in drafts if draft.name == "sleeve")


def height(draft):
    cap = draft.edge("cap").points
    return cap[0][1] - min(y for _, y in cap)


def across(draft):
    left, *_, right = draft.edge("cap").points
    return right[0] - left[0]


@every_garment
@pytest.mark.parametrize("size", SIZES)
def test_every_corner_beside_a_seam_is_square(key, size):
    _, drafts = drafted(key, size=size)
    for draft in drafts:
        for name, angle in corners_at_seams(draft):
            assert angle == pytest.approx(90, abs=10), name


@pytest.mark.parametrize("key", ["slip", "summer-dress", "day-gown", "romper", "baby-jacket"])
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(data=st.data())
def test_a_measured_babys_corners_are_square_too(key, data):
    try:
        _, drafts = drafted(key, **data.draw(babies(register.find_garment(key))))
    except RefusalError:
        return
    for draft in drafts:
        for name, angle in corners_at_seams(draft):
            assert angle == pytest.approx(90, abs=10), name


@every_sleeve
@at_three_sizes
def test_a_sleeve_sewn_to_a_ring_has_a_smooth_cap_and_end(size, style):
    """One half is turned until its seam lies on the other's; then both edges run straight on."""
    _, draft = sleeve(size=size, **style)
    seam, other = draft.edge("underarm").points, draft.edge("underarm, other side").points[::-1]
    assert dist(*seam) == pytest.approx(dist(*other), abs=1e-6)
    along, onto = (atan2(end[1] - top[1], end[0] - top[0]) for top, end in (other, seam))

    def laid(point):
        x, y, turn = point[0] - other[0][0], point[1] - other[0][1], onto - along
        return (seam[0][0] + x * cos(turn) - y * sin(turn),
                seam[0][1] + x * sin(turn) + y * cos(turn))  # fmt: skip

    cap, end = draft.edge("cap").points, draft.edge("end").points
    for before, at, after in (
        (cap[-2], cap[-1], laid(cap[1])),
        (end[1], end[0], laid(end[-2])),
    ):
        ways = [atan2(b[1] - a[1], b[0] - a[0]) for a, b in ((before, at), (at, after))]
        bent = degrees(ways[1] - ways[0]) % 360
        assert min(bent, 360 - bent) < 10


@every_sleeve
@at_three_sizes
def test_a_sleeve_is_as_long_and_as_wide_as_is_said(size, style):
    working, draft = sleeve(size=size, **style)
    full = float(style.get("sleeve_head", 1))
    ease = draft.edge("cap").length / full - float(length(working, "armhole_edge"))
    assert 0 <= ease <= 10
    end = draft.edge("end")
    assert end.length == pytest.approx(float(length(working, "sleeve_end_width")), abs=0.01)
    middle = end.points[len(end.points) // 2]
    assert middle == (0.0, pytest.approx(float(length(working, "sleeve_cloth_reach"))))
    assert draft.edge("underarm").length >= 19.5
    if full == 1:
        assert across(draft) == pytest.approx(float(length(working, "sleeve_girth")), abs=0.01)
        assert height(draft) == pytest.approx(float(length(working, "cap_height")), abs=0.01)
        least = length(working, "upper_arm") + length(working, "sleeve_ease")
        assert across(draft) >= float(least) - 0.01
    assert corner(draft.edge("end"), draft.edge("underarm, other side")) == pytest.approx(90, abs=2)


@pytest.mark.parametrize(
    ("style", "least"),
    [({}, 0.25), ({"sleeve": "short"}, 0.25),
     # spread wide at its end, a cap is flatter
     ({"sleeve": "short", "sleeve_fullness": "1.4"}, 0.2)],
)  # fmt: skip
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(data=st.data())
def test_a_babys_cap_is_a_quarter_to_a_third_of_the_sleeves_width(style, least, data):
    baby = data.draw(babies(register.find_garment("day-gown")))
    try:
        _, draft = sleeve(**baby, yoke_share="0.75", **style)
    except RefusalError as refused:
        assert refused.field in {"sleeve_ease", "armhole_ease", "yoke_share"}
        return
    assert least - 1e-6 <= height(draft) / across(draft) <= 1 / 3
    arm = baby["upper_arm"].mm + 60
    assert across(draft) >= float(arm) - 0.5


@at_three_sizes
@pytest.mark.parametrize("fullness", [None, "1.5"])
@pytest.mark.parametrize("head", ["1.25", "1.5"])
def test_a_gathered_head_rises_one_to_two_centimetres(size, head, fullness):
    style = {"size": size, "sleeve": "short"}
    _, plain = sleeve(**style)
    drawn = {"sleeve_fullness": fullness} if fullness else {}
    _, puffed = sleeve(**style, sleeve_head=head, **drawn)
    assert 10 <= height(puffed) - height(plain) <= 20


def test_the_gathers_of_a_head_lie_between_its_notches():
    working, draft = sleeve(size="74", sleeve="short", sleeve_head="1.5")
    cap = draft.edge("cap").points
    (top, right, left) = draft.notches
    assert top == cap[len(cap) // 2]
    assert left == (-right[0], right[1])
    rest = sum(dist(*pair) for pair in pairwise(cap) if pair[0][0] >= right[0])
    assert rest == pytest.approx(float(length(working, "head_plain")), abs=0.01)
    whole = float(length(working, "gathered_cap"))
    assert draft.edge("cap").length == pytest.approx(whole, abs=0.01)
    assert any("between its two outer notches" in step for step in steps(working))
    assert not any("outer notches" in step for step in steps(work("day-gown")))


def test_a_narrow_end_that_no_rise_is_left_for_is_drafted_or_refused():
    """Heads with gathers and no rise, and without gathers: both found by the long search."""
    for head in ("1", "1.6", "2"):
        for end in ("0 mm", "3.5 cm"):
            written = {"size": "50", "sleeve": "short", "sleeve_fullness": "1", "head_rise": "0 mm",
                       "sleeve_head": head, "sleeve_end_ease": end}  # fmt: skip
            try:
                _, draft = sleeve(**written)
            except RefusalError as refused:
                assert refused.field
                continue
            assert height(draft) > 0


@pytest.mark.parametrize(
    ("written", "other"),
    [
        ({"size": "50", "sleeve": "short", "sleeve_fullness": "2.5"}, "sleeve_fullness"),
        ({"size": "56", "sleeve": "short", "sleeve_head": "2", "sleeve_fullness": "1"},
         "sleeve_fullness"),
        ({"size": "50", "upper_arm": "14 cm", "sleeve_ease": "8 cm"}, "sleeve_ease"),
    ],
)  # fmt: skip
def test_what_a_refused_sleeve_is_told_to_be_it_can_be(written, other):
    told = refusal("day-gown", **written)
    words = (f"a {other} of at most ", f"a {other} of at least ")
    advice = next(each for each in words if each in told)
    amount = told.split(advice)[1].split(" (")[0].split(",")[0]
    work("day-gown", **{**written, other: amount})


@pytest.mark.parametrize("key", ["slip", "summer-dress", "day-gown", "romper", "baby-jacket"])
@settings(max_examples=EXAMPLES, phases=[Phase.generate])  # shrinking takes minutes
@given(data=st.data())
def test_a_back_neck_turns_no_tighter_than_its_allowance_follows(key, data):
    allowance = data.draw(st.sampled_from(["1/4 in", "3/4 in"]))
    written = {"seam_allowance": allowance, **data.draw(babies(register.find_garment(key)))}
    depth = data.draw(st.sampled_from([None, "3 mm", "2 cm", "3.5 cm", "5 cm"]))
    try:
        working, drafts = drafted(key, **written, **({"back_neck_depth": depth} if depth else {}))
    except RefusalError:
        return
    least = max(10.0, float(length(working, "seam_allowance")))
    (back,) = [each for each in drafts if each.name.endswith(("back", "back yoke"))
               and each.edges[0].name == "neck"]  # fmt: skip
    assert tightest(back.edge("neck").points) >= least


def tightest(points):
    """The radius of the smallest circle through three points of a curve, by Heron's area."""
    found = []
    for a, b, c in zip(points, points[1:], points[2:], strict=False):
        sides = dist(a, b), dist(b, c), dist(a, c)
        half = sum(sides) / 2
        area = max(0.0, half * (half - sides[0]) * (half - sides[1]) * (half - sides[2])) ** 0.5
        found.append(sides[0] * sides[1] * sides[2] / (4 * area) if area > 1e-9 else 1e9)
    return min(found)


@at_three_sizes
def test_without_a_sleeve_the_armhole_lies_a_centimetre_higher(size):
    gown = length(work("day-gown", size=size), "armhole_depth")
    for key in ("slip", "summer-dress", "romper"):
        assert float(gown - length(work(key, size=size), "armhole_depth")) == 10.0

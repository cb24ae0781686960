"""What every tucked panel measures between its steps, against its chart and against folding."""

import pytest

from handout_engine.working.workings import Working
from pleat_folding import charted, fold
from worked import length, said, steps, work

TWO_SETS = {"sets": "two facing the centre", "depths": "1/4 in; 1/2 in"}
PANELS = [
    ("tuck-set", {}),
    ("tuck-set", {"kind": "blind", "side_allowance": "0 in"}),
    ("tuck-set", {"first_margin": "1/2 in", "spare_width": "0 in"}),
    ("tuck-fit", {"panel": "13 in", "finished_width": "8 in", "depth": "3/8 in"}),
    ("graduated-tucks", {"press": "to the left"}),
    ("graduated-tucks", TWO_SETS),
    ("graduated-tucks", {"depths": "1/2 in"}),
    ("release-tucks", {"spacing": "1/2 in"}),
]
every_panel = pytest.mark.parametrize(("key", "written"), PANELS)
sewn_through = pytest.mark.parametrize(
    ("key", "written"), [each for each in PANELS if each[0] != "release-tucks"]
)


def flat_lines(working: Working) -> list[object]:
    return [distance for _, distance in charted(working, "Lines")]


def test_five_tucks_measured_between_their_steps_by_hand():
    """The panel of 9 1/2 in loses 2 x 1/4 in by its first tuck.

    Its lines begin at 2 3/4 in and end 1 1/2 + 2 1/2 in further, at 6 3/4 in, 2 3/4 in before the
    right edge. The sample of three tucks is cut 6 x 3/8 + 6 x 1/4 = 3 3/4 in, and is 2 1/4 in wide
    when it is tucked. Of the spare of 1/2 in 1/4 in lies at each side.
    """
    working = work("tuck-set", tucks=5, depth="1/4 in", spacing="3/8 in", finished_width="6 in")
    assert (said(working, "first_takes"), said(working, "first_sewn")) == ("1/2 in", "9 in")
    assert said(working, "last_line") == "6 3/4 in"
    assert said(working, "after_last_line") == said(working, "first_line") == "2 3/4 in"
    assert (said(working, "sample_before"), said(working, "sample_after")) == (
        "3 3/4 in",
        "2 1/4 in",
    )
    assert said(working, "spare_at_side") == "1/4 in"
    assert said(working, "usual_spacing") == "3/8 in"
    assert any("become 1/2 in narrower: 9 in" in step for step in steps(working))


@every_panel
def test_the_first_and_the_last_line_are_those_of_the_chart(key, written):
    working = work(key, **written)
    lines = flat_lines(working)
    assert lines[0] == length(working, "first_line").mm
    assert lines[-1] == length(working, "last_line").mm
    assert (
        lines[-1] + length(working, "after_last_line").mm == length(working, "panel_cut_width").mm
    )


@sewn_through
def test_folded_on_its_first_tuck_the_panel_is_as_wide_as_the_step_says(key, written):
    working = work(key, **written)
    _, crease, second = flat_lines(working)[:3]
    one = fold(length(working, "panel_cut_width").mm, [crease, second])
    assert one.width == length(working, "first_sewn").mm
    assert one.cloth - one.width == length(working, "first_takes").mm


@every_panel
def test_the_sample_loses_twice_the_depth_of_its_three_tucks(key, written):
    """The deepest tucks of the panel are tried, six spaces for three of them."""
    working = work(key, **written)
    lines = flat_lines(working)
    deepest = max(after - before for before, after in zip(lines[::3], lines[1::3], strict=True))
    before, after = length(working, "sample_before").mm, length(working, "sample_after").mm
    assert before - after == 6 * deepest
    spacing = "sample_spacing" if key == "graduated-tucks" else "tuck_spacing"
    assert after == 6 * length(working, spacing).mm


def test_graduated_tucks_are_tried_as_far_apart_as_the_deepest_and_the_space():
    assert said(work("graduated-tucks", **TWO_SETS, space="1/8 in"), "sample_spacing") == "5/8 in"


def test_a_sample_of_pin_tucks_by_hand():
    """Ten rows 1/4 in apart want 13 spaces, 3 1/4 in, of which they draw up 10 x 1/40 = 1/4 in."""
    working = work("pin-tucks", spacing="1/4 in", sample_before="4 in", sample_after="3 3/4 in")
    assert (said(working, "sample_cut_width"), said(working, "sample_takes")) == (
        "3 1/4 in",
        "1/4 in",
    )


def test_a_growth_tuck_measured_between_its_steps_by_hand():
    """20 3/4 in less the hem of 1/2 in, then less 2 in of tucks; the upper tuck stands at 2 in."""
    working = work("growth-tuck", panel_length="18 in", depth="1/2 in", tucks=2)
    assert (said(working, "hemmed_length"), said(working, "sewn_length")) == (
        "20 1/4 in",
        "18 1/4 in",
    )
    assert said(working, "highest") == "2 in"


def test_what_needles_and_stitch_leave_of_the_opening_stays_free():
    """Of a slot of 6 mm needles 2.5 mm apart that swing 2.2 mm leave 1.3 mm."""
    working = work("twin-needle-clearance", needle_spacing="2.5 mm", foot_slot="6 mm")
    assert said(working, "kept_free") == "1.3 mm"
    assert said(work("twin-needle-clearance", needle_spacing="2 mm"), "kept_free") == "1 mm"

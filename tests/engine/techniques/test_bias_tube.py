import pytest
from hypothesis import given
from hypothesis import strategies as st

from folding import mirrored
from handout_engine.amounts.lengths import inches
from handout_engine.amounts.sources import GIVEN, PRACTICE
from worked import length, refusal, said, steps, work

BACK = "centred on the back"
finished_widths = st.fractions("1/4", 2, max_denominator=32).map(inches)
shares = st.fractions("1/8", 1, max_denominator=16)


def sewn(strip, seam):
    """Fold a strip raw edge on raw edge, stitch `seam` from them, and measure to the fold."""
    fold = strip / 2
    assert mirrored(strip, fold) == 0
    return fold - seam


def test_two_shoulder_straps_by_hand():
    """3/8 in wide, seam 1/4 in: 2 x 3/8 + 2 x 1/4 = 1 1/4 in; 9 in long and 1/2 in at each end."""
    working = work("bias-tube", tube_length="9 in")
    assert said(working, "strip_width") == "1 1/4 in"
    assert said(working, "piece_length") == "10 in"
    assert said(working, "fold") == "5/8 in"
    assert said(working, "second_stitching") == "1 in"


@given(finished_widths, shares)
def test_folded_and_stitched_the_tube_is_as_wide_as_asked(finished, share):
    seam = finished * share
    working = work("bias-tube", finished=finished, seam_allowance=seam)
    assert sewn(length(working, "strip_width").mm, seam.mm) == finished.mm


@given(finished_widths, st.fractions("1/2", 1, max_denominator=20))
def test_by_the_sample_it_is_stitched_as_much_wider_as_it_narrows(finished, narrows):
    stitched = inches(2)
    working = work(
        "bias-tube", finished=finished, sample_stitched=stitched, sample_turned=stitched * narrows
    )
    seam = length(working, "tube_seam").mm
    assert sewn(length(working, "strip_width").mm, seam) * narrows == finished.mm


@given(finished_widths, st.sampled_from(["on an edge", BACK]))
def test_the_usual_allowance_lies_flat_inside(finished, seam):
    working = work("bias-tube", finished=finished, seam=seam)
    room = finished / 2 if seam == BACK else finished
    assert length(working, "tube_seam") == min(room, inches("1/4"))
    assert working.values["tube_seam"].basis == PRACTICE


@given(finished_widths, st.integers(1, 40), st.integers(2, 40).map(inches))
def test_the_strips_give_every_piece_without_a_join(finished, pieces, tube_length):
    working = work("bias-tube", finished=finished, pieces=pieces, tube_length=tube_length)
    (chart,) = working.charts
    each = length(working, "piece_length")
    given_pieces = 0
    for _, use, squared, centre, _ in chart.rows:
        if use != "spare":
            number = 1 if use == "used" else int(use.split()[1])
            assert squared >= number * each
            assert squared <= centre - length(working, "strip_width")
            given_pieces += number
    assert given_pieces >= pieces


@pytest.mark.parametrize(
    ("seam", "most", "way"),
    [
        ("on an edge", "3/8 in (9 mm)", "(trim it)"),
        (BACK, "3/16 in (4 mm)", '(trim it, or put the seam on an edge: seam: "on an edge")'),
    ],
)
def test_an_allowance_that_cannot_lie_flat_is_refused(seam, most, way):
    assert refusal("bias-tube", finished="3/8 in", seam=seam, seam_allowance="1/2 in") == (
        f"seam_allowance 1/2 in cannot lie flat in a tube 3/8 in wide with its seam {seam}; use "
        f"at most {most} {way}"
    )
    most_given = "3/16 in" if seam == BACK else "3/8 in"
    working = work("bias-tube", finished="3/8 in", seam=seam, seam_allowance=most_given)
    assert working.values["tube_seam"].basis == GIVEN


def test_a_sample_has_two_measures():
    assert refusal("bias-tube", sample_stitched="1/2 in") == (
        "a sample needs both its measures; write sample_stitched and sample_turned"
    )


def test_the_seam_on_the_back_lies_in_the_middle():
    working = work("bias-tube", finished="1 in", seam=BACK)
    assert any("the seam 1/2 in from either edge" in step for step in steps(working))


def test_a_piece_longer_than_the_diagonal_of_the_cloth_is_refused():
    """44 in between the selvages: 44 x 1.4142 = 62.23 in, of which a square end takes the width."""
    assert refusal("bias-tube", tube_length="63 in") == (
        "cloth 44 in wide between its selvages gives no strip of 65 1/4 in (165.7 cm) without a "
        "join; the longest is 62 7/32 in (158 cm): use wider cloth, or shorter strips"
    )
    assert work("bias-tube", tube_length="59 in", pieces="1")


def test_a_seam_on_the_back_lies_half_a_tube_from_either_edge():
    working = work("bias-tube", finished="3/8 in", seam="centred on the back")
    assert said(working, "seam_from_edge") == said(working, "seam_room") == "3/16 in"
    on_edge = work("bias-tube", finished="3/8 in")
    assert "seam_from_edge" not in on_edge.values
    assert said(on_edge, "seam_room") == "3/8 in"

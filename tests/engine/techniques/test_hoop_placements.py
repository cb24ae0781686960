"""Hoop placements, against fields laid over a design until it is covered."""

from fractions import Fraction
from itertools import pairwise
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)


def test_a_border_by_hand():
    """A field of 4 in used to 3 3/4 in, overlap 1/2 in: (12 - 1/2) / (3 3/4 - 1/2) = 3.5, so 4.

    Spread evenly (12 - 3 3/4) / 3 = 2 3/4 in from centre to centre, overlapping by 1 in. The cloth
    is 12 + 2 x 1/8 + 2 x 1 1/2 in wide, and 3 3/4 + 3 1/4 in high, since one field covers 3 in.
    """
    working = work("hoop-placements", across="12 in", along="3 in", field_across="4 in",
                   field_along="4 in", frame="1/8 in", overlap="1/2 in")  # fmt: skip
    assert said(working, "placements_across") == "4"
    assert said(working, "placements_along") == "1"
    assert said(working, "step_across") == "2 3/4 in"
    assert said(working, "true_overlap_across") == "1 in"
    assert said(working, "cut_across") == "15 1/4 in"
    assert said(working, "cut_along") == "7 in"


def covered(design, used, overlap):
    """Lay field after field with the least overlap until the end of the design is reached."""
    reach, count = used, 1
    while reach < design:
        reach += used - overlap
        count += 1
    return count


def test_a_thousand_designs_are_covered_with_no_field_too_many():
    random = Random(1959)
    worked = 0
    for _ in range(1000):
        design = {way: random.randint(8, 480) * SIXTEENTH for way in ("across", "along")}
        field = {way: random.randint(40, 200) * SIXTEENTH for way in ("across", "along")}
        overlap, frame = random.randint(0, 24) * SIXTEENTH, random.randint(0, 8) * SIXTEENTH
        written = {
            "across": design["across"], "along": design["along"],
            "field_across": field["across"], "field_along": field["along"],
            "overlap": overlap, "frame": frame,
        }  # fmt: skip
        try:
            working = work("hoop-placements", cloth_width="60 in",
                           **{name: Length(mm) for name, mm in written.items()})  # fmt: skip
        except RefusalError:
            continue
        worked += 1
        for way, column in (("across", 1), ("along", 2)):
            used = field[way] - 2 * frame
            count = working.values[f"placements_{way}"].amount
            assert count == covered(design[way], used, overlap)
            cut = length(working, f"cut_{way}").mm
            first = (cut - design[way]) / 2
            centres = sorted({row[column].mm for row in working.charts[0].rows})
            assert len(centres) == count
            edges = [(at - used / 2 - first, at + used / 2 - first) for at in centres]
            assert edges[0][0] <= 0 and edges[-1][1] >= design[way]
            if count > 1:
                assert edges[0][0] == 0 and edges[-1][1] == design[way]
                assert all(a[1] - b[0] >= overlap for a, b in pairwise(edges))
            gripped = 4 * 6 * SIXTEENTH
            assert edges[0][0] + first - frame >= gripped
            assert edges[-1][1] + first + frame <= cut - gripped
    assert worked > 700


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"field_across": "2 in", "overlap": "2 in"},
         "use an overlap of less than 1 3/4 in (44 mm)"),
        ({"field_across": "2 in", "frame": "1 in"}, "a smaller frame distance or a larger hoop"),
        ({"across": "40 in", "along": "40 in", "field_across": "3 in", "field_along": "3 in"},
         "placements are more than 120"),
        ({"across": "60 in"}, "which is only"),
    ],
)  # fmt: skip
def test_what_cannot_be_hooped_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("hoop-placements", **written)

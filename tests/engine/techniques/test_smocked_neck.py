"""A smocked neck, against pieces pleated one after another along one thread."""

from fractions import Fraction
from itertools import pairwise
from math import pi
from random import Random

import pytest

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from worked import length, refusal, said, work

SIXTEENTH = Fraction(127, 80)
ORDER = ("back", "sleeve", "front", "sleeve", "back")


def test_a_neck_of_ten_inches_by_hand():
    """30 in of cloth in ten parts of 3 in: front 9 in, back 2 x 4 1/2, sleeves 6 in each.

    With dots 1/4 in apart 36 + 2 x 18 + 2 x 24 = 120 pleats. As cut the front is 9 + 2 x 1/4, a
    half back 4 1/2 + 1/4 + 1. Drawn up the front takes 36/120 of 10 in.
    """
    working = work("smocked-neck", neck="10 in")
    assert [said(working, f"{name}_pleats") for name in ORDER[:3]] == ["18", "24", "36"]
    assert said(working, "pleats") == "120"
    assert said(working, "front_cut") == "9 1/2 in"
    assert said(working, "sleeve_cut") == "6 1/2 in"
    assert said(working, "back_cut") == "5 3/4 in"
    assert said(working, "front_drawn") == "3 in"
    assert said(working, "sleeve_drawn") == "2 in"
    assert said(working, "back_drawn") == "1 1/2 in"


def test_the_last_row_lies_on_a_larger_circle():
    """1 7/8 in further out: 10 in + 2 pi x 1 7/8 in."""
    working = work("smocked-neck", neck="10 in", height="1 1/2 in")
    assert said(working, "smocked_depth") == "1 7/8 in"
    assert float(length(working, "last_row")) == pytest.approx(25.4 * (10 + 2 * pi * 1.875))


def pleated_along_a_thread(flats, spacing):
    """Walk along all pieces from dot to dot; the number of the dot at which each seam is met."""
    at, dot, met = Fraction(0), 0, []
    end = Fraction(0)
    for flat in flats:
        end += flat
        while at < end:
            at += spacing
            dot += 1
        assert at == end, "a seam lies between two dots"
        met.append(dot)
    return met


def test_on_a_thousand_necks_every_seam_is_met_at_a_dot():
    random = Random(1850)
    worked = 0
    for _ in range(1000):
        spacing = random.randint(2, 6) * SIXTEENTH
        parts = {f"{name}_part": Fraction(random.randint(4, 24), 4)
                 for name in ("front", "back", "sleeve")}  # fmt: skip
        neck = random.randint(80, 320) * SIXTEENTH
        fullness = Fraction(random.randint(10, 24), 5)
        try:
            working = work("smocked-neck", neck=Length(neck), fullness=fullness, height="1/2 in",
                           dot_spacing=Length(spacing), **parts)  # fmt: skip
        except RefusalError:
            continue
        worked += 1
        flats = [length(working, f"{name}_flat").mm for name in ORDER]
        met = pleated_along_a_thread(flats, spacing)
        assert met[-1] == working.values["pleats"].amount
        assert [row[3] for row in working.charts[0].rows] == met
        drawn = [length(working, f"{name}_drawn").mm for name in ORDER]
        assert sum(drawn) == neck
        counts = [b - a for a, b in pairwise([0, *met])]
        assert [mm / neck for mm in drawn] == [Fraction(n, met[-1]) for n in counts]
        shares = {"front": parts["front_part"], "back": parts["back_part"] / 2,
                  "sleeve": parts["sleeve_part"]}  # fmt: skip
        whole = shares["front"] + 2 * shares["back"] + 2 * shares["sleeve"]
        for name, flat in zip(ORDER, flats, strict=True):
            wanted = neck * fullness * shares[name] / whole
            assert wanted <= flat < wanted + spacing
    assert worked > 800


@pytest.mark.parametrize(
    ("written", "sentence"),
    [
        ({"height": "8 in"}, "height 8 in (20.3 cm) would need"),
        ({"sample_smocked": "6 in"}, "is not less than the 6 in (15.2 cm)"),
        ({"neck": "30 in", "dot_spacing": "1/16 in", "fullness": "6"}, "more than 1500"),
    ],
)
def test_what_cannot_be_smocked_is_refused_with_the_way_out(written, sentence):
    assert sentence in refusal("smocked-neck", **written)


def test_the_height_that_a_refusal_names_can_be_smocked():
    assert "use at most 2 5/8 in" in refusal("smocked-neck", height="8 in")
    assert said(work("smocked-neck", height="2 5/8 in"), "pleats") == "120"
    assert "use at most 2 5/8 in" in refusal("smocked-neck", height="3 in")

"""What is asked of motifs that are repeated."""

from __future__ import annotations

from handout_engine.amounts.inputs import SEWING, choice, length, optional_count, optional_length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.working.technique import Technique

STRAIGHT, ROUND, CORNERS = "straight edge", "round", "round four corners"
MOTIF, GAP, EITHER = "a motif", "a gap", "either"
MOST_MOTIFS = 300


class Motifs(Technique):
    """What is asked of repeated motifs: their size, their gaps, what stands at a centre."""

    layout = choice(
        "layout",
        "Along a straight edge, round a ring, or between four corner motifs.",
        STRAIGHT,
        ROUND,
        CORNERS,
    )
    edge = length(
        "edge",
        "Length of the edge; round, all the way; with corners, the first side.",
        "20 in",
        ("1 in", "200 in"),
    )
    other_side = optional_length(
        "other side",
        "With corners: the second side of the rectangle.",
        "the same as the first",
        ("1 in", "200 in"),
    )
    motif = length(
        "motif, width", "Along the edge, as it is stitched.", "1 1/2 in", ("1/8 in", "12 in")
    )
    motif_height = length("motif, height", "Square to the edge.", "1 in", ("1/8 in", "12 in"))
    least_gap = length(
        "least gap",
        "At least so much between two motifs.",
        "3/4 in",
        ("0 in", "20 in"),
        basis=PRACTICE,
    )
    motifs = optional_count(
        "motifs", "How many, along a straight edge or round.", "as many as fit", MOST_MOTIFS
    )
    centre = choice(
        "at the centre",
        "What stands at the centre, or at the centre front of a ring.",
        MOTIF,
        GAP,
        EITHER,
    )
    margin = length(
        "clear at each end",
        "Of a straight edge, beside its first and last motif.",
        "1/2 in",
        ("0 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    corner = length(
        "corner motif",
        "Side of the square that each corner motif takes.",
        "1 1/2 in",
        ("1/8 in", "20 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    above = length(
        "above the edge",
        "From the finished edge to the motif.",
        "1/2 in",
        ("0 in", "10 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    allowance = length(
        "allowance",
        "Cloth beyond the finished edge while the motifs are marked; they are "
        "then marked from the raw edge.",
        "0 in",
        ("0 in", "4 in"),
        group=SEWING,
    )

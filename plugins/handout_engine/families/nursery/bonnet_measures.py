"""What a bonnet is made to: head and neck, or a rectangle that is given."""

from __future__ import annotations

from handout_engine.amounts.declaring import value
from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.sources import PRACTICE
from handout_engine.bodies.measures import measured
from handout_engine.drafting.garment import Garment
from handout_engine.shared.hems import DOUBLE, FINISHED, ROLLED, SINGLE

CIRCLE, HORSESHOE = "drawn up to a circle", "horseshoe"
PLAIN, WORKED = "plain", "worked"


class BonnetInputs(Garment):
    """The inputs of a bonnet, and how far it goes round the face and back over the head."""

    back = choice(
        "back",
        "The straight piece drawn up to a small circle, or let into a horseshoe.",
        CIRCLE,
        HORSESHOE,
    )
    head = measured("head")
    neck = measured("neck")
    front_share = ratio(
        "share for the front",
        "Front edge for each unit of head.",
        "0.85",
        ("0.5", "1.5"),
        basis=PRACTICE,
    )
    depth_share = ratio(
        "share for the depth",
        "Depth for each unit of head.",
        "0.34",
        ("0.15", "0.7"),
        basis=PRACTICE,
    )
    front = optional_length(
        "front edge",
        "Finished edge round the face, where a rectangle is given.",
        "the head and its share",
        ("8 in", "40 in"),
        in_use="front_edge",
    )
    depth = optional_length(
        "depth",
        "From front edge to back seam, where a rectangle is given.",
        "the head and its share",
        ("2 in", "16 in"),
        in_use="depth_line",
    )
    crown = choice(
        "straight piece",
        "Cut from plain cloth, or from cloth that is made up first, such "
        "as a band of lace and puffing.",
        PLAIN,
        WORKED,
    )
    front_trim = length(
        "trim at the front",
        "How far an edging will reach beyond the front edge of the "
        "cloth, which is cut so much shallower.",
        "0 cm",
        ("0 cm", "8 cm"),
    )
    circle = optional_length(
        "circle",
        "Diameter of the circle at the back.",
        "2.5 cm and a fourteenth of the head",
        ("1 in", "8 in"),
        basis=PRACTICE,
    )
    nape = optional_length(
        "nape",
        "Width of a horseshoe back, at its flat lower edge.",
        "a quarter of the head",
        ("1 in", "12 in"),
        basis=PRACTICE,
    )
    back_fullness = ratio(
        "fullness at a horseshoe",
        "1 lies flat round it, more is gathered to it.",
        "1",
        ("1", "2.5"),
        basis=PRACTICE,
    )
    neck_ease = length(
        "neck ease",
        "Added to the neck for the gathered neck edge.",
        "4 cm",
        ("0 cm", "12 cm"),
        basis=PRACTICE,
    )
    make = count("how many", "How many bonnets are made.", 1, 20)
    hem = choice(
        "front hem",
        "Double turned, single turned, rolled, or finished with lace.",
        DOUBLE,
        SINGLE,
        ROLLED,
        FINISHED,
        group=SEWING,
    )
    hem_depth = optional_length(
        "hem depth",
        "Depth of one turn of the hem.",
        "1/4 in, or 1/8 in for a rolled hem",
        ("1/16 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
        in_use="hem_turn",
    )
    seam_allowance = length(
        "seam allowance",
        "Of the back seam and the strap; the neck edge is bound and has none.",
        "1/4 in",
        ("1/8 in", "5/8 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    binding = length(
        "neck binding",
        "Finished width of the single binding at the neck.",
        "1/4 in",
        ("1/8 in", "3/4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strap_length = length(
        "strap",
        "Finished length of the strap under the chin.",
        "4 in",
        ("1 in", "10 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strap_width = length(
        "strap width",
        "Finished width of that strap.",
        "3/4 in",
        ("1/4 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )

    @value("front edge, round the face", basis=PRACTICE)
    def front_edge(self) -> Length:
        """As asked for, or a share of the head."""
        return self.head * self.front_share if self.front is None else self.front

    @value("depth, from front to back seam", basis=PRACTICE)
    def depth_line(self) -> Length:
        """As asked for, or a share of the head."""
        return self.head * self.depth_share if self.depth is None else self.depth

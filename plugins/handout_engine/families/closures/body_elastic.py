"""How long an elastic is for the body it goes round, and how far it opens."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, value
from handout_engine.amounts.inputs import SEWING, length, optional_length, ratio
from handout_engine.amounts.lengths import Length, least
from handout_engine.amounts.numbers import Ratio
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, decimal
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.cloth.cloth import ClothInputs


class ElasticInputs(ClothInputs):
    """The body, the edge of the garment, and the elastic that draws it in."""

    body = length(
        "body", "The body where the elastic lies: waist, thigh, wrist.", "18 in", ("3 in", "60 in")
    )
    share = ratio(
        "elastic to body",
        "Length of the closed elastic for each length of body.",
        "0.95",
        ("0.5", "1"),
        group=SEWING,
        basis=PRACTICE,
    )
    garment_edge = optional_length(
        "edge of the garment",
        "All round, spread flat, before it is drawn in.",
        "one and a third times the body",
        ("3 in", "120 in"),
        in_use="opens_to",
    )
    must_pass = optional_length(
        "what must pass",
        "Hip, hand or foot that the edge has to go over.",
        "not looked at",
        ("3 in", "90 in"),
    )
    stretch = ratio(
        "stretch",
        "How long the elastic becomes when it is pulled, for each length at rest.",
        "1.8",
        ("1", "4"),
        group=SEWING,
        basis=PRACTICE,
    )
    elastic = length("elastic", "Width of the elastic.", "1/4 in", ("1/8 in", "2 in"))

    @value("edge of the garment, spread", basis=PRACTICE)
    def edge(self) -> Length:
        """As given, or as full as is usual."""
        return self.body * 4 / 3 if self.garment_edge is None else self.garment_edge

    @check
    def the_edge_goes_round_the_body(self) -> None:
        """Refuse an edge that is shorter than the body."""
        if self.garment_edge is not None and self.garment_edge < self.body:
            raise RefusalError(
                f"garment_edge {TAPE.say(self.garment_edge)} does not go round a body of "
                f"{TAPE.say(self.body)}, however far the elastic stretches; use "
                f"{at_least(self, 'garment_edge', self.body)}",
                "garment_edge",
            )

    @value("elastic sewn together, all round")
    def ring(self) -> Length:
        """Shorter than the body, so that it holds."""
        return self.body * self.share

    @value("at rest, laid flat")
    def flat_at_rest(self) -> Length:
        """Half of it lies below."""
        return self.ring / 2

    @value("spread, laid flat")
    def flat_spread(self) -> Length:
        """Half of it lies below."""
        return self.edge / 2

    @value("fullness on the body")
    def fullness(self) -> Ratio:
        """How far the edge is gathered when it is worn."""
        return self.edge / self.body

    @value("opens to, edge and elastic pulled out")
    def opens_to(self) -> Length:
        """As far as the elastic stretches, and no further than the edge is long."""
        return least(self.ring * self.stretch, self.edge)

    @value("pulled out, laid flat")
    def flat_open(self) -> Length:
        """Half of it lies below."""
        return self.opens_to / 2

    @check
    def the_elastic_reaches_round_the_body(self) -> None:
        """Refuse elastic that does not stretch so far."""
        if self.opens_to < self.edge and self.opens_to < self.body:
            stretchier = at_least(self, "stretch", self.body / self.ring)
            raise RefusalError(
                f"stretch {decimal(self.stretch.number)} is too little for the elastic to reach "
                f"round the body; use {ways(stretchier, 'more of the elastic')}",
                "stretch",
            )

    @check
    def what_must_pass_does(self) -> None:
        """Refuse an edge or an elastic that lets too little pass."""
        wanted = self.must_pass
        if wanted is None or self.opens_to >= wanted:
            return
        if self.edge < wanted:
            longer = at_least(self, "garment_edge", wanted, "a garment_edge of at least {}")
            raise RefusalError(
                f"must_pass {TAPE.say(wanted)} is more than the edge {TAPE.say(self.edge)}, which "
                f"no elastic makes longer; use {ways(longer, 'an opening')}",
                "must_pass",
            )
        stretchier = at_least(self, "stretch", wanted / self.ring, "a stretch of at least {}")
        raise RefusalError(
            f"must_pass {TAPE.say(wanted)} is more than the elastic opens to, "
            f"{TAPE.say(self.opens_to)}; use {ways(stretchier, 'more of the elastic')}",
            "must_pass",
        )

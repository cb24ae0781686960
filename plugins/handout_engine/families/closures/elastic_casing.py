"""Elastic in a casing, turned from the edge itself or made of a strip sewn on."""

from __future__ import annotations

from typing import ClassVar

from handout_engine.amounts.inputs import SEWING, choice, count, length, optional_length, ratio
from handout_engine.amounts.lengths import ZERO, Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Saying, decimal
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import Value, sentence
from handout_engine.amounts.ways_out import at_least, ways
from handout_engine.cloth.cloth import ClothInputs, note_cloth, note_usable_width
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.elastic_casing_drawing import (
    Casing,
    casing_section,
    edge_lines,
    gathered_edge,
)
from handout_engine.families.closures.elastic_casing_steps import add_sample, add_steps
from handout_engine.shared.buttons import TAPE
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.strips import StripsWanted, note_strips
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import PINS_AND_IRON, TIGHT_ELASTIC
from handout_engine.working.technique import Technique
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

TURNED, STRIP = "turned from the edge", "a strip sewn on"


class ElasticCasing(ClothInputs, Technique):
    """A casing and the elastic that is drawn through it."""

    title: ClassVar[str] = "Casing and elastic"
    family: ClassVar[str] = "closures"
    summary: ClassVar[str] = (
        "A casing for elastic, and how long the elastic is cut for the body it goes round."
    )

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
    made = choice(
        "casing",
        "The garment's own edge turned under, or a strip sewn on inside.",
        TURNED,
        STRIP,
        group=SEWING,
    )
    heading = length(
        "heading",
        "Turned casing: what stands above it as a small ruffle; 0 in for none.",
        "0 in",
        ("0 in", "4 in"),
    )
    ease = length(
        "ease of the casing",
        "How much wider it is than the elastic.",
        "1/8 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    turn = length(
        "turned under",
        "Along each raw edge of the casing.",
        "1/4 in",
        ("1/16 in", "1/2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    overlap = length(
        "overlap",
        "Where the ends of the elastic are sewn together.",
        "1/2 in",
        ("1/4 in", "2 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    strip_allowance = length(
        "end allowance",
        "Of a strip: where it is joined, and turned under at its ends.",
        "1/4 in",
        ("1/16 in", "1 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    make = count("how many", "Two for a pair of sleeves or legs.", 1, 200)

    def whole(self) -> Worksheet:
        """Casing, elastic, cloth and steps; raises RefusalError."""
        sheet = Worksheet(technique=self)
        edge = _note_edge(sheet, self)
        _note_elastic(sheet, self, edge)
        _note_passing(sheet, self, edge)
        sheet.note("casing", "finished casing, from stitching to fold", self.elastic + self.ease,
                   "{elastic} + {ease}")  # fmt: skip
        _check_turn(self, sheet["casing"].length)
        if self.made == TURNED:
            _note_turned(sheet, self)
        else:
            _note_strip(sheet, self, edge)
        _add_supplies(sheet)
        add_sample(sheet)
        add_steps(sheet, self.made == TURNED)
        _draw(sheet, self)
        return sheet


def _note_edge(sheet: Worksheet, inputs: ElasticCasing) -> Value:
    """Note the garment's edge; refuses one that does not go round the body."""
    label = "edge of the garment, spread"
    if inputs.garment_edge is None:
        return sheet.note("edge", label, inputs.body * 4 / 3, "{body} × 4 / 3", basis=PRACTICE)
    if inputs.garment_edge < inputs.body:
        raise RefusalError(
            f"garment_edge {TAPE.say(inputs.garment_edge)} does not go round a body of "
            f"{TAPE.say(inputs.body)}, however far the elastic stretches; use "
            f"{at_least(inputs, 'garment_edge', inputs.body)}",
            "garment_edge",
        )
    return sheet.note("edge", label, inputs.garment_edge, "{garment_edge}")


def _note_elastic(sheet: Worksheet, inputs: ElasticCasing, edge: Value) -> None:
    ring = sheet.note("ring", "elastic sewn together, all round", inputs.body * inputs.share,
                      "{body} × {share}")  # fmt: skip
    cut = sheet.note("elastic_cut", "elastic to cut", ring.length + inputs.overlap,
                     "{body} × {share} + {overlap}")  # fmt: skip
    sheet.note("elastic_to_buy", "elastic to buy", cut.length * inputs.make,
               "{make} × {elastic_cut}", saying=Saying.YARDAGE)  # fmt: skip
    sheet.note("flat_at_rest", "at rest, laid flat", ring.length / 2, "{ring} / 2")
    sheet.note("flat_spread", "spread, laid flat", edge.length / 2, "{edge} / 2")
    sheet.note("fullness", "fullness on the body", edge.length / inputs.body, "{edge} / {body}")


def _note_passing(sheet: Worksheet, inputs: ElasticCasing, edge: Value) -> None:
    """Note how far it opens; refuses an edge or an elastic that lets too little pass."""
    stretched = sheet["ring"].length * inputs.stretch
    by_elastic = stretched < edge.length
    opened = sheet.note("opens_to", "opens to, edge and elastic pulled out",
                        min(stretched, edge.length),
                        "{ring} × {stretch}" if by_elastic else "{edge}")  # fmt: skip
    if by_elastic and opened.length < inputs.body:
        least = inputs.body / sheet["ring"].length
        raise RefusalError(
            f"stretch {decimal(inputs.stretch)} is too little for the elastic to reach round the "
            f"body; use {ways(at_least(inputs, 'stretch', least), 'more of the elastic')}",
            "stretch",
        )
    wanted = inputs.must_pass
    if wanted is None or opened.length >= wanted:
        return
    if edge.length < wanted:
        longer = "a garment_edge of at least {}"
        raise RefusalError(
            f"must_pass {TAPE.say(wanted)} is more than the edge {TAPE.say(edge.length)}, which no "
            f"elastic makes longer; use "
            f"{ways(at_least(inputs, 'garment_edge', wanted, longer), 'an opening')}",
            "must_pass",
        )
    stretchier = at_least(
        inputs, "stretch", wanted / sheet["ring"].length, "a stretch of at least {}"
    )
    raise RefusalError(
        f"must_pass {TAPE.say(wanted)} is more than the elastic opens to, "
        f"{TAPE.say(opened.length)}; use {ways(stretchier, 'more of the elastic')}",
        "must_pass",
    )


def _check_turn(inputs: ElasticCasing, casing: Length) -> None:
    if inputs.turn > casing:
        raise RefusalError(
            f"turn {TAPE.say(inputs.turn)} is wider than the casing {TAPE.say(casing)} and would "
            f"stand out of it; use at most {TAPE.no_more(casing)}",
            "turn",
        )


def _note_turned(sheet: Worksheet, inputs: ElasticCasing) -> None:
    casing = sheet["casing"].length
    sheet.note("gap", "gap left to draw the elastic in", 3 * inputs.elastic, "3 × {elastic}",
               basis=PRACTICE)  # fmt: skip
    sheet.note("turned_depth", "from the upper fold to the inner fold", inputs.heading + casing,
               "{heading} + {casing}")  # fmt: skip
    sheet.note("casing_allowance", "casing allowance above the finished edge",
               inputs.heading + casing + inputs.turn,
               "{heading} + {casing} + {turn}")  # fmt: skip


def _note_strip(sheet: Worksheet, inputs: ElasticCasing, edge: Value) -> None:
    """Note the strip, joined where the cloth is narrower than the edge is long."""
    width = sheet.note("strip_width", "casing strip, cut width",
                       inputs.elastic + inputs.ease + 2 * inputs.turn,
                       "{elastic} + {ease} + 2 × {turn}")  # fmt: skip
    long = sheet.note("whole_strip", "casing strip, whole length",
                      edge.length + 2 * inputs.strip_allowance,
                      "{edge} + 2 × {strip_allowance}", saying=Saying.UP)  # fmt: skip
    usable = note_usable_width(sheet, inputs.cloth())
    strips = note_strips(sheet, StripsWanted(usable, long, width, ring=False, diagonal=False))
    sheet.pieces.append(
        Piece("casing strip", "casing cloth", inputs.make.number * strips.whole, width,
              sheet["strip_length"], Grain.CROSS)
    )  # fmt: skip
    sheet.seams.append(Seam("strip to strip", inputs.strip_allowance))
    note_cloth(sheet, "casing cloth", inputs.cloth())


def _add_supplies(sheet: Worksheet) -> None:
    sheet.supplies.append(
        Supply("soft elastic", sheet["elastic_to_buy"],
               sentence("{width} wide", width=sheet["elastic"]))
    )  # fmt: skip
    sheet.supplies.append(Supply("a bodkin, or a safety pin narrower than the casing"))
    sheet.cautions.extend((TIGHT_ELASTIC, PINS_AND_IRON))


def _draw(sheet: Worksheet, inputs: ElasticCasing) -> None:
    turned = inputs.made == TURNED
    casing = Casing(
        sheet["flat_at_rest"], sheet["flat_spread"], sheet["casing"], sheet["elastic"],
        sheet["turn"], sheet["heading"] if turned and inputs.heading > ZERO else None, turned,
    )  # fmt: skip
    sheet.pictures.append(
        Picture("finished", sentence("The edge laid flat: drawn in above, spread below."),
                gathered_edge(casing), finished=True)
    )  # fmt: skip
    if turned:
        lines = (sheet["turn"], sheet["casing_allowance"])
        sheet.pictures.append(
            Picture("lines", sentence("The edge of the garment before it is turned; distances "
                                      "count from the raw edge."), edge_lines(lines))
        )  # fmt: skip
    else:
        rules = [Rule(Line.FOLD, sheet["turn"])]
        strip = FlatStrip(sentence("casing strip"), sheet["strip_width"], sheet["strip_length"],
                          rules)  # fmt: skip
        sheet.pictures.append(strips_picture([strip], "The strip; both long edges are turned "
                                             "under alike."))  # fmt: skip
    sheet.pictures.append(
        Picture("section", sentence("The casing cut through, the garment's right side at the left; "
                                    "at the right the elastic, and what is turned under."),
                casing_section(casing))
    )  # fmt: skip


TECHNIQUE = ElasticCasing

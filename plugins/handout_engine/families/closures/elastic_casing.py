"""Elastic in a casing, turned from the edge itself or made of a strip sewn on."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, choice, count, length
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Saying
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.drawing.scene import Line
from handout_engine.families.closures.body_elastic import ElasticInputs
from handout_engine.families.closures.elastic_casing_drawing import (
    Casing,
    casing_section,
    edge_lines,
    gathered_edge,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips import Joined, Strips
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import PINS_AND_IRON, TIGHT_ELASTIC
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Supply
from handout_engine.working.worksheet import Worksheet

TURNED, STRIP = "turned from the edge", "a strip sewn on"


class ElasticCasing(ElasticInputs):
    """A casing and the elastic that is drawn through it."""

    title = "Casing and elastic"
    family = "closures"
    summary = "A casing for elastic, and how long the elastic is cut for the body it goes round."

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

    @value("elastic to cut")
    def elastic_cut(self) -> Length:
        """Its ends lie over one another."""
        return self.ring + self.overlap

    @value("elastic to buy", saying=Saying.YARDAGE)
    def elastic_to_buy(self) -> Length:
        """For all casings."""
        return self.make * self.elastic_cut

    @value("finished casing, from stitching to fold")
    def casing(self) -> Length:
        """The elastic must slide in it."""
        return self.elastic + self.ease

    @check
    def the_turned_edge_lies_in_the_casing(self) -> None:
        """Refuse a turning that would stand out of it."""
        if self.turn > self.casing:
            raise RefusalError(
                f"turn {TAPE.say(self.turn)} is wider than the casing {TAPE.say(self.casing)} and "
                f"would stand out of it; use at most {TAPE.no_more(self.casing)}",
                "turn",
            )

    @group
    def kind(self) -> CasingMade:
        """The edge turned, or a strip."""
        return TurnedCasing(self) if self.made == TURNED else StripCasing(self)

    @group
    def cloths(self) -> tuple[ClothBought, ...]:
        """Of a strip; an edge that is turned is of the garment's cloth."""
        return () if self.made == TURNED else (ClothBought(self, "casing cloth"),)

    def cut(self, sheet: Worksheet) -> None:
        """The strip, where there is one."""
        if isinstance(self.kind, StripCasing):
            count = self.make.number * self.kind.joined.strips.number
            cut = sheet["strip_width"], sheet["strip_length"]
            sheet.pieces.append(Piece("casing strip", "casing cloth", count, *cut, Grain.CROSS))
            sheet.seams.append(Seam("strip to strip", self.strip_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """From the casing to the elastic."""
        to_buy, wide = sheet["elastic_to_buy"], sheet.sentence("{elastic} wide")
        sheet.supplies.append(Supply("soft elastic", to_buy, wide))
        sheet.supplies.append(Supply("a bodkin, or a safety pin narrower than the casing"))
        sheet.cautions.extend((TIGHT_ELASTIC, PINS_AND_IRON))
        _add_sample(sheet)
        _add_steps(sheet, self.made == TURNED)

    def draw(self, sheet: Worksheet) -> None:
        """The edge at rest and spread, its lines or its strip, and the casing cut through."""
        turned = self.made == TURNED
        names = ("flat_at_rest", "flat_spread", "casing", "elastic", "turn")
        at_rest, spread, finished, elastic, turn = (sheet[name] for name in names)
        above = sheet["heading"] if turned and self.heading else None
        casing = Casing(at_rest, spread, finished, elastic, turn, above, turned)
        flat = sentence("The edge laid flat: drawn in above, spread below.")
        section = sentence(
            "The casing cut through, the garment's right side at the left; at the right the "
            "elastic, and what is turned under."
        )
        sheet.pictures.append(Picture("finished", flat, gathered_edge(casing), finished=True))
        sheet.pictures.append(_lines(sheet) if turned else _strip(sheet))
        sheet.pictures.append(Picture("section", section, casing_section(casing)))


class CasingMade(Group):
    """A casing, by the way it is made."""

    def __init__(self, technique: ElasticCasing) -> None:
        """Take the casing."""
        super().__init__()
        self.technique = technique


class TurnedCasing(CasingMade):
    """The garment's own edge, turned under."""

    @value("gap left to draw the elastic in", basis=PRACTICE)
    def gap(self) -> Length:
        """Wide enough for a bodkin."""
        return 3 * self.technique.elastic

    @value("from the upper fold to the inner fold")
    def turned_depth(self) -> Length:
        """The heading stands above the casing."""
        return self.technique.heading + self.technique.casing

    @value("casing allowance above the finished edge")
    def casing_allowance(self) -> Length:
        """What is turned down, and under."""
        return self.turned_depth + self.technique.turn


class StripCasing(CasingMade):
    """A strip sewn on inside, joined where the cloth is narrower than the edge is long."""

    @value("casing strip, cut width")
    def strip_width(self) -> Length:
        """Both long edges are turned under."""
        return self.technique.casing + 2 * self.technique.turn

    @value("casing strip, whole length", saying=Saying.UP)
    def whole_strip(self) -> Length:
        """All round, its ends turned under."""
        return self.technique.edge + 2 * self.technique.strip_allowance

    @group
    def joined(self) -> Strips:
        """The strips that it is joined of."""
        cloth, joined = self.technique.usable_width, Joined(self.technique.strip_allowance)
        return Strips(self.whole_strip, self.strip_width, cloth, joined)


def _lines(sheet: Worksheet) -> Picture:
    """The edge of the garment before it is turned."""
    caption = "The edge of the garment before it is turned; distances count from the raw edge."
    turn, allowance = sheet["turn"], sheet["casing_allowance"]
    return Picture("lines", sentence(caption), edge_lines((turn, allowance)))


def _strip(sheet: Worksheet) -> Picture:
    """The strip laid flat."""
    width, long, turn = sheet["strip_width"], sheet["strip_length"], sheet["turn"]
    strip = FlatStrip(sentence("casing strip"), width, long, [Rule(Line.FOLD, turn)])
    return strips_picture([strip], "The strip; both long edges are turned under alike.")


def _add_sample(sheet: Worksheet) -> None:
    """The elastic round the body, before any is cut."""
    sheet.trial(
        "Mark {ring} on the elastic, pull it out by hand as far as it goes, and let it go.",
        "pulled out it is at least {opens_to} long, and at rest {ring} again. Hold it "
        "round the body at that mark: it stays up and leaves no line. Write your own share "
        "and stretch if it does not.",
    )


def _add_steps(sheet: Worksheet, turned: bool) -> None:
    """From the casing to the elastic."""
    add_washing_step(sheet)
    if turned:
        _add_turned_steps(sheet)
    else:
        _add_strip_steps(sheet)
    sheet.step(
        (
            "Cut {elastic_cut} of elastic. "
            if sheet["make"].whole == 1
            else "Cut {make} pieces of elastic, each {elastic_cut} long. "
        )
        + "Mark {overlap} at one end, and draw it through the "
        "casing on a bodkin, the other end pinned to the garment. It must not twist."
    )
    sheet.step(
        "Lay the ends {overlap} over one another, sew a square and across it, and let the elastic "
        "slip in.",
        "closed and at rest, laid flat, it is {flat_at_rest} long.",
    )
    sheet.step(
        "Close the opening. Pull the edge out to its full length a few times, so that the cloth "
        "spreads evenly, and sew through casing and elastic at each seam, so that it cannot roll.",
        "laid flat the edge is {flat_at_rest} at rest and opens to {flat_open}.",
    )


def _add_turned_steps(sheet: Worksheet) -> None:
    heading = bool(sheet["heading"].length)
    sheet.step(
        "Cut the garment {casing_allowance} above the finished edge. Sew its seams first, so that "
        "the edge is closed.",
        "laid flat the edge is {flat_spread}.",
    )
    sheet.step(
        "Turn {turn} under all round and press. Then turn the rest down along the finished edge.",
        "from the upper fold to the inner fold it is {turned_depth}.",
    )
    sheet.step(
        "Stitch close to the inner fold, leaving {gap} open beside a seam."
        + (" Stitch a second row {heading} below the upper fold." if heading else ""),
        "between the rows there is room for elastic of {elastic}."
        if heading
        else "between fold and stitching there is room for elastic of {elastic}.",
    )


def _add_strip_steps(sheet: Worksheet) -> None:
    joined = sheet["strips"].whole > 1
    sheet.step(
        "Cut the strips {strip_width} wide and {strip_length} long across the cloth."
        + (" Join {strips} for each casing with {strip_allowance} of seam." if joined else ""),
        "each strip is {whole_strip} long.",
    )
    sheet.step(
        "Turn {turn} under along both long edges and {strip_allowance} at both ends, and press.",
        "the strip is {casing} wide and {edge} long.",
    )
    sheet.step(
        "Pin it to the wrong side of the garment where the elastic is to lie, its ends meeting at "
        "a seam, and stitch close to both long folds. The ends stay open, to draw the elastic in.",
        "between the rows there is room for elastic of {elastic}.",
    )


TECHNIQUE = ElasticCasing

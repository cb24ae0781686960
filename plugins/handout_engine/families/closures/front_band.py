"""A front band for buttons: a strip sewn on, of one cloth or two, or cut on with its facing.

The front reaches as far beyond its centre line as the button needs, and as far to the inside, so
that the band is twice that wide and two bands, lapped centre on centre, cover one another.
"""

from __future__ import annotations

from dataclasses import replace

from handout_engine.amounts.values import sentence
from handout_engine.drawing.scene import Line, Tone
from handout_engine.families.closures.front_band_drawing import FrontBand as Drawn
from handout_engine.families.closures.front_band_drawing import (
    band_section,
    cut_on_edge,
    lapped_fronts,
)
from handout_engine.families.closures.front_band_widths import (
    CUT_ON,
    ONE,
    OPENING,
    TWO,
    BandInputs,
    TwoClothBand,
)
from handout_engine.shared.gathering_pictures import strips_picture
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.strips_drawing import FlatStrip, Rule
from handout_engine.working.cautions import BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON
from handout_engine.working.workings import Grain, Picture, Piece, Seam, Supply, marked
from handout_engine.working.worksheet import Worksheet


class FrontBand(BandInputs):
    """Bands for the two fronts of a buttoned opening."""

    title = "Front band"
    family = "closures"
    summary = (
        "The overlap of a buttoned front: a folded strip, a strip with a narrow contrast edge, or "
        "a facing cut on."
    )

    def cut(self, sheet: Worksheet) -> None:
        """The strips with the line to mark on each, and their seams."""
        if self.made == CUT_ON:
            return
        if isinstance(self.strips, TwoClothBand):
            self._cut_strip(sheet, "outer strip", "band cloth", "outer_width", "joined_line")
            self._cut_strip(sheet, "facing strip", "edge cloth", "facing_width", "fold_line")
            sheet.seams.append(Seam("outer strip to facing", self.strips.joining))
        else:
            self._cut_strip(sheet, "band strip", "cloth", "strip_width", "fold_line")
        sheet.seams.append(Seam("band to front", self.seam))

    def _cut_strip(self, sheet: Worksheet, name: str, cloth: str, width: str, line: str) -> None:
        count, long, marks = self.bands.number, sheet["band_length"], marked(sheet[line].length)
        piece = Piece(name, cloth, count, sheet[width], long, Grain.STRAIGHT, marks)
        sheet.pieces.append(piece)

    def sew(self, sheet: Worksheet) -> None:
        """From the centre line to the lapped fronts."""
        wide, long = sheet["band_width"], sheet["opening"]
        size = sentence("{wide} wide and {long} long", wide=wide, long=long)
        between = "light firm cloth to lay between, for each band"
        sheet.supplies.append(Supply(between, None, size))
        sheet.supplies.append(Supply("fine thread to match"))
        sheet.cautions.extend((BUTTONS_AS_SMALL_PARTS, OLD_BUTTONS, PINS_AND_IRON))
        _add_sample(sheet)
        _add_steps(sheet, self.made, self.onto == OPENING)

    def draw(self, sheet: Worksheet) -> None:
        """The lapped fronts, the strips or the cut edge with their lines, and a section."""
        cut_on = self.made == CUT_ON
        drawn = Drawn(
            opening=sheet["opening"],
            width=sheet["band_width"],
            beyond=sheet["beyond_centre"],
            button=sheet["button"],
            seam=sheet["facing_turn" if cut_on else "seam"],
            edge=sheet["edge"] if self.made == TWO else None,
            joining=self.find("joining"),
            facing=self.find("facing_used"),
        )
        lapped = sentence(
            "Both fronts lapped, seen from the right side; the dash-dot line is the centre line of "
            "both."
        )
        section = sentence(
            "The band cut through, front edge at the right; its cloth is drawn thick."
        )
        sheet.pictures.append(Picture("finished", lapped, lapped_fronts(drawn), finished=True))
        sheet.pictures.append(_edge(sheet, drawn) if cut_on else self._flat(sheet))
        sheet.pictures.append(Picture("section", section, band_section(drawn)))

    def _flat(self, sheet: Worksheet) -> Picture:
        """The strips laid flat."""
        seam, fold = Rule(Line.STITCH, sheet["seam"]), Rule(Line.FOLD, sheet["fold_line"])
        if self.made == ONE:
            turned = Rule(Line.FOLD, sheet["turned_edge"])
            strips = [_strip(sheet, "band strip", "strip_width", seam, fold, turned)]
        else:
            joined = Rule(Line.STITCH, sheet["joined_line"])
            joining = Rule(Line.STITCH, sheet["joining"])
            facing = _strip(sheet, "facing strip", "facing_width", joining, fold)
            strips = [
                _strip(sheet, "outer strip", "outer_width", seam, joined),
                replace(facing, tone=Tone.SECOND),
            ]
        return strips_picture(strips, "The strips with their lines.")


def _strip(sheet: Worksheet, name: str, width: str, *lines: Rule) -> FlatStrip:
    long = sheet["band_length"]
    return FlatStrip(sentence(name), sheet[width], long, lines, grain_across=False)


def _edge(sheet: Worksheet, drawn: Drawn) -> Picture:
    """The edge of a front to which the band is cut on."""
    lines = (sheet["facing_turn"], sheet["fold_line"], sheet["cut_beyond"])
    caption = (
        "The edge of the front before it is folded, turned a quarter: distances count from the "
        "cut edge."
    )
    return Picture("lines", sentence(caption), cut_on_edge(drawn, lines))


def _add_sample(sheet: Worksheet) -> None:
    """A hand's length of band with one hole in it."""
    sheet.trial(
        "Make a hand's length of band from scraps, with the firm cloth in it, press it and "
        "work one buttonhole.",
        "it is {band_width} wide and lies flat beside the hole. If it is narrower, the cloth "
        "takes room where it turns: make the extension half of the difference larger.",
    )


def _add_steps(sheet: Worksheet, made: str, opening: bool) -> None:
    """From the centre line to the lapped fronts; those of a cut `opening` its garment laps."""
    add_washing_step(sheet)
    if made == CUT_ON:
        _add_cut_on_steps(sheet)
    else:
        _add_strip_steps(sheet, made, opening)
    if opening:
        return
    sheet.step(
        "Lap the fronts, centre line on centre line, ends level, and pin.",
        "they overlap by {band_width}, band on band. Now mark buttons and holes.",
    )


def _add_cut_on_steps(sheet: Worksheet) -> None:
    sheet.step(
        "Draw the centre line of the front, and beyond it the fold at {beyond_centre} and the cut "
        "edge at {cut_beyond}. Cut on that line.",
        "from the fold line to the cut edge it is {fold_line}.",
    )
    sheet.step(
        "Lay the firm cloth on the wrong side of the facing, one edge on the fold line, and baste."
    )
    sheet.step("Turn {facing_turn} of the facing's inner edge under and stitch it.")
    sheet.step(
        "Fold the facing to the right side along the fold line. Sew across its upper and its lower "
        "end, {end_allowance} from the raw edges; trim, turn and push the corners out."
        if sheet["end_allowance"].length
        else "Fold the facing to the wrong side along the fold line; its ends are caught in neck "
        "and hem.",
    )
    sheet.step(
        "Press the fold, and catch the facing's inner edge down at its ends and at every seam.",
        "from the fold to the centre line it is {beyond_centre}, and the facing is {facing_used} "
        "wide.",
    )


def _add_strip_steps(sheet: Worksheet, made: str, opening: bool) -> None:
    two = made == TWO
    if not opening:
        sheet.step(
            "On the front draw the centre line, and {beyond_centre} to the inside of it the line "
            "of the band seam. Cut {seam} from that line, on the side of the centre line."
        )
    sheet.step(
        "Cut the outer strips {outer_width} and the facing strips {facing_width} wide, all "
        "{band_length} long, {bands} of each."
        if two
        else "Cut {bands} strips {strip_width} wide and {band_length} long, along the selvage."
    )
    if two:
        sheet.step(
            "Sew each outer strip to a facing strip along one long edge, right sides together, "
            "with {joining} allowance, and press the allowances toward the facing.",
            "opened flat it is {strip_width} from raw edge to raw edge.",
        )
    sheet.step(
        "Baste the firm cloth to the wrong side of the outer half, between the line of the band "
        "seam and the fold. Turn {seam} under along the long edge of the inner half and press.",
        "from that fold to the other raw edge it is {turned_edge}.",
    )
    if opening:
        sheet.put_by()
        sheet.step(
            "Sew the raw edge of the outer half of each band to its side of the opening, right "
            "sides together, {seam} from the edges, down to the corner exactly. Press the "
            "allowances into the band. Both its ends stay raw: the neck seam and the lower end of "
            "the opening take them.",
            "{end_allowance} of the band stand beyond the neck seam line and beyond the corner.",
        )
    else:
        sheet.step(
            "Sew the raw edge of the outer half to the front, right sides together, {seam} from "
            "the edges, the same length of strip beyond both ends. Press the allowances into the "
            "band."
        )
    if sheet["end_allowance"].length and not opening:
        sheet.step(
            "Fold the band lengthwise, right sides together, and sew across both ends, "
            "{end_allowance} from their raw edges. Trim, turn and push the corners out.",
            "the band is {opening} long.",
        )
    sheet.step(
        "Press the fold: the facing comes round it and shows as a narrow edge."
        if two
        else "Press the fold along the middle of the strip.",
        "from the seam to the fold it is {band_width}"
        + (", of which {outer_shows} are outer strip and {edge} are edge." if two else "."),
    )
    sheet.step(
        "Lay the turned edge over the seam on the wrong side, so that it just covers the "
        "stitching, and slip stitch it down."
    )


TECHNIQUE = FrontBand

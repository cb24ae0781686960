"""The seams of fine sewing in a panel: what each takes, and how wide the pieces are cut."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import SEWING, count, length, ratio
from handout_engine.amounts.lengths import Length, millimetres
from handout_engine.amounts.numbers import Count
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import TAPE, Tape
from handout_engine.amounts.sources import PRACTICE
from handout_engine.amounts.values import sentence
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought, ClothInputs
from handout_engine.drawing.scene import Scene
from handout_engine.families.seams.fine_seams_drawing import TALL, cut_panels, joined_panel
from handout_engine.families.seams.seam_sections_drawing import SeamSizes, seam_stages
from handout_engine.shared.gathering_steps import add_washing_step
from handout_engine.shared.seam_steps import seam_steps
from handout_engine.shared.seams import FRENCH, PIN_STITCH, SeamInputs
from handout_engine.working.cautions import LOOSE_THREADS, PINS_AND_IRON, THIN_COTTON, WING_NEEDLE
from handout_engine.working.workings import Chart, Grain, Mark, Picture, Piece
from handout_engine.working.worksheet import Worksheet

LONGEST_PIECE = millimetres(50_000)


class GatheredPiece(Group):
    """A piece that is gathered into the seam with the one before it."""

    def __init__(self, panel: FineSeams, number: int, before: Length) -> None:
        """Take its number in the panel, and the length of the piece before it."""
        super().__init__(suffix=f"_{number}")
        self.panel, self.number, self.before = panel, number, before

    @value("piece {}, cut length")
    def length(self) -> Length:
        """Longer than the piece before it by the fullness."""
        return self.before * self.panel.fullness

    @check
    def it_can_be_cut(self) -> None:
        """Refuse a piece longer than anyone gathers."""
        if self.length > LONGEST_PIECE:
            raise RefusalError(
                f"seams {self.panel.seams} with fullness {Tape().say(self.panel.fullness)} would "
                f"make piece {self.number} longer than {Tape().both(LONGEST_PIECE)}; use fewer "
                "seams or less fullness",
                "seams",
            )


class FineSeams(SeamInputs, ClothInputs):
    """A panel pieced with one of the fine seams."""

    title = "Fine seams"
    family = "seams"
    summary = (
        "Plain, French, flat fell, rolled and whipped, or pin stitched: what each seam takes of "
        "the cloth, and how wide the pieces are cut."
    )

    panel = length(
        "finished panel",
        "Width of the panel when all its seams are sewn.",
        "21 in",
        ("2 in", "60 in"),
    )
    seams = count("number of seams", "Seams across the panel.", 2, 12)
    along = length(
        "length of the seams",
        "Cut length of the pieces, along the seams.",
        "18 in",
        ("2 in", "3 yd"),
    )
    side = length(
        "side allowance",
        "Added at both outer edges of the panel.",
        "1/2 in",
        ("0 in", "4 in"),
        group=SEWING,
        basis=PRACTICE,
    )
    fullness = ratio(
        "fullness",
        "For gathers only: length of each piece for each length of the piece before it.",
        "2",
        ("1", "4"),
        basis=PRACTICE,
    )

    @value("pieces in the panel")
    def pieces(self) -> Count:
        """One more than there are seams."""
        return self.seams + 1

    @value("each piece, finished width")
    def piece_width(self) -> Length:
        """From seam to seam."""
        return self.panel / self.pieces

    @check
    def one_ridge_ends_before_the_next(self) -> None:
        """Refuse pieces so narrow that one seam's ridge would reach the next."""
        if self.ridge >= self.piece_width:
            most = max(0, -(-self.panel.mm // self.ridge.mm) - 2)
            way = f"use at most {most} seams or a wider panel" if most else "use a wider panel"
            raise RefusalError(
                f"seams {self.seams} leaves pieces {TAPE.say(self.piece_width)} wide, and each "
                f"seam alone is {TAPE.both(self.ridge)} wide; {way}",
                "seams",
            )

    @value("first piece, cut width")
    def first_cut_width(self) -> Length:
        """Its outer side, and the first layer of a seam."""
        return self.side + self.piece_width + self.first_takes

    @value("seam line of the first piece, from its outer edge")
    def first_seam_line(self) -> Length:
        """Where it meets the second."""
        return self.side + self.piece_width

    @value("middle piece, cut width")
    def middle_cut_width(self) -> Length | None:
        """The second layer of one seam and the first of the next; None in a panel of two."""
        if self.seams.number == 1:
            return None
        return self.second_takes + self.piece_width + self.first_takes

    @value("last piece, cut width")
    def last_cut_width(self) -> Length:
        """The second layer of a seam, and its outer side."""
        return self.second_takes + self.piece_width + self.side

    @value("all seams take")
    def seams_take(self) -> Length:
        """Of both layers."""
        return self.seams * (self.first_takes + self.second_takes)

    @value("all pieces side by side before sewing")
    def total_cut_width(self) -> Length:
        """What shows, what the seams take, and both sides."""
        return self.panel + self.seams_take + 2 * self.side

    @group
    def gathered_pieces(self) -> tuple[GatheredPiece, ...]:
        """All but the first of a panel with gathers, each longer than the one before."""
        found, before = list[GatheredPiece](), self.along
        for number in range(2, self.pieces.number + 1) if self.gathers else ():
            found.append(GatheredPiece(self, number, before))
            before = found[-1].length
        return tuple(found)

    @group
    def cloth_bought(self) -> ClothBought:
        """The cloth of the panel."""
        return ClothBought(self, "cloth")

    @value("two sample scraps, side by side")
    def sample_before(self) -> Length:
        """Wide enough to see what one seam takes of them."""
        return 8 * (self.first_takes + self.second_takes)

    @value("one sample scrap")
    def sample_scrap(self) -> Length:
        """One of two equal ones."""
        return self.sample_before / 2

    @value("sample, sewn")
    def sample_after(self) -> Length:
        """Both, without what one seam takes."""
        return self.sample_before - self.first_takes - self.second_takes

    def cut(self, sheet: Worksheet) -> None:
        """The pieces of the panel, and what the seam takes."""
        marks = {
            "first": (Mark("seam line", self.first_seam_line),),
            "last": (Mark("seam line", self.second_takes),),
        }
        for title, kind, number, long in self._kinds_of_pieces():
            wide, lines = sheet[f"{kind}_cut_width"], marks.get(kind, ())
            sheet.pieces.append(
                Piece(title, "cloth", number, wide, sheet[long], Grain.STRAIGHT, lines)
            )
        sheet.seams.extend(self.seams_of_both_layers)
        rows = (
            ("first layer", sheet["first_takes"]),
            ("second layer", sheet["second_takes"]),
            ("ridge on the wrong side", sheet["ridge"]),
        )
        sheet.charts.append(Chart("What the seam takes", ("Layer", "Taken by each seam"), rows))

    def _kinds_of_pieces(self) -> list[tuple[str, str, int, str]]:
        """What is cut: its name, its kind, how many, and the name of its length."""
        last = self.pieces.number
        if self.gathers:
            kinds = ["first", *["middle"] * (last - 2), "last"]
            lengths = ["along", *(f"length_{number}" for number in range(2, last + 1))]
            return [
                (f"piece {number}", kind, 1, long)
                for number, (kind, long) in enumerate(zip(kinds, lengths, strict=True), 1)
            ]
        counts = {"first": 1, "middle": last - 2, "last": 1}
        return [(f"{kind} piece", kind, many, "along") for kind, many in counts.items() if many]

    def sew(self, sheet: Worksheet) -> None:
        """From two scraps to the pressed panel."""
        wing = self.seam == PIN_STITCH
        needle = "a wing needle" if wing else "a fine needle, number 60 or 65"
        sheet.have(f"fine thread to match, and {needle}")
        sheet.have("small sharp scissors", "a gauge or ruler for the allowances")
        sheet.cautions.extend((PINS_AND_IRON, THIN_COTTON))
        if wing:
            sheet.cautions.append(WING_NEEDLE)
        if self.gathers:
            sheet.cautions.append(LOOSE_THREADS)
        sheet.trial(
            "Cut two scraps of the same cloth, each {sample_scrap} wide, and sew them with "
            "this seam.",
            "sewn and pressed they are {sample_after} wide together. Less: your seam takes "
            "more than the page says, so write what it took as the allowance. More: it "
            "takes less.",
        )
        add_washing_step(sheet)
        self._add_steps(sheet)

    def _add_steps(self, sheet: Worksheet) -> None:
        several = self.middle_cut_width is not None
        middle = "each middle piece {middle_cut_width}, " if several else ""
        long = "as long as the cut list says" if self.gathers else "{along} long"
        sheet.step(
            f"Cut the first piece {{first_cut_width}}, {middle}and the last piece "
            f"{{last_cut_width}} wide, all {long}, with the long sides along the selvage.",
            "side by side the pieces are {total_cut_width} wide.",
        )
        if self.seam == FRENCH:
            sheet.step(
                "Mark the right side of every piece; a French seam begins on the other side."
            )
        for text, checkpoint in seam_steps(self.seam):
            sheet.step(text, checkpoint)
        if several:
            sheet.step("Sew the other seams alike, all ridges turned the same way.")
        sheet.step(
            "Press the panel from the wrong side over a folded towel.",
            "from seam to seam it is {piece_width}, and without the side allowances {panel} in "
            "all.",
        )

    def draw(self, sheet: Worksheet) -> None:
        """The panel, each stage of its seam cut through, and the pieces as they are cut."""
        each, ridge = sheet["piece_width"], sheet["ridge"]
        places = [each.mm * number for number in range(1, self.pieces.number)]
        finished = Scene(
            sentence("Finished panel"),
            sheet.sentence("{panel} wide with {seams} seams."),
            joined_panel(sheet["panel"], each, ridge, places),
            tallest=200.0,
        )
        caption = (
            "The panel, seams drawn behind the cloth in thin dashes; its side allowances are left "
            "out."
        )
        sheet.show("finished", caption, finished, finished=True)
        sizes = SeamSizes({**self.inputs, **self.values})
        for number, (words, shapes) in enumerate(seam_stages(self.seam, sizes), 1):
            scene = Scene(
                sentence(f"{self.seam}, stage {number}"), sentence(words), shapes, tallest=120.0
            )
            caption = f"{number}. {words} Seen at the cut end; thickness enlarged."
            sheet.show(f"stage-{number}", caption, scene)
        sheet.pictures.append(self._cut_picture(sheet))

    def _cut_picture(self, sheet: Worksheet) -> Picture:
        first, second, side = map(float, (self.first_takes, self.second_takes, self.side))
        drawn = [(sentence("first"), sheet["first_cut_width"], side, first)]
        if self.middle_cut_width is not None:
            drawn.append((sentence("middle"), sheet["middle_cut_width"], second, first))
        drawn.append((sentence("last"), sheet["last_cut_width"], second, side))
        scene = Scene(
            sentence("Pieces as they are cut"),
            sheet.sentence(
                "Stitching lines dashed; {first_takes} and {second_takes} are taken by each seam."
            ),
            cut_panels(drawn, TALL * sheet["piece_width"].mm + 0.2 * drawn[0][1].mm),
            tallest=150.0,
        )
        caption = "One piece of each kind as it is cut, to scale in width."
        return Picture("cut", sentence(caption), scene)


TECHNIQUE = FineSeams

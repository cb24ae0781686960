"""Two or more ruffles of different depths, gathered together into one edge."""

from __future__ import annotations

from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import CLOTH, choice, lengths
from handout_engine.amounts.lengths import Length, least
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.values import sentence
from handout_engine.amounts.working_out import Group
from handout_engine.cloth.cloth import ClothBought
from handout_engine.families.ruffles.edge_seams import add_edge_seam_steps
from handout_engine.families.ruffles.seamed_ruffle import HemmedRuffle
from handout_engine.shared.gathering import strip_piece
from handout_engine.shared.gathering_drawing import GatheredLayer
from handout_engine.shared.gathering_pictures import (
    finished_picture,
    quarters_picture,
    row_rules,
    strips_picture,
)
from handout_engine.shared.gathering_steps import (
    add_gathering_steps,
    add_gathering_supplies,
    add_joining_steps,
    add_sample,
    add_washing_step,
)
from handout_engine.shared.hems import hem_step
from handout_engine.shared.strips import Strips
from handout_engine.shared.strips_drawing import FlatStrip
from handout_engine.working.cautions import NOTHING_UNDER_THE_HARNESS
from handout_engine.working.workings import Seam, marked
from handout_engine.working.worksheet import Worksheet

ONE_CLOTH, OWN_CLOTHS = "one for all", "one for each layer"
MOST_LAYERS = 6


class Layer(Group):
    """One layer of a ruffle, counted from the top."""

    def __init__(self, ruffle: LayeredRuffle, number: int, asked: Length) -> None:
        """Take the ruffle, and the depth that is asked for of this layer."""
        super().__init__(f"layer_{number}_")
        self.ruffle, self.number, self.asked = ruffle, number, asked

    @property
    def words(self) -> str:
        """What it is called."""
        return f"layer {self.number}"

    @value("{}, finished depth")
    def depth(self) -> Length:
        """Below the seam."""
        return self.asked

    @value("{} strip, cut width")
    def cut_width(self) -> Length:
        """With what the seam and the hem take."""
        return self.ruffle.strip_width(self.depth)

    @value("{}, from raw edge to finished edge")
    def prepared_depth(self) -> Length:
        """What is measured before the layers are laid on each other."""
        return self.depth + self.ruffle.edge_allowance


class LayeredRuffle(HemmedRuffle):
    """Ruffles of several depths in one seam, the shortest on top."""

    title = "Layered ruffle"
    family = "ruffles"
    summary = "Ruffles of two or more depths gathered as one into the same edge."

    depths = lengths(
        "finished depths",
        "Depth of each layer below the seam, from the top layer down.",
        "1 1/2 in; 2 1/2 in",
        ("1/4 in", "40 in"),
        MOST_LAYERS,
    )
    cloths = choice(
        "cloths", "One cloth for all layers, or one for each.", ONE_CLOTH, OWN_CLOTHS, group=CLOTH
    )

    @check
    def there_are_layers(self) -> None:
        """Refuse a single one."""
        if len(self.depths) < 2:
            raise RefusalError(
                "one depth makes a single ruffle; write two or more, or use gathered-ruffle",
                "depths",
            )

    @value("the shallowest layer")
    def shallowest_layer(self) -> Length:
        """All layers are hemmed alike, so the hem may be no deeper than this one."""
        return least(*self.depths)

    @property
    def shallowest(self) -> Length:
        """The depth of the shallowest layer."""
        return self.shallowest_layer

    @group
    def layers(self) -> tuple[Layer, ...]:
        """Its layers from the top down."""
        return tuple(Layer(self, number, asked) for number, asked in enumerate(self.depths, 1))

    @group
    def strips(self) -> tuple[Strips, ...]:
        """The strips of each layer."""
        return tuple(self.joined_strips(layer.cut_width, layer.prefix) for layer in self.layers)

    @group
    def cloths_bought(self) -> tuple[ClothBought, ...]:
        """One cloth, or one for each layer."""
        if self.cloths == ONE_CLOTH:
            return (ClothBought(self, "ruffle cloth"),)
        return tuple(ClothBought(self, f"{each.words} cloth", each.prefix) for each in self.layers)

    def cut(self, sheet: Worksheet) -> None:
        """The strips of each layer, all with the same gathering rows."""
        marks = marked(self.rows.first_row, self.rows.second_row)
        for layer in self.layers:
            cloth = "ruffle cloth" if self.cloths == ONE_CLOTH else f"{layer.words} cloth"
            piece = strip_piece(sheet, f"{layer.words} strip", cloth, layer.prefix, marks)
            sheet.pieces.append(piece)
        sheet.seams.append(Seam("all layers to edge", self.edge_allowance))

    def sew(self, sheet: Worksheet) -> None:
        """Each layer prepared by itself, then all gathered and sewn on as one."""
        add_gathering_supplies(sheet)
        sheet.cautions.append(NOTHING_UNDER_THE_HARNESS)
        prefixes = [layer.prefix for layer in self.layers]
        widest = max((sheet[f"{each}cut_width"] for each in prefixes), key=lambda it: it.length)
        add_sample(sheet, widest, f"{len(prefixes)} layers of strip")
        add_washing_step(sheet)
        for layer in self.layers:
            sheet.step(
                f"For {layer.words}, cut the strips {{{layer.prefix}cut_width}} wide and "
                f"{{{layer.prefix}strip_length}} long, across the cloth."
            )
        for layer in self.layers:
            add_joining_steps(sheet, layer.prefix, layer.words)
        prepared = " and ".join(f"{{{each}prepared_depth}}" for each in prefixes)
        sheet.step(
            "Prepare each layer by itself. " + hem_step(self.hem),
            f"from raw edge to finished edge the layers are {prepared} deep.",
        )
        sheet.step(
            "Lay the layers on each other, all right sides up, the shortest on top, raw edges and "
            "ends level, and baste them together along the raw edge."
        )
        add_gathering_steps(sheet, "all layers")
        hanging = " and ".join(f"{{{each}depth}}" for each in prefixes)
        checkpoint = f"below the seam the layers hang {hanging}."
        add_edge_seam_steps(sheet, checkpoint, "; grade the allowances")

    def draw(self, sheet: Worksheet) -> None:
        """The finished ruffle, a strip of each layer, and the quarters."""
        strips = [
            FlatStrip(
                sentence(layer.words),
                sheet[f"{layer.prefix}cut_width"],
                sheet[f"{layer.prefix}strip_length"],
                row_rules(sheet),
            )
            for layer in self.layers
        ]
        depths = [sheet[f"{layer.prefix}depth"] for layer in self.layers]
        hung = [GatheredLayer(depth, self.fullness.number) for depth in depths]
        sheet.pictures.extend(
            (
                finished_picture(sheet, hung),
                strips_picture(strips, "One strip of each layer, with the gathering rows."),
                quarters_picture(sheet),
            )
        )


TECHNIQUE = LayeredRuffle

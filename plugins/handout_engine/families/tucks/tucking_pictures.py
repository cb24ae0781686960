"""The pictures that all tucked panels share."""

from __future__ import annotations

from dataclasses import replace

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.values import Sentence, Value, sentence
from handout_engine.drawing.scene import Line
from handout_engine.families.tucks.tuck_rows import TucksSewnThrough
from handout_engine.families.tucks.tucking_drawing import tuck_scene
from handout_engine.shared.folds import FoldedPanel
from handout_engine.shared.folds_drawing import Drawn, chart_picture, finished_picture
from handout_engine.working.workings import Picture
from handout_engine.working.worksheet import Worksheet

TUCK_LINES = (Line.STITCH, Line.FOLD, Line.STITCH)


def add_pictures(sheet: Worksheet, tucks: TucksSewnThrough, deepest: Value) -> None:
    """The finished panel, the marking chart, and one tuck enlarged."""
    panel, what = tucks.folded, tucks.title
    finished, flat = sheet["tucked_width"], sheet["panel_cut_width"]
    drawn = Drawn(
        panel,
        sheet["worked_width"],
        flat,
        sheet["edge_to_seam"],
        kinds=(TUCK_LINES,) * len(panel.folds),
    )
    trimmed = replace(
        drawn,
        panel=_trimmed(panel, finished.length),
        finished=finished,
        seams=sheet["side_allowance"],
    )
    words = sheet.sentence(
        "{panel_cut_width} of flat cloth become {tucked_width}, raw edge to raw edge."
    )
    chart = (
        "The flat panel turned a quarter, its left edge at the top. At the right each line's "
        "distance from that edge, at the left its distance from the centre; the table has every "
        "line."
    )
    one = sentence("Stitched {depth} from its fold, it takes twice that.", depth=deepest)
    sheet.pictures.extend(
        (
            finished_picture(trimmed, what, ", and cut through below.", words),
            chart_picture(drawn, chart, words),
            tuck_picture(panel, deepest, one),
        )
    )


def tuck_picture(panel: FoldedPanel, depth: Value, words: Sentence) -> Picture:
    """One tuck of the panel enlarged."""
    caption = sentence("One tuck enlarged: flat, and stitched and pressed.")
    scene = tuck_scene(depth, panel.folds[0].lies, sentence("One tuck"), words)
    return Picture("tuck", caption, scene)


def _trimmed(panel: FoldedPanel, finished: Length) -> FoldedPanel:
    """The panel when its spare is cut off, as much at either side."""
    off = (panel.finished - finished) / 2
    folds = tuple(replace(fold, at=fold.at - off) for fold in panel.folds)
    return FoldedPanel(finished, folds)

"""No drawing lies: an arrow is as long as it says, or it declares and shows that it is not.

Every dimension of every drawing is measured: of each technique and garment at its defaults, of
garments at other sizes, and with random inputs; on the page, at true scale, and in the layouts.
"""

from collections.abc import Iterator
from dataclasses import replace
from itertools import chain

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from drawn import check_dimensions, check_reader_is_told, texts
from handout_engine import register
from handout_engine.amounts.lengths import millimetres
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GIVEN
from handout_engine.amounts.values import Value, sentence
from handout_engine.cloth.layout_drawing import layout_scene
from handout_engine.drawing.breaks import enlarged, left_out, measured
from handout_engine.drawing.layout import lay_out
from handout_engine.drawing.markup import xml
from handout_engine.drawing.scene import (
    Area,
    Dimension,
    Point,
    Scene,
    Shape,
    Shown,
    Side,
    Tag,
    rectangle,
)
from handout_engine.drawing.svg import svg
from handout_engine.working.technique import make
from handout_engine.working.workings import Working
from worked import INCHES
from written_inputs import inputs_of

SIZES = ("50", "74", "98")
EXAMPLES = settings.default.max_examples // 6
EVERY = register.keys()

of_everything = pytest.mark.parametrize("key", EVERY)


def scenes(working: Working) -> Iterator[Scene]:
    """What a page shows of a working: its pictures, and how its pieces lie on the cloth."""
    yield from (picture.scene for picture in working.pictures)
    yield from map(layout_scene, working.layouts)


def check_drawings(working: Working) -> None:
    for scene in scenes(working):
        check_dimensions(scene)
        check_reader_is_told(scene, INCHES)
    for sheet in (picture.sheet for picture in working.pictures if picture.sheet):
        check_dimensions(sheet)
        shown = [each.shown for each in sheet.shapes if isinstance(each, Dimension)]
        assert set(shown) <= {Shown.TO_SCALE}, "on a sheet at true scale nothing is left out"


@of_everything
def test_every_arrow_is_as_long_as_it_says(key):
    check_drawings(make(register.find(key), {}).work())


@pytest.mark.parametrize("key", register.garment_keys())
def test_every_arrow_is_as_long_as_it_says_at_every_size(key):
    for size in SIZES:
        check_drawings(make(register.find_garment(key), {"size": size}).work())


@of_everything
def test_every_arrow_is_as_long_as_it_says_whatever_is_made(key):
    technique = register.find(key)

    @settings(max_examples=EXAMPLES, phases=[Phase.generate])
    @given(st.data())
    def work_and_measure(data: st.DataObject) -> None:
        try:
            working = make(technique, data.draw(inputs_of(technique))).work()
        except RefusalError:
            return
        check_drawings(working)

    work_and_measure()


LONG = Value("edge", "edge", millimetres(300), GIVEN)
SHORT = Value("thickness", "thickness", millimetres(1), GIVEN)
CLOTH = Area(rectangle(0, 0, 100, 40))
GAP: tuple[Point, Point] = ((60, -1), (66, 41))


def drawing(*shapes: Shape) -> Scene:
    return Scene(sentence("Strip"), sentence("A strip."), shapes)


def along(amount: Value) -> Dimension:
    return Dimension((0, 40), (100, 40), amount, Side.BELOW)


BESIDE = ((104.0, -1.0), (110.0, 41.0))
SLANTED = Dimension((0, 0), (100, 40), replace(LONG, amount=millimetres(108)), Side.BELOW)
DECLARED = replace(along(LONG), shown=Shown.BROKEN)
LIES = {
    "it says 300 mm and spans 100": (along(LONG),),
    "it is declared, and no break line is drawn": (DECLARED,),
    "a break is drawn, and it is not declared": (*left_out(GAP, down=True), along(LONG)),
    "the break is beside what is measured": (*left_out(BESIDE, down=True), DECLARED),
    "it is declared larger, and drawn smaller": (replace(along(LONG), shown=Shown.ENLARGED),),
    "it is measured at a slant, and the arrow runs level": (SLANTED,),
    "the line of a tag lies elsewhere": (Tag((100, 30), SHORT, Side.RIGHT, (100, 0)),),
}


@pytest.mark.parametrize("why", LIES)
def test_a_lie_is_found(why):
    with pytest.raises(AssertionError):
        check_dimensions(drawing(CLOTH, *LIES[why]))


def test_a_long_edge_is_declared_broken_and_a_short_one_is_not():
    assert measured((0, 40), (100, 40), LONG, Side.BELOW).shown is Shown.BROKEN
    whole = replace(LONG, amount=millimetres(100))
    assert measured((0, 40), (100, 40), whole, Side.BELOW).shown is Shown.TO_SCALE


def test_a_broken_drawing_says_so_on_the_page_and_to_who_does_not_see_it():
    broken = measured((0, 40), (100, 40), LONG, Side.BELOW)
    scene = drawing(CLOTH, *left_out(GAP, down=True), broken)
    check_dimensions(scene)
    words = [text.words for text in texts(lay_out(scene, INCHES))]
    assert words[-1] == "shortened at the break lines"
    assert "A strip. It is shortened at the break lines." in xml(svg(scene, Tape(), "strip"))


def test_what_is_drawn_larger_says_so_beside_its_amount():
    thick = enlarged((100, 0), (100, 40), SHORT, Side.RIGHT)
    scene = drawing(CLOTH, thick)
    check_dimensions(scene)
    (label,) = texts(lay_out(scene, Tape("metric")))
    assert label.words == "1 mm, enlarged"


def test_what_is_drawn_as_long_as_it_is_needs_no_words():
    scene = drawing(CLOTH, along(replace(LONG, amount=millimetres(100))))
    (label,) = texts(lay_out(scene, Tape("metric")))
    assert label.words == "10 cm"


def test_techniques_and_garments_have_dimensions_to_be_measured():
    """The tests above would pass if drawings had none."""
    workings = [make(register.find(key), {}).work() for key in EVERY]
    every = chain.from_iterable(scene.shapes for each in workings for scene in scenes(each))
    assert sum(isinstance(shape, Dimension) for shape in every) > 400

"""Values that know how they were made: one source for the number and for its formula."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from arithmetic import exact, work_out
from handout_engine.amounts.angles import PI, Angle, cosine, sine
from handout_engine.amounts.declaring import check, group, value
from handout_engine.amounts.inputs import choice, count, length, ratio
from handout_engine.amounts.lengths import Length, inches, least, most, total
from handout_engine.amounts.naming import constant
from handout_engine.amounts.numbers import Count, Ratio, larger, whole
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.amounts.sources import GEOMETRY, GIVEN, PRACTICE
from handout_engine.amounts.working_out import Group, RingError
from handout_engine.working.technique import Technique

TAPE = Tape()
WIDEST = constant("widest band", inches("1/2"), PRACTICE)


class Rows(Group):
    """Rows of something on a band, under a prefix."""

    def __init__(self, band: Length, prefix: str) -> None:
        super().__init__(prefix)
        self.band = band

    @value("half of the {}band")
    def half(self) -> Length:
        return self.band / 2


class Cuff(Technique):
    """A cuff that serves no purpose but this test."""

    title, family, summary = "Cuff", "tests", "A cuff."
    worked = 0

    band = length("band", "Finished width.", "1/4 in", ("1/16 in", "6 in"))
    wrist = length("wrist", "Round the wrist.", "5 in", ("1 in", "20 in"))
    fullness = ratio("fullness", "How full.", "1.5", ("1", "6"))
    make = count("how many", "How many.", 2, 50)
    ends = choice("ends", "How it ends.", "open", "ring")

    @value("strip, cut width")
    def cut_width(self) -> Length:
        type(self).worked += 1
        return 2 * (self.band + self.seam)

    @value("seam", basis=PRACTICE)
    def seam(self) -> Length:
        return self.band if self.band <= WIDEST else WIDEST / 2

    @value("strip, cut length")
    def cut_length(self) -> Length:
        around = self.wrist * self.fullness
        return around if self.ends == "ring" else around + 2 * self.seam

    @value("strips from one width")
    def strips(self) -> Count:
        return larger((inches_of_cloth() / self.cut_length).rounded_down(), whole(1))

    @value("only in a ring")
    def ring_only(self) -> Length | None:
        return self.band if self.ends == "ring" else None

    @value("as deep as the seam", basis=PRACTICE)
    def usual_depth(self) -> Length:
        return self.cut_width

    @value("this way")
    def this_way(self) -> Length:
        return self.other_way + self.band

    @value("the other way")
    def other_way(self) -> Length:
        return self.this_way - self.band if self.band > WIDEST else self.band

    @group
    def rows(self) -> tuple[Rows, ...]:
        return Rows(self.cut_width, "upper_"), Rows(self.band, "lower_")

    @check
    def there_is_a_wrist(self) -> None:
        if self.wrist < self.band:
            raise RefusalError("the band is wider than the wrist", "band")


def inches_of_cloth() -> Length:
    return constant("cloth", inches(44), GIVEN)


def formula(cuff: Cuff, name: str) -> str:
    found = cuff.find(name)
    assert found is not None
    return found.how


def test_a_formula_is_what_was_computed():
    cuff = Cuff(band=inches("1/4"))
    assert cuff.cut_width == inches(1)
    found = cuff.find("cut_width")
    assert found.formula.words() == "2 × (band + seam)"
    assert found.formula.first(TAPE) == "2 × (1/4 in + 1/4 in)"
    assert work_out(found.formula) == exact(found.amount)


def test_what_decided_between_two_formulas_is_said():
    assert formula(Cuff(band=inches("1/4")), "seam") == ("band, since band is at most widest band")
    assert formula(Cuff(band=inches(1)), "seam") == (
        "widest band / 2, since band is more than widest band"
    )
    assert formula(Cuff(), "cut_length") == ("wrist × fullness + 2 × seam, since “ends” is “open”")
    assert formula(Cuff(ends="ring"), "cut_length") == "wrist × fullness, since “ends” is “ring”"


def test_rounding_and_the_least_are_endings():
    assert formula(Cuff(), "strips") == "cloth / strip, cut length, rounded down, at least 1"


def test_what_is_only_another_name_rests_on_what_that_rests_on():
    assert Cuff(band=inches("1/4"), ends="ring").find("ring_only").basis == GIVEN
    assert Cuff(band=inches("1/4")).find("seam").basis == PRACTICE
    assert Cuff(band=inches("1/4")).find("cut_width").basis == GEOMETRY


def test_what_is_made_as_large_as_another_by_habit_rests_on_the_habit():
    assert Cuff().find("usual_depth").basis == PRACTICE


def test_a_value_is_worked_out_when_it_is_asked_for_and_once():
    cuff, Cuff.worked = Cuff(), 0
    assert cuff.seam == inches("1/4")
    assert Cuff.worked == 0
    assert cuff.cut_width + cuff.cut_width == 2 * cuff.cut_width
    assert Cuff.worked == 1


def test_a_group_s_values_have_its_prefix_in_name_and_label():
    cuff = Cuff()
    names = [name for name in cuff.values if name.endswith("half")]
    assert names == ["upper_half", "lower_half"]
    assert cuff.find("lower_half").label == "half of the lower band"
    assert formula(cuff, "upper_half") == "strip, cut width / 2"


def test_there_is_no_value_where_its_method_says_none():
    assert Cuff().find("ring_only") is None
    assert "ring_only" not in Cuff().values
    assert "ring_only" in Cuff(ends="ring").values


def test_each_value_stands_after_what_it_needs():
    assert [*Cuff().values][:3] == ["seam", "cut_width", "cut_length"]


def test_values_that_need_each_other_are_refused_with_the_way_round():
    with pytest.raises(RingError, match="this_way needs other_way, which needs this_way"):
        _ = Cuff(band=inches(1)).this_way
    assert Cuff(band=inches("1/4")).this_way == inches("1/2")


def test_a_check_is_looked_at_before_anything_is_shown():
    with pytest.raises(RefusalError, match="wider than the wrist"):
        Cuff(band=inches(6), wrist=inches(5)).work()


def test_two_techniques_with_equal_inputs_are_equal():
    assert Cuff(band=inches(1)) == Cuff(band=inches(1))
    assert hash(Cuff(band=inches(1))) == hash(Cuff(band=inches(1)))
    assert Cuff(band=inches(1)) != Cuff(band=inches(2))
    with pytest.raises(TypeError, match="no input bant"):
        Cuff(bant=inches(1))


NAMES = "abcdefgh"
sixteenths = st.integers(1, 640).map(lambda number: inches(Fraction(number, 16)))


@st.composite
def lengths_made(draw: st.DrawFn) -> Length:
    """A length made of named ones by a few random steps."""
    named = [constant(name, draw(sixteenths), GIVEN) for name in NAMES[: draw(st.integers(1, 4))]]
    made = named[0]
    for step in draw(st.lists(st.integers(0, 8), max_size=6)):
        other = named[step % len(named)]
        times = draw(st.integers(1, 5))
        match step:
            case 0:
                made = made + other
            case 1:
                made = made - other
            case 2:
                made = times * made
            case 3:
                made = made * Fraction(times, 3)
            case 4:
                made = made / times
            case 5:
                made = other * (made / other)
            case 6:
                made = total([made, other, other])
            case 7:
                made = (made * made + other * other).root()
            case 8:
                made = made * sine(
                    Angle(Fraction(30), constant("turn", Angle(Fraction(30)), GIVEN).made)
                )
    return made


@given(lengths_made())
def test_the_formula_of_any_length_gives_that_length_again(made):
    class One(Technique):
        title, family, summary = "One", "tests", "One."

        @value("made", difference=True)
        def made(self) -> Length:
            return made

    found = One().find("made")
    assert work_out(found.formula) == exact(found.amount)


@given(sixteenths, sixteenths)
def test_the_longest_and_the_shortest_print_as_endings(first, second):
    one, other = constant("one", first, GIVEN), constant("other", second, GIVEN)
    assert most(one, other) == max(first, second)
    assert least(one, other) == min(first, second)
    assert most(one, other).made.words[1] == ", at least "
    assert least(one, other).made.words[1] == ", at most "


def test_a_circle_is_said_with_pi_and_an_angle_with_its_sine():
    radius = constant("radius", inches(1), GIVEN)
    around = 2 * PI * radius
    assert float(around) == pytest.approx(2 * 3.14159265358979 * 25.4)
    assert "".join(word if isinstance(word, str) else word.label for word in around.made.words) == (
        "2 × π × radius"
    )
    turn = Angle(Fraction(60))
    assert float(cosine(turn)) == pytest.approx(0.5)
    assert float(sine(turn)) == pytest.approx(0.8660254037844386)


def test_a_count_is_counted_over_and_compares_with_plain_numbers():
    assert list(range(Count(3))) == [0, 1, 2]
    assert Count(3) == 3 and Count(3) > 2 and Count(3) - 1 == Count(2)
    assert Count(3) / 2 == Ratio(Fraction(3, 2))
    assert -Count(3) == Count(-3) and abs(-Count(3)) == Count(3)
    assert Count(3) != Ratio(Fraction(3))

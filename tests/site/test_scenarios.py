"""The project's own course and wardrobe: totals, seats that move alone, a size that moves all."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import Saying, Tape
from handout_engine.amounts.values import said
from handout_engine.bodies.measures import LENGTHS
from handout_engine.pages.fragments.kits import Packed
from handout_engine.pages.kits import Need, total
from handout_site.course import Course, Seat
from handout_site.course_work import work_course
from handout_site.library import entries, handout_names
from handout_site.scenario import Scenario, load_scenario
from small_sites import REPOSITORY

ENTRIES = entries(REPOSITORY / "handouts")
SIZES = [size for size in LENGTHS if 50 <= int(size) <= 80]
GROUPS = ("cloths", "lengths", "counts")


def scenario(name: str) -> Scenario:
    path = REPOSITORY / "scenarios" / f"{name}.yml"
    return load_scenario(path, path.name, handout_names(ENTRIES))


COURSE = scenario("course")


def packed(course: Course, of: Scenario = COURSE) -> tuple[Packed, ...]:
    worked = work_course(course, ENTRIES, of.terms, "course.yml")
    assert worked.slips == []
    return worked.seats


@pytest.fixture(scope="module")
def seats() -> tuple[Packed, ...]:
    assert COURSE.course is not None
    return packed(COURSE.course)


def millimetres(amount: Length | int) -> Fraction:
    return amount.mm if isinstance(amount, Length) else Fraction(amount)


def test_the_course_has_six_lessons_and_eight_seats_of_different_sizes_and_cloths():
    course = COURSE.course
    assert course is not None
    assert (len(course.lessons), len(course.seats)) == (6, 8)
    assert len({seat.fit["size"] for seat in course.seats}) >= 6
    assert len({seat.cloths["cloth"] for seat in course.seats}) >= 3


def test_the_class_buys_the_sum_of_its_seats_and_a_tenth_more(seats: tuple[Packed, ...]):
    found = total([each.kit for each in seats], COURSE.course.spares)  # type: ignore[union-attr]
    for group in GROUPS:
        sums: Counter[object] = Counter()
        for seat in seats:
            needs: tuple[Need, ...] = getattr(seat.kit, group)
            for need in needs:
                sums[need.kind] += millimetres(need.amount)
        lines = getattr(found, group)
        assert {line.need.kind: millimetres(line.need.amount) for line in lines} == sums
        for line in lines:
            least = sums[line.need.kind] * Fraction(11, 10)
            step = line.need.step.mm if line.need.step else 1
            assert least <= millimetres(line.to_buy.amount) < least + step
    assert found.cloths
    assert found.counts


def test_the_spoken_amounts_of_the_seats_add_up_to_the_spoken_total(seats: tuple[Packed, ...]):
    """What stands on the kit lists, added by hand in eighths of a yard, stands on the class's."""
    for line in total([each.kit for each in seats]).cloths:
        eighths = [
            need.steps for seat in seats for need in seat.kit.cloths if need.kind == line.need.kind
        ]
        yards, rest = divmod(Fraction(sum(eighths), 8), 1)
        words = " ".join(str(part) for part in (yards, rest) if part) + " yd"
        assert Tape().say(line.need.amount, Saying.YARDAGE) == words


@settings(max_examples=6, deadline=None)
@given(some.integers(0, 2), some.sampled_from(SIZES))
def test_one_seat_s_size_moves_nothing_but_its_own_kit(place: int, size: str):
    course = COURSE.course
    assert course is not None
    three = replace(course, seats=course.seats[:3])
    seat = three.seats[place]
    other = replace(seat, fit={"size": size})
    changed = replace(three, seats=tuple(other if each is seat else each for each in three.seats))
    before, after = packed(three), packed(changed)
    for number in range(3):
        if number != place:
            assert before[number] == after[number]
    for group in GROUPS:
        moved = Counter({line.need.kind: line.need.steps for line in
                         getattr(total([each.kit for each in after]), group)})  # fmt: skip
        moved.subtract({line.need.kind: line.need.steps for line in
                        getattr(total([each.kit for each in before]), group)})  # fmt: skip
        own = Counter({need.kind: need.steps for need in getattr(after[place].kit, group)})
        own.subtract({need.kind: need.steps for need in getattr(before[place].kit, group)})
        assert +moved == +own
        assert -moved == -own


def sizes(packed: Packed) -> list[tuple[str, Length, Length]]:
    return [(each.name, each.width.length, each.length.length) for each in packed.every_piece]


@pytest.mark.parametrize("name", ["course", "baby"])
def test_another_size_changes_every_piece_that_is_cut_for_the_baby(name: str):
    """Each piece of each garment is another at the next size; what is not worn stays."""
    of = scenario(name)
    assert of.course is not None
    seat = Seat("The baby")
    small, large = (
        packed(replace(of.course, seats=(replace(seat, fit={"size": size}),)),
               replace(of, fit={}))[0]
        for size in ("62", "74")
    )  # fmt: skip
    assert [each.name for each in small.every_piece] == [each.name for each in large.every_piece]
    fixed = {"trim", "pad", "strap", "binding cloth for the strips"}
    same = {one[0] for one, two in zip(sizes(small), sizes(large), strict=True) if one == two}
    assert same <= fixed


def test_everything_of_the_wardrobe_is_made_to_her_measures():
    of = scenario("baby")
    assert of.course is not None
    (own,) = packed(of.course, of)
    values = [value for making in own.makings for working in making.workings.values()
              for value in working.inputs.values() if value.name in of.fit]  # fmt: skip
    assert {value.name for value in values} >= {"head", "neck", "chest", "size", "body_length"}
    for value in values:
        if isinstance(value.amount, Length):
            assert said(value, Tape("metric")).first == of.fit[value.name].replace(".0", "")

"""The reference's page on scenarios: every key, those of a course's lessons and seats with it."""

from __future__ import annotations

from collections.abc import Iterator

from handout_site import course
from handout_site.reference.writing import pairs
from handout_site.scenario import KEYS

NESTED = {
    f"Keys of a lesson (in `{course.LESSONS}`)": course.LESSON_KEYS,
    f"Keys of a seat (in `{course.SEATS}`)": course.SEAT_KEYS,
    f"Keys of `{course.SPARES}`": course.SPARE_KEYS,
}


def page() -> str:
    """The page as Markdown."""
    return "\n".join(_lines())


def _lines() -> Iterator[str]:
    yield "# Scenarios: reference\n"
    yield "A scenario is a file in `scenarios/`. It says who publishes which handouts, and for whom"
    yield "they are worked out. Every key of it may be left out; a lesson must have a title.\n"
    yield from pairs("Key", KEYS)
    for heading, keys in NESTED.items():
        yield f"\n## {heading}\n"
        yield from pairs("Key", keys)
    yield f"\nA course has at most {course.MOST_LESSONS} lessons and {course.MOST_SEATS} seats."

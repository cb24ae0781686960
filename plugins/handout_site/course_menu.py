"""Where the pages of a course or a wardrobe stand, among the site's sources and in its menu."""

from __future__ import annotations

from handout_site.course import Course, Seat

FOLDER, WARDROBE_FOLDER = "course/", "wardrobe/"
WARDROBE = f"{WARDROBE_FOLDER}index.md"
INDEX, KITS = f"{FOLDER}index.md", f"{FOLDER}kits.md"
CLASS, PREPARATION = f"{FOLDER}class.md", f"{FOLDER}preparation.md"
TITLES = {KITS: "All kits", CLASS: "For the whole class", PREPARATION: "To prepare"}


def lesson_address(number: int) -> str:
    """The address of a lesson's page among the site's sources."""
    return f"{FOLDER}lesson-{number}.md"


def kit_address(number: int) -> str:
    """The address of a kit's page among the site's sources."""
    return f"{FOLDER}kit-{number}.md"


def kit_title(seat: Seat) -> str:
    """The title of a kit."""
    return f"Kit: {seat.name}"


def sections(course: Course | None) -> dict[str, list[object]]:
    """What stands in the menu at the places for a course and for a wardrobe."""
    found: dict[str, list[object]] = {FOLDER: [], WARDROBE_FOLDER: []}
    if course is not None and course.wardrobe:
        found[WARDROBE_FOLDER] = [WARDROBE]
    elif course is not None:
        found[FOLDER] = _menu(course)
    return found


def has_place(nav: object) -> bool:
    """Whether the menu shows a course or a wardrobe."""
    return any(address in str(nav) for address in (INDEX, WARDROBE))


def _menu(course: Course) -> list[object]:
    lessons = [lesson_address(number) for number, _ in enumerate(course.lessons, 1)]
    kits = [kit_address(number) for number, _ in enumerate(course.seats, 1)]
    if not kits:
        return [INDEX, *lessons]
    return [INDEX, *lessons, {"Kits": [KITS, *kits]}, CLASS, PREPARATION]

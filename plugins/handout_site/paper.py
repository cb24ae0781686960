"""What a handout has on paper only: room for notes."""

from __future__ import annotations

from handout_engine.markup import element, html

NUMBERS = '<h2 id="where-the-numbers-come-from"'
LINES = 5


def with_notes(content: str) -> str:
    """A handout's HTML with lines to write on behind its text, before its numbers if it has them.

    A screen does not show them; assets/print.css does.
    """
    lines = (element("hr") for _ in range(LINES))
    notes = html(
        element("section", element("p", "Notes", class_="part-title"), *lines, class_="print-notes")
    )
    text, numbers, rest = content.partition(NUMBERS)
    return f"{text}{notes}\n{numbers}{rest}"

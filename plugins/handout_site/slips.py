"""What an author must mend: one sentence each, with file and line."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from mkdocs.exceptions import PluginError
from pymdownx.superfences import SuperFencesException

from handout_engine.drawing.markup import element, html

WAITING = "This block waits for another."


@dataclass(frozen=True, order=True)
class Slip:
    """Something wrong in a file that an author wrote."""

    file: str
    line: int
    text: str

    def __str__(self) -> str:
        """`handouts/ruffles/banded.md:14: banded-ruffle "sleeve": ...`."""
        return f"{self.file}:{self.line}: {self.text}"


class SlipsError(PluginError, SuperFencesException):  # type: ignore[misc]
    """All slips of a build at once.

    It is a PluginError so that MkDocs prints it without a traceback and fails, and a
    SuperFencesException because SuperFences swallows any other error of a formatter.
    """

    def __init__(self, slips: Iterable[Slip]) -> None:
        """Keep the slips in order of file and line."""
        self.slips = tuple(sorted(set(slips)))
        listed = "\n".join(f"  {slip}" for slip in self.slips)
        things = "one thing" if len(self.slips) == 1 else f"{len(self.slips)} things"
        super().__init__(f"nothing is published; {things} to mend:\n{listed}")


def error_box(sentences: Iterable[str]) -> str:
    """What an author sees in place of a block that cannot be worked out, and above its page."""
    items = [element("p", text) for text in sentences] or [element("p", WAITING)]
    title = element("p", "To mend", class_="admonition-title")
    return html(element("div", title, *items, class_="admonition failure"))

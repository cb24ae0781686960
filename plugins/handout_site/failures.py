"""What could not be done, in one sentence with its place, where a program would show its insides.

What an author can write wrong is refused where it is read. This is for what comes from elsewhere: a
full disk, a template that is missing, an address or a sign that Markdown stumbles over.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from os import PathLike, fsdecode, strerror
from urllib.parse import urlsplit

from jinja2 import TemplateError, TemplateNotFound, TemplateSyntaxError

from handout_site.slips import Slip

TOO_DEEP = "this is nested too deeply: lists in lists, or notes in notes"
WHERE = "run the build with --verbose to see where"
_ADDRESS = re.compile(r"(?:\w+:)?//[^\s()<>\"']+")
_DECLARATION = "<!["


@dataclass(frozen=True)
class Place:
    """A page that is being made: its file as messages show it, its text, and where that begins."""

    file: str = ""
    text: str = ""
    first_line: int = 1

    def line_of(self, found: str) -> int:
        """The first line of the file in which something stands; 1 where it stands in none."""
        for number, line in enumerate(self.text.split("\n"), self.first_line):
            if found in line:
                return number
        return 1

    def line_of_address(self) -> int | None:
        """The line of the first address that cannot be read; None where every one can."""
        for number, line in enumerate(self.text.split("\n"), self.first_line):
            for address in _ADDRESS.findall(line):
                try:
                    urlsplit(address)
                except ValueError:
                    return number
        return None


def not_done(error: OSError) -> str:
    """What could not be read or written, and why; of a copy it is the file that it goes to."""
    files = [each for each in (error.filename, error.filename2) if isinstance(each, str | PathLike)]
    name = _on_one_line(fsdecode(files[-1])) if files else "what was made"
    why = (error.strerror or strerror(error.errno or 0)) if error.errno else str(error)
    return f"{name} cannot be read or written: {why[:1].lower()}{why[1:]}"


def slip_of(error: Exception, place: Place) -> Slip | None:
    """An error of a page as something to mend in its file; None where it lies elsewhere."""
    if isinstance(error, TemplateSyntaxError) and error.filename:
        return Slip(error.filename, error.lineno, f"the template cannot be used: {error.message}")
    if not place.file or _is_of_files(error):
        return None
    if isinstance(error, RecursionError):
        return Slip(place.file, 1, TOO_DEEP)
    if isinstance(error, ValueError) and (line := place.line_of_address()) is not None:
        text = "an address cannot be read; look for a [ or ] behind its //"
        return Slip(place.file, line, text)
    if isinstance(error, AssertionError) and _DECLARATION in place.text:
        text = f"{_DECLARATION} begins something that is not ended; write &lt;! in its place"
        return Slip(place.file, place.line_of(_DECLARATION), text)
    return Slip(place.file, 1, f"the page cannot be made: {_said(error)}; {WHERE}")


def sentence_of(error: Exception) -> str:
    """An error that lies in no page, in one sentence."""
    if isinstance(error, OSError) and _is_of_files(error):
        return not_done(error)
    if type(error).__module__.startswith("playwright"):
        return f"Chromium cannot print the pages: {_said(error)}; without PDFs: HANDOUTS_PDF=0"
    return f"the site cannot be made: {_said(error)}; {WHERE}"


def _is_of_files(error: Exception) -> bool:
    """Whether an error is one of reading or writing; a missing template counts as one in Python."""
    return isinstance(error, OSError) and not isinstance(error, TemplateError)


def _said(error: Exception) -> str:
    """What an error says of itself, on one line."""
    if isinstance(error, TemplateNotFound):
        return f'there is no template "{_on_one_line(str(error.name or ""))}"'
    return _on_one_line((str(error).strip() or type(error).__name__).splitlines()[0])


def _on_one_line(text: str) -> str:
    return "".join(sign if sign.isprintable() else "?" for sign in text)

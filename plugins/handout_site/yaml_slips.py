"""What is probably wrong in YAML that cannot be read: the line to mend, and its cause in words.

A parser says where it could not go on, in words of its own; the slip often stands a line or more
above. So the lines around that place are looked at as their author sees them: names, colons,
indents, quotation marks and brackets.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cached_property

import yaml

from handout_engine.amounts.refusals import quoted

NO_COLON = "a colon and a space are missing between the name and its value"
NO_SPACE = "the colon needs a space behind it"
NO_SPACE_AFTER_DASH = "the - needs a space behind it"
COLON_IN_VALUE = (
    "the value has a colon in it, which reads as another field; put the value into quotation marks"
)
TOO_DEEP = (
    "the line begins further in than the field above, which has its value already; begin both at "
    "the same place, or put a value of several lines into quotation marks"
)
NO_SUCH_INDENT = (
    "the line begins where no line above begins; begin it exactly below those it belongs with"
)
UNEVEN = "the fields do not begin at the same place; begin all of them exactly below each other"
TAB = "there is a tab here; write spaces in its place"
UNCLOSED_MARK = "the quotation mark is not closed"
TEXT_BEHIND = (
    "there is more behind the closing mark; put quotation marks around all of the value, or none"
)
BACKSLASH = "a \\ has a meaning of its own between double quotation marks; use single ones"
NO_COMMA = "a comma is missing at the end of the line, or a bracket is not closed"
SECOND_PART = "a line of --- or ... ends everything; take it out"
DASH_AMONG_FIELDS = (
    "a line with - stands among fields; indent it below the field whose list it belongs to"
)
FIELD_AMONG_DASHES = (
    "a field stands among lines that begin with -; begin it with - as well, or move it"
)
LIST_BEHIND_NAME = "a list with - begins on the line below its name"
NO_NAME = "there is no name before the colon"
BRACES = "a value cannot begin with braces; put it into quotation marks"
NO_FIELDS = "this is not a list of fields"
UNREADABLE_SIGN = "there is a sign here that cannot be read; take it out"
UNREADABLE = "the line cannot be read"

_FIELD = re.compile(r"^(?P<indent>[ ]*)(?P<dash>(?:-[ ]+)*)(?P<name>[^\s#-][^#]*?):(?:[ ]+|$)")
_QUOTED_VALUE = re.compile(r"^[^'\"#]*(?::|-)[ ]+(?P<mark>['\"])(?P<rest>.*)$")
_BRACKETS = {"[": "]", "{": "}"}


@dataclass(frozen=True)
class Line:
    """One line of a document, as it looks."""

    number: int
    text: str

    @cached_property
    def indent(self) -> int:
        """How far in it begins."""
        return len(self.text) - len(self.text.lstrip(" "))

    @cached_property
    def field(self) -> re.Match[str] | None:
        """The name of a field with its colon, behind a dash where there is one."""
        return _FIELD.match(self.text)

    @property
    def name_at(self) -> int:
        """Where the name of its field begins, behind a dash."""
        return self.field.start("name") if self.field else self.indent

    @property
    def value(self) -> str:
        """What stands behind its name; nothing where it has none."""
        return self.text[self.field.end() :].strip() if self.field else ""

    @property
    def open_mark(self) -> bool:
        """Whether its value begins with a quotation mark that is not closed in the line."""
        found = _QUOTED_VALUE.match(self.text)
        if found is None:
            return False
        rest = found["rest"].replace("\\\\", "").replace('\\"', "").replace("''", "")
        return found["mark"] not in rest


def slip_in(text: str, error: yaml.YAMLError) -> tuple[int, str]:
    """The line that is probably wrong, from 1, and what is wrong in it."""
    if isinstance(error, yaml.reader.ReaderError):
        return text[: error.position].count("\n") + 1, UNREADABLE_SIGN
    if not isinstance(error, yaml.MarkedYAMLError):
        return 1, UNREADABLE
    return _Looking(text, error).found()


def slip_in_text(text: str) -> tuple[int, str]:
    """What is wrong in a document that is one text or one list where fields belong."""
    lines = _lines(text)
    first = lines[0] if lines else Line(1, "")
    if first.text.lstrip().startswith("-"):
        return first.number, NO_FIELDS
    return first.number, f"{NO_FIELDS}; {_without_colon(first)}"


def slip_in_wrapped(text: str, first: int) -> tuple[int, str]:
    """What is wrong where a value that begins in a line, from 1, goes on in the next."""
    line = next(each for each in _lines(text) if each.number > first)
    return line.number, _without_colon(line)


def slip_in_name(text: str, line: int) -> str:
    """What is wrong in a line, from 1, whose field has no plain name."""
    return BRACES if "{" in text.split("\n")[line - 1] else "a field's name must be plain words"


def _lines(text: str) -> list[Line]:
    """The lines that hold something, notes left out."""
    every = (Line(number, line) for number, line in enumerate(text.split("\n"), 1))
    return [each for each in every if each.text.strip() and not each.text.lstrip().startswith("#")]


def _without_colon(line: Line) -> str:
    """What a line lacks that should be a field and is none."""
    if re.match(r"\s*-[^\s-]", line.text):
        return NO_SPACE_AFTER_DASH
    return NO_SPACE if re.match(r"\s*(?:- )?[\w ]+:\S", line.text) else NO_COLON


class _Looking:
    """Looks for the slip behind an error of the parser."""

    def __init__(self, text: str, error: yaml.MarkedYAMLError) -> None:
        mark = error.problem_mark or error.context_mark
        self.problem = error.problem or ""
        self.context = error.context or ""
        self.number = mark.line + 1 if mark else 1
        self.column = mark.column if mark else 0
        self.opened = error.context_mark.line + 1 if error.context_mark else self.number
        self.opened_at = error.context_mark.column if error.context_mark else self.column
        self.text = text.split("\n")
        self.lines = [each for each in _lines(text) if each.number <= self.number]
        self.line = self.lines[-1] if self.lines else Line(self.number, "")

    def found(self) -> tuple[int, str]:
        """The line and the sentence."""
        ways = {
            "found character '\\t'": lambda: (self.number, TAB),
            "quoted scalar": self._quotation,
            "flow": self._brackets,
            "document": self._parts,
            "simple key": lambda: (self.opened, _without_colon(self._line(self.opened))),
            "mapping values": self._colon,
            "sequence entries": lambda: (self.number, LIST_BEHIND_NAME),
            "<block end>": self._end,
        }
        told = f"{self.context} {self.problem}"
        return next((way for words, way in ways.items() if words in told), self._first_sign)()

    def _quotation(self) -> tuple[int, str]:
        if "escape" in self.problem or "hexadecimal" in self.problem:
            return self.number, BACKSLASH
        return self.opened, UNCLOSED_MARK

    def _brackets(self) -> tuple[int, str]:
        opening = self._line(self.opened).text
        sign = opening[self.opened_at : self.opened_at + 1]
        closing = _BRACKETS.get(sign, "")
        if closing and closing in opening[self.opened_at :]:
            return self.opened, f"what stands between {sign} and {closing} needs commas in between"
        if self.number != self.opened and self.line.indent > Line(1, opening).indent:
            return self._above().number, NO_COMMA
        return self.opened, f"the {sign} is not closed; write {closing} at the end of the list"

    def _parts(self) -> tuple[int, str]:
        for line in self.lines:
            if line.text.startswith(("---", "...")) and line.number > 1:
                return line.number, SECOND_PART
        first = self.lines[0]
        alone = [each for each in self.lines if each.indent == first.indent][1:] == []
        return (first.number if alone else self.line.number), UNEVEN

    def _colon(self) -> tuple[int, str]:
        """A colon where there can be none: the second of a line, or one below a value."""
        field = self.line.field
        if field and field.end("name") < self.column:
            return self.line.number, COLON_IN_VALUE
        above = self._above()
        if above.open_mark:
            return above.number, UNCLOSED_MARK
        if above.field and above.name_at < self.line.name_at:
            return self.line.number, TOO_DEEP
        if above.field is None and not self._is_wrapped(above):
            return above.number, _without_colon(above)
        return self.line.number, TOO_DEEP

    def _is_wrapped(self, line: Line) -> bool:
        """Whether a line goes on with the value of a field above it."""
        for each in reversed([each for each in self.lines if each.number < line.number]):
            if each.field:
                return bool(each.value) and each.name_at < line.indent
        return False

    def _end(self) -> tuple[int, str]:
        """Something that belongs to nothing above it."""
        opened = [each for each in self.lines[:-1] if each.open_mark]
        if opened:
            return opened[-1].number, UNCLOSED_MARK
        found = self.problem.rpartition("found ")[2].strip("'")
        if found in {"<scalar>", "[", "{"}:
            return self.number, TEXT_BEHIND
        if found in _BRACKETS.values():
            return self.number, f"there is a {found} too many"
        if found == "-":
            return self.number, DASH_AMONG_FIELDS
        if found == ":":
            return self.number, NO_NAME
        known = {each.indent for each in self.lines[:-1]}
        begins = self.line.indent in known
        return self.number, FIELD_AMONG_DASHES if begins else NO_SUCH_INDENT

    def _first_sign(self) -> tuple[int, str]:
        """A value that begins with a sign that means something else there."""
        number, column = (
            (self.opened, self.opened_at)
            if any(word in self.context for word in ("alias", "anchor", "tag", "block scalar"))
            else (self.number, self.column)
        )
        if "directive" in self.context:
            number, column = self.opened, 0
        sign = self._line(number).text[column : column + 1]
        return number, first_sign(sign) if sign else UNREADABLE

    def _line(self, number: int) -> Line:
        return Line(number, self.text[number - 1] if number <= len(self.text) else "")

    def _above(self) -> Line:
        return self.lines[-2] if len(self.lines) > 1 else self.line


def first_sign(sign: str) -> str:
    """What to say of a value that begins with a sign that is not taken as text there."""
    return f"a value cannot begin with {quoted(sign)}; put it into quotation marks"

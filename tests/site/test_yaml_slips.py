"""A slip in YAML is told with the line that is wrong and its likely cause, in an author's words."""

from __future__ import annotations

import re

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from handout_site import yaml_slips as said
from handout_site.front_matter import front_matter_slips
from handout_site.mappings import DocumentError, read_mapping
from small_sites import REPOSITORY

JARGON = re.compile(
    r"mapping|scalar|token|sequence|\bflow\b|stream|\bkey\b|\bblock\b|\bnode|directive|anchor|"
    r"alias|\btag\b|parsing|scanning|YAML|document",
    re.IGNORECASE,
)

SLIPS = {
    "colon in a value": ("technique: hem\nedge: 9 in: about\nmake: 2", 2, said.COLON_IN_VALUE),
    "colon at the end of a value": ("technique: hem\nedge: 9 in:\nmake: 2", 2, said.COLON_IN_VALUE),
    "colon in a value of a list": ("- a: b\n- c: d: e", 2, said.COLON_IN_VALUE),
    "no colon, first": ("technique hem\nedge: 9 in\nmake: 2", 1, said.NO_COLON),
    "no colon, between": ("technique: hem\nedge 9 in\nmake: 2", 2, said.NO_COLON),
    "no colon, last": ("technique: hem\nmake: 2\nedge 9 in", 3, said.NO_COLON),
    "no colon, further in": ("measures:\n  head 44 cm\n  neck: 22 cm", 2, said.NO_COLON),
    "equals sign": ("technique = hem\nedge: 9 in", 1, said.NO_COLON),
    "semicolon": ("technique; hem\nedge: 9 in", 1, said.NO_COLON),
    "no space, first": ("technique:hem\nedge: 9 in\nmake: 2", 1, said.NO_SPACE),
    "no space, between": ("technique: hem\nedge:9 in\nmake: 2", 2, said.NO_SPACE),
    "no space, last": ("technique: hem\nmake: 2\nedge:9 in", 3, said.NO_SPACE),
    "no space behind a dash": ("lessons:\n  -title: a\n    aim: b", 2, said.NO_SPACE_AFTER_DASH),
    "indent": ("technique: hem\n edge: 9 in\nmake: 2", 2, said.TOO_DEEP),
    "indent of a field in a list": ("- title: a\n   aim: b", 2, said.TOO_DEEP),
    "first line indented": ("  technique: hem\nedge: 9 in\nmake: 2", 1, said.UNEVEN),
    "last line not indented": ("  technique: hem\n  edge: 9 in\nmake: 2", 3, said.UNEVEN),
    "indent between two": ("measures:\n  head: 44 cm\n neck: 22 cm", 3, said.NO_SUCH_INDENT),
    "tab": ("technique: hem\n\tedge: 9 in\nmake: 2", 2, said.TAB),
    "tab behind a colon": ("technique:\themed\nmake: 2", 1, said.TAB),
    "quotation mark": ('technique: hem\nedge: "9 in\nmake: 2', 2, said.UNCLOSED_MARK),
    "quotation mark closed by another": ('edge: "9 in\nhem: "double"', 1, said.UNCLOSED_MARK),
    "text behind quotation marks": ("title: 'the baby's gown'\ntime: 1 h", 1, said.TEXT_BEHIND),
    "inches as a quotation mark": ('edge: "9" wide\nmake: 2', 1, said.TEXT_BEHIND),
    "backslash": ('title: "a\\qb"\ntime: 1 h', 1, said.BACKSLASH),
    "bracket": ("show: [cuts, steps\nedge: 9 in\nmake: 2", 1, "the [ is not closed"),
    "brace": ("cloths: {front: lawn\nsize: 62", 1, "the { is not closed"),
    "bracket too many": ("show: [cuts]]\nedge: 9 in", 1, "there is a ] too many"),
    "text behind a bracket": ("show: [cuts] steps\nedge: 9 in", 1, said.TEXT_BEHIND),
    "comma at the end of a line": ("c: {a: white lawn\n    b: lawn}", 1, said.NO_COMMA),
    "percent": ("title: %b\ntime: 1 h", 1, "cannot begin with %"),
    "at": ("time: 1 h\ntitle: @b", 2, "cannot begin with @"),
    "code mark": ("time: 1 h\ntitle: `b`", 2, "cannot begin with `"),
    "one star": ("title: *Bib*\ntime: 1 h", 1, "cannot begin with *"),
    "two stars": ("title: **Bib** new\ntime: 1 h", 1, "cannot begin with *"),
    "and": ("title: & more\ntime: 1 h", 1, "cannot begin with &"),
    "exclamation mark": ("time: 1 h\ntitle: !new", 2, "cannot begin with !"),
    "angle": ("title: >new\ntime: 1 h", 1, "cannot begin with >"),
    "upright line": ("title: | new\ntime: 1 h", 1, "cannot begin with |"),
    "a value to put in": ("title: {{ a.b }}\ntime: 1 h", 1, said.BRACES),
    "second part": ("technique: hem\n---\nedge: 9 in", 2, said.SECOND_PART),
    "end mark": ("technique: hem\n...\nedge: 9 in", 2, said.SECOND_PART),
    "dash among fields": ("technique: hem\n- edge\nmake: 2", 2, said.DASH_AMONG_FIELDS),
    "list behind a name": ("show: - cuts\nedge: 9 in", 1, said.LIST_BEHIND_NAME),
    "field among dashes": ("show:\n  - cuts\n  edge: 9 in\n", 3, said.FIELD_AMONG_DASHES),
    "no name": (": hem\nedge: 9 in", 1, said.NO_NAME),
    "text alone": ("hem 9 in", 1, said.NO_COLON),
    "text alone without a space": ("edge:9 in", 1, said.NO_SPACE),
    "a sign that is none": ("technique: hem\nedge: \x00", 2, said.UNREADABLE_SIGN),
    "half of a sign": ('technique: hem\nedge: "\\ud800"', 2, said.UNREADABLE_SIGN),
}


def refusal(text: str, *, wraps: bool = True) -> DocumentError:
    with pytest.raises(DocumentError) as caught:
        read_mapping(text, "such as this", 200_000, wraps=wraps)
    return caught.value


@pytest.mark.parametrize(("text", "line", "cause"), SLIPS.values(), ids=SLIPS)
def test_a_slip_names_its_line_and_its_cause(text: str, line: int, cause: str):
    found = refusal(text)
    assert (found.line, cause) == (line, cause if cause in found.message else found.message)
    assert not JARGON.search(found.message)


def test_a_line_of_a_block_without_its_colon_is_no_part_of_the_value_above():
    found = refusal("technique: hem\n  edge 9 in\nmake: 2", wraps=False)
    assert (found.line, found.message) == (2, f"{said.NO_COLON}; such as this")
    assert read_mapping("aim: A curve\n  is bound.", "", wraps=True).fields


def test_front_matter_is_told_in_the_same_words():
    slips = front_matter_slips("---\ntitle: Bib\nsummary: A bib: bound\n---\n# Bib\n", "bib.md")
    assert [(each.line, said.COLON_IN_VALUE in each.text) for each in slips] == [(3, True)]


# What is made wrong at any line of documents that are right, by the line as it was.

FIELD = re.compile(r"^( *(?:- )?[\w ]+): ([\w][^:{}\[\]]*)$")
DOCUMENTS = {
    "block": (
        "technique: banded-ruffle\nname: sleeve\nedge: 9 in\nshows: 1 1/2 in\nband: 1/4 in\n"
        "show: [cuts, drawing, steps]\n"
    ),
    "front matter": (
        "title: Bib\nsummary: A bib with a bound edge, for every day.\npractice: First project\n"
        "time: An afternoon\n"
    ),
    "course": (REPOSITORY / "scenarios" / "course.yml").read_text(encoding="utf-8"),
    "baby": (REPOSITORY / "scenarios" / "baby.yml").read_text(encoding="utf-8"),
}
MADE_WRONG = {
    said.COLON_IN_VALUE: lambda name, value: f"{name}: {value}: {value}",
    said.NO_COLON: lambda name, value: f"{name} {value}",
    said.NO_SPACE: lambda name, value: f"{name}:{value}",
    said.TAB: lambda name, value: f"{name}:\t{value}",
    said.UNCLOSED_MARK: lambda name, value: f'{name}: "{value}',
    "is not closed": lambda name, value: f"{name}: [{value}",
    said.TEXT_BEHIND: lambda name, value: f'{name}: "{value}" {value}',
    "cannot begin with @": lambda name, value: f"{name}: @{value}",
    "cannot begin with *": lambda name, value: f"{name}: *{value}*",
    said.LIST_BEHIND_NAME: lambda name, value: f"{name}: - {value}",
}


@given(st.sampled_from(sorted(DOCUMENTS)), st.sampled_from(list(MADE_WRONG)), st.data())
def test_a_slip_in_any_line_is_found_there(document: str, cause: str, data: st.DataObject):
    lines = DOCUMENTS[document].split("\n")
    fields = {number: found for number, line in enumerate(lines) if (found := FIELD.match(line))}
    number = data.draw(st.sampled_from(sorted(fields)))
    name, value = fields[number].groups()
    # What stands alone in a list or below a name reads as text where it has no colon: what is
    # wrong with that is said by those who expected fields there.
    alone = "- " in name or lines[number - 1].endswith(":")
    assume(not (cause in {said.NO_COLON, said.NO_SPACE} and alone))
    lines[number] = MADE_WRONG[cause](name, value)
    found = refusal("\n".join(lines), wraps=document != "block")
    assert (found.line, cause in found.message) == (number + 1, True), found.message
    assert not JARGON.search(found.message)

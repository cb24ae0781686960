"""The reader's form as a tree: the build and the browser make the very same one.

`data-usual` of a control holds what it shows while the reader has changed nothing.
"""

from __future__ import annotations

from collections.abc import Iterable
from xml.etree.ElementTree import Element

from handout_engine.amounts.inputs import BODY, MEASURES
from handout_engine.drawing.markup import element
from handout_engine.pages.questions import Asked, Question, Section

LONGEST = "200"
ASLEEP = (
    "This form needs JavaScript, and a page that comes from a web server. The page itself is "
    "complete for the measures shown here."
)


def form(asked: Asked) -> Element:
    """The form of a page, folded; its controls are disabled until the page's script has it."""
    first, *others = asked.sections
    body = element(
        "fieldset",
        _section(first),
        *(_folded(section) for section in others),
        _section(asked.settings()),
        element(
            "div",
            element("p", ASLEEP, class_="form-status", role="status"),
            element("button", "Work it out", type="submit"),
            " ",
            element("button", "Undo all changes", type="reset"),
            class_="form-foot",
        ),
        class_="form-body",
        disabled="disabled",
    )
    summary = element("summary", "Work this page out for your own measures")
    return element(
        "form",
        element("details", summary, body),
        id="handout-form",
        class_="handout-form",
        autocomplete="off",
        novalidate="novalidate",
    )


def chosen(asked: Asked) -> Element:
    """One line, on screen and in print: whose measures the page shows."""
    sections = asked.sections
    unused = set(asked.unused())
    changed = [
        f"{question.label} {question.text.strip() or 'left out'}"
        + (f" ({section.name})" if len(sections) > 1 else "")
        for section in sections
        for question in section.questions
        if question.changed and question.name not in unused
    ]
    words = "Worked out with the measures of this page."
    if changed:
        words = f"Worked out with your own measures: {'; '.join(changed)}."
    return element("p", words, class_="handout-chosen")


def _section(section: Section) -> Element:
    return element(
        "fieldset", element("legend", section.title), *_inside(section), class_="form-section"
    )


def _folded(section: Section) -> Element:
    """A section after the first: folded, so that a page of many blocks has a short form."""
    inside = element("fieldset", *_inside(section), aria_label=section.title)
    return element("details", element("summary", section.title), inside, class_="form-section")


def _inside(section: Section) -> list[Element]:
    groups: dict[str, list[Question]] = {}
    for question in section.questions:
        groups.setdefault(question.group, []).append(question)
    error = _error(f"my-{section.name}-error", section.error)
    first = next((title for title in ("", BODY, MEASURES) if title in groups), "")
    return [
        error,
        *(_group(title, each, folded=title != first) for title, each in groups.items()),
    ]


def _group(title: str, questions: Iterable[Question], *, folded: bool) -> Element:
    """A group of questions; all but the first, the measures, are folded away."""
    fields = element("div", *(_field(each) for each in questions), class_="form-group")
    if not folded:
        return fields
    return element("details", element("summary", title), fields)


def _field(question: Question) -> Element:
    label = question.label[:1].upper() + question.label[1:]
    return element(
        "div",
        element("label", label, for_=question.identity),
        _control(question),
        _read_as(question),
        _error(f"{question.identity}-error", question.error),
        element("p", question.hint, id=f"{question.identity}-hint", class_="form-hint"),
        class_="form-field",
    )


def _read_as(question: Question) -> Element | None:
    """Where it is said back how a number without a unit was read; nothing beside a list."""
    if question.choices:
        return None
    return element(
        "output",
        question.read_as,
        id=f"{question.identity}-read",
        for_=question.identity,
        class_="form-read",
    )


def _error(identity: str, text: str) -> Element:
    return element("p", text, id=identity, class_="form-error", role="alert")


def _control(question: Question) -> Element:
    identity = question.identity
    attributes = {
        "id": identity,
        "name": question.name,
        "data_usual": question.usual,
        "aria_describedby": f"{identity}-hint {identity}-error",
        "aria_invalid": "true" if question.error else "false",
    }
    if not question.choices:
        if question.in_use:
            attributes["placeholder"] = question.in_use
        return element(
            "input",
            type="text",
            value=question.text,
            maxlength=LONGEST,
            spellcheck="false",
            autocapitalize="off",
            enterkeyhint="done",
            **attributes,
        )
    options = [element("option", words, value=value) for value, words in question.choices]
    for option in options:
        if option.get("value") == question.text:
            option.set("selected", "selected")
    return element("select", *options, **attributes)

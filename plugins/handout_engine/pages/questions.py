"""What the reader's form asks: the declared inputs of a page's blocks, and what each holds now.

A question is named `block.input`. A garment's size and measures will join as a section of their
own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from handout_engine.amounts.inputs import BODY, Input, declared_inputs
from handout_engine.amounts.kinds import ChoiceKind
from handout_engine.amounts.reading import UNITS
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Amount, Saying, Tape
from handout_engine.amounts.values import Value
from handout_engine.bodies.measures import BODY_LENGTH, SIZE
from handout_engine.pages.authored import FINEST, PAPERS, SYSTEMS, Authored, Choices
from handout_engine.pages.blocks import REFERENCE, Block, Written
from handout_engine.pages.page import Page
from handout_engine.pages.problems import Problem
from handout_engine.pages.sized import OF_THE_BABY
from handout_engine.register import find

METRIC = {word for word, factor in UNITS.items() if factor.denominator == 1}
PAPER_NAMES = {"a4": "A4, 210 × 297 mm", "letter": "Letter, 8 1/2 × 11 in"}
_ORIGIN = {BODY: "table"}
"""What an empty box calls the amount in use: a baby's measure comes from the body table."""
SYSTEM_NAMES = {"inches": "inches, metric beside", "metric": "metric, inches beside"}


@dataclass(frozen=True)
class Question:
    """One control: its name, what it asks, what it holds, and what is wrong with that.

    `usual` is what it holds while nothing is changed. `choices` (value and words of each) is
    empty where the reader writes a text. `group` is the heading under which it stands. `in_use`
    says what is reckoned with while it is empty, `read_as` how a number without a unit was read.
    """

    name: str
    label: str
    hint: str
    usual: str
    text: str
    group: str = ""
    choices: Sequence[tuple[str, str]] = ()
    error: str = ""
    in_use: str = ""
    read_as: str = ""

    @property
    def identity(self) -> str:
        """The id of the control; its hint and its error have it too, with an ending."""
        return "my-" + self.name.replace(".", "-")

    @property
    def changed(self) -> bool:
        """Whether the reader has asked for something else than the page's author."""
        return self.text != self.usual


@dataclass(frozen=True)
class Section:
    """A titled set of questions, and what is wrong with all of them together."""

    name: str
    title: str
    questions: Sequence[Question]
    error: str = ""


@dataclass(frozen=True)
class Asked:
    """A page with a reader's choices, worked out.

    `own` is the page as its author made it, `told` the same with the reader's tape and paper.
    `written` are her choices as she wrote them, with a unit missing here and there.
    """

    own: Authored
    told: Authored
    choices: Choices
    page: Page
    written: Choices = field(default_factory=dict)

    @cached_property
    def sections(self) -> list[Section]:
        """One section for each block that works something out."""
        return [self._section(block) for block in self.own.blocks if block.technique]

    def settings(self) -> Section:
        """Units, fractions and paper."""
        own, told = self.own, self.told
        systems = [(each, SYSTEM_NAMES[each]) for each in SYSTEMS]
        finest = [(str(each), f"1/{each} in") for each in FINEST]
        papers = [(each, PAPER_NAMES[each]) for each in PAPERS]
        units = Question(
            "units",
            "units",
            "Which comes first; the other stands beside it.",
            own.tape.first,
            told.tape.first,
            choices=systems,
        )
        mark = Question(
            "finest",
            "finest fraction",
            "The smallest mark on your tape measure.",
            str(own.tape.finest),
            str(told.tape.finest),
            choices=finest,
        )
        paper = Question(
            "paper", "paper", "What you print on.", own.paper, told.paper, choices=papers
        )
        return Section("settings", "Units and paper", (units, mark, paper))

    def unused(self) -> Iterator[str]:
        """The questions whose answers go for nothing: a size, where a body length is written."""
        held = {each.name: each.text for section in self.sections for each in section.questions}
        for block in self.own.blocks:
            if held.get(f"{block.name}.{BODY_LENGTH}", "").strip():
                yield f"{block.name}.{SIZE}"

    def taken_along(self) -> dict[str, str]:
        """What a page of another size takes along: all that is changed, but nothing of the baby."""
        garments = {block.name for block in self.own.blocks if block.is_garment}
        of_the_baby = {f"{block}.{name}" for block in garments for name in OF_THE_BABY}
        return {
            question.name: question.text
            for section in (*self.sections, self.settings())
            for question in section.questions
            if question.changed and question.name not in of_the_baby
        }

    def _section(self, block: Block) -> Section:
        technique = find(block.technique)
        questions = [self._question(block, each) for each in self.own.questions(block).values()]
        names = {question.name for question in questions}
        loose = [
            plain_sentence(problem, block)
            for problem in self.page.problems
            if problem.block == block.name and f"{block.name}.{problem.field}" not in names
        ]
        title = technique.title
        if not block.name.startswith(block.technique):
            title += f": {block.name}"
        return Section(block.name, title, questions, " ".join(loose))

    def _question(self, block: Block, asked: Input) -> Question:
        written = self.own.written(block, asked)
        usual = self._usual(asked, written)
        text = self.choices.get(block.name, {}).get(asked.name, usual)
        if not text.strip():
            text = "" if asked.default is None else usual
        errors = [
            plain_sentence(problem, block)
            for problem in self.page.problems
            if (problem.block, problem.field) == (block.name, asked.name)
        ]
        sent = self.written.get(block.name, {}).get(asked.name, text)
        left_empty = self._left_empty(block, asked, text)
        return Question(
            name=f"{block.name}.{asked.name}",
            label=asked.label,
            hint=self._hint(asked, written, left_empty),
            usual=usual,
            text=text,
            group=asked.group,
            choices=_options(asked),
            error=" ".join(errors),
            in_use=f"{_ORIGIN.get(asked.group, 'usual')}: {left_empty}" if left_empty else "",
            read_as=f"Read as {text}." if sent.strip() and sent != text else "",
        )

    def _usual(self, asked: Input, written: Written | None) -> str:
        """What a control holds before it is changed, in the units of the reader's tape."""
        tape = self.told.tape
        if written is None:
            return ""
        text = written if isinstance(written, str) else "; ".join(written)
        if REFERENCE.fullmatch(text.strip()):
            value = self._referred(written)
            return _said(value.amount, asked.kind.saying, tape) if value else ""
        try:
            said = _said(asked.kind.read(text), asked.kind.saying, tape)
        except RefusalError:
            return text
        return text if _in_units_of(text, tape) or said.startswith("under") else said

    def _referred(self, written: Written | None) -> Value | None:
        """The value that an author's reference speaks of, as it is on the page now."""
        match = REFERENCE.fullmatch(written.strip()) if isinstance(written, str) else None
        working = self.page.workings.get(match["block"]) if match else None
        return working.named.get(match["value"]) if match and working else None

    def _left_empty(self, block: Block, asked: Input, text: str) -> str:
        """What is reckoned with while a control is empty, where that hangs on the others."""
        technique = self.page.techniques.get(block.name)
        if asked.default is not None or technique is None:
            return ""
        if asked.name not in technique.usual:
            return "" if text.strip() else self._noted_in_use(block, asked)
        try:
            empty = technique.with_inputs(**{asked.name: None}) if text.strip() else technique
        except RefusalError:
            return ""
        return _said(getattr(empty, asked.name), asked.kind.saying, self.told.tape)

    def _noted_in_use(self, block: Block, asked: Input) -> str:
        """What the technique itself settled on for an input that was left out, if it noted that."""
        working = self.page.workings.get(block.name)
        value = working.values.get(asked.in_use) if working else None
        return _said(value.amount, asked.kind.saying, self.told.tape) if value else ""

    def _hint(self, asked: Input, written: Written | None, left_empty: str) -> str:
        """The help of an input with its bounds, and what holds when it is left alone."""
        hint = [asked.help]
        if not isinstance(asked.kind, ChoiceKind):
            bounds = asked.kind.bounds(self.told.tape)
            hint.append(f"{bounds[:1].upper()}{bounds[1:]}.")
        value = self._referred(written)
        if value and isinstance(written, str):
            hint.append(f"Follows “{value.label}” of {written.partition('.')[0].strip()}.")
        if asked.otherwise:
            here = f" (here {left_empty})" if left_empty else ""
            hint.append(f"Left empty: {asked.otherwise}{here}.")
        return " ".join(hint)


def _said(amount: Amount, saying: Saying, tape: Tape) -> str:
    """An amount as a control holds it: the items of a list with `;`, which every list reads."""
    if isinstance(amount, tuple):
        return "; ".join(tape.say(each, saying) for each in amount)
    return tape.say(amount, saying)


def plain_sentence(problem: Problem, block: Block) -> str:
    """A problem as it stands beside its field: the names that only authors know become labels."""
    text = problem.text.removeprefix(f"{block.title}: ").removeprefix(f"{problem.field}: ")
    return _with_labels(text, declared_inputs(find(block.technique)))


def _with_labels(text: str, inputs: Sequence[Input]) -> str:
    for asked in inputs:
        if "_" in asked.name:
            text = text.replace(asked.name, asked.label)
    return text


def _options(asked: Input) -> list[tuple[str, str]]:
    names = asked.kind.choices if isinstance(asked.kind, ChoiceKind) else ()
    return [(name, name) for name in names]


def _in_units_of(text: str, tape: Tape) -> bool:
    """Whether a text is written in the tape's first system, or has no unit."""
    words = {word.strip("0123456789 /.,-") for word in text.replace(";", " ").split()}
    units = words & UNITS.keys()
    return not units or bool(units & METRIC) == (tape.first == "metric")

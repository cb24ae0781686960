"""The ways out that a refusal names, taken: whoever writes what it says is not refused for it.

A refusal such as `band 2 in is ...; use at most 1/4 in (6 mm), or a depth of at least 3 in` makes
three promises: 1/4 in will do, 6 mm will do, and so will a depth of 3 in. Each figure in its advice
is read, tied to the input (or inputs) that it speaks of, and written. The sheet made with it must
not be refused for the same reason, nor because that input does not go so far. A figure that cannot
be read so is a fault too, and so is a negative one anywhere in the sentence.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import ChoiceKind, Kind, Quantity, Raw
from handout_engine.amounts.lengths import Length, inches, millimetres
from handout_engine.amounts.list_kinds import SeveralKind
from handout_engine.amounts.refusals import RefusalError, RefusalsError
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Working

NUMBER = r"\d+(?: \d+/\d+|/\d+|\.\d+)?"
FIGURE = rf"{NUMBER}(?: (?:in|yd|mm|cm|m|tex|deg)\b| %|°)?(?![\w/.]\w)"
SAID = re.compile(rf"(?<![\w./-])(?P<first>{FIGURE})(?: \((?P<other>{FIGURE})\))?")
NEGATIVE = re.compile(r"(?<![\w.)/-])-\d")
ADVICE = re.compile(
    r"(?:; |\(|: |, |\. |, so |, and )"
    r"(?=(?:use|make|give|set|write|cut|let|want|trim|sew|stitch)\b)",
    re.IGNORECASE,
)
EXAMPLE = re.compile(r"as in (.+)$")
CLAUSE = re.compile(r"[,;:(]| or ")
COMPARED = re.compile(
    r"\b(?P<by>at most|at least|(?:less|narrower|smaller|more|wider|longer) than)"
    r"(?: (?:its|the|half|a quarter)\b[^,;]*,)? $"
)
EXACTLY = re.compile(
    rf"\b(?:use|trim it to|a number from|from {FIGURE} to)(?: {FIGURE}(?: \({FIGURE}\))? or)? $"
)
BELOW, ABOVE = {"less than", "narrower than", "smaller than"}, {"more than", "wider than",
                                                                "longer than"}  # fmt: skip


@dataclass(frozen=True)
class Way:
    """What to write for which inputs: a figure, or a mark of the tape beyond it (1 or -1)."""

    fields: tuple[str, ...]
    figure: str
    beyond: int = 0
    also: tuple[tuple[str, str], ...] = ()

    def written(self, kinds: Mapping[str, Kind]) -> Mapping[str, Raw]:
        """The inputs to write."""
        kind = kinds[self.fields[0]]
        raw: Raw = self.figure
        if self.beyond:
            assert isinstance(kind, Quantity)
            raw = _beyond(kind.parse(self.figure), self.figure, self.beyond)
        return {**dict.fromkeys(self.fields, raw), **dict(self.also)}


def check_way_out(
    technique: type[Technique], written: Mapping[str, Raw], refusal: RefusalError
) -> None:
    """Assert that every way out that a refusal names is one."""
    found = list(faults(technique, written, refusal))
    assert not found, found


def faults(
    technique: type[Technique], written: Mapping[str, Raw], refusal: RefusalError
) -> Iterator[str]:
    """What is wrong with a refusal's figures, each fault a sentence."""
    if NEGATIVE.search(refusal.message):
        yield f"{refusal.message}: it names a negative figure"
    kinds = {each.name: each.kind for each in declared_inputs(technique)}
    for way in ways(refusal, kinds):
        if way is None:
            yield f"{refusal.message}: a figure of its advice cannot be read"
            continue
        again = worked(technique, {**written, **way.written(kinds)})
        wrong = _wrong(refusal, again) if isinstance(again, RefusalError) else ""
        if wrong:
            yield f"{refusal.message}: {', '.join(way.fields)} {way.figure}: {wrong}"


def worked(technique: type[Technique], written: Mapping[str, Raw]) -> Working | RefusalError:
    """The working, or the first refusal."""
    try:
        return make(technique, written).work()
    except RefusalsError as several:
        return several.refusals[0]
    except RefusalError as refusal:
        return refusal


def ways(refusal: RefusalError, kinds: Mapping[str, Kind]) -> Iterator[Way | None]:
    """Every figure of the advice as something to write, None for one that is no advice."""
    begins = ADVICE.search(refusal.message)
    advice = refusal.message[begins.end() :] if begins else ""
    blamed = kinds.get(refusal.field or "")
    example = EXAMPLE.search(advice)
    if example and refusal.field:
        yield Way((refusal.field,), example[1])
        advice = advice[: example.start()]
    if isinstance(blamed, ChoiceKind) and refusal.field:
        for choice in blamed.choices:
            if re.search(rf"(?<![\w-]){re.escape(choice)}(?![\w-])", advice):
                yield Way((refusal.field,), choice)
                advice = advice.replace(choice, "")
        advice = re.sub(r"\d+/\d+", "", advice) if any(map(str.isdigit, advice)) else advice
    for said in SAID.finditer(advice):
        before, after = advice[: said.start()], advice[said.end() :]
        if isinstance(blamed, SeveralKind) and after.startswith(f" {refusal.field}"):
            continue  # so many of a list: which ones, only its author can say
        if re.search(r"\w+: \S+ with \w+: $", before):
            continue  # the second half of two that are written together
        yield from _read(before, said, after, refusal, kinds)


def _read(
    before: str, said: re.Match[str], after: str, refusal: RefusalError, kinds: Mapping[str, Kind]
) -> Iterator[Way | None]:
    """One figure, in both its units."""
    fitting = {name for name, kind in kinds.items() if _holds(kind, said["first"])}
    labelled = re.search(r"(\w+): $", before)
    together = re.match(rf" with (\w+): ({FIGURE})", after)
    if labelled and labelled[1] in fitting:
        yield Way((labelled[1],), said["first"], also=(together.groups(),) if together else ())
        return
    fields = _fields(before, after, fitting) or (refusal.field or "",)
    compared = COMPARED.search(before)
    if not (compared or EXACTLY.search(before) or after.startswith(" or more")):
        yield None
        return
    if not set(fields) <= fitting:
        yield None
        return
    by = compared["by"] if compared else ""
    beyond = -1 if by in BELOW else 1 if by in ABOVE else 0
    for figure in filter(None, said.groups()):
        yield Way(fields, figure, beyond)


def _holds(kind: Kind, figure: str) -> bool:
    """Whether an input of this kind can be written with such a figure, whatever its bounds."""
    if not isinstance(kind, Quantity):
        return False
    try:
        kind.parse(figure)
    except RefusalError:
        return False
    return True


def _fields(before: str, after: str, fitting: Collection[str]) -> tuple[str, ...]:
    """The inputs that a figure is said of: named right behind it, or before it in its clause."""
    behind = re.match(r" (?:for |of )?(\w+)(?: and (\w+))?", after)
    if behind and behind[1] in fitting:
        return tuple(name for name in behind.groups() if name in fitting)
    clause = CLAUSE.split(COMPARED.sub("", before))[-1]
    named = [word for word in re.findall(r"\w+", clause) if word in fitting]
    return (named[-1],) if named else ()


def _beyond(amount: object, figure: str, steps: int) -> Raw:
    """A mark of the tape more or less than what is said."""
    if isinstance(amount, Length):
        mark = inches("1/32") if figure.endswith(" in") else millimetres(1)
        if figure.endswith(" mm") and "." in figure:
            mark = millimetres("0.01")
        return amount + mark * steps
    assert isinstance(amount, int | Fraction)
    return amount + (1 if isinstance(amount, int) else Fraction(1, 100)) * steps


def _wrong(refusal: RefusalError, again: RefusalError) -> str:
    """Why a way is none, when it is refused in its turn; empty where that is another matter."""
    if again.__traceback__ is None:
        return f"it cannot be written ({again.message})"
    if (_site(again), again.field) == (_site(refusal), refusal.field):
        return f"refused again ({again.message})"
    return ""


def _site(refusal: RefusalError) -> tuple[str, int]:
    """Where in the code it was said: the same reason, whatever its figures and its words."""
    trace = refusal.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    assert trace is not None, "what was read as an input is refused before it is worked with"
    return trace.tb_frame.f_code.co_filename, trace.tb_lineno

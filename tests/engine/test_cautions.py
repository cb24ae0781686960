"""Every caution of the trade appears where it applies, plainly worded, with its source.

`WORDS` walks the whole register, with every choice of every technique: what a page tells its reader
to buy, cut and sew names the thing that a caution is about. `PLACES` holds what no word gives away.
A new technique is taken in by the first without being named here.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

import pytest

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import ChoiceKind
from handout_engine.amounts.refusals import RefusalError
from handout_engine.amounts.saying import Tape
from handout_engine.working import cautions
from handout_engine.working.cautions import Caution
from handout_engine.working.workings import Working
from worked import work

KEYS = register.keys()
EVERY = {each.key: each for each in vars(cautions).values() if isinstance(each, Caution)}


@dataclass(frozen=True)
class Rule:
    """A caution of the trade's list: what a page speaks of, and the keys one of which it has."""

    about: str
    words: str
    keys: frozenset[str]


def rule(about: str, words: str, *keys: str) -> Rule:
    return Rule(about, rf"\b(?:{words})\b", frozenset(keys))


WORDS = (
    rule("buttons: small parts, sew-on strength", "buttons?", "buttons-small-parts",
         "knots-small-parts"),
    rule("beads, pearls and knots: small parts",
         "beads?|pearls|for the knots|french knots?|bullions?", "knots-small-parts",
         "worked-knots", "buttons-small-parts"),
    rule("ribbons, ties: neck cords", "ribbons?|ties|drawstrings?", "neck-cords"),
    rule("button loops: fingers and cords", "button loops?", "loops-catch"),
    rule("press fasteners and snaps: small parts, lead and nickel", "press fasteners?|snaps?",
         "fasteners-small-parts", "old-buttons"),
    rule("loose thread ends inside sleeves and socks", "gather(?:ed|ing)", "loose-threads"),
    rule("lace and eyelets that catch fingers", "lace|eyelets?|beading|entredeux", "lace-catches",
         "open-lattice"),
    rule("lattice that catches fingers", "lattice", "open-lattice"),
    rule("quilts, pillows and shawls: nothing loose in the cot", "quilt\\w*|pillows?|batting|shawl",
         "nothing-loose-in-the-cot"),
    rule("elastic that is too tight", "elastic", "tight-elastic"),
    rule("a bonnet comes off", "bonnet", "bonnet-comes-off"),
    rule("a bib comes off", "bib", "bib-comes-off"),
    rule("a wing needle strikes the plate", "wing needle", "wing-needle"),
    rule("a twin needle breaks", "twin needles?", "needle-breaks"),
    rule("pins counted, blades and hot irons", "pins?|press|iron|needles?|stitch|sew",
         "pins-and-iron"),
)  # fmt: skip

FAMILIES = {
    "thin cotton burns fast": (
        "thin-cotton", {"ruffles", "tucks", "pleats", "lace", "seams", "smocking"},
        {"fullness-advice", "fullness-sample", "twin-needle-clearance", "fagoted-band"},
    ),
    "pins counted, blades and hot irons": (
        "pins-and-iron", {register.find(key).family for key in KEYS}, set(),
    ),
    "a ruffle is not sleepwear": (
        "not-sleepwear", {"ruffles"}, {"fullness-advice", "fullness-sample"},
    ),
    "lace, eyelets and beading catch fingers": ("lace-catches", {"lace"}, set()),
    "a hem below the foot trips": ("long-hem", {"pleats"}, set()),
}  # fmt: skip
"""What a whole family carries: the caution, the families, and the members that only advise."""

PLACES = [
    ("open-lattice", "lattice-panel", {}),
    ("knots-small-parts", "lattice-panel", {"knots": "every crossing"}),
    ("not-sleepwear", "gathered-edging", {}),
    ("neck-cords", "bias-tube", {}),
    ("neck-cords", "button-loops", {}),
    ("neck-cords", "beading-ribbon", {}),
    ("nothing-under-the-harness", "layered-ruffle", {}),
    ("long-hem", "growth-tuck", {}),
    ("needle-breaks", "pin-tucks", {}),
    ("needle-breaks", "needle-numbers", {"kind": "twin"}),
    ("wing-needle", "needle-numbers", {"kind": "wing", "size": "120/19"}),
    ("wing-needle", "fine-seams", {"seam": "pin stitch"}),
    ("wing-needle", "gathered-ruffle", {"edge_seam": "pin stitch"}),
    ("loose-threads", "fine-seams", {"seam": "rolled and whipped gathers"}),
    ("thin-cotton", "cloth-adviser", {"cloth": "batiste"}),
    ("raised-cloth", "cloth-adviser", {"cloth": "flannel"}),
    ("lace-catches", "shawl-square", {"lace_width": "5/8 in"}),
]


@cache
def workings(key: str) -> tuple[Working, ...]:
    """The technique as it is, and once with each other choice that it offers."""
    written = [{}]
    for asked in declared_inputs(register.find(key)):
        if isinstance(asked.kind, ChoiceKind):
            written += [{asked.name: each} for each in asked.kind.choices if each != asked.default]
    return tuple(each for each in (worked(key, choice) for choice in written) if each)


def worked(key: str, choice: dict[str, str]) -> Working | None:
    """What is made; None where a choice asks for another measure beside it."""
    try:
        return work(key, **choice)
    except RefusalError:
        return None


@cache
def pages(key: str) -> tuple[tuple[str, set[str]], ...]:
    """Of each working, what its page tells its reader and the cautions that it has."""
    return tuple((spoken(each), keys_of(each)) for each in workings(key))


def spoken(working: Working) -> str:
    """All that a page tells its reader to have ready, to cut and to do."""
    return "\n".join(_spoken(working)).lower()


def _spoken(working: Working) -> Iterator[str]:
    tape, technique = Tape(), register.find(working.technique)
    yield from (technique.title, technique.summary)
    for step in (*working.sample, *working.steps):
        yield step.text.text(tape)
        if step.checkpoint:
            yield step.checkpoint.text(tape)
    yield from (supply.name for supply in working.supplies)
    yield from (f"{piece.name} {piece.cloth}" for piece in working.pieces)


def keys_of(working: Working) -> set[str]:
    return {caution.key for caution in working.cautions}


@pytest.mark.parametrize("each", WORDS, ids=lambda each: each.about)
@pytest.mark.parametrize("key", KEYS)
def test_what_a_page_speaks_of_it_cautions_about(key, each):
    for said, found in pages(key):
        if re.search(each.words, said):
            assert each.keys & found, each.about


@pytest.mark.parametrize("about", FAMILIES)
def test_a_whole_family_carries_its_caution(about):
    wanted, families, advisers = FAMILIES[about]
    without = {
        key
        for key in KEYS
        if register.find(key).family in families
        and key not in advisers
        and wanted not in keys_of(work(key))
    }
    assert without == set()


@pytest.mark.parametrize(("wanted", "key", "written"), PLACES)
def test_a_caution_that_no_word_gives_away_is_there(wanted, key, written):
    assert wanted in keys_of(work(key, **written))


@pytest.mark.parametrize("each", WORDS, ids=lambda each: each.about)
def test_each_rule_meets_something_in_the_register(each):
    """A rule that nothing speaks of would test nothing."""
    met = [key for key in KEYS for said, _ in pages(key) if re.search(each.words, said)]
    assert met, each.words
    assert each.keys <= EVERY.keys()


def test_every_caution_is_used_by_some_technique():
    used = {key for each in KEYS for working in workings(each) for key in keys_of(working)}
    assert EVERY.keys() - used == set()


def test_no_two_cautions_share_a_key_or_a_text():
    found = [each for each in vars(cautions).values() if isinstance(each, Caution)]
    assert len({each.key for each in found}) == len({each.text for each in found}) == len(found)


@pytest.mark.parametrize("key", EVERY)
def test_a_caution_is_plainly_worded(key):
    """Whole sentences of common length, no shouting, no number of a law in the running text."""
    text = EVERY[key].text
    assert text[0].isupper()
    assert text.endswith(".")
    assert "!" not in text
    assert not re.search(r"\b(?:CFR|EN|ASTM)\b|must comply|guarantee", text)
    assert not re.search(r"\b[A-Z]{3,}\b", text)
    for sentence in re.split(r"[.;:] ", text):
        assert len(sentence.split()) <= 45, sentence


@pytest.mark.parametrize(
    ("key", "source"),
    [
        ("buttons-small-parts", "cfr-1501"),
        ("knots-small-parts", "cfr-1501"),
        ("worked-knots", "cfr-1501"),
        ("fasteners-small-parts", "cfr-1501"),
        ("neck-cords", "cfr-1120"),
        ("neck-cords", "en-14682"),
        ("bonnet-comes-off", "en-14682"),
        ("bib-comes-off", "en-14682"),
        ("not-sleepwear", "cfr-1615"),
        ("thin-cotton", "cfr-1610"),
        ("raised-cloth", "cfr-1610"),
    ],
)
def test_a_caution_that_rests_on_a_rule_names_it(key, source):
    assert source in {each.key for each in EVERY[key].sources}


@pytest.mark.parametrize("key", KEYS)
def test_each_caution_stands_once(key):
    for working in workings(key):
        assert len(keys_of(working)) == len(working.cautions)

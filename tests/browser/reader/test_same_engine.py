"""The engine in the browser answers as the engine that built the site does, byte for byte.

Every technique in the register is asked, with its defaults and with random inputs, in one page.
"""

from __future__ import annotations

import json
import random
from collections import Counter
from collections.abc import Iterator, Mapping
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from handout_engine import register
from handout_engine.amounts.inputs import declared_inputs
from handout_engine.amounts.kinds import Kind, PercentageKind, Raw, ThreadCountKind
from handout_engine.amounts.lengths import Length
from handout_engine.amounts.saying import Tape
from handout_engine.pages.authored import FINEST, PAPERS, SYSTEMS, authored, to_json
from handout_engine.pages.blocks import read_block
from handout_engine.pages.browser import answer
from handout_engine.pages.page import Page, work_page
from handout_engine.register import find, keys
from reader_page import OpenTabs
from thoroughness import SEARCHING
from written_inputs import inputs_of

EACH = 60 if SEARCHING else 4
"""So many random questions are asked of each technique and garment."""
GARMENTS = set(register.garment_keys())
ASK = """async ([script, files, questions]) => {
    const { Engine } = await import(script);
    const engine = (window.engineOfTests ??= new Engine(files));
    return Promise.all(questions.map((question) => engine.askText(question)));
}"""
"""Asks the one engine of all these tests, since it takes long to start."""


def written(raw: Raw, kind: Kind) -> str:
    """An amount as text that reads back as exactly the same."""
    if isinstance(raw, Length):
        return f"{raw.mm} mm"
    if isinstance(raw, Fraction) and isinstance(kind, PercentageKind):
        return f"{raw * 100} %"
    if isinstance(raw, Fraction) and isinstance(kind, ThreadCountKind):
        return f"{raw} tex"
    if isinstance(raw, list | tuple):
        return "; ".join(written(each, kind) for each in raw)
    return str(raw)


def page_of(key: str) -> Page:
    """A page with one block, of that technique or garment."""
    word = "garment" if key in GARMENTS else "technique"
    return work_page([read_block({word: key, "name": "it"})], Tape())


def question(technique: str, inputs: Mapping[str, Raw], tape: Tape = Tape()) -> str:  # noqa: B008
    """A page with one block of that technique, and a reader who has written these inputs."""
    kinds = {each.name: each.kind for each in declared_inputs(find(technique))}
    texts = {name: written(raw, kinds[name]) for name, raw in inputs.items()}
    page = page_of(technique)
    asked = {
        "page": json.loads(to_json(authored(page, "a4", {}, []))),
        "choices": {"it": {name: text for name, text in texts.items() if len(text) <= 200}},
        "tape": {"first": tape.first, "finest": tape.finest},
    }
    return json.dumps(asked)


def random_questions(technique: str) -> list[str]:
    """Questions with random inputs, the same at every run; some of them are refused."""
    found: list[str] = []
    tapes = st.builds(Tape, st.sampled_from(SYSTEMS), st.sampled_from(FINEST))

    @settings(max_examples=EACH, deadline=None, database=None,
              suppress_health_check=list(HealthCheck))  # fmt: skip
    @given(inputs_of(find(technique)), tapes)
    def draw(inputs: Mapping[str, Raw], tape: Tape) -> None:
        found.append(question(technique, inputs, tape))

    draw()
    return found


@pytest.fixture
def ask(tabs: OpenTabs) -> Iterator[object]:
    """Puts many questions to one engine in the browser."""
    reader = tabs.open()
    data = reader.page.locator("#handout-page")
    root = data.evaluate("each => new URL(each.dataset.root, location.href).href")
    folder = reader.page.locator('script[src*="reader.js"]').evaluate(
        'each => each.src.replace("reader.js", "")'
    )
    files = {
        "worker": folder + "worker.js",
        "runtime": root + data.get_attribute("data-runtime"),
        "archive": root + data.get_attribute("data-archive"),
    }
    yield lambda questions: reader.page.evaluate(ASK, [folder + "engine.js", files, questions])


def test_every_technique_is_answered_byte_for_byte_as_here(ask) -> None:
    asked = [(key, each) for key in keys() for each in (question(key, {}), *random_questions(key))]
    random.Random(0).shuffle(asked)
    here = [answer(each) for _, each in asked]
    worked_out = Counter(
        key for (key, _), one in zip(asked, here, strict=True) if "fragments" in json.loads(one)
    )
    for key in keys():
        assert worked_out[key] >= EACH / 8, f"nearly all random inputs of {key} are refused"
    there = ask([each for _, each in asked])
    for (_, each), one, other in zip(asked, here, there, strict=True):
        assert one == other, each


def test_the_fragment_in_the_browser_is_the_one_the_site_is_built_with(ask) -> None:
    pages = [page_of(key) for key in keys()]
    answered = ask([question(key, {}) for key in keys()])
    for page, told in zip(pages, answered, strict=True):
        assert json.loads(told)["fragments"] == [page.fragment(0)]


def test_true_scale_sheets_in_the_browser_are_the_ones_of_the_site(ask) -> None:
    """Every sheet that any technique or garment has, on both papers in turn."""
    asked, here = [], []
    for number, key in enumerate(keys()):
        paper = PAPERS[number % len(PAPERS)]
        page = page_of(key)
        own = json.loads(to_json(authored(page, "a4", {}, [])))
        for address, sheet in page.sheets().items():
            asked.append(json.dumps({"page": own, "sheet": address, "paper": paper}))
            here.append(sheet.document(paper, Tape()))
    assert len(here) >= 15
    assert [json.loads(told)["sheet"] for told in ask(asked)] == here

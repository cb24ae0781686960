"""What the reader's browser asks of the engine: one question in JSON, one answer in JSON.

A question holds the page as its author made it (`authored.to_json`), the reader's texts by block
and field, her tape and her paper:

    {"page": {...}, "choices": {"sleeve": {"band": "3/8 in"}}, "tape": {"first": "metric"},
     "paper": "letter"}

A length without a unit is one of the tape's first system, in inches or centimetres; the form says
back what it was read as.

The answer always holds the form, the line that says what was chosen, and the problems. Only when
there are none does it hold the page: the fragments in order of the blocks, the inline values, the
addresses of true-scale sheets, under which the fragments link to them, and whom it is made to: in
words, and as the row of sizes with what a page of another size takes along. So a page never shows
the half of an answer.

A question with such an address as its `sheet` is answered with that sheet alone, as an HTML
document whose pages are of her paper: `{"sheet": "<!DOCTYPE html>..."}`, or null if there is none.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from handout_engine.drawing.markup import html
from handout_engine.pages.authored import Authored, Choices, from_plain, read_paper, read_tape
from handout_engine.pages.fragments.form import chosen, form
from handout_engine.pages.fragments.size_choice import size_choice
from handout_engine.pages.made_to import made_to
from handout_engine.pages.page import Page
from handout_engine.pages.problems import Problem
from handout_engine.pages.questions import Asked, plain_sentence

LONGEST_TEXT = 200
MOST_TEXTS = 400


def answer(question: str) -> str:
    """Work a page out anew; raises ValueError, KeyError or TypeError for a malformed question."""
    asked = json.loads(question)
    own = from_plain(asked["page"])
    told = replace(
        own,
        tape=read_tape(asked.get("tape"), own.tape),
        paper=read_paper(asked.get("paper"), own.paper),
    )
    written = known_choices(own, asked.get("choices"))
    choices = told.with_units(written)
    page = told.work(choices)
    if "sheet" in asked:
        return json.dumps({"sheet": _sheet(page, asked["sheet"], told.paper)})
    read = Asked(own, told, choices, page, written)
    said: dict[str, Any] = {
        "form": html(form(read)),
        "chosen": html(chosen(read)),
        "problems": [_problem(each, own) for each in page.problems],
    }
    if not page.problems:
        said["fragments"] = [page.fragment(number) for number in range(len(page.blocks))]
        said["values"] = {reference: page.inline(reference) for reference in own.inlines}
        said["sheets"] = list(page.sheets())
        said.update(_sizes(read))
    return json.dumps(said, separators=(",", ":"))


def _sizes(read: Asked) -> dict[str, Any]:
    """All that names a size beside the blocks: nothing of it on a page without a garment."""
    made = made_to(read.page)
    if made is None:
        return {}
    sizes = html(size_choice(read.own.pages, made)) if read.own.pages else ""
    return {"made_to": made.words, "sizes": sizes, "taken_along": read.taken_along()}


def _sheet(page: Page, address: object, paper: str) -> str | None:
    """The true-scale sheet with that address, ready to print."""
    sheet = page.sheets().get(str(address))
    return sheet.document(paper, page.tape) if sheet else None


def _problem(problem: Problem, page: Authored) -> dict[str, str]:
    blocks = [each for each in page.blocks if each.technique and each.name == problem.block]
    text = plain_sentence(problem, blocks[0]) if blocks else problem.text
    return {"block": problem.block, "field": problem.field, "text": text}


def known_choices(page: Authored, plain: object) -> Choices:
    """The texts that a reader may have written: known blocks and fields, none overlong."""
    written = _mapping(plain)
    choices: dict[str, dict[str, str]] = {}
    left = MOST_TEXTS
    for block in page.blocks:
        texts = _mapping(written.get(block.name))
        for name in page.questions(block):
            text = texts.get(name)
            if isinstance(text, str) and len(text) <= LONGEST_TEXT and left:
                choices.setdefault(block.name, {})[name] = text
                left -= 1
    return choices


def _mapping(plain: object) -> Mapping[str, Any]:
    return plain if isinstance(plain, Mapping) else {}

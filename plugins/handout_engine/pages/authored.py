"""A page as its author made it, in a form that travels with the page to the reader's browser."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Literal, get_args

from handout_engine.amounts.inputs import Input, declared_inputs
from handout_engine.amounts.saying import Finest, System, Tape
from handout_engine.pages.blocks import GARMENT, SIZES, Block, Written, read_block
from handout_engine.pages.ordering import named
from handout_engine.pages.page import Page, work_page
from handout_engine.pages.problems import Inline
from handout_engine.pages.sized import is_followed
from handout_engine.register import find

Paper = Literal["a4", "letter"]
PAPERS: tuple[Paper, ...] = get_args(Paper)
SYSTEMS: tuple[System, ...] = get_args(System)
FINEST: tuple[Finest, ...] = get_args(Finest)

Choices = Mapping[str, Mapping[str, str]]
"""What a reader has written: texts by block and field. An empty text takes the author's back."""


@dataclass(frozen=True)
class Authored:
    """The blocks of a page, each with its name, and what else the page is worked out with.

    `inlines` are the references of its inline values, `pages` the addresses of the handout at each
    of its sizes, by size. `tape` and `paper` are the publisher's, or those that a reader has
    chosen.
    """

    blocks: tuple[Block, ...]
    tape: Tape = field(default_factory=Tape)
    paper: Paper = "a4"
    defaults: Mapping[str, str] = field(default_factory=dict)
    inlines: tuple[str, ...] = ()
    pages: Mapping[str, str] = field(default_factory=dict)

    def questions(self, block: Block) -> dict[str, Input]:
        """The inputs a reader may change in a block; none in a block that only shows parts.

        What a second garment takes from the first of the page is asked for there.
        """
        if not block.technique:
            return {}
        declared = declared_inputs(find(block.technique))
        return {each.name: each for each in declared if not is_followed(block, each.name)}

    def written(self, block: Block, asked: Input) -> Written | None:
        """What an input holds before a reader changes it; None when it is left out."""
        return block.fields.get(asked.name, self.defaults.get(asked.name, asked.default))

    def with_units(self, choices: Choices) -> Choices:
        """A reader's choices, every bare length with the unit of the system that she has chosen."""
        asked = {block.name: self.questions(block) for block in self.blocks if block.technique}
        return {
            block: {
                name: asked[block][name].kind.with_units(text, self.tape.first)
                for name, text in texts.items()
            }
            for block, texts in choices.items()
        }

    def work(self, choices: Choices) -> Page:
        """The page worked out with a reader's choices; unknown blocks and fields do nothing."""
        blocks = [self._chosen(block, choices.get(block.name, {})) for block in self.blocks]
        inlines = [Inline(reference) for reference in self.inlines]
        return work_page(blocks, self.tape, self.defaults, inlines)

    def _chosen(self, block: Block, texts: Mapping[str, str]) -> Block:
        """The block with a reader's texts; an emptied input that may be left out is left out."""
        fields = dict(block.fields)
        for name, asked in self.questions(block).items():
            text = texts.get(name)
            if text is not None and text.strip():
                fields[name] = text
            elif text is not None and asked.default is None:
                fields.pop(name, None)
        return replace(block, fields=fields)


def authored(
    page: Page,
    paper: Paper,
    defaults: Mapping[str, str],
    inlines: Sequence[Inline],
    pages: Mapping[str, str] | None = None,
) -> Authored:
    """The page that the site has worked out, as it is handed to the reader's browser."""
    references = tuple(dict.fromkeys(inline.reference for inline in inlines))
    return Authored(page.blocks, page.tape, paper, dict(defaults), references, dict(pages or {}))


def to_json(page: Authored) -> str:
    """The page as JSON that can stand inside an HTML script element."""
    written: dict[str, Any] = {
        "blocks": [_block_to_plain(block) for block in page.blocks],
        "inlines": page.inlines,
        "tape": {"first": page.tape.first, "finest": page.tape.finest},
        "paper": page.paper,
        "defaults": page.defaults,
        "pages": page.pages,
    }
    text = json.dumps(written, separators=(",", ":"), sort_keys=True)
    return text.replace("&", "\\u0026").replace("<", "\\u003c").replace(">", "\\u003e")


def _block_to_plain(block: Block) -> dict[str, Any]:
    fields = {
        name: text if isinstance(text, str) else list(text) for name, text in block.fields.items()
    }
    kind = GARMENT if block.is_garment else "technique"
    name = "" if block.name == GARMENT else block.name
    plain = {kind: block.technique, "name": name, "of": block.of, SIZES: list(block.sizes)}
    return {**fields, **{key: text for key, text in plain.items() if text}, "show": block.show}


def from_plain(plain: Mapping[str, Any]) -> Authored:
    """The page from what `to_json` wrote, parsed."""
    return Authored(
        blocks=named([read_block(fields) for fields in plain["blocks"]]),
        tape=read_tape(plain["tape"], Tape()),
        paper=read_paper(plain["paper"], PAPERS[0]),
        defaults=plain["defaults"],
        inlines=tuple(plain["inlines"]),
        pages=plain["pages"],
    )


def read_tape(plain: object, usual: Tape) -> Tape:
    """A tape that a reader has chosen; what is not a choice stays as usual."""
    chosen = plain if isinstance(plain, Mapping) else {}
    first = next((each for each in SYSTEMS if each == chosen.get("first")), usual.first)
    finest = next((e for e in FINEST if str(e) == str(chosen.get("finest"))), usual.finest)
    return Tape(first, finest)


def read_paper(plain: object, usual: Paper) -> Paper:
    """A paper that a reader has chosen; what is not a choice stays as usual."""
    return next((each for each in PAPERS if each == plain), usual)

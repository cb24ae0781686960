"""Puts the reader's form into a page: folded under the title, with what its script needs."""

from __future__ import annotations

import re

from handout_engine.drawing.markup import element, html
from handout_engine.pages.authored import PAPERS, authored, read_paper, to_json
from handout_engine.pages.fragments.form import chosen, form
from handout_engine.pages.questions import Asked
from handout_site.reading import Handout
from handout_site.runtime import Runtime
from handout_site.scenario import Scenario

_TITLE = re.compile(r"</h1>\s*(?:<p>.*?</p>\s*)?", re.DOTALL)


def with_form(
    content: str, handout: Handout, scenario: Scenario, runtime: Runtime, url: str
) -> str:
    """A page's HTML with the form below its title and first sentence.

    `url` is the page's address from the site's root. A page that works nothing out, or that has
    slips, is given back as it is.
    """
    if handout.slips or not any(block.technique for block in handout.page.blocks):
        return content
    title = _TITLE.search(content)
    place = title.end() if title else 0
    return content[:place] + _form(handout, scenario, runtime, url) + content[place:]


def _form(handout: Handout, scenario: Scenario, runtime: Runtime, url: str) -> str:
    root = "../" * url.count("/")
    paper = read_paper(scenario.paper, PAPERS[0])
    own = authored(handout.page, paper, handout.inputs, handout.inlines, handout.sizes)
    asked = Asked(own, own, {}, handout.page)
    data = element(
        "script",
        to_json(own),
        id="handout-page",
        type="application/json",
        data_root=root or "./",
        data_runtime=runtime.python,
        data_archive=runtime.archive,
    )
    parts = [
        element("link", rel="stylesheet", href=f"{root}{runtime.reader}reader.css"),
        chosen(asked),
        form(asked),
        data,
        element("script", type="module", src=f"{root}{runtime.reader}reader.js"),
    ]
    return "\n".join(html(part) for part in parts) + "\n"

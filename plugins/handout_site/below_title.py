"""What stands below the title of a page that is made to a size or for a seat."""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element

from handout_engine.drawing.markup import element, html
from handout_site.reading import Handout

_TITLE = re.compile(r"</h1>\s*")


def below_title(content: str, note: Element) -> str:
    """A page's HTML with a note below its title; before all else where it has no title."""
    title = _TITLE.search(content)
    place = title.end() if title else 0
    return f"{content[:place]}{html(note)}\n{content[place:]}"


def cannot_be_made(title: str, words: str, handout: Handout) -> str:
    """What stands on a page whose handout cannot be made: `words` say so, then why."""
    reasons = [element("p", problem.text) for problem in handout.page.problems]
    heading = element("p", words, class_="admonition-title")
    note = element("div", heading, *reasons, class_="admonition warning")
    return f"{html(element('h1', title))}\n{html(note)}"

"""Links and pictures of a page that lead nowhere, found without building a site.

The page is made into HTML as MkDocs makes it, without its blocks, and its links are held against
the files that there are. What is found is what MkDocs warns of, and a strict build fails for.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from html import unescape
from posixpath import dirname, join, normpath
from typing import Any
from urllib.parse import unquote, urlsplit
from xml.etree.ElementTree import Element

from markdown import Markdown
from markdown.treeprocessors import Treeprocessor
from markdown.util import AMP_SUBSTITUTE
from mkdocs.utils.meta import get_data

from handout_site.reading import Terms, whole_markdown
from handout_site.slips import Slip

BEHIND_ALL = 0
_PLACE = re.compile(r'\s(?:id|name)="([^"]+)"')
_ABOVE = "../"
_LINKING = {"a": "href", "img": "src"}
_NAMES = {"a": "link", "img": "picture"}


@dataclass(frozen=True)
class Link:
    """A link or a picture as it is written: the kind of its element, and where it leads."""

    tag: str
    address: str

    def __str__(self) -> str:
        """`the picture "ruffle.png"`."""
        return f'the {_NAMES[self.tag]} "{self.address}"'


@dataclass(frozen=True)
class Reach:
    """What a page can lead to.

    `find` gives what reads the file at an address, which is asked of pages only; None where there
    is no file. `pictures` is the folder in which an author puts what is no page, as messages show
    it. `closed` says that there is nothing else: otherwise, what lies above all files is not
    judged.
    """

    find: Callable[[str], Callable[[], str] | None]
    extensions: list[Any]
    configs: dict[str, Any]
    pictures: str
    closed: bool
    _written: dict[str, set[str]] = field(default_factory=dict)
    _places: dict[str, set[str]] = field(default_factory=dict)

    def slips(self, address: str, text: str, shown: str) -> Iterator[Slip]:
        """What leads nowhere on the page at an address; messages show it as `shown`."""
        links, self._written[address] = self._read(get_data(text)[0])
        for link in links:
            reason = self._dead_end(link, address)
            if reason:
                for line in _lines(text, link.address):
                    yield Slip(shown, line, f"{link} {reason}")

    def _dead_end(self, link: Link, page: str) -> str:
        """Why a link of a page leads nowhere; nothing if it does lead somewhere."""
        try:
            parts = urlsplit(link.address)
        except ValueError:
            return "is no address that can be read"
        if parts.scheme or parts.netloc or AMP_SUBSTITUTE in link.address:
            return ""
        if link.address.startswith(("/", "\\")):
            return "begins at the top of a server; write where it leads from this page"
        target = normpath(join(dirname(page), unquote(parts.path))) if parts.path else page
        read = self.find(target)
        if read is None:
            unknown = target.startswith(_ABOVE) and not self.closed
            place = f"; its place is {self.pictures}{target}" if link.tag == "img" else ""
            return "" if unknown else f"leads to a file that is not there{place}"
        if not parts.fragment or not target.endswith(".md"):
            return ""
        there = self._has_place(target, parts.fragment, read)
        return "" if there else f'leads to a place that is not there: "#{parts.fragment}"'

    def _has_place(self, page: str, place: str, read: Callable[[], str]) -> bool:
        """Whether a page has a place: one that is written, or one in a section that comes to it."""
        if page not in self._written:
            self._written[page] = self._read(get_data(read())[0])[1]
        if place in self._written[page]:
            return True
        if page not in self._places:
            whole = whole_markdown(get_data(read())[0], page, Terms())
            self._places[page] = self._read(whole)[1]
        return place in self._places[page]

    def _read(self, markdown: str) -> tuple[list[Link], set[str]]:
        """The links of a page, and the places on it that links can lead to."""
        parser = Markdown(extensions=self.extensions, extension_configs=self.configs)
        links: list[Link] = []
        parser.treeprocessors.register(_Noting(links), "handout-links", BEHIND_ALL)
        html = parser.convert(markdown)
        return links, {unescape(place) for place in _PLACE.findall(html)}


class _Noting(Treeprocessor):
    """Notes all links of a page, each once, while it is made into HTML."""

    def __init__(self, links: list[Link]) -> None:
        super().__init__()
        self.links = links

    def run(self, root: Element) -> None:
        """Note the links, which are finished by now."""
        for part in root.iter():
            address = part.get(_LINKING.get(part.tag, ""))
            if address and Link(part.tag, address) not in self.links:
                self.links.append(Link(part.tag, address))


def _lines(text: str, address: str) -> list[int]:
    """The lines on which an address is written; the first, if it is written in another way."""
    lines = text.split("\n")
    link = re.compile(rf"\]\({re.escape(address)}[)\s\"']")
    written = [number for number, line in enumerate(lines, 1) if link.search(f"{line}\n")]
    return written or [number for number, line in enumerate(lines, 1) if address in line][:1] or [1]

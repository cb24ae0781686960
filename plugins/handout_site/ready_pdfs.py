"""A PDF of each handout and booklet, ready to download: printed by Chromium where it is.

A PDF is made of what stands on paper only, the article of a page and its styles, and is kept
between builds under a name made from just that: a change in the menu prints nothing again. Where a
site has no address of its own, links to other pages are left out, since they would lead nowhere.
"""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, field
from hashlib import sha256
from importlib.util import find_spec
from io import BytesIO
from pathlib import Path, PurePosixPath
from typing import Protocol
from urllib.parse import unquote, urljoin

from handout_site.kept_files import kept as kept_file
from handout_site.kept_files import put

KEPT = "ready"
MADE = "tagged, with settled names"
"""How PDFs are made; changed with it, so that those kept from before are made anew."""
DATE = b"(D:20000101000000+00'00')"
"""What each file says of when it was made: the clock would make every build another."""
NOWHERE = "http://handouts.invalid/"
"""Stands for the address of a site that does not say its own; no name ends so on any network."""
PROGRAMS = ("chromium", "chromium-browser", "google-chrome")
NO_PACKAGES = (
    "PDFs of the handouts are left out, since the packages for them are not installed: "
    'pip install "heirloom-handouts[pdf]"'
)
NO_BROWSER = (
    "PDFs of the handouts are left out, since there is no Chromium; on Debian: "
    "apt-get install chromium"
)
MOST_ROUNDS = 3

_DATES = re.compile(rb"\(D:\d{14}\+00'00'\)")
_NODES = re.compile(rb"\(node(\d{8})\)")
_ROOTS = re.compile(r"<(?:html|body)\b[^>]*>")
_TITLE = re.compile(r"<title>.*?</title>", re.DOTALL)
_STYLES = re.compile(r'<link rel="stylesheet" href="([^"]+)"[^>]*>|<style>.*?</style>', re.DOTALL)
_ARTICLE = re.compile(r"<article\b.*</article>", re.DOTALL)
_SCREEN_ONLY = re.compile(
    r'<script\b.*?</script>|<form id="handout-form".*?</form>|<link\b[^>]*>'
    r'|<p class="[^"]*screen-only">.*?</p>|<a class="headerlink".*?</a>',
    re.DOTALL,
)
_LINK_AWAY = re.compile(r'(<a\b[^>]*?)\shref="(?!#)[^"]*"')
_PAGE_NUMBER = re.compile(r'(<span class="page-number" data-of="([^"]+)">)[^<]*(</span>)')


class Press(Protocol):
    """Prints a document that stands for a page of the site, named by its address."""

    def __call__(self, address: str, document: str) -> bytes:
        """The PDF."""


@dataclass
class ReadyPdfs:
    """The PDFs of one build: what prints them, and the addresses of the pages that have one.

    `program` is None when none are made. `url` is the site's own address; it may be empty.
    """

    program: str | None = None
    url: str = ""
    pages: list[str] = field(default_factory=list)

    def add(self, address: str) -> list[tuple[str, str]]:
        """Title and address of the PDF of the page at `address`; none when none are made."""
        if self.program is None:
            return []
        self.pages.append(address)
        return [("This page as PDF", pdf_address(address))]

    def write(self, site: Path, kept: Path) -> None:
        """Write all PDFs into the site, printing those that are not kept from an earlier build."""
        if self.program is None:
            return
        with ExitStack() as stack:
            press: Press | None = None
            for address in self.pages:
                document = printable((site / address).read_text("utf-8"), keep_links=bool(self.url))
                store = kept / KEPT / f"{content_name(address, document, site)}.pdf"
                if press is None and kept_file(store) is None:
                    press = stack.enter_context(opened(site, self.program, self.url or NOWHERE))
                printing = Printing(press, address, document)
                put(site / pdf_address(address), store, printing.pdf)


@dataclass(frozen=True)
class Printing:
    """A document to be printed; where it lists contents, with the numbers of their pages."""

    press: Press | None
    address: str
    document: str

    def pdf(self) -> bytes:
        """The PDF, printed anew until the numbers of its contents are those of its pages."""
        assert self.press is not None
        document, pdf = self.document, b""
        for _ in range(MOST_ROUNDS):
            pdf = settled(self.press(self.address, document))
            if not _PAGE_NUMBER.search(document):
                break
            numbered = with_page_numbers(document, page_numbers(pdf))
            if numbered == document:
                break
            document = numbered
        return pdf


def find_program() -> tuple[str | None, str]:
    """The browser that prints; None, and what to say, when something is missing."""
    if find_spec("playwright") is None or find_spec("pypdf") is None:
        return None, NO_PACKAGES
    program = next(filter(None, map(shutil.which, PROGRAMS)), None)
    return program, "" if program else NO_BROWSER


def pdf_address(address: str) -> str:
    """Where the PDF of a page lies: beside it, under its name."""
    return PurePosixPath(address).with_suffix(".pdf").as_posix()


def printable(page: str, *, keep_links: bool) -> str:
    """What of a page stands on paper, as a document of its own."""
    head = page.partition("</head>")[0]
    root, body = [match[0] for match in _ROOTS.finditer(page)][:2]
    title, article = _TITLE.search(head), _ARTICLE.search(page)
    styles = "\n".join(match[0] for match in _STYLES.finditer(head))
    text = _SCREEN_ONLY.sub("", article[0] if article else "")
    if not keep_links:
        text = _LINK_AWAY.sub(r"\1", text)
    return (
        f'<!doctype html>\n{root}\n<head><meta charset="utf-8">{title[0] if title else ""}\n'
        f'{styles}</head>\n{body}<div class="md-content">\n{text}</div></body></html>\n'
    )


def content_name(address: str, document: str, site: Path) -> str:
    """A name made from the document and from the site's styles that it names."""
    content = sha256(f"{MADE}\0{document}".encode())
    for match in _STYLES.finditer(document):
        styles = site / PurePosixPath(address).parent / (match[1] or "")
        if styles.is_file():
            content.update(styles.read_bytes())
    return content.hexdigest()[:24]


def file_of(site: Path, address: str) -> Path | None:
    """The file of a site at an address; None where there is none, or it lies outside the site."""
    file = (site / unquote(address).lstrip("/")).resolve()
    return file if file.is_relative_to(site.resolve()) and file.is_file() else None


@contextmanager
def opened(site: Path, program: str, url: str) -> Iterator[Press]:
    """A browser that prints documents as pages of a site at `url`, whose files lie in `site`.

    It runs no script and reaches no network: what it asks for comes from the site's folder.
    """
    from playwright.sync_api import Route, sync_playwright  # noqa: PLC0415 - an optional package

    documents: dict[str, str] = {}

    def answer(route: Route) -> None:
        asked = route.request.url.partition("?")[0]
        file = file_of(site, asked.removeprefix(url)) if asked.startswith(url) else None
        if asked in documents:
            route.fulfill(body=documents[asked], content_type="text/html; charset=utf-8")
        elif file is not None:
            route.fulfill(path=file)
        else:
            route.abort()

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=program)
        page = browser.new_page(java_script_enabled=False)
        page.set_default_timeout(0)
        page.route("**/*", answer)

        def press(address: str, document: str) -> bytes:
            place = urljoin(url, address)
            documents[place] = document
            page.goto(place)
            del documents[place]
            return page.pdf(prefer_css_page_size=True, tagged=True, outline=True)

        yield press
        browser.close()


def settled(pdf: bytes) -> bytes:
    """A PDF of Chromium without what would make each printing another; nothing in it moves.

    The date is always the same. The names of tagged parts hold numbers that depend on how fast the
    page was read, but their order does not: they are numbered through.
    """
    pdf = _DATES.sub(DATE, pdf)
    names = sorted(set(_NODES.findall(pdf)))
    numbers = {name: b"(node%08d)" % number for number, name in enumerate(names, 1)}
    return _NODES.sub(lambda match: numbers[match[1]], pdf)


def page_numbers(pdf: bytes) -> dict[str, int]:
    """The number of the page on which each anchor of a PDF lies."""
    from pypdf import PdfReader  # noqa: PLC0415 - an optional package

    reader = PdfReader(BytesIO(pdf))
    found: dict[str, int] = {}
    for name, place in reader.named_destinations.items():
        number = reader.get_destination_page_number(place)
        if number is not None:
            found[name.removeprefix("/")] = number + 1
    return found


def with_page_numbers(document: str, numbers: Mapping[str, int]) -> str:
    """A document whose contents say on which page each thing stands."""
    return _PAGE_NUMBER.sub(
        lambda match: f"{match[1]}{numbers.get(match[2], '')}{match[3]}", document
    )

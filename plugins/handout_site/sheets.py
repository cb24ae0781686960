"""Puts the true-scale sheets of a page beside it: as PDF where libcairo is, else as HTML to print.

The engine's fragments link to each sheet as an HTML document. Where PDFs are made, the links are
led to them; each is named by its content, and kept between builds.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import partial
from hashlib import sha256
from html import escape
from pathlib import Path, PurePosixPath

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files

from handout_engine.pages.page import Page
from handout_engine.paper.sheets import Sheet
from handout_site.kept_files import put
from handout_site.pdf import MADE, Printer

MISSING = (
    "true-scale sheets are published as pages to print from the browser instead of PDF, since "
    "libcairo is not installed; on Debian: apt-get install libcairo2 fonts-dejavu-core"
)
KEPT = "pdf"


@dataclass(frozen=True)
class Pdf:
    """A PDF to be made: its title and its pages as SVG documents."""

    title: str
    pages: Sequence[str]

    @property
    def name(self) -> str:
        """A name made from the content, and from how it is made."""
        content = "\0".join([MADE, self.title, *self.pages])
        return sha256(content.encode()).hexdigest()[:16]


@dataclass
class Sheets:
    """The sheets of one build: their paper, what makes PDFs of them, and the PDFs by address."""

    paper: str = "a4"
    printer: Printer | None = None
    pdfs: dict[str, Pdf] = field(default_factory=dict)

    def add(self, page: Page, source: File, files: Files, config: MkDocsConfig) -> dict[str, str]:
        """Add each sheet of a page to what is written; the PDFs by the addresses they stand for.

        Addresses are relative to the page. Two pages of one folder that share an address share the
        sheet.
        """
        folder = PurePosixPath(source.dest_uri).parent
        found: dict[str, str] = {}
        for address, sheet in page.sheets().items():
            if self.printer is None:
                uri = (folder / address).as_posix()
                if files.get_file_from_path(uri) is None:
                    document = sheet.document(self.paper, page.tape)
                    files.append(File.generated(config, uri, content=document))
            else:
                pdf = Pdf(sheet.title, sheet.pages(self.paper, page.tape))
                found[address] = _pdf_address(sheet, pdf)
                self.pdfs[(folder / found[address]).as_posix()] = pdf
        return found

    def write(self, site: Path, kept: Path) -> None:
        """Write all PDFs into the site, making those that are not kept from an earlier build."""
        if self.printer is None:
            return
        for address, pdf in self.pdfs.items():
            make = partial(self.printer, pdf.title, pdf.pages)
            put(site / address, kept / KEPT / f"{pdf.name}.pdf", make)


def _pdf_address(sheet: Sheet, pdf: Pdf) -> str:
    return f"{sheet.address.rpartition('-')[0]}-{pdf.name}.pdf"


def with_pdfs(html: str, pdfs: Mapping[str, str]) -> str:
    """A page's HTML whose links lead to PDFs; `data-sheet` still says what each stands for."""
    for address, pdf in pdfs.items():
        link = f'href="{escape(address)}"'
        html = html.replace(link, f'href="{escape(pdf)}" data-sheet="{escape(address)}"')
    return html

"""Puts the true-scale sheets of a page among the site's files, beside the page."""

from __future__ import annotations

from pathlib import PurePosixPath

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files

from handout_engine.pages import Page


def add_sheets(page: Page, source: File, files: Files, config: MkDocsConfig) -> None:
    """Add each sheet of a page to the files that the build will write.

    The engine's links are relative to the page, and hold a mark of the sheet's content: two pages
    of one folder that share an address share the sheet.
    """
    folder = PurePosixPath(source.dest_uri).parent
    for address, document in page.sheets().items():
        uri = (folder / address).as_posix()
        if files.get_file_from_path(uri) is None:
            files.append(File.generated(config, uri, content=document))

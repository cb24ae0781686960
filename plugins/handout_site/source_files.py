"""The site's source files: whether they can be read, and how messages name them."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files

from handout_site.reading import NO_TEXT
from handout_site.slips import Slip


def is_text(file: File) -> bool:
    """Whether a file can be read as text."""
    try:
        file.content_string  # noqa: B018 - reading it is the test
    except (OSError, UnicodeDecodeError):
        return False
    return True


def unreadable(files: Files, config: MkDocsConfig) -> Iterator[Slip]:
    """A slip for each page that is no text; what cannot be read is taken for nothing."""
    for file in files.documentation_pages():
        if not is_text(file):
            yield Slip(shown_path(file, config), 1, NO_TEXT)
            file.content_string = ""


def shown_path(file: File, config: MkDocsConfig) -> str:
    """The path of a source file as messages show it, from the project's top."""
    top = Path(config.config_file_path).resolve().parent.parent
    source = Path(file.abs_src_path or file.src_uri).resolve()
    return source.relative_to(top).as_posix() if source.is_relative_to(top) else source.name

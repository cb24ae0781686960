"""What the links of handouts can lead to: the files of their site, found without building it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from os.path import relpath
from pathlib import Path

from mkdocs.config import load_config
from mkdocs.structure.files import File, get_files

from handout_site.dead_ends import Reach
from handout_site.library import SECTION, entries
from handout_site.publishing import SETTINGS
from handout_site.slips import Slip, SlipsError

ENCODING = "utf-8-sig"
EXTENSIONS = ["attr_list", "md_in_html", "tables", "toc", "pymdownx.superfences"]
"""How Markdown is read where no site's settings say it."""


@dataclass(frozen=True)
class Library:
    """Where files lie that can lead to one another: folders with their addresses, and all files."""

    folders: Sequence[tuple[Path, str]]
    reach: Reach

    def address(self, file: Path) -> str | None:
        """The address of a file; None where it lies in no folder of the library."""
        for folder, place in self.folders:
            if file.is_relative_to(folder):
                return place + file.relative_to(folder).as_posix()
        return None


def link_slips(found: Mapping[Path, Iterable[Path]]) -> set[Slip]:
    """The dead ends of handouts, by the path at which they were found; also of a scenario's slips.

    MkDocsException says why the settings of their site cannot be read.
    """
    site = cache(_site)
    slips = set[Slip]()
    for path, files in found.items():
        settings = _settings(path)
        try:
            libraries = [*([site(settings)] if settings else []), _folder(path)]
        except SlipsError as error:
            slips.update(error.slips)
        else:
            for file in files:
                slips.update(_dead_ends(file, libraries))
    return slips


def _dead_ends(file: Path, libraries: Iterable[Library]) -> Iterable[Slip]:
    """What leads nowhere in a file, in the first library that has a place for it."""
    try:
        text = file.read_text(encoding=ENCODING)
    except (OSError, UnicodeDecodeError):
        return ()  # which is said where its blocks are read
    for library in libraries:
        address = library.address(file.resolve())
        if address is not None:
            return library.reach.slips(address, text, str(file))
    return ()


def _settings(path: Path) -> Path | None:
    """The settings of the site that a path belongs to: those in the nearest folder above it."""
    every = (folder / SETTINGS for folder in (path.resolve(), *path.resolve().parents))
    return next(filter(Path.is_file, every), None)


def _site(settings: Path) -> Library:
    """The pages and files of a site, and all handouts, also those that its scenario leaves out."""
    config = load_config(str(settings))
    config = config.plugins.on_config(config)
    files = get_files(config)
    files.add_files_from_theme(config.theme.get_env(), config)
    files = config.plugins.on_files(files, config=config)
    docs = Path(config.docs_dir).resolve()
    folders = [(docs, "")]
    ours = config.plugins.get("handouts")
    if ours is not None:
        folders.append((Path(ours.config.handouts).resolve(), f"{SECTION}/"))
        for entry in entries(Path(ours.config.handouts)):
            if files.get_file_from_path(entry.address) is None:
                files.append(File.generated(config, entry.address, abs_src_path=str(entry.path)))

    def find(address: str) -> Callable[[], str] | None:
        file = files.get_file_from_path(address)
        return None if file is None else lambda: _text(file.content_bytes)

    extensions, configs = config.markdown_extensions, config.mdx_configs
    pictures = f"{relpath(docs, settings.parent.parent)}/"
    return Library(folders, Reach(find, extensions, configs, pictures, closed=True))


def _folder(path: Path) -> Library:
    """The files of a folder that belongs to no site; or of that in which a file lies."""
    top = path.resolve() if path.is_dir() else path.resolve().parent

    def find(address: str) -> Callable[[], str] | None:
        file = top / address
        try:
            return (lambda: _text(file.read_bytes())) if file.is_file() else None
        except OSError:
            return None  # no file has such a name

    return Library([(top, "")], Reach(find, EXTENSIONS, {}, "", closed=False))


def _text(content: bytes) -> str:
    return content.decode(ENCODING, errors="replace")

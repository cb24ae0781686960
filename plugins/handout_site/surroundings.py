"""What a build is given from outside its files: the environment, the theme, the site's settings."""

from __future__ import annotations

import os
import re
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError

from handout_engine.amounts.refusals import quoted
from handout_site.booklet import TEMPLATE
from handout_site.options import HandoutsConfig
from handout_site.publishing import USUAL, VARIABLE
from handout_site.scenario import Scenario, load_scenario
from handout_site.slips import Slip, SlipsError

DATE, PDF = "SOURCE_DATE_EPOCH", "HANDOUTS_PDF"
LAST_SECOND = 2**32 - 1
"""What a compressed file can say of when it was made, in seconds since the beginning of 1970."""
LONGEST_NAME = 100
"""Of a scenario, in letters."""
YES, NO = ("1", "true", "yes", "on"), ("", "0", "false", "no", "off")


def refuse_environment() -> None:
    """Refuse what the environment asks for and no build can do; raises PluginError."""
    date = os.environ.get(DATE)
    if date is not None and not (re.fullmatch(r"[0-9]{1,10}", date) and int(date) <= LAST_SECOND):
        raise PluginError(
            f'nothing is published: {DATE} is "{quoted(date)}"; write whole seconds since the '
            "beginning of 1970, such as 1767225600, or leave it out"
        )
    if os.environ.get(PDF, "").lower() not in {*YES, *NO}:
        raise PluginError(
            f'nothing is published: {PDF} is "{quoted(os.environ[PDF])}"; write 1 to have PDFs, or '
            "leave it out"
        )


def chosen_scenario(options: HandoutsConfig, known: tuple[str, ...]) -> Scenario:
    """The scenario that the settings name, or else the environment, or else the usual one.

    `known` are the handouts there are; raises SlipsError. MkDocs could read the environment into
    the settings; but it takes what stands there for YAML, and ends with a traceback for a name that
    looks like a date.
    """
    name = options.scenario or os.environ.get(VARIABLE) or USUAL
    folder = Path(options.scenarios)
    is_name = name.isprintable() and len(name) <= LONGEST_NAME and not name.startswith(".")
    if not is_name or Path(name).name != name:
        text = f'"{quoted(name)}" is not the name of a scenario in this folder'
        raise SlipsError([Slip(f"{folder.name}/", 1, text)])
    return load_scenario(folder / f"{name}.yml", f"{folder.name}/{name}.yml", known)


def asks_for_pdf(written: int | None) -> bool:
    """Whether a PDF of each page is asked for: by the settings, or else by the environment."""
    return os.environ.get(PDF, "").lower() in YES if written is None else bool(written)


def theme_has(config: MkDocsConfig, name: str) -> bool:
    """Whether the theme, or what the site puts over it, has a file of that name."""
    parts = Path(name).parts
    safe = bool(parts) and ".." not in parts and not name.startswith("/") and name.isprintable()
    return safe and any((Path(folder) / name).is_file() for folder in config.theme.dirs)


def lacks_template(config: MkDocsConfig) -> Slip | None:
    """Booklets that are asked for where the theme has no template for them, as a slip."""
    if theme_has(config, TEMPLATE):
        return None
    path = Path(config.config_file_path)
    written = path.read_text(encoding="utf-8").split("\n")
    found = (number for number, line in enumerate(written, 1) if re.match(r"\s*booklets:", line))
    return Slip(
        f"{path.parent.name}/{path.name}",
        next(found, 1),
        f"booklets need the template {TEMPLATE}, which is not among the overrides; put it there, "
        "or write booklets: false",
    )

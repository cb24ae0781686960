"""What a build is given from outside its files: the environment, the theme, the site's settings."""

from __future__ import annotations

import os
import re
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.utils import get_build_datetime

from handout_engine.refusals import quoted
from handout_site.booklet import TEMPLATE
from handout_site.slips import Slip

DATE = "SOURCE_DATE_EPOCH"


def unreadable_date() -> str:
    """What is wrong with the date that a build is told to have; nothing where it can be read."""
    try:
        get_build_datetime()
    except (ValueError, OverflowError, OSError):
        return (
            f'nothing is published: {DATE} is "{quoted(os.environ.get(DATE, ""))}"; write whole '
            "seconds since the beginning of 1970, such as 1767225600, or leave it out"
        )
    return ""


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

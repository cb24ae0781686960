"""What a site's settings may say of the plugin."""

from __future__ import annotations

from mkdocs.config import config_options
from mkdocs.config.base import Config


class HandoutsConfig(Config):
    """Where handouts and scenarios are, which is published, and what is made beside the pages.

    `pictures` are PNG and the sheets as PDF, `booklets` pages of many handouts, `pdf` a PDF of
    each page (a number, since HANDOUTS_PDF=1 gives one).
    """

    handouts = config_options.Dir(exists=True)
    scenarios = config_options.Dir(exists=True)
    scenario = config_options.Type(str, default="guild")
    pictures = config_options.Type(bool, default=False)
    booklets = config_options.Type(bool, default=False)
    pdf = config_options.Type(int, default=0)

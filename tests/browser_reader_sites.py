"""Four handouts to try the reader's form on: lists, references, a bare block, a sheet."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from handout_site.runtime import find_runtime
from small_sites import REPOSITORY, Built, site_of

NO_RUNTIME = "Python for the browser is not installed: npm ci --prefix site_src"

SLEEVE_TEXT = """\
# Sleeve ruffle

A banded ruffle for a sleeve. The facing is cut {{ sleeve.facing_cut_width }} wide.

```calc
technique: banded-ruffle
name: sleeve
edge: 9 in
shows: 1 1/2 in
show: [finished, measures, supplies, cuts, marks]
```

1. Then sew.

    ```calc
    of: sleeve
    show: [drawing, steps, numbers]
    ```
"""
HEADED_TEXT = """\
# Headed ruffle

It is {{ headed-ruffle.ruffle_length }} long.

```calc
technique: headed-ruffle
```
"""
PAIR_TEXT = """\
# Two ruffles

The hem takes {{ hem.ruffle_length }}, the sleeve {{ sleeve.ruffle_length }}.

```calc
technique: gathered-ruffle
name: hem
edge: sleeve.ruffle_length
show: [cuts, numbers]
```

```calc
technique: gathered-ruffle
name: sleeve
edge: 8 in
show: [cuts, numbers]
```

The headed one takes {{ headed-ruffle.ruffle_length }}.

```calc
technique: headed-ruffle
show: cuts
```
"""
CORNER_TEXT = """\
# Mitred lace

```calc
technique: mitred-lace
name: corner
```
"""


def build_reader_site(folder: Path, changed: dict[str, str], pictures: bool = False) -> Built:
    """The site, with some handouts written otherwise; with `pictures` also PNG and PDF."""
    if find_runtime(REPOSITORY / "site_src") is None:
        if os.environ.get("HANDOUTS_REQUIRE_BROWSER") == "1":
            pytest.fail(NO_RUNTIME)
        pytest.skip(NO_RUNTIME)
    texts = {
        "ruffles/sleeve.md": SLEEVE_TEXT,
        "ruffles/pair.md": PAIR_TEXT,
        "ruffles/headed.md": HEADED_TEXT,
        "lace/corner.md": CORNER_TEXT,
    }
    site = site_of(folder, {**texts, **changed})
    (folder / "site_src" / "node_modules").symlink_to(REPOSITORY / "site_src" / "node_modules")
    if pictures:
        settings = site.config_file.read_text(encoding="utf-8")
        site.write("site_src/mkdocs.yml", f"{settings}      pictures: true\n")
    return site.build()

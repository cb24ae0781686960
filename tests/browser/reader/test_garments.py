"""A sized page in the reader's browser: another size, and a baby's own measures."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, expect

from browser_reader_sites import build_reader_site
from console_values import compute
from reader_page import ReaderPage
from strict_server import StrictServer, serve

SLIP = "handouts/garments/slip.html"
SLIP_TEXT = """\
# Slip

Round the hem: {{ garment.hem_edge }}; the ruffle takes {{ ruffle.ruffle_length }}.

```calc
garment: slip
size: 56
sizes: [56, 62]
show: [finished, measures, cuts, drawing, layout, sizes]
```

```calc
technique: gathered-ruffle
name: ruffle
edge: garment.hem_edge
show: cuts
```
"""


@pytest.fixture(scope="module")
def sized_site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A site with one sized handout."""
    return build_reader_site(
        tmp_path_factory.mktemp("sized"), {"garments/slip.md": SLIP_TEXT}
    ).folder


@pytest.fixture
def sized_server(sized_site: Path) -> Iterator[StrictServer]:
    """The sized handout, served strictly."""
    with serve(sized_site) as server:
        yield server


@pytest.fixture
def slip(context: BrowserContext, sized_server: StrictServer) -> Iterator[ReaderPage]:
    """The sized handout, opened."""
    page = ReaderPage(context, sized_server).open(SLIP)
    yield page
    page.check()


def test_another_size_changes_garment_and_trim_as_the_console_says(slip: ReaderPage) -> None:
    slip.choose("garment.size", "92")
    hem = compute("slip", "size=92")["hem_edge"]
    assert slip.value("garment.hem_edge") == hem
    assert slip.chosen.startswith("Worked out with your own measures: size 92")


def test_a_measured_baby_goes_before_her_size(slip: ReaderPage) -> None:
    slip.choose("garment.size", "68")
    slip.write("garment.chest", "44.5 cm")
    slip.write("garment.head", "45 cm")
    own = compute("slip", "size=68", "chest=44.5 cm", "head=45 cm")
    assert slip.value("garment.hem_edge") == own["hem_edge"]
    expect(slip.field("garment.neck")).to_have_value("")


def test_a_baby_the_opening_does_not_fit_is_refused_beside_the_field(slip: ReaderPage) -> None:
    slip.write("garment.opening", "1 in", state="mend")
    expect(slip.error("garment.opening")).to_contain_text("does not pass")
    slip.write("garment.opening", "5 in")
    expect(slip.error("garment.opening")).to_be_empty()


def test_every_size_can_be_reached_without_a_script(slip: ReaderPage) -> None:
    slip.page.locator(".size-choice a", has_text="62").click()
    expect(slip.page.locator(".size-choice [aria-current]")).to_have_text("62")
    assert slip.value("garment.hem_edge") == compute("slip", "size=62")["hem_edge"]

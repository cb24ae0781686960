"""A sized page in the reader's browser: another size, and a baby's own measures."""

from __future__ import annotations

import re
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, expect
from pypdf import PdfReader

from browser_reader_sites import build_reader_site
from console_values import compute
from reader_page import OpenTabs, ReaderPage
from strict_server import serve

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


@pytest.fixture(scope="module")
def sized_tabs(lasting_context: BrowserContext, sized_site: Path) -> Iterator[OpenTabs]:
    """The tab of the sized handout, which stays open."""
    with serve(sized_site) as server:
        yield OpenTabs(lasting_context, server)


@pytest.fixture
def slip(sized_tabs: OpenTabs) -> Iterator[ReaderPage]:
    """The sized handout as it was built, opened."""
    yield sized_tabs.open(SLIP)
    sized_tabs.check()


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


NOT_HERS = re.compile(r"Size 56 (?!62)|size 56|4\.7 kg")
"""The page's own size, but not its box beside that of the other."""


def printed(reader: ReaderPage) -> list[str]:
    """What each sheet of the page says on paper."""
    pdf = PdfReader(BytesIO(reader.page.pdf(prefer_css_page_size=True)))
    return [" ".join(sheet.extract_text().split()) for sheet in pdf.pages]


def named(reader: ReaderPage) -> tuple[str, list[str], str, str]:
    """Where a page names its size: title block, size boxes, the guide below them, its title."""
    return (
        reader.page.locator(".print-size").text_content() or "",
        reader.page.locator(".size-choice [aria-current]").all_inner_texts(),
        reader.page.locator(".size-choice .detail").inner_text(),
        reader.page.title(),
    )


def test_all_that_names_a_size_follows_the_form_on_screen_and_paper(slip: ReaderPage) -> None:
    built = named(slip)
    assert (built[0], built[1]) == ("Size 56", ["56"])
    slip.choose("garment.size", "62")
    block, marked, guide, title = named(slip)
    assert (block, marked) == ("Size 62", ["62"])
    assert guide.startswith("Size 62 is a body length of 62 cm: about 4 months and 6.3 kg")
    assert title.startswith("Slip, size 62 - ")
    sheets = printed(slip)
    for sheet in sheets:
        assert "Slip, size 62" in sheet
        assert not re.search(NOT_HERS, sheet)
    assert "Size 62" in sheets[0] and "6.3 kg" in sheets[0]
    chest = slip.field("garment.chest")
    expect(chest).to_have_attribute("placeholder", "table: 15 13/16 in")
    expect(slip.page.locator("#my-garment-chest-hint")).to_contain_text("(here 15 13/16 in)")
    slip.mark()
    slip.page.go_back()
    slip.settled("shown")
    assert named(slip) == built
    expect(chest).to_have_attribute("placeholder", "table: 14 5/8 in")
    assert "Slip, size" not in " ".join(printed(slip))


def test_with_her_own_measures_no_size_is_named_that_is_not_hers(slip: ReaderPage) -> None:
    slip.write("garment.body_length", "70.5 cm")
    slip.write("garment.chest", "44.5 cm")
    block, marked, guide, title = named(slip)
    assert (block, marked) == ("Body length 70.5 cm, her own measures", [])
    assert guide.startswith("Between sizes 68 and 74 lies a body length of 70.5 cm")
    assert "body length 70.5 cm, her own measures" in title
    assert not [sheet for sheet in printed(slip) if re.search(NOT_HERS, sheet)]
    slip.write("ruffle.fullness", "1.5")
    slip.page.locator(".size-choice a", has_text="62").click()
    slip.settled("shown")
    assert slip.query == "ruffle.fullness=1.5", "the box of a size takes along all but the baby"
    assert named(slip)[0] == "Size 62"


def test_every_size_can_be_reached_without_a_script(slip: ReaderPage) -> None:
    slip.page.locator(".size-choice a", has_text="62").click()
    expect(slip.page.locator(".size-choice [aria-current]")).to_have_text("62")
    assert slip.value("garment.hem_edge") == compute("slip", "size=62")["hem_edge"]

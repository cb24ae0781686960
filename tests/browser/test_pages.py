"""Pages of the real site in a browser: narrow and wide, light and dark, and on paper.

The ordinary run visits one page of each kind, the long search every page.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from io import BytesIO
from pathlib import PurePosixPath
from typing import Any
from unicodedata import normalize

import pytest
from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader

from page_visits import DRAWINGS, GROUND, WIDE, Visit, Visitor
from small_sites import Built
from thoroughness import SEARCHING

SHARES = 6 if SEARCHING else 2
"""Pages are visited in so many shares, so that the workers of a run can share them out."""
PRINTED = None if SEARCHING else 4
"""So many handouts are made into a PDF; of all families in the long search."""
SIZED = re.compile(r"(?P<handout>.+)-size-(?P<size>\d+)\.html")
LEAST_CONTRAST = 3.0
"""What WCAG asks of a drawing's parts against what lies beside them."""


def addresses(site: Built) -> list[str]:
    return [address for address in site.pages() if address != "404.html"]


def to_visit(site: Built) -> list[str]:
    """One page of each kind; in the long search every page."""
    return without_most_sizes(site) if SEARCHING else one_of_each_kind(site)


def without_most_sizes(site: Built) -> list[str]:
    """Every page, but of a handout in many sizes only the page without a size, least and most."""
    found, sizes = [], defaultdict(list)
    for address in addresses(site):
        sized = SIZED.fullmatch(address)
        if sized:
            sizes[sized["handout"]].append((int(sized["size"]), address))
        else:
            found.append(address)
    return sorted({*found, *(end(each)[1] for each in sizes.values() for end in (min, max))})


def one_of_each_kind(site: Built) -> list[str]:
    """Of the pages of a kind the longest, but of the booklets the shortest."""
    kinds: dict[str, list[str]] = defaultdict(list)
    for address in addresses(site):
        kinds[kind_of(address)].append(address)
    return sorted(
        (min if kind == "booklet" else max)(alike, key=lambda each: len(site.page(each)))
        for kind, alike in kinds.items()
    )


def kind_of(address: str) -> str:
    """The folder of a page, and whether it is that of a size, a family or a garment."""
    path = PurePosixPath(address)
    if SIZED.fullmatch(address):
        return "size"
    if path.name == "index.html":
        return f"index {len(path.parts)} {path.parts[0]}"
    for name in ("booklet", "reference/garment-"):
        if address.startswith(name):
            return name
    return str(path.parent) if len(path.parts) > 1 else address


def with_blocks(site: Built) -> list[str]:
    """The pages of handouts that have a cut list."""
    return [address for address in addresses(site) if "part-cuts" in site.article(address)]


def one_of_each_family(site: Built) -> list[str]:
    """Of the handouts in each folder, the longest that has a cut list; in the order of folders."""
    longest: dict[str, str] = {}
    handouts = [each for each in with_blocks(site) if each.startswith("handouts/")]
    for address in sorted(handouts, key=lambda each: len(site.article(each))):
        longest[str(PurePosixPath(address).parent)] = address
    return sorted(longest.values())


@dataclass
class Visited:
    """A share of the site's pages, and what the last one asked for when it had time."""

    pages: list[Visit]
    late: list[str]
    wrong_late: list[str]


@pytest.fixture(scope="module", params=range(SHARES))
def visited(
    request: pytest.FixtureRequest, browser: Browser, built_site: Built, served_site: str
) -> Visited:
    """A share of the pages, each of them visited once."""
    share = to_visit(built_site)[request.param :: SHARES]
    visitor = Visitor(browser)
    pages = [visitor.visit(served_site, address) for address in share]
    visitor.page.wait_for_load_state("networkidle")
    late, wrong = visitor.read()
    visitor.context.close()
    return Visited(pages, late, wrong)


def test_a_page_comes_whole_from_its_own_site(visited: Visited, served_site: str):
    own = (f"{served_site}/", "data:", f"blob:{served_site}/")
    assert visited.pages
    for page in visited.pages:
        assert page.wrong == [], page.address
        assert f"{served_site}/{page.address}" in page.asked
        assert [url for url in page.asked if not url.startswith(own)] == [], page.address
        assert page.heading, page.address
    assert visited.wrong_late == []
    assert [url for url in visited.late if not url.startswith(own)] == []


def test_a_page_fits_the_screen(visited: Visited):
    for page in visited.pages:
        assert page.too_wide == {"wide": [], "narrow": []}, page.address


def test_no_two_landmarks_in_sight_have_one_name(visited: Visited):
    for page in visited.pages:
        assert page.regions == {"wide": [], "narrow": []}, page.address


def test_a_figure_holds_its_drawing_and_its_caption(visited: Visited):
    for page in visited.pages:
        assert page.figures == [], page.address


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_drawings_are_seen_on_their_ground(visited: Visited, built_site: Built, scheme: str):
    blocks = set(with_blocks(built_site))
    pages = [page for page in visited.pages if page.address in blocks]
    assert pages
    for page in pages:
        assert (luminance(page.grounds[scheme]) < 0.2) == (scheme == "dark"), page.address
        assert any(drawing["words"] for drawing in page.drawings[scheme]), page.address
        for drawing in page.drawings[scheme]:
            check_drawing(drawing, f"{page.address}: {drawing['title']}")


def check_drawing(drawing: dict[str, Any], name: str) -> None:
    assert drawing["width"] > 200, name
    assert drawing["height"] > 20, name
    assert drawing["lines"], name
    for colour in {*drawing["lines"], *drawing["words"]}:
        assert contrast(colour, drawing["ground"]) >= LEAST_CONTRAST, (name, colour)


def test_on_paper_cut_list_and_cautions_are_shown(visited: Visited, built_site: Built):
    blocks = set(with_blocks(built_site))
    for page in visited.pages:
        if page.address in blocks:
            assert {each["kind"] for each in page.to_print} == {"cut", "caution"}, page.address
            hidden = [each["text"] for each in page.to_print if not each["shown"]]
            assert hidden == [], page.address


@contextmanager
def opened(browser: Browser, scheme: str = "light") -> Iterator[Page]:
    """A page in a browser that knows nothing yet."""
    context = browser.new_context(
        viewport=WIDE,  # type: ignore[arg-type]
        color_scheme=scheme,  # type: ignore[arg-type]
    )
    yield context.new_page()
    context.close()


def test_in_a_dark_house_a_page_comes_dark_and_its_paper_is_light(
    browser: Browser, built_site: Built, served_site: str
):
    address = with_blocks(built_site)[0]
    with opened(browser, "dark") as page:
        page.goto(f"{served_site}/{address}")
        expect(page.locator("body")).to_have_attribute("data-md-color-scheme", "slate")
        assert luminance(page.evaluate(GROUND)) < 0.2
        for drawing in page.evaluate(DRAWINGS):
            check_drawing(drawing, drawing["title"])
        page.emulate_media(media="print", color_scheme="dark")
        for drawing in page.evaluate(DRAWINGS):
            check_drawing(drawing | {"ground": "rgb(255, 255, 255)"}, drawing["title"])


def test_a_printed_page_holds_its_cut_list_and_its_cautions(
    browser: Browser, built_site: Built, served_site: str
):
    """Made into a PDF, which is slow: one handout of each family, or of a few of them."""
    with opened(browser) as page:
        for address in one_of_each_family(built_site)[:PRINTED]:
            page.goto(f"{served_site}/{address}")
            cuts = page.locator(".part-cuts :is(th[scope=row], td)").all_text_contents()
            cautions = page.locator(".cautions li").all_text_contents()
            printed = words_of(page.pdf(format="Letter"))
            assert cuts and cautions, address
            assert [text for text in [*cuts, *cautions] if plain(text) not in printed] == [], (
                address
            )


def words_of(pdf: bytes) -> str:
    return plain(" ".join(each.extract_text() for each in PdfReader(BytesIO(pdf)).pages))


def plain(text: str) -> str:
    """Letters and figures only: a PDF breaks its lines and joins its letters as it likes."""
    return re.sub(r"[^0-9a-z/×]", "", normalize("NFKC", text).lower())


def luminance(colour: str) -> float:
    """The relative luminance of a computed colour, as WCAG defines it."""
    shares = [float(number) / 255 for number in re.findall(r"[\d.]+", colour)[:3]]
    assert len(shares) == 3, colour
    red, green, blue = (
        share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4 for share in shares
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """The contrast ratio of two colours, from 1 to 21, as WCAG defines it."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)

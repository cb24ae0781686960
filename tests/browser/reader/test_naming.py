"""Whatever names the size of a page follows the reader's choice; also on the page of a seat."""

from __future__ import annotations

from playwright.sync_api import BrowserContext

from handout_engine.bodies.measures import LENGTHS
from handout_engine.pages.made_to import MadeTo
from handout_site.course import Seat
from handout_site.reading import Terms
from handout_site.seat_pages import SeatPage
from small_sites import REPOSITORY

NAMING = REPOSITORY / "plugins" / "handout_site" / "assets" / "naming.js"
BLOCK = '<p class="print-size" data-handout="Slip, Seat 3" data-site="The guild">{}</p>'
NAME = """async ([script, ...chosen]) => {
  const { nameFor } = await import(`data:text/javascript,${encodeURIComponent(script)}`);
  return chosen.map((words) => {
    nameFor(words);
    const said = (selector) => document.querySelector(selector).textContent;
    return [said(".print-size"), said(".of-seat p"), document.title];
  });
}"""


def test_the_note_of_a_seat_follows_the_choice_and_goes_back(context: BrowserContext) -> None:
    made = MadeTo(LENGTHS["62"], measured=True)
    seat = SeatPage(Seat("Seat 3"), Terms(), "../../course/kit-3.html")
    note = seat.with_choice("<h1>Slip</h1>", made)
    page = context.new_page()
    page.set_content(f"<title>Slip, Seat 3 - The guild</title>{BLOCK.format(made.words)}{note}")
    script = NAMING.read_text(encoding="utf-8")
    hers = "Size 62, her own measures"
    assert page.evaluate(NAME, [script, "Size 74", hers]) == [
        ["Size 74", "Seat 3: size 74. Its kit", "Slip, Seat 3, size 74 - The guild"],
        [hers, "Seat 3: size 62, her own measures. Its kit", "Slip, Seat 3 - The guild"],
    ]

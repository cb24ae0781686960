"""The reader's form, used as a reader uses it: below a sub-path, under the strict policy."""

from __future__ import annotations

from io import BytesIO

from playwright.sync_api import Browser, expect
from pypdf import PdfReader

from console_values import compute
from reader_page import PAIR, SLEEVE, OpenTabs, ReaderPage
from strict_server import StrictServer


def test_all_can_be_done_with_the_keyboard(tabs: OpenTabs) -> None:
    reader = tabs.open()
    page = reader.page
    page.goto(reader.strict.address + SLEEVE)
    summary = reader.form.locator("summary").first
    for _ in range(60):
        page.keyboard.press("Tab")
        if summary.evaluate("each => each === document.activeElement"):
            break
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    expect(reader.field("sleeve.edge")).to_be_focused()
    page.keyboard.press("Control+A")
    page.keyboard.type("10 in")
    page.keyboard.press("Tab")
    reader.settled("shown")
    assert reader.query == "sleeve.edge=10+in"
    expect(reader.field("sleeve.fullness")).to_be_focused()


def test_a_changed_measure_gives_what_the_console_script_gives(tabs: OpenTabs) -> None:
    reader = tabs.open(SLEEVE)
    assert reader.value("sleeve.facing_cut_width") == "2 1/2 in"
    reader.write("sleeve.band", "3/8 in")
    expected = compute("banded-ruffle", "edge=9 in", "shows=1 1/2 in", "band=3/8 in")
    assert reader.value("sleeve.facing_cut_width") == expected["facing_cut_width"] == "2 7/8 in"


def test_a_headed_ruffle_in_metric_gives_what_the_console_script_gives(tabs: OpenTabs) -> None:
    reader = tabs.open(PAIR)
    reader.write("headed-ruffle.edge", "41,5 cm")
    reader.choose("units", "metric")
    expected = compute("headed-ruffle", "edge=41.5 cm", units="metric")
    assert reader.value("headed-ruffle.ruffle_length") == expected["ruffle_length"]


def test_blocks_that_refer_to_each_other_change_together(tabs: OpenTabs) -> None:
    reader = tabs.open(PAIR)
    reader.write("sleeve.edge", "10 in")
    sleeve = compute("gathered-ruffle", "edge=10 in")["ruffle_length"]
    hem = compute("gathered-ruffle", f"edge={sleeve}")["ruffle_length"]
    assert (reader.value("sleeve.ruffle_length"), reader.value("hem.ruffle_length")) == (
        sleeve,
        hem,
    )
    expect(reader.field("hem.edge")).to_have_value(sleeve)
    assert reader.query == "sleeve.edge=10+in"


def test_an_error_stands_beside_its_field_and_the_last_good_sheet_stays(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.write("sleeve.band", "3/8 in")
    good, address = reader.article(), reader.query
    reader.write("sleeve.band", "wide", state="mend")
    expect(reader.error("sleeve.band")).to_have_text('"wide" does not start with a number')
    expect(reader.field("sleeve.band")).to_have_attribute("aria-invalid", "true")
    expect(reader.field("sleeve.band")).to_be_focused()
    assert in_sight(reader, "sleeve.band"), "the form's foot covers the error"
    assert (reader.article(), reader.query) == (good, address)
    reader.write("sleeve.band", "3/8 in")
    expect(reader.error("sleeve.band")).to_have_text("")
    expect(reader.field("sleeve.band")).to_have_attribute("aria-invalid", "false")


def in_sight(reader: ReaderPage, name: str) -> bool:
    """Whether the error of a field is on the screen and nothing lies over it."""
    found: bool = reader.error(name).evaluate(
        """each => {
            const box = each.getBoundingClientRect();
            return document.elementFromPoint(box.left + 4, box.bottom - 2) === each;
        }"""
    )
    return found


def test_one_block_that_fails_leaves_the_fields_of_others_as_they_are(tabs: OpenTabs) -> None:
    reader = tabs.open(PAIR)
    usual = reader.field("hem.edge").input_value()
    reader.write("sleeve.edge", "eight", state="mend")
    expect(reader.field("hem.edge")).to_have_value(usual)
    expect(reader.error("hem.edge")).to_have_text("")


def test_an_error_of_two_fields_together_unfolds_the_one_at_fault(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.page.evaluate("document.querySelectorAll('.form-section details').forEach(e=>e.open=0)")
    reader.page.evaluate(
        """document.querySelector('[name="sleeve.seam_allowance"]').value = "1 in" """
    )
    reader.write("sleeve.band", "1/2 in", state="mend")
    expect(reader.error("sleeve.seam_allowance")).to_be_visible()
    expect(reader.error("sleeve.seam_allowance")).to_contain_text("wider than band 1/2 in")


def test_a_field_that_may_be_left_out_can_be_emptied(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.page.evaluate("""document.querySelector('[name="sleeve.shows"]').value = "" """)
    reader.write("sleeve.front", "2 1/2 in")
    expected = compute("banded-ruffle", "edge=9 in", "front=2 1/2 in")
    assert reader.value("sleeve.facing_cut_width") == expected["facing_cut_width"]
    expect(reader.field("sleeve.shows")).to_have_value("")
    assert "left out" in reader.chosen


def test_a_field_that_is_needed_takes_its_usual_text_when_emptied(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.write("sleeve.band", "3/8 in")
    reader.write("sleeve.band", " ")
    expect(reader.field("sleeve.band")).to_have_value("1/4 in")
    assert (reader.query, reader.value("sleeve.facing_cut_width")) == ("", "2 1/2 in")


def test_back_forward_and_reload_show_what_the_address_says(tabs: OpenTabs) -> None:
    reader = tabs.open()
    first = reader.article()
    reader.write("sleeve.band", "3/8 in")
    reader.write("sleeve.edge", "10 in")
    both = reader.article()
    reader.mark()
    reader.page.go_back()
    reader.settled("shown")
    assert reader.query == "sleeve.band=3/8+in"
    expect(reader.field("sleeve.edge")).to_have_value("9 in")
    reader.mark()
    reader.page.go_back()
    reader.settled("shown")
    assert (reader.query, reader.article()) == ("", first)
    reader.mark()
    reader.page.go_forward()
    reader.settled("shown")
    reader.mark()
    reader.page.go_forward()
    reader.settled("shown")
    reader.page.reload()
    reader.settled("shown")
    assert reader.article() == both
    expect(reader.field("sleeve.edge")).to_have_value("10 in")


def test_reset_brings_back_the_page_that_was_built(reader: ReaderPage, tabs: OpenTabs) -> None:
    built = reader.open(PAIR).article()
    reader = tabs.open(PAIR)
    reader.choose("units", "metric")
    reader.write("sleeve.edge", "20 cm")
    assert reader.article() != built
    reader.undo()
    assert (reader.article(), reader.query) == (built, "")
    expect(reader.field("sleeve.edge")).to_have_value("8 in")


def test_units_and_fractions_change_what_is_said_and_what_fields_hold(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.choose("units", "metric")
    expect(reader.field("sleeve.edge")).to_have_value("22.9 cm")
    assert reader.value("sleeve.facing_cut_width") == "64 mm"
    assert reader.query == "units=metric"
    assert reader.chosen == "Worked out with the measures of this page."
    reader.choose("units", "inches")
    reader.write("sleeve.band", "11/32 in")
    assert reader.value("sleeve.facing_cut_width") == "2 13/16 in"
    reader.choose("finest", "32")
    assert reader.value("sleeve.facing_cut_width") == "2 25/32 in"


def test_a_bare_number_is_read_in_the_chosen_units_and_said_back(tabs: OpenTabs) -> None:
    reader = tabs.open()
    said = reader.page.locator("#my-sleeve-edge-read")
    expect(said).to_be_empty()
    reader.write("sleeve.edge", "10")
    expect(said).to_have_text("Read as 10 in.")
    expect(reader.field("sleeve.edge")).to_have_value("10 in")
    assert reader.query == "sleeve.edge=10+in"
    reader.choose("units", "metric")
    expect(reader.field("sleeve.edge")).to_have_value("10 in")
    reader.write("sleeve.edge", "24")
    expect(said).to_have_text("Read as 24 cm.")
    reader.choose("units", "inches")
    expect(reader.field("sleeve.edge")).to_have_value("24 cm")
    expect(said).to_be_empty()


def test_a_bare_number_beside_an_error_keeps_the_unit_it_was_read_in(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.choose("units", "metric")
    reader.page.evaluate("""document.querySelector('[name="sleeve.edge"]').value = "24" """)
    reader.write("sleeve.band", "wide", state="mend")
    expect(reader.field("sleeve.edge")).to_have_value("24 cm")
    expect(reader.page.locator("#my-sleeve-edge-read")).to_have_text("Read as 24 cm.")
    expect(reader.field("sleeve.band")).to_have_value("wide")


def test_every_control_has_a_label_help_and_room_for_a_thumb(tabs: OpenTabs) -> None:
    reader = tabs.open()
    controls = reader.form.locator("[name]").all()
    assert len(controls) > 15
    for control in controls:
        assert control.evaluate("each => each.labels.length") == 1
        described = (control.get_attribute("aria-describedby") or "").split()
        hint, error = (reader.page.locator(f"#{each}") for each in described)
        assert hint.inner_text()
        expect(error).to_have_attribute("role", "alert")
        box = control.bounding_box()
        assert box is not None
        assert box["height"] >= 24
    assert not reader.page.evaluate(
        "document.documentElement.scrollWidth > document.documentElement.clientWidth"
    )


def test_the_form_makes_no_shift_and_fetches_nothing_before_it_is_used(reader: ReaderPage) -> None:
    reader.page.add_init_script(
        """window.shifts = 0;
        new PerformanceObserver((list) => {
            for (const entry of list.getEntries()) window.shifts += entry.value;
        }).observe({ type: "layout-shift", buffered: true });"""
    )
    for width in (360, 1280):
        reader.page.set_viewport_size({"width": width, "height": 740})
        reader.page.goto(reader.strict.address + SLEEVE, wait_until="networkidle")
        reader.settled("ready")
        assert reader.page.evaluate("window.shifts") == 0
    assert not reader.runtime_requests()
    assert not reader.page.evaluate("navigator.serviceWorker.getRegistrations().then(l=>l.length)")


def test_without_scripts_the_page_is_complete_and_says_why_the_form_rests(
    browser: Browser, strict: StrictServer
) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(strict.address + SLEEVE)
    text = page.locator("article").inner_text()
    for part in ("Cut list", "Facing strip", "2 1/2 in", "Worked out with the measures of"):
        assert part.casefold() in text.replace("\u00a0", " ").casefold()
    form = page.locator("#handout-form")
    form.locator("summary").first.click()
    expect(form.locator(".form-status")).to_contain_text("needs JavaScript")
    expect(form.locator('[name="sleeve.band"]')).to_be_disabled()
    printed = PdfReader(BytesIO(page.pdf()))
    words = " ".join(sheet.extract_text() for sheet in printed.pages)
    assert "Worked out with the measures of this page" in words
    assert "needs JavaScript" not in words
    context.close()


def test_print_shows_the_chosen_measures_on_the_chosen_paper(tabs: OpenTabs) -> None:
    reader = tabs.open()
    reader.write("sleeve.band", "3/8 in")
    reader.choose("paper", "letter")
    pages = PdfReader(BytesIO(reader.page.pdf(prefer_css_page_size=True))).pages
    assert {(round(p.mediabox.width), round(p.mediabox.height)) for p in pages} == {(612, 792)}
    words = " ".join(" ".join(sheet.extract_text() for sheet in pages).split())
    assert "Worked out with your own measures: band 3/8 in" in words
    assert "Work it out" not in words
    assert "2 7/8" in words


HOSTILE = (
    "?sleeve.band=<script>alert(1)</script>",
    "?sleeve.band=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E",
    """?sleeve.band="onfocus="alert(1)"autofocus="&units=<b>""",
    "?sleeve.press=%00%0A&sleeve.make=1e9999",
    "?sleeve.band=__import__('os')&paper=../../x",
)


def test_a_hostile_value_changes_nothing_and_runs_nothing(tabs: OpenTabs) -> None:
    """One in the address that is opened, the others in those that the reader goes back to."""
    reader = tabs.open()
    built = reader.article()
    for number, query in enumerate(HOSTILE):
        if number == 0:
            reader.page.goto(reader.strict.address + SLEEVE + query)
        else:
            reader.mark()
            reader.page.evaluate(
                """query => {
                    history.pushState(null, "", query);
                    window.dispatchEvent(new PopStateEvent("popstate"));
                }""",
                query,
            )
        reader.settled("mend")
        assert reader.article() == built, query
        strange = reader.page.locator("article img, article script:not([src], #handout-page)")
        assert strange.count() == 0, query


NOT_KNOWN = (
    "?sleeve.band=3/8+in&x=" + "y" * 4_000,
    "?sleeve.band=" + "3" * 201,
    "?nobody.band=3/8+in&sleeve.nothing=2&sleeve.name=x&sleeve.technique=headed-ruffle",
    "?__proto__.polluted=1&constructor.prototype=1&my-sleeve-band=3/8+in&handout-form=1",
    "?sleeve=1&.band=2&sleeve.=3&sleeve.band.x=4&=5",
)


def test_what_the_form_does_not_know_is_not_even_asked(reader: ReaderPage) -> None:
    reader.open()
    built = reader.article()
    for query in NOT_KNOWN:
        reader.page.goto(reader.strict.address + SLEEVE + query)
        reader.settled("ready")
        reader.page.wait_for_timeout(300)
        assert reader.form.get_attribute("data-state") == "ready", query
        assert reader.article() == built, query
    assert not reader.runtime_requests()


def test_an_address_of_100_kilobytes_is_not_read(reader: ReaderPage) -> None:
    reader.open()
    built = reader.article()
    reader.page.evaluate(
        """history.pushState(null, "", "?sleeve.band=3/8+in&sleeve.edge=" + "9".repeat(100000));
        window.dispatchEvent(new PopStateEvent("popstate"));"""
    )
    reader.page.wait_for_timeout(300)
    assert reader.form.get_attribute("data-state") == "ready"
    assert reader.article() == built

"""The pages of a course: lessons, kits, the class, the preparation; and where its slips stand."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from small_sites import Built, SmallSite, site_of, slips_of
from written_pages import calc, page

BIB = page(calc("garment: bib", "size: 62", "show: cuts"), calc("of: garment", "show: measures"))
LACE = page(
    calc("technique: gathered-edging", "name: lace", "edge: 9 in", "show: [cuts, supplies]"),
    calc("technique: gathered-edging", "name: longer", "edge: 12 in", "show: cuts"),
    "See [the bib](../nursery/bib.md) and [the tuck](../tucks/pin.md).\n",
)
HANDOUTS = {
    "nursery/bib.md": BIB,
    "lace/edging.md": LACE,
    "tucks/pin.md": page(calc("technique: pin-tucks", "show: cuts")),
    "tucks/index.md": "# Tucks\n\n- [Pin](pin.md): one\n  row.\n- Others\n",
}
COURSE = """\
publisher: The guild
lessons:
  - title: A <b>first</b> *edge* {{ lace.edge }}
    aim: To bind & to <i>turn</i> {{ lace.edge }}.
    time: Two hours
    handouts: [nursery/bib]
    bring: [scissors]
    order: [Cut out., Bind.]
    homework: Finish it.
    prepare: [Wash the cloth., cut: [front]]
  - title: A second
    handouts: [lace/edging: [lace]]
spares: {cloth: 10 %, lengths: 10 %}
seats:
  - size: 56
    cloths: {front cloth: white lawn}
  - size: 74
    measures: {neck: 24 cm}
    inputs: {cloth_width: 60 in}
"""


def course_of(folder: Path, course: str = COURSE) -> SmallSite:
    return site_of(folder, HANDOUTS, scenario=course)


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Built:
    return course_of(tmp_path_factory.mktemp("course")).build()


def test_a_course_builds_strictly_and_publishes_only_its_handouts(built: Built):
    assert built.warnings == []
    course = {each for each in built.pages() if each.startswith("course/")}
    names = ("class", "index", "kit-1", "kit-2", "kits", "lesson-1", "lesson-2", "preparation")
    assert course == {f"course/{name}.html" for name in names}
    assert "handouts/tucks/pin.html" not in built.pages()
    assert "course/lesson-2.html" in built.page("index.html")


def test_a_lesson_says_what_its_scenario_says_and_nothing_of_it_is_markup(built: Built):
    words = built.words("course/lesson-1.html")
    assert "Lesson 1: A <b>first</b> *edge* {{ lace.edge }}" in words
    assert "To bind & to <i>turn</i> {{ lace.edge }}." in words
    for part in ("Two hours", "scissors", "Cut out.", "Finish it."):
        assert part in words
    assert "<b>first" not in built.article("course/lesson-1.html")
    assert "<b>first" not in built.page("index.html")
    assert '<a href="../handouts/nursery/bib.html">' in built.article("course/lesson-1.html")


def test_the_title_of_a_page_is_no_markup_either(built: Built):
    title = built.page("course/lesson-1.html").split("<title>")[1].split("</title>")[0]
    assert title.startswith("Lesson 1: A &lt;b&gt;first&lt;/b&gt; *edge* {{ lace.edge }} - ")


def test_a_kit_holds_her_measures_her_cloth_and_her_pieces(built: Built):
    one, two = built.words("course/kit-1.html"), built.words("course/kit-2.html")
    assert "Size 56. Sewn from white lawn." in one
    assert "white lawn: " in one
    assert "white lawn" not in two
    assert "Size 74. Measured: neck." in two
    assert re.search(r"neck 9 7/16 in \(24 cm\) given for her", two)
    assert "of the table for her size" in two
    assert "59 in (149.9 cm) between the selvages" in two
    assert "44 in (111.8 cm) between the selvages" in one


def test_a_kit_leads_to_the_handout_at_her_measures(built: Built):
    """The bib has no pages by size, so both seats have one; no lace is cut for a baby."""
    assert '<a href="../handouts/nursery/bib-seat-2.html">' in built.article("course/kit-2.html")
    assert '<a href="../handouts/lace/edging.html">' in built.article("course/kit-2.html")
    assert "neck 9 7/16 in (24 cm) given for her" in built.words("handouts/nursery/bib-seat-2.html")
    assert {each for each in built.pages() if "-seat-" in each} == {
        "handouts/nursery/bib-seat-1.html",
        "handouts/nursery/bib-seat-2.html",
    }


def test_a_handout_that_is_named_as_a_page_of_a_seat_is_refused(tmp_path: Path):
    scenario = COURSE.replace(
        "handouts: [nursery/bib]", "handouts: [nursery/bib, nursery/bib-seat-2]"
    )
    handouts = {**HANDOUTS, "nursery/bib-seat-2.md": page("Words of its author.\n")}
    assert slips_of(site_of(tmp_path, handouts, scenario=scenario)) == [
        "handouts/nursery/bib-seat-2.md:1: a course has a page of this name for one of its seats; "
        "name the file anew"
    ]


def test_an_input_of_a_seat_changes_its_sheet_where_the_sheet_asks_for_it(tmp_path: Path):
    """A tuck asks for the width of its cloth, so that the seat with a wide one has a page."""
    wide = COURSE.replace("lace/edging: [lace]", "tucks/pin")
    built = course_of(tmp_path, wide).build()
    assert "tucks/pin-seat-2.html" in built.article("course/kit-2.html")
    assert "tucks/pin.html" in built.article("course/kit-1.html")


def test_the_name_of_a_seat_is_no_markup(tmp_path: Path):
    named = COURSE.replace("- size: 74", "- name: <b>Blue</b> {{ lace.edge }}\n    size: 74")
    built = course_of(tmp_path, named).build()
    for address in ("course/kit-2.html", "handouts/nursery/bib-seat-2.html"):
        assert "<b>Blue" not in built.page(address)
        assert "<b>Blue</b> {{ lace.edge }}" in built.words(address)


def test_only_the_blocks_that_are_sewn_are_bought(built: Built):
    """The lace of one edging of 9 in, with an eighth of a yard for neither the second block."""
    alone = built.words("handouts/lace/edging.html")
    lace = re.search(r"lace: (\S+ \S+ yd|\S+ yd) \(", alone)
    assert lace
    assert f"lace: {lace[1]} (" in built.words("course/kit-1.html")


def test_all_kits_stand_on_one_page_and_the_class_has_their_sum(built: Built):
    kits = built.article("course/kits.html")
    assert re.findall(r"<h2>(.*?)</h2>", kits) == ["Seat 1", "Seat 2"]
    assert "for 2 kits" in built.words("course/class.html")


def test_the_teacher_cuts_the_piece_for_every_seat(built: Built):
    words = built.words("course/preparation.html")
    assert "Wash the cloth." in words
    for seat in ("Seat 1 1 of ", "Seat 2 1 of "):
        assert seat in words


def test_a_link_to_what_is_not_published_leaves_its_words(built: Built):
    assert "See the bib and the tuck." in built.words("handouts/lace/edging.html")
    assert '<a href="../nursery/bib.html">' in built.page("handouts/lace/edging.html")


SLIPS = {
    "block that is not there": (
        ("lace/edging: [lace]", "lace/edging: [lase]"),
        '12: there is no block "lase" in lace/edging; did you mean "lace"?',
    ),
    "piece that is not there": (
        ("cut: [front]", "cut: [frond]"),
        '10: lesson 1: there is no piece "frond" in what is sewn; did you mean "front"?',
    ),
    "cloth that is not there": (
        ("front cloth: white", "frnt cloth: white"),
        '16: Seat 1: cloths: there is no cloth "frnt cloth"; did you mean "front cloth"?',
    ),
}


@pytest.mark.parametrize(("change", "expected"), SLIPS.values(), ids=SLIPS)
def test_what_the_handouts_do_not_have_is_a_slip_of_the_scenario(
    change: tuple[str, str], expected: str, tmp_path: Path
):
    assert slips_of(course_of(tmp_path, COURSE.replace(*change))) == [
        f"scenarios/guild.yml:{expected}"
    ]


def test_what_cannot_be_made_for_a_seat_is_told_at_its_line(tmp_path: Path):
    narrow = COURSE.replace("cloth_width: 60 in", "cloth_width: 5 in")
    (slip,) = slips_of(course_of(tmp_path, narrow))
    assert slip.startswith("scenarios/guild.yml:19: Seat 2: nursery/bib: bib")


def test_a_given_length_is_hers_and_the_table_s_measures_are_those_of_that_length(tmp_path: Path):
    longer = WARDROBE.replace("{neck: 24 cm}", "{neck: 24 cm, body_length: 70 cm}")
    built = course_of(tmp_path, longer).build()
    for address in ("wardrobe/index.html", "handouts/nursery/bib.html"):
        words = built.words(address)
        assert "body length 27 9/16 in (70 cm) given for her" in words
        assert "neck 9 7/16 in (24 cm) given for her" in words
        assert re.search(r"chest [\d /]+ in \([\d.]+ cm\) of the table for her body length", words)
        assert "of the table for her size" not in words


def test_a_measure_that_is_given_as_the_table_has_it_is_given_all_the_same(tmp_path: Path):
    built = course_of(tmp_path, WARDROBE.replace("neck: 24 cm", "body_length: 68 cm")).build()
    assert "body length 26 3/4 in (68 cm) given for her" in built.words("wardrobe/index.html")


def test_a_length_that_the_handout_gives_is_told_in_a_kit_as_on_its_page(tmp_path: Path):
    plain = WARDROBE.replace("size: 68\nmeasures: {neck: 24 cm}\n", "publisher: The guild\n")
    longer = BIB.replace("garment: bib\n", "garment: bib\nbody_length: 70 cm\n")
    assert longer != BIB
    handouts = {**HANDOUTS, "nursery/bib.md": longer}
    built = site_of(tmp_path, handouts, scenario=plain).build()
    for address in ("wardrobe/index.html", "handouts/nursery/bib.html"):
        words = built.words(address)
        assert "body length 27 9/16 in (70 cm) given for her" in words
        assert "of the table for her body length" in words
        assert "of the table for her size" not in words


WARDROBE = """\
size: 68
measures: {neck: 24 cm}
wardrobe:
  - nursery/bib
  - lace/edging: [lace]
"""


def test_a_wardrobe_lists_all_that_it_takes_for_one_baby(tmp_path: Path):
    built = course_of(tmp_path, WARDROBE).build()
    assert built.warnings == []
    words = built.words("wardrobe/index.html")
    assert re.search(r"neck 9 7/16 in \(24 cm\) given for her", words)
    assert "front cloth: " in words
    assert "lace: " in words
    assert not [each for each in built.pages() if each.startswith("course/")]
    assert "handouts/tucks/pin.html" not in built.pages()
    assert "wardrobe/index.html" in built.page("index.html")


def numbers(built: Built, address: str) -> set[str]:
    """The amounts in the cut list of a page."""
    return set(re.findall(r"[\d/]+ in × [\d /]+ in", built.words(address)))


@pytest.mark.parametrize("size", ["50", "98"])
def test_another_size_in_the_scenario_changes_every_piece(size: str, tmp_path: Path, built: Built):
    own = course_of(tmp_path, WARDROBE.replace("size: 68", f"size: {size}")
                    .replace("measures: {neck: 24 cm}\n", "")).build()  # fmt: skip
    for address in ("wardrobe/index.html", "handouts/nursery/bib.html"):
        assert numbers(own, address)
        assert numbers(own, address).isdisjoint(numbers(built, "handouts/nursery/bib.html"))


def test_one_seat_s_size_moves_its_own_kit_and_the_class_only(tmp_path: Path, built: Built):
    moved = course_of(tmp_path, COURSE.replace("size: 56", "size: 98")).build()
    changed = {
        address
        for address in built.pages()
        if address.startswith("course/") and built.article(address) != moved.article(address)
    }
    assert changed == {
        f"course/{name}.html" for name in ("class", "index", "kit-1", "kits", "preparation")
    }
    before, after = (each.article("course/kits.html") for each in (built, moved))
    second = "<h2>Seat 2</h2>"
    assert before.partition(second)[2] == after.partition(second)[2]


def test_every_page_of_a_garment_says_for_whom_it_is_made(tmp_path: Path):
    built = course_of(tmp_path, WARDROBE).build()
    assert "Size 68, her own measures" in built.words("handouts/nursery/bib.html")
    assert "her own measures" not in built.words("handouts/lace/edging.html")

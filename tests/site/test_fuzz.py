"""Whatever stands in a block: a page, or sentences with file and line; never a traceback."""

from __future__ import annotations

from hypothesis import example, given
from hypothesis import strategies as st

from handout_engine.amounts.inputs import declared_inputs
from handout_engine.register import find, keys
from handout_site.fences import scan
from handout_site.mappings import DocumentError, read_mapping
from handout_site.reading import Handout, Terms, read_handout
from written_pages import calc

FIELDS = sorted({each.name for key in keys() for each in declared_inputs(find(key))})
WORDS = st.sampled_from(
    [
        "9 in", "1 1/2 in", "½ in", "38 mm", "-2 in", "1/0 in", "nan", "2:1", "0", "5", "1e400 in",
        "9999999999999999999 in", "a.edge", "b.cut_width", "a.name", "garment.edge", "page.edge",
        "open", "ring", "true", "null", "~", "", "0x10", "2026-01-01", "!!int 3", "&a 1", "*a",
        "|", ">", "'", '"', "[", "]", "{", "}", "{a: b}", "[9 in, 8 in]", "- a", "# a", "a: b",
        "\u0000", "\ufeff", "\ud7ff",
    ]
)  # fmt: skip
NAMES = st.sampled_from([*FIELDS, "technique", "name", "of", "show", "edgee", "?", "<<", "", "- x"])
VALUES = st.one_of(WORDS, st.sampled_from(keys()), st.text(max_size=30))
LINES = st.builds("{}{}{} {}".format, st.sampled_from(["", "", "", " ", "\t", "- "]), NAMES,
                  st.sampled_from([":", ":", ":", "=", "::"]), VALUES)  # fmt: skip
YAMLISH = st.lists(LINES, max_size=8).map("\n".join)
NEAR_RIGHT = st.builds(
    lambda key, name, fields: "\n".join(
        [f"technique: {key}", f"name: {name}", *(f"{field}: {value}" for field, value in fields)]
    ),
    st.sampled_from(keys()),
    st.sampled_from(["a", "b"]),
    st.lists(st.tuples(st.sampled_from(FIELDS), VALUES), max_size=5),
)
ANYTHING = st.one_of(
    YAMLISH,
    NEAR_RIGHT,
    st.text(max_size=300),
    st.binary(max_size=300).map(lambda data: data.decode("latin-1")),
    st.text(alphabet="[]{}:,-?*&!|>'\"#%@` \n\ta1", max_size=200),
)


def made(handout: Handout) -> None:
    """A page is made, or every slip of it is one line with a place in the file."""
    for slip in handout.slips:
        assert 1 <= slip.line <= 200
        assert slip.text
        assert "\n" not in str(slip)
    html = "".join(handout.fragment(number) for number in range(len(handout.fences)))
    assert html or handout.slips or not handout.fences


@given(ANYTHING)
@example("a: " + "[" * 2000)
@example("? [a]\n: b")
@example("show: [cuts, [steps]]")
@example("edge: 9 in\nof:")
def test_a_block_with_any_body(body: str):
    made(read_handout(calc(body), "page.md", Terms()))


@given(st.lists(ANYTHING, min_size=2, max_size=4))
def test_several_blocks_with_any_body(bodies: list[str]):
    text = "\n\n".join(calc(body) for body in bodies) + "\n{{ a.edge }} {{ b.cut_width }}\n"
    made(read_handout(text, "page.md", Terms()))


@given(st.text(alphabet="`~ \n>-{}<!a.c\tl", max_size=300))
def test_any_page_is_scanned(text: str):
    made(read_handout(text, "page.md", Terms()))
    lines = text.split("\n")
    assert all(lines[fence.line - 1].strip("> \t") for fence in scan(text).fences)


@given(ANYTHING)
def test_any_document_is_read_or_refused_with_its_line(text: str):
    try:
        document = read_mapping(text, "example")
    except DocumentError as error:
        assert 1 <= error.line <= text.count("\n") + text.count("\r") + 40
        assert error.message
    else:
        assert set(document.fields) <= set(document.lines)
        assert {way.partition("/")[0] for way in document.lines} <= {
            name.partition("/")[0] for name in document.fields
        }

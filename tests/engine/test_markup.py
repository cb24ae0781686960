from xml.etree.ElementTree import fromstring

from hypothesis import given
from hypothesis import strategies as st

from handout_engine.drawing.markup import append, element, html, xml

printable = st.text(
    st.characters(codec="utf-8", exclude_categories=["Cc", "Cs", "Cn"]), max_size=40
)


def test_hostile_words_stay_words():
    made = element("p", "<script>alert('1')</script> & so on", title='" onload="x')
    assert html(made) == (
        "<p title=\"&quot; onload=&quot;x\">&lt;script&gt;alert('1')&lt;/script&gt; &amp; so on</p>"
    )


def test_children_and_words_keep_their_order():
    made = element("p", "a ", element("b", "b"), " c", None, element("i"), "d")
    assert html(made) == "<p>a <b>b</b> c<i></i>d</p>"
    append(made, ["e", element("u"), "f"])
    assert html(made) == "<p>a <b>b</b> c<i></i>de<u></u>f</p>"


def test_attribute_names_are_written_as_html_has_them():
    made = element("svg", viewBox="0 0 1 1", aria_labelledby="t", class_="drawing")
    assert html(made) == '<svg viewBox="0 0 1 1" aria-labelledby="t" class="drawing"></svg>'


@given(printable, printable)
def test_any_text_comes_back_as_it_was(words, label):
    read = fromstring(xml(element("p", words, title=label)))
    assert (read.text or "") == words
    assert read.get("title") == label

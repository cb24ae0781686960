"""A title with signs that mean something in HTML stands as it was written, on screen and paper."""

from small_sites import site_of

PAGE = "# Lace & net <1 in\n\nA band.\n\n```calc\ntechnique: gathered-ruffle\nshow: cuts\n```\n"


def test_a_title_is_escaped_once(tmp_path):
    built = site_of(tmp_path, {"ruffles/try.md": PAGE}).build()
    page = built.page("handouts/ruffles/try.html")
    assert "<title>Lace &amp; net &lt;1 in - " in page
    assert 'content: "Lace & net \\3c 1 in";' in page

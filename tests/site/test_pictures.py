"""PNG pictures of the handouts: painted once, and said to be missing where libcairo is."""

import builtins
import logging
import subprocess
import sys

import pytest

from handout_engine.drawing.markup import element, xml
from handout_site import pictures
from small_sites import small_site

DRAWING = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20" viewBox="0 0 40 20">'
    '<path d="M0 0L40 20" stroke="#111"/></svg>'
)


def test_a_picture_is_painted_once_and_then_kept(tmp_path):
    painted = []

    def paint(drawing):
        painted.append(drawing)
        return b"a picture"

    place = pictures.address(DRAWING)
    for site in ("one", "two"):
        pictures.write_pictures({place: DRAWING}, tmp_path / site, tmp_path / "kept", paint)
        assert (tmp_path / site / place).read_bytes() == b"a picture"
    assert painted == [DRAWING]


def test_the_picture_is_a_png_where_libcairo_is():
    painter = pictures.find_painter()
    if painter is None:
        pytest.skip("libcairo is not installed")
    assert painter(DRAWING).startswith(b"\x89PNG")


WORDS = (
    '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="60" viewBox="0 0 300 60">'
    '<text x="10" y="40" font-family="DejaVu Sans, sans-serif" font-size="21" fill="#000"'
    ' text-anchor="start">12 1/4 in (31.1 cm)</text></svg>'
)
PAINTED_AFTER = """
import sys
from hashlib import sha256
from handout_site.pdf import find_printer
from handout_site.pictures import find_painter
words, *pdfs = sys.argv[1:]
for title in pdfs:
    find_printer()(title, [words])
print(sha256(find_painter()(words)).hexdigest())
"""


def test_a_picture_is_the_same_whether_a_pdf_was_made_before_it():
    """Each in a process of its own, since fonts are kept as long as a process."""
    if pictures.find_painter() is None:
        pytest.skip("libcairo is not installed")
    painted = {
        subprocess.run([sys.executable, "-c", PAINTED_AFTER, WORDS, *pdfs],
                       check=True, capture_output=True, text=True).stdout
        for pdfs in ([], ["one"], ["one", "two"])
    }  # fmt: skip
    assert len(painted) == 1


def test_without_libcairo_there_is_no_painter(monkeypatch):
    real = builtins.__import__

    def refuse(name, *args, **kwargs):
        if name == "cairosvg":
            raise OSError("no library called cairo-2 was found")
        return real(name, *args, **kwargs)

    monkeypatch.setattr(builtins, "__import__", refuse)
    assert pictures.find_painter() is None
    assert "libcairo" in pictures.MISSING


def test_a_picture_has_the_shape_of_a_preview_and_holds_the_whole_drawing():
    painter = pictures.find_painter()
    if painter is None:
        pytest.skip("libcairo is not installed")
    for tall in (30, 900):
        drawing = element("svg", element("rect", width="360", height=str(tall), fill="#000"),
                          viewBox=f"0 0 360 {tall}")  # fmt: skip
        painted = painter(xml(pictures.card(drawing)))
        size = (int.from_bytes(painted[16:20], "big"), int.from_bytes(painted[20:24], "big"))
        assert size == (pictures.WIDTH, pictures.HEIGHT)
        inside = pictures.card(drawing)[1]
        assert (inside.get("x"), inside.get("y")) == (str(pictures.BORDER),) * 2


HANDOUT = """# Try

```calc
technique: gathered-ruffle
show: [finished]
```
"""


def with_pictures(folder):
    site = small_site(folder, HANDOUT)
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(settings + "      pictures: true\n", encoding="utf-8")
    return site


def test_a_handout_names_its_picture_for_link_previews(tmp_path, monkeypatch):
    monkeypatch.setattr(pictures, "find_painter", lambda: lambda _: b"a picture")
    built = with_pictures(tmp_path).build()
    (picture,) = (built.folder / pictures.FOLDER).iterdir()
    assert f'content="../../{pictures.FOLDER}/{picture.name}"' in built.page()


def test_a_site_without_libcairo_is_built_and_says_once_what_is_left_out(
    tmp_path, monkeypatch, caplog
):
    monkeypatch.setattr(pictures, "find_painter", lambda: None)
    with caplog.at_level(logging.INFO, logger="mkdocs.plugins.handouts"):
        built = with_pictures(tmp_path).build()
    assert "og:image" not in built.page()
    assert [each.message for each in caplog.records].count(pictures.MISSING) == 1
    assert not built.warnings, "what is left out is no warning, since builds are strict"

"""Files kept between builds: made once, and whole or not at all."""

from __future__ import annotations

from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import given
from hypothesis import strategies as some

from handout_site.kept_files import kept, put
from handout_site.pictures import find_painter
from small_sites import small_site


def test_a_file_is_made_once_and_taken_from_where_it_is_kept(tmp_path: Path):
    made = []

    def make() -> bytes:
        made.append(1)
        return b"drawn"

    for name in ("first", "second"):
        put(tmp_path / "site" / name, tmp_path / "kept" / "a.pdf", make)
        assert (tmp_path / "site" / name).read_bytes() == b"drawn"
    assert made == [1]
    assert [path.name for path in (tmp_path / "kept").iterdir()] == ["a.pdf"]


SPOILED = {
    "cut short": lambda kept: kept[: len(kept) // 2],
    "cut short by its last byte": lambda kept: kept[:-1],
    "empty": lambda _: b"",
    "one byte other": lambda kept: b"D" + kept[1:],
    "longer": lambda kept: kept + b" more",
    "replaced": lambda _: b"another drawing",
}


@pytest.mark.parametrize("spoil", SPOILED.values(), ids=SPOILED)
def test_what_was_cut_short_or_replaced_is_made_again(spoil, tmp_path: Path):
    store, target = tmp_path / "kept" / "a.pdf", tmp_path / "site" / "a.pdf"
    put(target, store, lambda: b"drawn")
    store.write_bytes(spoil(store.read_bytes()))
    for made in (b"drawn again", b"not made a third time"):
        put(target, store, lambda made=made: made)
        assert target.read_bytes() == b"drawn again"


def test_another_kept_file_is_no_replacement(tmp_path: Path):
    one, other = tmp_path / "kept" / "a.pdf", tmp_path / "kept" / "b.pdf"
    put(tmp_path / "site" / "b.pdf", other, lambda: b"another drawing")
    one.write_bytes(other.read_bytes())
    put(tmp_path / "site" / "a.pdf", one, lambda: b"drawn")
    assert (tmp_path / "site" / "a.pdf").read_bytes() == b"drawn"


@given(some.binary(max_size=80), some.data())
def test_no_part_of_a_kept_file_is_taken_for_it(content: bytes, data: some.DataObject):
    with TemporaryDirectory() as folder:
        store = Path(folder, "a.pdf")
        put(Path(folder, "site"), store, lambda: content)
        assert kept(store) == content
        whole = store.read_bytes()
        store.write_bytes(whole[: data.draw(some.integers(0, len(whole) - 1))])
        assert kept(store) is None


def test_a_pdf_or_picture_that_was_spoiled_is_published_whole(tmp_path: Path):
    """Through every kind of file that a build keeps: sheets as PDF, and pictures."""
    if find_painter() is None:
        pytest.skip("libcairo is not installed")
    site = small_site(tmp_path, "# Try\n\n```calc\ntechnique: lattice-panel\n```\n")
    settings = site.config_file.read_text(encoding="utf-8")
    site.config_file.write_text(settings + "      pictures: true\n", encoding="utf-8")

    def published() -> dict[str, bytes]:
        folder = site.build().folder
        files = [*folder.rglob("*.pdf"), *folder.rglob("pictures/*.png")]
        return {path.name: path.read_bytes() for path in files}

    first = published()
    stores = [path for path in (tmp_path / "site_src" / ".cache").rglob("*") if path.is_file()]
    assert {path.suffix for path in stores} >= {".pdf", ".png"}
    for path in stores:
        path.write_bytes(path.read_bytes()[:200])
    assert published() == first
    assert {path.suffix for path in map(Path, first)} == {".pdf", ".png"}


def test_a_file_whose_writing_is_broken_off_is_not_kept(tmp_path: Path, monkeypatch):
    def broken(path: Path, content: bytes) -> int:
        with path.open("wb") as opened:
            opened.write(content[:2])
        raise OSError("no space left")

    store = tmp_path / "kept" / "a.pdf"
    with monkeypatch.context() as patched:
        patched.setattr(Path, "write_bytes", broken)
        with pytest.raises(OSError, match="no space left"):
            put(tmp_path / "site" / "a.pdf", store, lambda: b"drawn")
    assert not store.exists()
    put(tmp_path / "site" / "a.pdf", store, lambda: b"drawn")
    assert (tmp_path / "site" / "a.pdf").read_bytes() == b"drawn"

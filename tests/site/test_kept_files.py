"""Files kept between builds: made once, and whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from handout_site.kept_files import put


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

"""The content policy is computed from the pages that are published."""

from __future__ import annotations

from base64 import b64encode
from hashlib import sha256
from pathlib import Path

from handout_site.content_policy import NAME, content_policy, headers, inline_scripts, write_headers

PAGE = """\
<script>var one = "<b>&amp;";</script>
<script src="x.js"></script>
<SCRIPT type="module">two()</SCRIPT>
<script type="application/json">{"not": "run"}</script>
<p onclick="never()">text</p>
"""


def test_only_scripts_that_run_and_stand_in_the_page_are_allowed(tmp_path: Path) -> None:
    (tmp_path / "page.html").write_text(PAGE)
    assert inline_scripts(tmp_path / "page.html") == ['var one = "<b>&amp;";', "two()"]
    policy = content_policy(tmp_path)
    digest = b64encode(sha256(b"two()").digest()).decode()
    assert f"'sha256-{digest}'" in policy
    assert policy.count("sha256-") == 2


def test_the_same_script_on_many_pages_is_allowed_once_and_in_a_steady_order(
    tmp_path: Path,
) -> None:
    for number in range(5):
        (tmp_path / f"{number}.html").write_text(PAGE)
    policy = content_policy(tmp_path)
    assert policy.count("sha256-") == 2
    assert policy == content_policy(tmp_path)


def test_the_headers_are_written_one_a_line(tmp_path: Path) -> None:
    (tmp_path / "page.html").write_text(PAGE)
    write_headers(tmp_path)
    lines = (tmp_path / NAME).read_text().splitlines()
    assert lines == [f"{name}: {value}" for name, value in headers(tmp_path).items()]
    assert not [line for line in lines if "unsafe-eval'" in line.replace("'wasm-unsafe-eval'", "")]

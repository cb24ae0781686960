"""The content policy lets the theme's own inline scripts run, and none that came by a page."""

from __future__ import annotations

from base64 import b64encode
from hashlib import sha256
from pathlib import Path

import pytest

from handout_site.content_policy import NAME, content_policy, headers, inline_scripts, write_headers
from small_sites import Built, SmallSite, site_of

PAGE = """\
<script>var one = "<b>&amp;";</script>
<script src="x.js"></script>
<SCRIPT type="module">two()</SCRIPT>
<script type="application/json">{"not": "run"}</script>
<p onclick="never()">text</p>
"""
COURSE = """\
publisher: The needlework guild
lessons:
  - title: The first lesson
    handouts: [ruffles/try]
"""
EVIL = "document.title = 1"


def hashed(script: str) -> str:
    return f"'sha256-{b64encode(sha256(script.encode()).digest()).decode()}'"


def allowed(built: Built) -> set[str]:
    """What the policy of a built site says of scripts."""
    policy = (built.folder / NAME).read_text(encoding="utf-8").splitlines()[0]
    return set(policy.partition("script-src ")[2].partition(";")[0].split())


def written(built: Built) -> set[str]:
    """The hash of every inline script in every page of a site."""
    return {hashed(script) for page in built.pages().values() for script in inline_scripts(page)}


def with_booklets(site: SmallSite) -> SmallSite:
    settings = site.config_file.read_text(encoding="utf-8")
    site.write("site_src/mkdocs.yml", f"{settings}      booklets: true\n")
    return site


def test_only_scripts_that_run_and_stand_in_the_page_are_found() -> None:
    assert inline_scripts(PAGE) == ['var one = "<b>&amp;";', "two()"]


def test_each_script_is_allowed_once_and_in_a_steady_order() -> None:
    policy = content_policy(["two()", "one()", "two()"])
    assert policy.count("sha256-") == 2
    assert hashed("two()") in policy
    assert policy == content_policy(["one()", "two()"])


def test_the_headers_are_written_one_a_line(tmp_path: Path) -> None:
    write_headers(tmp_path, ["one()"])
    lines = (tmp_path / NAME).read_text().splitlines()
    assert lines == [f"{name}: {value}" for name, value in headers(["one()"]).items()]
    assert not [line for line in lines if "unsafe-eval'" in line.replace("'wasm-unsafe-eval'", "")]


@pytest.mark.parametrize("address", ["", "https://guild.invalid/sewing/"])
def test_every_script_of_the_theme_is_allowed_on_pages_of_every_kind_and_depth(
    address: str, tmp_path: Path
) -> None:
    names = ("try.md", "ruffles/try.md", "ruffles/deep/deeper/try.md")
    page = '# Try\n\n=== "Tab"\n\n    Text\n'
    site = with_booklets(site_of(tmp_path, dict.fromkeys(names, page), scenario=COURSE))
    if address:
        settings = site.config_file.read_text(encoding="utf-8")
        site.write("site_src/mkdocs.yml", f"site_url: {address}\n{settings}")
    built = site.build()
    hashes = {each for each in allowed(built) if each.startswith("'sha256-")}
    assert {"404.html", "booklet.html"} <= built.pages().keys()
    assert written(built) == hashes


def test_a_script_that_an_author_writes_is_not_allowed(tmp_path: Path) -> None:
    page = f"# Try\n\n<script>{EVIL}</script>\n"
    built = site_of(tmp_path, {"ruffles/try.md": page}).build()
    assert hashed(EVIL) in written(built)
    assert hashed(EVIL) not in allowed(built)


def test_a_template_that_prints_front_matter_into_a_script_gives_it_no_way(tmp_path: Path) -> None:
    """The theme has one for pages that have moved; its script holds an address."""
    page = '---\ntemplate: redirect.html\nlocation: "x"\n---\n# Try\n'
    built = site_of(tmp_path, {"ruffles/try.md": page}).build()
    assert not written(built) <= allowed(built)

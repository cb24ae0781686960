"""A pytest plugin for `mutations.py`: only the tests of some techniques, and an account of them.

Loaded with `-p nearest_only`, in the order in which they are asked for. `NEAREST` is a JSON object:
`keys`, the techniques that a test which walks the register is kept for; `walkers`, the files of
such tests; `seconds`, after which no further test is begun; `account`, the file to write.
"""

from __future__ import annotations

import json
import os
import time
from pathlib import Path
from typing import Any

import pytest

ASKED = json.loads(os.environ["NEAREST"])
STARTED = time.monotonic()
LONGEST_MESSAGE = 300

account: dict[str, Any] = {"failed": [], "ran": 0, "left": 0, "message": ""}


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Keep of the tests that walk the register those of the techniques asked for."""
    kept, left = [], []
    for item in items:
        walks = any(Path(name).name == item.path.name for name in ASKED["walkers"])
        params = getattr(getattr(item, "callspec", None), "params", {})
        wanted = not walks or params.get("key") in ASKED["keys"]
        (kept if wanted else left).append(item)
    items[:] = kept
    account["left"] = len(kept)
    config.hook.pytest_deselected(items=left)


def pytest_collectreport(report: pytest.CollectReport) -> None:
    """A module that cannot even be imported has failed."""
    if report.failed:
        _failed(report.nodeid, str(report.longrepr))


def pytest_runtest_logreport(report: pytest.TestReport) -> None:
    """Note what failed."""
    if report.failed:
        said = getattr(getattr(report.longrepr, "reprcrash", None), "message", report.longrepr)
        _failed(report.nodeid, str(said))


def _failed(test: str, message: str) -> None:
    account["failed"].append(test)
    account["message"] = account["message"] or message[-LONGEST_MESSAGE:]


@pytest.hookimpl(trylast=True)
def pytest_runtest_logfinish() -> None:
    """Count it."""
    account["ran"] += 1
    account["left"] -= 1


@pytest.hookimpl(tryfirst=True)
def pytest_runtest_protocol(item: pytest.Item) -> None:
    """Begin no further test when the time is used up."""
    if time.monotonic() - STARTED > ASKED["seconds"]:
        item.session.shouldstop = "the time is used up"


def pytest_sessionfinish() -> None:
    """Write the account."""
    account["seconds"] = round(time.monotonic() - STARTED, 1)
    Path(ASKED["account"]).write_text(json.dumps(account), encoding="utf-8")

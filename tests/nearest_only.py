"""A pytest plugin for `mutations.py`: only the tests of some techniques, and an account of them.

Loaded with `-p nearest_only`, in the order in which they are asked for. `NEAREST` is a JSON object:
`walkers`, the files of tests that walk the register, and for each the techniques that it is kept
for; `seconds`, after which no further test is begun save those in `always`; `limit`, after which
the system ends the process; `account`, the file to write. Time is that of the processor, so that
other work on the machine changes nothing.
"""

from __future__ import annotations

import json
import os
import resource
import time
from pathlib import Path
from typing import Any

import pytest

ASKED = json.loads(os.environ["NEAREST"])
LONGEST_MESSAGE = 300
resource.setrlimit(resource.RLIMIT_CPU, (ASKED["limit"], ASKED["limit"] + 5))

account: dict[str, Any] = {"failed": [], "ran": 0, "left": 0, "message": ""}


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Keep of the tests that walk the register those of the techniques asked for."""
    kept, left = [], []
    for item in items:
        keys = ASKED["walkers"].get(item.path.name)
        params = getattr(getattr(item, "callspec", None), "params", {})
        wanted = keys is None or params.get("key") in keys
        (kept if wanted else left).append(item)
    items[:] = kept
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


def pytest_runtest_setup(item: pytest.Item) -> None:
    """Begin no further test when the time is used up, save those that are quick."""
    if time.process_time() > ASKED["seconds"] and item.path.name not in ASKED["always"]:
        account["left"] += 1
        pytest.skip("the time is used up")
    account["ran"] += 1


def pytest_sessionfinish() -> None:
    """Write the account."""
    account["seconds"] = round(time.process_time(), 1)
    Path(ASKED["account"]).write_text(json.dumps(account), encoding="utf-8")

"""The project's own site, built once for all tests and all workers of a run.

The first that needs it builds it, the others wait for that: the workers of a run have one folder
in common, and a lock in it.
"""

from __future__ import annotations

import json
import os
from fcntl import LOCK_EX, flock

import pytest

from small_sites import Built, build_real_site

BUILT_AT = 1_699_920_000
"""The build's date, so that a second build can be held against it byte for byte."""


def shared_site(factory: pytest.TempPathFactory, scenario: str = "guild") -> Built:
    """The site of a scenario; whoever gets it must leave it as it is."""
    own = factory.getbasetemp()
    common = (own.parent if "PYTEST_XDIST_WORKER" in os.environ else own) / "shared-site"
    common.mkdir(exist_ok=True)
    folder, logged = common / scenario, common / f"{scenario}.json"
    with (common / f"{scenario}.lock").open("w") as lock:
        flock(lock, LOCK_EX)
        if not logged.exists():
            with pytest.MonkeyPatch.context() as patch:
                patch.setenv("HANDOUTS_SCENARIO", scenario)
                patch.setenv("SOURCE_DATE_EPOCH", str(BUILT_AT))
                warnings = build_real_site(folder).warnings
            logged.write_text(json.dumps(warnings), encoding="utf-8")
    return Built(folder, json.loads(logged.read_text(encoding="utf-8")))

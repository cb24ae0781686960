"""Two folders exchange their places in one step, where the system has one."""

from __future__ import annotations

import ctypes
import os
import sys
from pathlib import Path

_HERE = -100
"""AT_FDCWD of Linux: a path is meant as it is written."""
_EXCHANGE = 2
"""RENAME_EXCHANGE of Linux (renameat2, since kernel 3.15)."""


def exchange(one: Path, other: Path) -> bool:
    """Let two folders exchange their places; False, and nothing done, where that cannot be."""
    if sys.platform != "linux":
        return False
    rename = getattr(ctypes.CDLL(None), "renameat2", None)
    if rename is None:
        return False
    failed = rename(_HERE, os.fsencode(one), _HERE, os.fsencode(other), _EXCHANGE)
    return not failed

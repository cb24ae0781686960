"""How far a run looks: at a sample in the ordinary one, at everything in the long search.

    HYPOTHESIS_PROFILE=search pytest

is the long search; tests/conftest.py says how many examples either draws.
"""

from __future__ import annotations

from hypothesis import settings

SEARCHING = settings.default.max_examples > 100
"""Whether this run is the long search."""

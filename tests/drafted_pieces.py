"""The drafts of a garment's pieces, with their edges, which its working no longer holds."""

from __future__ import annotations

import pytest

from handout_engine.drafting import pieces
from handout_engine.drafting.drafts import Draft
from handout_engine.drawing.scene import Scene
from handout_engine.kinds import Raw
from handout_engine.values import Value
from handout_engine.workings import Working
from worked import work


def drafted(key: str, **written: Raw) -> tuple[Working, list[Draft]]:
    """A garment's working, and the drafts of its pieces."""
    found: list[Draft] = []
    drawn = pieces.draft_scene

    def note(draft: Draft, wide: Value, long: Value) -> Scene:
        found.append(draft)
        return drawn(draft, wide, long)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(pieces, "draft_scene", note)
        return work(key, **written), found

"""What the console script says, to hold other readings of the same numbers against."""

from __future__ import annotations

import json

from click.testing import CliRunner

from handout_site.console import main


def compute(technique: str, *measures: str, units: str = "inches") -> dict[str, str]:
    """What the console script says of each value."""
    told = CliRunner().invoke(main, ["compute", technique, *measures, "--json", "--units", units])
    assert told.exit_code == 0, told.output
    values = json.loads(told.output)["values"]
    return {
        name: value["text"] if isinstance(value, dict) and "text" in value else value
        for name, value in values.items()
    }

"""Commands that build or serve the site of a scenario: MkDocs with the project's own settings."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import click
from mkdocs.exceptions import PluginError

from handout_site.standing_in import refuse_others

SETTINGS = Path("site_src") / "mkdocs.yml"
SITES = Path("sites")
VARIABLE = "HANDOUTS_SCENARIO"
USUAL = "guild"

scenario = click.argument("scenario", envvar=VARIABLE, default=USUAL)
settings = click.option(
    "--settings",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    default=SETTINGS,
    show_default=True,
    help="The site's mkdocs.yml.",
)


@click.command()
@scenario
@settings
@click.option(
    "--into",
    type=click.Path(file_okay=False, path_type=Path),
    help="The folder to build into; if left out, sites/ and the scenario's name.",
)
def build(scenario: str, settings: Path, into: Path | None) -> None:
    """Build the site of a SCENARIO strictly: guild, course, baby or one of your own.

    The last site stays until the new one is whole; what is wrong or missing leaves it as it was.
    """
    if into is not None:
        _refuse_other_files(into)
    folder = into or SITES / scenario
    _mkdocs("build", scenario, settings, "--strict", "--site-dir", str(folder.resolve()))
    click.echo(f"built: open {folder / 'index.html'}")


@click.command()
@scenario
@settings
@click.option("--address", default="localhost:8000", show_default=True, help="Where to serve it.")
def serve(scenario: str, settings: Path, address: str) -> None:
    """Serve the site of a SCENARIO, and build it anew at every change."""
    _mkdocs("serve", scenario, settings, "--livereload", "--dev-addr", address)


def _refuse_other_files(folder: Path) -> None:
    """Leave a folder alone that holds anything but what a build put there."""
    try:
        refuse_others(folder)
    except PluginError as error:
        click.echo(str(error), err=True)
        sys.exit(1)


def _mkdocs(command: str, scenario: str, settings: Path, *options: str) -> None:
    """Run MkDocs for a scenario; leaves with its status when it fails."""
    environment = {"NO_MKDOCS_2_WARNING": "1", **os.environ, VARIABLE: scenario}
    words = [sys.executable, "-m", "mkdocs", command, "-f", str(settings), *options]
    try:
        ran = subprocess.run(words, env=environment, check=False)
    except KeyboardInterrupt:
        return
    if ran.returncode:
        sys.exit(ran.returncode)

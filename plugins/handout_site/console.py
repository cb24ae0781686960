"""The console script: compute one technique, list them all, check handouts without building."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable
from pathlib import Path
from typing import NoReturn

import click
from mkdocs.exceptions import MkDocsException
from mkdocs.utils.meta import get_data

from handout_engine.amounts.refusals import RefusalError, RefusalsError, nearest_name, quoted
from handout_engine.amounts.saying import Tape
from handout_engine.drawing.markup import xml
from handout_engine.drawing.svg import paper_sheet
from handout_engine.paper.sheets import Sheet, too_large, whole_sheet
from handout_engine.paper.tiling import PAPERS
from handout_engine.paper.true_scale import true_scale
from handout_engine.register import find, keys
from handout_engine.working.technique import Technique, make
from handout_engine.working.workings import Working
from handout_site.failures import not_done
from handout_site.front_matter import front_matter_slips
from handout_site.leading import link_slips
from handout_site.pdf import find_printer
from handout_site.publishing import build, serve
from handout_site.reading import NO_TEXT, Terms, first_line, read_handout
from handout_site.slips import Slip
from handout_site.spelled import as_json, as_text
from handout_site.starting import new

TAPES = {
    "inches": Tape("inches"),
    "metric": Tape("metric"),
}


class Commands(click.Group):
    """Commands that say in a sentence what cannot be read or written."""

    def invoke(self, ctx: click.Context) -> object:
        """Run the command that is asked for."""
        try:
            return super().invoke(ctx)
        except BrokenPipeError:
            raise
        except OSError as error:
            _leave([not_done(error)])


@click.group(cls=Commands)
def main() -> None:
    """Work out heirloom sewing handouts from their measures."""


main.add_command(new)
main.add_command(build)
main.add_command(serve)


@main.command()
@click.argument("technique")
@click.argument("measures", nargs=-1, metavar="[INPUT=VALUE]...")
@click.option("--json", "wants_json", is_flag=True, help="Print the working as JSON.")
@click.option(
    "--svg",
    "svg_file",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write the drawings to this file, one below another.",
)
@click.option("--units", type=click.Choice(sorted(TAPES)), default="inches", show_default=True)
def compute(
    technique: str,
    measures: tuple[str, ...],
    wants_json: bool,
    svg_file: Path | None,
    units: str,
) -> None:
    """Work out one TECHNIQUE, for instance: banded-ruffle edge="9 in" band="1/4 in"."""
    tape = TAPES[units]
    working = _work(technique, measures)
    if svg_file is not None:
        scenes = [picture.scene for picture in working.pictures]
        _write(svg_file, xml(paper_sheet(scenes, tape, technique)))
    if wants_json:
        click.echo(json.dumps(as_json(working, tape), indent=2, ensure_ascii=False))
    else:
        click.echo(as_text(working, tape))


@main.command()
@click.argument("technique", metavar="TECHNIQUE|GARMENT")
@click.argument("value")
@click.argument("measures", nargs=-1, metavar="[INPUT=VALUE]...")
def where(technique: str, value: str, measures: tuple[str, ...]) -> None:
    """Say where the VALUE of a technique is worked out: file, line and formula."""
    made = _made(technique, measures)
    found = made.declaration(value)
    if found is None:
        near = nearest_name(value, made.values)
        _leave([f'{technique} has no value "{quoted(value)}"{near}'])
    holder, declared = found
    code = declared.work.__code__
    worked_out = holder.result(declared).value
    assert worked_out is not None
    how = f" = {worked_out.how}" if worked_out.how else ""
    click.echo(f"{code.co_filename}:{code.co_firstlineno}: {worked_out.label}{how}")


@main.command()
@click.argument("technique", metavar="TECHNIQUE|GARMENT")
@click.argument("measures", nargs=-1, metavar="[INPUT=VALUE]...")
@click.option(
    "--pdf",
    "pdf_file",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write all pages to this PDF.",
)
@click.option(
    "--html",
    "html_file",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write all pages to this HTML file, to print from a browser.",
)
@click.option(
    "--svg",
    "svg_file",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write the first drawing whole to this SVG, others beside it.",
)
@click.option("--paper", type=click.Choice(sorted(PAPERS)), default="a4", show_default=True)
@click.option("--units", type=click.Choice(sorted(TAPES)), default="inches", show_default=True)
def sheet(  # noqa: PLR0913, PLR0917 - one for each option of the console
    technique: str,
    measures: tuple[str, ...],
    pdf_file: Path | None,
    html_file: Path | None,
    svg_file: Path | None,
    paper: str,
    units: str,
) -> None:
    """Write the pieces, templates and marking sheets of one TECHNIQUE at true scale."""
    tape = TAPES[units]
    working = _work(technique, measures)
    try:
        printed = whole_sheet(working, tape)
    except RefusalError as refusal:
        _leave([f"{working.technique}: {refusal.message}"])
    for sentence in too_large(working):
        click.echo(sentence, err=True)
    if (pdf_file, html_file, svg_file) == (None, None, None):
        raise click.UsageError("say where to write it: --pdf FILE, --html FILE or --svg FILE")
    if pdf_file is not None:
        _write(pdf_file, _pdf(printed, paper, tape))
    if html_file is not None:
        _write(html_file, printed.document(paper, tape))
    if svg_file is not None:
        for number, drawing in enumerate(printed.drawings, 1):
            path = svg_file if number == 1 else svg_file.with_stem(f"{svg_file.stem}-{number}")
            _write(path, xml(true_scale(drawing.scene, tape)) + "\n")


def _pdf(printed: Sheet, paper: str, tape: Tape) -> bytes:
    printer = find_printer()
    if printer is None:
        _leave(
            [
                "a PDF needs libcairo, which is not installed; on Debian: apt-get install "
                "libcairo2 fonts-dejavu-core. Or write pages to print from a browser: --html FILE"
            ]
        )
    return printer(printed.title, printed.pages(paper, tape))


def _write(path: Path, content: str | bytes) -> None:
    try:
        path.write_bytes(content.encode() if isinstance(content, str) else content)
    except OSError as error:
        _leave([f"{path} cannot be written: {error.strerror}"])


def _work(key: str, measures: tuple[str, ...]) -> Working:
    """The working of a technique; leaves with status 2 for wrong usage and 1 for wrong input."""
    return _made(key, measures).work()


def _made(key: str, measures: tuple[str, ...]) -> Technique:
    """A technique that can be sewn; leaves as `_work` does."""
    written: dict[str, str] = {}
    for measure in measures:
        name, sign, value = measure.partition("=")
        if not sign:
            raise click.UsageError(f'"{measure}" is not INPUT=VALUE')
        if name.strip() in written:
            raise click.UsageError(f"{name.strip()} is given twice")
        written[name.strip()] = value
    try:
        technique: type[Technique] = find(key)
        made = make(technique, written)
        made.work()
    except RefusalsError as several:
        _leave(f"{key}: {refusal.message}" for refusal in several.refusals)
    except RefusalError as refusal:
        _leave([f"{key}: {refusal.message}"])
    return made


def _leave(sentences: Iterable[str]) -> NoReturn:
    for sentence in sentences:
        click.echo(sentence, err=True)
    sys.exit(1)


@main.command("list")
def list_techniques() -> None:
    """List all techniques by family."""
    every = sorted((find(key).family, key, find(key).summary) for key in keys())
    for family, key, summary in every:
        click.echo(f"{family}: {key}: {summary}")


@main.command()
@click.argument(
    "paths",
    nargs=-1,
    required=True,
    type=click.Path(exists=True, path_type=Path),
    metavar="PATH...",
)
def check(paths: tuple[Path, ...]) -> None:
    """Say all that is wrong in handouts, without building a site."""
    found = {path: _markdown_files(path) for path in paths}
    files = [file for path in paths for file in found[path]]
    slips = {slip for file in files for slip in _slips(file)}
    try:
        slips.update(link_slips(found))
    except MkDocsException as error:
        _leave([*map(str, sorted(slips)), str(error)])
    if slips:
        _leave(str(slip) for slip in sorted(slips))
    click.echo(f"{len(files)} file{'' if len(files) == 1 else 's'} checked, nothing to mend")


def _markdown_files(path: Path) -> list[Path]:
    if not path.is_dir():
        return [path]
    return sorted(file for file in path.rglob("*.md") if file.is_file())


def _slips(file: Path) -> list[Slip]:
    try:
        text = file.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError):
        return [Slip(str(file), 1, NO_TEXT)]
    body, _ = get_data(text)
    handout = read_handout(body, str(file), Terms(), first_line=first_line(text, body))
    return [*front_matter_slips(text, str(file)), *handout.slips]

"""`outline`: outlines of the designer's own, out of a drawing and into a design."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import RefusedError
from quarterturn.cli.reading import Taken, take_in
from quarterturn.files import write_file

if TYPE_CHECKING:
    from quarterturn import geometry
    from quarterturn.design.drawings import Drawing, Found, Refused


@click.command(short_help="Take outlines of your own from a drawing.")
@click.argument("file", metavar="FILE", type=str)
@click.option("--id", "identity", metavar="ID", help="Take only the shape with this id in the drawing.")
@click.option("--name", metavar="NAME", help="What to call it; if not given, as its id suggests.")
@click.option(
    "--into", type=click.Path(path_type=Path), metavar="FILE", help="Add them to this design, its notes kept."
)
@click.option("--replace", is_flag=True, help="With --into: exchange outlines of the same name.")
def outline(file: str, identity: str | None, name: str | None, into: Path | None, replace: bool) -> None:
    """Read the closed shapes of an SVG drawing, and print each as a table [outlines.NAME] for a design.

    FILE is a drawing in SVG, or - for standard input. What cannot be cut out of cloth is told, with the reason.
    """
    if replace and not into:
        raise RefusedError("--replace goes with --into")
    taken = take_in(file)
    drawing = _read(taken, identity)
    for refused in drawing.refused:
        _tell_refused(taken.name, refused)
    if not drawing.outlines:
        raise RefusedError(_nothing(taken.name, identity))
    if not drawing.states_size:
        click.echo(f"{taken.name}: states no size, so that 96 of its units count as an inch", err=True)
    named = dict(zip(_names(drawing.outlines, name), drawing.outlines, strict=True))
    if into:
        _add(into, {each: found.path for each, found in named.items()}, replace)
        click.echo(f"Added {_listed(named)} to {into}.")
    else:
        click.echo("\n\n".join(_table(each, found) for each, found in named.items()))


def _read(taken: Taken, identity: str | None) -> Drawing:
    from quarterturn.design.drawings import DrawingError, read_drawing

    try:
        return read_drawing(taken.content, identity)
    except DrawingError as error:
        place = f":{error.line}" if error.line else ""
        place += f":{error.column}" if error.column else ""
        raise RefusedError(f"{taken.name}{place}: {error.reason}") from error


def _tell_refused(name: str, refused: Refused) -> None:
    called = f" {refused.identity!r}" if refused.identity else ""
    click.echo(f"{name}:{refused.line}: {refused.name}{called}: {refused.reason}", err=True)
    for line in refused.detail.splitlines():
        click.echo(f"    {line}", err=True)


def _nothing(name: str, identity: str | None) -> str:
    if identity is None:
        return f"{name}: holds no closed shape that could be cut out of cloth"
    return f"{name}: holds no closed shape with the id {identity!r}"


def _names(outlines: Sequence[Found], name: str | None) -> list[str]:
    from quarterturn.design.drawings import suggested_names
    from quarterturn.geometry import OUTLINES

    if name is None:
        return suggested_names(found.identity for found in outlines)
    if len(outlines) > 1:
        raise RefusedError(f"--name is for one outline, and there are {len(outlines)}; say which by --id")
    if name in OUTLINES:
        raise RefusedError(f"the program has an outline {name!r} of its own; give another --name")
    if not name.strip() or not name.isprintable() or len(name) > 120:
        raise RefusedError("--name is no name; give a word or two")
    return [name]


def _table(name: str, found: Found) -> str:
    from quarterturn.design.drawings import table_of
    from quarterturn.geometry import path_bounds
    from quarterturn.measure import Units

    box = path_bounds(found.path)
    size = f'{box.width:.4g}" × {box.height:.4g}" ({box.width * 25.4:.1f} × {box.height * 25.4:.1f} mm)'
    return f"# {size}, the {found.name} on line {found.line}\n{table_of(name, found.path, Units.INCH)}"


def _add(into: Path, outlines: Mapping[str, geometry.Path], replace: bool) -> None:
    from quarterturn.design import WriteError
    from quarterturn.design.drawings import with_outlines

    taken = take_in(str(into))
    try:
        text = with_outlines(taken.content.decode("utf-8"), outlines, replace=replace)
    except UnicodeDecodeError as error:
        raise RefusedError(f"{into}: is not text in UTF-8") from error
    except WriteError as error:
        remedy = "; give another --name, or --replace it" if "already" in str(error) else ""
        raise RefusedError(f"{into}: {error}{remedy}") from error
    write_file(into, text.encode())


def _listed(named: Mapping[str, Found]) -> str:
    from quarterturn.design.drawings import width_text

    return ", ".join(f"{name} ({width_text(found.path)} wide)" for name, found in named.items())

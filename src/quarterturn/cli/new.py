"""`new`: a design to begin with."""

from __future__ import annotations

from pathlib import Path

import click

from quarterturn.cli.ending import RefusedError
from quarterturn.files import write_file


@click.command(short_help="Begin a design.")
@click.argument("file", metavar="FILE", type=click.Path(path_type=Path))
@click.option("--title", help="The name of the quilt; if not given, that of the file.")
@click.option(
    "--units",
    type=click.Choice(["inch", "metric"]),
    default="inch",
    show_default=True,
    help="In what the pattern is drafted and printed.",
)
@click.option("--setting", metavar="NAME", help="Begin with a known setting; `settings` lists them.")
@click.option("--replace", is_flag=True, help="Write over a file that is there.")
def new(file: Path, title: str | None, units: str, setting: str | None, replace: bool) -> None:
    """Write a small design that works, with a comment on each thing to change, or one with a known setting."""
    if file.is_dir():
        raise RefusedError(f"{file}: is a folder; name a file in it")
    if file.exists() and not replace:
        raise RefusedError(f"{file}: is there already; --replace writes over it")
    write_file(file, beginning(title or titled(file), units, setting).encode())
    click.echo(f"Wrote {file}. Next: change it, then check it: quarterturn check {file}")


def beginning(title: str, units: str, setting: str | None) -> str:
    """Return the text that a new design begins with."""
    from quarterturn.design import starter
    from quarterturn.measure import Units

    if setting is None:
        return starter(title, Units(units))
    from quarterturn.setting.known import begin_with, known_names

    if setting not in known_names():
        raise RefusedError(f"there is no known setting {setting!r}; quarterturn settings lists them")
    return begin_with(setting, title, Units(units))


def titled(file: Path) -> str:
    """Return the title that a file's name suggests: `late-peonies.toml` gives Late Peonies."""
    words = file.stem.replace("-", " ").replace("_", " ").split()
    return " ".join(word[:1].upper() + word[1:] for word in words) or "Untitled"

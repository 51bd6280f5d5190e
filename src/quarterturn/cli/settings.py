"""`settings`: the known settings that a design can begin with."""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from quarterturn.cli.telling import tell_json

if TYPE_CHECKING:
    from quarterturn.setting.known import KnownSetting


@click.command(short_help="List the known settings to begin with.")
@click.option("--json", "as_json", is_flag=True, help="Print the list as JSON.")
def settings(as_json: bool) -> None:
    """List the known settings: the name, the repeat in units, the colourways, what it looks like."""
    from quarterturn.measure import aligned
    from quarterturn.setting.known import known_names, known_setting

    known = [known_setting(name) for name in known_names()]
    if as_json:
        tell_json([_record(each) for each in known])
        return
    for line in aligned([_row(each) for each in known], indent=""):
        click.echo(line)


def _row(known: KnownSetting) -> tuple[str, ...]:
    from quarterturn.measure import show_count

    rows, columns = known.repeat
    return known.name, f"{rows} × {columns}", show_count(known.colourways, "colourway"), known.looks


def _record(known: KnownSetting) -> dict[str, object]:
    rows, columns = known.repeat
    return {
        "name": known.name,
        "rows": rows,
        "columns": columns,
        "symmetry": known.setting.symmetry.value,
        "colourways": known.colourways,
        "looks": known.looks,
    }

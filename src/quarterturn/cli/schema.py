"""`schema`: the shape of a design file, for editors."""

from __future__ import annotations

import click

from quarterturn.cli.telling import tell_json


@click.command(short_help="Print the JSON Schema of the design file.")
def schema() -> None:
    """Print the JSON Schema of the design file, for editors that complete and check while one types."""
    from quarterturn import design

    tell_json(design.schema())

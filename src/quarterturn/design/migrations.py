"""Older formats of the file, and the way from each to the next. A file of a newer format is refused."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeAlias

from quarterturn.design.notes import Notes

Data: TypeAlias = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Migration:
    """The way from format `origin` to the next one. `change` gets data of its own to alter and returns it."""

    origin: int
    change: Callable[[Data], Data]


MIGRATIONS: tuple[Migration, ...] = ()
"""In order, without a gap. The newest format is one more than the last origin; format 1 is the first."""


def newest(migrations: tuple[Migration, ...] = MIGRATIONS) -> int:
    """Return the format that this program writes."""
    return migrations[-1].origin + 1 if migrations else 1


def migrate(data: Data, notes: Notes, migrations: tuple[Migration, ...] = MIGRATIONS) -> Data | None:
    """Bring data to the newest format; None where its format is not known, which is noted."""
    version, last = data.get("format"), newest(migrations)
    oldest = migrations[0].origin if migrations else last
    if version is None:
        notes.add("format-missing", "format", "The file does not say which format it has.", _write(last))
        return data
    if isinstance(version, bool) or not isinstance(version, int):
        return data
    if version > last:
        remedy = f"Install a newer version of this program; it reads formats up to {last}."
        notes.add(
            "format-newer", "format", "The file was written for a later version of this program.", remedy
        )
        return None
    if version < oldest:
        notes.add("format-unknown", "format", "There is no such format.", _write(last))
        return None
    for migration in migrations:
        if data["format"] == migration.origin:
            data = migration.change(data) | {"format": migration.origin + 1}
    return data


def _write(last: int) -> str:
    return f"Write format = {last} at the top of the file."

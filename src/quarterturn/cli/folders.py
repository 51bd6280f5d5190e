"""Keep `publish` from putting its folder in the place of anything that it did not make."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

from quarterturn.cli.ending import RefusedError

CONTENTS = "contents.txt"
"""The file of a published folder that lists the others: on each line a checksum, two spaces, a name."""


def guard(folder: Path) -> None:
    """Raise RefusedError where something other than a published or an empty folder is in the place."""
    if not folder.exists():
        return
    if not folder.is_dir():
        raise RefusedError(f"{folder}: is a file; name a folder with --to")
    if Path.cwd().is_relative_to(folder.resolve()):
        raise RefusedError(f"{folder}: is the folder you are in, or around it; name another with --to")
    if foreign := sorted(_names(folder) - _published(folder)):
        raise RefusedError(
            f"{folder}: holds {foreign[0]}, which no publish made; name another folder with --to"
        )


def guard_others(folder: Path, made: Collection[str]) -> None:
    """Raise RefusedError where files were published before that are not among those made now."""
    if folder.is_dir() and (others := sorted(_names(folder) - set(made))):
        raise RefusedError(
            f"{folder}: holds {others[0]}, which --only would not make anew; name another folder with --to"
        )


def _names(folder: Path) -> set[str]:
    return {path.name for path in folder.iterdir()}


def _published(folder: Path) -> set[str]:
    """Return the names that the folder's list of contents has, and its own."""
    try:
        lines = (folder / CONTENTS).read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError):
        return set()
    return {CONTENTS, *(line.partition("  ")[2] for line in lines)}

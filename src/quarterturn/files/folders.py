"""Keep a publish from putting its folder in the place of anything that it did not make."""

from __future__ import annotations

from collections.abc import Collection
from pathlib import Path

CONTENTS = "contents.txt"
"""The file of a published folder that lists the others: on each line a checksum, two spaces, a name."""


class ForeignFolderError(Exception):
    """A folder that a publish may not replace. The message says what it holds, without a full stop at its end."""


def guard(folder: Path) -> None:
    """Raise ForeignFolderError where something other than a published or an empty folder is in the place."""
    if not folder.exists():
        return
    if not folder.is_dir():
        raise ForeignFolderError(f"{folder}: is a file")
    if Path.cwd().is_relative_to(folder.resolve()):
        raise ForeignFolderError(f"{folder}: is the folder you are in, or around it")
    if foreign := sorted(_names(folder) - _published(folder)):
        raise ForeignFolderError(f"{folder}: holds {foreign[0]}, which no publish made")


def guard_others(folder: Path, made: Collection[str]) -> None:
    """Raise ForeignFolderError where files were published before that are not among those made now."""
    if folder.is_dir() and (others := sorted(_names(folder) - set(made))):
        raise ForeignFolderError(f"{folder}: holds {others[0]}, which would not be made anew")


def _names(folder: Path) -> set[str]:
    return {path.name for path in folder.iterdir()}


def _published(folder: Path) -> set[str]:
    """Return the names that the folder's list of contents has, and its own."""
    try:
        lines = (folder / CONTENTS).read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError):
        return set()
    return {CONTENTS, *(line.partition("  ")[2] for line in lines)}

"""Look into the folders where designs lie, and make one where a design is to be written."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

from quarterturn.studio.filing import SUFFIX, named_place
from quarterturn.studio.refusals import Refusal, reason

MOST_NAMES = 400


@dataclass(frozen=True, slots=True)
class Folder:
    """A folder: where it is, and the names of the folders and designs in it; hidden ones are not told.

    `wanted` is the folder that was asked for, where that is not there: `path` is then the nearest above it that is.
    """

    path: Path
    folders: tuple[str, ...]
    designs: tuple[str, ...]
    wanted: Path | None = None


def look_into(written: str) -> Folder:
    """Return the folder that a designer's words name, or that of the file that they name. Raises Refusal."""
    place = named_place(written or "~")
    wanted = place.parent if place.suffix.lower() == SUFFIX and not place.is_dir() else place
    there = next(folder for folder in (wanted, *wanted.parents) if folder.is_dir())
    try:
        with os.scandir(there) as entries:
            found = sorted((entry for entry in entries if not entry.name.startswith(".")), key=_by_name)
    except OSError as error:
        raise Refusal(reason(error), "Look into another folder.") from error
    folders = tuple(entry.name for entry in found if entry.is_dir())
    designs = tuple(entry.name for entry in found if entry.name.lower().endswith(SUFFIX) and entry.is_file())
    return Folder(there, folders[:MOST_NAMES], designs[:MOST_NAMES], None if there == wanted else wanted)


def make_folder_of(path: Path) -> None:
    """Make the folder in which a file is to be written. Raises Refusal."""
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise Refusal(reason(error), "Put it somewhere else.") from error


def _by_name(entry: os.DirEntry[str]) -> tuple[str, str]:
    return entry.name.casefold(), entry.name

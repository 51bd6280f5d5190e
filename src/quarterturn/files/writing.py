"""Write files and folders whole or not at all.

Everything is written beside its place under a hidden name that ends in `.part`, and put there by one renaming.
A run that is killed leaves at most such a hidden leftover; the next run to the same place sweeps it away.
"""

from __future__ import annotations

import contextlib
import os
import secrets
import shutil
from collections.abc import Iterator, Mapping
from pathlib import Path

from quarterturn.files.swapping import restore, swap

PART = ".part"


def write_file(file: Path, content: bytes) -> None:
    """Write one file; its folder must be there. Raises OSError, and then leaves what was there as it was."""
    file = Path(os.path.realpath(file))
    sweep(file)
    with _part(file) as part:
        _fill(part, content)
        if file.exists():
            shutil.copymode(file, part)
        part.replace(file)
    settle(file.parent)


def write_folder(folder: Path, files: Mapping[str, bytes]) -> None:
    """Put a folder with exactly these files in place of `folder`, which may be there or not.

    Folders on the way to it are made. Raises OSError, and then leaves what was there as it was.
    """
    folder = Path(os.path.realpath(folder))
    folder.parent.mkdir(parents=True, exist_ok=True)
    restore(folder)
    sweep(folder)
    with _part(folder) as part:
        part.mkdir()
        with _held(part):
            for name, content in files.items():
                _fill(part / name, content)
            swap(part, folder)


def settle(folder: Path) -> None:
    """Let the names of a folder reach the disk, where the system can be asked to."""
    with contextlib.suppress(OSError):
        descriptor = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)


def sweep(place: Path) -> None:
    """Remove what runs that were killed left beside a place; leave alone what another run is still writing."""
    for leftover in _leftovers(place):
        with _held(leftover) as ours:
            if ours:
                _remove(leftover)


def _leftovers(place: Path) -> list[Path]:
    start = f".{place.name}."
    if not place.parent.is_dir():
        return []
    beside = place.parent.iterdir()
    return [path for path in beside if path.name.startswith(start) and path.name.endswith(PART)]


@contextlib.contextmanager
def _part(place: Path) -> Iterator[Path]:
    """Give a hidden name beside a place, and remove whatever has that name in the end."""
    part = place.with_name(f".{place.name}.{secrets.token_hex(6)}{PART}")
    try:
        yield part
    finally:
        _remove(part)


@contextlib.contextmanager
def _held(path: Path) -> Iterator[bool]:
    """Hold a lock on a path, which the system lets go of however the run ends; tell whether it was to be had."""
    try:
        import fcntl
    except ImportError:  # Windows does not remove what a living run has open
        yield True
        return
    try:
        descriptor = os.open(path, os.O_RDONLY)
    except OSError:
        yield False
        return
    try:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        yield True
    except BlockingIOError:
        yield False
    finally:
        os.close(descriptor)


def _fill(file: Path, content: bytes) -> None:
    with file.open("xb") as stream:
        stream.write(content)
        stream.flush()
        os.fsync(stream.fileno())


def _remove(path: Path) -> None:
    if path.is_dir() and not path.is_symlink():
        shutil.rmtree(path, ignore_errors=True)
    else:
        with contextlib.suppress(OSError):
            path.unlink()

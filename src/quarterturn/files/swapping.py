"""Put a new folder in the place of an old one without a moment in which neither is there."""

from __future__ import annotations

import ctypes
import errno
import os
import shutil
import sys
from pathlib import Path

_HERE = -100
_EXCHANGE = 2
"""AT_FDCWD and RENAME_EXCHANGE of Linux (renameat2(2))."""

_UNKNOWN = {errno.ENOSYS, errno.EINVAL}
"""What a system or a file system says that cannot exchange."""


def swap(new: Path, place: Path) -> None:
    """Move `new` to `place`; what was there, if anything, is afterwards at `new`.

    On Linux this is one operation. Elsewhere two renamings follow each other, and a kill between them leaves
    the old folder whole under the hidden name of `aside`, from where `restore` fetches it.
    """
    if not place.exists():
        new.rename(place)
    elif not _exchanged(new, place):
        old = aside(place)
        place.rename(old)
        new.rename(place)
        old.rename(new)


def aside(place: Path) -> Path:
    """Return where the old folder is for the moment between two renamings."""
    return place.with_name(f".{place.name}.old")


def restore(place: Path) -> None:
    """Fetch an old folder back that a kill between two renamings left aside, or remove it where it is not needed."""
    old = aside(place)
    if not old.is_dir():
        return
    if place.exists():
        shutil.rmtree(old, ignore_errors=True)
    else:
        old.rename(place)


def _exchanged(one: Path, other: Path) -> bool:
    """Exchange two paths in one operation; tell whether the system can."""
    if sys.platform != "linux":
        return False
    renameat2 = getattr(ctypes.CDLL(None, use_errno=True), "renameat2", None)
    if renameat2 is None:
        return False
    if renameat2(_HERE, os.fsencode(one), _HERE, os.fsencode(other), _EXCHANGE) == 0:
        return True
    code = ctypes.get_errno()
    if code in _UNKNOWN:
        return False
    raise OSError(code, os.strerror(code), str(other))

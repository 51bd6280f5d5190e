"""Read designs from files that the designer names, and say where they may be written."""

from __future__ import annotations

import os
import stat
from dataclasses import dataclass
from pathlib import Path

from quarterturn.studio.journal import hash_of
from quarterturn.studio.refusals import NotHereError, Refusal, reason

SUFFIX = ".toml"
MOST_BYTES = 32 * 2**20


@dataclass(frozen=True, slots=True)
class Filed:
    """A file as it was read: its text, and the hash of its bytes."""

    text: str
    disk: str
    is_text: bool = True


def place(written: str, *, new: bool = False) -> Path:
    """Return the place that a designer's words name, from the folder that the studio was started in.

    Only design files are opened and written, so that a slip of the pen touches nothing else; a `new` one may be
    named without the ending, and gets it. Raises Refusal.
    """
    path = named_place(written)
    if new and path.name and not path.suffix:
        path = path.with_name(f"{path.name}{SUFFIX}")
    if path.suffix.lower() != SUFFIX:
        raise Refusal(f"{path.name} is no design file.", f"Name a file that ends in {SUFFIX}.")
    return path


def named_place(written: str) -> Path:
    """Return the file or folder that a designer's words name. Raises Refusal."""
    if not written.strip() or "\0" in written or any(0xD800 <= ord(letter) <= 0xDFFF for letter in written):
        raise Refusal("This names no file.", f"Name a file that ends in {SUFFIX}.")
    try:
        return Path(os.path.realpath(Path(written.strip()).expanduser()))
    except (OSError, RuntimeError, ValueError) as error:
        raise Refusal("This names no file.", f"Name a file that ends in {SUFFIX}.") from error


def read_file(path: Path) -> Filed:
    """Return what is in a file. Raises Refusal."""
    try:
        content = content_of(path, MOST_BYTES)
    except FileNotFoundError as error:
        raise NotHereError(f"There is no file {path}.", "Look where it is, and name it again.") from error
    except OSError as error:
        raise Refusal(reason(error), "Mend that, and open it again.") from error
    if len(content) > MOST_BYTES:
        raise Refusal(f"{path.name} is larger than 32 MB.", "Open a design.")
    try:
        return Filed(content.decode("utf-8-sig"), hash_of(content))
    except UnicodeDecodeError as error:
        raise Refusal(f"{path.name} is no text in UTF-8.", "Open a design, or save it as UTF-8.") from error


def hash_now(path: Path) -> str:
    """Return the hash of a file as it is; nothing where it cannot be read."""
    try:
        return hash_of(content_of(path, MOST_BYTES))
    except OSError:
        return ""


def content_of(path: Path, most: int) -> bytes:
    """Return the bytes of a file proper, one more than `most` at most. Raises OSError.

    What else has a name may never end, or begin something.
    """
    descriptor = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_CLOEXEC", 0))
    with open(descriptor, "rb") as stream:  # noqa: PTH123 - opened by its descriptor
        if not stat.S_ISREG(os.fstat(descriptor).st_mode):
            raise OSError(0, "is no file", str(path))
        return stream.read(most + 1)

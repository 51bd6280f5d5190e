"""Designs and desks to try the studio with."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from quarterturn.design import starter
from quarterturn.measure import Units
from quarterturn.studio.acts import Act
from quarterturn.studio.acts.putting import Put
from quarterturn.studio.desk import Desk

TEXT = starter("Rounds", Units.INCH)
COMMENTED = f"# mine\n{TEXT}"


def titled(title: str) -> Act:
    """Return an act that gives the quilt a title."""
    return Put(at="title", value=title)


@contextmanager
def open_desk(state: Path) -> Iterator[Desk]:
    """Open a desk and clear it in the end."""
    desk = Desk(state)
    try:
        yield desk
    finally:
        desk.stop()


def file_of(folder: Path, text: str = TEXT) -> Path:
    """Write a design into a folder and return its file."""
    file = folder.resolve() / "rounds.toml"
    file.write_text(text, encoding="utf-8")
    return file

"""The examples that come along, by name: beside the studio where it is installed, else in the folder of the source."""

from __future__ import annotations

from functools import cache
from pathlib import Path

_HERE = Path(__file__).parent


def examples_folder() -> Path:
    """Return where the examples are."""
    packed = _HERE / "examples"
    return packed if packed.is_dir() else _HERE.parents[2] / "examples"


@cache
def examples() -> dict[str, str]:
    """Return the text of each example by its name."""
    return {file.stem: file.read_text(encoding="utf-8") for file in sorted(examples_folder().glob("*.toml"))}

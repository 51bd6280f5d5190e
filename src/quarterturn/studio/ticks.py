"""What has been ticked off while sewing: ids of entries by design and size, kept in a file of the state folder."""

from __future__ import annotations

import json
import os
from pathlib import Path


class Ticks:
    """The ticks of all designs, in one small file that is exchanged in one operation."""

    def __init__(self, folder: Path) -> None:
        self._file = folder / "ticks.json"

    def of(self, design: str, size: str) -> frozenset[str]:
        """Return the ids that are ticked; none where the file cannot be read."""
        return frozenset(self._all().get(design, {}).get(size, ()))

    def tick(self, design: str, size: str, entry: str, *, done: bool) -> frozenset[str]:
        """Tick an entry, or take its tick away, and return all ids that are ticked then."""
        every = self._all()
        ids = set(every.setdefault(design, {}).get(size, ()))
        ids = ids | {entry} if done else ids - {entry}
        every[design][size] = sorted(ids)
        self._write(every)
        return frozenset(ids)

    def clear(self, design: str, size: str) -> None:
        """Take all ticks of a size away."""
        every = self._all()
        every.get(design, {}).pop(size, None)
        self._write(every)

    def _all(self) -> dict[str, dict[str, list[str]]]:
        try:
            kept = json.loads(self._file.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return {}
        return kept if isinstance(kept, dict) else {}

    def _write(self, every: dict[str, dict[str, list[str]]]) -> None:
        self._file.parent.mkdir(parents=True, exist_ok=True)
        fresh = self._file.with_suffix(".new")
        with fresh.open("w", encoding="utf-8") as file:
            json.dump(every, file, indent=1, sort_keys=True)
            file.flush()
            os.fsync(file.fileno())
        fresh.replace(self._file)

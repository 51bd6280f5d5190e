"""Dotted keys: ``recipes.lantern.trim``. A part that is no bare TOML key is quoted; items of lists count from 0."""

from __future__ import annotations

import json
import re

_BARE = re.compile(r"[A-Za-z0-9_-]+")
_PART = re.compile(r'([A-Za-z0-9_-]+|"(?:[^"\\]|\\.)*")(\.|$)')


def dotted(*parts: str | int) -> str:
    """Join the parts of a key: ``dotted("borders", 0, "width")`` is ``borders.0.width``."""
    return ".".join(_quoted(str(part)) for part in parts)


def parts_of(key: str) -> tuple[str, ...]:
    """Split a dotted key. Raises ValueError where it is not one."""
    parts, position = [], 0
    while found := _PART.match(key, position):
        parts.append(json.loads(found[1]) if found[1].startswith('"') else found[1])
        position = found.end()
        if not found[2]:
            return tuple(parts)
    raise ValueError(f"{key!r} is not a dotted key")


def _quoted(part: str) -> str:
    return part if _BARE.fullmatch(part) else json.dumps(part, ensure_ascii=False)

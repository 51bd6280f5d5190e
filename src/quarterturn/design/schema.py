"""The JSON Schema of the design file, for editors that complete and check while one types."""

from __future__ import annotations

from typing import Any


def schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of the design file."""
    from quarterturn.design.file import DesignFile

    raw: dict[str, Any] = _without_null(DesignFile.model_json_schema())
    return {"$schema": "https://json-schema.org/draft/2020-12/schema"} | raw


def _without_null(node: Any) -> Any:
    """Leave out what TOML has not: null as a value, and as a default."""
    if isinstance(node, list):
        return [_without_null(each) for each in node]
    if not isinstance(node, dict):
        return node
    kept = {
        k: _without_null(v) for k, v in node.items() if not (k == "default" and v is None) and k != "title"
    }
    if isinstance(node.get("title"), dict):
        kept["title"] = _without_null(node["title"])
    if "anyOf" in kept:
        kept["anyOf"] = [each for each in kept["anyOf"] if each != {"type": "null"}]
        if len(kept["anyOf"]) == 1:
            kept |= kept.pop("anyOf")[0]
    return kept

"""Abbreviations of the trade (common practice, no source); a pattern lists only those that it uses."""

from __future__ import annotations

from collections.abc import Mapping

ABBREVIATIONS: Mapping[str, str] = {
    "WOF": "width of fabric, selvages trimmed off",
    "RST": "right sides together",
    "WST": "wrong sides together",
}

"""Find the line of each key in a file that follows TOML. Done only when there is something to tell."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from dataclasses import replace

from quarterturn.design.findings import Finding
from quarterturn.design.keys import dotted, parts_of

_TOKEN = re.compile(
    r"""
      \"{3}(?:[^\\]|\\.)*?\"{3,5} | '{3}.*?'{3,5}          # text of several lines
    | \"(?:[^\"\\\n]|\\.)*\" | '[^'\n]*'                   # text, or a quoted key
    | \#[^\n]* | \n | [\[\]{}=,.] | [^\s\[\]{}=,.\"'\#]+   # comment, end of line, sign, bare word
    """,
    re.VERBOSE | re.DOTALL,
)
Path = tuple[str, ...]

_DEEPEST = 20
"""Brackets within brackets beyond this are passed over."""


def locate(text: str, findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Give a line to each finding whose place has a key and no line: the key's own, or that of its table."""
    lines = key_lines(text)
    return tuple(_located(finding, lines) for finding in findings)


def line_of(text: str, key: str) -> int | None:
    """Return the line of a dotted key, or of the nearest table around it."""
    return _nearest(key, key_lines(text))


def _located(finding: Finding, lines: dict[str, int]) -> Finding:
    if finding.place.line is not None or not finding.place.key:
        return finding
    return replace(finding, place=replace(finding.place, line=_nearest(finding.place.key, lines)))


def _nearest(key: str, lines: dict[str, int]) -> int | None:
    try:
        parts = parts_of(key)
    except ValueError:
        return None
    ways = (dotted(*parts[:length]) for length in range(len(parts), 0, -1))
    return next((lines[way] for way in ways if way in lines), None)


def key_lines(text: str) -> dict[str, int]:
    """Return the line of each dotted key, each table, and each row of a map (``setting.map.<row>``)."""
    return _Scan(text).lines


class _Scan:
    """One pass over the tokens. Text that does not follow TOML gives lines that may be wrong, and no exception."""

    def __init__(self, text: str) -> None:
        self.lines: dict[str, int] = {}
        self._items: dict[Path, int] = {}
        self._tokens = self._split(text)
        self._at = 0
        table: Path = ()
        while self._at < len(self._tokens):
            table = self._statement(table)

    @staticmethod
    def _split(text: str) -> list[tuple[str, int]]:
        tokens, line, position = [], 1, 0
        for found in _TOKEN.finditer(text):
            line += text.count("\n", position, found.start())
            position = found.start()
            if not found.group().startswith("#"):
                tokens.append((found.group(), line))
        return tokens

    def _peek(self) -> str:
        return self._tokens[self._at][0] if self._at < len(self._tokens) else "\n"

    def _statement(self, table: Path) -> Path:
        token = self._peek()
        if token == "\n":
            self._at += 1
        elif token == "[":
            table = self._header()
        else:
            self._pair(table)
        return table

    def _header(self) -> Path:
        line = self._tokens[self._at][1]
        many = self._tokens[self._at + 1 : self._at + 2] == [("[", line)]
        self._at += 2 if many else 1
        path = self._within_items(self._key())
        if many:
            index = self._items[path] = self._items.get(path, -1) + 1
            self._mark(path, line)
            path = (*path, str(index))
        self._mark(path, line)
        while self._peek() != "\n":
            self._at += 1
        return path

    def _within_items(self, path: Path) -> Path:
        """Put the index of the current item behind each part that is a list of tables."""
        found: Path = ()
        for index, part in enumerate(path):
            found = (*found, part)
            if found in self._items and index < len(path) - 1:
                found = (*found, str(self._items[found]))
        return found

    def _key(self) -> Path:
        parts = []
        while self._peek() not in ("=", "]", "\n"):
            token = self._peek()
            if token != ".":
                parts.append(_plain(token))
            self._at += 1
        return tuple(parts)

    def _pair(self, table: Path) -> None:
        line = self._tokens[self._at][1]
        path = (*table, *self._key())
        self._mark(path, line)
        self._at += 1
        self._value(path)

    def _value(self, path: Path) -> None:
        """Pass over a value, marking the keys of tables within a line."""
        token = self._peek()
        if token == "{" and len(path) < _DEEPEST:
            self._inline(path)
        elif token == "[" and len(path) < _DEEPEST:
            self._list(path)
        else:
            self._rows(path)
            while self._peek() not in ("\n", ",", "}", "]"):
                self._at += 1

    def _inline(self, path: Path) -> None:
        self._at += 1
        while self._at < len(self._tokens) and self._peek() != "}":
            if self._peek() in (",", "\n"):
                self._at += 1
            else:
                self._pair(path)
        self._at += 1

    def _list(self, path: Path) -> None:
        self._at += 1
        index = 0
        while self._at < len(self._tokens) and self._peek() != "]":
            if self._peek() in (",", "\n", "}"):
                index += self._peek() == ","
                self._at += 1
            else:
                self._mark((*path, str(index)), self._tokens[self._at][1])
                self._value((*path, str(index)))
        self._at += 1

    def _rows(self, path: Path) -> None:
        is_map = path[:1] in (("setting",), ("sections",)) and path[-1] in ("map", "between")
        if not is_map or self._at >= len(self._tokens):
            return
        token, line = self._tokens[self._at]
        rows = [number for number, row in enumerate(token.split("\n")) if row.strip("\"' \t\r")]
        for index, number in enumerate(rows):
            self._mark((*path, str(index)), line + number)

    def _mark(self, path: Path, line: int) -> None:
        for length in range(1, len(path) + 1):
            self.lines.setdefault(dotted(*path[:length]), line)


def _plain(token: str) -> str:
    if token.startswith("'"):
        return token.strip("'")
    if token.startswith('"'):
        try:
            return str(json.loads(token))
        except ValueError:
            return token
    return token

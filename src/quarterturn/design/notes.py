"""What the reader notes down on its way through a file, so that all mistakes are told together."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Sequence
from decimal import Decimal
from fractions import Fraction

from quarterturn.design.codes import CODES
from quarterturn.design.findings import Finding, Place, Severity
from quarterturn.design.limits import MOST_FINDINGS, Range
from quarterturn.measure import Length, LengthError, Units, parse_length, show_exact

Raw = str | int | float
"""A length as it stands in the file."""


_TAKEN_OUT = {"wrong-type", "unknown-word"}
"""What these codes speak of is not there for the rest of the reader."""


class Notes:
    """Findings so far, and the keys about which something has been said already."""

    def __init__(self, units: Units = Units.INCH) -> None:
        self.units = units
        self.findings: list[Finding] = []
        self._spoiled: dict[str, str] = {}

    def add(self, code: str, key: str, sentence: str, remedy: str, detail: str = "") -> None:
        """Note a finding; past so many, only that there are more."""
        if self.is_full():
            return
        finding = Finding(code, CODES[code][0], Place(key, detail), sentence, remedy)
        if finding not in self.findings:
            self.findings.append(finding)
        self._spoiled.setdefault(key, code)
        if len(self.findings) == MOST_FINDINGS:
            self.findings.append(_MANY_MORE)

    def is_full(self) -> bool:
        """Tell whether no more will be noted."""
        return len(self.findings) > MOST_FINDINGS

    def is_spoiled(self, key: str) -> bool:
        """Tell whether something has been said about a key, or a table that it is in was taken out."""
        return key in self._spoiled or any(
            code in _TAKEN_OUT and key.startswith(each + ".") for each, code in self._spoiled.items()
        )

    def stops(self) -> bool:
        """Tell whether there is a finding that leaves no design."""
        return any(finding.severity is Severity.STOPS for finding in self.findings)

    def missing(self, key: str, remedy: str) -> None:
        """Note that a key is not there, unless it is known why."""
        if not self.is_spoiled(key):
            name = key.rpartition(".")[2]
            self.add("missing-key", key, f"`{name}` is missing.", remedy)

    def length(self, raw: Raw | None, key: str, within: Range) -> Length | None:
        """Read a length that must lie in a range; None where there is none, or no good one."""
        if raw is None:
            return None
        text = raw if isinstance(raw, str) else _plain(raw)
        try:
            value = self._signed(text)
        except LengthError as error:
            self._bad_length(key, text, error)
            return None
        if within.holds(value):
            return value
        self.add("size-out-of-range", key, *self._out_of_range(text, value, within))
        return None

    def _signed(self, text: str) -> Length:
        bare = text.strip()
        return (
            -parse_length(bare[1:], self.units) if bare[:1] in ("-", "−") else parse_length(text, self.units)
        )

    def _bad_length(self, key: str, text: str, error: LengthError) -> None:
        example = "'24 cm' or '80 mm'" if self.units is Units.METRIC else "'4 1/4\"' or '9 1/2 in'"
        shown = error.caret() if len(text) <= 60 and "\n" not in text else ""
        self.add(
            "bad-length",
            key,
            f"{quoted(text)} is not a length: {error.reason}.",
            f"Write a length such as {example}.",
            shown,
        )

    def _out_of_range(self, text: str, value: Length, within: Range) -> tuple[str, str]:
        low, high = (self.show(end) for end in (within.low, within.high))
        fault = "is negative" if value < 0 <= within.low else "is nothing" if value == 0 else None
        if fault is None:
            fault = "is too small" if value < within.low else "is too large"
        return f"{quoted(text)} {fault} for {within.what}.", f"Give a length from {low} to {high}."

    def show(self, value: Length) -> str:
        """Print a length as the file would have it, exact as far as rulers go."""
        return show_exact(value, self.units)


_MANY_MORE = Finding(
    "many-more",
    CODES["many-more"][0],
    Place(""),
    f"There are more mistakes than these {MOST_FINDINGS}.",
    "Mend these first.",
)


def did_you_mean(word: str, choices: Iterable[str]) -> str:
    """Return a remedy that names the nearest choice, or all when none is near and they are few."""
    known = list(choices)[:200]
    near = difflib.get_close_matches(word[:60], known, n=1, cutoff=0.6)
    if near:
        return f"Did you mean `{near[0]}`?"
    return f"Choose from {listed(known)}." if known else "There is none to choose from yet."


def listed(words: Sequence[str], most: int = 20) -> str:
    """Write a list of choices: `a`, `b` or `c`."""
    shown = [f"`{word}`" for word in words[:most]]
    if len(words) > most:
        return f"{', '.join(shown)} and {len(words) - most} more"
    return " or ".join([", ".join(shown[:-1]), shown[-1]]) if len(shown) > 1 else "".join(shown)


def _plain(number: int | float) -> str:
    """Write a number without an exponent."""
    return format(Decimal(repr(number)), "f") if abs(number) < Fraction(10) ** 30 else "9" * 12


def quoted(text: str) -> str:
    """Return the beginning of a text from the file, fit to be printed in a sentence."""
    shown = text if len(text) <= 40 else text[:39] + "…"
    return f"`{''.join(c if c.isprintable() else '�' for c in shown)}`"

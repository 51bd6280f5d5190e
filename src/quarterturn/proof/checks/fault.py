"""How a check tells what it found: a fault, which the check's code and severity make a finding."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from quarterturn.design import Finding, Place, Severity
from quarterturn.measure import MM, Length, Units, is_on_ruler, show_length, show_plain
from quarterturn.proof.model import Check, Pattern


@dataclass(frozen=True, slots=True)
class Fault:
    """What is wrong at a key of the design file, and what would mend it; both are sentences."""

    key: str
    sentence: str
    remedy: str
    detail: str = ""


NOISE = Length(1, 10**6)

Look = Callable[[Pattern], Iterable[Fault]]


def check(code: str, severity: Severity, answers: tuple[int, ...], title: str, look: Look) -> Check:
    """Return the check that turns each fault found by `look` into a finding."""

    def run(pattern: Pattern) -> Iterator[Finding]:
        for fault in look(pattern):
            yield Finding(code, severity, Place(fault.key, fault.detail), fault.sentence, fault.remedy)

    return Check(code, severity, answers, title, run)


def tell(value: Length | float, units: Units) -> str:
    """Print a length so that two that differ look different: in trade style where a ruler shows it."""
    if isinstance(value, float):
        return show_plain(value, units)
    return show_length(value, units) if is_on_ruler(value, units) else show_plain(value, units)


def near(value: Length | float, units: Units) -> str:
    """Print a measure of a curve in trade style, to the nearest 1/16" or millimetre; no ruler shows it closer."""
    return show_length(value, units, sixteenths=True)


def differ(want: Length, found: Length) -> bool:
    """Tell whether two lengths differ by more than the noise of one that is irrational, known to 10⁻⁹ inch."""
    return abs(want - found) > NOISE


def in_millimetres(value: Length) -> str:
    """Print the width or length of a stitch; sewing machines have millimetres everywhere."""
    return f"{float(value / MM):g} mm"


REBUILD = "Do not publish: the stages of the program disagree. Report it with the design file."
"""The remedy where no change to the design file would help."""

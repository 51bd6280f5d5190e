"""Rehearse a pattern, and compare what was made with what was drawn."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from quarterturn.design import Direction, Finding, Place, Severity
from quarterturn.materials import Materials
from quarterturn.measure import Length
from quarterturn.proof.model import Pattern
from quarterturn.proof.rehearsal import Bolt, Parcels, Rehearsal, Supplies, area_of_difference, rehearse
from quarterturn.setting import picture

ACCEPTED = 1e-6
"""The sewn top may differ from the picture by this share of its area: the noise of adding lengths as floats."""


@dataclass(frozen=True, slots=True)
class Proof:
    """What the rehearsal of a pattern came to. `difference` is in square inches; `share` is it over the top's area."""

    rehearsal: Rehearsal
    difference: float
    share: float
    findings: tuple[Finding, ...]

    @property
    def holds(self) -> bool:
        """Tell whether the steps make the quilt in the picture."""
        return not self.findings


def supplies_of(pattern: Pattern) -> Supplies:
    """Return what the shopping list buys: the only thing that the rehearsal is told besides the steps."""
    materials = pattern.materials
    cloth = {
        plan.fabric: Bolt(
            plan.usable_width,
            _bought(materials, plan.fabric) * _left(pattern, plan.fabric),
            _upright(pattern, plan.fabric),
        )
        for plan in materials.cloth
    }
    web = Bolt(materials.web.web_width, _bought(materials, "web"), sheet=materials.web.sheet)
    batting = Bolt(materials.batting_width, materials.batting_height)
    return Supplies(cloth, web, batting, dict(_parcels(pattern)))


def _parcels(pattern: Pattern) -> Iterator[tuple[str, Parcels]]:
    """Return the pieces of cloth that the design says lie on the shelf, and those that the list buys, in true size.

    Those are measured as they are; what is bought is washed first, if the fabric is.
    """
    for plan in pattern.materials.cloth:
        fabric, upright = pattern.design.fabric(plan.fabric), _upright(pattern, plan.fabric)
        for number, there in enumerate(fabric.on_hand, 1):
            size = (there.width, there.height, there.count or 0)
            yield f"{fabric.letter} on hand {number}", Parcels(fabric.letter, *size, upright)
        line = next(each for each in pattern.materials.shopping if each.key == fabric.letter)
        if fabric.bought_as and line.count:
            across = fabric.bought_as.width * (1 - fabric.shrink_across)
            along = fabric.bought_as.height * (1 - fabric.shrink_along)
            yield f"{fabric.letter} bought", Parcels(fabric.letter, across, along, line.count, upright)


def _left(pattern: Pattern, letter: str) -> Fraction:
    """Return the share of a fabric's length that is left when it has been washed, if it is."""
    return 1 - pattern.design.fabric(letter).shrink_along


def _upright(pattern: Pattern, letter: str) -> Direction:
    """Return how the print of a fabric runs, if it must stand upright."""
    fabric = pattern.design.fabric(letter)
    return fabric.direction if fabric.upright else Direction.NONE


def _bought(materials: Materials, key: str) -> Length:
    line = next(line for line in materials.shopping if line.key == key)
    return line.length or Length(0)


def prove(pattern: Pattern) -> Proof:
    """Carry out the steps of a pattern with what its shopping list buys, and compare the top with its picture."""
    return compare_top(pattern, rehearse(supplies_of(pattern), pattern.steps))


def compare_top(pattern: Pattern, rehearsal: Rehearsal) -> Proof:
    """Return what a rehearsal of a pattern came to: its failures, or how far its top is from the picture."""
    findings = [_failed(failure.step, failure.sentence) for failure in rehearsal.failures]
    if findings:
        return Proof(rehearsal, 0.0, 0.0, tuple(findings))
    setting = pattern.setting
    area = float(setting.width * setting.height)
    difference = area_of_difference(rehearsal.top, picture(pattern.design, pattern.blocks, setting))
    share = difference / area
    if share > ACCEPTED:
        findings.append(_differs(difference, share))
    return Proof(rehearsal, difference, share, tuple(findings))


def _failed(step: int, sentence: str) -> Finding:
    where = f"step {step}" if step else "when all is done"
    return Finding(
        code="rehearsal-failed",
        severity=Severity.STOPS,
        place=Place("", where),
        sentence=f"The steps cannot be carried out as written ({where}): {sentence}",
        remedy="Do not publish; see the findings of the checks for what disagrees.",
    )


def _differs(difference: float, share: float) -> Finding:
    return Finding(
        code="rehearsal-differs",
        severity=Severity.STOPS,
        place=Place("", "the sewn top"),
        sentence=f"The steps make another quilt than the picture shows: {difference:.4f} square inches differ "
        f"({share:.2e} of the top).",
        remedy="Do not publish; see the findings of the checks for what disagrees.",
    )

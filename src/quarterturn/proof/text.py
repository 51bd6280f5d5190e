"""The text form of findings and of the rehearsal.

A finding is a line with place, severity, sentence and code, and below it the remedy.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from quarterturn.design import Finding, Severity
from quarterturn.materials import ClothPlan
from quarterturn.measure import Length, aligned, show_area, show_count, show_length, show_plain
from quarterturn.proof.cut_off import leavings
from quarterturn.proof.model import Pattern
from quarterturn.proof.proving import Proof


def findings_text(findings: Sequence[Finding], name: str) -> str:
    """Return every finding of the design file called `name`, and a line that sums them up."""
    return "".join(f"{line}\n" for line in (*finding_lines(findings, name), summary(findings)))


def finding_lines(findings: Iterable[Finding], name: str) -> list[str]:
    """Return two lines for each finding, the second indented."""
    return [line for finding in findings for line in _lines(finding, name)]


def summary(findings: Sequence[Finding]) -> str:
    """Return how many findings there are, and of which severities, worst first."""
    if not findings:
        return "No findings."
    counts = Counter(finding.severity for finding in findings)
    parts = ", ".join(f"{counts[severity]} {severity.value}" for severity in Severity if counts[severity])
    return f"{len(findings)} finding{'' if len(findings) == 1 else 's'}: {parts}."


def _lines(finding: Finding, name: str) -> tuple[str, str]:
    sentence = f"{finding.severity.value}: {_on_one_line(finding.sentence)} ({finding.code})"
    return f"{_place(finding, name)}: {sentence}", f"    {_on_one_line(finding.remedy)}"


def _place(finding: Finding, name: str) -> str:
    """Return the file with the line, or where no line is known with whatever is."""
    place = finding.place
    if place.line is not None:
        return f"{name}:{place.line}"
    where = _on_one_line(place.key or place.detail)
    return f"{name}: {where}" if where else name


def _on_one_line(text: str) -> str:
    return " ".join(text.split())


SHOWN = 0.005
"""Square inches; a smaller area would be printed as none."""


def rehearsal_sentences(pattern: Pattern, proof: Proof) -> tuple[str, ...]:
    """Return what the rehearsal found, a sentence each, for the sewer and the designer alike."""
    rehearsal = proof.rehearsal
    steps = f"{rehearsal.steps_done} of {len(pattern.steps.steps)} single operations can be carried out as written"
    if rehearsal.failures:
        return (f"{steps}.", *(finding.sentence for finding in proof.findings))
    if proof.difference == 0:
        return (
            f"{steps}, with the cloth and web of the list.",
            "The top that they make is the one in the picture, to the last seam: no area differs.",
        )
    if proof.holds and proof.difference < SHOWN:
        return (
            f"{steps}, with the cloth and web of the list.",
            "The top that they make is the one in the picture, to the last seam: less than "
            f"{show_area(2 * SHOWN, pattern.design.units)} differs.",
        )
    area = show_area(proof.difference, pattern.design.units)
    verdict = "is the one in the picture" if proof.holds else "is another than the one in the picture"
    return (
        f"{steps}, with the cloth and web of the list.",
        f"The top that they make {verdict}: {area} differ, {proof.share:.6%} of it.",
    )


def leftover_lines(pattern: Pattern, proof: Proof) -> list[str]:
    """Return what is left of each fabric and of the web when all steps are done, exactly."""
    design, rehearsal = pattern.design, proof.rehearsal
    cloth = [
        (f"fabric {letter}", design.fabric(letter).name, show_plain(length, design.units))
        for letter, length in rehearsal.cloth_left.items()
        if letter not in {plan.fabric for plan in pattern.materials.cloth if not _bolt_bought(plan)}
    ]
    pieces = [
        (
            f"fabric {label.partition(' ')[0]}",
            design.fabric(label.partition(" ")[0]).name,
            _pieces(label, count),
        )
        for label, count in rehearsal.parcels_left.items()
        if count
    ]
    return aligned([*cloth, *pieces, ("web", "", _web_left(pattern, rehearsal.web_left))])


def _web_left(pattern: Pattern, left: Length) -> str:
    """Print what is left of the web: a length of a roll, or whole sheets."""
    sheet = pattern.materials.web.sheet
    return show_count(int(left / sheet), "sheet") if sheet else show_plain(left, pattern.design.units)


def _bolt_bought(plan: ClothPlan) -> bool:
    return bool(plan.bought or not plan.parcels)


def _pieces(label: str, count: int) -> str:
    """Print how many whole pieces of cloth are left: `2 pieces (B on hand 1)`."""
    return f"{show_count(count, 'piece')} ({label})"


def cut_away_sentences(pattern: Pattern, proof: Proof) -> tuple[str, ...]:
    """Return what is cut away behind shapes and worth keeping, a sentence for each kind; nothing where it is little."""
    design = pattern.design
    told = []
    for each in leavings(pattern, proof.rehearsal):
        size = " × ".join(
            show_length(side, design.units, sixteenths=True) for side in (each.width, each.height)
        )
        disc = show_length(each.disc, design.units, sixteenths=True)
        holds = f"; large enough for {', '.join(each.holds)} of this quilt" if each.holds else ""
        name = design.fabric(each.fabric).name
        told.append(
            f"({each.count}) of Fabric {each.fabric} ({name}), {size} over all, with a circle of {disc} in each{holds}."
        )
    return tuple(told)


def rehearsal_text(pattern: Pattern, proof: Proof) -> str:
    """Return what the rehearsal found, and what it left over."""
    lines = [*rehearsal_sentences(pattern, proof), "Left over:", *leftover_lines(pattern, proof)]
    if told := cut_away_sentences(pattern, proof):
        lines += ["Cut away behind shapes:", *(f"  {sentence}" for sentence in told)]
    return "".join(f"{line}\n" for line in lines)

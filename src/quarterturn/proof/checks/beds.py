"""A size that is meant for a bed is as large as the bed wants it."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import Bed, Design, Fit, LineSet, PanelSet, Severity, StraightSet, dotted
from quarterturn.measure import Length, show_length
from quarterturn.proof.checks.fault import Fault, check, tell
from quarterturn.proof.checks.sizing import finished_size
from quarterturn.proof.model import Pattern
from quarterturn.setting import nearest_to, repeats_of, why_once


def bed_missed(pattern: Pattern) -> Iterator[Fault]:
    """Tell of a quilt that differs from the size that its bed wants by more than it may."""
    design, bed = pattern.design, pattern.design.bed
    if bed is None:
        return
    width, height = finished_size(design)
    if max(abs(width - bed.wanted[0]), abs(height - bed.wanted[1])) <= bed.within:
        return
    wider, longer = width - bed.wanted[0], height - bed.wanted[1]
    sentence = (
        f"The quilt finishes {_size(design, width, height)}. {bed_words(design, bed)} wants "
        f"{_size(design, *bed.wanted)}: the quilt is {_by(design, wider, longer)}, "
        f"and may differ by {tell(bed.within, design.units)}."
    )
    yield Fault(
        dotted("sizes", design.size),
        sentence,
        _change(pattern, nearest_to(design, pattern.blocks, bed.wanted, bed.within)),
    )


def bed_words(design: Design, bed: Bed) -> str:
    """Name a bed with its mattress, its drop, and its tuck if it has one."""
    name = f"A {bed.name} bed" if bed.name else "A bed"
    tuck = f" and a tuck of {tell(bed.tuck, design.units)}" if bed.tuck else ""
    return f"{name} of {_size(design, bed.width, bed.length)} with a drop of {tell(bed.drop, design.units)}{tuck}"


def _size(design: Design, width: Length, height: Length) -> str:
    return f"{_near(design, width)} × {_near(design, height)}"


def _near(design: Design, value: Length) -> str:
    """Print a size as the booklet does: on point none is a whole number of eighths."""
    return show_length(value, design.units, sixteenths=design.house.sixteenths)


def _by(design: Design, wider: Length, longer: Length) -> str:
    """Tell by how much a quilt is off each way; a way in which it is off by nothing that is shown is left out."""
    pairs = [(wider, "wider", "narrower"), (longer, "longer", "shorter")]
    nothing = _near(design, Length(0))
    shown = [pair for pair in pairs if _near(design, abs(pair[0])) != nothing]
    return " and ".join(
        f"{_near(design, abs(more))} {larger if more > 0 else smaller}"
        for more, larger, smaller in shown or pairs
    )


def _change(pattern: Pattern, fit: Fit) -> str:
    """Return the remedy: repeats and border that come nearest, unless the quilt has them already."""
    design = pattern.design
    now = repeats_of(design)
    if now is None:
        return _once(design, fit)
    if (fit.across, fit.down) == now and fit.border is None:
        return "No other number of repeats comes nearer: change the size of the units, the drop or `within`."
    border = f", with an outermost border {tell(fit.border, design.units)} wide" if fit.border else ""
    size = _size(design, fit.width, fit.height)
    return f"Lay the map {fit.across} across and {fit.down} down{border}, which gives {size}; or state another drop."


def _once(design: Design, fit: Fit) -> str:
    """Return the remedy where the map is laid once: another border, or else another size of what it goes round."""
    why, bed = why_once(design), design.bed
    assert bed is not None, "it is what was missed"
    if fit.off(bed.wanted) <= bed.within and fit.border is not None:
        border, size = tell(fit.border, design.units), _size(design, fit.width, fit.height)
        return f"{why} Make the outermost border {border} wide, which gives {size}; or state another drop."
    off = (fit.width - bed.wanted[0], fit.height - bed.wanted[1])
    what = "larger" if max(off) <= 0 else "smaller" if min(off) >= 0 else "of another shape"
    return f"{why} Make {grown_by(design)} {what}, or state another drop or `within`."


def grown_by(design: Design) -> str:
    """Name what decides the size of a quilt whose map is laid once."""
    match design.setting:
        case LineSet():
            return "its parts"
        case PanelSet():
            return "the panel"
        case StraightSet():
            return "the map and its borders"
    return "the map"


BEDS = (
    check("bed-missed", Severity.CONFUSES, (), "A size meant for a bed has the size it wants.", bed_missed),
)

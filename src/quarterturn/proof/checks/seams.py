"""The sizes of all that is sewn, added up anew: parts less seams, and both edges of each seam as long."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from quarterturn.measure import Length
from quarterturn.proof.checks.fault import REBUILD, Fault, tell
from quarterturn.proof.checks.sizing import CLOSE, Size, Sizes, same
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import (
    AddBorder,
    AddMitred,
    CutSegments,
    JoinRows,
    Placed,
    SewLine,
    Step,
    Subcut,
    labels,
)

ROWS = ("pair ", "row ", "sashing ")
"""How the labels of lines begin that are parts of one section: sections need not match one another's seams."""


def sewn_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the size of whatever is sewn from the sizes of its parts: the sum of parts less the seams."""
    units, sizes = pattern.design.units, dict[str, Size]()
    for step in pattern.steps.steps:
        if isinstance(step.action, SewLine | AddBorder | AddMitred):
            yield from _seam_lengths(step, sizes, pattern)
            want = _sewn_size(step, sizes)
            for made in step.makes:
                if want and not (same(made.width, want[0]) and same(made.height, want[1])):
                    sentence = (
                        f"Step {step.number} makes {made.label} {tell(made.width, units)} × "
                        f"{tell(made.height, units)}; its parts make {tell(want[0], units)} × {tell(want[1], units)}."
                    )
                    yield Fault("setting", sentence, REBUILD, f"step {step.number}")
        sizes |= {made.label: (made.width, made.height) for made in step.makes}
        if isinstance(step.action, Subcut | CutSegments):
            # A cut piece lies with its longer side level, however it was cut from its strip.
            sizes |= {made.label: _level(made.width, made.height) for made in step.makes}
    yield from _sections(pattern, sizes)


def _level(width: Length, height: Length) -> Size:
    return (width, height) if width >= height else (height, width)


def _sections(pattern: Pattern, sizes: dict[str, Size]) -> Iterator[Fault]:
    """Hold each section and the top, when all is sewn, against what the design adds up to."""
    known, units, seams = Sizes(pattern.design), pattern.design.units, 2 * pattern.design.making.seam
    wanted = {name: known.section(name) for name in known.settings} | {labels.TOP: known.quilt()}
    for name, size in wanted.items():
        found = sizes.get(name)
        want = size[0] + seams, size[1] + seams
        if found and not (same(found[0], want[0]) and same(found[1], want[1])):
            sentence = (
                f"{name} is sewn {tell(found[0], units)} × {tell(found[1], units)}; the design makes it "
                f"{tell(want[0], units)} × {tell(want[1], units)}, unfinished."
            )
            yield Fault("setting", sentence, REBUILD, name)


def _lying(part: Placed, sizes: dict[str, Size]) -> Size | None:
    """Return the size of a part as it is laid; None where nothing has made it."""
    size = sizes.get(part.label)
    return (size[1], size[0]) if size and part.turn % 2 else size


def _sewn_size(step: Step, sizes: dict[str, Size]) -> Size | None:
    action = step.action
    if isinstance(action, SewLine):
        parts = [size for part in action.parts if (size := _lying(part, sizes))]
        taken = 2 * action.seam * (len(parts) - 1)
        if len(parts) != len(action.parts) or not parts:
            return None
        if action.way is Side.RIGHT:
            return sum((w for w, _ in parts), Length(0)) - taken, parts[0][1]
        return parts[0][0], sum((h for _, h in parts), Length(0)) - taken
    if any(pile.label not in sizes for pile in step.uses[:2]):
        return None
    assert isinstance(action, AddBorder | AddMitred)
    (width, height), strip = _work(step, action.laid, sizes), sizes[step.uses[1].label]
    if isinstance(action, AddMitred):
        more = 2 * (min(strip) - 2 * action.seam)
        return width + more, height + more
    upright = action.side in (Side.LEFT, Side.RIGHT)
    depth = _along(action, strip, height if upright else width)[1]
    more = depth - 2 * action.seam
    return (width + more, height) if upright else (width, height + more)


def _work(step: Step, laid: int, sizes: dict[str, Size]) -> Size:
    """Return the size of what a border is sewn to, as it is laid."""
    width, height = sizes[step.uses[0].label]
    return (height, width) if laid % 2 else (width, height)


def _along(action: AddBorder, strip: Size, edge: Length) -> Size:
    """Return the side of a strip that is sewn to an edge, and its other side.

    A plain strip is cut either way up: whichever of its sides is as long as the edge is sewn to it.
    """
    if action.turn is None:
        return (strip[1], strip[0]) if same(strip[1], edge) else strip
    lying = (strip[1], strip[0]) if action.turn % 2 else strip
    return (lying[1], lying[0]) if action.side in (Side.LEFT, Side.RIGHT) else lying


def _seam_lengths(step: Step, sizes: dict[str, Size], pattern: Pattern) -> Iterator[Fault]:
    """Ask that the two edges of every seam are equally long (trade check 60)."""
    edges = sorted(_edges(step, sizes))
    apart = [edge for before, edge in pairwise(edges) if not same(before, edge)]
    if apart:
        told = " and ".join(tell(edge, pattern.design.units) for edge in (edges[0], *apart))
        sentence = f"Step {step.number} sews edges of {told} to one another."
        yield Fault("setting", sentence, REBUILD, f"step {step.number}")


def _edges(step: Step, sizes: dict[str, Size]) -> Iterator[Length]:
    action = step.action
    if isinstance(action, SewLine):
        axis = 1 if action.way is Side.RIGHT else 0
        for part in action.parts:
            if size := _lying(part, sizes):
                yield size[axis]
    elif isinstance(action, AddBorder) and all(pile.label in sizes for pile in step.uses[:2]):
        top, strip = _work(step, action.laid, sizes), sizes[step.uses[1].label]
        edge = top[1] if action.side in (Side.LEFT, Side.RIGHT) else top[0]
        yield edge
        yield _along(action, strip, edge)[0]


def crossings(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the seams of a row of sashing meet those of the rows of squares above and below it.

    Where a strip runs through there is no seam to be met. Rows on point lie as far to the right as their step says.
    """
    sizes: dict[str, Size] = {}
    lines: dict[str, SewLine] = {}
    for step in pattern.steps.steps:
        action = step.action
        if isinstance(action, SewLine) and action.way is Side.RIGHT:
            lines |= {made.label: action for made in step.makes if made.label.startswith(ROWS)}
        elif isinstance(action, SewLine | JoinRows) and len(action.parts) > 1:
            offsets = action.offsets if isinstance(action, JoinRows) else (Length(0),) * len(action.parts)
            rows = [
                (offset, _seams_in(part, lines, sizes))
                for part, offset in zip(action.parts, offsets, strict=True)
            ]
            for number, (upper, lower) in enumerate(pairwise(rows), start=1):
                if not _meet(*upper, *lower):
                    sentence = (
                        f"In step {step.number} the seams of rows {number} and {number + 1} miss one another."
                    )
                    yield Fault("setting", sentence, REBUILD, f"step {step.number}")
        sizes |= {made.label: (made.width, made.height) for made in step.makes}
        if isinstance(action, Subcut | CutSegments):
            sizes |= {made.label: _level(made.width, made.height) for made in step.makes}


def _seams_in(part: Placed, lines: dict[str, SewLine], sizes: dict[str, Size]) -> list[Length]:
    """Return how far each seam of a row lies from its raw left end; none of what is no row, or is turned."""
    line = lines.get(part.label)
    if line is None or part.turn:
        return []
    at, seams = Length(0), list[Length]()
    for each in line.parts[:-1]:
        size = _lying(each, sizes)
        if size is None:
            return []
        at += size[0] - line.seam
        seams.append(at)
        at -= line.seam
    return seams


def _meet(first: Length, upper: list[Length], second: Length, lower: list[Length]) -> bool:
    """Tell whether the seams of two rows meet over the stretch that both have; rows without seams meet any."""
    above, below = [first + at for at in upper], [second + at for at in lower]
    if not above or not below:
        return True
    low, high = max(above[0], below[0]), min(above[-1], below[-1])
    kept = [[at for at in row if low - CLOSE <= at <= high + CLOSE] for row in (above, below)]
    return len(kept[0]) == len(kept[1]) and all(map(same, *kept))

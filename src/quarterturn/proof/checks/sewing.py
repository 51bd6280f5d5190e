"""Checks that the sewing makes the map: layout, turns, sizes at each seam, pressing (groups B, E and F)."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise

from quarterturn.design import Design, Pressing, Severity
from quarterturn.measure import Length
from quarterturn.proof.checks.fault import REBUILD, Fault, check, differ, tell
from quarterturn.proof.checks.ledger import names_of_units
from quarterturn.proof.checks.mapping import Turned, key_of_row, map_of, place_of
from quarterturn.proof.model import Pattern
from quarterturn.setting import Side
from quarterturn.steps import AddBorder, LayOut, Placed, SewLine, Step, Steps

Row = list[Turned]


def layout_drawn(pattern: Pattern) -> Iterator[Fault]:
    """Hold every unit of the setting and of the layout, with its turn, against the map."""
    rows = map_of(pattern.design)
    placed = [
        [(unit.name, unit.turn) for unit in pattern.setting.row(r)] for r in range(pattern.setting.rows)
    ]
    yield from _differing(pattern.design, rows, placed, "the assembly drawing")
    names = names_of_units(pattern)
    for step in pattern.steps.steps:
        if isinstance(step.action, LayOut):
            laid = [[(names.get(p.label, p.label), p.turn) for p in row] for row in step.action.rows]
            yield from _differing(pattern.design, rows, laid, f"step {step.number}")


def _differing(design: Design, rows: list[Row], found: list[Row], where: str) -> Iterator[Fault]:
    """Tell of the first unit that differs; the rest most likely follows from it."""
    if [len(row) for row in found] != [len(row) for row in rows]:
        sentence = (
            f"The map has {len(rows)} rows of {len(rows[0])} units; {where} has {len(found)} rows, "
            f"{sum(len(row) for row in found)} units in all."
        )
        yield Fault("setting.map", sentence, REBUILD, where)
        return
    for r, (row, other) in enumerate(zip(rows, found, strict=True)):
        if row == other:
            continue
        c = next(c for c in range(len(row)) if row[c] != other[c])
        sentence = f"The map has {_written(row[c])} in {place_of(r, c)}; {where} has {_written(other[c])}."
        yield Fault(key_of_row(design, r), sentence, REBUILD, place_of(r, c))
        return


def _written(unit: Turned) -> str:
    return f"{unit[0]}{unit[1]}"


def centre_sewn(pattern: Pattern) -> Iterator[Fault]:
    """Take the sewn centre apart again, down to its units, and hold it against the map."""
    steps = pattern.steps
    centre = next(
        (s for s in steps.steps if isinstance(s.action, SewLine) and s.action.way is Side.BOTTOM), None
    )
    if centre is None:
        yield Fault("setting.map", "No step sews the rows to one another.", REBUILD)
        return
    assert isinstance(centre.action, SewLine)
    lines, names = _lines(steps), names_of_units(pattern)
    sewn = {part: _taken_apart(part, lines, names) for part in set(centre.action.parts)}
    rows = [sewn[part] for part in centre.action.parts]
    yield from _differing(
        pattern.design, map_of(pattern.design), rows, f"the top sewn by step {centre.number}"
    )


def _lines(steps: Steps) -> dict[str, tuple[Placed, ...]]:
    """Return of what each pair and each row is sewn."""
    return {
        step.makes[0].label: step.action.parts
        for step in steps.steps
        if isinstance(step.action, SewLine) and step.action.way is Side.RIGHT and step.makes
    }


def _taken_apart(part: Placed, lines: dict[str, tuple[Placed, ...]], names: dict[str, str]) -> Row:
    """Return the units of a line, left to right. Only units are turned; a turned line shows as itself."""
    if part.label in lines and part.turn == 0:
        return [unit for each in lines[part.label] for unit in _taken_apart(each, lines, names)]
    return [(names.get(part.label, part.label), part.turn)]


def sewn_sizes(pattern: Pattern) -> Iterator[Fault]:
    """Recalculate the size of whatever is sewn from the sizes of its parts: the sum of parts less the seams."""
    units, sizes = pattern.design.units, dict[str, tuple[Length, Length]]()
    for step in pattern.steps.steps:
        if isinstance(step.action, SewLine | AddBorder):
            yield from _seam_lengths(step, sizes, pattern)
            want = _sewn_size(step, sizes)
            for made in step.makes:
                if want and any(map(differ, want, (made.width, made.height))):
                    sentence = (
                        f"Step {step.number} makes {made.label} {tell(made.width, units)} × "
                        f"{tell(made.height, units)}; its parts make {tell(want[0], units)} × {tell(want[1], units)}."
                    )
                    yield Fault("setting", sentence, REBUILD, f"step {step.number}")
        sizes |= {made.label: (made.width, made.height) for made in step.makes}


def _sewn_size(step: Step, sizes: dict[str, tuple[Length, Length]]) -> tuple[Length, Length] | None:
    action = step.action
    if isinstance(action, SewLine):
        parts = [sizes[part.label] for part in action.parts if part.label in sizes]
        taken = 2 * action.seam * (len(parts) - 1)
        if len(parts) != len(action.parts) or not parts:
            return None
        if action.way is Side.RIGHT:
            return sum((w for w, _ in parts), Length(0)) - taken, parts[0][1]
        return parts[0][0], sum((h for _, h in parts), Length(0)) - taken
    if not isinstance(action, AddBorder) or any(pile.label not in sizes for pile in step.uses[:2]):
        return None
    (width, height), strip = (sizes[pile.label] for pile in step.uses[:2])
    upright = action.side in (Side.LEFT, Side.RIGHT)
    depth = strip[1] if differ(strip[1], height if upright else width) else strip[0]
    more = depth - 2 * action.seam
    return (width + more, height) if upright else (width, height + more)


def _seam_lengths(step: Step, sizes: dict[str, tuple[Length, Length]], pattern: Pattern) -> Iterator[Fault]:
    """Ask that the two edges of every seam are equally long (trade check 60)."""
    edges = set(_edges(step, sizes))
    if edges and differ(max(edges), min(edges)):
        told = " and ".join(tell(edge, pattern.design.units) for edge in sorted(edges))
        sentence = f"Step {step.number} sews edges of {told} to one another."
        yield Fault("setting", sentence, REBUILD, f"step {step.number}")


def _edges(step: Step, sizes: dict[str, tuple[Length, Length]]) -> Iterator[Length]:
    action = step.action
    if isinstance(action, SewLine):
        axis = 1 if action.way is Side.RIGHT else 0
        for part in action.parts:
            if part.label in sizes:
                yield sizes[part.label][axis]
    elif isinstance(action, AddBorder) and all(pile.label in sizes for pile in step.uses[:2]):
        top, strip = (sizes[pile.label] for pile in step.uses[:2])
        edge = top[1] if action.side in (Side.LEFT, Side.RIGHT) else top[0]
        yield edge
        # A strip is cut either way up: whichever of its sides is as long as the edge is sewn to it.
        yield strip[0] if differ(strip[1], edge) else strip[1]


def pressing(pattern: Pattern) -> Iterator[Fault]:
    """Ask that the seams of neighbouring rows are pressed opposite ways, or all open."""
    opposed = pattern.design.making.pressing is Pressing.OPPOSED
    rows = _row_ways(pattern.steps)
    for number, (upper, lower) in enumerate(pairwise(rows), start=1):
        for seam, pair in enumerate(zip(upper, lower, strict=False), start=1):
            if not _goes_well(*pair, opposed):
                sentence = (
                    f"Rows {number} and {number + 1} press their seam {seam} {_way(pair[0])} and {_way(pair[1])}: "
                    f"it does not {'nest' if opposed else 'lie open'}."
                )
                yield Fault("making.pressing", sentence, REBUILD, f"rows {number} and {number + 1}")
                return


def _goes_well(upper: Side | None, lower: Side | None, opposed: bool) -> bool:
    if opposed:
        return upper is not lower and upper is not None and lower is not None
    return upper is None and lower is None


def _way(press: Side | None) -> str:
    return f"to the {press.value}" if press else "open"


def _row_ways(steps: Steps) -> list[tuple[Side | None, ...]]:
    """Return for each row of the centre, top to bottom, the way in which each of its seams is pressed."""
    made = {step.makes[0].label: step.action for step in steps.steps if isinstance(step.action, SewLine)}
    known: dict[str, tuple[Side | None, ...]] = {}

    def ways(label: str) -> tuple[Side | None, ...]:
        if label not in known:
            line = made.get(label)
            known[label] = () if line is None or line.way is Side.BOTTOM else _between(line, ways)
        return known[label]

    centre = next((line for line in made.values() if line.way is Side.BOTTOM), None)
    return [ways(part.label) for part in centre.parts] if centre else []


def _between(line: SewLine, ways: Callable[[str], tuple[Side | None, ...]]) -> tuple[Side | None, ...]:
    found: list[Side | None] = []
    for number, part in enumerate(line.parts):
        found += [line.press] if number else []
        found += ways(part.label)
    return tuple(found)


SEWING = (
    check(
        "layout-differs",
        Severity.STOPS,
        (21, 64, 65),
        "Drawing and layout show every unit where the map has it, turned as there.",
        layout_drawn,
    ),
    check(
        "centre-differs",
        Severity.STOPS,
        (16, 21, 65),
        "Pairs and rows, taken apart again, are the map.",
        centre_sewn,
    ),
    check(
        "sewn-size-wrong",
        Severity.STOPS,
        (59, 60),
        "Whatever is sewn has the size of its parts less the seams, and both edges of a seam are equally long.",
        sewn_sizes,
    ),
    check(
        "pressing-clashes",
        Severity.CONFUSES,
        (74,),
        "Seams that cross are pressed opposite ways, or open.",
        pressing,
    ),
)

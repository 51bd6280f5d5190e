"""An independent oracle: the shortest plan of strips as one integer model, strip by strip, without any pattern."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

import highspy
import numpy as np

from quarterturn.materials.kinds import Kind
from quarterturn.measure import Length


def shortest_length(kinds: Sequence[Kind], usable: Length) -> Length:
    """Return the length of the shortest plan of strips; for a handful of pieces only.

    Each piece could have a strip to itself, so there are as many strips as pieces. For each strip there is a number of
    pieces of every position, whether the position is used, and a height that is that of its highest position.
    """
    positions = [(k, p) for k, kind in enumerate(kinds) for p in kind.positions]
    strips, count = sum(kind.count for kind in kinds), len(positions)
    size = 2 * count + 1
    solver = highspy.Highs()  # type: ignore[no-untyped-call]
    solver.silent()
    for _ in range(strips):
        for k, _position in positions:
            solver.addCol(0.0, 0.0, float(kinds[k].count), 0, [], [])
        for _ in positions:
            solver.addCol(0.0, 0.0, 1.0, 0, [], [])
        solver.addCol(1.0, 0.0, solver.inf, 0, [], [])
    for strip in range(strips):
        first = strip * size
        across = [first + n for n in range(count)]
        solver.addRow(-solver.inf, float(usable), count, across, [float(p.along) for _, p in positions])
        for n, (k, position) in enumerate(positions):
            used, most = first + count + n, float(kinds[k].count)
            solver.addRow(-solver.inf, 0.0, 2, [first + n, used], [1.0, -most])
            solver.addRow(-solver.inf, 0.0, 2, [used, first + 2 * count], [float(position.across), -1.0])
        if strip:
            solver.addRow(0.0, solver.inf, 2, [first - 1, first + 2 * count], [1.0, -1.0])
    for k, kind in enumerate(kinds):
        cells = [s * size + n for s in range(strips) for n, (other, _) in enumerate(positions) if other == k]
        solver.addRow(float(kind.count), solver.inf, len(cells), cells, [1.0] * len(cells))
    whole = np.array([s * size + n for s in range(strips) for n in range(2 * count)], dtype=np.int32)
    kinds_of_column = np.full(len(whole), highspy.HighsVarType.kInteger, dtype=np.uint8)
    solver.changeColsIntegrality(len(whole), whole, kinds_of_column)
    solver.setOptionValue("mip_rel_gap", 0.0)
    solver.run()
    assert solver.getModelStatus() == highspy.HighsModelStatus.kOptimal
    return Fraction(solver.getObjectiveValue()).limit_denominator(64)

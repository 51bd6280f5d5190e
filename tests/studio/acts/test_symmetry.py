"""The brush's symmetry: goldens that the page's tests read too, and the laws of what is painted together."""

from __future__ import annotations

import itertools
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import Symmetry, laid, mirrored, turned, upended
from quarterturn.design.sections import Cell
from quarterturn.setting import arrange
from quarterturn.studio.acts import Brush, Ground, Paint, strokes
from quarterturn.studio.acts.symmetry import Laid
from tests.conftest import Golden
from tests.samples import design_of, with_setting

QUARTER = Paint("a", 0, mirror="a", mirror_turn=1)
HALF = Paint("h-lh", 0, mirror="h-rh", mirror_turn=0)
CLOTH = Paint("A", 0, mirror="A", turns=False)
FOX = Paint("fox", 1)
GROUNDS = (Ground(4, 4), Ground(3, 5), Ground(5, 3, on_point=True), Ground(5, 3), Ground(3, 3, on_point=True))


def cases() -> list[tuple[Ground, tuple[int, int], Paint, Brush, int]]:
    chosen = []
    for ground, brush in itertools.product(GROUNDS, Brush):
        for at, paint, every in (
            ((0, 1), QUARTER, 0),
            ((1, 0), HALF, 2),
            ((2, 1), CLOTH, 0),
            ((0, 0), FOX, 0),
        ):
            chosen.append((ground, at, paint, brush, every))
    return chosen


def test_strokes_are_those_that_the_page_knows(golden: Golden) -> None:
    lines = []
    for ground, (row, column), paint, brush, every in cases():
        case = {
            "ground": {"rows": ground.rows, "columns": ground.columns, "onPoint": ground.on_point},
            "at": [row, column],
            "paint": {
                "unit": paint.unit,
                "turn": paint.turn,
                "mirror": paint.mirror,
                "mirrorTurn": paint.mirror_turn,
                "turns": paint.turns,
            },
            "brush": brush.value,
            "every": every,
            "laid": [list(each) for each in strokes(ground, row, column, paint, brush, every)],
        }
        lines.append(json.dumps(case))
    golden.check("symmetry.json", "[\n" + ",\n".join(lines) + "\n]\n")


def painted(rows: int, columns: int, laid_down: tuple[Laid, ...]) -> tuple[tuple[Cell, ...], ...]:
    """Return a map of units that are their own mirror images (x, unturned, where nothing is painted)."""
    cells = {(r, c): Cell(unit, turn) for r, c, unit, turn in laid_down}
    return tuple(tuple(cells.get((r, c), BARE) for c in range(columns)) for r in range(rows))


BARE = Cell("x", 0)
EVEN = st.sampled_from([2, 4, 6])
PLACES = st.tuples(EVEN, EVEN, st.integers(0, 5), st.integers(0, 5), st.integers(0, 3))


def bared(rows: tuple[tuple[Cell, ...], ...]) -> tuple[tuple[Cell, ...], ...]:
    """Return the rows with what is not painted as it was before it was moved."""
    return tuple(tuple(BARE if cell.code == "x" else cell for cell in row) for row in rows)


@given(PLACES)
def test_what_is_painted_in_a_mirror_is_its_own_mirror_image(place: tuple[int, int, int, int, int]) -> None:
    rows, columns, row, column, turn = place
    ground, paint = Ground(rows, columns), Paint("a", turn, mirror="a", mirror_turn=1)
    at = row % rows, column % columns
    across = painted(rows, columns, strokes(ground, *at, paint, Brush.ACROSS))
    assert bared(mirrored(across)) == across
    down = painted(rows, columns, strokes(ground, *at, paint, Brush.DOWN))
    assert bared(upended(down)) == down
    both = painted(rows, columns, strokes(ground, *at, paint, Brush.BOTH))
    assert bared(mirrored(both)) == both == bared(upended(both))


@given(PLACES, PLACES)
def test_a_symmetric_map_stays_so_however_often_it_is_painted(
    first: tuple[int, int, int, int, int], second: tuple[int, int, int, int, int]
) -> None:
    rows, columns = first[:2]
    laid_down = {
        (r, c): (unit, turn)
        for _, _, row, column, turned_by in (first, second)
        for r, c, unit, turn in strokes(
            Ground(rows, columns),
            row % rows,
            column % columns,
            Paint("a", turned_by, mirror="a", mirror_turn=1),
            Brush.BOTH,
        )
    }
    whole = painted(rows, columns, tuple((r, c, unit, turn) for (r, c), (unit, turn) in laid_down.items()))
    assert bared(mirrored(whole)) == whole == bared(upended(whole))


@given(PLACES)
def test_what_is_painted_turned_is_itself_when_the_map_is_turned(
    place: tuple[int, int, int, int, int],
) -> None:
    rows, columns, row, column, turn = place
    at = row % rows, column % columns
    half = painted(rows, columns, strokes(Ground(rows, columns), *at, Paint("a", turn), Brush.HALF_TURN))
    assert bared(turned(half, 2)) == half
    square = painted(
        rows, rows, strokes(Ground(rows, rows), at[0], column % rows, Paint("a", turn), Brush.TURN)
    )
    assert bared(turned(square)) == square


@given(PLACES, st.integers(1, 3), st.sampled_from(Brush))
def test_the_cell_itself_comes_first_and_no_cell_twice(
    place: tuple[int, int, int, int, int], every: int, brush: Brush
) -> None:
    rows, columns, row, column, turn = place
    at = row % rows, column % columns
    found = strokes(Ground(rows, columns), *at, Paint("a", turn, mirror="a", mirror_turn=1), brush, every)
    assert found[0] == (*at, "a", turn)
    cells = [(r, c) for r, c, _, _ in found]
    assert len(set(cells)) == len(cells)
    assert all(0 <= r < rows and 0 <= c < columns for r, c in cells)


def test_a_repeat_is_painted_as_a_map_that_slides_is_laid() -> None:
    found = painted(4, 6, strokes(Ground(4, 6), 3, 4, Paint("a", 2), Brush.NONE, every=2))
    block = tuple(row[:2] for row in found[:2])
    assert laid(block, Symmetry.SLIDE, 3, 2) == found


ON_POINT = [(row, column) for row, column in ((0, 0), (1, 0), (2, 0), (4, 1), (5, 0))]


@pytest.mark.parametrize("at", ON_POINT)
@pytest.mark.parametrize("brush", [Brush.ACROSS, Brush.DOWN, Brush.TURN, Brush.HALF_TURN])
def test_on_point_the_discs_lie_as_the_symmetry_brings_them(brush: Brush, at: tuple[int, int]) -> None:
    size = 4
    found = strokes(Ground(size, size, on_point=True), *at, QUARTER, brush)
    cells = {(r, c): turn for r, c, _, turn in found}
    rows = [" ".join(f"a{cells.get((r, c), 0)}" for c in range(size - r % 2)) for r in range(2 * size - 1)]
    maps = 'map = """\n{}\n"""\nbetween = """\n{}\n"""'.format("\n".join(rows[::2]), "\n".join(rows[1::2]))
    design = design_of(with_setting(f'[setting]\nkind = "on point"\n{maps}\ntriangles = "A"\n'))
    top = arrange(design, draft_blocks(design))
    middle = complex(float(top.width), float(top.height)) / 2
    discs = {(unit.row, unit.column): unit.motion(0j) - middle for unit in top.units}
    first = discs[at]
    images = {
        Brush.ACROSS: [complex(-first.real, first.imag)],
        Brush.DOWN: [first.conjugate()],
        Brush.TURN: [first * 1j, -first, first * -1j],
        Brush.HALF_TURN: [-first],
    }[brush]
    assert len(found) == 1 + len(images)
    for (r, c, _, _), image in zip(found[1:], images, strict=True):
        assert abs(discs[r, c] - image) < 1e-9

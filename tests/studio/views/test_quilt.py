"""The quilt as it is drawn: every cell, box and ring is what the file writes, and cloth covers the top once."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.design import Cell
from quarterturn.studio import views
from quarterturn.studio.acts import CellAt, do
from quarterturn.studio.acts.maps import cell_at
from quarterturn.studio.acts.painting import LayCells
from quarterturn.studio.stages import Stages, UnmadeError
from quarterturn.studio.views.quilt import QuiltView
from tests.samples import ROUNDS
from tests.studio.views.view_cases import EXAMPLES, area, each_example, sized


def test_a_quilt_that_does_not_fit_is_drawn_all_the_same() -> None:
    text = Path(EXAMPLES[0].parent / "gates-of-the-orchard.toml").read_text(encoding="utf-8")
    made = Stages().at(text.replace("g3 g2\n", "g3 g2\ng3 g2\n"))
    assert made.stops
    quilt = views.quilt_view(1, made.size())
    assert not quilt.fits
    assert quilt.placed
    with pytest.raises(UnmadeError):
        views.figures_view(1, made.size())


def test_a_text_that_is_no_design_still_has_a_paper() -> None:
    paper = views.paper_facts(Stages().at("title = 3"))
    assert paper.findings_stop
    assert paper.text == "title = 3"


@each_example
def test_a_ring_of_borders_is_called_as_its_cells_are(name: str) -> None:
    size = sized(name)
    rings = [box.name for box in views.quilt_view(1, size).boxes if box.kind == "border"]
    assert len(rings) >= len(size.design.borders) > 0 or not rings
    assert {f"border {k} of centre" for k in range(1, len(size.design.borders) + 1)} <= set(rings)


def test_a_coping_that_brings_nothing_takes_no_number_from_the_border_round_it() -> None:
    coping = "[[borders]]\nkind = 'coping'\nfabric = 'C'\nto = [10, 6]\n\n"
    made = Stages().at(ROUNDS.replace("[[borders]]", f"{coping}[[borders]]"))
    rings = [box.name for box in views.quilt_view(1, made.size()).boxes if box.kind == "border"]
    assert rings == ["border 2 of centre"]


@each_example
def test_every_cell_of_the_quilt_is_a_word_of_its_map(name: str) -> None:
    size = sized(name)
    quilt = views.quilt_view(1, size)
    for placed in quilt.placed:
        if placed.cell is None:
            continue
        at = CellAt(section=placed.written, row=placed.cell[0], column=placed.cell[1])
        word = cell_at(size.design, at)
        assert isinstance(word, Cell)
        assert word.code == placed.unit.partition("-")[0]
        if placed.unit == word.name:  # a print that stands upright is laid by another piece, in another turn
            seen = placed.lie - 4 - word.turn if placed.lie >= 4 else placed.lie + word.turn
            assert seen % 4 == placed.turn


@each_example
def test_boxes_in_maps_are_words_of_their_maps(name: str) -> None:
    size = sized(name)
    for box in views.quilt_view(1, size).boxes:
        if box.cell is not None:
            word = cell_at(size.design, CellAt(section=box.holder, row=box.cell[0], column=box.cell[1]))
            assert box.name.partition(" ")[0] in (getattr(word, "section", ""), getattr(word, "fabric", ""))


@each_example
def test_a_cell_is_painted_where_it_was_clicked(name: str) -> None:
    """What is laid with the turn that is to be seen is seen so, at the place and at all copies of its cell."""
    size = sized(name)
    quilt = views.quilt_view(1, size)
    placed = next((each for each in reversed(quilt.placed) if each.cell is not None), None)
    if placed is None or "-" in placed.unit or any(fabric.upright for fabric in size.design.fabrics):
        return
    wanted = (placed.turn + 1) % 4
    written = (placed.lie - 4 - wanted if placed.lie >= 4 else wanted - placed.lie) % 4
    assert placed.cell is not None
    at = CellAt(section=placed.written, row=placed.cell[0], column=placed.cell[1])
    done = do(LayCells(cells=(at,), unit=placed.unit, turn=written, anyway=True), size.made.text, Stages())
    after = views.quilt_view(2, done.made.size())
    [there] = [each for each in after.placed if where(each) == where(placed)]
    assert (there.unit, there.turn) == (placed.unit, wanted)


def where(placed: object) -> tuple[object, ...]:
    return tuple(getattr(placed, key) for key in ("section", "copy_number", "row", "column"))


@each_example
def test_faces_and_cloths_cover_the_top_once(name: str) -> None:
    quilt = views.quilt_view(1, sized(name))
    areas = {unit: sum(area(face.path) for face in view.faces[:1]) for unit, view in quilt.units.items()}
    units = sum(areas[placed.unit] for placed in quilt.placed if not is_rejoined(quilt, placed.unit))
    units += sum(
        quilt.units[placed.unit].width * quilt.units[placed.unit].height
        for placed in quilt.placed
        if is_rejoined(quilt, placed.unit)
    )
    cloths = sum(area(cloth.path) for cloth in quilt.cloths if cloth.what != "motif")
    assert units + cloths == pytest.approx(quilt.width * quilt.height, rel=1e-4)


def is_rejoined(quilt: QuiltView, unit: str) -> bool:
    view = quilt.units[unit]
    return area(view.faces[0].path) < view.width * view.height - 1e-3

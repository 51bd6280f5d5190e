"""The work of a quilt is read off its steps."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

import pytest

from quarterturn.materials.hours import Work
from quarterturn.measure import inches
from quarterturn.proof.work import METHOD, tasks_of
from quarterturn.steps import Chapter, CutTriangles, JoinPanels, Pile, Product, SetAside, Step, Steps
from tests.recipe_samples import SAMPLES
from tests.samples import HEARTS, ROUNDS, pattern_of
from tests.section_texts import MITRED, PANELS, TEXTS

ROUND = pattern_of(ROUNDS)


def amounts(text: str) -> Mapping[Work, float]:
    """Return how much work of each kind a design takes."""
    found: dict[Work, float] = defaultdict(float)
    for task in tasks_of(pattern_of(text).steps):
        found[task.work] += task.amount
    return found


@pytest.mark.parametrize("text", [ROUNDS, HEARTS], ids=["rounds", "hearts"])
def test_every_master_has_a_ring_a_shape_and_a_place(text: str) -> None:
    masters = sum(master.count for master in pattern_of(text).bill.masters)
    found = amounts(text)
    assert found[Work.RING] == found[Work.SHAPE] == found[Work.PLACING] == masters
    assert found[Work.APART] == 2 * masters


def test_the_stitching_is_the_edge_of_all_shapes() -> None:
    edge = sum(line.edge for line in ROUND.materials.stitching)
    assert amounts(ROUNDS)[Work.STITCHING] == pytest.approx(edge)


def test_the_seams_of_the_centre_are_one_less_than_its_units_and_four_for_a_border() -> None:
    units = len(ROUND.setting.units)
    seams = [task for task in tasks_of(ROUND.steps) if task.work is Work.SEAM]
    assert sum(task.amount for task in seams if task.stage == Chapter.ASSEMBLY.value) == units - 1
    assert amounts(ROUNDS)[Work.BORDER] == 4


def test_quilting_and_binding_go_by_the_size_of_the_quilt() -> None:
    setting, found = ROUND.setting, amounts(ROUNDS)
    seam = 2 * float(ROUND.design.making.seam)
    area = (float(setting.width) + seam) * (float(setting.height) + seam)
    assert found[Work.QUILTING] == pytest.approx(area / 1296)
    assert found[Work.BINDING] == pytest.approx(2 * float(setting.width + setting.height))


def test_strips_and_pieces_are_those_of_the_plans() -> None:
    plans = ROUND.materials.cloth
    strips = sum(group.strips for plan in plans for group in plan.strips)
    panels = sum(group.panels for plan in plans for group in plan.panels)
    assert amounts(ROUNDS)[Work.STRIP] == strips + panels


def test_the_method_is_four_chapters_in_order() -> None:
    order = [chapter.value for chapter in Chapter]
    assert [order.index(stage) for stage in METHOD] == [1, 2, 3, 4]


def test_what_is_set_aside_is_handled_once() -> None:
    step = Step(1, Chapter.UNITS, SetAside("spare"), (Pile("unit a", 3),), ())
    [task] = tasks_of(Steps((step,)))
    assert (task.work, task.amount) == (Work.OTHER, 1)


def test_sewing_any_pieces_together_takes_one_seam_less_than_there_are_pieces() -> None:
    sheet = Product("backing", 1, inches(80), inches(60))
    step = Step(1, Chapter.FINISHING, JoinPanels(inches(0, 1, 2), False), (Pile("panel", 3),), (sheet,))
    seams, length = tasks_of(Steps((step,)))
    assert (seams.work, seams.amount) == (Work.SEAM, 2)
    assert (length.work, length.amount) == (Work.SEAM_INCH, 160)


@pytest.mark.parametrize("text", [*SAMPLES.values(), *TEXTS.values()], ids=[*SAMPLES, *TEXTS])
def test_every_shape_has_a_ring_is_cut_out_and_is_placed_and_its_edge_is_stitched(text: str) -> None:
    pattern, found = pattern_of(text), amounts(text)
    cut = sum(master.count * blank.each for master in pattern.bill.masters for blank in master.blanks)
    shapes = cut + sum(motif.count for motif in pattern.bill.motifs)
    assert found[Work.RING] == found[Work.SHAPE] == found[Work.PLACING] == shapes
    assert found[Work.STITCHING] == pytest.approx(sum(line.edge for line in pattern.materials.stitching))


@pytest.mark.parametrize(
    ("name", "seam"), [("moons", 4 * 4.5), ("gizzards", 6 * 2**0.5 * 8.3965)], ids=["upright", "slanting"]
)
def test_halves_are_rejoined_along_their_cuts(name: str, seam: float) -> None:
    pattern = pattern_of(SAMPLES[name])
    joins = sum(join.count for each in pattern.bill.rejoined for join in each.joins)
    tasks = [task for task in tasks_of(pattern.steps) if task.stage == Chapter.UNITS.value]
    assert sum(task.amount for task in tasks if task.work is Work.SEAM) == joins > 0
    lengths = sum(task.amount for task in tasks if task.work is Work.SEAM_INCH)
    assert lengths == pytest.approx(seam, abs=1e-2)


def test_a_mitred_border_is_four_strips() -> None:
    assert amounts(MITRED)[Work.BORDER] == 4


def test_a_square_cut_twice_takes_two_cuts() -> None:
    made = Product("triangles", 12, inches(6), inches(6))
    [task] = tasks_of(Steps((Step(1, Chapter.ASSEMBLY, CutTriangles(2), (Pile("A1", 3),), (made,)),)))
    assert (task.work, task.amount) == (Work.CUT, 6)


def test_a_panel_is_cut_away_behind_each_of_its_motifs() -> None:
    pattern = pattern_of(PANELS)
    tasks = [task for task in tasks_of(pattern.steps) if task.stage == Chapter.PANELS.value]
    away = sum(task.amount for task in tasks if task.work is Work.CUT_AWAY)
    assert away == sum(motif.count for motif in pattern.bill.motifs) > 0

"""The work of a quilt is read off its steps."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

import pytest

from quarterturn.materials.hours import Work
from quarterturn.measure import inches
from quarterturn.proof.work import METHOD, tasks_of
from quarterturn.steps import Chapter, JoinPanels, Pile, Product, SetAside, Step, Steps
from tests.samples import HEARTS, ROUNDS, pattern_of

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

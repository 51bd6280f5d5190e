"""The quilt top: sizes, borders and what meets at the seams."""

from __future__ import annotations

from collections import Counter

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.geometry import region_bounds
from quarterturn.measure import Length, inches
from quarterturn.setting import Framed, Meeting, Setting, Side, arrange, picture, strip_places
from tests.samples import ROUNDS, Changed, design_of


def setting_of(text: str) -> Setting:
    """Arrange the design of a text."""
    design = design_of(text)
    return arrange(design, draft_blocks(design))


def test_finished_size_is_columns_and_borders() -> None:
    setting = setting_of(ROUNDS)
    assert (setting.centre.width, setting.centre.height) == (10, 6)
    assert (setting.width, setting.height) == (13, 9)


def test_repeats_are_laid_side_by_side_and_below() -> None:
    text = Changed(ROUNDS).with_("b0 b1 a0 a2 b1\n'''", "'''\nacross = 3\ndown = 2").text
    setting = setting_of(text)
    assert (setting.units[-1].column + 1, setting.units[-1].row + 1) == (15, 4)
    assert setting.units[0].turn == setting.units[5].turn == setting.units[30].turn == 2
    assert setting.tally == {"a": 36, "b": 24}


def sizes_of_strips(text: str) -> list[list[tuple[Side, Length, Length]]]:
    """Return side, width and height of every strip, frame by frame in the order of sewing."""
    top = setting_of(text).top
    assert isinstance(top, Framed)
    return [
        [(side, child.width, child.height) for side, child, _ in strip_places(frame, 0.0, 0.0)]
        for frame in top.frames
    ]


def test_sides_first_borders_have_the_length_of_the_centre() -> None:
    (strips,) = sizes_of_strips(ROUNDS)
    wide = inches(1, 1, 2)
    assert strips == [
        (Side.LEFT, wide, 6),
        (Side.RIGHT, wide, 6),
        (Side.TOP, 13, wide),
        (Side.BOTTOM, 13, wide),
    ]


def test_ends_first_borders_leave_the_sides_longer() -> None:
    (strips,) = sizes_of_strips(Changed(ROUNDS).with_('first = "sides"', 'first = "ends"').text)
    assert [(side, max(size)) for side, *size in strips] == [
        (Side.TOP, 10), (Side.BOTTOM, 10), (Side.LEFT, 9), (Side.RIGHT, 9),
    ]  # fmt: skip


def test_a_published_run_of_three_borders() -> None:
    """ "Spin" (free pattern of allpeoplequilt.com): 36" centre, three 1" borders, 36½/38½, 38½/40½, 40½/42½ strips."""
    text = (
        Changed(ROUNDS)
        .with_("finished = '2\"'", "finished = '9\"'")
        .with_("a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1", "a2 a3 b2 b3\n" * 4)
    )
    one = '[[borders]]\nfabric = "C"\nwidth = \'1 1/2"\'\nfirst = "sides"\n'
    three = '[[borders]]\nfabric = "C"\nwidth = \'1"\'\n' * 3
    whole = text.with_(one, three).text
    setting = setting_of(whole)
    assert (setting.width, setting.height) == (42, 42)
    cut = [max(size) + inches(0, 1, 2) for frame in sizes_of_strips(whole) for _, *size in frame]
    assert cut == [inches(n, 1, 2) for n in (36, 36, 38, 38, 38, 38, 40, 40, 40, 40, 42, 42)]


def test_faces_cover_the_top_once() -> None:
    design = design_of(ROUNDS)
    blocks = draft_blocks(design)
    setting = arrange(design, blocks)
    faces = picture(design, blocks, setting)
    grounds = [
        f for f in faces if region_bounds(f.region).width > 1.5 or len(f.region.paths[0].segments) == 4
    ]
    assert sum(f.region.area() for f in grounds) == pytest.approx(float(setting.width * setting.height))


def test_turning_the_picture_keeps_its_fabrics() -> None:
    """Law: turning every unit in its place changes no area of any fabric."""
    turned = ROUNDS
    for turn in "3210":
        turned = turned.replace(f"a{turn}", f"a{int(turn) + 1}").replace(f"b{turn}", f"b{int(turn) + 1}")
    turned = turned.replace("a4", "a0").replace("b4", "b0")
    assert _areas(turned) == pytest.approx(_areas(ROUNDS))


def _areas(text: str) -> dict[str, float]:
    design = design_of(text)
    blocks = draft_blocks(design)
    areas: Counter[str] = Counter()
    for face in picture(design, blocks, arrange(design, blocks)):
        areas[face.fabric] += face.region.area()  # type: ignore[assignment]
    return dict(areas)


def join_marks(map_rows: str, shape: str = "{ flow = true }") -> list[tuple[Side, list[Meeting]]]:
    """Return what meets at each seam of a small map."""
    text = Changed(ROUNDS).with_("a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n", map_rows + "\n")
    setting = setting_of(text.with_("{ flow = true }", shape).text)
    return [(join.side, [mark.meeting for mark in join.marks]) for join in setting.joins]


def test_the_halves_of_one_round_match() -> None:
    assert join_marks("a2 a3") == [(Side.RIGHT, [Meeting.MATCH])]


def test_a_flowing_path_runs_on_into_a_turned_neighbour() -> None:
    assert join_marks("a2 a0") == [(Side.RIGHT, [Meeting.MATCH])]
    assert join_marks("a2 b0") == [(Side.RIGHT, [Meeting.MATCH])]


def test_an_edge_ends_where_the_neighbour_is_plain() -> None:
    assert join_marks("a0 a0") == [(Side.RIGHT, [Meeting.END])]


def test_plain_sides_have_nothing_to_meet() -> None:
    assert join_marks("a0 a1") == [(Side.RIGHT, [])]


def test_a_path_that_does_not_flow_leaves_a_step() -> None:
    """a = 0.9" from one corner meets u − a = 1.1" from it: a step of |u − 2a| = 0.2"."""
    text = Changed(ROUNDS).with_("a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n", "a2 b0\n")
    setting = setting_of(text.with_("{ flow = true }", "{ radius = '0.9\"' }").text)
    (mark,) = setting.joins[0].marks
    assert mark.meeting is Meeting.STEP
    assert mark.distance == pytest.approx(0.2)


def test_every_pair_of_neighbours_has_a_join() -> None:
    setting = setting_of(ROUNDS)
    across = sum(join.side is Side.RIGHT for join in setting.joins)
    down = sum(join.side is Side.BOTTOM for join in setting.joins)
    assert (across, down) == (3 * 4, 2 * 5)

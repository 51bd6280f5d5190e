"""Laws of the views: they say what the stages say, and what they point at is there."""

from __future__ import annotations

import math
from collections import Counter

import pytest
import shapely
import shapely.affinity

from quarterturn.design import Finding, Place, Severity, read_design
from quarterturn.geometry import Motion, as_polygon, read_path_data
from quarterturn.geometry.paths import Region
from quarterturn.materials import QUICK
from quarterturn.studio import views
from quarterturn.studio.acts import CellAt
from quarterturn.studio.acts.maps import cell_at
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.booklet import booklet_pages, pixels_of
from quarterturn.studio.views.proof import spot_of
from quarterturn.studio.views.seams import seam_of
from tests.samples import ONE_UPRIGHT, ROUNDS
from tests.studio.views.view_cases import MADE, each_example, polygon, sized


@each_example
def test_as_many_pieces_are_drawn_as_are_cut(name: str) -> None:
    size = sized(name)
    cutting = views.cutting_view(1, MADE[name], size)
    assert cutting.settled
    drawn = Counter(piece.label for plan in cutting.plans for strip in plan.strips for piece in strip.pieces)
    for plan in size.materials().cloth:
        for group, _ in plan.groups:
            for cut in group.pieces:
                assert drawn[cut.piece] >= cut.count * group.strips
    tracings = Counter(tracing.shape for tracing in cutting.web.tracings)
    assert tracings == Counter({rows.shape: rows.count for rows in size.materials().web.rows})


@each_example
def test_pieces_lie_within_their_strips_and_over_none_other(name: str) -> None:
    for plan in views.cutting_view(1, MADE[name], sized(name)).plans:
        for strip in plan.strips:
            boxes = [shapely.box(p.x, p.y, p.x + p.width, p.y + p.height) for p in strip.pieces]
            whole = shapely.box(0, strip.y, strip.width, strip.y + strip.height)
            assert sum(box.area for box in boxes) == pytest.approx(shapely.union_all(boxes).area, abs=1e-3)
            assert all(box.difference(whole).area < 1e-3 for box in boxes)


@each_example
def test_strips_lie_within_the_piece_of_cloth_that_they_are_cut_from_and_over_none_other(name: str) -> None:
    for plan in views.cutting_view(1, MADE[name], sized(name)).plans:
        lowest = max((strip.y + strip.height for strip in plan.strips if strip.parcel is None), default=0.0)
        for number, parcel in enumerate(plan.parcels):
            assert parcel.y == pytest.approx(lowest, abs=1e-3)
            lowest = parcel.y + parcel.height
            whole = shapely.box(0, parcel.y, parcel.width, lowest).buffer(1e-3)
            strips = [strip for strip in plan.strips if strip.parcel == number]
            assert strips
            boxes = [shapely.box(0, strip.y, strip.width, strip.y + strip.height) for strip in strips]
            assert all(whole.contains(box) for box in boxes)
            assert sum(box.area for box in boxes) == pytest.approx(shapely.union_all(boxes).area, abs=1e-3)


@each_example
def test_sewn_pieces_meet_along_the_cuts_without_lying_on_one_another(name: str) -> None:
    for draft in views.blocks_view(1, MADE[name]).drafts:
        for sewn in filter(None, (draft.sewn, draft.other)):
            outlines = [moved(sewn.units[piece.unit].outline, piece.sewn_at) for piece in sewn.pieces]
            if len(outlines) > 1:
                together = shapely.union_all(outlines)
                assert together.area == pytest.approx(sum(each.area for each in outlines), rel=1e-4)
                if draft.cuts:  # a line of one's own may slant, and leave ears
                    assert together.convex_hull.area == pytest.approx(together.area, rel=1e-4)


def moved(data: str, at: tuple[float, ...]) -> shapely.Geometry:
    a, b, c, d, e, f = at
    return shapely.affinity.affine_transform(polygon(data), (a, c, b, d, e, f))


@each_example
def test_both_curves_of_a_recipe_stand_side_by_side(name: str) -> None:
    for draft in views.blocks_view(1, MADE[name]).drafts:
        if draft.other:
            assert {draft.sewn.curve, draft.other.curve} == {"as drawn", "sewn true"}


@each_example
def test_what_is_done_in_order_ends_in_one_quilt(name: str) -> None:
    making = views.making_view(1, sized(name))
    ids = [entry.id for chapter in making.chapters for entry in chapter.entries]
    assert len(set(ids)) == len(ids) == making.entries
    done = views.making_view(1, sized(name), ids)
    assert (done.done, {pile.label: pile.count for pile in done.ready}) == (len(ids), {"quilt": 1})


def test_a_tick_stays_with_what_a_change_leaves_as_it_was() -> None:
    before = views.making_view(1, Stages().at(ROUNDS).size())
    after = views.making_view(2, Stages().at(ROUNDS.replace("1 1/2", "2")).size())
    ids = [{entry.id for chapter in view.chapters for entry in chapter.entries} for view in (before, after)]
    assert ids[0] != ids[1]
    assert len(ids[0] & ids[1]) > len(ids[0]) / 3


@each_example
def test_the_film_shows_every_step_and_ends_in_the_picture(name: str) -> None:
    size = sized(name)
    film = views.film_view(1, size)
    assert film.holds
    assert film.failures == ()
    assert film.done == len(film.steps)
    for number in (1, len(film.steps) // 2, len(film.steps)):
        frame = views.frame_view(1, size, number)
        step = size.steps().steps[number - 1]
        assert [(good.label, good.count) for good in frame.uses] == [(p.label, p.count) for p in step.uses]
        assert [(good.label, good.count) for good in frame.makes] == [(p.label, p.count) for p in step.makes]
    assert [(good.label, good.count) for good in frame.table] == [("quilt", 1)]
    with pytest.raises(IndexError):
        views.frame_view(1, size, len(film.steps) + 1)


@each_example
def test_every_piece_is_seen_in_the_quilt_or_lies_behind_it(name: str) -> None:
    size = sized(name)
    quilt, cutting = views.quilt_view(1, size), views.cutting_view(1, size.made, size, all_sizes=False)
    for plan in cutting.plans:
        for piece in plan.pieces:
            marks = piece.marks
            seen = any(
                unit.code in marks.colourways and any(face.fabric == plan.letter for face in unit.faces)
                for unit in quilt.units.values()
            )
            assert seen or marks.cloths or marks.binding or marks.backing
            assert all(quilt.cloths[number].fabric == plan.letter for number in marks.cloths)


@each_example
def test_a_curve_that_flows_is_drawn_piece_by_piece(name: str) -> None:
    size = sized(name)
    quilt, seams = views.quilt_view(1, size), views.seams_view(1, size)
    passed = [
        (unit, number)
        for trail in seams.trails
        for unit, number in zip(trail.units, trail.numbers, strict=True)
    ]
    assert len(set(passed)) == len(passed)
    assert len(passed) == sum(len(seams.curves[placed.unit]) for placed in quilt.placed)
    assert all(seams.curves[quilt.placed[unit].unit][number].startswith("M ") for unit, number in passed)


@each_example
def test_seams_lie_where_both_units_are(name: str) -> None:
    size = sized(name)
    seams = views.seams_view(1, size)
    corners = {}
    for index, unit in enumerate(size.setting.units):
        kind = size.blocks.unit(size.laid_design, unit.name)
        corners[index] = box_of(unit.motion, float(kind.width), float(kind.height))
    for join in seams.joins:
        middle = complex(join.at[0] + join.at[2], join.at[1] + join.at[3]) / 2
        spot = shapely.Point(middle.real, middle.imag)
        assert corners[join.first].distance(spot) < 1e-4
        assert corners[join.second].distance(spot) < 1e-4
    for press in seams.pressing:
        assert press.towards is None or math.hypot(*press.towards) == pytest.approx(1, abs=1e-5)
    assert set(seams.layers) == set(size.setting.tally)


@each_example
def test_every_join_of_units_lies_on_a_seam_that_the_steps_sew(name: str) -> None:
    """What the setting says of the finished quilt, and what the sewing steps make, are found by two ways."""
    size = sized(name)
    seams = [shapely.LineString([press.at[:2], press.at[2:]]) for press in views.seams_view(1, size).pressing]
    tree = shapely.STRtree(seams)
    for join in size.setting.joins:
        a, b, c, d = seam_of(size, join).ends()
        spots = shapely.points([(a + (c - a) * part, b + (d - b) * part) for part in (0.2, 0.5, 0.8)])
        assert len(set(tree.query(spots, predicate="dwithin", distance=1e-4)[0])) == 3, join


def box_of(motion: Motion, width: float, height: float) -> shapely.Polygon:
    points = [motion(p) for p in (0j, complex(width, 0), complex(width, height), complex(0, height))]
    return shapely.Polygon([(p.real, p.imag) for p in points])


def test_seams_of_rows_are_pressed_as_the_steps_say() -> None:
    seams = views.seams_view(1, Stages().at(ROUNDS).size())
    ways = {round(press.at[1]): press.towards for press in seams.pressing if press.at[0] == press.at[2]}
    assert set(ways.values()) == {(1.0, 0.0), (-1.0, 0.0)}
    level = {press.towards for press in seams.pressing if press.at[1] == press.at[3]}
    assert level == {(0.0, 1.0), (0.0, -1.0)}
    (border,) = (press.at for press in seams.pressing if press.towards == (0.0, -1.0))
    assert border[1] == border[3] == min(press.at[1] for press in seams.pressing)


@each_example
def test_findings_point_at_what_is_there(name: str) -> None:
    design = MADE[name].design
    for found in views.proof_view(1, MADE[name]).findings:
        for cell in found.spot.cells:
            cell_at(design, CellAt(section=cell.section, row=cell.row, column=cell.column))


@pytest.mark.parametrize(
    ("key", "detail", "kind", "name", "cells"),
    [
        ("setting.map.1", "row 2, unit 3", "cells", "centre", [(1, 2)]),
        ("setting.map.0", "", "cells", "centre", [(0, c) for c in range(5)]),
        ("setting", "row 3, unit 1", "cells", "centre", [(2, 0)]),
        ("setting", "row 90, unit 1", "section", "centre", []),
        ("borders.0.width", "", "border", "border 1 of centre", []),
        ("fabrics.A.colour", "", "fabric", "A", []),
        ("recipes.round.trim", "", "recipe", "round", []),
        ("house.paper", "", "key", "house.paper", []),
        ("", "", "design", "", []),
    ],
)
def test_a_place_is_found_from_its_key(
    key: str, detail: str, kind: str, name: str, cells: list[tuple[int, int]]
) -> None:
    finding = Finding("x", Severity.STYLE, Place(key, detail), "So.", "Do.")
    spot = spot_of(finding, read_design(ROUNDS).design)
    assert (spot.kind, spot.name) == (kind, name)
    assert [(cell.row, cell.column) for cell in spot.cells] == cells


def test_strips_are_mended_where_the_plan_is_seen() -> None:
    rooms = {
        key: spot_of(Finding("x", Severity.STYLE, Place(key), "So.", "Do."), read_design(ROUNDS).design).room
        for key in ("fabrics.A.strips.0", "fabrics.A.strip_heights", "fabrics.A.width")
    }
    assert list(rooms.values()) == ["cutting", "cutting", "cloth"]


def test_quick_figures_have_no_hours_and_say_that_better_ones_come() -> None:
    size = Stages().at(ROUNDS).size()
    quick, settled = views.figures_view(1, size, QUICK), views.figures_view(1, size)
    assert (quick.settled, quick.hours, quick.steps) == (False, None, None)
    assert settled.hours is not None
    assert settled.hours > 0
    assert settled.fabrics == quick.fabrics or settled.fabrics != ()


def test_pages_are_as_wide_as_is_asked_for_or_wider() -> None:
    made = Stages().at(ROUNDS)
    pages = booklet_pages(made, 301)
    assert {pixels_of(page)[0] for page in pages} == {360}
    assert len(views.booklet_view(1, made).pages) == len(pages)


@each_example
def test_rejoined_curves_meet_on_the_seams_of_the_sewn_pieces(name: str) -> None:
    """Where two sewn pieces meet and a curve is rejoined, both have the place on their edge."""
    for draft in views.blocks_view(1, MADE[name]).drafts:
        sewn = draft.sewn
        outlines = [
            shapely.affinity.affine_transform(
                as_polygon(Region((read_path_data(sewn.units[piece.unit].outline)[0].path(),))),
                [piece.sewn_at[k] for k in (0, 2, 1, 3, 4, 5)],
            )
            for piece in sewn.pieces
        ]
        for meeting in sewn.meetings if outlines else ():
            near = [shapely.Point(meeting.at).distance(each.boundary) for each in outlines]
            assert sum(distance < 0.02 for distance in near) >= 2
        assert max((each.peak for each in sewn.meetings), default=0) == pytest.approx(sewn.peak)


@pytest.mark.parametrize("name", ["rounds", "lattice"])
def test_recipes_are_told_as_the_file_has_them_whatever_prints_must_stand_upright(name: str) -> None:
    """Two colourways of one recipe, one of them upright; and a recipe whose only colourway is."""
    made, written = {
        "rounds": (Stages().at(ONE_UPRIGHT), {"round": ("a", "b")}),
        "lattice": (MADE["lattice-in-june"], {"bloom": ("a",)}),
    }[name]
    told, paper = views.blocks_view(1, made), views.paper_facts(made)
    assert {draft.name: draft.colourways for draft in told.drafts} == written
    assert len(told.drafts) == len(written)
    assert [recipe.name for recipe in paper.recipes] == list(written)
    assert {way.recipe for way in paper.colourways} == set(written)

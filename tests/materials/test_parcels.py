"""The plan of a fabric that is there in pieces: counted by published charts, by laws, and by what is on the shelf."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Direction, Parcel, Precut, bought_parcel
from quarterturn.materials import ClothPlan, materials_text, show_bought
from quarterturn.materials.parcels import plan_cloth
from quarterturn.measure import Length, Units, inches
from quarterturn.pieces import Grain, Piece, Purpose
from tests.materials.cutting_cases import MAKING, fabric, piece, size
from tests.proof.checks.sound import SOUND
from tests.samples import pattern_of

FAT = bought_parcel(Precut.FAT_QUARTER, Units.INCH, inches(40), inches(1))
TEN = bought_parcel(Precut.TEN_INCH, Units.INCH, inches(40), inches(1))
STRIP = bought_parcel(Precut.STRIP, Units.INCH, inches(40), inches(1))


def end(width: str | int, height: str | int, count: int = 1) -> Parcel:
    """Return pieces on the shelf that are square already."""
    return Parcel("end", size(width), size(height), Length(0), count)


def parcels(
    *pieces: Piece,
    shelf: tuple[Parcel, ...] = (),
    bought: Parcel | None = FAT,
    direction: Direction = Direction.NONE,
) -> ClothPlan:
    """Plan pieces of fabric A from pieces of cloth."""
    cloth = replace(fabric(40, direction), on_hand=shelf, bought_as=bought)
    return plan_cloth(cloth, pieces, MAKING, Units.INCH)


def counted(plan: ClothPlan) -> tuple[int, int]:
    """Return how many pieces are bought, and how many at least."""
    assert plan.parcels
    return plan.parcels.bought, plan.parcels.bound


@pytest.mark.parametrize(
    ("side", "each"), [("2 1/2", 48), ("3 1/2", 20), (4, 20), (5, 12), ("6 1/2", 6), (10, 2), ("10 1/2", 1)]
)
def test_a_fat_quarter_squared_up_to_17_by_20_gives_what_its_sides_hold(side: str | int, each: int) -> None:
    """The usable 17" × 20" of trade check 39 (common practice): so many squares by floor(17/s) · floor(20/s)."""
    assert (int(17 // size(side)) * int(20 // size(side))) == each
    assert counted(parcels(piece(each, side))) == (1, 1)
    assert counted(parcels(piece(each + 1, side))) == (2, 2)


@pytest.mark.parametrize(("parcel", "side", "each"), [(TEN, 5, 4), (TEN, "3 1/4", 9), (STRIP, "2 1/2", 16)])
def test_pinked_precuts_lose_nothing_to_squaring(parcel: Parcel, side: str | int, each: int) -> None:
    assert counted(parcels(piece(3 * each, side), bought=parcel)) == (3, 3)


def test_a_binding_is_joined_of_strips_from_pieces() -> None:
    """20n − 2 1/2(n − 1) ≥ 124 takes seven strips; a fat quarter gives six of 2 1/2"."""
    plan = parcels(piece(1, 124, "2 1/2", Purpose.BINDING, "A9"))
    (run,) = plan.runs
    assert (run.strips, run.each, run.length) == (7, 20, 125)
    assert counted(plan) == (2, 2)


def test_long_borders_are_joined_and_short_ones_cut_whole() -> None:
    plan = parcels(piece(2, 36, 3, Purpose.BORDER), piece(2, 19, 3, Purpose.BORDER, "A2"))
    (run,) = plan.runs
    assert [cut.piece for cut in run.crosscuts] == ["A1"]
    assert cut_out(plan)["A2"] == 2
    assert plan.unplaced == ()


def test_a_backing_does_not_come_from_pieces() -> None:
    assert parcels(piece(1, 30, 30, Purpose.BACKING, "A8", Grain.LENGTHWISE)).unplaced == ("A8",)


def test_what_no_piece_holds_is_named() -> None:
    assert parcels(piece(1, 21, 18), piece(4, 5, label="A2")).unplaced == ("A1",)


def test_the_shelf_saves_what_must_be_bought() -> None:
    """Thirteen 5" squares take two fat quarters; an end that holds one saves the second."""
    plan = parcels(piece(13, 5), shelf=(end(6, 6),))
    assert counted(plan) == (1, 1)
    assert plan.parcels
    assert [stock.used for stock in plan.parcels.stocks] == [1, 1]


def test_where_the_shelf_holds_all_nothing_is_bought() -> None:
    plan = parcels(piece(4, 5), shelf=(end(10, 10),))
    assert counted(plan) == (0, 0)
    assert show_bought(plan, Units.INCH) == "nothing"


def test_cloth_off_the_bolt_is_saved_by_the_shelf_and_by_no_more_of_it_than_saves() -> None:
    """Sixteen 5" squares are two strips of eight; ends of 20" × 5" hold four each."""
    whole = plan_cloth(fabric(40), [piece(16, 5)], MAKING, Units.INCH)
    part = parcels(piece(16, 5), shelf=(end(20, 5, 2),), bought=None)
    assert (whole.cut_length, part.cut_length) == (10, 5)
    few = parcels(piece(16, 5), shelf=(end(20, 5, 1),), bought=None)
    assert few.cut_length == 10
    assert few.parcels
    assert few.parcels.layouts == ()


def test_a_print_with_a_direction_turns_no_piece_of_cloth() -> None:
    """Strips of 19" fit across a fat quarter, not along it: 17/5 gives three."""
    wanted = piece(4, 19, 5, grain=Grain.CROSSWISE)
    plan = parcels(wanted, direction=Direction.ONE_WAY)
    assert counted(plan) == (2, 2)
    assert plan.parcels
    assert not any(layout.upright for layout in plan.parcels.layouts)


def test_washed_pieces_are_smaller_and_those_on_hand_are_measured_as_they_are() -> None:
    cloth = replace(fabric(40), bought_as=FAT, on_hand=(end(20, 17),), shrink_along=Fraction(5, 100))
    plan = plan_cloth(cloth, [piece(1, 5)], MAKING, Units.INCH)
    assert plan.parcels
    shelf, bought = plan.parcels.stocks
    assert (shelf.usable_width, shelf.usable_height) == (20, 17)
    assert (bought.usable_width, bought.usable_height) == (20, 16)


def test_sizes_finer_than_any_ruler_are_planned_a_hair_larger_and_cut_as_they_are() -> None:
    fine = Fraction(50_000_001, 10_000_000)
    plan = parcels(piece(12, fine))
    assert plan.parcels
    assert {cut.along for cut, _ in plan.parcels.crosscuts} == {fine}


def cut_out(plan: ClothPlan) -> Counter[str]:
    """Count what the layouts give."""
    found: Counter[str] = Counter()
    for cut, strips in plan.parcels.crosscuts if plan.parcels else ():
        found[cut.piece] += cut.count * strips
    return found


SIDES = st.integers(8, 80).map(lambda eighths: inches(0, eighths, 8))


@given(st.lists(st.tuples(st.integers(1, 20), SIDES, SIDES), min_size=1, max_size=3), st.integers(0, 3))
@settings(max_examples=30, deadline=None)
def test_every_piece_is_cut_once_and_no_layout_is_larger_than_its_cloth(
    wanted: list[tuple[int, Length, Length]], ends: int
) -> None:
    pieces = [piece(n, long, wide, label=f"A{i}") for i, (n, long, wide) in enumerate(wanted, 1)]
    plan = parcels(*pieces, shelf=(end(12, 11, ends),) if ends else ())
    assert cut_out(plan) == {each.label: each.count for each in pieces}
    bought, bound = counted(plan)
    assert bound <= bought
    assert plan.parcels
    for layout in plan.parcels.layouts:
        assert layout.cut <= layout.room
        assert all(group.used <= layout.length for group in layout.strips)
        stock = plan.parcels.stock(layout.stock)
        assert {layout.length, layout.room} == {stock.usable_width, stock.usable_height}


def test_the_text_says_how_many_are_bought_and_how_few_can_do() -> None:
    brick = 'colour = "#9c4a35"'
    pattern = pattern_of(SOUND.replace(brick, f'{brick}\nbought_as = "fat quarter"\nprice = 3.5'))
    text = materials_text(pattern.materials, Units.INCH)
    assert "no plan buys fewer than 2" in text
    (line,) = [line for line in pattern.materials.shopping if line.key == "C"]
    assert (line.count, line.piece, line.price) == (2, "fat quarter", Fraction(7))

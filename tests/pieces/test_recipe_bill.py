"""The bill of recipes with several shapes, of rectangles, and of halves rejoined."""

from __future__ import annotations

from fractions import Fraction

from quarterturn.blocks import draft_blocks
from quarterturn.measure import inches
from quarterturn.pieces import Bill, Grain, Purpose, bill_text
from tests.recipe_samples import GIZZARDS, HALVES, LONE_HEARTS, MOONS, PONDS, RIPPLES, WHOLE
from tests.samples import ROUNDS, Changed, pattern_of


def bill_of(text: str) -> Bill:
    """Return the bill of the design of a text."""
    return pattern_of(text).bill


def sizes(text: str, purpose: Purpose) -> list[tuple[str, Fraction, Fraction, int]]:
    """Return fabric, size and count of the pieces of a purpose."""
    return [(p.fabric, p.length, p.width, p.count) for p in bill_of(text).pieces if p.purpose is purpose]


def test_every_shape_has_a_blank_in_its_own_fabric() -> None:
    (masters,) = bill_of(RIPPLES).masters
    assert [(blank.part, blank.each) for blank in masters.blanks] == [("outer", 1), ("inner", 1)]
    assert sizes(RIPPLES, Purpose.SHAPE) == [
        ("B", inches(7, 1, 2), inches(7, 1, 2), 2),
        ("C", inches(4, 1, 2), inches(4, 1, 2), 2),
    ]


def test_equal_shapes_of_one_part_take_a_blank_each() -> None:
    (masters,) = bill_of(WHOLE).masters
    leaf, bloom = masters.blanks
    assert (leaf.each, bloom.each) == (2, 1)
    assert [count for *_, count in sizes(WHOLE, Purpose.SHAPE)] == [8, 4]


def test_blanks_are_no_larger_than_the_ring_either_way() -> None:
    """The ring of 6" and its web; and a heart turned by 30°, whose box is 1/4" more all round, cut sizes up to 1/8"."""
    heart = draft_blocks(pattern_of(PONDS).design).masters[0].shapes[1]
    (_, ring_width, ring_height, _), (_, width, height, _) = sizes(PONDS, Purpose.SHAPE)
    assert ring_width == ring_height == inches(6, 1, 2)
    assert 0 <= width - heart.width - 0.5 < 0.125 > height - heart.height - 0.5 >= 0
    assert width != height


def test_ground_is_as_wide_and_high_as_its_master() -> None:
    assert sizes(HALVES, Purpose.GROUND) == [("A", inches(9, 1, 2), inches(5), 2)]
    (ground,) = (p for p in bill_of(HALVES).pieces if p.purpose is Purpose.GROUND)
    assert ground.name == "ground rectangle"


def test_masters_are_made_for_the_half_of_which_most_are_needed() -> None:
    """Two left halves and one right half: two masters, one half over (trade check 17)."""
    (masters,) = bill_of(HALVES).masters
    assert [(u.name, u.needed, u.surplus) for u in masters.units] == [("a-lh", 2, 0), ("a-rh", 1, 1)]


def test_two_masters_give_two_blocks_of_equal_halves() -> None:
    """Check value 14.4: a square of each colourway makes two identical blocks."""
    bill = bill_of(GIZZARDS)
    assert [(m.code, m.count, m.units_needed) for m in bill.masters] == [("a", 3, 6), ("b", 3, 6)]
    ((join,),) = (each.joins for each in bill.rejoined)
    assert (join.unit, join.halves, join.count) == ("g", ("a", "b"), 6)


def test_an_odd_number_of_blocks_leaves_a_half_of_each_colourway() -> None:
    bill = bill_of(
        Changed(GIZZARDS).with_("g2 g3 g0", "g2 g3 g1").with_("g0 g1 g2\ng2 g3 g1", "g0 g1 g2 g2 g3").text
    )
    assert [(m.count, m.surplus_units) for m in bill.masters] == [(3, 1), (3, 1)]


def test_halves_of_two_kinds_are_counted_by_their_blocks() -> None:
    """Three blocks with the left half of the first colourway, one with its right half."""
    bill = bill_of(LONE_HEARTS)
    assert [(j.unit, j.halves, j.count) for each in bill.rejoined for j in each.joins] == [
        ("g-lh", ("a-lh", "b-rh"), 3),
        ("g-rh", ("a-rh", "b-lh"), 1),
    ]
    assert [(u.name, u.needed, u.surplus) for m in bill.masters for u in m.units] == [
        ("a-lh", 3, 0),
        ("a-rh", 1, 2),
        ("b-lh", 1, 2),
        ("b-rh", 3, 0),
    ]


def test_a_half_may_be_placed_as_it_is_and_rejoined() -> None:
    text = Changed(MOONS).with_("m-lh0 m-rh0\nm-lh0 m-lh2", "m-lh0 a-lh0\nm-rh0 a-lh0").text
    a, b = bill_of(text).masters
    assert [(u.name, u.needed, u.rejoined, u.placed) for u in a.units] == [
        ("a-lh", 3, 1, 2),
        ("a-rh", 1, 1, 0),
    ]
    assert (a.count, b.count) == (3, 1)


def test_the_text_of_the_bill_says_what_is_rejoined() -> None:
    pattern = pattern_of(GIZZARDS)
    assert "a + b" in bill_text(pattern.bill, pattern.design.units)


def test_blanks_of_one_fabric_and_size_are_one_piece() -> None:
    """Two leaves that are two parts, of one fabric in this colourway."""
    second = 'name = "leaf"\noutline = "leaf"\nwidth = \'1 1/2"\'\nat = [\'1"\''
    text = Changed(WHOLE).with_(second, second.replace('"leaf"', '"other"', 1))
    bill = bill_of(text.with_('leaf = "B"', 'leaf = "B", other = "B"').text)
    (masters,) = bill.masters
    assert [blank.label for blank in masters.blanks[:2]] == ["B1", "B1"]
    assert (bill.piece("B1").count, bill.piece("B1").used_for) == (2 * masters.count, "colourway a")


def test_side_borders_of_an_upright_print_run_along_the_cloth() -> None:
    text = (
        Changed(ROUNDS)
        .with_('colour = "#9c4a35"', 'colour = "#9c4a35"\ndirection = "one-way"\nupright = true')
        .text
    )
    grains = {p.name: p.grain for p in bill_of(text).pieces if p.purpose is Purpose.BORDER}
    assert grains == {"border, side strip": Grain.LENGTHWISE, "border, end strip": Grain.CROSSWISE}

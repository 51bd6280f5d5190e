"""The search: it looks at all there is, tells what it has not seen, and puts what quilters made near the top."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Cell, Symmetry
from quarterturn.setting.finder import (
    Judge,
    SearchError,
    Selection,
    canonical,
    codes_of,
    find_settings,
    map_lines,
    moves_of,
    selection_text,
)
from quarterturn.setting.known import known_setting
from tests.samples import ROUNDS, design_of, straight, units_in

BIG = ROUNDS.replace("[setting]", '[recipes.big]\nkind = "circle cut both ways"\nfinished = 4\nshape.flow = true\n\n'
                     '[colourways.c]\nrecipe = "big"\nground = "A"\nshape = "B"\n\n[setting]')  # fmt: skip
WAVES = ["a0 a2 b0 b2", "a2 b0 b2 a0", "b0 b2 a0 a2", "b2 a0 a2 b0"]
"""The bands of the winding path, as the first of all blocks that are the same."""


@cache
def found(size: int, symmetry: Symmetry = Symmetry.SLIDE, codes: str = "ab", most: int = 12) -> Selection:
    design = design_of(ROUNDS)
    return find_settings(design, draft_blocks(design), tuple(codes), size, symmetry, most)


def maps(selection: Selection) -> list[list[str]]:
    return [map_lines(each.cells) for each in selection.best]


@pytest.mark.parametrize("symmetry", Symmetry)
def test_the_best_come_first_and_each_is_another_quilt(symmetry: Symmetry) -> None:
    selection = found(2, symmetry)
    totals = [each.score.total for each in selection.best]
    assert totals == sorted(totals, reverse=True)
    assert len({tuple(lines) for lines in maps(selection)}) == 12


def test_where_all_are_looked_at_as_many_are_found_as_there_are() -> None:
    selection = found(2, codes="a", most=100)
    assert (selection.ways, selection.different, selection.sampled) == (256, 17, None)
    assert len(selection.best) == 17


def test_mirrored_blocks_that_lay_the_same_quilt_are_found_once() -> None:
    selection = found(2, Symmetry.MIRROR, "a", 100)
    assert selection.different == 43
    assert len(selection.best) < 43


def test_of_settings_with_colourways_exchanged_the_better_one_is_kept() -> None:
    """Colourway a is light on light here; one block of b alone is as different from it as it is balanced."""
    design = design_of(ROUNDS.replace('shape = "B"', 'shape = "C"', 1).replace("#9c4a35", "#f4eee0"))
    blocks = draft_blocks(design)
    judge = Judge(design, blocks, ("a", "b"), Symmetry.SLIDE, 1)
    light, dark = judge.score((0,)), judge.score((4,))
    [best] = find_settings(design, blocks, ("a", "b"), 1, Symmetry.SLIDE, 9).best
    assert dark.total > light.total
    assert (best.score, best.cells[0][0].code) == (dark, "b")


def test_a_sample_says_that_it_is_one_and_is_the_same_each_time() -> None:
    selection = found(4)
    design = design_of(ROUNDS)
    again = find_settings(design, draft_blocks(design), ("a", "b"), 4, Symmetry.SLIDE, 12)
    assert again == selection
    assert selection.sampled == 20_000
    assert "drawn by lot (seed 1704)" in selection_text(selection)


def test_the_winding_path_is_found_among_the_best_of_four_by_four() -> None:
    assert WAVES in maps(found(4))


def test_whole_rounds_are_the_best_of_two_by_two_units_of_one_colourway() -> None:
    assert maps(found(2, codes="a"))[0] == ["a0 a1", "a3 a2"]


def test_the_drunkards_path_with_curves_that_meet_is_near_the_top_of_560() -> None:
    selection = found(2, Symmetry.TURN)
    cells = units_in(straight(known_setting("drunkards-path").design).cells)
    block = tuple("ab".index(cell.code) * 4 + cell.turn for row in cells for cell in row)
    first = canonical(block, moves_of(Symmetry.TURN, 2, 2))
    wanted = [Cell("ab"[state // 4], state % 4) for state in first]
    place = [[cell for row in each.cells for cell in row] for each in selection.best].index(wanted)
    assert selection.different == 560
    assert place < 5


def test_the_text_has_a_line_for_each_setting() -> None:
    lines = selection_text(found(2, codes="a", most=2)).splitlines()
    assert lines == [
        "2 × 2 units of colourway a, slid: 17 different settings in 256 ways to lay them.",
        "All were looked at; these are the best 2.",
        "   score  flow  rounds  cloth  balance  map",
        "1   87.1   100     100    100       35  a0 a1 / a3 a2",
        "2   67.1   100       0     75       35  a0 a1 / a2 a3",
    ]


def test_a_setting_is_laid_about_as_often_as_the_one_before() -> None:
    turned = found(2, Symmetry.TURN).setting_like(1, rows=10, columns=13)
    assert (turned.down, turned.across, turned.size) == (2, 3, (8, 12))
    mirrored = found(2, Symmetry.MIRROR).setting_like(1, rows=1, columns=1)
    assert (mirrored.down, mirrored.across) == (2, 2)


def test_the_colourways_of_the_map_are_used_unless_others_are_named() -> None:
    design = design_of(BIG)
    blocks = draft_blocks(design)
    assert codes_of(design, blocks) == ("a", "b")
    assert codes_of(design, blocks, ["c"]) == ("c",)


@pytest.mark.parametrize(
    ("wanted", "said"), [("az", "there is no colourway z"), ("ac", "the units of a, c differ in size")]
)
def test_colourways_that_cannot_be_laid_together_are_refused(wanted: str, said: str) -> None:
    design = design_of(BIG)
    with pytest.raises(SearchError, match=said):
        codes_of(design, draft_blocks(design), list(wanted))


def test_more_than_four_colourways_are_refused() -> None:
    more = "".join(f'[colourways.{c}]\nrecipe = "round"\nground = "A"\nshape = "B"\n\n' for c in "cde")
    design = design_of(ROUNDS.replace("[setting]", more + "[setting]"))
    with pytest.raises(SearchError, match="there are 5 colourways; name up to 4 of them"):
        codes_of(design, draft_blocks(design), list("abcde"))


def test_a_shape_whose_quarters_differ_is_refused_and_one_whose_quarters_are_alike_is_not() -> None:
    kind = ROUNDS.replace("circle cut both ways", "shape cut both ways")
    heart = design_of(
        kind.replace("flow = true", "outline = \"heart\", width = '2\"'").replace("a2 a3 b2 b3 a2", "a-tl0 " * 5)
        .replace("a1 a0 b1 b0 a1", "a-tr0 " * 5).replace("b0 b1 a0 a2 b1", "a-br0 " * 5)
    )  # fmt: skip
    with pytest.raises(SearchError, match="the four quarters of colourway a differ"):
        codes_of(heart, draft_blocks(heart))
    square = design_of(kind.replace("flow = true", 'outline = "rounded square", width = \'2"\''))
    blocks = draft_blocks(square)
    best = find_settings(square, blocks, codes_of(square, blocks), 2, Symmetry.SLIDE, 1).best[0]
    assert best.score.rounds == 1

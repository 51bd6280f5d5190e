"""The tree of the top: what each kind of section comes to, and that equal sections are one node."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.geometry import Region, region_bounds
from quarterturn.measure import inches
from quarterturn.setting import (
    Child,
    ClothUse,
    Framed,
    Grid,
    Node,
    OneUnit,
    Panel,
    PlainCloth,
    arrange,
    map_findings,
)
from tests.samples import design_of, with_setting

WREATH = """
[sections.wreath]
kind = "straight"
map = '''
a2 a3
a1 a0
'''
"""


def top_of(tables: str) -> Node:
    """Return the tree of a design with other tables in place of its setting and border."""
    design = design_of(with_setting(tables))
    blocks = draft_blocks(design)
    assert map_findings(design, blocks) == ()
    return arrange(design, blocks).top


def grid_of(tables: str) -> Grid:
    top = top_of(tables)
    assert isinstance(top, Grid)
    return top


def words(grid: Grid) -> list[list[str]]:
    """Return a short word for every child: a unit or section with its turn, or what use cloth is put to."""
    return [[word(child) for child in row] for row in grid.rows]


def word(child: Child) -> str:
    if isinstance(child.node, PlainCloth):
        return f"{child.node.fabric} {float(child.width):g}×{float(child.height):g}"
    return f"{child.node.name}{child.turn}"


def test_a_section_is_one_node_wherever_it_lies() -> None:
    grid = grid_of(f"{WREATH}[setting]\nkind = 'straight'\nmap = '''\nwreath0 wreath1\nwreath3 wreath0\n'''")
    assert words(grid) == [["wreath0", "wreath1"], ["wreath3", "wreath0"]]
    nodes = [child.node for row in grid.rows for child in row]
    assert all(node is nodes[0] for node in nodes)
    assert (grid.name, grid.width, grid.height) == ("centre", 8, 8)


def test_plain_cloth_is_as_large_as_its_place() -> None:
    grid = grid_of(
        f"{WREATH}[sections.bar]\nkind = 'straight'\nmap = 'a0 b0'\n"
        "[setting]\nkind = 'straight'\nmap = '''\nwreath0 A\nB bar1\n'''"
    )
    assert words(grid) == [["wreath0", "A 2×4"], ["B 4×4", "bar1"]]
    cloth = grid.rows[0][1].node
    assert isinstance(cloth, PlainCloth)
    assert cloth.use is ClothUse.SQUARE


def test_a_turned_section_stands_on_its_side() -> None:
    grid = grid_of(
        "[sections.bar]\nkind = 'straight'\nmap = 'a0 b0 a0'\n[setting]\nkind = 'straight'\nmap = 'bar1'"
    )
    assert (grid.width, grid.height) == (2, 6)


SASHED = (
    "[setting]\nkind = 'straight'\nmap = '''\na0 a1\na2 a3\n'''\nsashing = {{ fabric = 'C', width = 1{} }}"
)


def test_sashing_without_cornerstones_runs_through() -> None:
    grid = grid_of(SASHED.format(""))
    assert words(grid) == [["a0", "C 1×2", "a1"], ["C 5×1"], ["a2", "C 1×2", "a3"]]
    assert (grid.width, grid.height) == (5, 5)


def test_cornerstones_stand_where_sashes_cross() -> None:
    grid = grid_of(SASHED.format(", cornerstone = 'B'"))
    assert words(grid)[1] == ["C 2×1", "B 1×1", "C 2×1"]


def test_outer_sashing_goes_all_round() -> None:
    grid = grid_of(SASHED.format(", cornerstone = 'B', outer = true"))
    assert words(grid)[0] == ["B 1×1", "C 2×1", "B 1×1", "C 2×1", "B 1×1"]
    assert words(grid)[1] == ["C 1×2", "a0", "C 1×2", "a1", "C 1×2"]
    assert len(grid.rows) == 5
    assert (grid.width, grid.height) == (7, 7)
    bare = grid_of(SASHED.format(", outer = true"))
    assert words(bare)[0] == ["C 7×1"]


def test_columns_are_a_grid_of_one_row_and_strips_are_as_high_as_the_others() -> None:
    grid = grid_of(
        f'{WREATH}[setting]\nkind = "columns"\nparts = ["wreath1", {{ fabric = "A", width = 3 }}, "wreath"]'
    )
    assert words(grid) == [["wreath1", "A 3×4", "wreath0"]]
    assert grid.width == 11


def test_rows_are_a_grid_of_one_column() -> None:
    grid = grid_of(
        f'{WREATH}[setting]\nkind = "rows"\nparts = [{{ fabric = "A", width = "1/2 in" }}, "wreath"]'
    )
    assert words(grid) == [["A 4×0.5"], ["wreath0"]]
    strip = grid.rows[0][0].node
    assert isinstance(strip, PlainCloth)
    assert strip.use is ClothUse.STRIP


def test_a_motif_lies_with_its_middle_at_its_place_and_turned() -> None:
    panel = top_of(
        "[setting]\nkind = 'panel'\nfabric = 'A'\nwidth = 12\nheight = 8\n"
        "motifs = [{ recipe = 'round', fabric = 'B', at = [4, 3] }, "
        "{ recipe = 'round', fabric = 'C', at = [8, 5], turn = 30 }]"
    )
    assert isinstance(panel, Panel)
    assert (panel.width, panel.height) == (12, 8)
    first, second = (region_bounds(Region((motif.outline,))) for motif in panel.motifs)
    assert (first.left + first.right, first.top + first.bottom) == pytest.approx((8, 6))
    assert (second.left + second.right, second.top + second.bottom) == pytest.approx((16, 10))
    assert [motif.fabric for motif in panel.motifs] == ["B", "C"]


def test_a_root_without_borders_is_its_own_top() -> None:
    design = design_of(with_setting("[setting]\nkind = 'straight'\nmap = 'a0'"))
    setting = arrange(design, draft_blocks(design))
    assert setting.top is setting.centre
    assert setting.top == Grid(
        "centre", ((Child(OneUnit("a", inches(2), inches(2))),),), inches(2), inches(2)
    )


def test_borders_frame_the_root_and_every_section_that_has_some() -> None:
    border = "\nfabric = 'C'\nwidth = 1\n"
    top = top_of(
        f"{WREATH}[[sections.wreath.borders]]{border}[setting]\nkind = 'straight'\nmap = 'wreath0'\n[[borders]]{border}"
    )
    assert isinstance(top, Framed)
    grid = top.centre.node
    assert isinstance(grid, Grid)
    inner = grid.rows[0][0].node
    assert isinstance(inner, Framed)
    assert (top.name, inner.name, inner.centre.node.width) == ("top", "wreath", 4)
    assert (inner.width, top.width) == (6, 8)


def test_a_motif_of_a_recipe_that_lays_its_shape_elsewhere_lies_with_its_middle_at_its_place_too() -> None:
    panel = top_of(
        "[recipes.pond]\nkind = 'shapes cut'\nstart = 8\ncuts = 'none'\n"
        "[[recipes.pond.shapes]]\nname = 'disc'\nwidth = 3\nat = [1, '-1/2 in']\n"
        "[setting]\nkind = 'panel'\nfabric = 'A'\nwidth = 12\nheight = 8\n"
        "motifs = [{ recipe = 'pond', fabric = 'B', at = [4, 3], turn = 30 }]"
    )
    assert isinstance(panel, Panel)
    box = region_bounds(Region((panel.motifs[0].outline,)))
    assert (box.left, box.right, box.top, box.bottom) == pytest.approx((2.5, 5.5, 1.5, 4.5))

"""Edges that do not fit are found, with by how much they miss one another and with what would make them fit."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.design import Finding, Severity, locate
from quarterturn.setting import MAP_CODES, arrange, map_findings
from tests.samples import design_of, with_setting

BIG = """
[recipes.big]
kind = "circle cut both ways"
finished = '3 1/4"'
shape = { flow = true }
[colourways.c]
recipe = "big"
ground = "A"
shape = "B"
"""
WREATH = """
[sections.wreath]
kind = "straight"
map = '''
a2 a3
a1 a0
'''
"""
BAR = "[sections.bar]\nkind = 'straight'\nmap = 'b0'\nacross = 3\n"


def findings(tables: str) -> list[Finding]:
    """Return what does not fit, each with its line; the setting is arranged all the same, by a guess."""
    text = with_setting(tables)
    design = design_of(text)
    blocks = draft_blocks(design)
    arrange(design, blocks)
    return list(locate(text, map_findings(design, blocks)))


def only(tables: str) -> Finding:
    (finding,) = findings(tables)
    assert finding.severity is Severity.STOPS
    assert finding.code in MAP_CODES
    assert finding.place.line
    return finding


def test_units_of_two_sizes_in_a_row_tell_both() -> None:
    finding = only(f"{BIG}[setting]\nkind = 'straight'\nmap = 'a0 c0'")
    assert (finding.code, finding.place.key, finding.place.detail) == (
        "edges-misfit",
        "setting.map.0",
        "row 1",
    )
    assert finding.sentence == 'In row 1, `a` is 2" high and `c` 3¼": they differ by 1¼".'
    assert 'units of recipe round finish at 3¼"' in finding.remedy
    assert 'coping strips of ⅝"' in finding.remedy


def test_what_differs_in_a_column_is_told_of_the_column() -> None:
    finding = only(f"{WREATH}{BAR}[setting]\nkind = 'straight'\nmap = '''\nwreath0\nbar0\n'''")
    assert finding.sentence == 'In column 1, `wreath` is 4" wide and `bar` 6": they differ by 2".'
    assert finding.remedy == (
        'Give `wreath` 3 columns instead of 2, or put a border of kind "coping" round `wreath` '
        'that brings it to 6" × 4", in strips of 1".'
    )


def test_a_section_that_no_whole_number_of_units_would_fit_tells_another_size() -> None:
    tables = f"{BIG}{WREATH}[setting]\nkind = 'columns'\nparts = ['wreath', 'tower']\n"
    finding = only(f"{tables}[sections.tower]\nkind = 'rows'\nparts = ['c0', 'c0']")
    assert (finding.place.key, finding.place.detail) == ("setting.parts", "the line")
    assert 'Let what stands in `wreath` finish at 3¼" instead of 2"' in finding.remedy


def test_a_section_turned_on_its_side_tells_its_other_measure() -> None:
    finding = only(f"{BAR}[setting]\nkind = 'straight'\nmap = 'bar0 bar1'")
    assert '`bar` is 2" high and `bar` turned 6"' in finding.sentence
    assert "Give `bar` 3 rows instead of 1" in finding.remedy


PIECED = "[setting]\nkind = 'straight'\nmap = 'a0 a0 a0'\n[[borders]]\nkind = 'pieced'\nsides = 'post'\nends = 'bar'\n"


def test_a_border_strip_that_is_too_short_tells_how_many_units_it_needs() -> None:
    post = "[sections.post]\nkind = 'straight'\nmap = 'a0'\n"
    finding = only(f"{BAR}{post}{PIECED}")
    assert (finding.code, finding.place.key) == ("edges-misfit", "borders.0.ends")
    assert finding.sentence == 'The border strip `bar` is 6" long and its edge 10": it is 4" too short.'
    assert finding.remedy.startswith("Give `bar` 5 columns instead of 3")


def test_a_border_strip_that_is_too_long_tells_the_coping_it_needs() -> None:
    post = "[sections.post]\nkind = 'straight'\nmap = 'a0'\ndown = 2\n"
    finding = only(f"{BAR}{post}{PIECED}corners = 'a0'")
    assert finding.place.key == "borders.0.sides"
    assert finding.sentence == 'The border strip `post` is 4" long and its edge 2": it is 2" too long.'
    assert 'whose strips are 1" wide' in finding.remedy


def test_a_corner_that_does_not_fill_its_place_is_found() -> None:
    strips = f"{BIG}{BAR}[sections.post]\nkind = 'straight'\nmap = 'a0'\n{PIECED}corners = 'c0'"
    finding = only(strips)
    assert (finding.place.key, finding.sentence) == (
        "borders.0.corners",
        'A corner of the border is 2" × 2", and what is to fill it is 3¼" × 3¼".',
    )


def test_what_misses_by_a_hair_is_to_be_made_larger_on_both_sides() -> None:
    """On point 2" units are 2.8284" wide, and a strip of 0.0858" on each side of one is none."""
    tables = f"{BAR}[sections.gem]\nkind = 'on point'\nmap = 'a0'\ntriangles = 'A'\n"
    tables += "[[sections.bar.borders]]\nkind = 'coping'\nfabric = 'C'\nto = [6, 3]\n"
    finding = only(f"{tables}[setting]\nkind = 'columns'\nparts = ['gem', 'bar']")
    assert finding.remedy == 'Bring both to 4", each with a border of kind "coping".'


def test_what_has_no_ruler_size_the_other_way_is_brought_to_one() -> None:
    tables = f"{WREATH}[sections.gem]\nkind = 'on point'\nmap = 'a0'\ntriangles = 'A'\n"
    finding = only(f"{tables}[setting]\nkind = 'columns'\nparts = ['gem', 'wreath']")
    assert 'round `gem` that brings it to 4" × 4"' in finding.remedy


def test_coping_too_narrow_to_be_sewn_is_found() -> None:
    coping = "[[sections.wreath.borders]]\nkind = 'coping'\nfabric = 'C'\nto = [4.25, 5]\n"
    finding = only(f"{WREATH}{coping}[setting]\nkind = 'straight'\nmap = 'wreath0'")
    assert (finding.code, finding.place.key) == ("coping-too-narrow", "sections.wreath.borders.0")
    assert '⅛"' in finding.sentence


def test_coping_cannot_make_a_section_smaller() -> None:
    coping = "[[sections.wreath.borders]]\nkind = 'coping'\nfabric = 'C'\nto = [3, 5]\n"
    finding = only(f"{WREATH}{coping}[setting]\nkind = 'straight'\nmap = 'wreath0'")
    assert finding.place.key == "sections.wreath.borders.0"
    assert finding.sentence == 'What is to be coped is 1" too wide already.'
    assert finding.remedy == 'Make it no less than 4" and 5".'


@pytest.mark.parametrize(("cells", "where"), [("a0 A\nB C", "column 2"), ("a0 a0\nB C", "row 2")])
def test_plain_cloth_alone_in_a_row_or_column_has_no_size(cells: str, where: str) -> None:
    details = [
        finding.place.detail for finding in findings(f"[setting]\nkind='straight'\nmap='''\n{cells}\n'''")
    ]
    assert where in details


def test_a_motif_may_not_reach_past_its_panel() -> None:
    panel = "[setting]\nkind = 'panel'\nfabric = 'A'\nwidth = 12\nheight = 8\nmotifs = [\n"
    finding = only(f"{panel}{{ recipe = 'round', fabric = 'B', at = [6, 1] }},\n]")
    assert (finding.code, finding.place.key) == ("motif-outside", "setting.motifs.0")
    assert "past the edge of its panel" in finding.sentence


def test_a_quilt_for_a_giant_is_refused() -> None:
    finding = only(
        "[setting]\nkind = 'straight'\nmap = 'a0'\nacross = 199\n[[borders]]\nfabric = 'C'\nwidth = 2"
    )
    assert (finding.code, finding.place.key) == ("quilt-too-large", "setting")
    assert '402"' in finding.sentence


def test_an_unused_section_that_does_not_fit_is_found_too() -> None:
    finding = only(
        f"{BIG}[sections.nook]\nkind = 'straight'\nmap = 'a0 c0'\n[setting]\nkind = 'straight'\nmap = 'a0'"
    )
    assert finding.place.key == "sections.nook.map.0"


def test_one_misfit_is_told_once_for_a_section_used_many_times() -> None:
    tables = f"{BIG}[sections.nook]\nkind = 'straight'\nmap = 'a0 c0'\n"
    only(f"{tables}[setting]\nkind = 'straight'\nmap = '''\nnook0 nook2\nnook2 nook0\n'''")


SQUARE = f"[sections.post]\nkind = 'straight'\nmap = 'a0'\ndown = 3\n{PIECED.replace('a0 a0 a0', 'wreath0')}"


def test_repeats_that_would_fit_are_told_as_the_file_has_them() -> None:
    long = "[sections.bar]\nkind = 'straight'\nmap = 'b0 b1'\nacross = 4\n"
    text = with_setting(f"{WREATH}{long}{SQUARE}corners = 'a0'".replace("down = 3", "down = 2"))
    design = design_of(text)
    (finding,) = map_findings(design, draft_blocks(design))
    assert finding.remedy.startswith("Give `bar` 2 columns instead of 8 (across = 1), or put a border")


def test_no_size_is_advised_that_no_ruler_shows() -> None:
    coping = "[[borders]]\nkind = 'coping'\nfabric = 'C'\nto = [5, 5]\n[[borders]]"
    (sides, ends) = findings(f"{WREATH}{BAR}{SQUARE.replace('[[borders]]', coping)}corners = 'a0'")
    assert "3333" not in ends.remedy + sides.remedy
    assert "6667" not in ends.remedy + sides.remedy


def test_what_follows_from_a_misfit_further_in_is_left_out() -> None:
    coping = "[[borders]]\nkind = 'coping'\nfabric = 'C'\nto = [3, 6]\n[[borders]]"
    finding = only(f"{WREATH}{BAR}{SQUARE.replace('[[borders]]', coping)}corners = 'a0'")
    assert (finding.place.key, finding.sentence) == (
        "borders.0",
        'What is to be coped is 1" too wide already.',
    )

"""Prints that must stand upright: which piece serves each place, and how many masters that takes."""

from __future__ import annotations

import cmath
import re
from collections import Counter
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import (
    Cell,
    Design,
    Map,
    SectionSet,
    Severity,
    StraightSet,
    allowed_turns,
    format_design,
    read_design,
)
from quarterturn.geometry import Region, difference_area
from quarterturn.pipeline import make_pattern, run
from quarterturn.proof import prove
from quarterturn.setting import arrange, growth, laid_upright, masters_for, other_ways, picture
from tests.design.recipe_cases import RIPPLES
from tests.recipe_samples import GIZZARDS, HALVES
from tests.samples import HEARTS, ONE_UPRIGHT, ROUNDS, design_of, straight, with_setting
from tests.section_texts import ON_POINT, PANELS, PIECED, SASHED

PLAIN = 'name = "oyster"'
WAYS = {"one-way": (0,), "two-way": (0, 2)}


def upright(text: str, direction: str, fabric: str = PLAIN) -> str:
    return text.replace(fabric, f'{fabric}\nupright = true\ndirection = "{direction}"')


def laid(design: Design) -> list[Cell]:
    return units(laid_upright(design, draft_blocks(design)).setting)


def units(setting: SectionSet) -> list[Cell]:
    assert isinstance(setting, StraightSet)
    return [cell for row in setting.rows() for cell in row if isinstance(cell, Cell)]


def rows_of(design: Design) -> Map:
    return straight(design).rows()


@pytest.mark.parametrize("direction", WAYS)
def test_no_piece_is_turned_but_as_its_print_allows(direction: str) -> None:
    design = design_of(upright(ROUNDS, direction))
    assert {cell.turn for cell in laid(design)} <= set(WAYS[direction])
    assert {cell.quarter for cell in laid(design)} == {"tl", "tr", "br", "bl"}


@pytest.mark.parametrize("direction", WAYS)
def test_the_picture_is_that_of_the_map_as_written(direction: str) -> None:
    """Whichever piece serves a place, it shows there what the unit of the map would."""
    plain, stands = make_pattern(design_of(ROUNDS)), make_pattern(design_of(upright(ROUNDS, direction)))
    before, after = (picture(p.design, p.blocks, p.setting) for p in (plain, stands))
    for letter in "ABC":
        one, other = (
            Region(tuple(path for face in faces if face.fabric == letter for path in face.region.paths))
            for faces in (before, after)
        )
        assert one.area() == pytest.approx(other.area())
    assert len(before) == len(after)
    for face, same in zip(before, after, strict=True):
        assert difference_area(face.region, same.region) < 1e-9


@pytest.mark.parametrize("direction", WAYS)
def test_the_rehearsal_finds_every_print_upright(direction: str) -> None:
    proof = prove(make_pattern(design_of(upright(ROUNDS, direction))))
    assert proof.findings == ()


def test_a_whole_circle_takes_one_master_and_four_that_look_one_way_take_four() -> None:
    rows = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"
    whole = design_of(upright(ROUNDS, "one-way").replace(rows, "a2 a3\na1 a0\n"))
    alike = design_of(upright(ROUNDS, "one-way").replace(rows, "a2 a2\na2 a2\n"))
    needed = [masters_for(d, draft_blocks(d), rows_of(d)) for d in (whole, alike)]
    assert needed == [1, 4]
    two_way = design_of(upright(ROUNDS, "two-way").replace(rows, "a2 a2\na2 a2\n"))
    assert masters_for(two_way, draft_blocks(two_way), rows_of(two_way)) == 2


@given(st.lists(st.integers(0, 3), min_size=4, max_size=4), st.sampled_from(list(WAYS)))
@settings(max_examples=30, deadline=None)
def test_so_few_masters_are_made_as_can_be(turns: list[int], direction: str) -> None:
    """Against all ways to choose a piece for each of four places."""
    rows = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"
    words = "a{} a{}\na{} a{}\n".format(*turns)
    design = design_of(upright(ROUNDS, direction).replace(rows, words))
    pieces = {"tl": 2, "tr": 3, "br": 0, "bl": 1}  # the turn in which each looks like a0, undone
    choices = [
        [name for name, lies in pieces.items() if (turn - lies) % 4 in WAYS[direction]] for turn in turns
    ]
    fewest = min(max(Counter(chosen).values()) for chosen in product(*choices))
    assert masters_for(design, draft_blocks(design), rows_of(design)) == fewest


def test_a_colourway_of_other_cloth_keeps_its_equal_units() -> None:
    """Only the recipe's copy keeps its pieces apart; both share one template."""
    design = design_of(ONE_UPRIGHT)
    blocks = draft_blocks(design)
    assert [master.recipe for master in blocks.masters] == ["round", "round upright"]
    assert [len(master.units) for master in blocks.masters] == [1, 4]
    assert len({shape.name for master in blocks.masters for shape in master.shapes}) == 1
    assert {cell.quarter for cell in laid(design) if cell.code == "a"} == {""}
    assert allowed_turns(design, "a") == (0, 1, 2, 3)
    assert allowed_turns(design, "b") == (0,)


def test_a_template_that_a_recipe_shares_with_its_copy_is_traced_once_for_both() -> None:
    job = run(ONE_UPRIGHT)
    assert job.pattern is not None
    assert [f.code for f in job.findings if f.severity is Severity.STOPS] == []
    (rows,) = job.pattern.materials.web.rows
    assert rows.count == sum(masters.count for masters in job.pattern.bill.masters)
    assert prove(job.pattern).holds


def test_what_a_copy_keeps_apart_is_numbered_after_the_shapes_of_its_recipe() -> None:
    """Two equal leaves share a template, unless a print must stand upright in the one that is turned."""
    leaves = "".join(
        f"""
[[recipes.round.shapes]]
name = "leaf"
outline = "leaf"
width = '{width}'
at = ['{across}', '{down}']
turn = {turn}
"""
        for width, across, down, turn in (
            ('3/4"', '-1 1/4"', '-1 1/4"', 0),
            ('3/4"', '1 1/4"', '-1 1/4"', 90),
            ('1/2"', '1 1/4"', '1 1/4"', 0),
        )
    )
    head, foot = ONE_UPRIGHT.index("[recipes.round]"), ONE_UPRIGHT.index("[colourways.a]")
    recipe = f'[recipes.round]\nkind = "shapes cut"\nfinished = \'2"\'\ncuts = "both ways"\n{leaves}\n'
    text = ONE_UPRIGHT[:head] + recipe + ONE_UPRIGHT[foot:]
    text = re.sub('\nshape = ("[BC]")', r"\nshapes = { leaf = \1 }", text)
    blocks = draft_blocks(design_of(text))
    assert {master.recipe: [shape.name for shape in master.shapes] for master in blocks.masters} == {
        "round": ["round leaf", "round leaf", "round leaf 2"],
        "round upright": ["round leaf", "round leaf 3", "round leaf 2"],
    }
    assert [shape.name for _, shape in blocks.templates()] == ["round leaf", "round leaf 2", "round leaf 3"]


@pytest.mark.parametrize("direction", WAYS)
def test_what_is_read_is_written_without_the_copies(direction: str) -> None:
    for text in (ROUNDS, HEARTS, RIPPLES):
        design = design_of(upright(text, direction))
        again = read_design(format_design(design)).design
        assert again == design
        assert format_design(design).count("\n[recipes.") == text.count("\n[recipes.")


def test_a_map_whose_copies_are_turned_is_written_out() -> None:
    rows = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"
    text = (
        upright(ROUNDS, "one-way")
        .replace(rows, "a2\n")
        .replace("map = '''", "symmetry = \"turn\"\nmap = '''")
    )
    assert [cell.name for cell in laid(design_of(text))] == ["a-tl", "a-tr", "a-bl", "a-br"]


def test_a_print_laid_on_its_side_is_found_at_its_line_with_the_turns_that_would_do() -> None:
    job = run(upright(HEARTS, "one-way"))
    assert job.pattern is None
    found = {(f.code, f.place.line): f.remedy for f in job.findings if f.code == "print-sideways"}
    line = 1 + next(
        n for n, row in enumerate(upright(HEARTS, "one-way").splitlines()) if row.startswith("a-bl0")
    )
    assert found == {
        ("print-sideways", line): "Write a-tl0, use another piece, or let fabric A lie any way up."
    }


def test_halves_of_upright_cloth_make_blocks_that_stand_upright() -> None:
    """Two equal blocks of hearts are told apart once the print of one of them may not stand on its head."""
    design = design_of(upright(GIZZARDS, "one-way").replace("g0 g1 g2\ng2 g3 g0", "g0 g2 g2\ng2 g0 g0"))
    cells = laid(design)
    assert {cell.turn for cell in cells} == {0}
    assert Counter(cell.quarter for cell in cells) == {"lh": 3, "rh": 3}
    assert masters_for(design, draft_blocks(design), rows_of(design)) == 6
    assert prove(make_pattern(design)).findings == ()


@given(
    st.lists(st.sampled_from(["a0", "a1", "a2", "a3", "b0", "b2"]), min_size=6, max_size=6),
    st.sampled_from(list(WAYS)),
)
@settings(max_examples=20, deadline=None)
def test_turning_or_mirroring_the_whole_map_never_saves_a_master(words: list[str], direction: str) -> None:
    """It exchanges the quarters for one another, and leaves the largest need what it was."""
    rows = "a2 a3 b2 b3 a2\na1 a0 b1 b0 a1\nb0 b1 a0 a2 b1\n"
    design = design_of(upright(ROUNDS, direction).replace(rows, "{} {} {}\n{} {} {}\n".format(*words)))
    blocks = draft_blocks(design)
    ways = list(other_ways(design, blocks, rows_of(design)))
    assert len(ways) == 7
    assert {way.masters for way in ways} == {masters_for(design, blocks, rows_of(design))}


def test_a_map_that_stands_upright_only_when_it_is_turned_is_told_so() -> None:
    """Halves, all on their sides."""
    text = upright(HALVES, "one-way").replace("a-lh0 a-rh0 a-lh0", "a-lh1\na-rh1\na-lh1")
    job = run(text)
    assert {f.code for f in job.findings} == {"print-sideways"}
    assert job.findings[0].remedy.endswith(
        "Or lay the whole map turned clockwise by 3 quarters: so every print stands upright."
    )


def test_a_setting_of_a_design_without_such_prints_is_left_alone() -> None:
    design = design_of(ROUNDS)
    blocks = draft_blocks(design)
    assert laid_upright(design, blocks) is design
    assert arrange(design, blocks).tally == {"a": 8, "b": 7}


TURNING = with_setting("""
[sections.wreath]
kind = "straight"
map = '''
a2 b3
a1 A
'''

[setting]
kind = "straight"
map = '''
wreath0 wreath1
wreath3 wreath2
'''
""")
"""A section in all four turns."""


@pytest.mark.parametrize(("direction", "made"), [("one-way", 4), ("two-way", 2)])
def test_a_section_that_lies_in_several_turns_is_made_of_other_pieces_in_each(
    direction: str, made: int
) -> None:
    """Two-way prints serve a section and the same one on its head."""
    plain, stands = make_pattern(design_of(TURNING)), make_pattern(design_of(upright(TURNING, direction)))
    names = ["wreath", "wreath 2", "wreath 3", "wreath 4"][:made]
    assert [section.name for section in stands.design.sections] == names
    assert len(plain.design.sections) == 1
    before, after = (picture(p.design, p.blocks, p.setting) for p in (plain, stands))
    for face, same in zip(before, after, strict=True):
        assert difference_area(face.region, same.region) < 1e-9


@pytest.mark.parametrize("direction", WAYS)
def test_each_piece_of_a_turned_section_lies_in_the_top_as_its_print_allows(direction: str) -> None:
    setting = make_pattern(design_of(upright(TURNING, direction))).setting
    turns = {round(cmath.phase(unit.motion.factor) / (cmath.pi / 2)) % 4 for unit in setting.units}
    assert turns <= set(WAYS[direction])
    assert {unit.quarter for unit in setting.units} == {"tl", "tr", "br", "bl"}


@pytest.mark.parametrize("direction", WAYS)
def test_the_rehearsal_finds_the_prints_of_turned_sections_upright(direction: str) -> None:
    text = upright(TURNING, direction).replace("a1 A\n", "a1 C\n")
    assert prove(make_pattern(design_of(text))).findings == ()


def test_plain_cloth_in_a_turned_section_would_not_stand_upright() -> None:
    """One square is cut for all four turns of the section: at its key, and once."""
    (finding,) = run(upright(TURNING, "two-way")).findings
    assert (finding.code, finding.place.key) == ("print-sideways", "sections.wreath.map.1")
    (finding,) = run(
        upright(TURNING.replace("wreath1", "wreath2").replace("wreath3", "wreath2"), "one-way")
    ).findings
    assert "Where `wreath` lies turned" in finding.sentence
    half = upright(TURNING.replace("wreath1", "wreath2").replace("wreath3", "wreath2"), "two-way")
    assert prove(make_pattern(design_of(half))).findings == ()


@pytest.mark.parametrize(
    ("text", "fabric", "keys"),
    [
        (SASHED, 'name = "brick"', ["setting.sashing"]),
        (ON_POINT, 'name = "brick"', ["setting.corners"]),
        (PANELS, 'name = "ink"', ["sections.vase.motifs.0"]),
    ],
)
def test_plain_cloth_that_slants_is_found(text: str, fabric: str, keys: list[str]) -> None:
    assert [f.place.key for f in run(upright(text, "two-way", fabric)).findings] == keys


def test_a_section_without_such_prints_stays_one_in_every_turn() -> None:
    text = upright(TURNING, "one-way", 'name = "brick"').replace(
        'recipe = "round"\nground = "B"\nshape = "A"', 'recipe = "round"\nground = "B"\nshape = "C"'
    )
    both = design_of(text)
    assert len(laid_upright(both, draft_blocks(both)).sections) == 4
    alone = design_of(text.replace("a2 b3", "a2 a3"))
    assert len(laid_upright(alone, draft_blocks(alone)).sections) == 1


def test_a_section_whose_pieces_lie_on_their_side_only_where_it_is_turned_is_told_so() -> None:
    """Halves stand upright in `pair0`, and on their side in `pair1`."""
    setting = '[sections.pair]\nkind = "straight"\nmap = "a-lh0 a-rh0"\n'
    start, end = HALVES.index("[setting]"), HALVES.index("[[borders]]")
    root = '[setting]\nkind = "rows"\nparts = ["pair{}"]\n'
    found = []
    for turn in (0, 1):
        text = upright(HALVES[:start] + setting + root.format(turn) + HALVES[end:], "one-way")
        found.append([(f.code, f.place.key) for f in run(text).findings if f.severity is Severity.STOPS])
    assert found == [[], [("print-sideways", "sections.pair.map.0")] * 2]


def test_no_print_stands_upright_on_point_of_a_unit_or_of_plain_cloth() -> None:
    findings = run(upright(ON_POINT, "two-way")).findings
    assert {f.code for f in findings} == {"print-sideways"}
    places = {f.place.key.rpartition(".")[0] for f in findings}
    assert places == {"setting", "setting.map", "setting.between"}
    assert any(f.place.key == "setting.between.0" and "fabric A" in f.sentence for f in findings)


def test_prints_in_pieced_borders_stand_upright_where_turning_them_by_a_half_does_no_harm() -> None:
    """The right strip is the left one, turned by a half; each corner the one before it, turned by a quarter."""
    keys = [
        [f.place.key for f in run(upright(text, direction)).findings if f.code == "print-sideways"]
        for text in (PIECED, PIECED.replace('corners = "a0"', 'corners = "C"'))
        for direction in ("one-way", "two-way")
    ]
    every = ["borders.0.sides", "borders.0.ends", "borders.0.corners"]
    assert keys == [every, every[2:], every[:2], []]
    text = PIECED.replace('corners = "a0"', 'corners = "C"')
    assert prove(make_pattern(design_of(upright(text, "two-way")))).findings == ()


def test_a_quilt_of_upright_prints_grows_with_the_repeats_of_its_map() -> None:
    plain, stands = design_of(ROUNDS), design_of(upright(ROUNDS, "one-way"))
    assert growth(plain, draft_blocks(plain)) == growth(stands, draft_blocks(stands))

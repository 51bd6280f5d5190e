"""Whatever a design says, as long as it can be read: all stages agree, and what is told can be printed."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import TypeAlias

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.blocks import draft_blocks
from quarterturn.design import Design, Severity, read_design
from quarterturn.geometry import OUTLINES
from quarterturn.pipeline import make_pattern
from quarterturn.proof import ACCEPTED, check_pattern, prove
from quarterturn.proof.checks.fault import REBUILD
from quarterturn.setting import map_findings
from tests.samples import straight, units_in

INCH = {
    "finished": ("1 1/2", "2", "3 3/4", "4 1/4", "9"),
    "diameter": ("1 3/4", "3", "5 3/8", "7"),
    "border": ("1/2", "1", "2 1/4", "6"),
    "cloth": ("18", "36", "40", "42", "54", "108"),
    "seam": ("1/4", "3/8", "1/2"),
}
METRIC = {
    "finished": ("40", "60", "80", "110", "225"),
    "diameter": ("50", "80", "150"),
    "border": ("10", "25", "60", "150"),
    "cloth": ("450", "1000", "1100", "1400", "2700"),
    "seam": ("6", "7.5", "10"),
}
FABRICS = "ABCD"
NAMES = [name for name in OUTLINES if name != "circle"]


Sizes: TypeAlias = Mapping[str, Sequence[str]]

letters = st.sampled_from(FABRICS)
cells = st.builds("{}{}".format, st.sampled_from("abc"), st.integers(0, 3))


def lengths(sizes: Sequence[str], mark: str) -> st.SearchStrategy[str]:
    """Return lengths as the file writes them."""
    return st.sampled_from(sizes).map(lambda size: f"'{size}{mark}'")


@st.composite
def fabrics(draw: st.DrawFn, sizes: Sequence[str], mark: str) -> str:
    """Return the tables of all fabrics."""
    lines = []
    for each in FABRICS:
        direction = draw(st.sampled_from(("none", "none", "two-way", "one-way")))
        lines += [
            f"[fabrics.{each}]",
            f'name = "cloth {each}"',
            f'colour = "#{draw(st.integers(0, 2**24 - 1)):06x}"',
        ]
        lines += [f"width = {draw(lengths(sizes, mark))}", f'direction = "{direction}"']
    return "\n".join(lines)


@st.composite
def blocks(draw: st.DrawFn, sizes: Sizes, mark: str) -> str:
    """Return one recipe and three colourways."""
    diameter = draw(lengths(sizes["diameter"], mark))
    outline, turn, lobes = draw(st.sampled_from(NAMES)), draw(st.integers(0, 3)), draw(st.integers(3, 9))
    outlined = f'outline = "{outline}", width = {diameter}, turn = {turn}'
    outlined += f", lobes = {lobes}" if outline == "scallop" else ""
    shape = draw(st.sampled_from(("flow = true", f"diameter = {diameter}", outlined, outlined)))
    lines = [
        "[recipes.moon]",
        f'kind = "{"shape" if shape == outlined else "circle"} cut both ways"',
        f"finished = {draw(lengths(sizes['finished'], mark))}",
    ]
    lines += [f"shape = {{ {shape} }}", f'curve = "{draw(st.sampled_from(("as drawn", "sewn true")))}"']
    for code in "abc":
        lines += [
            f"[colourways.{code}]",
            'recipe = "moon"',
            f'ground = "{draw(letters)}"',
            f'shape = "{draw(letters)}"',
        ]
    return "\n".join(lines)


@st.composite
def tops(draw: st.DrawFn, sizes: Sizes, mark: str) -> str:
    """Return a map of up to five rows of six, its repeats, and up to three borders."""
    columns = draw(st.integers(1, 6))
    rows = draw(st.lists(st.lists(cells, min_size=columns, max_size=columns), min_size=1, max_size=5))
    lines = ["[setting]", 'kind = "straight"', 'map = """', *(" ".join(row) for row in rows), '"""']
    lines += [f"across = {draw(st.integers(1, 3))}", f"down = {draw(st.integers(1, 3))}"]
    for _ in range(draw(st.integers(0, 3))):
        width, first = draw(lengths(sizes["border"], mark)), draw(st.sampled_from(("sides", "ends")))
        lines += ["[[borders]]", f'fabric = "{draw(letters)}"', f"width = {width}", f'first = "{first}"']
    return "\n".join(lines)


@st.composite
def texts(draw: st.DrawFn) -> str:
    """Return the text of a design."""
    units, sizes, mark = draw(st.sampled_from((("inch", INCH, '"'), ("metric", METRIC, " mm"))))
    pressing = draw(st.sampled_from(("opposed", "open")))
    parts = (
        f'format = 1\ntitle = "Any"\nunits = "{units}"',
        draw(fabrics(sizes["cloth"], mark)),
        draw(blocks(sizes, mark)),
        draw(tops(sizes, mark)),
        f'[binding]\nfabric = "{draw(letters)}"\n[backing]\nfabric = "{draw(letters)}"',
        f'[making]\nseam = {draw(lengths(sizes["seam"], mark))}\npressing = "{pressing}"',
        f"spare_masters = {draw(st.integers(0, 2))}",
    )
    return "\n".join(parts)


def readable(text: str) -> Design | None:
    """Return the design of a text, each unit of its map given a quarter where it needs one."""
    design = read_design(text).design
    if design is None:
        return None
    quarters = {
        master.recipe: [unit.quarter for unit in master.units] for master in draft_blocks(design).masters
    }
    kinds = quarters["moon"]
    setting = straight(design)
    rows = enumerate(units_in(setting.cells))
    cells = tuple(
        tuple(replace(cell, quarter=kinds[(3 * r + c) % len(kinds)]) for c, cell in enumerate(row))
        for r, row in rows
    )
    return replace(design, setting=replace(setting, cells=cells))


@settings(max_examples=40)
@given(texts().map(readable).filter(lambda design: design is not None))
def test_all_stages_agree_on_any_design_that_can_be_read(design: Design) -> None:
    pattern = make_pattern(design)
    assert map_findings(design, pattern.blocks) == ()
    findings = check_pattern(pattern)
    assert [finding for finding in findings if finding.remedy == REBUILD] == []
    for finding in findings:
        assert finding.sentence.isprintable()
        assert finding.remedy.isprintable()


@settings(max_examples=16)
@given(texts().map(readable).filter(lambda design: design is not None))
def test_the_rehearsal_makes_the_picture_of_any_design_that_does_not_stop_the_sewer(design: Design) -> None:
    pattern = make_pattern(design)
    if any(finding.severity is Severity.STOPS for finding in check_pattern(pattern)):
        return
    proof = prove(pattern)
    assert proof.findings == ()
    assert proof.share <= ACCEPTED

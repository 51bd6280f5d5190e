"""Whatever a design says, as long as it can be read: all stages agree, and what is told can be printed."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import Design, read_design
from quarterturn.pipeline import make_pattern
from quarterturn.proof import check_pattern
from quarterturn.proof.checks.fault import REBUILD

INCH = {
    "finished": ("1 1/2", "2", "3 3/4", "4 1/4", "9"),
    "diameter": ("1 3/4", "3", "5 3/8", "7"),
    "border": ("1/2", "1", "2 1/4", "6"),
    "cloth": ("18", "36", "40", "42", "54", "108"),
    "seam": ("1/4", "3/8", "1/2"),
    "mark": '"',
}
METRIC = {
    "finished": ("40", "60", "80", "110", "225"),
    "diameter": ("50", "80", "150"),
    "border": ("10", "25", "60", "150"),
    "cloth": ("450", "1000", "1100", "1400", "2700"),
    "seam": ("6", "7.5", "10"),
    "mark": " mm",
}
FABRICS = "ABCD"


@st.composite
def texts(draw: st.DrawFn) -> str:
    """Return the text of a design of one recipe, up to three colourways, and up to three borders."""
    metric = draw(st.booleans())
    sizes = METRIC if metric else INCH

    def length(kind: str) -> str:
        return f"'{draw(st.sampled_from(sizes[kind]))}{sizes['mark']}'"

    def letter() -> str:
        return draw(st.sampled_from(FABRICS))

    shape = draw(st.sampled_from(("flow = true", f"diameter = {length('diameter')}")))
    codes = "abc"[: draw(st.integers(1, 3))]
    columns = draw(st.integers(1, 6))
    cell = st.tuples(st.sampled_from(codes), st.integers(0, 3)).map(lambda each: f"{each[0]}{each[1]}")
    rows = draw(st.lists(st.lists(cell, min_size=columns, max_size=columns), min_size=1, max_size=5))
    lines = ["format = 1", 'title = "Any"', f'units = "{"metric" if metric else "inch"}"']
    for each in FABRICS:
        direction = draw(st.sampled_from(("none", "none", "two-way", "one-way")))
        lines += [
            f"[fabrics.{each}]",
            f'name = "cloth {each}"',
            f'colour = "#{draw(st.integers(0, 2**24 - 1)):06x}"',
        ]
        lines += [f"width = {length('cloth')}", f'direction = "{direction}"']
    lines += ["[recipes.moon]", 'kind = "circle cut both ways"', f"finished = {length('finished')}"]
    lines += [f"shape = {{ {shape} }}", f'curve = "{draw(st.sampled_from(("as drawn", "sewn true")))}"']
    for code in codes:
        lines += [
            f"[colourways.{code}]",
            'recipe = "moon"',
            f'ground = "{letter()}"',
            f'shape = "{letter()}"',
        ]
    lines += ["[setting]", 'kind = "straight"', 'map = """', *(" ".join(row) for row in rows), '"""']
    lines += [f"across = {draw(st.integers(1, 3))}", f"down = {draw(st.integers(1, 3))}"]
    for _ in range(draw(st.integers(0, 3))):
        first = draw(st.sampled_from(("sides", "ends")))
        lines += [
            "[[borders]]",
            f'fabric = "{letter()}"',
            f"width = {length('border')}",
            f'first = "{first}"',
        ]
    lines += ["[binding]", f'fabric = "{letter()}"', "[backing]", f'fabric = "{letter()}"']
    pressing = draw(st.sampled_from(("opposed", "open")))
    lines += ["[making]", f"seam = {length('seam')}", f'pressing = "{pressing}"']
    lines += [f"spare_masters = {draw(st.integers(0, 2))}"]
    return "\n".join(lines)


def readable(text: str) -> Design | None:
    return read_design(text).design


@settings(max_examples=60)
@given(texts().map(readable).filter(lambda design: design is not None))
def test_all_stages_agree_on_any_design_that_can_be_read(design: Design) -> None:
    findings = check_pattern(make_pattern(design))
    assert [finding for finding in findings if finding.remedy == REBUILD] == []
    for finding in findings:
        assert finding.sentence.isprintable()
        assert finding.remedy.isprintable()

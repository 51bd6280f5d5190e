"""One design in several sizes: laws, and the ways in which a size can differ."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import (
    BEDS,
    Bed,
    Border,
    Design,
    PathsFlow,
    Severity,
    format_design,
    read_design,
    write_design,
)
from quarterturn.design.differing import value_text
from quarterturn.design.text import quote_text
from quarterturn.measure import Units, inches, mm
from tests.design.broken_cases import GOOD
from tests.design.section_cases import SECTIONS
from tests.samples import straight

TABLE = "[sizes.large]\n"
CHANGES: tuple[tuple[str, object], ...] = (
    ("setting.across", 5),
    ("setting.down", 2),
    ("setting.symmetry", "half turn"),
    ("recipes.round.finished", '5 1/2"'),
    ("recipes.round.curve", "sewn true"),
    ("borders.0.width", '3 1/4"'),
    ("borders.0.first", "ends"),
    ("making.seam", '3/8"'),
    ("making.stitch.thread", "30 wt cotton"),
    ("house.skill", "intermediate"),
    ("fabrics.A.width", '54"'),
    ("binding.fabric", "A"),
    ("title", "Large Harbour"),
    ("about", "Two\nlines."),
)
SECTIONED = SECTIONS.replace(
    "[colourways.a]",
    """[outlines.seed]
path = "M 2 0 C 4 1 4 3 2 4 C 0 3 0 1 2 0 Z"
width = '2 1/2"'

[recipes.petal]
kind = "shape cut both ways"
finished = '3"'
shape = { outline = "seed", width = '2 3/4"', turn = 1 }

[colourways.b]
recipe = "petal"
ground = "B"
shape = "A"

[colourways.a]""",
).replace("a1 A\n", "a1 b-tl2\n")
"""A section of every kind, and an outline of the designer's own."""
STEM = {"kind": "columns", "parts": ["a0", {"fabric": "B", "width": '1 1/2"'}, "b-br1"]}
SECTION_CHANGES: tuple[tuple[str, object], ...] = (
    ("setting.map", {}),
    ("setting.parts", ["field", "plaque"]),
    ("setting.parts.1.width", '4"'),
    ("sections.wreath.map", "a0 a1\na3 b-bl\n"),
    ("sections.wreath.symmetry", "half turn"),
    ("sections.wreath.borders.0.width", '1 1/2"'),
    ("sections.wreath.borders.0.corners", "butted"),
    ("sections.field.map", "wreath0 wreath1\nA B\nB wreath1\n"),
    ("sections.field.between", "A"),
    ("sections.field.fit", "exact"),
    ("sections.field.float", {}),
    ("sections.field.sashing", {}),
    ("sections.field.borders", {}),
    ("sections.plaque.motifs.0.turn", 10),
    ("sections.plaque.motifs.1", {}),
    ("sections.hedge.down", 8),
    ("sections.hedge.sashing", {"fabric": "B", "width": '2"', "cornerstone": "A"}),
    ("sections.verge", STEM),
    ("sections.stem", STEM),
    ("borders.0.corners", {}),
    ("borders.2", {"kind": "coping", "fabric": "A", "to": ['90"', '80"']}),
    ("outlines.seed.width", '2 1/4"'),
    ("outlines.bud", {"path": "M 2 0 C 4 1 4 3 2 4 C 1 3 1 1 2 0 Z"}),
    ("recipes.petal.shape.width", '2 1/2"'),
)
PLACES = (
    "setting", "setting.map", "setting.map.0", "borders", "borders.0", "borders.1.fabric", "borders.7", "recipes.round",
    "recipes.round.shape", "recipes", "fabrics.Z", "making", "making.stitch.kind", "title.x", "a..b", "", "units",
)  # fmt: skip
VALUES: tuple[object, ...] = (
    1, -5, 3.5, True, "a0", "", "3 yd", [], [1], [{}], {}, {"fabric": "A", "width": 3}, {"flow": True}, {"a": {}},
)  # fmt: skip
oddities = st.dictionaries(st.sampled_from(PLACES), st.sampled_from(VALUES), max_size=4)
section_changes = st.lists(
    st.sampled_from(SECTION_CHANGES), unique_by=lambda change: change[0], max_size=6
).map(dict)
changes = st.lists(st.sampled_from(CHANGES), unique_by=lambda change: change[0], max_size=6).map(dict)
beds = st.one_of(
    st.none(),
    st.sampled_from(list(BEDS)).map(lambda name: Bed(name, *BEDS[name], inches(12), inches(0), inches(2))),
    st.builds(
        Bed, st.just(""), *[st.integers(20, 90).map(inches)] * 2, *[st.integers(0, 20).map(inches)] * 3
    ),
)


def read(text: str) -> Design:
    reading = read_design(text)
    assert reading.design is not None, reading.findings
    return reading.design


def large(lines: str) -> Design:
    """Return the size whose table has these lines."""
    (size,) = read(f"{GOOD}\n{TABLE}{lines}\n").sizes
    return size


def as_base(design: Design) -> Design:
    return replace(design, size="original", bed=None, sizes=())


def test_a_file_without_sizes_has_one() -> None:
    design = read(GOOD)
    assert (design.size, design.bed, design.sizes) == ("original", None, ())
    assert design.in_size("original") is design


def test_a_size_without_changes_is_the_base() -> None:
    design = read(f"{GOOD}\n{TABLE}")
    (size,) = design.sizes
    assert size.size == "large"
    assert as_base(size) == as_base(design) == read(GOOD)


@given(values=changes)
@settings(max_examples=60)
def test_a_size_is_the_file_with_its_values_changed(values: dict[str, Any]) -> None:
    text = write_design(f"{GOOD}\n{TABLE}", {"sizes.large.changes": values} if values else {})
    (size,) = read(text).sizes
    assert as_base(size) == read(write_design(GOOD, values))


@given(values=changes, own=beds, bed=beds, name=st.sampled_from(["original", "throw", 'the "small" one']))
@settings(max_examples=80)
def test_a_design_in_sizes_printed_whole_reads_back_as_itself(
    values: dict[str, Any], own: Bed | None, bed: Bed | None, name: str
) -> None:
    changed = replace(read(write_design(GOOD, values)), size="queen size", bed=bed)
    plain = replace(read(GOOD), size="mini")
    design = replace(read(GOOD), size=name, bed=own, sizes=(changed, plain))
    assert read(format_design(design)) == design


@pytest.mark.parametrize(
    "lines",
    [
        'changes = { "setting.across" = 5, "borders.0.width" = 3 }',
        "changes = { setting.across = 5, borders.0.width = 3 }",
        "changes.setting.across = 5\nchanges.borders.0.width = 3",
        '[sizes.large.changes]\nsetting.across = 5\n"borders.0.width" = \'3"\'',
        "[sizes.large.changes.setting]\nacross = 5\n[sizes.large.changes.borders.0]\nwidth = '3\"'",
    ],
)
def test_changes_can_be_written_in_every_way_that_toml_has(lines: str) -> None:
    size = large(lines)
    assert (straight(size).across, straight(size).down) == (5, 3)
    assert size.borders == (Border("B", inches(3)),)


def test_a_shape_can_be_exchanged_as_a_whole() -> None:
    assert large('changes = { "recipes.round.shape" = { flow = true } }').recipes[0].size == PathsFlow()


def test_an_empty_table_takes_away_and_a_number_past_the_last_adds() -> None:
    assert large('changes = { "borders.0" = {} }').borders == ()
    assert large('changes = { "version" = {} }').version == ""
    two = large('changes = { "borders.1" = { fabric = "A", width = 4 } }')
    assert two.borders == (Border("B", inches(2)), Border("A", inches(4)))
    later = large('changes = { "borders.1.fabric" = "A", "borders.1.width" = 4, "borders.0" = {} }')
    assert later.borders == (Border("A", inches(4)),)


def test_a_map_of_its_own_and_a_table_that_the_file_has_not() -> None:
    size = large('changes.setting.map = """\na0\n"""\nchanges.house.currency = "USD"')
    assert straight(size).size == (3, 2)
    assert size.house.currency == "USD"
    bare = read(GOOD.replace('[house]\npaper = "letter"\n', "") + f"{TABLE}changes.house.sixteenths = true")
    assert [bare.house.sixteenths, bare.sizes[0].house.sixteenths] == [False, True]


def test_the_file_names_its_own_size_and_states_its_bed() -> None:
    text = GOOD.replace("[fabrics.A]", 'size = "throw"\n[fabrics.A]', 1)
    design = read(f"{text}\n[sizes.throw]\nmattress = ['40\"', '50\"']\ntuck = '6\"'\n[sizes.crib]")
    assert design.size == "throw"
    assert design.bed == Bed("", inches(40), inches(50), inches(12), inches(6), inches(2))
    assert [size.size for size in design.sizes] == ["crib"]
    assert design.sizes[0].bed is None


def test_a_metric_bed_hangs_by_whole_centimetres() -> None:
    text = GOOD.replace('"inch"', '"metric"').replace("'0\"'", "'0 mm'")
    (size,) = read(f'{text}\n{TABLE}bed = "UK double"').sizes
    assert size.bed == Bed("UK double", mm(1350), mm(1900), mm(300), mm(0), mm(50))
    assert size.units is Units.METRIC


def test_a_design_is_found_in_each_of_its_sizes_and_in_no_other() -> None:
    design = read(f"{GOOD}\n{TABLE}changes.setting.across = 4")
    assert straight(design.in_size("large")).across == 4
    with pytest.raises(LookupError, match="the design has original, large"):
        design.in_size("huge")


def test_what_is_so_in_the_base_is_not_told_again_of_a_size() -> None:
    reading = read_design(f"{GOOD}\n{TABLE}".replace('name = "ink"', 'name = "oyster"'))
    assert [finding.code for finding in reading.findings] == ["name-twice"]


def test_what_a_change_makes_wrong_says_in_which_size() -> None:
    reading = read_design(f'{GOOD}\n{TABLE}changes = {{ "fabrics.B.name" = "oyster" }}')
    (finding,) = reading.findings
    assert finding.severity is Severity.CONFUSES
    assert finding.sentence == "In large size: Fabrics A and B are both called oyster."
    assert finding.place.key == 'sizes.large.changes."fabrics.B.name"'
    assert finding.place.detail == "fabrics.B.name"


@given(values=oddities)
@settings(max_examples=150)
def test_any_change_gives_a_size_or_a_finding_with_its_line(values: dict[str, Any]) -> None:
    text = f"{GOOD}\n[sizes.large.changes]\n" + "".join(
        f"{quote_text(key)} = {value_text(value)}\n" for key, value in values.items()
    )
    reading = read_design(text)
    if reading.design is None:
        assert reading.findings
        assert [finding for finding in reading.findings if finding.place.line is None] == []
    else:
        assert read(format_design(reading.design)) == reading.design


def changed_sections(values: dict[str, Any]) -> str:
    """Return a file with sections, an outline and a size whose values differ so."""
    lines = "".join(f"{quote_text(key)} = {value_text(value)}\n" for key, value in values.items())
    return f"{SECTIONED}\n[sizes.large]\nbed = 'twin'\n[sizes.large.changes]\n{lines}"


@given(values=section_changes)
@settings(max_examples=80)
def test_sections_sizes_and_outlines_printed_whole_read_back_as_themselves(values: dict[str, Any]) -> None:
    reading = read_design(changed_sections(values))
    if reading.design is None:
        assert [finding for finding in reading.findings if finding.place.line is None] == []
    else:
        assert read(format_design(reading.design)) == reading.design


@pytest.mark.parametrize("change", SECTION_CHANGES[1:], ids=lambda change: change[0])
def test_any_key_of_a_section_can_change(change: tuple[str, object]) -> None:
    values = dict([change])
    if change[0] == "sections.field.fit":
        values["sections.field.float"] = {}
    if change[0] == "sections.field.float":
        values["sections.field.fit"] = "handbook"
    if change[0] == "sections.field.map":
        values["sections.field.between"] = "A"
    design = read(changed_sections(values))
    (size,) = design.sizes
    assert as_base(size) != as_base(design)
    assert read(format_design(design)) == design


@pytest.mark.parametrize(
    ("key", "value", "code", "told"),
    [
        ("sections.wreath.map", "a0 q1", "unknown-code", "sections.wreath.map.0"),
        ("sections.wreath.map", "a0 field1", "section-in-itself", "sections.wreath"),
        ("sections.wreath.mop", "a0", "unknown-key", "sections.wreath.mop"),
        ("sections.wreeth.map", "a0", "unknown-place", ""),
        ("sections.plaque.width", "wide", "bad-length", "sections.plaque.width"),
        ("sections.verge.parts", ["plague"], "unknown-section", "sections.verge.parts.0"),
        ("setting.parts", ["field", "plague"], "unknown-section", "setting.parts.1"),
    ],
)
def test_what_a_change_of_a_section_makes_wrong_is_told_at_its_line(
    key: str, value: object, code: str, told: str
) -> None:
    text = changed_sections({"title": "Large", key: value})
    (finding, *_) = [each for each in read_design(text).findings if each.code == code]
    assert finding.place.key == f"sizes.large.changes.{quote_text(key)}"
    assert finding.place.detail == told
    assert finding.place.line is not None
    assert text.splitlines()[finding.place.line - 1].startswith(quote_text(key))


@pytest.mark.parametrize(
    ("key", "value", "code", "told"),
    [
        ("setting.parts", ["field"], "section-unused", "sections.plaque"),
        ("sections.hedge", {}, "unknown-section", "borders.0.sides"),
    ],
)
def test_what_a_change_makes_wrong_elsewhere_is_told_at_the_size(
    key: str, value: object, code: str, told: str
) -> None:
    text = changed_sections({key: value})
    (finding,) = [each for each in read_design(text).findings if each.code == code]
    assert (finding.place.key, finding.place.detail) == ("sizes.large", told)
    assert finding.place.line == text.splitlines().index("[sizes.large]") + 1


def test_a_size_can_bring_the_first_section_and_take_the_last() -> None:
    wreath = {"kind": "straight", "map": "a0 a1\n"}
    lines = {"sections.wreath": wreath, "setting.map": "wreath0\n"}
    design = read(write_design(f"{GOOD}\n{TABLE}", {"sizes.large.changes": lines}))
    assert [section.name for section in design.sizes[0].sections] == ["wreath"]
    assert read(format_design(design)) == design
    turned = replace(as_base(design.sizes[0]), sizes=(replace(as_base(design), size="plain"),))
    assert read(format_design(turned)) == turned


def test_a_finding_in_a_size_says_which_border_it_is_about() -> None:
    reading = read_design(f'{GOOD}\n[sizes.large]\nchanges = {{ "borders.1" = {{ width = \'2"\' }} }}\n')
    (finding,) = reading.findings
    assert finding.sentence == "In large size, border 2 (borders.1): `fabric` is missing."

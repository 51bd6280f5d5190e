"""Reading sections: each kind as the file says, and a finding for each slip."""

from __future__ import annotations

import pytest

from quarterturn.design import (
    Border,
    Cell,
    ClothCell,
    Coping,
    Corner,
    Design,
    LineSet,
    OnPointSet,
    PanelMotif,
    PanelSet,
    PiecedBorder,
    Sashing,
    SectionCell,
    SectionSet,
    Severity,
    StraightSet,
    Strip,
    TriangleFit,
    codes_in,
    read_design,
)
from quarterturn.measure import inches
from tests.design.section_cases import SECTION_CASES, SECTIONS, spoilt


def design() -> Design:
    reading = read_design(SECTIONS)
    assert reading.design is not None, reading.findings
    return reading.design


def section(name: str) -> SectionSet:
    return next(each.setting for each in design().sections if each.name == name)


def test_the_file_with_all_kinds_reads_without_a_finding() -> None:
    assert read_design(SECTIONS).findings == ()


def test_a_map_holds_units_plain_cloth_and_sections() -> None:
    wreath, field = section("wreath"), section("field")
    assert isinstance(wreath, StraightSet)
    assert isinstance(field, OnPointSet)
    assert wreath.cells == ((Cell("a", 2), Cell("a", 3)), (Cell("a", 1), ClothCell("A")))
    assert field.cells[0] == (SectionCell("wreath", 0), ClothCell("B"))


def test_one_word_between_fills_every_place_there() -> None:
    wide = SECTIONS.replace("wreath0 B\nA wreath2", "wreath0 B A\nA wreath2 B\nB A B")
    reading = read_design(wide)
    assert reading.design is not None
    field = next(each.setting for each in reading.design.sections if each.name == "field")
    assert isinstance(field, OnPointSet)
    assert field.between == ((SectionCell("wreath", 1),) * 2,) * 2


def test_triangles_float_and_sashing_are_as_the_file_says() -> None:
    field = section("field")
    assert isinstance(field, OnPointSet)
    assert (field.side_fabric, field.corner_fabric) == ("A", "B")
    assert (field.fit, field.float) == (TriangleFit.OVERSIZED, inches(0, 1, 2))
    assert field.sashing == Sashing("B", inches(0, 1, 2), "A", outer=True)


def test_sashing_on_point_that_names_no_cornerstones_has_them_of_its_own_fabric() -> None:
    reading = read_design(SECTIONS.replace(', cornerstone = "A" }', " }"))
    assert reading.design is not None
    field = next(each.setting for each in reading.design.sections if each.name == "field")
    assert isinstance(field, OnPointSet)
    assert field.sashing == Sashing("B", inches(0, 1, 2), "B", outer=True)


def test_straight_sashing_without_cornerstones_runs_through() -> None:
    hedge = section("hedge")
    assert isinstance(hedge, StraightSet)
    assert hedge.sashing == Sashing("A", inches(1), "", outer=False)


def test_a_line_holds_sections_units_and_strips() -> None:
    verge, root = section("verge"), design().setting
    assert verge == LineSet((Cell("a", 0), Strip("B", inches(1, 1, 2)), Cell("a", 2)), below=True)
    assert root == LineSet(
        (SectionCell("plaque", 0), Strip("B", inches(3)), SectionCell("field", 0)), below=False
    )


def test_a_panel_has_motifs_at_places() -> None:
    assert section("plaque") == PanelSet(
        "A",
        inches(12),
        inches(30),
        (
            PanelMotif("round", "B", inches(6), inches(9), 45),
            PanelMotif("round", "B", inches(6), inches(21), 0),
        ),
    )


def test_borders_are_plain_pieced_or_coping() -> None:
    assert section("wreath").borders == (Border("B", inches(1), corner=Corner.MITRED),)
    assert section("field").borders == (Coping("A", inches(30), inches(30)),)
    hedge, verge = SectionCell("hedge", 0), SectionCell("verge", 1)
    assert design().borders == (
        PiecedBorder(hedge, verge, Cell("a", 0)),
        Border("B", inches(2), corner=Corner.CORNERSTONES, cornerstone="A"),
    )


def test_colourways_are_found_wherever_they_stand() -> None:
    assert codes_in(design()) == {"a"}


@pytest.mark.parametrize("case", SECTION_CASES, ids=[case[0] for case in SECTION_CASES])
def test_a_slip_gives_just_the_finding_that_it_should(case: tuple[str, ...]) -> None:
    _, _, _, *wanted = case
    reading = read_design(spoilt(case))
    assert sorted(f"{f.code} {f.place.key}" for f in reading.findings) == sorted(wanted)
    assert all(f.place.line and f.sentence.endswith(".") and f.remedy[-1] in ".?" for f in reading.findings)
    assert (reading.design is None) == any(f.severity is Severity.STOPS for f in reading.findings)


@pytest.mark.parametrize(
    ("old", "new", "line"),
    [
        ("wreath0 B", "wreeth0 B", "wreeth0 B"),
        ('between = "wreath1"', 'between = """\nA\nQQ\n"""', "QQ"),
        ("turn = 45", "turn = 720", "  { recipe"),
        ("width = '3\"'", "width = '3 ells'", "  { fabric"),
    ],
)
def test_a_finding_names_the_line_within_a_section(old: str, new: str, line: str) -> None:
    text = SECTIONS.replace(old, new)
    finding = read_design(text).findings[0]
    assert text.splitlines()[(finding.place.line or 0) - 1].startswith(line)


def test_a_section_that_holds_itself_is_told_with_the_way_round() -> None:
    reading = read_design(SECTIONS.replace("a1 A\n", "a1 field0\n"))
    sentences = [finding.sentence for finding in reading.findings]
    assert "`wreath` holds `field` holds `wreath`." in sentences

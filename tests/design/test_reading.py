"""Reading: a good file gives a design; every mistake gives a finding, and none an exception."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterturn.design import (
    CODES,
    Cell,
    Curve,
    DrawnDiameter,
    Finding,
    Paper,
    Reading,
    Severity,
    StraightSet,
    default_making,
    read_design,
)
from quarterturn.measure import Units, inches, mm
from tests.design.broken_cases import BROKEN as BROKEN_FILES
from tests.design.broken_cases import GOOD, Broken
from tests.design.recipe_cases import RIPPLES
from tests.design.section_cases import SECTIONS, chain, spoilt_sections
from tests.design.selling_cases import BROKEN_SELLING
from tests.design.size_cases import BROKEN_SIZES
from tests.samples import straight

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))
BROKEN = (*BROKEN_FILES, *BROKEN_SIZES, *BROKEN_SELLING)
HOSTILE: dict[str, tuple[str | bytes, str]] = {
    "nothing": ("", "empty-file"),
    "only space": ("\n \t\r\n", "empty-file"),
    "only a byte order mark": (b"\xef\xbb\xbf", "empty-file"),
    "ten megabytes": ("# quilts\n" * 1_200_000, "file-too-large"),
    "a picture": (b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "not-text"),
    "a program": (b"MZ" + bytes(200), "not-text"),
    "text of another encoding": ("title = 'Été'".encode("latin-1"), "not-text"),
    "text of two bytes a letter": ("title = 'x'".encode("utf-16"), "not-text"),
    "half a character": ("title = '\ud800'", "not-text"),
    "arrays in arrays": ("\n".join("[" * 3_000 for _ in range(100)), "bad-syntax too-nested"),
    "an array that nests and closes": ("title = " + "[" * 1_500 + "]" * 1_500, "too-nested"),
    "tables in tables": ("[" + ".".join("a" * 1_500) + "]", "too-nested"),
    "one line without end": ("title = '" + "x" * 900_000 + "'", "line-too-long"),
    "a number without end": ("format = " + "9" * 3_900, "format-newer"),
    "a length without end": (GOOD.replace("'42\"'", "9" * 3_900), "bad-length"),
    "keys without end": ("\n".join(f"k{n} = {n}" for n in range(50_000)), "too-many"),
    "fabrics without end": ("\n".join(f"[fabrics.x{n}]" for n in range(20_000)), "too-many"),
    "a map of noise": (GOOD.replace("a2 a3 a2", "\n".join(f"q{n} !{n} a9" for n in range(190))), "many-more"),
    "unknown keys by the hundred": ("\n".join(f"k{n} = {n}" for n in range(500)), "many-more"),
    "a list without end": ("borders = [\n" + "\n".join("3," * 900 for _ in range(500)) + "\n]", "too-many"),
    "dotted keys without end": (
        "\n".join(".".join("a" * 1_900) + f".b{n} = 1" for n in range(250)),
        "too-nested",
    ),
    "two of everything": (GOOD + GOOD, "key-twice"),
}


def codes_of(reading: Reading) -> list[str]:
    return [finding.code for finding in reading.findings]


def found(reading: Reading) -> list[tuple[str, str]]:
    return sorted((finding.code, finding.place.key) for finding in reading.findings)


def changed_line(case: Broken) -> int:
    """The line on which the change of a case begins, or the one that it names: the second of several as `#2 words`."""
    if case.line is not None:
        count, _, start = (
            case.line.rpartition("#")[2].partition(" ") if "#" in case.line else ("1", "", case.line)
        )
        lines = [n for n, line in enumerate(case.text.splitlines(), 1) if line.startswith(start)]
        return lines[int(count) - 1]
    return case.good.count("\n", 0, case.good.index(case.old)) + 1


def is_whole(finding: Finding) -> bool:
    return all((finding.code in CODES, finding.sentence.endswith("."), finding.remedy[-1] in ".?"))


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.stem)
def test_an_example_reads_without_a_finding(file: Path) -> None:
    reading = read_design(file.read_bytes(), file.name)
    assert reading.findings == ()
    assert reading.design is not None


def test_there_are_several_examples_and_one_has_more_than_fifteen_hundred_units() -> None:
    designs = [read_design(file.read_bytes()).design for file in EXAMPLES]
    settings = [design.setting for design in designs if design]
    counts = [
        rows * columns for each in settings if isinstance(each, StraightSet) for rows, columns in [each.size]
    ]
    assert len(settings) == len(EXAMPLES) > 5
    assert max(counts) > 1500


def test_a_good_file_gives_its_design() -> None:
    design = read_design(GOOD).design
    assert design is not None
    assert design.title == "Small Harbour"
    assert design.fabric("A").width == inches(42)
    recipe = design.recipe("round")
    assert (recipe.finished, recipe.start, recipe.trim) == (inches(4, 1, 4), inches(9, 1, 2), 0)
    assert recipe.size == DrawnDiameter(inches(7))
    assert recipe.curve is Curve.AS_DRAWN
    setting = straight(design)
    assert setting.cells[0] == (Cell("a", 2), Cell("a", 3), Cell("a", 2))
    assert (setting.across, setting.down) == (2, 3)
    assert design.borders[0].sides_first


def test_what_a_file_leaves_out_has_the_defaults_of_its_units() -> None:
    inch, metric = read_design(GOOD).design, read_design(GOOD.replace('"inch"', '"metric"')).design
    assert inch is not None
    assert metric is not None
    assert inch.making == default_making(Units.INCH)
    assert inch.binding_width == inches(2, 1, 2)
    assert inch.fabric("B").width == inches(40)
    assert metric.making.seam == mm("7.5")
    assert metric.binding_width == mm(65)
    assert metric.fabric("B").width == mm(1000)


def test_paper_follows_the_units() -> None:
    bare = GOOD.replace('[house]\npaper = "letter"\n', "")
    papers = [read_design(text).design for text in (bare, bare.replace('"inch"', '"metric"'))]
    assert [design.house.paper for design in papers if design] == [Paper.LETTER, Paper.A4]


def test_bytes_and_text_with_a_byte_order_mark_and_foreign_line_ends_read_alike() -> None:
    plain = read_design(GOOD)
    assert read_design(GOOD.encode()) == plain
    assert read_design(b"\xef\xbb\xbf" + GOOD.encode()) == plain
    assert read_design("\ufeff" + GOOD) == plain
    assert read_design(GOOD.replace("\n", "\r\n")) == plain


def test_a_date_needs_no_quotes() -> None:
    design = read_design(GOOD.replace('version = "1.0"', "date = 2026-11-25")).design
    assert design is not None
    assert design.date == "2026-11-25"


def test_a_code_without_a_digit_is_not_turned() -> None:
    assert read_design(GOOD.replace("a1 a0 a1", "a1 a a1")) == read_design(GOOD)


@pytest.mark.parametrize("case", BROKEN, ids=lambda case: case.name)
def test_a_broken_file_gives_just_the_finding_that_it_should(case: Broken) -> None:
    reading = read_design(case.text)
    assert found(reading) == sorted(case.found)
    assert all(is_whole(finding) for finding in reading.findings)


@pytest.mark.parametrize("case", BROKEN, ids=lambda case: case.name)
def test_a_finding_names_the_line_of_the_mistake(case: Broken) -> None:
    finding = read_design(case.text).findings[0]
    if finding.place.line is None:
        assert case.line == ""
    else:
        assert finding.place.line == changed_line(case)


@pytest.mark.parametrize("case", BROKEN, ids=lambda case: case.name)
def test_a_design_is_withheld_just_when_a_finding_stops_it(case: Broken) -> None:
    reading = read_design(case.text)
    stops = any(finding.severity is Severity.STOPS for finding in reading.findings)
    assert (reading.design is None) == stops


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_file_gives_a_finding(name: str) -> None:
    text, expected = HOSTILE[name]
    reading = read_design(text)
    assert reading.design is None
    assert set(codes_of(reading)) & set(expected.split())
    assert len(reading.findings) <= 101
    assert all(is_whole(finding) for finding in reading.findings)


def test_there_are_at_least_seventy_broken_files_with_names_of_their_own() -> None:
    assert len({case.name for case in BROKEN}) == len(BROKEN) >= 70


def test_every_code_of_the_reader_is_fired_by_some_case() -> None:
    fired = {code for case in BROKEN for code, _ in case.found}
    fired |= {code for text in spoilt_sections() for code in codes_of(read_design(text))}
    fired |= {code for text, _ in HOSTILE.values() for code in codes_of(read_design(text))}
    assert fired == CODES.keys()


def test_all_mistakes_are_told_together_in_the_order_of_their_lines() -> None:
    text = GOOD.replace('"#efe6d8"', '"cream"').replace("'7\"'", "'seven'").replace("a1 a0 a1", "a1 z0 a1")
    reading = read_design(text.replace('kind = "zigzag"', "kind = 3"))
    assert codes_of(reading) == ["bad-colour", "bad-length", "unknown-code", "wrong-type"]


def test_a_mistake_in_a_fabric_does_not_make_its_letter_unknown() -> None:
    assert codes_of(read_design(GOOD.replace('"#22304a"', "3"))) == ["wrong-type"]


def test_a_bad_length_is_shown_with_a_caret_under_the_place() -> None:
    (finding,) = read_design(GOOD.replace("'4 1/4\"'", "'4 ells'")).findings
    assert finding.place.detail == "4 ells\n  ^"


def test_a_word_that_is_nearly_right_gets_the_right_one_as_remedy() -> None:
    findings = read_design(GOOD.replace('colour = "#efe6d8"', 'color = "#efe6d8"')).findings
    assert "Did you mean `colour`?" in [finding.remedy for finding in findings]
    (finding,) = read_design(GOOD.replace('"zigzag"', '"zig-zag"')).findings
    assert finding.remedy == "Did you mean `zigzag`?"


def test_a_word_in_the_map_is_told_once_with_the_number_of_its_places() -> None:
    (finding,) = read_design(GOOD.replace("a2 a3 a2\na1 a0 a1", "a2 b3 b3\na1 b3 a1")).findings
    assert finding.place.detail == "row 1, unit 2 and 2 more"


lines = st.lists(st.sampled_from(GOOD.splitlines()), min_size=1, max_size=60)
scraps = st.text("[]{}=\"'.#\\\n 019aA-é½\x00,", max_size=20)


@given(at=st.integers(0, len(GOOD)), cut=st.integers(0, 60), scrap=scraps)
@settings(max_examples=150, deadline=None)
def test_a_file_with_a_place_scratched_out_never_raises(at: int, cut: int, scrap: str) -> None:
    reading = read_design(GOOD[:at] + scrap + GOOD[at + cut :])
    assert (reading.design is None) == any(f.severity is Severity.STOPS for f in reading.findings)


@given(lines)
@settings(max_examples=100, deadline=None)
def test_lines_in_any_order_and_number_never_raise(chosen: list[str]) -> None:
    assert read_design("\n".join(chosen)).findings


@given(
    st.integers(0, 46), st.integers(0, 46), st.sampled_from(["3", "-1.5", "''", "[]", "{}", "nan", "true"])
)
@settings(max_examples=150, deadline=None)
def test_values_of_any_kind_in_any_place_never_raise(first: int, second: int, value: str) -> None:
    text = GOOD.splitlines()
    for line in (first, second):
        key, equals, _ = text[line % len(text)].partition(" = ")
        if equals and '"""' not in text[line % len(text)]:
            text[line % len(text)] = f"{key} = {value}"
    reading = read_design("\n".join(text))
    assert all(is_whole(finding) for finding in reading.findings)


@given(st.data())
@settings(max_examples=150, deadline=None)
def test_values_of_any_kind_in_a_section_never_raise(data: st.DataObject) -> None:
    text = SECTIONS.splitlines()
    for _ in range(2):
        line = data.draw(st.integers(0, len(text) - 1))
        key, equals, _ = text[line].partition(" = ")
        if equals and '"""' not in text[line]:
            value = data.draw(
                st.sampled_from(["3", "''", "[]", "{}", "true", '"a0"', '["a0", true]', "[{}]", "[[3]]"])
            )
            text[line] = f"{key} = {value}"
    reading = read_design("\n".join(text))
    assert (reading.design is None) == any(f.severity is Severity.STOPS for f in reading.findings)


@given(at=st.integers(0, len(RIPPLES)), cut=st.integers(0, 60), scrap=scraps)
@settings(max_examples=150, deadline=None)
def test_recipes_with_a_place_scratched_out_never_raise(at: int, cut: int, scrap: str) -> None:
    reading = read_design(RIPPLES[:at] + scrap + RIPPLES[at + cut :])
    assert (reading.design is None) == any(f.severity is Severity.STOPS for f in reading.findings)


@given(
    st.integers(17, 75),
    st.sampled_from(
        ["3", "-1.5", "''", "[]", "{}", "nan", "true", "[[1]]", "[[[1, 2], [3]]]", "[1, nan]", "'none'"]
    ),
)
@settings(max_examples=150, deadline=None)
def test_values_of_any_kind_in_recipes_never_raise(line: int, value: str) -> None:
    text = RIPPLES.splitlines()
    key, equals, _ = text[line].partition(" = ")
    if equals and '"""' not in text[line]:
        text[line] = f"{key} = {value}"
    reading = read_design("\n".join(text))
    assert all(is_whole(finding) for finding in reading.findings)


def with_chain(length: int, last: str) -> str:
    """Return the file with a chain of sections, of which its setting holds the first."""
    text = SECTIONS.replace("[setting]\n", f"{chain(length, last)}\n[setting]\n")
    return text.replace('"plaque",', '"plaque", "aaa",')


def test_sections_stand_in_one_another_up_to_eight_deep() -> None:
    """The root is one of the eight."""
    assert codes_of(read_design(with_chain(7, "a0"))) == []
    assert codes_of(read_design(with_chain(8, "a0"))) == ["sections-too-deep"]
    assert codes_of(read_design(with_chain(6, "field0"))) == ["sections-too-deep"]
    assert codes_of(read_design(with_chain(12, "aaa0"))) == ["section-in-itself"] * 12


def test_sections_that_multiply_without_end_are_counted_and_not_laid() -> None:
    many = '[sections.{}]\nkind = "straight"\nmap = "{}"\nacross = 60\n'
    text = many.format("aaa", "bbb0") + many.format("bbb", "ccc0") + many.format("ccc", "a0")
    text = SECTIONS.replace("[setting]\n", f"{text}[setting]\n").replace('  "plaque",', '  "plaque", "aaa",')
    (finding,) = read_design(text).findings
    assert finding.code == "map-too-large"
    assert "216,0" in finding.sentence


@given(st.binary(max_size=200))
@settings(max_examples=100, deadline=None)
def test_bytes_of_any_kind_never_raise(data: bytes) -> None:
    assert read_design(data).findings


@pytest.mark.parametrize(
    ("line", "remedy"),
    [
        ("price = 13,50", "A number has a full stop, not a comma: price = 13.50."),
        ("sashing = { width = 1 1/4, fabric = 'A' }", "A length goes in quotes: width = '1 1/4'."),
    ],
)
def test_a_line_that_is_no_toml_is_told_how_it_is_meant(line: str, remedy: str) -> None:
    (finding,) = read_design(f"format = 1\n{line}\n").findings
    assert (finding.code, finding.remedy) == ("bad-syntax", remedy)

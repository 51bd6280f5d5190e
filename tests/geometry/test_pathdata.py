"""Path data: the examples of the standard, the grammar's corners, another library's reading, and the law of writing."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.geometry import (
    OUTLINES,
    Affine,
    Arc,
    Cubic,
    Line,
    Oval,
    Path,
    PathDataError,
    Region,
    difference_area,
    merged,
    outline_path,
    path_bounds,
    read_numbers,
    read_path_data,
    same_outline,
    write_path_data,
)
from tests.strategies.outlines import outlines


def read(text: str) -> Path:
    (subpath,) = read_path_data(text)
    return subpath.path()


# The examples of SVG 1.1, chapter 8: figures triangle01 (8.3.3), cubic01 (8.3.6), quad01 (8.3.7) and arcs01 (8.3.8),
# with areas and places reckoned by hand where there are any.
def test_the_triangle_of_the_standard() -> None:
    path = read("M 100 100 L 300 100 L 200 300 z")
    assert path.is_closed()
    assert path.corners() == (100 + 100j, 300 + 100j, 200 + 300j)
    assert path.area() == 20_000


def test_the_smooth_cubic_of_the_standard_mirrors_the_control_before_it() -> None:
    first, second = read("M100,200 C100,100 250,100 250,200 S400,300 400,200").segments
    assert first == Cubic(100 + 200j, 100 + 100j, 250 + 100j, 250 + 200j)
    assert second == Cubic(250 + 200j, 250 + 300j, 400 + 300j, 400 + 200j)


def test_the_quadratic_of_the_standard_is_exactly_a_cubic() -> None:
    first, second = read("M200,300 Q400,50 600,300 T1000,300").segments
    for t in (0.0, 0.2, 0.5, 0.9, 1.0):
        wanted = (1 - t) ** 2 * (200 + 300j) + 2 * t * (1 - t) * (400 + 50j) + t * t * (600 + 300j)
        assert first.point(t) == pytest.approx(wanted)
    assert second.point(0.5) == pytest.approx(800 + 425j)  # the control mirrored lies at 800,550


def test_the_pie_of_the_standard_keeps_its_circular_arc() -> None:
    path = read("M300,200 h-150 a150,150 0 1,0 150,-150 z")
    _, arc, _ = path.segments
    assert isinstance(arc, Arc)
    assert arc.centre == pytest.approx(300 + 200j)
    assert (arc.radius, abs(arc.sweep)) == pytest.approx((150, 1.5 * math.pi))
    assert abs(path.area()) == pytest.approx(0.75 * math.pi * 150**2)


@pytest.mark.parametrize(
    ("flags", "length"),
    [("0,0", "short"), ("0,1", "short"), ("1,0", "long"), ("1,1", "long")],
)
def test_the_four_ways_of_an_elliptical_arc(flags: str, length: str) -> None:
    """Figure arcs02 of the standard: M 125,75 a100,50 0 ?,? 100,50."""
    (subpath,) = read_path_data(f"M 125,75 a100,50 0 {flags} 100,50")
    (oval,) = subpath.drawn
    assert isinstance(oval, Oval)
    assert oval.start == pytest.approx(125 + 75j)
    assert oval.end == pytest.approx(225 + 125j)
    assert (abs(oval.sweep) > math.pi) == (length == "long")
    assert (oval.sweep > 0) == flags.endswith("1")  # in the direction of positive angles: clockwise, y down
    # A quarter of the ellipse about 225,75 or 125,125: by appendix F.6.5 these are the two centres.
    centre = 125 + 125j if flags in ("0,1", "1,0") else 225 + 75j
    assert oval.centre == pytest.approx(centre)


def test_radii_that_are_too_small_are_grown_until_they_reach() -> None:
    """Appendix F.6.6 of SVG 1.1."""
    (arc,) = read("M 0 0 A 1 1 0 0 1 10 0").segments
    assert isinstance(arc, Arc)
    assert (arc.radius, arc.centre) == (pytest.approx(5), pytest.approx(5))


@pytest.mark.parametrize("text", ["M 0 0 A 0 5 0 0 1 10 0", "M 0 0 A 5 0 30 1 1 10 0"])
def test_a_radius_of_nothing_makes_a_straight_line(text: str) -> None:
    assert read(text).segments == (Line(0j, 10 + 0j),)


def test_an_arc_to_where_it_begins_is_left_out() -> None:
    assert read("M 0 0 A 5 5 0 1 1 0 0 L 1 1").segments == (Line(0j, 1 + 1j),)


@pytest.mark.parametrize(
    ("packed", "plain"),
    [
        ("M1.5.5-1-2z", "M 1.5 0.5 L -1 -2 Z"),
        ("M0 0L.5-.5+1e1-1", "M 0 0 L 0.5 -0.5 L 10 -1"),
        ("M0,0a1 1 0 01.5.5z", "M 0 0 a 1 1 0 0 1 0.5 0.5 Z"),
        ("M0,0A1,1,30,1,0,.5,.5", "M 0 0 A 1 1 30 1 0 0.5 0.5"),
        ("m1 1 2 0 0 2z", "M 1 1 L 3 1 L 3 3 Z"),
        ("M1e1-1E-1h5v5H0V0z", "M 10 -0.1 L 15 -0.1 L 15 4.9 L 0 4.9 L 0 0 Z"),
        ("\n M 0 0\tL\f1\r1 ", "M 0 0 L 1 1"),
        ("M0 0 1 0 1 1zl5 5", "M 0 0 L 1 0 L 1 1 Z M 0 0 L 5 5"),
        ("M 0 0 L 1. 2.", "M 0 0 L 1 2"),
        ("M 0 0 T 1 0 S 2 1 3 0", "M 0 0 Q 0 0 1 0 C 1 0 2 1 3 0"),
    ],
)
def test_numbers_and_flags_may_be_packed(packed: str, plain: str) -> None:
    assert read_path_data(packed) == read_path_data(plain)


@pytest.mark.parametrize(
    ("text", "offset", "reason"),
    [
        ("L 1 1", 0, "path data begins with a moveto, M or m"),
        ("M", 1, "a number is missing"),
        ("M 1", 3, "a number is missing"),
        ("M 1 2,", 6, "a number is missing"),
        ("M,1 2", 1, "a number is missing"),
        ("M 1,,2", 4, "a number is missing"),
        ("M 1 2 L 3 4 5", 13, "a number is missing"),
        ("M 1 2 X", 6, "'X' is no command of path data"),
        ("M 0 0 A 1 1 0 2 0 1 1", 14, "a flag of an arc is missing; it is 0 or 1"),
        ("M 0 0 L 1e999 0", 8, "no number may be beyond 10,000,000"),
        ("M 0 0 L nan 0", 8, "a number is missing"),
        ("M 9e6 0 l 9e6 0", 15, "no point may lie beyond 10,000,000"),
        ("M 0 0 z 5", 8, "'5' is no command of path data"),
        ("M 0 0 L 1 ½", 10, "a number is missing"),
    ],
)
def test_what_is_no_path_data_is_refused_with_place_and_reason(text: str, offset: int, reason: str) -> None:
    with pytest.raises(PathDataError) as refused:
        read_path_data(text)
    assert (refused.value.offset, refused.value.reason) == (offset, reason)


def test_nothing_draws_nothing() -> None:
    assert read_path_data("") == read_path_data(" \n") == read_path_data("M 1 1 M 2 2") == ()


def test_a_list_of_numbers_is_read_with_spaces_commas_or_neither() -> None:
    assert read_numbers(" 1, 2-3.5.5\n") == (1.0, 2.0, -3.5, 0.5)
    with pytest.raises(PathDataError):
        read_numbers("1,,2")


numbers = st.integers(-40, 40).map(lambda quarters: quarters / 4)
radii = st.integers(1, 40).map(lambda quarters: quarters / 4)
flags = st.sampled_from("01")
ends = st.tuples(numbers, numbers)


@st.composite
def path_data(draw: st.DrawFn) -> str:
    """Draw path data of every command, absolute or relative.

    S and T come behind a curve of their own kind only: elsewhere the other library does not follow section 8.3.7,
    by which the control point is then the current point. Our own table of packed numbers has that case.
    """
    last = ""
    parts = ["M {} {}".format(*draw(ends))]
    for _ in range(draw(st.integers(1, 6))):
        smooth = {"C": "S", "S": "S", "Q": "T", "T": "T"}.get(last, "")
        last = letter = draw(st.sampled_from("LHVCQA" + smooth))
        count = {"H": 1, "V": 1, "L": 2, "T": 2, "S": 4, "Q": 4, "C": 6, "A": 2}[letter]
        values = [str(draw(numbers)) for _ in range(count)]
        if letter == "A":
            turn = draw(st.integers(-180, 180))
            values = [str(draw(radii)), str(draw(radii)), str(turn), draw(flags), draw(flags), *values]
        parts.append(f"{letter if draw(st.booleans()) else letter.lower()} {' '.join(values)}")
    return " ".join([*parts, "Z"])


@given(path_data())
def test_another_library_reads_the_same_places_and_lengths(data: str) -> None:
    """Held against svgelements, whose elliptical arcs are exact."""
    import svgelements

    ours = [segment for subpath in read_path_data(data) for segment in subpath.drawn]
    theirs = [s for s in svgelements.Path(data) if not isinstance(s, svgelements.Move)]
    theirs = [
        s for s in theirs if s.start != s.end or not isinstance(s, svgelements.Line | svgelements.Close)
    ]
    theirs = [s for s in theirs if not (isinstance(s, svgelements.Arc) and s.start == s.end)]
    assert len(ours) == len(theirs)
    for segment, other in zip(ours, theirs, strict=True):
        for t in (0.0, 0.25, 0.5, 1.0):
            place = (
                segment.at(segment.start_angle + segment.sweep * t)
                if isinstance(segment, Oval)
                else segment.point(t)
            )
            there = other.point(t)
            assert (
                abs(place - complex(float(there.x), float(there.y))) < 1e-5
            )  # roots of float noise, where radii grow


@given(outlines())
def test_what_is_written_reads_back_as_the_same_outline(path: Path) -> None:
    assert same_outline(read(write_path_data(path)), path, tolerance=1e-9)
    assert difference_area(Region((read(write_path_data(path)),)), Region((path,))) == 0.0


@given(outlines())
def test_what_is_written_to_nine_digits_reads_back_within_them(path: Path) -> None:
    again = read(write_path_data(path, 9))
    assert again.is_closed()
    assert abs(again.area() - path.area()) < 1e-7


@pytest.mark.parametrize("name", OUTLINES)
def test_every_outline_of_the_program_can_be_written_and_read(name: str) -> None:
    path = outline_path(name, 4)
    assert same_outline(read(write_path_data(path)), path)
    assert outline_path(read(write_path_data(path)), 4).area() == pytest.approx(path.area())


def test_a_circle_is_written_as_four_quarters_and_read_as_one_arc() -> None:
    text = write_path_data(outline_path("circle", 2))
    assert text.count("A 1 1 0 0 1") == 4
    (arc,) = merged(read(text)).segments
    assert isinstance(arc, Arc)
    assert arc.sweep == pytest.approx(math.tau)


def test_numbers_are_written_shortly() -> None:
    assert write_path_data(read("M 0 -0 L 1.50 0 L 0.1 2 Z"), 3) == "M 0 0 L 1.5 0 L 0.1 2 L 0 0 Z"
    assert write_path_data(read("M 0 -0 L 1.50 0 L 0.1 2 Z")) == "M 0 0 L 1.5 0 L 0.1 2 L 0 0 Z"


@pytest.mark.parametrize("outline", ["M 0 0 H 4 V 2 Z", "M 0 0 V 2 H 4 Z", "M 9 9 h 40 v 20 z"])
def test_any_closed_path_can_be_an_outline_one_wide_positive_about_its_middle(outline: str) -> None:
    path = outline_path(read(outline), 3)
    assert path.area() == pytest.approx(3 * 1.5 / 2)
    assert path_bounds(path).width == pytest.approx(3)
    assert abs(path_bounds(path).centre) < 1e-12
    assert outline_path(read(outline), 3, 1).area() == pytest.approx(path.area())


def test_a_mapped_subpath_is_the_path_of_mapped_places() -> None:
    to = Affine(2, 0, 0, 2, 1, 1)
    (subpath,) = read_path_data("M 0 0 H 1 A 1 1 0 0 1 0 1 Z")
    path = subpath.path(to)
    assert path.area() == pytest.approx(4 * subpath.path().area())
    assert isinstance(path.segments[1], Arc)

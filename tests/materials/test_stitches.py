"""Thread from the way of the needle: the textbooks' formula, the trade's ratios, and laws."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import EdgeStitch, EdgeStitchKind
from quarterturn.materials.stitches import (
    BOBBIN,
    LAYER,
    WASTE,
    Repeat,
    bobbins_for,
    drawn_repeat,
    repeat_of,
    thickness_of,
    thread_for,
)
from quarterturn.measure import MM, YARD, inches, mm

M = float(MM)
TWO = thickness_of(2)


def ratio(repeat: Repeat, thickness: float) -> float:
    """Return the inches of both threads for an inch of edge, without waste."""
    return thread_for(repeat, 1, thickness, waste=0).both


def in_mm(*points: tuple[float, float]) -> Repeat:
    """Return the repeat of a needle that goes through these points."""
    return drawn_repeat([complex(x * M, y * M) for x, y in points])


def stitch(kind: EdgeStitchKind, width: str, length: str) -> Repeat:
    return repeat_of(EdgeStitch(kind, mm(width), mm(length), "", ""))


@pytest.mark.parametrize(
    ("thickness", "an_inch", "published"),
    [(0.01, 10, 2.2), pytest.param(0, 12, 2.0, id="no cloth")],
)
def test_lockstitch_formula(thickness: float, an_inch: int, published: float) -> None:
    """2 + 2·T·S (textilecalculations.com, textileblog.com)."""
    assert ratio(drawn_repeat([0j, complex(0, 1 / an_inch)]), thickness) == pytest.approx(published)


def test_a_seam_of_220_centimetres_at_the_trade_ratio() -> None:
    """550 cm at 2.5 : 1, 275 cm of needle and 275 cm of bobbin thread (melgeecrafts.com): needle and bobbin alike, and
    the geometry of ten stitches an inch through two layers within a twentieth of the trade's ratio."""
    use = thread_for(drawn_repeat([0j, 0.1j]), 220, TWO, waste=0)
    assert use.needle == use.bobbin
    assert use.both == pytest.approx(550, rel=0.05)


@pytest.mark.parametrize("published", [5.5, 7.0])
def test_both_published_ratios_of_a_zigzag_lie_between_sensible_widths(published: float) -> None:
    """5.5 (a thread maker's guide, apparelscience.com), 7.0 (another trade table, from memory): it hangs on width."""
    narrow, wide = (stitch(EdgeStitchKind.ZIGZAG, width, "1.5") for width in ("3", "5"))
    assert ratio(narrow, TWO) < published < ratio(wide, TWO)


@pytest.mark.parametrize("published", [5.5, 7.0])
def test_the_width_at_which_a_zigzag_has_a_published_ratio_is_one_that_machines_have(
    published: float,
) -> None:
    widths = [step / 100 for step in range(100, 701)]
    near = min(
        widths,
        key=lambda w: abs(ratio(stitch(EdgeStitchKind.ZIGZAG, f"{w:.2f}", "1.5"), TWO) - published),
    )
    assert 3 < near < 5


DRAWN = [
    pytest.param(EdgeStitchKind.STRAIGHT, "0", "2.5", [(0, 0), (0, 2.5)], id="straight"),
    pytest.param(EdgeStitchKind.ZIGZAG, "3", "1.5", [(0, 0), (3, 1.5), (0, 3)], id="zigzag"),
    pytest.param(EdgeStitchKind.SATIN, "4", "0.4", [(0, 0), (4, 0.4), (0, 0.8)], id="satin"),
    pytest.param(EdgeStitchKind.BLANKET, "2", "2.5", [(0, 0), (2, 0), (0, 0), (0, 2.5)], id="blanket"),
]


@pytest.mark.parametrize(("kind", "width", "length", "points"), DRAWN)
def test_every_kind_takes_what_it_takes_when_it_is_drawn(
    kind: EdgeStitchKind, width: str, length: str, points: list[tuple[float, float]]
) -> None:
    assert ratio(in_mm(*points), TWO) == pytest.approx(ratio(stitch(kind, width, length), TWO))


def test_a_drawn_stitch_goes_before_its_kind() -> None:
    drawn = (0j, complex(2 * M, 0), 0j, complex(0, 2.5 * M))
    both = EdgeStitch(EdgeStitchKind.ZIGZAG, mm(2), mm("2.5"), "", "", repeat=drawn)
    assert repeat_of(both) == drawn_repeat(drawn)


@pytest.mark.parametrize("points", [[0j], [0j, 1 + 0j], [0j, 1 + 1j], [1j, 0j]])
def test_what_does_not_go_on_is_no_repeat(points: list[complex]) -> None:
    with pytest.raises(ValueError, match="a repeat"):
        drawn_repeat(points)


ACROSS = st.floats(0, 6)


@given(st.lists(st.tuples(ACROSS, st.floats(0, 4)), max_size=8), st.integers(2, 6))
def test_a_repeat_laid_several_times_takes_the_same(between: list[tuple[float, float]], n: int) -> None:
    once = [(0.0, 0.0), *between, (0.0, 4.0)]
    laid = [(x, y + 4 * k) for k in range(n) for x, y in once[k > 0 :]]
    assert ratio(in_mm(*laid), TWO) == pytest.approx(ratio(in_mm(*once), TWO))


@given(st.integers(1, 12), st.floats(1, 900))
def test_more_layers_take_more_thread_and_twice_the_edge_twice(layers: int, edge: float) -> None:
    repeat = in_mm((0, 0), (1.5, 1.4), (0, 2.8))
    thin, thick = (thread_for(repeat, edge, thickness_of(n)).both for n in (layers, layers + 1))
    assert thin < thick
    assert thread_for(repeat, 2 * edge, thickness_of(layers)).both == pytest.approx(2 * thin)


def test_waste_is_added_to_both_threads() -> None:
    """15 % lies in both published ranges, 10–15 % (apparelscience.com) and 15–20 % (apparel-merchandising.com)."""
    repeat = in_mm((0, 0), (0, 2.5))
    assert thread_for(repeat, 10, TWO).both == pytest.approx(1.15 * thread_for(repeat, 10, TWO, waste=0).both)
    assert WASTE == 0.15


@pytest.mark.parametrize(
    ("path", "waste", "published"), [(6.63, 0.15, 7.62), pytest.param(540, 0.15, 621, id="centimetres")]
)
def test_waste_of_published_sums(path: float, waste: float, published: float) -> None:
    """6.63 yd and 15 %: 7.62 yd (apparel-merchandising.com 2011); 540 cm and 15 %: 621 cm (apparelscience.com)."""
    flat = Repeat(along=2.0, path=1.0, penetrations=0)
    assert thread_for(flat, path, 0, waste).both == pytest.approx(published, abs=0.006)


def test_layers_are_thin() -> None:
    """0.3 mm each (from memory): a dozen are less than 4 mm."""
    assert thickness_of(1) == LAYER == pytest.approx(0.3 * M)
    assert thickness_of(12) < 4 * M


@pytest.mark.parametrize(("yards", "bobbins"), [(0, 0), (1, 1), (60, 1), (60.1, 2), (150, 3)])
def test_bobbins(yards: float, bobbins: int) -> None:
    """60 yards on a home-wound one of class 15 (from memory)."""
    assert bobbins_for(yards * 36) == bobbins
    assert BOBBIN == 60 * YARD


def test_smaller_bobbins_are_wound_more_often() -> None:
    assert bobbins_for(3600, inches(36 * 50)) == 2
    assert bobbins_for(3600, inches(36 * 20)) == 5

"""Templates of the curve to be sewn have their true size, allowances included."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.design import Paper
from quarterturn.geometry import path_bounds
from quarterturn.proof import Pattern
from quarterturn.publish import Sheet, Text, sheets_pdf, template_sheets
from quarterturn.publish.booklet import assemble
from quarterturn.publish.booklet.model import Section, Table
from tests.proof.checks.sound import recipe, text
from tests.publish.reading import read_pdf


@cache
def pattern(size: str = "radius = '3\"'", finished: str = '4"') -> Pattern:
    lines = f"finished = '{finished}'\nshape = {{ {size} }}\ncurve = \"sewn true\"\npieced = true"
    return text(recipe(lines))()


def pages(found: Pattern, paper: Paper = Paper.LETTER) -> list[Sheet]:
    sheets = template_sheets(found.design, found.blocks, found.bill, paper)
    return [s for s in sheets if "quarter disc" in s.title or "surround" in s.title]


def words(sheet: Sheet) -> str:
    return " ".join(mark.text for mark in sheet.marks if isinstance(mark, Text))


@pytest.mark.parametrize("paper", list(Paper))
def test_disc_and_surround_have_their_true_size(paper: Paper) -> None:
    disc, surround = read_pdf(sheets_pdf(pages(pattern(), paper), "curve"))
    solid = [
        [p.size for p in page.paths if p.closed and not p.dashed and p.width > 0.22]
        for page in (disc, surround)
    ]
    assert (4.5 * 25.4, 4.5 * 25.4) in [pytest.approx(size, abs=0.05) for size in solid[1]]
    assert max(solid[0])[0] == pytest.approx(3.5 * 25.4, abs=0.05)


def test_pages_say_radius_count_and_allowance() -> None:
    disc, surround = map(words, pages(pattern()))
    assert 'Curve of radius 3¼": as sewn 3", and ¼".' in disc
    assert 'Curve of radius 2¾": as sewn 3", less ¼".' in surround
    assert "Cut 8 of fabric B (ink) for a, 8 of fabric A (sand) for b." in disc
    assert "Cut 8 of fabric A (sand) for a, 8 of fabric B (ink) for b." in surround
    assert 'Seam allowances of ¼" are included.' in disc


def test_large_pieces_are_tiled() -> None:
    large = pages(pattern("radius = '8\"'", '10"'))
    assert len(large) > 2
    assert "part 1 of" in large[0].title


def test_the_booklet_offers_the_curve_only_where_the_recipe_does() -> None:
    told = assemble(pattern(), Paper.LETTER).blocks
    assert "Or sew the curve" in [block.title for block in told if isinstance(block, Section)]
    pieces = next(block for block in told if isinstance(block, Table) and block.title == "Pieces")
    assert [row[2] for row in pieces.rows] == ["(8) quarter discs", "(8) surrounds"] * 2
    plain = assemble(text()(), Paper.LETTER).blocks
    assert "Or sew the curve" not in [block.title for block in plain if isinstance(block, Section)]


def test_nothing_of_the_map_is_left_over() -> None:
    found = pattern()
    shapes = found.blocks.masters[0].shapes
    assert len(shapes) == 1
    assert path_bounds(shapes[0].traced).width == pytest.approx(6.5)
    assert sum(masters.units_needed for masters in found.bill.masters) == 16

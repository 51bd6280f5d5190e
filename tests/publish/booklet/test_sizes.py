"""The pages on which sizes stand side by side: whole, in order, and inside the margins for as many as there can be."""

from __future__ import annotations

import csv
from functools import cache
from io import StringIO

import pypdfium2
import pytest

from quarterturn.design import Paper
from quarterturn.design.limits import MOST_SIZES
from quarterturn.measure import show_length
from quarterturn.pipeline import run
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import assemble, print_booklet
from quarterturn.publish.booklet.model import Document, FullPage, Notes, Plate, Section, SizeTable
from quarterturn.publish.tables import sizes_csv
from quarterturn.publish.wording import by_size, cost_part, size_notes, size_parts
from tests.publish.booklet.test_booklet import figure_list
from tests.samples import ROUNDS, straight
from tests.section_texts import NESTED, ON_POINT, PIECED

PRICED = ROUNDS.replace('colour = "#9c4a35"', 'colour = "#9c4a35"\nprice = 12.5')
EIGHT = f"""{PRICED}
[house]
currency = "USD"

[sizes.runner]
changes = {{ setting.across = 6, "borders.0" = {{}} }}

[sizes.wall]
changes = {{ recipes.round.finished = '3 7/8"', setting.across = 2, setting.down = 3 }}

[sizes.twin]
bed = "California king"
drop = '12 3/8"'
tuck = '10 5/8"'
changes = {{ setting.across = 7, setting.down = 14, borders.1 = {{ fabric = "B", width = '3 3/8"' }} }}

[sizes.queen]
mattress = ['60 1/8"', '80 3/8"']
changes = {{ setting.across = 8, setting.down = 15, making.spare_masters = 3 }}

[sizes.mini]
changes = {{ recipes.round.finished = '1 1/8"' }}

[sizes.Featherbedcoverlets]
changes = {{ setting.across = 4, setting.down = 4 }}

[sizes."king of all kings"]
changes = {{ setting.across = 16, setting.down = 26, borders.0.width = '3 5/8"' }}
"""
IN_ORDER = ["mini", "original", "runner", "Featherbedcoverlets", "wall", "twin", "queen", "king of all kings"]


@cache
def patterns(units: str = "inch") -> tuple[Pattern, ...]:
    text = EIGHT
    if units == "metric":
        text = text.replace('"inch"', '"metric"').replace("'2\"'", "'50 mm'")
    job = run(text)
    assert job.patterns, job.findings
    return job.patterns


@cache
def document(paper: Paper, units: str = "inch") -> Document:
    base, *others = patterns(units)
    return assemble(base, paper, others=others)


@cache
def printed(paper: Paper, units: str) -> bytes:
    """Return the pages of the sizes alone."""
    whole = document(paper, units)
    blocks = whole.blocks
    starts = [k for k, block in enumerate(blocks) if isinstance(block, Section)]
    kept = blocks[starts[0] : starts[1]]
    return print_booklet(
        Document(whole.title, whole.maker, whole.foot, whole.width, whole.height, whole.margin, kept)
    )


PAGES = pytest.mark.parametrize(
    ("paper", "units"), [(Paper.LETTER, "inch"), (Paper.A4, "metric"), (Paper.A4, "inch")]
)


def tables() -> list[SizeTable]:
    return [block for block in document(Paper.LETTER).blocks if isinstance(block, SizeTable)]


def test_there_are_as_many_sizes_as_a_design_can_have() -> None:
    assert len(patterns()) == MOST_SIZES


def test_a_booklet_of_one_size_has_no_such_page() -> None:
    alone = assemble(patterns()[0], Paper.LETTER)
    assert not [block for block in alone.blocks if isinstance(block, SizeTable)]
    assert "Sizes" not in [block.title for block in alone.blocks if isinstance(block, Section)]


def test_every_table_has_a_column_for_each_size_from_small_to_large() -> None:
    assert [list(table.heads) for table in tables()] == [IN_ORDER] * len(tables())
    assert {len(row) for table in tables() for row in table.rows} == {MOST_SIZES + 1}


def test_the_sections_and_figures_of_the_work_follow() -> None:
    blocks = document(Paper.LETTER).blocks
    titles = [block.title for block in blocks if isinstance(block, Section)]
    assert titles[:3] == ["Sizes", "Requirements", "Before you begin"]
    numbers = [figure.number for figure in figure_list(blocks)]
    assert numbers == list(range(1, len(numbers) + 1))
    assert any(isinstance(block, FullPage) for block in blocks)


def test_the_pictures_are_to_one_scale() -> None:
    plate = next(block for block in document(Paper.LETTER).blocks if isinstance(block, Plate))
    sizes = by_size(patterns())
    assert len(plate.figure.cells) == MOST_SIZES
    scales = {
        round(cell.sheet.width / float(each.setting.width), 9)
        for cell, each in zip(plate.figure.cells, sizes, strict=True)
    }
    assert len(scales) == 1


def cells(what: str) -> list[str]:
    """Return the cells of the rows that begin so, those of all tables one after the other."""
    return [cell for table in tables() for row in table.rows if row[0].startswith(what) for cell in row[1:]]


def test_the_rows_are_read_off_the_patterns() -> None:
    sizes = by_size(patterns())
    assert cells("Squares in all") == [f"({sum(m.count for m in each.bill.masters)})" for each in sizes]
    assert cells("Units across × down") == [
        f"{columns} × {rows}" for rows, columns in (straight(p.design).size for p in sizes)
    ]
    assert cells("Fabric C")[1] == "⅛ yard"
    assert cells("Border 2, finished width")[5:] == ['3⅜" B', "–", "–"]
    assert cells("Cost") == []
    (cost,) = cost_part(sizes).rows
    assert (cost.what, cost.cells[0]) == ("Cost of the fabrics with a price", "1.56 USD")


def test_every_strip_that_is_cut_is_in_a_column() -> None:
    for letter in "ABC":
        (table,) = [table for table in tables() if table.title.startswith(f"Cut from Fabric {letter}")]
        told = next(row for row in table.rows if row[0].startswith("Strips"))[1:]
        for cell, each in zip(told, by_size(patterns()), strict=True):
            counts = [int(part.partition(")")[0][1:]) for part in cell.split("; ") if part != "–"]
            plans = [plan for plan in each.materials.cloth if plan.fabric == letter]
            assert sum(counts) == sum(group.strips for plan in plans for group in plan.strips)


def test_what_serves_for_a_size_and_what_does_not_is_said() -> None:
    notes = next(block for block in document(Paper.LETTER).blocks if isinstance(block, Notes))
    first, like, unlike = notes.sentences
    assert "8 sizes" in first
    assert "In the runner, Featherbedcoverlets, twin, queen and king of all kings sizes the units" in like
    assert "In the mini and wall sizes the units or the map differ" in unlike
    assert "templates" not in unlike, "where only the map or a border differs they would serve"
    assert "take plans, pairs, rows and borders from its own booklet" in like
    assert "Narrow pieces may come from wider strips" in first


def test_drop_and_tuck_are_those_of_the_quilt_as_it_finishes() -> None:
    text = (
        ROUNDS
        + """
[sizes.short]
mattress = ['10"', '10"']
drop = '1"'
tuck = '20"'
within = '24"'
changes = { setting.down = 4 }
"""
    )
    base, other = run(text).patterns
    rows = {row.what: row.cells[1] for part in size_parts((base, other)) for row in part.rows}
    width, height = other.setting.width, other.setting.height
    assert 11 < height < 31, "shorter than the mattress, its drop and its tuck together"
    assert rows["Drop at the sides"] == show_length((width - 10) / 2, base.design.units)
    assert rows["Drop at the foot"] == '1"'
    assert rows["Tuck at the pillows"] == show_length(height - 11, base.design.units)


@PAGES
def test_nothing_leaves_the_margins_and_no_cell_runs_into_the_next(paper: Paper, units: str) -> None:
    whole = document(paper, units)
    with pypdfium2.PdfDocument(printed(paper, units)) as pdf:
        for page in pdf:
            boxes = letters(page)
            left = min(box[0] for box in boxes) * 25.4 / 72
            right = max(box[2] for box in boxes) * 25.4 / 72
            assert whole.margin - 0.5 <= left <= right <= whole.width - whole.margin + 0.5
            assert overlaps(boxes) == []


Box = tuple[float, float, float, float, str]


def letters(page: pypdfium2.PdfPage) -> list[Box]:
    """Return the boxes of all letters that are not blank, in points."""
    text = page.get_textpage()
    found = []
    for k in range(text.count_chars()):
        letter = text.get_text_range(k, 1)
        if letter.strip() and letter.isprintable():
            found.append((*text.get_charbox(k), letter))
    return found


def overlaps(boxes: list[Box]) -> list[tuple[str, str]]:
    """Return pairs of letters of which one covers the middle of the other; those of a ligature share a box."""
    found = []
    ordered = sorted(boxes)
    for k, (left, bottom, right, top, letter) in enumerate(ordered):
        for other in ordered[k + 1 :]:
            if other[0] >= right:
                break
            middle = (other[0] + other[2]) / 2, (other[1] + other[3]) / 2
            apart = other[:4] != (left, bottom, right, top)
            if apart and left < middle[0] < right and bottom < middle[1] < top:
                found.append((letter, other[4]))
    return found


@PAGES
def test_every_cell_is_on_the_pages_and_they_are_a_spread(paper: Paper, units: str) -> None:
    with pypdfium2.PdfDocument(printed(paper, units)) as pdf:
        count = len(pdf)
        text = "".join("".join(page.get_textpage().get_text_range().split()) for page in pdf)
    assert count == 2
    plain = text.replace("\u200b", "").replace("\ufffe", "").replace("\u0002", "")
    for block in document(paper, units).blocks:
        for row in block.rows if isinstance(block, SizeTable) else ():
            for part in ("; ".join(row)).split("; "):
                assert "".join(part.split()) in plain


def test_the_list_has_the_same_cells() -> None:
    head, *rows = csv.reader(StringIO(sizes_csv(patterns())))
    assert head == ["part", "what", *IN_ORDER]
    parts = (*size_parts(by_size(patterns())), cost_part(by_size(patterns())))
    told = [[part.title, row.what, *row.cells] for part in parts for row in part.rows]
    assert rows == told


ON_POINT_SIZES = f"""{ON_POINT}
[sizes.wide]
changes = {{ "setting.map" = "a0 b1 a0\\nb3 a2 b3\\n", "setting.between" = "A", borders.0.corners = "mitred" }}

[sizes.coped]
changes = {{ "borders.1" = {{ kind = "coping", fabric = "A", to = ['10"', '13"'] }} }}

[sizes.broad]
changes = {{ borders.0.width = '2"' }}
"""
PIECED_SIZES = f"""{PIECED}
[sizes.plain]
changes = {{ "borders.0" = {{ fabric = "C", width = '2"', corners = "cornerstones", cornerstone = "A" }} }}

[sizes.long]
changes = {{ setting.down = 2, sections.hedge.down = 2 }}
"""
NESTED_SIZES = f"""{NESTED}
[sizes.round]
changes = {{ "setting.kind" = "straight", "setting.map" = "round0 round1", "setting.parts" = {{}} }}
"""


def told(text: str) -> tuple[dict[str, tuple[str, ...]], tuple[str, ...]]:
    """Return all rows of a design's sizes, in the order of the file, and what is said of them."""
    job = run(text)
    assert job.patterns, job.findings
    parts = size_parts(job.patterns)
    return {row.what: row.cells for part in parts for row in part.rows}, size_notes(
        job.patterns[0], job.patterns[1:]
    )


def test_sizes_on_point_are_told_by_their_squares_and_borders() -> None:
    rows, notes = told(ON_POINT_SIZES)
    assert rows["Squares on point, across × down"] == ("2 × 3", "3 × 2", "2 × 3", "2 × 3")
    assert rows["Squares between them"] == ("1 × 2", "2 × 1", "1 × 2", "1 × 2")
    assert "Map laid across × down" not in rows
    assert rows["Border 1, finished width"] == ('1½" C', '1½" C, mitred', '1½" C', '2" C')
    assert rows["Border 2, finished width"][2].endswith("A, coping")
    assert rows["Units a"] == ("(3)", "(3)", "(3)", "(3)")
    assert "In the broad size the units, the shapes and the map are the same" in notes[1]
    assert "as often as it says" not in notes[1]
    assert "In the wide and coped sizes the units or the map differ" in notes[2]


def test_sizes_with_sections_are_told_by_how_many_they_take() -> None:
    rows, notes = told(PIECED_SIZES)
    assert rows["Sections hedge"] == ("(2)", "–", "(2)")
    assert rows["Sections verge"] == ("(2)", "–", "(2)")
    assert rows["Border 1, finished width"] == (
        '2" pieced, hedge and verge',
        '2" C, corners A',
        '2" pieced, hedge and verge',
    )
    assert rows["Units across × down"] == ("3 × 2", "3 × 2", "3 × 4")
    assert "In the plain and long sizes the units, the sections or the map differ" in notes[1]


def test_sizes_may_be_set_in_different_ways() -> None:
    rows, _ = told(NESTED_SIZES)
    assert rows["Places of the map across × down"] == ("–", "2 × 1")
    assert rows["Parts side by side"][1] == "–"
    assert rows["Sections round"][1] == "(2)"
    assert rows["Sections medal"][1] == "–"


LADEN = ON_POINT + "".join(
    f"""
[sizes.sized{number}.changes]
"borders.1" = {{ kind = "coping", fabric = "A", to = ['{12 + number} 3/8"', '{14 + number} 5/8"'] }}
"""
    for number in range(7)
)


@pytest.mark.parametrize("paper", Paper)
def test_sizes_of_many_words_keep_to_their_cells(paper: Paper) -> None:
    base, *others = run(LADEN).patterns
    whole = assemble(base, paper, others=others)
    starts = [k for k, block in enumerate(whole.blocks) if isinstance(block, Section)]
    kept = whole.blocks[starts[0] : starts[1]]
    assert any(
        "coping" in cell
        for table in kept
        if isinstance(table, SizeTable)
        for row in table.rows
        for cell in row
    )
    pages = print_booklet(
        Document(whole.title, whole.maker, whole.foot, whole.width, whole.height, whole.margin, kept)
    )
    with pypdfium2.PdfDocument(pages) as pdf:
        for page in pdf:
            boxes = letters(page)
            assert max(box[2] for box in boxes) * 25.4 / 72 <= whole.width - whole.margin + 0.5
            assert overlaps(boxes) == []

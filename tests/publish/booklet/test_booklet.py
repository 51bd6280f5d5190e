"""The booklet: each step told once, its numbers on the pages, figures in order, and a PDF that is well formed."""

from __future__ import annotations

import re
from functools import cache
from io import BytesIO
from pathlib import Path

import pikepdf
import pypdfium2
import pytest

from quarterturn.design import Paper
from quarterturn.pipeline import make_pattern
from quarterturn.proof import Pattern
from quarterturn.publish.booklet import Document, assemble, booklet, print_booklet
from quarterturn.publish.booklet.back import colouring
from quarterturn.publish.booklet.entries import gather
from quarterturn.publish.booklet.front import cover
from quarterturn.publish.booklet.model import Block, CutLine, CutList, Entry, Figure, FullPage, Plate, Section
from quarterturn.publish.wording import length, tell
from quarterturn.steps import Chapter
from tests.conftest import Golden
from tests.samples import ROUNDS, Changed, pattern_of

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
NAMES = [file.stem for file in EXAMPLES]
MM_PER_POINT = 25.4 / 72


TWO_RECIPES = (
    Changed(ROUNDS)
    .with_(
        "[colourways.a]",
        """[recipes.dot]
kind = "circle cut both ways"
finished = '2"'
start = '5"'
shape = { diameter = '1"' }
curve = "sewn true"

[colourways.a]""",
    )
    .with_('[colourways.b]\nrecipe = "round"', '[colourways.b]\nrecipe = "dot"')
    .text
)
"""Two recipes, of which one is trimmed and the other is not."""


@cache
def pattern(name: str) -> Pattern:
    if name == "rounds":
        return pattern_of(ROUNDS)
    return pattern_of(EXAMPLES[NAMES.index(name)].read_text(encoding="utf-8"))


@cache
def others(name: str) -> tuple[Pattern, ...]:
    return tuple(make_pattern(size) for size in pattern(name).design.sizes)


@cache
def document(name: str, paper: Paper = Paper.LETTER) -> Document:
    return assemble(pattern(name), paper, others=others(name))


@cache
def printed(name: str, paper: Paper = Paper.LETTER) -> bytes:
    return print_booklet(document(name, paper))


@cache
def pages(name: str, paper: Paper = Paper.LETTER) -> tuple[str, ...]:
    with pypdfium2.PdfDocument(printed(name, paper)) as pdf:
        return tuple(spaced(page.get_textpage().get_text_range()) for page in pdf)


def spaced(text: str) -> str:
    """Return a text with single plain spaces, wherever its lines were broken."""
    return re.sub(r"[\s\u00a0\ufffe\u0002]+", " ", text)


def numbered(blocks: tuple[Block, ...]) -> list[Entry | CutLine]:
    found: list[Entry | CutLine] = []
    for block in blocks:
        if isinstance(block, CutList):
            found += block.lines
        if isinstance(block, Entry):
            found.append(block)
    return found


def figure_list(blocks: tuple[Block, ...]) -> list[Figure]:
    found: list[Figure] = []
    for block in blocks:
        if isinstance(block, CutList | Plate):
            found.append(block.figure)
        if isinstance(block, Entry):
            found += block.figures
    return found


ALL = pytest.mark.parametrize("name", ["rounds", *NAMES])


@ALL
def test_every_step_is_told_exactly_once_and_entries_are_numbered_through(name: str) -> None:
    told = numbered(document(name).blocks)
    assert [entry.number for entry in told] == list(range(1, len(told) + 1))
    steps = sorted(number for entry in told for number in entry.steps)
    assert steps == [step.number for step in pattern(name).steps.steps]


@ALL
def test_no_entry_uses_what_only_a_later_one_makes(name: str) -> None:
    assert out_of_order(pattern(name)) == []


@ALL
def test_entries_with_one_title_say_which_shape_or_unit_they_are_of(name: str) -> None:
    made = pattern(name)
    for chapter in (Chapter.SHAPES, Chapter.FUSING, Chapter.STITCHING, Chapter.UNITS):
        titles = [entry.title for entry in gather(made.steps.of(chapter), made, 1)]
        assert len(set(titles)) == len(titles)


def test_the_cover_tells_the_sizes_of_units_without_their_codes() -> None:
    facts = dict(cover(pattern("sails-and-sweethearts"), 150, 150).facts)
    assert facts["Finished units"] == '2" × 4" and 4" square'


def test_every_unit_of_up_to_twelve_stands_under_the_colouring_page() -> None:
    made = pattern("letters-in-the-hedge")
    (_, _, units) = tuple(colouring(made, 180, 220))
    assert isinstance(units, Plate)
    assert len(units.figure.cells) == min(12, len(made.setting.tally))


def test_colourways_of_two_recipes_are_cut_before_they_are_trimmed() -> None:
    assert out_of_order(pattern_of(TWO_RECIPES)) == []


def out_of_order(pattern: Pattern) -> list[tuple[int, str]]:
    """Return entry and label of whatever is used before all steps that make it, up to its use, are told."""
    told = numbered(assemble(pattern, Paper.LETTER).blocks)
    entry_of = {step: entry.number for entry in told for step in entry.steps}
    made_by: dict[str, list[int]] = {}
    late = []
    for step in pattern.steps.steps:
        here = entry_of[step.number]
        late += [(here, p.label) for p in step.uses for by in made_by.get(p.label, ()) if entry_of[by] > here]
        for made in step.makes:
            made_by.setdefault(made.label, []).append(step.number)
    return late


@ALL
def test_figures_are_numbered_in_order_and_each_number_is_printed(name: str) -> None:
    figures = figure_list(document(name).blocks)
    assert [figure.number for figure in figures] == list(range(1, len(figures) + 1))
    text = " ".join(pages(name))
    at = [text.index(f"Figure {figure.number} {figure.caption}") for figure in figures]
    assert at == sorted(at)


@ALL
def test_what_each_step_says_is_on_the_pages(name: str) -> None:
    text = " ".join(pages(name))
    for step in pattern(name).steps.steps:
        for each in tell(step, pattern(name)).line.splitlines():
            line = spaced(each).rstrip(".")
            assert line.replace(" ", "") in text.replace(" ", ""), line


@ALL
def test_counts_and_sizes_of_what_the_steps_make_are_on_the_pages(name: str) -> None:
    text = " ".join(pages(name)).replace(" ", "")
    design = pattern(name).design
    for step in pattern(name).steps.steps:
        for made in step.makes:
            assert length(design, made.width).replace(" ", "") in text
            assert made.count == 1 or f"({made.count})" in text


@ALL
@pytest.mark.parametrize("paper", list(Paper))
def test_pages_have_the_size_of_the_paper_and_count_themselves(name: str, paper: Paper) -> None:
    told = document(name, paper)
    with pypdfium2.PdfDocument(printed(name, paper)) as pdf:
        sizes = {
            (round(w * MM_PER_POINT, 1), round(h * MM_PER_POINT, 1)) for w, h in (p.get_size() for p in pdf)
        }
    assert sizes == {(told.width, told.height)}
    texts = pages(name, paper)
    footed = [k for k, text in enumerate(texts, 1) if f"page {k} of {len(texts)}" in text]
    sheets = sum(isinstance(block, FullPage) for block in told.blocks)
    assert len(footed) >= len(texts) - 1 - sheets


@ALL
def test_sections_stand_in_the_order_of_the_work(name: str) -> None:
    titles = [block.title for block in document(name).blocks if isinstance(block, Section)]
    opening = ["Sizes"] if others(name) else []
    assert titles[: len(opening) + 2] == [*opening, "Requirements", "Before you begin"]
    text, place = " ".join(pages(name)), 0
    for title in titles:
        assert title in text[place:]
        place = text.index(title, place)


@ALL
@pytest.mark.parametrize("paper", list(Paper))
def test_no_page_is_nearly_empty(name: str, paper: Paper) -> None:
    with pypdfium2.PdfDocument(printed(name, paper)) as pdf:
        depths = [lowest_mark(page) for page in pdf]
    assert [k for k, depth in enumerate(depths[:-1], 1) if depth < 0.3] == []


def lowest_mark(page: pypdfium2.PdfPage) -> float:
    """Return how far down, as a share of its height, a page is used above its foot."""
    image = page.render(scale=0.5, grayscale=True).to_numpy()
    body = image[: int(len(image) * 0.915)]
    used = [k for k, row in enumerate(body) if row.min() < 200]
    return (used[-1] + 1) / len(body) if used else 0.0


@ALL
def test_an_inch_booklet_has_no_decimal_before_an_inch_mark_and_nothing_is_left_undone(name: str) -> None:
    text = " ".join(pages(name))
    assert re.findall(r'\d\.\d+ ?["″]', text) == []
    assert re.findall(r"\b(TODO|FIXME|None|nan)\b", text) == []


@ALL
def test_the_pdf_is_tagged_describes_its_pictures_and_is_printed_at_its_true_size(name: str) -> None:
    with pikepdf.open(BytesIO(printed(name))) as pdf:
        assert pdf.Root.MarkInfo.Marked
        assert pdf.Root.ViewerPreferences.PrintScaling == "/None"
        assert str(pdf.docinfo["/Title"]) == pattern(name).design.title
        alts = [alt_of(obj) for obj in pdf.objects if is_figure(obj)]
    drawings = sum(len(figure.cells) for figure in figure_list(document(name).blocks))
    assert len(alts) >= drawings
    assert all(alts)


def is_figure(obj: pikepdf.Object) -> bool:
    return isinstance(obj, pikepdf.Dictionary) and obj.get("/S") == "/Figure"


def alt_of(obj: pikepdf.Object) -> str:
    return str(obj.get("/Alt", ""))


def test_equal_patterns_give_equal_bytes() -> None:
    assert booklet(pattern("rounds"), Paper.A4) == booklet(pattern_of(ROUNDS), Paper.A4)


def test_nothing_is_said_of_a_rehearsal_that_was_not_run() -> None:
    assert "ehearsed" not in " ".join(pages("rounds"))
    told = assemble(pattern("rounds"), Paper.LETTER, ("All steps were rehearsed on paper.",))
    assert "All steps were rehearsed on paper." in str(told.blocks[-1])


def test_a_draft_says_so_on_its_cover_and_at_the_foot_of_its_pages() -> None:
    told = assemble(pattern("rounds"), Paper.LETTER, (), "Draft: not for sewing.")
    with pypdfium2.PdfDocument(print_booklet(told)) as pdf:
        texts = [page.get_textpage().get_text_range() for page in pdf]
    assert "Draft: not for sewing." in texts[0]
    assert "version 1.0 · draft" in texts[1]


LONG = "A very long name for a quilt that goes on and on until nobody can remember how it began, as some do"


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("Two Rounds", LONG),
        ("A round of each colour.", " ".join(["A round of each colour."] * 100)),
        ('name = "ink"', f'name = "{LONG}"'),
        ('role = "circles"', f'role = "{LONG}"'),
        ('[[borders]]\nfabric = "C"\nwidth = \'1 1/2"\'\nfirst = "sides"\n', ""),
        ("shape = { flow = true }", "shape = { diameter = '1 1/2\"' }"),
    ],
)
def test_long_words_no_borders_and_small_shapes_are_printed_too(before: str, after: str) -> None:
    changed = pattern_of(Changed(ROUNDS).with_(before, after).text)
    with pypdfium2.PdfDocument(booklet(changed, Paper.LETTER)) as pdf:
        assert "Requirements" in pdf[1].get_textpage().get_text_range()


@pytest.mark.parametrize("rows", ["a0", "a0 a1", "a0\na1", "a0 a1 a2"])
def test_the_smallest_settings_are_printed_too(rows: str) -> None:
    start = ROUNDS.index("map = '''")
    text = f"{ROUNDS[:start]}map = '''\n{rows}\n'''\n{ROUNDS[ROUNDS.index('[[borders]]') :]}"
    told = numbered(assemble(pattern_of(text), Paper.LETTER).blocks)
    assert told
    assert booklet(pattern_of(text), Paper.LETTER).startswith(b"%PDF")


def test_the_words_of_a_small_booklet(golden: Golden) -> None:
    golden.check("rounds.txt", "\n\n".join(pages("rounds")) + "\n")

"""Laws of every act, on every example: what is left is a design, notes stay, and an act is one object."""

from __future__ import annotations

import re
from fractions import Fraction
from pathlib import Path

import pytest
from pydantic import TypeAdapter

from quarterturn.design import Design, read_design
from quarterturn.studio.acts import ACTS, Act, AnyAct, CellAt, RefusedError, do, name_of
from quarterturn.studio.acts.borders import AddBorder, MoveBorder, RemoveBorder
from quarterturn.studio.acts.cloth import AddFabric, RemoveFabric, RenameFabric, SwapFabrics
from quarterturn.studio.acts.painting import SwapColourways, TurnCells
from quarterturn.studio.acts.putting import Put, Write
from quarterturn.studio.acts.recipes import AddRecipe, RemoveRecipe, RenameRecipe
from quarterturn.studio.acts.sections import AddSection, RemoveSection, RenameSection, ResizeMap
from quarterturn.studio.acts.sizes import AddSize, RemoveSize
from quarterturn.studio.acts.strips import DecideStrips
from quarterturn.studio.acts.tables import joined, tables_of
from quarterturn.studio.history import splice
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.cutting import cutting_view
from tests.samples import HEARTS, ROUNDS, straight, units_in
from tests.studio.acts.samples import samples, some_cells

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
TAKES_AWAY = ("remove-", "write", "swap-")


def texts() -> list[str]:
    return [path.read_text(encoding="utf-8") for path in EXAMPLES]


def with_spare_recipe() -> str:
    """Return an example with a recipe that nothing uses."""
    return do(AddRecipe(recipe="spare", kind="circle cut both ways"), texts()[0], Stages()).made.text


def with_strips_decided() -> str:
    """Return an example whose first fabric is cut in strips that are decided on."""
    made = Stages().at(texts()[0])
    kept = next(plan for plan in cutting_view(1, made, made.sizes[0]).plans if plan.kinds)
    first = kept.kinds[0]
    act = DecideStrips(fabric=kept.letter, height=first.written, count=first.count, pieces=first.pieces)
    return do(act, texts()[0], Stages()).made.text


def design_of(text: str) -> Design:
    design = read_design(text).design
    assert design is not None
    return design


def notes_of(text: str) -> list[str]:
    return sorted(re.findall(r"(?m)^[ \t]*#.*$|[ \t]#[^'\"\n]*$", text))


def outcome(act: Act, text: str, stages: Stages) -> str | None:
    """Return the text that an act leaves; None where it is refused, as it must be: by two sentences."""
    try:
        return do(act, text, stages).made.text
    except RefusedError as error:
        refused = error
    assert refused.sentence.endswith("."), refused.sentence
    assert refused.remedy.endswith((".", "?")), refused.remedy
    return None


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_act_leaves_a_design_or_is_refused_by_a_sentence(path: Path) -> None:
    text, stages = path.read_text(encoding="utf-8"), Stages()
    done: set[str] = set()
    for act in samples(design_of(text)):
        name = name_of(type(act))
        left = outcome(act, text, stages)
        if left is None or act.may_break:
            continue
        done.add(name)
        assert read_design(left).design is not None, act
        assert splice(text, left).inverse.done(left) == text, "undone, it is as it was"
        if not name.startswith(TAKES_AWAY):
            assert set(notes_of(text)) <= set(notes_of(left)), act
    assert {"put", "puts", "add-recipe", "add-fabric", "take-colours", "add-border"} <= done


def test_every_act_is_done_on_some_example() -> None:
    done = set()
    for text in (*texts(), with_spare_recipe(), with_strips_decided()):
        stages = Stages()
        for act in samples(design_of(text)):
            name = name_of(type(act))
            if name not in done and outcome(act, text, stages) not in (None, text):
                done.add(name)
    assert done == {name_of(act) for act in ACTS}


def test_an_act_is_told_by_its_name_in_json() -> None:
    adapter: TypeAdapter[Act] = TypeAdapter(AnyAct)
    assert len({name_of(act) for act in ACTS}) == len(ACTS)
    for act in samples(design_of(texts()[0])):
        assert adapter.validate_json(act.model_dump_json()) == act


def test_shortcuts_differ_where_two_acts_are_at_hand_together() -> None:
    keys = [act.key for act in ACTS if act.key and act.key != "Enter"]
    assert len(set(keys)) == len(keys)


def test_the_pieces_of_a_text_are_the_text() -> None:
    for text in texts():
        assert joined(tables_of(text)) == text


def test_a_bracket_in_a_note_or_a_list_begins_no_table() -> None:
    text = 'a = [\n  [1, 2],\n  [3],\n]\nb = """\n[no]\n"""\n# [neither]\n\n# about x\n[x.y] # [so]\nc = "#["\n[[z]]\n'
    assert [table.parts for table in tables_of(text)] == [(), ("x", "y"), ("z",)]
    assert tables_of(text)[1].text.startswith("# about x\n")


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_turning_four_times_and_turning_back_leave_the_text_as_it_was(path: Path) -> None:
    stages, text = Stages(), path.read_text(encoding="utf-8")
    for at in some_cells(design_of(text)):
        once = do(TurnCells(cells=(at,), anyway=True), text, stages).made.text
        assert written_alike(do(TurnCells(cells=(at,), by=-1, anyway=True), once, stages).made.text, text)
        left = text
        for _ in range(4):
            left = do(TurnCells(cells=(at,), anyway=True), left, stages).made.text
        assert written_alike(left, text)


def written_alike(one: str, other: str) -> bool:
    """Tell whether two texts read alike and have the same notes, however wide the columns of their maps are."""
    return read_design(one).design == read_design(other).design and notes_of(one) == notes_of(other)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_swapping_twice_changes_nothing(path: Path) -> None:
    stages, text = Stages(), path.read_text(encoding="utf-8")
    design = design_of(text)
    a, b = design.colourways[0].code, design.colourways[-1].code
    letters = design.fabrics[0].letter, design.fabrics[-1].letter
    for act in (SwapColourways(a=a, b=b, anyway=True), SwapFabrics(a=letters[0], b=letters[1])):
        left: str | None = text
        for _ in range(2):
            left = left and outcome(act, left, stages)
        assert left is None or written_alike(left, text)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_name_that_is_given_and_given_back_leaves_the_design_as_it_was(path: Path) -> None:
    stages, text = Stages(), path.read_text(encoding="utf-8")
    design = design_of(text)
    acts: list[tuple[Act, Act]] = [
        (RenameSection(section=section.name, to="another"), RenameSection(section="another", to=section.name))
        for section in design.sections
    ]
    names = dict.fromkeys(recipe.base or recipe.name for recipe in design.recipes)
    acts += [(RenameRecipe(recipe=name, to="other"), RenameRecipe(recipe="other", to=name)) for name in names]
    acts += [
        (RenameFabric(letter=letter, to="QQ"), RenameFabric(letter="QQ", to=letter))
        for letter in (fabric.letter for fabric in design_of(text).fabrics)
    ]
    for there, back in acts:
        renamed = do(there, text, stages).made.text
        assert written_alike(do(back, renamed, stages).made.text, text)


def test_what_is_added_and_taken_away_leaves_the_text_as_it_was() -> None:
    text, stages = texts()[0], Stages()
    letter, code = design_of(text).fabrics[0].letter, design_of(text).colourways[0].code
    count = len(design_of(text).borders)
    pairs: list[tuple[Act, Act]] = [
        (AddRecipe(recipe="spare", kind="shapes cut"), RemoveRecipe(recipe="spare")),
        (AddFabric(letter="ZZ", called="spare", colour="#123456"), RemoveFabric(letter="ZZ")),
        (AddSection(section="spare", unit=code, fabric=letter), RemoveSection(section="spare")),
        (AddBorder(fabric=letter, width="1 in"), RemoveBorder(place=count)),
        (AddBorder(place=0, fabric=letter, width="1 in"), RemoveBorder(place=0)),
        (AddSize(size="spare"), RemoveSize(size="spare")),
    ]
    for add, take in pairs:
        added = do(add, text, stages)
        assert added.changed
        assert lines_of(do(take, added.made.text, stages).made.text) == lines_of(text)


def lines_of(text: str) -> list[str]:
    return [line for line in text.split("\n") if line]


def test_what_does_not_fit_is_refused_unless_it_is_to_be_done_anyway() -> None:
    text = (EXAMPLES[0].parent / "gates-of-the-orchard.toml").read_text(encoding="utf-8")
    act = ResizeMap(section="gate", bottom=1)
    with pytest.raises(RefusedError) as refused:
        do(act, text, Stages())
    assert refused.value.can_anyway
    done = do(act.model_copy(update={"anyway": True}), text, Stages())
    assert done.made.stops
    further = do(ResizeMap(section="gate", bottom=1), done.made.text, Stages())
    assert further.made.stops
    mended = do(ResizeMap(section="gate", bottom=-2), further.made.text, Stages())
    assert mended.made.stops == ()


def test_a_broken_text_takes_only_what_mends_it() -> None:
    with pytest.raises(RefusedError):
        do(Put(at="title", value="x"), "title = ", Stages())
    done = do(Write(text=texts()[0]), "title = ", Stages())
    assert (done.changed, done.made.stops) == (True, ())


def test_a_border_is_moved_with_its_notes() -> None:
    text = (EXAMPLES[0].parent / "lanterns-on-the-quay.toml").read_text(encoding="utf-8")
    noted = text.replace('[[borders]]\nfabric = "B"', '# the sea wall\n[[borders]]\nfabric = "B"')
    moved = do(MoveBorder(place=1, to=0), noted, Stages()).made.text
    assert [getattr(border, "width", None) for border in design_of(moved).borders] == [5, Fraction(3, 2)]
    assert '# the sea wall\n[[borders]]\nfabric = "B"' in moved


def test_a_map_keeps_its_layout_when_a_word_changes() -> None:
    text = (EXAMPLES[0].parent / "lanterns-on-the-quay.toml").read_text(encoding="utf-8")
    at = CellAt(section="centre", row=2, column=1)
    turned = do(TurnCells(cells=(at,)), text, Stages()).made.text
    assert turned == text.replace("w1 l1 l0 w2", "w1 l2 l0 w2", 1)


@pytest.mark.parametrize("form", ["\ufeff{}", "{}\n# the last line has no end"])
def test_however_an_editor_ends_and_begins_a_file_acts_are_done_to_it(form: str) -> None:
    plain, stages = texts()[2], Stages()
    text = form.format(plain)
    for act in samples(design_of(plain)):
        if not act.may_break and outcome(act, plain, stages) not in (None, plain):
            left = outcome(act, text, stages)
            assert left is not None, act
            assert notes_of(text) == notes_of(left) or name_of(type(act)).startswith(TAKES_AWAY)


def test_only_the_cells_that_are_named_are_swapped() -> None:
    stages = Stages()
    before = units_in(straight(stages.at(ROUNDS).design).cells)
    here = CellAt(section="centre", row=0, column=0)
    done = do(SwapColourways(a="a", b="b", cells=(here,)), ROUNDS, stages)
    after = units_in(straight(done.made.design).cells)
    assert {before[0][0].code, after[0][0].code} == {"a", "b"}
    after[0][0] = before[0][0]
    assert after == before


def test_colourways_that_are_cut_into_different_pieces_do_not_change_places() -> None:
    with pytest.raises(RefusedError, match="cut into different pieces"):
        do(SwapColourways(a="a", b="c"), HEARTS, Stages())

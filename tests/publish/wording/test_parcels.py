"""What is said of cloth in pieces: what to buy, how it is cut, and how good the plan is."""

from __future__ import annotations

from functools import cache

import pytest

from quarterturn.proof import Pattern
from quarterturn.publish.kits import kit_files
from quarterturn.publish.wording import (
    assumptions,
    cloth_needs,
    cutting_advice,
    plan_line,
    size_parts,
    tell,
    width_line,
)
from quarterturn.publish.wording.parcels import layout_line
from quarterturn.steps import CutParcels, SquareParcels, Subcut
from tests.proof.checks.sound import SOUND
from tests.samples import pattern_of

BRICK = 'colour = "#9c4a35"'
INK = 'colour = "#22304a"'


@cache
def brick(words: str, more: str = "") -> Pattern:
    """The brick of border and binding from pieces of cloth."""
    return pattern_of(SOUND.replace(BRICK, f"{BRICK}\n{words}") + more)


FAT = 'bought_as = "fat quarter"\nprice = 3.5'
SHELF = f"on_hand = [{{ width = '21\"', height = '9\"', count = 4 }}]\n{FAT}"
PRICED = '\n[house]\ncurrency = "USD"\n'
KITS = f'{PRICED}\n[kits]\ncount = 10\ncontent = "pieces"\n'


def lines(pattern: Pattern, kind: type) -> list[str]:
    found = (step for step in pattern.steps.steps if isinstance(step.action, kind))
    return [tell(step, pattern).line for step in found]


def test_the_list_counts_pieces_and_says_their_size() -> None:
    need = cloth_needs(brick(FAT))[-1]
    assert need.amount == "2 fat quarters"
    assert need.note == 'sold as 18" × 22"; 18" × 21" each without selvage, 17" × 20" squared up'


def test_a_metric_pattern_states_the_size_of_both_kinds_of_fat_quarter() -> None:
    """Trade check 40: 50 × 55 cm beside 45.7 × 55.9 cm."""
    metric = pattern_of(SOUND.replace(BRICK, f"{BRICK}\n{FAT}").replace('units = "inch"', 'units = "metric"'))
    note = cloth_needs(metric)[-1].note
    assert note.startswith("sold as 50 cm × 55 cm by the metre, 45.7 cm × 55.9 cm by the yard; ")


def test_what_is_taken_from_the_shelf_is_said() -> None:
    need = cloth_needs(brick(SHELF))[-1]
    assert need.amount == "nothing"
    assert need.note == '4 pieces of 21" × 9" on hand are used'


def test_the_plan_says_that_no_fewer_will_do() -> None:
    (plan,) = (plan for plan in brick(FAT).materials.cloth if plan.fabric == "C")
    assert plan_line(brick(FAT), plan).startswith("2 fat quarters; no plan needs fewer than 2.")
    (plan,) = (plan for plan in brick(SHELF).materials.cloth if plan.fabric == "C")
    assert plan_line(brick(SHELF), plan).startswith("Nothing has to be bought. 4 pieces")


def test_pieces_are_squared_up_cut_into_strips_and_these_across() -> None:
    pattern = brick(FAT)
    assert lines(pattern, SquareParcels)[0] == (
        'Press (1) fat quarter, and square it up to 20" × 17", the width across the cloth – Cp1'
    )
    assert lines(pattern, CutParcels)[0] == (
        'Cut Cp1 across the cloth into (3) 2½" × 20" strips – Cs1 and (2) 2½" × 20" strips – Cs3'
    )


def test_strips_of_pieces_are_called_by_their_labels() -> None:
    told = [line for line in lines(brick(FAT), Subcut) if "cut Cs" in line]
    assert told
    assert all(line.startswith("cut Cs") for line in told)


def test_a_layout_says_how_many_pieces_are_cut_like_it() -> None:
    plan = brick(SHELF).materials.plan("C")
    assert plan.parcels
    first = plan.parcels.layouts[0]
    assert layout_line(plan, first).startswith(f"Cp1: cut ({first.count}) piece")


@pytest.mark.parametrize(
    ("words", "said"),
    [(FAT, 'seldom cut true: up to 1"'), ('bought_as = "10 inch square"', "from point to point")],
)
def test_cautions_of_squaring_and_of_pinked_edges_are_given(words: str, said: str) -> None:
    assert any(said in line for line in assumptions(brick(words)))
    assert not any(said in line for line in assumptions(brick("")))


def test_the_letter_p_is_explained_where_it_is_used() -> None:
    assert any("with p is a piece of cloth" in line for line in cutting_advice(brick(FAT)))
    assert not any("with p" in line for line in cutting_advice(brick("")))


def test_the_usable_width_is_said_of_bolts_alone() -> None:
    whole = SOUND.replace(BRICK, f"{BRICK}\nwidth = '33\"'\n{FAT}")
    assert '33"' not in width_line(pattern_of(whole))


def test_the_sizes_count_pieces() -> None:
    rows = {row.what: row.cells for part in size_parts([brick(FAT)]) for row in part.rows}
    assert ("(2) fat quarters",) in rows.values()
    assert ("2 fat quarters",) in rows.values()


def test_kits_hold_pieces_as_they_are_bought_and_nothing_of_the_shelf() -> None:
    files = kit_files(brick(SHELF, KITS), brick(SHELF, KITS).design.selling.kits)  # type: ignore[arg-type]
    assert "C,brick,C,fat quarter,2,10,20,18,21,457.2,533.4" in files["pick-list.csv"]
    assert (
        "2 fat quarters for each kit, 20 fat quarters in all, as they are bought" in files["cut-tickets.txt"]
    )
    assert "fat quarters, Fabric C" in files["kit-label.txt"]

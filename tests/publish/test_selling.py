"""Papers for money, kits and classes: they agree with the pattern and with each other."""

from __future__ import annotations

import csv
import io
import math
import re
from fractions import Fraction

import pytest

from quarterturn.design import Kits, Lesson
from quarterturn.materials.costs import costs_of
from quarterturn.materials.hours import Work
from quarterturn.pipeline import make_pattern, run
from quarterturn.proof import Pattern, prove
from quarterturn.proof.text import leftover_lines
from quarterturn.proof.work import class_plan
from quarterturn.publish.classes import class_text, clock, run_sheet_csv
from quarterturn.publish.kits import (
    kit_files,
    label_text,
    packing_of,
    pick_list_csv,
    supply_list,
    tickets_text,
)
from quarterturn.publish.money import WORK, amount, costs_csv, floor_of, hours_by_stage, is_priced, money_text
from quarterturn.publish.release import Verdict, release
from quarterturn.publish.wording import notions
from tests.samples import HEARTS, ROUNDS, design_of, pattern_of

SOLD = (
    ROUNDS
    + """
[house]
currency = "EUR"

[money]
rate = 20
share = 10
web = 6

[[notions]]
name = "square-up ruler"
price = 12

[kits]
count = 12
content = "pieces"
label = "From the shop by the weir"

[class]
students = 9
hours = 3
"""
)
PATTERN = pattern_of(SOLD)


def kits() -> Kits:
    found = PATTERN.design.selling.kits
    assert found
    return found


def lesson() -> Lesson:
    found = PATTERN.design.selling.lesson
    assert found
    return found


def rows(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text)))


def names(pattern: Pattern) -> set[str]:
    return set(release(pattern, Verdict("rounds.toml", (), prove(pattern)), only=("selling",)))


def test_a_release_holds_the_papers_that_the_design_asks_for() -> None:
    assert names(pattern_of(ROUNDS)) == {"contents.txt"}
    assert names(PATTERN) == {
        "money.txt", "costs.csv", "pick-list.csv", "cut-tickets.txt", "kit-label.txt", "class.txt", "run-sheet.csv",
        "contents.txt",
    }  # fmt: skip


def test_the_pick_list_counts_what_the_tickets_cut() -> None:
    packing = packing_of(PATTERN, kits())
    cut: dict[str, int] = {}
    for cloth in packing.cloth:
        for ticket in packing.tickets(cloth).tickets:
            for line in ticket.lines:
                for crosscut in line.crosscuts:
                    cut[crosscut.piece] = cut.get(crosscut.piece, 0) + crosscut.count * line.count
                if not line.crosscuts:
                    cut[line.label] = cut.get(line.label, 0) + line.count
    for row in rows(pick_list_csv(packing)):
        assert int(row["in all"]) == 12 * int(row["in a kit"])
        assert row["piece"] == "web" or cut[row["piece"]] >= int(row["in all"])


def test_a_kit_holds_every_piece_and_a_spare() -> None:
    picked = {row["piece"]: int(row["in a kit"]) for row in rows(pick_list_csv(packing_of(PATTERN, kits())))}
    for master in PATTERN.bill.masters:
        assert picked[master.ground] > PATTERN.bill.piece(master.ground).count
        assert picked[master.shape] > PATTERN.bill.piece(master.shape).count


def test_the_supply_list_is_what_is_required_less_the_kit() -> None:
    """A trade editor's check: supply list = requirement list − kit content."""
    supply = "\n".join(supply_list(packing_of(PATTERN, kits())))
    assert "for the backing" in supply
    assert "Batting" in supply
    assert "square-up ruler" in supply
    assert "fusible web" not in supply
    everything = Kits(12, web=False, backing=True)
    other = "\n".join(supply_list(packing_of(PATTERN, everything)))
    assert "fusible web" in other
    assert "backing" not in other


def test_the_label_names_the_pattern_and_takes_care() -> None:
    label = label_text(packing_of(PATTERN, kits()))
    assert "Two Rounds: kit" in label
    assert "pattern T-1 version 1.0" in label
    assert "From the shop by the weir" in label
    assert "rotary cutter" in label


def test_kits_of_cloth_are_cut_by_the_length() -> None:
    text = tickets_text(packing_of(PATTERN, Kits(12)))
    assert text.count("for a kit") >= 3
    assert "cut to size" not in text
    assert kit_files(PATTERN, Kits(12)).keys() == kit_files(PATTERN, kits()).keys()


def test_ten_thousand_kits_are_planned_like_ten() -> None:
    few, many = (packing_of(PATTERN, Kits(n, spare=Fraction(0))) for n in (10, 10_000))
    for small, large in zip(few.cloth, many.cloth, strict=True):
        assert large.pooled_cut <= 1000 * small.pooled_cut
    assert len(many.tickets(many.cloth[0]).tickets) > 100


def test_the_run_sheet_and_the_homework_hold_every_chapter() -> None:
    plan = class_plan(PATTERN, lesson())
    at_home = [stage for stage, _ in (*plan.before, *plan.after)]
    in_class = [row["what"] for row in rows(run_sheet_csv(plan)) if not row["what"].startswith("show ")]
    assert sorted(at_home + in_class) == sorted({step.chapter.value for step in PATTERN.steps.steps})


def test_the_class_sheet_tells_of_the_room_and_of_what_to_bring() -> None:
    text = class_text(PATTERN, lesson(), class_plan(PATTERN, lesson()), kits())
    assert "3 irons, one for 3.0 students" in text
    assert "the kit" in text
    assert "estimates" in text


def test_a_handout_bears_the_version_of_the_pattern() -> None:
    """A trade editor's check: students hold the pattern that the handout was made from."""
    assert "By pattern T-1 version 1.0." in class_text(PATTERN, lesson(), class_plan(PATTERN, lesson()))


def test_a_class_without_kits_brings_all_that_is_required() -> None:
    pattern = pattern_of(HEARTS)
    text = class_text(pattern, Lesson(4, Fraction(6)), class_plan(pattern, Lesson(4, Fraction(6))))
    assert text.count("Fabric ") >= len(pattern.materials.cloth)


SIZED = (
    SOLD.replace("count = 12", 'count = 12\nsize = "large"')
    + """size = "original"

[sizes.large]
changes = { kits.count = 5, setting.across = 2, setting.down = 2 }
"""
)


def papers(text: str, size: str | None = None) -> dict[str, str]:
    """Return what is published to sell by, of all sizes of a design or of one."""
    job = run(text, "rounds.toml", size=size)
    assert job.pattern is not None
    others = tuple((pattern, prove(pattern)) for pattern in job.patterns[1:])
    verdict = Verdict("rounds.toml", (), prove(job.pattern), others)
    files = release(job.pattern, verdict, only=("selling",))
    return {name: content.decode() for name, content in files.items()}


def test_kits_and_a_class_are_each_of_the_size_that_they_state() -> None:
    sold = papers(SIZED)
    assert "Two Rounds, large size: cut tickets for 5 kits" in sold["cut-tickets.txt"]
    assert "kit, large size" in sold["kit-label.txt"]
    assert sold["class.txt"].startswith("Two Rounds, original size: class for 9 students")
    large = make_pattern(design_of(SIZED).in_size("large"))
    assert large.design.selling.kits is not None
    assert sold["pick-list.csv"] == pick_list_csv(packing_of(large, large.design.selling.kits))


def test_students_bring_a_kit_only_of_the_size_that_they_make() -> None:
    assert "  the kit\n" not in papers(SIZED)["class.txt"]
    assert "  the kit\n" in papers(SIZED.replace('size = "original"', 'size = "large"'))["class.txt"]


def test_one_size_alone_comes_with_the_papers_of_that_size() -> None:
    assert "class.txt" not in papers(SIZED, "large")
    assert papers(SIZED, "large")["pick-list.csv"] == papers(SIZED)["pick-list.csv"]
    assert "kit-label.txt" not in papers(SIZED, "original")


@pytest.mark.parametrize(("minutes", "shown"), [(0, "0:00"), (59.6, "1:00"), (125, "2:05")])
def test_clock(minutes: float, shown: str) -> None:
    assert clock(minutes) == shown


def test_the_price_is_the_sum_of_its_lines() -> None:
    floor = floor_of(PATTERN)
    assert floor is not None
    hours = Fraction(round(sum(hours_by_stage(PATTERN).values()) * 10), 10)
    assert floor.price == (costs_of(PATTERN.design, PATTERN.materials).total + hours * 20) * Fraction(11, 10)
    assert re.search(rf"price +{float(floor.price):.2f}$", money_text(PATTERN), re.MULTILINE)


def test_the_money_sheet_names_what_has_no_price_and_says_what_it_assumes() -> None:
    text = money_text(PATTERN)
    assert "no price is stated for Fabric A" in text
    assert "Hours, an estimate" in text
    assert "a seam to pin and press" in text


def test_web_by_the_sheet_is_priced_and_left_over_in_sheets() -> None:
    pattern = pattern_of(SOLD + "\n[making]\nweb_sheet = ['9\"', '12\"']\n")
    (web,) = (line for line in money_text(pattern).splitlines() if line.strip().startswith("web"))
    assert re.search(rf"web +{pattern.materials.web.sheets} sheets?\b", web)
    (left,) = (line for line in leftover_lines(pattern, prove(pattern)) if line.strip().startswith("web"))
    assert left.split() == ["web", "0", "sheets"]


def test_an_amount_of_money_is_printed_half_a_cent_up_as_everywhere() -> None:
    assert amount(Fraction(31625, 1000)) == "31.63"
    assert amount(None) == ""


def test_notions_are_told_to_the_sewer() -> None:
    assert "square-up ruler" in notions(PATTERN)


def test_costs_stand_in_a_column_for_each_size() -> None:
    text = f"{SOLD}\n[sizes.large]\nchanges = {{ setting.across = 2 }}\n"
    design = design_of(text)
    table = rows(costs_csv([make_pattern(size) for size in (design.in_size("large"), design)]))
    assert {row["part"] for row in table} == {"materials", "hours", "price"}
    assert list(table[0]) == ["part", "what", "original", "large"]
    assert float(table[-1]["large"]) > float(table[-1]["original"])


def test_a_design_without_prices_has_no_money_sheet() -> None:
    assert not is_priced(pattern_of(ROUNDS).design)
    assert is_priced(PATTERN.design)


def test_every_kind_of_work_has_a_name() -> None:
    assert set(WORK) == set(Work)


def test_a_kit_holds_sheets_of_web_with_spares() -> None:
    pattern = pattern_of(SOLD + "\n[making]\nweb_sheet = ['9\"', '12\"']\n")
    packing = packing_of(pattern, Kits(12, spare=Fraction(1, 2)))
    sheets = math.ceil(pattern.materials.web.sheets * (Fraction(3, 2) if packing.ready_cut else 1))
    assert packing.web() == 12 * sheets
    (row,) = (row for row in rows(pick_list_csv(packing)) if row["piece"] == "web")
    assert (row["in a kit"], row["in all"]) == (str(sheets), str(12 * sheets))
    assert (row["length in"], row["width in"]) == ("12", "9")
    assert 'sheets of 9" × 12"' in label_text(packing)

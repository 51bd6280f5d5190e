"""What stands before the first cut, in the requirement list and on the last page."""

from __future__ import annotations

import math
from dataclasses import replace
from pathlib import Path

import pytest

from quarterturn.materials.backing import panels_length
from quarterturn.measure import Units, buy_up, inches, parse_length, show_cloth
from quarterturn.pipeline import run
from quarterturn.proof import Pattern
from quarterturn.publish.wording import (
    abbreviations,
    assumptions,
    cautions,
    cloth_needs,
    curve_facts,
    defaults,
    estimates,
    fabric_name,
    imprint,
    notions,
    other_needs,
    plan_line,
    plans_explained,
    tell,
    turned_by,
    width_line,
)
from quarterturn.steps import JoinPanels, TraceRings, TrimToFit
from tests.samples import ROUNDS, Changed, pattern_of


def test_a_fabric_is_never_named_by_letter_or_colour_alone() -> None:
    design = pattern_of(ROUNDS).design
    assert fabric_name(design.fabric("A")) == "Fabric A (oyster, background)"


def test_only_abbreviations_in_use_are_explained() -> None:
    assert [short for short, _ in abbreviations(["Cut (3) strips"], Units.METRIC)] == []
    assert [short for short, _ in abbreviations(["Cut (3) 5 cm × WOF strips"], Units.METRIC)] == ["WOF"]
    assert [short for short, _ in abbreviations([], Units.INCH)] == ['"']


def test_the_cautions_cover_cutter_iron_needle_small_parts_and_infants() -> None:
    said = " ".join(cautions(pattern_of(ROUNDS)))
    assert all(
        word in said for word in ("Rotary cutter", "Iron", "Needle", "small parts", "infants", "local rules")
    )


def test_seam_and_usable_width_are_stated() -> None:
    pattern = pattern_of(ROUNDS)
    assert any('¼"' in said for said in assumptions(pattern))
    assert (
        width_line(pattern)
        == 'Usable width of fabric 40"; seam allowance ¼", included in all cut sizes; fused shapes have none.'
    )


def test_the_amounts_to_buy_are_those_of_the_plans() -> None:
    pattern = pattern_of(ROUNDS)
    amounts = [need.amount for need in cloth_needs(pattern)]
    assert amounts == [show_cloth(plan.bought, Units.INCH) for plan in pattern.materials.cloth]
    assert all(need.note.startswith("usable width ") for need in cloth_needs(pattern))


def test_thread_is_an_estimate_and_says_so() -> None:
    threads = [need for need in other_needs(pattern_of(ROUNDS)) if need.what.startswith("Thread")]
    assert len(threads) == 2
    assert all(need.note.startswith("an estimate") and need.amount.startswith("about ") for need in threads)


def test_the_ruler_covers_the_master() -> None:
    assert any('Square-up ruler that covers 5½"' in said for said in notions(pattern_of(ROUNDS)))


def test_a_plan_says_its_bound_and_what_the_plain_rule_needs() -> None:
    pattern = pattern_of(ROUNDS)
    plan = replace(
        pattern.materials.plan("C"), cut_length=inches(30), hand_rule=inches(36), bought=inches(36)
    )
    least = replace(plan, lower_bound=inches(29))
    assert plan_line(pattern, least).startswith(
        'Bought 1 yard: cuts 30", slack 6". No plan can be shorter than 29": this one is at most 3.5 % longer; the '
        'plain rule would take 36".'
    )
    cheapest = replace(plan, lower_bound=inches(29), bought=inches(31, 1, 2))
    assert "No plan needs less than ⅞ yard; the plain rule would take" in plan_line(pattern, cheapest)
    shortest = replace(plan, lower_bound=inches(30), hand_rule=inches(30))
    assert "No plan is shorter; the plain rule takes as much." in plan_line(pattern, shortest)
    assert "one row" in plans_explained(pattern)[0]


def test_the_backing_is_told_both_ways() -> None:
    wide = Changed(ROUNDS).with_('kind = "straight"', 'kind = "straight"\nacross = 7\ndown = 10').text
    pattern = pattern_of(wide)
    (plan,) = (plan for plan in pattern.materials.cloth if plan.panels)
    assert plan_line(pattern, plan).endswith(
        ' The backing takes (2) lengths of 81", horizontal seam; '
        'turned, it would take (3) lengths of 71", vertical seams.'
    )


@pytest.mark.parametrize(("across", "told"), [(1, False), (2, False), (4, True), (20, False)])
def test_a_wide_backing_is_told_where_it_needs_no_seam_and_the_panels_do(across: int, told: bool) -> None:
    repeats = f'kind = "straight"\nacross = {across}\ndown = {2 * across}'
    pattern = pattern_of(Changed(ROUNDS).with_('kind = "straight"', repeats).text)
    notes = " ".join(need.note for need in cloth_needs(pattern))
    assert ("without a seam, the backing takes" in notes) is told


def test_what_is_still_bought_beside_a_wide_backing_holds_the_other_cuts_and_their_slack() -> None:
    repeats = 'kind = "straight"\nacross = 4\ndown = 8'
    pattern = pattern_of(Changed(ROUNDS).with_('kind = "straight"', repeats).text)
    (plan,) = (plan for plan in pattern.materials.cloth if plan.panels)
    (note,) = (need.note for need in cloth_needs(pattern) if "without a seam" in need.note)
    others = sum((group.height * group.strips for group in plan.strips), inches(0))
    wanted = others + pattern.design.making.slack
    assert others == plan.cut_length - sum(map(panels_length, plan.panels)) > 0
    assert note.endswith(f", and then only {show_cloth(buy_up(wanted, Units.INCH), Units.INCH)} of this")


def test_a_curve_traced_as_drawn_has_a_peak_and_one_sewn_true_has_none() -> None:
    drawn, true = pattern_of(ROUNDS), pattern_of(Changed(ROUNDS).with_('"as drawn"', '"sewn true"').text)
    assert "soft peak of about" in " ".join(curve_facts(drawn, drawn.blocks.masters[0]))
    assert "smoothly" in " ".join(curve_facts(true, true.blocks.masters[0]))


def test_every_measure_of_the_making_is_on_the_last_page() -> None:
    pattern = pattern_of(ROUNDS)
    assert len(defaults(pattern)) == 21 + len(pattern.design.recipes)
    assert ("Version", "1.0") in imprint(pattern)
    assert ("Corrections and questions", "corrections@marram.example") in imprint(pattern)


def test_thread_says_how_many_bobbins_to_wind_and_what_is_taken_for_granted() -> None:
    thin = pattern_of(
        Changed(ROUNDS).with_("[binding]", "[making.stitch]\nlayers = 3\nbobbin = '1 yd'\n\n[binding]").text
    )
    lines = thin.materials.stitching
    notes = [need.note for need in other_needs(thin) if need.what.startswith("Thread")]
    assert [note.rpartition("; ")[2] for note in notes] == [
        f"wind {math.ceil(line.thread / 72)} bobbin{'s' if line.thread > 72 else ''} of it" for line in lines
    ]
    first, second = estimates(thin)
    assert "3 layers of cloth, each 0.3 mm thick; 15 % is added" in first
    assert second.endswith("a full one is taken to hold about 1 yard.")


def test_a_directional_print_is_announced() -> None:
    striped = Changed(ROUNDS).with_('role = "border"', 'role = "border"\ndirection = "two-way"').text
    assert not any("direction" in said for said in assumptions(pattern_of(ROUNDS)))
    assert any(
        said.startswith("Fabric C (brick, border) has a print") for said in assumptions(pattern_of(striped))
    )


def test_a_recipe_that_only_makes_motifs_has_no_master_to_trim_and_no_ruler() -> None:
    pattern = example("the-walled-garden")
    fused = {master.recipe for master in pattern.bill.masters}
    trimmed = [
        name.rpartition(", ")[2] for name, _ in defaults(pattern) if name.startswith("Trimmed off each")
    ]
    assert set(trimmed) == fused < {recipe.name for recipe in pattern.design.recipes}


def test_a_ruler_is_asked_for_that_covers_what_is_fused() -> None:
    alone = replace(pattern_of(ROUNDS), bill=replace(pattern_of(ROUNDS).bill, masters=()))
    assert any(said.startswith("Ruler, rotary cutter") for said in notions(alone))


@pytest.mark.parametrize(
    ("degrees", "words"),
    [
        (0, ""),
        (360, ""),
        (15, "turned 15° clockwise"),
        (345, "turned 15° anticlockwise"),
        (-70, "turned 70° anticlockwise"),
        (180, "turned upside down"),
    ],
)
def test_a_turn_is_told_the_shorter_way_round(degrees: float, words: str) -> None:
    assert turned_by(degrees) == words


def test_as_many_tracings_as_are_said_fit_across_the_web_as_they_are_printed() -> None:
    pattern = example("hearts-over-the-wall")
    traced = [step for step in pattern.steps.steps if isinstance(step.action, TraceRings)]
    assert traced
    for step in traced:
        assert isinstance(step.action, TraceRings)
        size = tell(step, pattern).line.partition("each takes ")[2].partition('"')[0]
        assert step.action.per_row * parse_length(size, Units.INCH) <= pattern.materials.web.web_width


def test_lengths_of_a_backing_are_joined_along_their_selvages() -> None:
    pattern = example("gates-of-the-orchard")
    told = [tell(s, pattern) for s in pattern.steps.steps if isinstance(s.action, JoinPanels)]
    assert any("along their selvage edges" in " ".join(each.sentences) for each in told)


def test_pieces_trimmed_to_fit_are_not_said_to_be_larger_than_they_are() -> None:
    pattern = example("vines-at-the-window")
    told = [tell(s, pattern) for s in pattern.steps.steps if isinstance(s.action, TrimToFit)]
    assert told
    assert all("where one cannot" in each.sentences[0] for each in told)


def example(name: str) -> Pattern:
    file = Path(__file__).parents[3] / "examples" / f"{name}.toml"
    pattern = run(file.read_bytes(), file.name).pattern
    assert pattern is not None
    return pattern

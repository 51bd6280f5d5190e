"""Whatever is chosen at the start, what begins can be sewn."""

from __future__ import annotations

import itertools

import pytest

from quarterturn.design import BEDS, Cell, Severity, StraightSet, read_design
from quarterturn.measure import Units, parse_length, show_length
from quarterturn.pipeline import run
from quarterturn.setting.known import known_names
from quarterturn.studio import views
from quarterturn.studio.acts import RefusedError
from quarterturn.studio.stages import Made, Stages
from quarterturn.studio.views.beginning import PALETTES, NewDesign, beginning, begun
from tests.studio.views.view_cases import MADE

BEGINNINGS = [
    *(NewDesign(title="New", setting=name, colours="kiln") for name in known_names()),
    *(NewDesign(title="New", units=units, bed="queen", setting="fans") for units in ("inch", "metric")),
    *(
        NewDesign(title="New", setting="shells", block=block, size=("60 in", "72 in"))
        for block in ('3"', "10 cm")
    ),
    *(NewDesign(title="New", colours=name) for name in PALETTES),
    NewDesign(title="New", units="metric", block="125 mm"),
]


@pytest.mark.parametrize("new", BEGINNINGS, ids=str)
def test_whatever_is_chosen_a_new_design_can_be_sewn(new: NewDesign) -> None:
    job = run(beginning(new))
    assert job.pattern is not None
    assert [f.code for f in job.findings if f.severity is Severity.STOPS] == []
    if new.bed:
        bed = job.pattern.design.bed
        assert bed is not None
        assert (bed.width, bed.length) == BEDS[new.bed]
        assert job.pattern.setting.width >= bed.wanted[0]


@pytest.mark.parametrize(
    ("size", "block"),
    [
        (("40 in", "48 in"), "5 in"),
        (("48 in", "60 in"), "4 in"),
        (("30 in", "72 in"), "3 in"),
        (("90 in", "90 in"), "6 in"),
    ],
)
def test_a_size_of_ones_own_is_met_by_whole_circles_and_the_border(size: tuple[str, str], block: str) -> None:
    """Circles come in pairs of units and the border has one width: so far and no farther the quilt may be off."""
    new = NewDesign(size=size, block=block, colours="kiln")
    made = Stages().at(beginning(new)).size()
    wanted = [parse_length(each, Units.INCH) for each in size]
    off = [
        abs(got - want) for got, want in zip((made.setting.width, made.setting.height), wanted, strict=True)
    ]
    assert max(off) <= parse_length(block, Units.INCH) / 2
    told = begun(new, made)
    assert (told.width, told.height) == (
        show_length(made.setting.width, Units.INCH),
        show_length(made.setting.height, Units.INCH),
    )
    assert told.count == len(made.setting.units)


def test_a_known_setting_comes_as_near_to_a_size_as_its_repeats_can() -> None:
    new = NewDesign(setting="shells", size=("60 in", "72 in"), block="4 in")
    made = Stages().at(beginning(new)).size()
    assert (made.setting.width, made.setting.height) == (64, 72)


def test_a_quilt_is_refused_only_for_the_units_that_it_has() -> None:
    """Shells repeat by four: 24 times across and down they are 96 rows."""
    design = read_design(
        beginning(NewDesign(setting="shells", size=("390 in", "390 in"), block="4 in"))
    ).design
    assert design
    assert isinstance(design.setting, StraightSet)
    assert max(design.setting.size) <= 100


def test_the_smallest_has_a_circle_within_the_ring() -> None:
    made = Stages().at(beginning(NewDesign(size=("9 in", "9 in"), block="3 in"))).size()
    assert len(made.setting.units) == 16
    assert made.setting.width == made.setting.height
    assert made.setting.width < 4 * 3 + 2 * 2  # its border is narrowed as far as a border goes


def test_all_colours_of_a_palette_are_used() -> None:
    design = read_design(beginning(NewDesign(colours="kiln", size=("60 in", "72 in")))).design
    assert design
    assert {fabric.colour for fabric in design.fabrics} == set(PALETTES["kiln"].values())
    assert isinstance(design.setting, StraightSet)
    codes = {cell.code for row in design.setting.cells for cell in row if isinstance(cell, Cell)}
    assert codes == {"a", "b", "c", "d"}


@pytest.mark.parametrize(
    "new",
    [
        NewDesign(setting="no such"),
        NewDesign(colours="no such"),
        NewDesign(bed="no such"),
        NewDesign(block="wide"),
        NewDesign(size=("9 in", "tall")),
        NewDesign(size=("5000 in", "60 in")),
        NewDesign(size=("390 in", "390 in"), block='1"'),
        NewDesign(setting="shells", size=("390 in", "390 in"), block='1/4"'),
    ],
)
def test_a_choice_that_is_none_is_refused_by_a_sentence(new: NewDesign) -> None:
    with pytest.raises(RefusedError) as refused:
        beginning(new)
    assert refused.value.sentence.endswith(".")


def test_examples_are_told_by_title_and_their_pictures_drawn() -> None:
    texts = {name: made.text for name, made in itertools.islice(MADE.items(), 2)}
    start = views.start_view((), texts)
    assert [each.name for each in start.examples] == sorted(texts)
    assert all(each.title for each in start.examples)
    made: Made = MADE[next(iter(texts))]
    assert views.picture_svg(made.size()).startswith("<svg ")


def test_a_new_design_calls_its_fabrics_by_their_colours() -> None:
    for name, colours in PALETTES.items():
        design = read_design(beginning(NewDesign(colours=name))).design
        assert design
        assert len({fabric.name for fabric in design.fabrics}) == len(design.fabrics)
        assert all(colours[fabric.name] == fabric.colour for fabric in design.fabrics)


def test_a_quilt_for_a_bed_says_how_far_it_hangs_down() -> None:
    """A queen mattress is 60" × 80" (common practice): what is over its width hangs at the two sides."""
    new = NewDesign(bed="queen", block='6"')
    made = Stages().at(beginning(new)).size()
    told = begun(new, made)
    assert told.sides == show_length((made.setting.width - 60) / 2, Units.INCH)
    foot, pillows = (parse_length(each, Units.INCH) if each else 0 for each in (told.foot, told.pillows))
    assert foot + pillows == made.setting.height - 80

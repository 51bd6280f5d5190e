"""Cloth in pieces in a design file: what the words mean, what is told of mistakes, and the way back into text."""

from __future__ import annotations

import pytest

from quarterturn.design import Design, Fabric, Parcel, Precut, format_design, read_design
from quarterturn.measure import Length, inches, mm
from tests.samples import ROUNDS

OYSTER = 'colour = "#efe6d8"'


def text(lines: str, units: str = "inch") -> str:
    return ROUNDS.replace(OYSTER, f"{OYSTER}\n{lines}").replace('units = "inch"', f'units = "{units}"')


def design(lines: str, units: str = "inch") -> Design:
    reading = read_design(text(lines, units))
    assert reading.design, reading.findings
    return reading.design


def oyster(lines: str, units: str = "inch") -> Fabric:
    return design(lines, units).fabric("A")


def size(parcel: Parcel | None) -> tuple[Length, Length, Length]:
    assert parcel
    return parcel.width, parcel.height, parcel.squaring


WORDS = [
    ("fat quarter", "inch", (inches(21), inches(18), inches(1))),
    ("fat eighth", "inch", (inches(21), inches(9), inches(1))),
    ("10 inch square", "inch", (inches(10), inches(10), inches(0))),
    ("2 1/2 inch strip", "inch", (inches(40), inches(2, 1, 2), inches(0))),
    ("fat quarter", "metric", (mm(525), mm(500), mm(25))),
    ("fat eighth", "metric", (mm(525), mm(250), mm(25))),
]
"""Fat quarters and eighths: 18" × 21" and 9" × 21" (allpeoplequilt.com); metric, half a metre of 110 cm cut in two."""


@pytest.mark.parametrize(("word", "units", "wanted"), WORDS)
def test_a_word_stands_for_a_size(word: str, units: str, wanted: tuple[Length, ...]) -> None:
    fabric = oyster(f'bought_as = "{word}"', units)
    assert size(fabric.bought_as) == wanted
    assert fabric.bought_as
    assert fabric.bought_as.precut is Precut(word)


def test_strips_are_as_long_as_their_fabric_is_wide() -> None:
    assert size(oyster('width = \'42"\'\nbought_as = "2 1/2 inch strip"').bought_as)[0] == 42


def test_a_fabric_comes_off_the_bolt_if_nothing_else_is_said() -> None:
    assert oyster("").bought_as is oyster('bought_as = "bolt"').bought_as is None
    assert oyster("").on_hand == ()


def test_a_precut_may_have_a_size_of_its_own() -> None:
    own = oyster('bought_as = { name = "fat quarter", width = \'20"\', squaring = 0 }').bought_as
    assert size(own) == (inches(20), inches(18), inches(0))


def test_squaring_is_that_of_the_making_where_a_piece_states_none() -> None:
    shelf = "on_hand = [{ width = '9\"', height = '8\"', count = 2 }, { width = '9\"', height = '8\"', squaring = 0 }]"
    made = design(f'{shelf}\nbought_as = "fat quarter"')
    changed = read_design(
        text(f'{shelf}\nbought_as = "fat quarter"') + "\n[making]\npiece_squaring = '1/2\"'\n"
    ).design
    assert changed
    assert [each.squaring for each in made.fabric("A").on_hand] == [1, 0]
    assert [each.count for each in made.fabric("A").on_hand] == [2, 1]
    assert [each.squaring for each in changed.fabric("A").on_hand] == [inches(0, 1, 2), 0]
    assert size(changed.fabric("A").bought_as)[2] == inches(0, 1, 2)


MISTAKES = [
    ('bought_as = "fat quater"', "unknown-word", "fabrics.A.bought_as"),
    ("bought_as = 3", "wrong-type", "fabrics.A.bought_as"),
    ("bought_as = { width = '9\"' }", "missing-key", "fabrics.A.bought_as.height"),
    (
        "bought_as = { width = '9\"', height = '9\"', heigth = 1 }",
        "unknown-key",
        "fabrics.A.bought_as.heigth",
    ),
    ("bought_as = { width = '9 feet', height = '9\"' }", "bad-length", "fabrics.A.bought_as.width"),
    (
        "bought_as = { width = '2\"', height = '9\"', squaring = '3\"' }",
        "size-out-of-range",
        "fabrics.A.bought_as",
    ),
    ("on_hand = [{ width = '9\"' }]", "missing-key", "fabrics.A.on_hand.0.height"),
    ("on_hand = [{ width = '9\"', height = '1\"' }]", "size-out-of-range", "fabrics.A.on_hand.0.height"),
    (
        "on_hand = [{ width = '9\"', height = '9\"', count = 0 }]",
        "count-out-of-range",
        "fabrics.A.on_hand.0.count",
    ),
    ("on_hand = ['9\"']", "wrong-type", "fabrics.A.on_hand.0"),
    (f"on_hand = [{', '.join(21 * ['{ width = 9, height = 9 }'])}]", "too-many", "fabrics.A.on_hand"),
]


@pytest.mark.parametrize(
    ("lines", "code", "key"), MISTAKES, ids=[f"{code} {key}" for _, code, key in MISTAKES]
)
def test_a_mistake_is_told_at_its_key(lines: str, code: str, key: str) -> None:
    reading = read_design(text(lines))
    assert [(finding.code, finding.place.key) for finding in reading.findings] == [(code, key)]
    assert reading.findings[0].place.line is not None
    assert reading.design is None


WAYS = [
    'bought_as = "fat quarter"',
    'bought_as = "2 1/2 inch strip"',
    'bought_as = { name = "fat quarter", width = \'20"\' }',
    "bought_as = { width = '27\"', height = '22 1/2\"', squaring = 0 }",
    "bought_as = { name = \"half yard\", width = '40\"', height = '18\"' }",
    "on_hand = [{ width = '21\"', height = '17 1/2\"', count = 3 }, { width = '9\"', height = '8\"' }]",
]


@pytest.mark.parametrize("units", ["inch", "metric"])
@pytest.mark.parametrize("lines", WAYS)
def test_a_design_is_written_as_it_was_read(lines: str, units: str) -> None:
    made = design(lines, units)
    assert read_design(format_design(made)).design == made


HOMEWORK = (
    "Choose from `cutting`, `preparing the shapes`, `fusing`, `stitching`, `cutting apart`, `panels`, `assembly`, "
    "`borders` or `finishing`."
)

REMEDIES = [
    ('bought_as = "fat quater"', "Did you mean `fat quarter`?"),
    (
        "bought_as = 3",
        "Choose from `bolt`, `fat quarter`, `fat eighth`, `10 inch square` or `2 1/2 inch strip`.",
    ),
    ("strip_heights = 3", "Write strip_heights = ['2 1/2\"', '5\"']."),
    ("strips = [{ height = '5\"', pieces = [1] }]", 'Write pieces = ["A1", "A3"].'),
    ('strips = [{ height = \'5"\', pieces = "A1" }]', 'Write pieces = ["A1", "A3"].'),
    ("[class]\nhomework = ['cutting', 4]", HOMEWORK),
    ("[making]\nweb_sheet = '9\"'", "Write web_sheet = ['9\"', '12\"']."),
]


@pytest.mark.parametrize(("lines", "remedy"), REMEDIES, ids=[lines for lines, _ in REMEDIES])
def test_a_remedy_for_a_wrong_kind_names_what_may_stand_there(lines: str, remedy: str) -> None:
    made = text("") + f"\n{lines}\n" if lines.startswith("[") else text(lines)
    (finding,) = (each for each in read_design(made).findings if each.code in ("wrong-type", "unknown-word"))
    assert finding.remedy == remedy
    assert "must be ," not in finding.sentence


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ("price = nan", "`price` must be a number, and here it is no finite number."),
        ("[making]\nlayers = 2.5", "`layers` must be a whole number, and here it is no whole number."),
        ("[making]\nweb_sheet = ['9\"']", "A sheet has a width and a height, and here it has 1 size."),
    ],
)
def test_a_value_of_a_wrong_kind_is_told_in_whole_words(lines: str, said: str) -> None:
    made = text("") + f"\n{lines}\n" if lines.startswith("[") else text(lines)
    (finding,) = read_design(made).findings
    assert finding.sentence == said

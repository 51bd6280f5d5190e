"""The check of beds fires where a quilt differs from what its bed wants, and tells what comes nearest."""

from __future__ import annotations

import pytest

from quarterturn.proof import CHECKS
from tests.proof.checks.sound import Spoil, found, text
from tests.samples import pattern_of
from tests.section_texts import NESTED, ON_POINT, PIECED


def bed(lines: str) -> Spoil:
    """Return the sound pattern, which finishes 20" × 20", meant for a bed."""
    return text(("[binding]", f"[sizes.original]\n{lines}\n\n[binding]"))


FIRES: dict[str, Spoil] = {"bed-missed": bed('bed = "queen"')}
PASSES: dict[str, Spoil] = {
    "bed-missed": bed("mattress = ['10\"', '12\"']\ndrop = '6\"'"),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def told(lines: str) -> tuple[str, str, str]:
    """Return key, sentence and remedy of the one finding."""
    (check,) = [check for check in CHECKS if check.code == "bed-missed"]
    (finding,) = check.run(bed(lines)())
    return finding.place.key, finding.sentence, finding.remedy


def test_it_says_by_how_much_and_what_comes_nearest() -> None:
    assert told('bed = "queen"\ntuck = \'10"\'') == (
        "sizes.original",
        'The quilt finishes 20" × 20". A queen bed of 60" × 80" with a drop of 12" and a tuck of 10" wants '
        '84" × 102": the quilt is 64" narrower and 82" shorter, and may differ by 2".',
        'Lay the map 5 across and 6 down, which gives 84" × 100"; or state another drop.',
    )


def test_a_border_can_make_the_difference() -> None:
    assert told("mattress = ['30\"', '45\"']\ndrop = '0\"'\nwithin = '1\"'")[2] == (
        'Lay the map 1 across and 2 down, with an outermost border 6¾" wide, which gives 29½" × 45½"; '
        "or state another drop."
    )


def test_where_nothing_comes_nearer_it_says_so() -> None:
    assert told("mattress = ['24\"', '16\"']\ndrop = '0\"'")[2].startswith("No other number of repeats")


def test_a_quilt_that_is_too_large_is_told_as_well() -> None:
    assert told("mattress = ['12\"', '24\"']\ndrop = '0\"'")[1].endswith(
        'the quilt is 8" wider and 4" shorter, and may differ by 2".'
    )


BORDERED = NESTED.replace("[binding]", "[[borders]]\nfabric = 'C'\nwidth = '2\"'\n\n[binding]")
"""Columns of 35" × 24", and a border."""


@pytest.mark.parametrize(
    ("quilt", "mattress", "remedy"),
    [
        (
            ON_POINT,
            "['14\"', '17\"']",
            'A setting on point has no repeats. Make the outermost border 4¼" wide, which gives 14⅛" × 17"; '
            "or state another drop.",
        ),
        (
            ON_POINT,
            "['60\"', '80\"']",
            "A setting on point has no repeats. Make the map larger, or state another drop or `within`.",
        ),
        (
            BORDERED,
            "['24\"', '20\"']",
            "A setting of columns has no repeats. Make its parts smaller, or state another drop or `within`.",
        ),
        (
            PIECED,
            "['10\"', '20\"']",
            "The pieced border is as long as these repeats of the map and no others. "
            "Make the map and its borders larger, or state another drop or `within`.",
        ),
    ],
)
def test_a_quilt_without_repeats_is_sent_to_its_border_or_its_map(
    quilt: str, mattress: str, remedy: str
) -> None:
    (check,) = [check for check in CHECKS if check.code == "bed-missed"]
    meant = f"[sizes.original]\nmattress = {mattress}\ndrop = '0\"'\n\n[binding]"
    (finding,) = check.run(pattern_of(quilt.replace("[binding]", meant)))
    assert finding.remedy == remedy


def test_a_way_in_which_it_fits_is_left_out() -> None:
    sentence = told("mattress = ['14\"', '20\"']\ndrop = '0\"'")[1]
    assert sentence.endswith('the quilt is 6" wider, and may differ by 2".')

"""Each check of the words around the pattern fires on its fault, and lets its near miss pass."""

from __future__ import annotations

import pytest

from tests.proof.checks.sound import Spoil, found, text

FIRES: dict[str, Spoil] = {
    "imprint-missing": text(('contact = "corrections@marram.example"\n', ""), ('version = "1.0"\n', "")),
    "about-missing": text(('about = "Pools on the sand, and sand in the pools."\n', "")),
    "placeholder-left": text(
        ('contact = "corrections@marram.example"', 'contact = "Where to write about mistakes"')
    ),
    "skill-word": text(("[binding]", '[house]\nskill = "ninja"\n\n[binding]')),
    "role-missing": text(('role = "pools"\n', "")),
    "name-unclear": text(('name = "ink"', 'name = "No. 30150-17"')),
}
PASSES: dict[str, Spoil] = {
    "skill-word": text(("[binding]", '[house]\nskill = "advanced"\n\n[binding]')),
    "name-unclear": text(('name = "ink"', 'name = "ink 12"')),
}


@pytest.mark.parametrize("code", FIRES)
def test_fires(code: str) -> None:
    assert found(code, FIRES[code]())


@pytest.mark.parametrize("code", PASSES)
def test_a_near_miss_passes(code: str) -> None:
    assert found(code, PASSES[code]()) == []


def test_what_the_back_cover_lacks_is_told_in_one_sentence() -> None:
    (sentence,) = found("imprint-missing", FIRES["imprint-missing"]())
    assert sentence.startswith("The back cover lacks `contact` and `version`:")

"""What is cut and sewn for each kind of section, kept as texts."""

from __future__ import annotations

import pytest

from quarterturn.pieces import bill_text
from quarterturn.steps import steps_text
from tests.conftest import Golden
from tests.samples import pattern_of
from tests.section_texts import TEXTS


@pytest.mark.parametrize("name", TEXTS)
def test_bill_and_steps(name: str, golden: Golden) -> None:
    pattern = pattern_of(TEXTS[name])
    units = pattern.design.units
    golden.check(f"{name}.txt", bill_text(pattern.bill, units) + "\n" + steps_text(pattern.steps, units))

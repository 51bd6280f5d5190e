"""Sizes are given other names."""

from __future__ import annotations

import pytest

from quarterturn.design import Design, read_design
from quarterturn.studio.acts import RefusedError, do
from quarterturn.studio.acts.putting import Puts
from quarterturn.studio.acts.sizes import AddSize, RenameSize
from quarterturn.studio.stages import Stages
from tests.samples import ROUNDS


def design_of(text: str) -> Design:
    design = read_design(text).design
    assert design
    return design


@pytest.fixture
def text() -> str:
    """Return a design of two sizes, with kits of its own size and a class in the other."""
    values = {"size": "crib", "kits.size": "crib", "kits.count": 2, "class.size": "wall", "class.students": 6}
    added = do(AddSize(size="wall", changes={"borders.0.width": '3"'}), ROUNDS, Stages()).made.text
    return do(Puts(values={**values, "class.hours": 3}), added, Stages()).made.text


def test_the_own_size_is_called_otherwise_where_kits_are_packed_too(text: str) -> None:
    design = design_of(do(RenameSize(size="crib", to="cot"), text, Stages()).made.text)
    assert design.size == "cot"
    assert design.selling.kits
    assert design.selling.kits.size == "cot"
    assert [each.size for each in design.sizes] == ["wall"]


def test_another_size_keeps_what_differs_in_it(text: str) -> None:
    before = design_of(text)
    design = design_of(do(RenameSize(size="wall", to="hanging"), text, Stages()).made.text)
    assert [each.size for each in design.sizes] == ["hanging"]
    assert design.sizes[0].borders == before.sizes[0].borders != design.borders
    assert design.selling.lesson
    assert design.selling.lesson.size == "hanging"


@pytest.mark.parametrize(("size", "to"), [("none", "cot"), ("crib", "wall")])
def test_a_name_that_is_not_or_is_taken_is_refused(text: str, size: str, to: str) -> None:
    with pytest.raises(RefusedError, match="There is"):
        do(RenameSize(size=size, to=to), text, Stages())

"""Dotted keys."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import dotted, parts_of


def test_a_key_is_written_as_toml_would_write_it() -> None:
    assert dotted("recipes", "lantern", "trim") == "recipes.lantern.trim"
    assert dotted("recipes", "big lantern", "trim") == 'recipes."big lantern".trim'
    assert dotted("borders", 0, "width") == "borders.0.width"


@given(st.lists(st.text(st.characters(codec="utf-8"), max_size=8), min_size=1, max_size=4))
def test_splitting_undoes_joining(parts: list[str]) -> None:
    assert list(parts_of(dotted(*parts))) == parts


@pytest.mark.parametrize("text", ["", "a..b", ".a", "a.", "a b", 'a."b'])
def test_what_is_no_dotted_key_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="not a dotted key"):
        parts_of(text)

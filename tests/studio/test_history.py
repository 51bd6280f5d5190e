"""A step keeps what it took out and put in, so that all can be undone and redone."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterturn.studio.history import History, Splice, Step, splice

TEXTS = st.text("ab\n", max_size=12)


@given(TEXTS, TEXTS)
def test_a_change_leads_from_one_text_to_the_other_and_back(before: str, after: str) -> None:
    change = splice(before, after)
    assert change.done(before) == after
    assert change.inverse.done(after) == before


@given(TEXTS, TEXTS)
def test_a_change_neither_begins_nor_ends_with_what_stays(before: str, after: str) -> None:
    change = splice(before, after)
    assert not (change.cut and change.put and change.cut[0] == change.put[0])
    assert not (change.cut and change.put and change.cut[-1] == change.put[-1])


@given(st.lists(TEXTS, min_size=1, max_size=8))
def test_all_that_was_done_is_undone_and_redone(texts: list[str]) -> None:
    history = History("")
    for text in texts:
        history.do(Step("write", splice(history.text, text)))
    for text in ["", *texts[:-1]][::-1]:
        assert history.undo() == "write"
        assert history.text == text
    for text in texts:
        history.redo()
        assert history.text == text
    assert history.revision == 3 * len(texts)


def test_a_new_step_takes_the_place_of_what_was_undone() -> None:
    history = History("a")
    history.do(Step("one", splice("a", "b")))
    history.undo()
    history.do(Step("two", splice("a", "c")))
    assert (history.text, history.undone) == ("c", [])
    with pytest.raises(IndexError):
        history.redo()


@pytest.mark.parametrize(
    "change", [Splice(0, "b", ""), Splice(1, "a", ""), Splice(-1, "", "x"), Splice(5, "", "")]
)
def test_a_change_of_another_text_is_refused(change: Splice) -> None:
    with pytest.raises(ValueError, match="not the one"):
        change.done("a")

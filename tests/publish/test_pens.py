"""The drawing protocol."""

from __future__ import annotations

import pytest

from quarterturn.geometry import Motion, disc, region_bounds
from quarterturn.publish import Area, Ink, Recorder, Sheet, Text, Use, draw, laid_out
from tests.publish.sheets import every_mark

DOT = Area(disc(1.0, 3 + 0j), Ink("#000000"))


def sheet_of(*marks: Use, symbol: tuple[Area | Text | Use, ...] = (DOT,)) -> Sheet:
    return Sheet(10, 10, marks, "title", "alt", {"s": symbol})


def test_a_pen_is_told_the_symbols_first_and_every_mark_in_order() -> None:
    recorder = Recorder()
    draw(every_mark(), recorder)
    verbs = [told[0] for told in recorder.told]
    assert verbs == ["symbol", "area", "area", "stroke", "stroke", "text", "use", "use"]


def test_a_symbol_laid_out_is_moved_as_its_use_says() -> None:
    [mark] = laid_out(sheet_of(Use("s", Motion(1j, 5 + 5j))))
    assert isinstance(mark, Area)
    assert region_bounds(mark.region).centre == pytest.approx(5 + 8j)


def test_text_in_a_symbol_is_turned_with_it() -> None:
    [mark] = laid_out(sheet_of(Use("s", Motion(1j, 5 + 5j)), symbol=(Text(1 + 0j, "a", turn=10),)))
    assert isinstance(mark, Text)
    assert mark.at == pytest.approx(5 + 6j)
    assert mark.turn == pytest.approx(100)


def test_text_is_never_mirrored() -> None:
    sheet = sheet_of(Use("s", Motion(mirrored=True)), symbol=(Text(0j, "a"),))
    with pytest.raises(AssertionError, match="mirrored"):
        list(laid_out(sheet))


def test_a_symbol_may_not_use_another() -> None:
    sheet = sheet_of(Use("s", Motion()), symbol=(Use("s", Motion()),))
    with pytest.raises(AssertionError, match="another"):
        list(laid_out(sheet))

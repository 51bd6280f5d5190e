"""Lettering on templates lies clear of the lines, whatever the outline."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.geometry import OUTLINES, Region, rectangle
from quarterturn.publish.clearing import are_inside, is_clear, lines_of, text_box
from quarterturn.publish.shape_marks import TRUE_SIZE, template_marks, template_of
from quarterturn.publish.sheet import Mark, Text
from tests.samples import HEARTS, Changed, design_of

CRESCENT = "M 1.2 -2.75 A 2.9 2.9 0 1 0 1.2 2.75 A 3.4 3.4 0 0 1 1.2 -2.75 Z"
COMB = "M 0 0 H 4 V 4 H 3.5 V 1 H 3 V 4 H 2.6 V 1 H 2.2 V 4 H 1.8 V 1 H 1.4 V 4 H 0 Z"
STAR = "M 2 0 L 2.5 1.4 L 4 1.5 L 2.8 2.4 L 3.2 4 L 2 3 L .8 4 L 1.2 2.4 L 0 1.5 L 1.5 1.4 Z"
OWN = {"crescent": CRESCENT, "comb": COMB, "star": STAR}


def letters_and_lines(outline: str, width: str, turn: int) -> tuple[list[Text], tuple[Region, ...]]:
    """Draw the template of an outline; return its lettering and the lines that it must not cross."""
    own = "".join(f"[outlines.{name}]\npath = '{path}'\n\n" for name, path in OWN.items())
    text = Changed(HEARTS).with_("[recipes.heart]", f"{own}[recipes.heart]")
    text = text.with_("finished = '2\"'", "finished = '6\"'").with_(
        'outline = "heart", width = \'3 3/4"\'', f'outline = "{outline}", width = \'{width}"\', turn = {turn}'
    )
    master = draft_blocks(design_of(text.with_("finished = '2\"'", "finished = '6\"'").text)).masters[0]
    template = template_of(master.shape, master.cuts)
    marks: tuple[Mark, ...] = template_marks(template, '5" × 5"', everywhere=True)
    shape = template.shape
    regions = (shape.ring_out, Region((shape.traced,)), shape.ring_in)
    return [mark for mark in marks if isinstance(mark, Text)], tuple(TRUE_SIZE.region(r) for r in regions)


@pytest.mark.parametrize("turn", [0, 1, 2])
@pytest.mark.parametrize("width", ["3 1/2", "5 1/4"])
@pytest.mark.parametrize("outline", [*(name for name in OUTLINES if name != "circle"), *OWN])
def test_no_line_of_a_template_runs_through_its_lettering(outline: str, width: str, turn: int) -> None:
    texts, regions = letters_and_lines(outline, width, turn)
    lines = lines_of(regions)
    assert [text.text for text in texts if not is_clear(text, lines)] == []
    assert {"cut 1", "cut 2", "grain"} <= {text.text for text in texts}


def test_the_box_of_a_text_turns_with_it() -> None:
    upright = text_box(Text(0j, "fox", 10.0, "middle"))
    turned = text_box(Text(0j, "fox", 10.0, "middle", turn=90.0))
    assert [corner * 1j for corner in upright] == pytest.approx(turned)
    assert upright[0].real == -upright[1].real < 0
    assert upright[0].imag < 0 < upright[2].imag


def test_lettering_is_inside_only_as_a_whole() -> None:
    room = Region((rectangle(0, 0, 20, 10),))
    assert are_inside([Text(1 + 8j, "fox", 5.0)], room)
    assert not are_inside([Text(15 + 8j, "fox", 5.0)], room)

"""The quick effort: plans that can be carried out, with a bound that holds, whose stages ask no solver."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from quarterturn.materials import QUICK
from quarterturn.pipeline import run
from quarterturn.proof import prove

EXAMPLES = Path(__file__).parents[2] / "examples"
SOME = ["foxes-on-the-heath", "gates-of-the-orchard", "pocket-of-moons", "lanterns-on-the-quay"]


@pytest.mark.parametrize("name", SOME)
def test_a_quick_plan_can_be_carried_out_and_lies_between_bound_and_hand_rule(name: str) -> None:
    text = (EXAMPLES / f"{name}.toml").read_text("utf-8")
    quick, proved = run(text, effort=QUICK).pattern, run(text).pattern
    assert quick is not None
    assert proved is not None
    assert prove(quick).holds
    for fast, best in zip(quick.materials.cloth, proved.materials.cloth, strict=True):
        assert fast.lower_bound <= fast.cut_length <= fast.hand_rule
        assert fast.bought >= best.bought


def test_a_quick_plan_asks_no_solver() -> None:
    code = (
        "import sys; from pathlib import Path; from quarterturn.pipeline import run;"
        "from quarterturn.materials import QUICK;"
        f"run(Path({str(EXAMPLES / 'kites-over-the-moor.toml')!r}).read_text('utf-8'), effort=QUICK);"
        "print('highspy' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"

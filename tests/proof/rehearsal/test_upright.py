"""Prints that must stand upright in sections: the rehearsal finds them askew where the maps do, and nowhere else."""

from __future__ import annotations

import pytest

from quarterturn.blocks import draft_blocks
from quarterturn.pipeline import make_pattern
from quarterturn.proof import prove
from quarterturn.setting import map_findings
from tests.samples import design_of
from tests.section_texts import TEXTS


@pytest.mark.parametrize("direction", ["one-way", "two-way"])
@pytest.mark.parametrize("fabric", "ABC")
@pytest.mark.parametrize("name", TEXTS)
def test_prints_stand_upright_where_the_maps_have_no_fault(name: str, fabric: str, direction: str) -> None:
    head = f"[fabrics.{fabric}]\n"
    design = design_of(TEXTS[name].replace(head, f'{head}direction = "{direction}"\nupright = true\n'))
    found = {finding.code for finding in map_findings(design, draft_blocks(design))}
    assert found <= {"print-sideways"}
    assert prove(make_pattern(design)).holds == (not found)

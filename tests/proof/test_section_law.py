"""Whatever sections hold one another: the checks agree with all stages, and what is told can be printed."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings

from quarterturn.design import Design
from quarterturn.pipeline import make_pattern
from quarterturn.proof import check_pattern
from quarterturn.proof.checks.fault import REBUILD
from tests.samples import pattern_of
from tests.section_texts import TEXTS
from tests.trees import tops, turned_whole


@pytest.mark.parametrize("name", TEXTS)
def test_all_stages_agree_on_a_design_of_each_kind(name: str) -> None:
    findings = check_pattern(pattern_of(TEXTS[name]))
    assert [finding.code for finding in findings if finding.remedy == REBUILD] == []


@settings(max_examples=35, suppress_health_check=list(HealthCheck))
@given(tops())
def test_all_stages_agree_whatever_holds_whatever(design: Design) -> None:
    for each in (design, turned_whole(design)):
        findings = check_pattern(make_pattern(each))
        assert [finding for finding in findings if finding.remedy == REBUILD] == []
        for finding in findings:
            assert finding.sentence.isprintable()
            assert finding.remedy.isprintable()

"""What holds between sizes: a quilt that is larger both ways takes no less of a fabric."""

from __future__ import annotations

from quarterturn.design import Finding
from quarterturn.pipeline import run
from tests.proof.checks.sound import SOUND

BORDER = ("width = '2\"'", "width = '7\"'")


def found(sizes: str, *changes: tuple[str, str]) -> list[Finding]:
    text = SOUND
    for before, after in changes:
        text = text.replace(before, after)
    job = run(f"{text}\n{sizes}")
    assert job.patterns
    return [finding for finding in job.findings if finding.code == "larger-takes-less"]


def test_a_larger_size_that_takes_less_is_told_once_at_its_fabric() -> None:
    large = "[sizes.large]\nchanges = { setting.across = 2, setting.down = 2, borders.0.width = '1\"' }"
    (finding,) = found(large, BORDER)
    assert finding.place.key == "fabrics.C"
    assert finding.sentence.startswith('The size original (30" × 30") takes ')
    assert 'larger size large (34" × 34")' in finding.sentence


def test_sizes_that_grow_all_over_are_left_in_peace() -> None:
    assert found("[sizes.large]\nchanges = { setting.across = 2, setting.down = 2 }") == []


def test_a_quilt_that_is_larger_one_way_alone_is_not_compared() -> None:
    runner = "[sizes.runner]\nchanges = { setting.across = 3, borders.0.width = '1\"' }"
    assert found(runner, ("width = '2\"'", "width = '9\"'")) == []


def test_a_fabric_that_a_size_does_without_is_not_compared() -> None:
    bare = '[sizes.large]\nchanges = { setting.across = 3, setting.down = 3, binding.fabric = "A", "borders.0" = {} }'
    assert found(bare, BORDER) == []

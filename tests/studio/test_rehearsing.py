"""A rehearsal in a thread of its own is told as it goes, ends as the rehearsal does, and can be called off."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import cast

import pytest

from quarterturn.studio.papers import Paper
from quarterturn.studio.refusals import BusyError
from quarterturn.studio.rehearsing import WORKING, Progress, Rehearsals
from quarterturn.studio.stages import OneSize, Stages

TEXT = (Path(__file__).parents[2] / "examples" / "pocket-of-moons.toml").read_text(encoding="utf-8")


@dataclass
class Told:
    """Keeps the news. While `free` is not set, whoever tells any has to wait."""

    news: list[dict[str, object]] = field(default_factory=list)
    free: threading.Event = field(default_factory=threading.Event)

    def tell(self, event: str, **facts: object) -> None:
        assert event == "rehearsal"
        assert self.free.wait(60)
        self.news.append(facts)


@dataclass
class OnePaper:
    """As much of an open design as a rehearsal asks for."""

    id: str = "moons"
    news: Told = field(default_factory=Told)


@pytest.fixture
def rehearsals() -> Iterator[Rehearsals]:
    made = Rehearsals()
    yield made
    made.stop()


def size() -> OneSize:
    return Stages().at(TEXT).size()


def ended(rehearsals: Rehearsals, paper: Paper) -> Progress:
    until = time.monotonic() + 60
    while (now := rehearsals.progress(paper)).state in WORKING and time.monotonic() < until:
        time.sleep(0.01)
    return now


def test_a_rehearsal_is_told_from_its_first_step_to_the_comparison(rehearsals: Rehearsals) -> None:
    told = OnePaper()
    paper, one = cast(Paper, told), size()
    assert rehearsals.progress(paper).state == "none"
    told.news.free.set()
    rehearsals.start(paper, 7, one)
    now = ended(rehearsals, paper)
    assert (now.state, now.revision, now.done) == ("done", 7, len(one.steps().steps))
    assert one.proof.holds
    assert one.stages.runs["film"] == one.stages.runs["proof"] == 1
    states = list(dict.fromkeys(facts["state"] for facts in told.news.news))
    assert states == ["running", "comparing", "done"]


def test_a_rehearsal_that_is_called_off_ends_before_it_is_done(rehearsals: Rehearsals) -> None:
    told = OnePaper()
    paper, one = cast(Paper, told), size()
    rehearsals.start(paper, 1, one)
    rehearsals.call_off(paper)
    told.news.free.set()
    assert ended(rehearsals, paper).state == "cancelled"
    assert one.stages.runs["proof"] == 0
    rehearsals.start(paper, 1, one)
    assert ended(rehearsals, paper).state == "done"


def test_a_design_is_rehearsed_once_at_a_time(rehearsals: Rehearsals) -> None:
    told = OnePaper()
    paper, one = cast(Paper, told), size()
    rehearsals.start(paper, 1, one)
    with pytest.raises(BusyError):
        rehearsals.start(paper, 1, one)
    told.news.free.set()
    assert ended(rehearsals, paper).state == "done"

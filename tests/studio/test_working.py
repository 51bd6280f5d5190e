"""What the windows will ask for next is made ready, and older work is dropped."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from quarterturn.materials import EFFORT, QUICK
from quarterturn.studio import working
from quarterturn.studio.papers import Paper
from quarterturn.studio.working import Worker
from tests.studio.drafts import TEXT, open_desk, titled


class Heard:
    """Keeps the news of a design."""

    def __init__(self, paper: Paper) -> None:
        self.events: list[tuple[str, object]] = []
        self._changed = threading.Condition()
        paper.news.tell = self._tell  # type: ignore[method-assign]

    def _tell(self, event: str, **facts: object) -> None:
        with self._changed:
            self.events.append((event, facts.get("revision")))
            self._changed.notify_all()

    def wait(self, event: str, revision: int) -> None:
        """Wait for news of a revision."""
        with self._changed:
            assert self._changed.wait_for(lambda: (event, revision) in self.events, 20)


@pytest.fixture
def worker() -> Iterator[Worker]:
    worker = Worker(quiet=0.05)
    yield worker
    worker.stop()


def test_figures_come_first_then_plans_then_findings(tmp_path: Path, worker: Worker) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        heard = Heard(paper)
        assert worker.effort(paper, 0) is QUICK
        worker.soon(paper)
        heard.wait("findings", 0)
        assert [event for event, _ in heard.events] == ["figures", "plans", "findings"]
        assert worker.effort(paper, 0) is EFFORT
        assert worker.effort(paper, 1) is QUICK
        assert worker.found(paper, 0) == len(paper.made()[1].findings) > 0
        assert worker.found(paper, 1) is None


def test_a_newer_revision_drops_older_work(tmp_path: Path) -> None:
    worker = Worker(quiet=30)
    with open_desk(tmp_path) as desk:
        paper = desk.begin(TEXT)
        paper.on_change = worker.soon
        heard = Heard(paper)
        worker.soon(paper)
        for revision in range(3):
            heard.wait("figures", revision)
            paper.act(revision, titled(f"Moon {revision}"))
        heard.wait("figures", 3)
        assert "plans" not in [event for event, _ in heard.events]
    began = time.monotonic()
    worker.stop()
    assert time.monotonic() - began < 5


def test_a_text_that_is_no_design_still_has_findings(tmp_path: Path, worker: Worker) -> None:
    with open_desk(tmp_path) as desk:
        paper = desk.begin("title = 3")
        heard = Heard(paper)
        worker.soon(paper)
        heard.wait("findings", 0)


def test_a_fault_of_a_stage_does_not_end_the_work_on_other_designs(
    tmp_path: Path, worker: Worker, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object) -> None:
        raise ZeroDivisionError

    with open_desk(tmp_path) as desk:
        bad, good = desk.begin(TEXT), desk.begin(TEXT)
        heard_bad, heard_good = Heard(bad), Heard(good)
        with monkeypatch.context() as patch:
            patch.setattr(working.Worker, "_work", fail)
            worker.soon(bad)
            heard_bad.wait("fault", 0)
        worker.soon(good)
        heard_good.wait("findings", 0)

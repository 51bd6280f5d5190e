"""Laws of the stages as they are kept: what is made is what the pipeline makes, and nothing is made twice."""

from __future__ import annotations

import random
import threading
from pathlib import Path

import pytest

from quarterturn.design import read_design, write_design
from quarterturn.materials import QUICK
from quarterturn.pipeline import run
from quarterturn.studio.acts import RefusedError, do
from quarterturn.studio.stages import Key, Made, Memo, Stages, UnmadeError
from quarterturn.studio.views import figures_view
from tests.samples import ROUNDS
from tests.studio.acts.samples import samples

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.toml"))


def agrees(made: Made) -> None:
    """Hold what was made against a run of the pipeline on the same text."""
    job = run(made.text)
    assert made.findings == job.findings
    assert made.job.patterns == job.patterns


@pytest.mark.parametrize("path", EXAMPLES[::4], ids=lambda path: path.stem)
def test_an_example_is_made_as_the_pipeline_makes_it(path: Path) -> None:
    agrees(Stages().at(path.read_text(encoding="utf-8")))


@pytest.mark.parametrize("seed", range(3))
def test_after_any_acts_what_is_kept_is_what_would_be_made_anew(seed: int) -> None:
    rng, stages, text = random.Random(seed), Stages(), ROUNDS
    for _ in range(12):
        design = read_design(text).design
        assert design is not None
        act = rng.choice([each for each in samples(design) if not each.may_break])
        try:
            done = do(act, text, stages)
        except RefusedError:
            continue
        text = done.made.text
        agrees(done.made)


def test_a_turned_unit_makes_no_new_plan_and_a_price_no_new_top() -> None:
    stages = Stages()
    figures_view(1, stages.at(ROUNDS).size())
    before = dict(stages.runs)
    figures_view(2, stages.at(ROUNDS.replace("a2 a3 b2", "a1 a3 b2")).size())
    assert stages.runs["setting"] == before["setting"] + 1
    assert stages.runs["materials"] == before["materials"]
    assert stages.runs["blocks"] == before["blocks"]
    before = dict(stages.runs)
    figures_view(3, stages.at(write_design(ROUNDS, {"fabrics.A.price": 12})).size())
    assert stages.runs["setting"] == before["setting"]
    assert stages.runs["materials"] == before["materials"] + 1


def test_a_colour_makes_only_what_is_printed_anew() -> None:
    stages = Stages()
    stages.at(ROUNDS).job  # noqa: B018 - made for what it keeps
    before = dict(stages.runs)
    stages.at(ROUNDS.replace("#22304a", "#22304b")).job  # noqa: B018
    changed = {stage for stage, runs in stages.runs.items() if runs > before[stage]}
    assert changed == {"made", "checks"}


def test_text_that_is_no_design_says_what_stops_it() -> None:
    made = Stages().at('title = "x"')
    assert made.job.patterns == ()
    assert made.stops == made.findings != ()
    with pytest.raises(UnmadeError) as stopped:
        made.size()
    assert stopped.value.findings == made.findings


def test_words_that_mean_nothing_stop_the_setting_with_their_line() -> None:
    made = Stages().at(ROUNDS.replace("a2 a3 b2", "a-tl2 a3 b2"))
    with pytest.raises(UnmadeError) as stopped:
        figures_view(1, made.size(), QUICK)
    assert stopped.value.findings[0].place.line is not None
    assert made.job.patterns == ()


def test_the_same_thing_is_made_once_however_many_threads_ask() -> None:
    memo, made, ready = Memo(), list[int](), threading.Barrier(4)

    def ask() -> None:
        ready.wait()
        memo.get(Key("all"), lambda: made.append(1))

    threads = [threading.Thread(target=ask) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert made == [1]


def test_slow_work_holds_up_nothing_else() -> None:
    memo, going, done = Memo(), threading.Event(), threading.Event()

    def slow() -> str:
        going.set()
        assert done.wait(10)
        return "slow"

    thread = threading.Thread(target=lambda: memo.get("slow", slow))
    thread.start()
    assert going.wait(10)
    assert memo.get("quick", lambda: "quick") == "quick"
    done.set()
    thread.join()
    assert memo.get("slow", lambda: "again") == "slow"


def test_what_fails_is_tried_again() -> None:
    memo = Memo()
    with pytest.raises(ZeroDivisionError):
        memo.get("x", lambda: 1 // 0)
    assert memo.get("x", lambda: 2) == 2


def test_the_oldest_is_let_go() -> None:
    memo = Memo(keep=2)
    for key in "abc":
        memo.get(key, lambda key=key: key)  # type: ignore[misc]
    assert memo.get("c", lambda: "new") == "c"
    assert memo.get("a", lambda: "new") == "new"

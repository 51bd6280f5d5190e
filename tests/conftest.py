"""Shared by all tests: how hypothesis draws its examples, and the goldens.

A golden is a text kept beside the tests, with which a later run is compared. A test asks for the fixture
`golden` and calls `golden.check("name.txt", text)`. `pytest --update-goldens` writes what the tests give now.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from difflib import unified_diff
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings

TESTS = Path(__file__).parent
GOLDENS = TESTS / "goldens"

settings.register_profile("ci", derandomize=True, database=None, deadline=None, print_blob=True)
settings.load_profile("ci")


@dataclass
class Ledger:
    """What one run of pytest asked of the goldens.

    asked: the files that a test compared or wrote.
    complete: whether the run held every test, so that a file nobody asked for is an orphan.
    """

    update: bool
    asked: set[Path] = field(default_factory=set)
    complete: bool = True

    def orphans(self) -> list[Path]:
        """The goldens that no test asked for, in order of name."""
        return sorted(file for file in GOLDENS.rglob("*") if file.is_file() and file not in self.asked)


LEDGER = pytest.StashKey[Ledger]()


@dataclass(frozen=True)
class Golden:
    """The goldens of one test module; they lie in tests/goldens/<the module's path without .py>/."""

    folder: Path
    ledger: Ledger

    def check(self, name: str, text: str) -> None:
        """Compare the text with the golden of that name, or write it under --update-goldens.

        Fails the test with a unified diff where they differ, and where there is no such golden.
        """
        file = self.folder / name
        self.ledger.asked.add(file)
        if self.ledger.update:
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(text, encoding="utf-8", newline="\n")
            return
        if not file.is_file():
            pytest.fail(f"There is no golden {shown(file)} yet; --update-goldens writes it.", pytrace=False)
        kept = file.read_bytes().decode("utf-8")
        if kept != text:
            pytest.fail(difference(file, kept, text), pytrace=False)


def shown(file: Path) -> str:
    """The path as read from the folder that holds the tests."""
    return file.relative_to(TESTS.parent).as_posix()


def difference(file: Path, kept: str, text: str) -> str:
    """A unified diff from the golden to what the test gives now, with a line on what to do."""
    before = kept.splitlines(keepends=True)
    after = text.splitlines(keepends=True)
    lines = unified_diff(before, after, f"{shown(file)} (kept)", f"{shown(file)} (now)")
    marked = (line if line.endswith("\n") else f"{line}\n\\ no line end here\n" for line in lines)
    return f"{''.join(marked)}If the change is meant, write it with --update-goldens and read the diff."


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the one flag of the goldens."""
    parser.addoption(
        "--update-goldens",
        action="store_true",
        help="write the goldens instead of comparing with them",
    )


def pytest_configure(config: pytest.Config) -> None:
    """Open the ledger; a run that was given single files or tests is not complete."""
    ledger = Ledger(update=config.getoption("--update-goldens"))
    here = config.invocation_params.dir
    ledger.complete = all((here / name).resolve() in {TESTS, config.rootpath} for name in config.args)
    config.stash[LEDGER] = ledger


def pytest_deselected(items: list[pytest.Item]) -> None:
    """Leaving out a test makes the run incomplete."""
    for item in items:
        item.config.stash[LEDGER].complete = False


@pytest.hookimpl(tryfirst=True)
def pytest_sessionfinish(session: pytest.Session) -> None:
    """After a complete run without failures, report each orphan as a failure, or remove it when updating.

    Where workers share the tests, each only hands its ledger home.
    """
    ledger = session.config.stash[LEDGER]
    report_home = getattr(session.config, "workeroutput", None)
    if report_home is not None:
        report_home["goldens"] = [ledger.complete, sorted(str(file) for file in ledger.asked)]
        return
    ran_whole = ledger.complete and not session.config.option.collectonly
    if not ran_whole or session.exitstatus != pytest.ExitCode.OK:
        return
    for file in ledger.orphans():
        if ledger.update:
            file.unlink()
        else:
            report_orphan(session, file)


@pytest.hookimpl(optionalhook=True)
def pytest_testnodedown(node: Any) -> None:
    """Take over the ledger of a worker that has ended; each runs a part of the tests."""
    ledger = node.config.stash[LEDGER]
    complete, asked = getattr(node, "workeroutput", {}).get("goldens", (False, []))
    ledger.complete &= complete
    ledger.asked.update(map(Path, asked))


def report_orphan(session: pytest.Session, file: Path) -> None:
    """Count the file among the failures, so that the closing line tells of it."""
    report = pytest.TestReport(
        nodeid=shown(file),
        location=(shown(file), None, "orphan"),
        keywords={},
        outcome="failed",
        longrepr=f"No test asked for {shown(file)}; remove it (--update-goldens on a complete run does).",
        when="call",
    )
    session.config.hook.pytest_runtest_logreport(report=report)
    session.exitstatus = pytest.ExitCode.TESTS_FAILED


@pytest.fixture
def golden(request: pytest.FixtureRequest) -> Golden:
    """The goldens of the module in which the test stands."""
    folder = GOLDENS / request.path.relative_to(TESTS).with_suffix("")
    return Golden(folder, request.config.stash[LEDGER])


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Leave the tests in a browser to the end: while one is driven, no test can run a loop of its own."""
    items.sort(key=lambda item: "browser" in item.path.parts)

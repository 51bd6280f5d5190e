"""The goldens: a difference fails, an update writes, and a golden that nobody asks for does not linger."""

from __future__ import annotations

from pathlib import Path

import pytest

CONFTEST = Path(__file__).with_name("conftest.py").read_text(encoding="utf-8")

ONE_GOLDEN = """
def test_pieces(golden):
    golden.check("pieces.txt", "4 squares\\n3 strips\\n")

def test_nothing_else():
    assert True
"""


@pytest.fixture
def project(pytester: pytest.Pytester) -> pytest.Pytester:
    """A small project of its own, with this one's conftest and one golden that agrees."""
    pytester.makeconftest(CONFTEST)
    pytester.makepyfile(test_cutting=ONE_GOLDEN)
    keep(pytester, "test_cutting/pieces.txt", "4 squares\n3 strips\n")
    return pytester


def keep(project: pytest.Pytester, name: str, text: str) -> Path:
    file = project.path / "goldens" / name
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(text, encoding="utf-8", newline="\n")
    return file


def run(project: pytest.Pytester, *arguments: str) -> pytest.RunResult:
    return project.runpytest("-p", "no:cacheprovider", *arguments)


def test_a_golden_that_agrees_passes(project: pytest.Pytester) -> None:
    run(project).assert_outcomes(passed=2)


def test_a_difference_fails_and_shows_both_sides(project: pytest.Pytester) -> None:
    keep(project, "test_cutting/pieces.txt", "5 squares\n3 strips\n")
    result = run(project)
    result.assert_outcomes(passed=1, failed=1)
    result.stdout.fnmatch_lines(["-5 squares", "+4 squares", " 3 strips", "*--update-goldens*"])


@pytest.mark.parametrize(
    "kept", ["4 squares\n3 strips", "4 squares\r\n3 strips\r\n", "4 squares\n3 strips\n\n"]
)
def test_line_ends_count(project: pytest.Pytester, kept: str) -> None:
    keep(project, "test_cutting/pieces.txt", kept)
    run(project).assert_outcomes(passed=1, failed=1)


def test_a_missing_golden_fails_and_says_how_to_write_it(project: pytest.Pytester) -> None:
    (project.path / "goldens/test_cutting/pieces.txt").unlink()
    result = run(project)
    result.assert_outcomes(passed=1, failed=1)
    result.stdout.fnmatch_lines(["There is no golden *test_cutting/pieces.txt yet*--update-goldens*"])


def test_update_writes_what_the_tests_give_now(project: pytest.Pytester) -> None:
    file = keep(project, "test_cutting/pieces.txt", "5 squares\n")
    run(project, "--update-goldens").assert_outcomes(passed=2)
    assert file.read_bytes() == b"4 squares\n3 strips\n"


def test_an_orphan_fails_a_complete_run(project: pytest.Pytester) -> None:
    keep(project, "test_cutting/left_over.txt", "nobody asks\n")
    result = run(project)
    result.assert_outcomes(passed=2, failed=1)
    assert result.ret == pytest.ExitCode.TESTS_FAILED
    result.stdout.fnmatch_lines(["No test asked for *test_cutting/left_over.txt*"])


def test_workers_that_share_the_tests_share_the_ledger(project: pytest.Pytester) -> None:
    run(project, "--numprocesses=2").assert_outcomes(passed=2)
    keep(project, "test_cutting/left_over.txt", "nobody asks\n")
    result = run(project, "--numprocesses=2")
    result.assert_outcomes(passed=2, failed=1)
    result.stdout.fnmatch_lines(["No test asked for *test_cutting/left_over.txt*"])
    assert run(project, "--numprocesses=2", "-k", "pieces").ret == pytest.ExitCode.OK


@pytest.mark.parametrize("part", [["test_cutting.py"], ["-k", "pieces"], ["test_cutting.py::test_pieces"]])
def test_a_run_of_some_tests_says_nothing_of_orphans(project: pytest.Pytester, part: list[str]) -> None:
    keep(project, "test_cutting/left_over.txt", "nobody asks\n")
    assert run(project, *part).ret == pytest.ExitCode.OK


def test_update_removes_orphans_on_a_complete_run_only(project: pytest.Pytester) -> None:
    file = keep(project, "test_cutting/left_over.txt", "nobody asks\n")
    run(project, "--update-goldens", "-k", "pieces")
    assert file.exists()
    run(project, "--update-goldens")
    assert not file.exists()

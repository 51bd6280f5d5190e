"""Whatever goes wrong is told in one line on standard error, with an exit code, and never with a traceback."""

from __future__ import annotations

import errno
import os
import signal
import subprocess
import sys
from pathlib import Path

import click
import pytest

from quarterturn.cli import check as check_command
from quarterturn.cli.door import SHOW_FAULTS, quarterturn, run
from quarterturn.cli.ending import Ending

PROGRAM = [sys.executable, "-c", "from quarterturn.cli import main; main()"]


def one_line(text: str) -> str:
    """Return the only line of a text."""
    [line] = text.splitlines()
    return line


def failing(error: BaseException) -> object:
    def fail(*_: object) -> None:
        raise error

    return fail


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["chek"], "No such command 'chek'. (Did you mean"),
        (["check"], "Missing argument 'FILE'; see quarterturn check --help"),
        (["check", "a", "b"], "Got unexpected extra argument"),
        (["check", "--jsn", "a"], "No such option '--jsn'"),
        (["show", "stage", "a"], "'stage' is not one of"),
        (["publish", "a", "--paper", "a3"], "'a3' is not one of"),
        (["publish", "a", "--only", "all"], "'all' is not one of"),
    ],
)
def test_a_command_that_cannot_be_understood_is_refused(
    arguments: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(arguments) == Ending.REFUSED
    assert said in one_line(capsys.readouterr().err)


@pytest.mark.parametrize("command", [["check"], ["rehearse"], ["publish"], ["show", "steps"]])
def test_a_file_that_cannot_be_read_is_refused(
    command: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    assert run([*command, "absent.toml"]) == Ending.REFUSED
    assert one_line(capsys.readouterr().err) == "quarterturn: absent.toml: no such file or directory"
    assert run([*command, str(tmp_path)]) == Ending.REFUSED
    assert one_line(capsys.readouterr().err) == f"quarterturn: {tmp_path}: is a directory"


def test_a_file_that_may_not_be_read_is_refused(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    denied = PermissionError(errno.EACCES, os.strerror(errno.EACCES), "secret.toml")
    monkeypatch.setattr(check_command, "take_in", failing(denied))
    assert run(["check", "secret.toml"]) == Ending.REFUSED
    assert one_line(capsys.readouterr().err) == "quarterturn: secret.toml: permission denied"


def test_an_interruption_is_told_and_has_its_code(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(check_command, "take_in", failing(KeyboardInterrupt()))
    assert run(["check", "a.toml"]) == Ending.INTERRUPTED
    assert one_line(capsys.readouterr().err) == "quarterturn: interrupted"


def test_a_fault_of_the_program_is_owned_up_to_and_shown_only_on_request(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(check_command, "take_in", failing(AssertionError("two\nlines")))
    assert run(["check", "a.toml"]) == Ending.FAULT
    said = one_line(capsys.readouterr().err)
    assert "a fault of the program, not of your design (AssertionError: two lines)" in said
    assert SHOW_FAULTS in said
    monkeypatch.setenv(SHOW_FAULTS, "1")
    with pytest.raises(AssertionError):
        run(["check", "a.toml"])


@pytest.mark.parametrize(
    "arguments", [["--help"], ["-h"], ["--version"], *([name, "-h"] for name in quarterturn.commands)]
)
def test_help_and_version_are_printed(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert run(arguments) == Ending.GOOD
    printed = capsys.readouterr()
    assert "quarterturn" in printed.out
    assert printed.err == ""


def test_every_command_and_option_says_what_it_is_for() -> None:
    for command in quarterturn.commands.values():
        assert command.help
        assert command.short_help
        assert [p.name for p in command.params if isinstance(p, click.Option) and not p.help] == []


def test_a_reader_that_has_gone_away_ends_the_program_quietly() -> None:
    with subprocess.Popen([*PROGRAM, "schema"], stdout=subprocess.PIPE, stderr=subprocess.PIPE) as program:
        assert program.stdout is not None
        assert program.stderr is not None
        program.stdout.close()
        assert program.stderr.read() == b""
    assert program.returncode == Ending.UNREAD


def test_a_full_disk_under_standard_output_is_told() -> None:
    full = Path("/dev/full")
    if full.exists():
        with full.open("w") as stream:
            done = subprocess.run([*PROGRAM, "schema"], stdout=stream, stderr=subprocess.PIPE, check=False)
        assert done.returncode == Ending.REFUSED
        assert one_line(done.stderr.decode()) == "quarterturn: no space left on device"


def test_a_key_press_in_a_real_run_leaves_no_traceback() -> None:
    """A run that was begun in the background is deaf to the key; so the program is begun with open ears."""
    waiting = [*PROGRAM, "check", "-"]
    before = signal.signal(signal.SIGINT, signal.default_int_handler)
    with subprocess.Popen(waiting, stdin=subprocess.PIPE, stderr=subprocess.PIPE) as program:
        signal.signal(signal.SIGINT, before)
        assert program.stdin is not None
        assert program.stderr is not None
        program.stdin.write(
            b"#\n" * 2**18
        )  # more than a pipe holds, so that it reads when this has been taken
        program.stdin.flush()
        with pytest.raises(subprocess.TimeoutExpired):
            program.wait(0.2)
        program.send_signal(signal.SIGINT)
        assert program.stderr.read() == b"quarterturn: interrupted\n"
    assert program.returncode == Ending.INTERRUPTED


@pytest.mark.parametrize("locale", ["C", "POSIX", "C.UTF-8"])
def test_fractions_are_printed_whatever_the_locale(locale: str, tmp_path: Path) -> None:
    plain = {"LC_ALL": locale, "PATH": os.environ["PATH"], "PYTHONCOERCECLOCALE": "0", "PYTHONUTF8": "0"}
    file = tmp_path / "½ × 2.toml"
    done = subprocess.run([*PROGRAM, "new", str(file)], capture_output=True, env=plain, check=True)
    assert f"Wrote {file}." in done.stdout.decode()
    assert file.exists()

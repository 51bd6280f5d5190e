"""A real studio: started as a person starts it, asked over the loopback, ended as a person ends it."""

from __future__ import annotations

import contextlib
import os
import socket
import subprocess
import time
import urllib.request
from pathlib import Path

import pytest

from quarterturn.cli.ending import Ending
from quarterturn.studio.guard import TOKEN
from quarterturn.studio.serving import FIRST_PORT, PortTakenError, listen
from tests.studio.drafts import TEXT, file_of
from tests.studio.running import PROGRAM, running


def test_a_studio_answers_and_ends_cleanly_when_interrupted(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with running(tmp_path / "state", "studio", str(file), "--no-browser") as studio:
        status, told = studio.get(f"/api/designs/{studio.design}")
        assert (status, b'"title":"Rounds"' in told) == (200, True)
        code, _, err = studio.interrupt()
        assert (code, err) == (Ending.GOOD, "The studio is closed.\n")


def test_open_windows_do_not_keep_it_from_ending(tmp_path: Path) -> None:
    with running(tmp_path / "state", "studio", str(file_of(tmp_path)), "--no-browser") as studio:
        news = f"http://127.0.0.1:{studio.port}/api/designs/{studio.design}/news?token={studio.token}"
        with urllib.request.urlopen(news, timeout=15) as stream:
            assert stream.headers["content-type"].startswith("text/event-stream")
            assert stream.readline() == b"retry: 1000\n"
            began = time.monotonic()
            code, _, _ = studio.interrupt()
            assert (code, time.monotonic() - began < 5) == (Ending.GOOD, True)


def test_it_listens_on_the_loopback_alone(tmp_path: Path) -> None:
    with running(tmp_path / "state", "studio", "--no-browser") as studio:
        ports = Path("/proc/net/tcp").read_text(encoding="ascii").splitlines()[1:]
        listening = [line.split()[1] for line in ports if line.split()[3] == "0A"]
        own = [place for place in listening if int(place.partition(":")[2], 16) == studio.port]
        assert own == [f"0100007F:{studio.port:04X}"]


def test_a_killed_studio_finds_again_what_it_answered(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    with running(tmp_path / "state", "studio", str(file), "--no-browser") as studio:
        body = b'{"revision": 0, "act": {"name": "put", "at": "title", "value": "Moons"}}'
        request = urllib.request.Request(
            f"http://127.0.0.1:{studio.port}/api/designs/{studio.design}/acts",
            body,
            {TOKEN: studio.token, "Content-Type": "application/json"},
        )
        with urllib.request.urlopen(request, timeout=15) as answer:
            assert answer.status == 200
        studio.process.kill()
    assert file.read_text(encoding="utf-8") == TEXT
    with running(tmp_path / "state", "studio", str(file), "--no-browser") as again:
        assert again.design == studio.design
        assert again.token != studio.token
        assert b'"title":"Moons"' in again.get(f"/api/designs/{again.design}")[1]


def test_a_port_in_use_is_told(tmp_path: Path) -> None:
    with contextlib.closing(listen(None)) as taken:
        port = taken.getsockname()[1]
        ended = subprocess.run(
            [*PROGRAM, "studio", "--port", str(port), "--no-browser"],
            capture_output=True,
            text=True,
            check=False,
            env={**os.environ, "XDG_STATE_HOME": str(tmp_path)},
        )
    assert ended.returncode == Ending.REFUSED
    assert ended.stderr == (
        f"quarterturn: port {port} cannot be had (address already in use); name another with --port\n"
    )


def test_without_a_port_another_one_is_taken_where_the_usual_is_in_use() -> None:
    with contextlib.closing(listen(None)) as first, contextlib.closing(listen(None)) as second:
        ports = {first.getsockname()[1], second.getsockname()[1]}
        assert len(ports) == 2
        assert min(ports) >= FIRST_PORT


def test_a_port_beyond_all_ports_is_refused() -> None:
    with pytest.raises(PortTakenError):
        listen(70_000)


def test_a_file_that_cannot_be_opened_is_told(tmp_path: Path) -> None:
    ended = subprocess.run(
        [*PROGRAM, "studio", str(tmp_path / "absent.toml"), "--no-browser"],
        capture_output=True,
        text=True,
        check=False,
        env={**os.environ, "XDG_STATE_HOME": str(tmp_path)},
    )
    assert (ended.returncode, ended.stdout) == (Ending.REFUSED, "")
    assert ended.stderr.startswith("quarterturn: There is no file ")
    assert ended.stderr.count("\n") == 1


def test_without_a_command_the_studio_opens_in_the_browser_of_the_machine(tmp_path: Path) -> None:
    shown = tmp_path / "shown"
    browser = tmp_path / "browser"
    browser.write_text(f'#!/bin/sh\nprintf %s "$1" >{shown}\n', encoding="utf-8")
    browser.chmod(0o755)
    with running(tmp_path / "state", BROWSER=f"{browser} %s") as studio:
        end = time.monotonic() + 10
        while not (shown.exists() and shown.read_text(encoding="utf-8")) and time.monotonic() < end:
            time.sleep(0.02)
        assert shown.read_text(encoding="utf-8") == f"http://127.0.0.1:{studio.port}/#token={studio.token}"


def test_without_a_browser_the_address_is_told(tmp_path: Path) -> None:
    with running(tmp_path / "state", BROWSER=str(tmp_path / "none"), PATH="") as studio:
        assert studio.get("/api/acts")[0] == 200


def test_a_socket_that_listens_is_not_handed_to_what_is_started() -> None:
    with contextlib.closing(listen(None)) as listening:
        assert not listening.get_inheritable()
        assert listening.family == socket.AF_INET

"""Files and folders are written whole or not at all, whatever happens on the way."""

from __future__ import annotations

import errno
import os
import random
import subprocess
import sys
import time
from pathlib import Path

import pytest

from quarterturn.files import swapping, writing
from quarterturn.files.writing import write_file, write_folder

HAMMER = """
import sys
from pathlib import Path
from quarterturn.files.writing import write_folder
for turn in range(100_000):
    write_folder(Path(sys.argv[1]), {f"{n}.txt": str(turn).encode() * 20_000 for n in range(6)})
    print(turn, flush=True)
"""
KILLS = 10


def full_disk(*_: object) -> None:
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


def names(folder: Path) -> list[str]:
    return sorted(path.name for path in folder.iterdir())


def is_whole(folder: Path) -> bool:
    """Tell whether all six files of the hammer are there, each full and of one turn."""
    contents = {file.read_bytes() for file in folder.iterdir()}
    [content] = contents
    turn = content[: len(content) // 20_000]
    return names(folder) == [f"{n}.txt" for n in range(6)] and content == turn * 20_000


def test_a_file_is_written_and_written_over(tmp_path: Path) -> None:
    write_file(tmp_path / "a.toml", b"one")
    write_file(tmp_path / "a.toml", b"two")
    assert (tmp_path / "a.toml").read_bytes() == b"two"
    assert names(tmp_path) == ["a.toml"]


def test_a_file_keeps_its_mode_when_it_is_written_over(tmp_path: Path) -> None:
    write_file(tmp_path / "a.toml", b"one")
    (tmp_path / "a.toml").chmod(0o600)
    write_file(tmp_path / "a.toml", b"two")
    assert (tmp_path / "a.toml").stat().st_mode & 0o777 == 0o600


def test_a_link_to_a_file_stays_a_link(tmp_path: Path) -> None:
    (tmp_path / "real.toml").write_bytes(b"one")
    (tmp_path / "link.toml").symlink_to(tmp_path / "real.toml")
    write_file(tmp_path / "link.toml", b"two")
    assert (tmp_path / "link.toml").is_symlink()
    assert (tmp_path / "real.toml").read_bytes() == b"two"


def test_a_folder_takes_the_place_of_the_one_before_it(tmp_path: Path) -> None:
    write_folder(tmp_path / "deep" / "out", {"a": b"1", "b": b"2"})
    write_folder(tmp_path / "deep" / "out", {"a": b"3"})
    assert names(tmp_path / "deep") == ["out"]
    assert names(tmp_path / "deep" / "out") == ["a"]


def test_a_full_disk_leaves_the_old_folder_as_it_was(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    write_folder(tmp_path / "out", {"a": b"1"})
    monkeypatch.setattr(os, "fsync", full_disk)
    with pytest.raises(OSError, match="No space left"):
        write_folder(tmp_path / "out", {"a": b"2", "b": b"3"})
    assert names(tmp_path) == ["out"]
    assert (tmp_path / "out" / "a").read_bytes() == b"1"


def test_without_exchanging_two_renamings_do_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(swapping, "_exchanged", lambda one, other: False)
    write_folder(tmp_path / "out", {"a": b"1"})
    write_folder(tmp_path / "out", {"b": b"2"})
    assert names(tmp_path) == ["out"]
    assert names(tmp_path / "out") == ["b"]


def test_a_folder_left_aside_between_two_renamings_is_fetched_back(tmp_path: Path) -> None:
    old = swapping.aside(tmp_path / "out")
    old.mkdir()
    (old / "a").write_bytes(b"1")
    swapping.restore(tmp_path / "out")
    assert names(tmp_path) == ["out"]
    assert names(tmp_path / "out") == ["a"]


def test_leftovers_of_a_killed_run_are_swept_away_and_those_of_a_living_one_are_not(tmp_path: Path) -> None:
    dead, alive = tmp_path / ".out.dead.part", tmp_path / ".out.alive.part"
    dead.mkdir()
    (dead / "half").write_bytes(b"?")
    alive.mkdir()
    with writing._held(alive):
        write_folder(tmp_path / "out", {"a": b"1"})
    assert names(tmp_path) == [".out.alive.part", "out"]


def test_kills_at_any_moment_leave_a_whole_folder(tmp_path: Path) -> None:
    folder, chance = tmp_path / "out", random.Random(7)
    for _ in range(KILLS):
        with subprocess.Popen([sys.executable, "-c", HAMMER, str(folder)], stdout=subprocess.PIPE) as hammer:
            assert hammer.stdout is not None
            assert hammer.stdout.readline()
            time.sleep(chance.uniform(0, 0.05))
            hammer.kill()
        assert is_whole(folder)
    write_folder(folder, {"a": b"1"})
    assert names(tmp_path) == ["out"]

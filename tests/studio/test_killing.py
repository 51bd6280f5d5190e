"""However often and whenever the studio is killed, what it has answered is found again, and the file is whole."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

from quarterturn.files import write_file
from tests.studio.drafts import file_of

KILLS = 250
HAMMER = Path(__file__).with_name("killing.py")


def test_hundreds_of_kills_lose_nothing_that_was_answered(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    command = [sys.executable, str(HAMMER), str(file), str(tmp_path / "state"), str(KILLS)]
    ended = subprocess.run(command, capture_output=True, text=True, check=False, timeout=300)
    assert (ended.returncode, ended.stderr) == (0, "")
    told = re.fullmatch(rf"{KILLS} kills, (\d+) edits\n", ended.stdout)
    assert told
    assert int(told[1]) > KILLS
    write_file(file, file.read_bytes())  # the last kill may have left a part, which the next save sweeps away
    assert [name.name for name in tmp_path.iterdir() if name.suffix == ".part"] == []


def test_the_hammer_tells_when_something_is_lost() -> None:
    from tests.studio.killing import lost

    assert lost(b"5 aa\n", b"4 aa\n")
    assert lost(b"5 aa\n", b"5 bb\n")
    assert not lost(b"5 aa\n", b"5 aa\n")
    assert not lost(b"5 aa\n", b"6 bb\n")

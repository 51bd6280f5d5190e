"""Which files a designer's words name, and what is said where they name none."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterturn.studio.filing import place
from quarterturn.studio.refusals import Refusal, reason


def test_a_new_file_may_be_named_without_its_ending(tmp_path: Path) -> None:
    assert place(f"{tmp_path}/late peonies", new=True) == tmp_path.resolve() / "late peonies.toml"
    assert place(f" {tmp_path}/a.toml ", new=True) == tmp_path.resolve() / "a.toml"


@pytest.mark.parametrize("written", ["", "  ", "/", "notes.txt", "a\0b.toml", "\ud800.toml"])
def test_what_names_no_design_file_is_refused(written: str) -> None:
    for new in (False, True):
        with pytest.raises(Refusal, match=r"Name a file that ends in \.toml"):
            place(written, new=new)


def test_a_file_that_is_opened_is_named_in_full(tmp_path: Path) -> None:
    with pytest.raises(Refusal, match="peonies is no design file"):
        place(f"{tmp_path}/peonies")


def test_the_hidden_name_of_a_file_being_written_is_never_told(tmp_path: Path) -> None:
    hidden = str(tmp_path / "none" / ".a.toml.0123456789ab.part")
    assert (
        reason(FileNotFoundError(2, "No such file or directory", hidden))
        == f"There is no folder {tmp_path}/none."
    )
    assert reason(PermissionError(13, "Permission denied", hidden)) == f"{tmp_path}/none: permission denied."
    assert reason(OSError(28, "No space left on device")) == "No space left on device."

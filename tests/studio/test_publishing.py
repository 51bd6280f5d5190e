"""Publishing puts a folder in place whole, tells how it goes, and gives out nothing but what was published."""

from __future__ import annotations

import hashlib
import io
import time
import zipfile
from collections.abc import Callable
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from quarterturn.publish import release
from quarterturn.studio import publishing
from quarterturn.studio.publishing import zipped
from tests.studio.drafts import TEXT, file_of
from tests.studio.rooms import client, opened


def ended(asking: TestClient, at: str, **order: object) -> dict[str, object]:
    """Publish, wait for the end, and return how it ended."""
    begun = asking.post(f"{at}/publish", json=order)
    assert (begun.status_code, begun.json()["state"]) == (202, "running")
    return awaited(asking, at)


def awaited(asking: TestClient, at: str) -> dict[str, object]:
    end = time.monotonic() + 60
    while time.monotonic() < end:
        told: dict[str, object] = asking.get(f"{at}/publish").json()
        if told["state"] != "running":
            return told
        time.sleep(0.02)
    raise AssertionError("the publish did not end")


def test_a_publish_makes_what_the_command_makes(tmp_path: Path) -> None:
    from quarterturn.cli.door import run

    file = file_of(tmp_path)
    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(file))
        assert asking.get(f"{at}/publish").json()["state"] == "none"
        told = ended(asking, at, paper="a4")
        folder = file.parent / "out" / "rounds"
        assert (told["state"], told["folder"]) == ("done", str(folder))
        assert run(["publish", str(file), "--paper", "a4", "--to", str(tmp_path / "command")]) == 0
        made = {path.name: path.read_bytes() for path in folder.iterdir()}
        assert made == {path.name: path.read_bytes() for path in (tmp_path / "command").iterdir()}
        listed = asking.get(f"{at}/files").json()["files"]
        assert {each["name"]: each["bytes"] for each in listed} == {n: len(c) for n, c in made.items()}
        for name, content in made.items():
            answer = asking.get(f"{at}/files/{name}")
            assert answer.content == content
            assert answer.headers["content-disposition"].startswith("attachment")
        packed = zipfile.ZipFile(io.BytesIO(asking.get(f"{at}/files.zip").content))
        assert {name: packed.read(name) for name in packed.namelist()} == made


def test_a_design_without_a_file_is_published_for_taking_away(tmp_path: Path) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, text=TEXT)
        told = ended(asking, at, only=["lists"])
        assert (told["state"], told["folder"]) == ("done", "")
        names = [each["name"] for each in asking.get(f"{at}/files").json()["files"]]
        assert names == ["cut-list.csv", "job.json", release.CONTENTS]
        asking.post(f"{at}/acts", json={"revision": 0, "act": {"name": "put", "at": "title", "value": "A"}})
        asking.post(f"{at}/close")
        assert asking.get(f"{at}/files").json()["files"] == []


@pytest.mark.parametrize(
    "name", ["rounds.toml", "..%2Frounds.toml", "%2Fetc%2Fpasswd", "booklet.pdf%00", "contents.txt"]
)
def test_nothing_but_what_was_published_is_given_out(tmp_path: Path, name: str) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(file_of(tmp_path)))
        assert asking.get(f"{at}/files/{name}").status_code == 404
        assert asking.get(f"{at}/files.zip").status_code == 404


def test_a_folder_that_no_publish_made_stays_as_it_is(tmp_path: Path) -> None:
    file = file_of(tmp_path)
    precious = file.parent / "out" / "rounds" / "letter.txt"
    precious.parent.mkdir(parents=True)
    precious.write_text("dear", encoding="utf-8")
    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(file))
        answer = asking.post(f"{at}/publish", json={})
        assert (answer.status_code, "holds letter.txt" in answer.json()["detail"]) == (409, True)
    assert precious.read_text(encoding="utf-8") == "dear"


def test_a_text_that_is_no_design_is_not_published(tmp_path: Path) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, text="title = 3")
        told = ended(asking, at)
        assert told["state"] == "stopped"
        assert told["findings"]
        assert asking.get(f"{at}/files").json()["files"] == []


def faulty(make: Callable[..., object]) -> Callable[..., object]:
    def fail(*_: object, **__: object) -> object:
        raise ZeroDivisionError

    return fail


def test_a_fault_is_told_and_the_next_publish_goes_well(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, text=TEXT)
        with monkeypatch.context() as patch:
            patch.setattr(release, "release", faulty(release.release))
            told = ended(asking, at)
        assert (told["state"], told["reason"]) == (
            "failed",
            "This is a fault of the program, not of your design (ZeroDivisionError).",
        )
        assert ended(asking, at, only=["findings"])["state"] == "done"


def test_a_publish_is_called_off_between_its_parts_and_leaves_the_folder_as_it_was(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    import threading

    file = file_of(tmp_path)
    has_begun, may_go_on = threading.Event(), threading.Event()
    real = publishing._proof

    def slow(*arguments: object) -> object:
        has_begun.set()
        assert may_go_on.wait(30)
        return real(*arguments)  # type: ignore[arg-type]

    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(file))
        monkeypatch.setattr(publishing, "_proof", slow)
        asking.post(f"{at}/publish", json={})
        assert has_begun.wait(30)
        assert asking.post(f"{at}/publish", json={}).status_code == 409
        assert asking.post(f"{at}/publish/cancel").json()["state"] == "running"
        may_go_on.set()
        assert awaited(asking, at)["state"] == "cancelled"
    assert not (file.parent / "out").exists()


def test_an_unknown_size_and_an_unknown_part_are_refused(tmp_path: Path) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, text=TEXT)
        assert asking.post(f"{at}/publish", json={"size": "none"}).status_code == 404
        assert asking.post(f"{at}/publish", json={"only": ["none"]}).status_code == 422


def test_equal_files_make_equal_archives() -> None:
    files = {"b.txt": b"2", "a.txt": b"1" * 1000}
    digests = {hashlib.sha256(zipped(each)).hexdigest() for each in (files, dict(reversed(files.items())))}
    assert len(digests) == 1

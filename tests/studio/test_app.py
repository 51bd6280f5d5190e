"""Every route answers with its view, and whatever goes wrong with a sentence and a remedy."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from quarterturn.studio import app as app_module
from quarterturn.studio.routes import rooms
from tests.studio.drafts import TEXT, file_of
from tests.studio.rooms import client, opened

ROOMS = (
    "quilt",
    "figures",
    "blocks",
    "cloth",
    "cutting",
    "sizes",
    "seams",
    "proof",
    "rehearsal",
    "booklet",
    "making",
)


@pytest.fixture(scope="module")
def asking(tmp_path_factory: pytest.TempPathFactory) -> Iterator[TestClient]:
    with client(tmp_path_factory.mktemp("state")) as asking:
        yield asking


def refused(asking: TestClient, method: str, path: str, status: int, **more: object) -> str:
    """Ask for what is refused with a status, and return the sentence."""
    answer = asking.request(method, path, **more)  # type: ignore[arg-type]
    assert answer.status_code == status, answer.text
    told = answer.json()
    assert told["remedy"]
    assert "Traceback" not in answer.text
    assert told["detail"].endswith(".")
    return str(told["detail"])


@pytest.mark.parametrize("room", ROOMS)
def test_every_room_shows_the_design_at_its_revision(asking: TestClient, room: str) -> None:
    at = opened(asking, text=TEXT)
    answer = asking.get(f"{at}/{room}")
    assert (answer.status_code, answer.json()["revision"]) == (200, 0)


@pytest.mark.parametrize("room", [room for room in ROOMS if room not in ("blocks", "proof")])
def test_a_text_that_is_no_design_stops_a_room_with_its_first_finding(asking: TestClient, room: str) -> None:
    at = opened(asking, text=TEXT.replace('units = "inch"', 'units = "cubit"'))
    answer = asking.get(f"{at}/{room}")
    assert answer.status_code == 422
    told = answer.json()
    assert told["line"] == told["findings"][0]["line"] > 0


def test_the_paper_tells_of_its_text_and_its_file(asking: TestClient, tmp_path: Path) -> None:
    at = opened(asking, open=str(file_of(tmp_path)))
    told = asking.get(at).json()
    assert (told["title"], told["name"], told["text"]) == ("Rounds", "rounds.toml", TEXT)
    assert (told["saved"], told["missing"], told["outside"], told["elsewhere"]) == (True, False, False, False)
    assert (told["can_undo"], told["can_redo"]) == (False, False)


def test_acts_undo_redo_and_saving(asking: TestClient, tmp_path: Path) -> None:
    file = file_of(tmp_path)
    at = opened(asking, open=str(file))
    act = {"name": "put", "at": "title", "value": "Moons"}
    done = asking.post(f"{at}/acts", json={"revision": 0, "act": act}).json()
    assert done == {"revision": 1, "changed": True, "act": "put", "facts": {"at": "title"}}
    assert asking.get(at).json()["undo_of"] == "put"
    assert asking.post(f"{at}/undo", json={"revision": 1}).json()["act"] == "put"
    assert asking.post(f"{at}/redo", json={"revision": 2}).json()["revision"] == 3
    assert asking.post(f"{at}/save", json={}).json()["saved"]
    assert 'title = "Moons"' in file.read_text(encoding="utf-8")


def test_an_act_upon_an_older_revision_is_told_the_newer(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    answer = asking.post(f"{at}/undo", json={"revision": 7})
    assert (answer.status_code, answer.json()["revision"]) == (409, 0)


def test_an_act_that_leaves_no_design_is_refused(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    act = {"name": "put", "at": "units", "value": "cubit"}
    said = refused(asking, "POST", f"{at}/acts", 422, json={"revision": 0, "act": act})
    assert "cubit" in said


def test_both_texts_are_offered_when_the_file_was_changed(asking: TestClient, tmp_path: Path) -> None:
    file = file_of(tmp_path)
    at = opened(asking, open=str(file))
    act = {"name": "put", "at": "title", "value": "Ours"}
    asking.post(f"{at}/acts", json={"revision": 0, "act": act})
    file.write_text(TEXT.replace("Rounds", "Theirs"), encoding="utf-8")
    assert "another program" in refused(asking, "POST", f"{at}/save", 409, json={})
    assert asking.get(at).json()["outside"]
    kept = asking.post(f"{at}/outside", json={"revision": 1, "keep": "ours"}).json()
    assert kept["changed"]
    assert asking.post(f"{at}/save", json={}).json()["title"] == "Ours"


def test_a_design_begins_from_an_example_a_new_one_or_a_recent_one(asking: TestClient) -> None:
    assert asking.get(opened(asking, example="late-peonies")).json()["title"] == "Late Peonies"
    at = opened(asking, new={"title": "Mine", "units": "metric", "bed": "crib"})
    assert (asking.get(at).json()["title"], asking.get(at).json()["units"]) == ("Mine", "metric")
    recent = asking.get("/api/start").json()["recent"]
    assert opened(asking, recent=recent[0]["id"]).endswith(recent[0]["id"])


@pytest.mark.parametrize(
    ("order", "status"),
    [
        ({}, 422),
        ({"text": "", "example": "late-peonies"}, 422),
        ({"open": None}, 422),
        ({"open": "/etc/passwd"}, 422),
        ({"open": "/etc/../etc/hostname.toml"}, 404),
        ({"open": "/dev/zero"}, 422),
        ({"open": "a\0.toml"}, 422),
        ({"open": ""}, 422),
        ({"open": "~nobody-of-this-name/x.toml"}, 422),
        ({"recent": "../../x"}, 404),
        ({"example": "../secret"}, 404),
        ({"new": {"setting": "none"}}, 422),
        ({"new": {"colours": "none"}}, 422),
        ({"new": {"bed": "none"}}, 422),
        ({"other": 1}, 422),
    ],
)
def test_what_cannot_be_opened_is_refused(asking: TestClient, order: dict[str, object], status: int) -> None:
    refused(asking, "POST", "/api/designs", status, json=order)


def test_a_file_is_opened_only_where_it_is_a_file_of_text(asking: TestClient, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.toml")
    (tmp_path / "folder.toml").mkdir()
    (tmp_path / "bytes.toml").write_bytes(b"\xff")
    (tmp_path / "link.toml").symlink_to("/etc/hostname")
    for name in ("pipe", "folder", "bytes", "link"):
        refused(asking, "POST", "/api/designs", 422, json={"open": str(tmp_path / f"{name}.toml")})


@pytest.mark.parametrize("query", ["example=late-peonies", "setting=drunkards-path"])
def test_a_picture_is_drawn_of_what_there_is_to_begin_with(asking: TestClient, query: str) -> None:
    answer = asking.get(f"/api/picture?{query}")
    assert (answer.status_code, answer.headers["content-type"]) == (200, "image/svg+xml")
    assert answer.text.lstrip().startswith(("<?xml", "<svg"))


def test_a_picture_is_drawn_of_a_recent_design(asking: TestClient) -> None:
    identity = opened(asking, text=TEXT).rpartition("/")[2]
    assert asking.get(f"/api/picture?recent={identity}").status_code == 200
    refused(asking, "GET", "/api/picture?recent=none", 404)
    refused(asking, "GET", "/api/picture?example=none", 404)
    refused(asking, "GET", "/api/picture?setting=none", 404)
    refused(asking, "GET", "/api/picture", 422)


def test_a_page_of_the_booklet_is_a_picture(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    answer = asking.get(f"{at}/booklet/1.png?width=200")
    assert (answer.status_code, answer.content[:8]) == (200, b"\x89PNG\r\n\x1a\n")
    refused(asking, "GET", f"{at}/booklet/9999.png", 404)
    refused(asking, "GET", f"{at}/booklet/0.png", 422)


def test_what_was_ticked_off_stays_so(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    chapters = asking.get(f"{at}/making").json()["chapters"]
    entry = chapters[0]["entries"][0]["id"]
    ticked = asking.post(f"{at}/making/tick", json={"entry": entry, "done": True}).json()
    assert ticked["chapters"][0]["entries"][0] != chapters[0]["entries"][0]
    assert asking.get(f"{at}/making").json() == ticked


def test_settings_are_found(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    assert asking.post(f"{at}/find", json={"repeat": 2}).status_code == 200
    refused(asking, "POST", f"{at}/find", 422, json={"codes": ["none"]})


def test_what_is_not_there_is_told(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    for path in (
        "/api/none",
        f"{at}/none",
        "/api/designs/none/quilt",
        "/assets/none.js",
        f"{at}/rehearsal/9999",
    ):
        refused(asking, "GET", path, 404)
    refused(asking, "GET", f"{at}/quilt?size=none", 404)
    refused(asking, "DELETE", at, 405)


@pytest.mark.parametrize(
    "body", [b"", b"{", b"[" * 100_000, b'{"revision": 1e999}', b'{"revision": NaN}', b"\xff", b"null"]
)
def test_a_body_that_is_not_understood_is_refused(asking: TestClient, body: bytes) -> None:
    at = opened(asking, text=TEXT)
    for path in (f"{at}/acts", f"{at}/undo", "/api/designs"):
        answer = asking.post(path, content=body, headers={"Content-Type": "application/json"})
        assert answer.status_code in (400, 422)
        assert answer.json()["remedy"]


def test_a_fault_of_the_program_is_one_sentence(
    asking: TestClient, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def fail(*_: object) -> None:
        raise ZeroDivisionError("a secret")

    at = opened(asking, text=TEXT)
    monkeypatch.setattr(rooms, "quilt_view", fail)
    said = refused(asking, "GET", f"{at}/quilt", 500)
    assert said == "This is a fault of the program, not of your design (ZeroDivisionError)."
    assert capsys.readouterr().err == ""
    monkeypatch.setenv(app_module.SHOW_FAULTS, "1")
    refused(asking, "GET", f"{at}/quilt", 500)
    assert "ZeroDivisionError: a secret" in capsys.readouterr().err


def test_a_closed_design_is_opened_again_by_its_id(asking: TestClient) -> None:
    at = opened(asking, text=TEXT)
    asking.post(f"{at}/acts", json={"revision": 0, "act": {"name": "put", "at": "title", "value": "Moons"}})
    assert asking.post(f"{at}/close").status_code == 204
    assert asking.get(at).json()["title"] == "Moons"


def test_a_copy_is_opened(asking: TestClient, tmp_path: Path) -> None:
    at = opened(asking, text=TEXT)
    copy = asking.post(f"{at}/duplicate", json={"path": str(tmp_path / "copy.toml")})
    assert copy.status_code == 201
    assert asking.get(f"/api/designs/{copy.json()['id']}").json()["saved"]
    assert "there already" in refused(
        asking, "POST", f"{at}/duplicate", 409, json={"path": str(tmp_path / "copy.toml")}
    )
    refused(asking, "POST", f"{at}/duplicate", 422, json={"path": str(tmp_path / "copy.txt")})


def test_types_have_plain_names_and_every_operation_is_described(asking: TestClient) -> None:
    told = asking.get("/api/openapi.json").json()
    assert [name for name in told["components"]["schemas"] if "__" in name] == []
    operations = [each for path in told["paths"].values() for each in path.values()]
    assert [each["operationId"] for each in operations if not each.get("description")] == []
    names = [each["operationId"] for each in operations]
    assert len(names) == len(set(names))


def test_the_page_and_its_fonts_are_served(tmp_path: Path) -> None:
    built = tmp_path / "page"
    (built / "assets").mkdir(parents=True)
    (built / "index.html").write_text("<p>the page", encoding="utf-8")
    (built / "assets" / "a-12.js").write_text("1", encoding="utf-8")
    (tmp_path / "secret.txt").write_text("secret", encoding="utf-8")
    with client(tmp_path / "state", built) as asking:
        page = asking.get("/")
        assert (page.text, page.headers["cache-control"]) == ("<p>the page", "no-cache")
        assert "immutable" in asking.get("/assets/a-12.js").headers["cache-control"]
        assert asking.get("/fonts/sans-regular.ttf").headers["content-type"] == "font/ttf"
        for path in ("/fonts/none.ttf", "/fonts/..%2F__init__.py", "/..%2Fsecret.txt", "/%2e%2e/secret.txt"):
            assert asking.get(path).status_code == 404

"""Only this machine, only this page, only who holds the token of the run."""

from __future__ import annotations

from pathlib import Path

import pytest
from starlette.testclient import TestClient

from quarterturn.studio.guard import POLICY, TOKEN, Keys, address
from tests.studio.rooms import HOME, KEYS, client


@pytest.fixture
def asking(tmp_path: Path) -> TestClient:
    with client(tmp_path) as asking:
        return asking


@pytest.mark.parametrize(
    "host",
    [
        "quilts.example",
        "127.0.0.1",
        "127.0.0.1:80",
        "127.0.0.1:8720.evil.example",
        "localhost:8720@evil",
        "",
        "[::1]",
    ],
)
def test_a_request_for_another_host_is_turned_away(asking: TestClient, host: str) -> None:
    for path in ("/", "/api/start"):
        answer = asking.get(path, headers={"Host": host})
        assert (answer.status_code, answer.json()["detail"]) == (403, "The request is for another host.")


@pytest.mark.parametrize("host", ["127.0.0.1:8720", "localhost:8720", "[::1]:8720"])
def test_the_names_of_this_machine_are_known(asking: TestClient, host: str) -> None:
    assert asking.get("/api/acts", headers={"Host": host}).status_code == 200


@pytest.mark.parametrize(
    "origin", ["https://quilts.example", "http://127.0.0.1:8721", "https://127.0.0.1:8720", "null", ""]
)
def test_a_request_of_another_page_is_turned_away(asking: TestClient, origin: str) -> None:
    answer = asking.get("/api/acts", headers={"Origin": origin})
    assert (answer.status_code, answer.json()["detail"]) == (403, "The request comes from another page.")


@pytest.mark.parametrize("site", ["cross-site", "same-site"])
def test_what_a_browser_says_of_another_site_is_believed(asking: TestClient, site: str) -> None:
    assert asking.get("/", headers={"Sec-Fetch-Site": site}).status_code == 403


def test_the_page_itself_may_ask(asking: TestClient) -> None:
    own = {"Origin": HOME, "Sec-Fetch-Site": "same-origin"}
    assert asking.get("/api/acts", headers=own).status_code == 200


@pytest.mark.parametrize("token", ["", "the token of another run", "the token of this ru", "ö"])
def test_nothing_is_answered_without_the_token(asking: TestClient, token: str) -> None:
    for ask in (asking.get, asking.post, asking.delete, asking.options):
        for path in ("/api/start", "/api/designs", "/api/openapi.json", "/api", "/apix"):
            assert ask(path, headers={TOKEN.encode(): token.encode()}).status_code == 403


def test_the_token_may_stand_in_the_address_only_to_read(asking: TestClient) -> None:
    del asking.headers[TOKEN]
    token = {"token": KEYS.token}
    assert asking.get("/api/acts", params=token).status_code == 200
    assert asking.post("/api/designs", params=token, json={"text": ""}).status_code == 403
    assert asking.get("/api/acts", params={"token": "other"}).status_code == 403
    assert asking.get(f"/api/acts?token=other&token={KEYS.token}").status_code == 403


def test_the_page_needs_no_token_to_be_read_but_nothing_else_of_it_answers(asking: TestClient) -> None:
    del asking.headers[TOKEN]
    assert asking.get("/").status_code == 503
    assert asking.post("/").status_code == 403


def test_every_answer_forbids_what_comes_from_elsewhere(asking: TestClient) -> None:
    for answer in (
        asking.get("/"),
        asking.get("/api/acts"),
        asking.get("/api/none"),
        asking.get("/api/acts", headers={"Host": "x"}),
    ):
        assert answer.headers["content-security-policy"] == POLICY
        assert answer.headers["x-content-type-options"] == "nosniff"
        assert answer.headers["referrer-policy"] == "no-referrer"
        assert "access-control-allow-origin" not in answer.headers
        assert "server" not in answer.headers
    assert asking.get("/api/acts").headers["cache-control"] == "no-store"


def test_the_policy_lets_the_page_reach_nothing_but_its_own_server() -> None:
    allowed = {word for rule in POLICY.split("; ") for word in rule.split()[1:]}
    assert allowed <= {"'none'", "'self'", "blob:", "data:"}
    assert "script-src 'self'" in POLICY.split("; ")
    assert POLICY.startswith("default-src 'none'")


def test_the_token_is_told_where_no_browser_sends_it_and_never_printed_with_its_record() -> None:
    keys = Keys("secret", 8720)
    assert address(keys) == "http://127.0.0.1:8720/#token=secret"
    assert "secret" not in repr(keys)

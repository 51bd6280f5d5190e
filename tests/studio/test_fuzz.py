"""Whatever is sent to whatever address, the studio answers, and never with a fault of its own."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, TypeAlias

import pytest
import schemathesis
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from schemathesis import Case, GenerationMode
from schemathesis.core.result import Ok
from starlette.testclient import TestClient

from quarterturn.studio.guard import TOKEN
from tests.studio.drafts import TEXT
from tests.studio.rooms import HOME, KEYS, client, opened

AnyCase: TypeAlias = Case[Any]
EXAMPLES = 8
BOUNDED = settings(suppress_health_check=list(HealthCheck), phases=[Phase.explicit, Phase.generate])
LEAST_OPERATIONS = 40
ENDLESS = "/api/designs/{identity}/news"


@pytest.fixture(scope="module")
def asking(tmp_path_factory: pytest.TempPathFactory) -> Iterator[TestClient]:
    folder = tmp_path_factory.mktemp("fuzz")
    with pytest.MonkeyPatch.context() as patch, client(folder / "state") as asking:
        patch.chdir(folder)
        yield asking


def answer(asking: TestClient, case: AnyCase, at: str) -> tuple[int, Any]:
    """Send a case, mostly to a design that is open and at its revision; return the status and the JSON."""
    sent = dict(case.as_transport_kwargs(base_url=HOME))
    body = sent.get("json")
    if isinstance(body, dict) and "revision" in body:
        body = body | {"revision": asking.get(at).json()["revision"]}
    told = asking.request(
        sent["method"],
        sent["url"],
        params=sent.get("params"),
        headers={**sent["headers"], TOKEN: KEYS.token},
        **({"json": body} if body is not None else {"content": sent.get("data")}),
    )
    is_json = told.headers.get("content-type", "").startswith("application/json")
    return told.status_code, told.json() if is_json and told.content else None


def faults_of(asking: TestClient, cases: st.SearchStrategy[AnyCase]) -> list[object]:
    """Send cases of one operation, three of four to an open design, and return what went wrong."""
    at, faults = opened(asking, text=TEXT), list[object]()

    @settings(BOUNDED, max_examples=EXAMPLES)
    @given(cases, st.integers(0, 3))
    def fuzz(case: AnyCase, where: int) -> None:
        if where and "identity" in case.path_parameters:
            case.path_parameters["identity"] = at.rpartition("/")[2]
            if case.path == ENDLESS:
                return
        status, told = answer(asking, case, at)
        if status >= 500 or (status >= 400 and not (told and told["detail"] and told["remedy"])):
            faults.append((status, case.method, case.formatted_path, case.body, told))

    fuzz()
    return faults


@pytest.mark.parametrize("mode", list(GenerationMode))
def test_no_request_finds_a_fault(asking: TestClient, mode: GenerationMode) -> None:
    spec = asking.get("/api/openapi.json").json()
    operations = schemathesis.openapi.from_dict(spec).get_all_operations()
    strategies = [each.ok().as_strategy(generation_mode=mode) for each in operations if isinstance(each, Ok)]
    assert len(strategies) >= LEAST_OPERATIONS
    assert [faults for cases in strategies if (faults := faults_of(asking, cases))] == []


@settings(BOUNDED, max_examples=60)
@given(data=st.data())
def test_no_act_finds_a_fault_and_all_that_was_done_is_undone(
    asking: TestClient, data: st.DataObject
) -> None:
    spec = asking.get("/api/openapi.json").json()
    acts = schemathesis.openapi.from_dict(spec)["/api/designs/{identity}/acts"]["POST"]
    at = opened(asking, text=TEXT)
    for case in data.draw(st.lists(acts.as_strategy(), min_size=1, max_size=3)):
        case.path_parameters["identity"] = at.rpartition("/")[2]
        status, told = answer(asking, case, at)
        assert status in (200, 422), (case.body, told)
    for revision in range(asking.get(at).json()["revision"], 100):
        if not asking.post(f"{at}/undo", json={"revision": revision}).json()["changed"]:
            break
    assert asking.get(at).json()["text"] == TEXT

"""The studio as an application: routes, what is said of everything that goes wrong, and the page itself."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from fastapi import FastAPI, HTTPException, Request, Security
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse
from fastapi.security import APIKeyHeader
from starlette.exceptions import HTTPException as AnyHTTPException
from starlette.types import ASGIApp, Receive, Scope, Send

from quarterturn.design import Finding, UnknownSizeError
from quarterturn.design.drawings import DrawingError
from quarterturn.publish import UnprintableTextError
from quarterturn.setting.finder import SearchError
from quarterturn.studio.acts import RefusedError
from quarterturn.studio.guard import TOKEN, Guard, Keys
from quarterturn.studio.page_files import page
from quarterturn.studio.refusals import Refusal, StaleError, reason
from quarterturn.studio.routes import beginning, bringing, publishing, rehearsing, rooms, writing
from quarterturn.studio.routes.asked import Refused
from quarterturn.studio.stages import UnmadeError
from quarterturn.studio.uploads import Limit
from quarterturn.studio.views import finding_view

if TYPE_CHECKING:
    from quarterturn.studio.studio import Studio

SHOW_FAULTS = "QUARTERTURN_FAULTS"
"""Set this in the environment, and a fault of the program is shown with its traceback."""

REFUSALS: Mapping[int | str, dict[str, object]] = {
    status: {"model": Refused, "description": said}
    for status, said in {
        400: "It is not understood.",
        403: "It comes from a stranger.",
        404: "It is not there.",
        409: "It has been changed since, or is in the way.",
        413: "It is too large.",
        422: "It cannot be done.",
        500: "A fault of the program.",
    }.items()
}
ROUTES = (beginning, writing, rooms, rehearsing, bringing, publishing)


def make_app(studio: Studio, keys: Keys, built: Path) -> ASGIApp:
    """Return the studio behind its guard; `built` is the folder of the page."""
    return Guard(Limit(Faultless(api(studio, built))), keys)


def api(studio: Studio, built: Path) -> FastAPI:
    """Return the application itself, which lets in whoever asks."""
    app = FastAPI(
        title="Quarterturn studio",
        version="1",
        docs_url=None,
        redoc_url=None,
        openapi_url="/api/openapi.json",
        dependencies=[Security(APIKeyHeader(name=TOKEN, auto_error=False))],
        generate_unique_id_function=lambda route: route.name,
        responses=dict(REFUSALS),
        separate_input_output_schemas=False,
    )
    app.state.studio = studio
    for each in ROUTES:
        app.include_router(each.routes)
    for kind, answer in ANSWERS.items():
        app.add_exception_handler(kind, answer)
    app.mount("/", page(built, _http))
    return app


class Faultless:
    """Answers a fault of the program in one sentence, and shows its traceback only to those who ask."""

    def __init__(self, app: ASGIApp) -> None:
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Let the application answer. What it could not, its last handler has answered by then."""
        try:
            await self._app(scope, receive, send)
        except Exception:
            if scope["type"] != "http":
                raise
            if os.environ.get(SHOW_FAULTS):
                traceback.print_exc(file=sys.stderr)


def refused(
    status: int, detail: str, remedy: str, findings: tuple[Finding, ...] = (), **more: object
) -> JSONResponse:
    """Return an answer that refuses; findings bring the place of the first."""
    place = findings[0].place if findings else None
    where = {"line": place.line if place else None, "column": place.column if place else None}
    body = Refused.model_validate(
        {"detail": detail, "remedy": remedy, "findings": tuple(map(finding_view, findings)), **where, **more}
    )
    return JSONResponse(body.model_dump(mode="json"), status_code=status)


def _refusal(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, Refusal)
    revision = error.revision if isinstance(error, StaleError) else None
    return refused(error.status, error.sentence, error.remedy, revision=revision)


def _refused_act(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, RefusedError)
    return refused(422, error.sentence, error.remedy, can_anyway=error.can_anyway)


def _unmade(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, UnmadeError)
    first = error.findings[0]
    return refused(422, first.sentence, first.remedy, error.findings)


def _drawing(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, DrawingError)
    remedy = "Save the drawing as plain SVG, and bring it again."
    return refused(422, _sentence(error.reason), remedy, line=error.line or None, column=error.column or None)


def _unknown_size(_: Request, error: Exception) -> JSONResponse:
    return refused(404, _sentence(str(error)), "Choose one of the sizes that the design has.")


def _unsearchable(_: Request, error: Exception) -> JSONResponse:
    return refused(422, _sentence(str(error)), "Choose otherwise, and search again.")


def _unprintable(_: Request, error: Exception) -> JSONResponse:
    return refused(422, _sentence(str(error)), "Write it with other letters.")


def _file(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, OSError)
    return refused(422, _sentence(reason(error)), "Mend that, and try again.")


def _not_understood(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, RequestValidationError)
    first = error.errors()[0]
    place = ".".join(str(part) for part in first["loc"])
    said = f"The request is not understood: {place}: {first['msg']}."
    return refused(422, said.encode(errors="replace").decode(), "Load the page anew.")


def _http(_: Request, error: Exception) -> JSONResponse:
    assert isinstance(error, AnyHTTPException)
    answer = refused(error.status_code, _sentence(str(error.detail)), "Load the page anew.")
    answer.headers.update(error.headers or {})
    return answer


def _fault(_: Request, error: Exception) -> JSONResponse:
    said = f"This is a fault of the program, not of your design ({type(error).__name__})."
    return refused(500, said, "Undo the last step, or go on elsewhere; nothing that was done is lost.")


def _sentence(said: str) -> str:
    return f"{said[:1].upper()}{said[1:].rstrip('.')}."


ANSWERS = {
    Refusal: _refusal,
    RefusedError: _refused_act,
    UnmadeError: _unmade,
    DrawingError: _drawing,
    UnknownSizeError: _unknown_size,
    SearchError: _unsearchable,
    UnprintableTextError: _unprintable,
    OSError: _file,
    RequestValidationError: _not_understood,
    AnyHTTPException: _http,
    HTTPException: _http,
    Exception: _fault,
}
"""What each kind of thing that goes wrong is answered with."""

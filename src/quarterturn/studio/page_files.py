"""Serve the page: what the build made of `frontend/`, and the fonts that the booklet is set in."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, Response
from starlette.routing import Mount, Route
from starlette.staticfiles import StaticFiles

Answer = Callable[[Request, Exception], Response]

PAGE = Path(__file__).parent / "page"
INDEX = "index.html"
SANS, SERIF = "font_source_sans_pro", "font_source_serif_pro"
FONTS = {
    "sans-regular.ttf": (SANS, "SourceSansPro"),
    "sans-italic.ttf": (SANS, "SourceSansProIt"),
    "sans-semibold.ttf": (SANS, "SourceSansProSemibold"),
    "sans-bold.ttf": (SANS, "SourceSansProBold"),
    "serif-regular.ttf": (SERIF, "SourceSerifPro"),
    "serif-italic.ttf": (SERIF, "SourceSerifProIt"),
    "serif-semibold.ttf": (SERIF, "SourceSerifProSemibold"),
}
"""The fonts of the page, by the names under which it asks for them."""

UNBUILT = (
    "<!doctype html><html lang=en><title>Quarterturn</title><p>The page of the studio has not been built. "
    "Start it by ./quarterturn studio from the folder of the source, which builds it."
)
LASTING = "public, max-age=31536000, immutable"


def page(built: Path, not_here: Answer) -> Starlette:
    """Return the files of the page; `built` is where the build put them. `not_here` answers for what is none."""
    routes: list[Route | Mount] = [
        Route("/", lambda request: _index(built)),
        Route("/fonts/{name}", _font),
    ]
    if built.is_dir():
        routes.append(Mount("/", _Assets(directory=built, check_dir=False)))
    return Starlette(routes=routes, exception_handlers={HTTPException: not_here})


class _Assets(StaticFiles):
    """Files whose names tell their content are kept by the browser; others are asked for again."""

    def file_response(self, *args: object, **kwargs: object) -> Response:
        answer = super().file_response(*args, **kwargs)  # type: ignore[arg-type]
        is_lasting = "assets" in Path(str(args[0])).parts
        answer.headers["Cache-Control"] = LASTING if is_lasting else "no-cache"
        return answer


def _index(built: Path) -> Response:
    file = built / INDEX
    if not file.is_file():
        return HTMLResponse(UNBUILT, status_code=503)
    return FileResponse(file, media_type="text/html", headers={"Cache-Control": "no-cache"})


def _font(request: Request) -> Response:
    file = _fonts().get(request.path_params["name"])
    if file is None:
        raise HTTPException(404)
    return FileResponse(file, media_type="font/ttf", headers={"Cache-Control": LASTING})


@cache
def _fonts() -> dict[str, Path]:
    """Return where each font is."""
    from importlib import import_module

    return {name: Path(getattr(import_module(package), font)) for name, (package, font) in FONTS.items()}

"""Serve the page: what the build made of `frontend/`, and the fonts that the booklet is set in."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from pathlib import Path

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, Response
from starlette.routing import Route

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
KINDS = {
    ".html": "text/html",
    ".js": "text/javascript",
    ".css": "text/css",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".json": "application/json",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
}
LASTING = "public, max-age=31536000, immutable"


def page(built: Path, not_here: Answer) -> Starlette:
    """Return the files of the page; `built` is where the build put them. `not_here` answers for what is none.

    They are read once: a page that is open stays whole while another is built, and no request opens a path.
    """
    files = {file.relative_to(built).as_posix(): file.read_bytes() for file in _files(built)}

    def answer(request: Request) -> Response:
        name = request.path_params["name"] or INDEX
        if name not in files:
            raise HTTPException(404)
        lasting = LASTING if name.startswith("assets/") else "no-cache"
        kind = KINDS.get(name[name.rfind(".") :], "application/octet-stream")
        return Response(files[name], media_type=kind, headers={"Cache-Control": lasting})

    def unbuilt(_: Request) -> Response:
        return HTMLResponse(UNBUILT, status_code=503)

    routes = [
        Route("/fonts/{name}", _font),
        *([] if INDEX in files else [Route("/", unbuilt)]),
        Route("/{name:path}", answer),
    ]
    return Starlette(routes=routes, exception_handlers={HTTPException: not_here})


def _files(built: Path) -> list[Path]:
    return sorted(file for file in built.rglob("*") if file.is_file() and not file.name.startswith("."))


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

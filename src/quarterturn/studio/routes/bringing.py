"""What is brought into a design: outlines from a drawing, photos of cloth. A request's body is the file itself."""

from __future__ import annotations

import re
from typing import Annotated, Any

from fastapi import APIRouter, Path, Query, Response
from fastapi.concurrency import run_in_threadpool
from starlette.requests import Request

from quarterturn.files import write_file
from quarterturn.studio.filing import content_of
from quarterturn.studio.papers import Paper
from quarterturn.studio.refusals import NotHereError, Refusal, reason
from quarterturn.studio.routes.asked import Open, Room
from quarterturn.studio.studio import Studio
from quarterturn.studio.uploads import MOST_PHOTO_BYTES, PhotoError, Picture, read_photo
from quarterturn.studio.views import OutlinesView, PaletteView, outlines_view, palette_view
from quarterturn.studio.views.model import View
from quarterturn.studio.views.palette import Crop

routes = APIRouter(prefix="/api/designs/{identity}", tags=["bringing"])
Share = Annotated[float, Query(ge=0, le=1, allow_inf_nan=False)]
PLAIN_NAME = re.compile(r"[^/\\\0]{1,120}\.(jpe?g|png|webp)", re.IGNORECASE)


class TakenPhoto(View):
    """A photo that was taken in: the name for the key `photo`, and its points."""

    file: str
    width: int
    height: int


def _bytes(*kinds: str) -> dict[str, Any]:
    schema = {"type": "string", "format": "binary"}
    content = {kind: {"schema": schema} for kind in kinds}
    return {"requestBody": {"required": True, "content": content}}


PHOTO_BODY = _bytes("image/jpeg", "image/png", "image/webp")


@routes.post("/outline", openapi_extra=_bytes("image/svg+xml"))
async def outline(paper: Open, request: Request) -> OutlinesView:
    """Return what a drawing in SVG holds."""
    drawing = await request.body()
    return await run_in_threadpool(_outlines, paper, drawing)


@routes.post("/photo", status_code=201, openapi_extra=PHOTO_BODY)
async def photo(paper: Open, studio: Room, request: Request) -> TakenPhoto:
    """Take in a photo of cloth, and keep it beside the design."""
    content = await request.body()
    return await run_in_threadpool(_kept, paper, studio, content)


@routes.post("/palette", openapi_extra=PHOTO_BODY)
async def palette(
    paper: Open,
    request: Request,
    left: Share = 0.0,
    top: Share = 0.0,
    width: Share = 1.0,
    height: Share = 1.0,
) -> PaletteView:
    """Return the colours of a photo, or of what is cut out of it, and which fabrics could have them."""
    content = await request.body()
    return await run_in_threadpool(_palette, paper, content, (left, top, width, height))


@routes.get("/photo/{file}", response_class=Response, responses={200: {"content": {"image/jpeg": {}}}})
def photo_file(paper: Open, studio: Room, file: Annotated[str, Path(max_length=130)]) -> Response:
    """Return a photo that the design names, or that was taken in for it."""
    if not PLAIN_NAME.fullmatch(file):
        raise NotHereError("There is no such photo.", "Bring it again.")
    try:
        content = content_of(studio.desk.photos(paper) / file, MOST_PHOTO_BYTES)
    except OSError as error:
        raise NotHereError("There is no such photo.", "Bring it again.") from error
    return Response(_read(content).content, media_type="image/jpeg")


def _outlines(paper: Paper, drawing: bytes) -> OutlinesView:
    _, made = paper.made()
    return outlines_view(drawing, made.design.units)


def _kept(paper: Paper, studio: Studio, content: bytes) -> TakenPhoto:
    picture = _read(content)
    folder = studio.desk.photos(paper)
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_file(folder / picture.file, picture.content)
    except OSError as error:
        raise Refusal(reason(error), "Save the design where photos can lie beside it.") from error
    return TakenPhoto(file=picture.file, width=picture.width, height=picture.height)


def _palette(paper: Paper, content: bytes, crop: Crop) -> PaletteView:
    _, made = paper.made()
    if crop[0] + crop[2] > 1.001 or crop[1] + crop[3] > 1.001 or min(crop[2:]) < 0.001:
        raise Refusal("What is cut out does not lie in the photo.", "Move its corners into the photo.")
    return palette_view(_read(content).content, made.design, crop=crop)


def _read(content: bytes) -> Picture:
    try:
        return read_photo(content)
    except PhotoError as error:
        raise Refusal(error.sentence, error.remedy) from error

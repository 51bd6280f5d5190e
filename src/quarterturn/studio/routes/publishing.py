"""Publishing: start it, follow it, call it off, and take what was made."""

from __future__ import annotations

from mimetypes import guess_type
from typing import Annotated

from fastapi import APIRouter, Path, Response

from quarterturn.studio.publishing import Progress, PublishOrder, State, zipped
from quarterturn.studio.refusals import NotHereError
from quarterturn.studio.routes.asked import Open, Room
from quarterturn.studio.views import FindingView, finding_view
from quarterturn.studio.views.model import View

routes = APIRouter(prefix="/api/designs/{identity}", tags=["publishing"])
OPAQUE = "application/octet-stream"
KINDS = {".dxf": "image/vnd.dxf", ".csv": "text/csv; charset=utf-8", ".txt": "text/plain; charset=utf-8"}


class PublishView(View):
    """How far a publish has come."""

    state: State
    revision: int
    part: str
    folder: str
    reason: str
    remedy: str
    findings: tuple[FindingView, ...]


class PublishedFile(View):
    """A published file."""

    name: str
    bytes: int


class FilesView(View):
    """What was published last."""

    files: tuple[PublishedFile, ...]


@routes.post("/publish", status_code=202)
def publish(paper: Open, studio: Room, order: PublishOrder) -> PublishView:
    """Begin to publish; the news tell how it goes."""
    return _view(studio.press.start(paper, order))


@routes.get("/publish")
def published(paper: Open, studio: Room) -> PublishView:
    """Return how far it has come."""
    return _view(studio.press.progress(paper))


@routes.post("/publish/cancel")
def cancel(paper: Open, studio: Room) -> PublishView:
    """Call it off."""
    return _view(studio.press.call_off(paper))


@routes.get("/files")
def files(paper: Open, studio: Room) -> FilesView:
    """Return what was published last."""
    made = studio.press.files(paper)
    return FilesView(files=tuple(PublishedFile(name=name, bytes=len(made[name])) for name in made))


@routes.get("/files.zip", response_class=Response, responses={200: {"content": {"application/zip": {}}}})
def files_zip(paper: Open, studio: Room) -> Response:
    """Return all of it as one archive."""
    made = studio.press.files(paper)
    if not made:
        raise NotHereError("Nothing has been published yet.", "Publish the design first.")
    name = f"{paper.now.path.stem if paper.now.path else 'pattern'}.zip"
    return _download(name, zipped(made), "application/zip")


@routes.get("/files/{name}", response_class=Response, responses={200: {"content": {OPAQUE: {}}}})
def file(paper: Open, studio: Room, name: Annotated[str, Path(max_length=200)]) -> Response:
    """Return one of its files."""
    content = studio.press.file(paper, name)
    suffix = name[name.rfind(".") :]
    return _download(name, content, KINDS.get(suffix) or guess_type(name)[0] or OPAQUE)


def _download(name: str, content: bytes, kind: str) -> Response:
    from urllib.parse import quote

    headers = {"Content-Disposition": f"attachment; filename*=UTF-8''{quote(name)}"}
    return Response(content, media_type=kind, headers=headers)


def _view(progress: Progress) -> PublishView:
    return PublishView(
        state=progress.state,
        revision=progress.revision,
        part=progress.part,
        folder=str(progress.folder or ""),
        reason=progress.reason,
        remedy=progress.remedy,
        findings=tuple(map(finding_view, progress.findings)),
    )

"""The envelope's front: what there is to begin with, its pictures, and opening a design."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Annotated

from fastapi import APIRouter, Query, Response

from quarterturn.studio.acts import ACTS, name_of
from quarterturn.studio.filing import place, read_file
from quarterturn.studio.folders import look_into
from quarterturn.studio.gallery import examples
from quarterturn.studio.papers import Paper
from quarterturn.studio.recent import MOST, Entry
from quarterturn.studio.refusals import NotHereError, Refusal
from quarterturn.studio.routes.asked import ActName, Opened, OpenOrder, Room
from quarterturn.studio.stages import Stages
from quarterturn.studio.studio import Studio
from quarterturn.studio.views import (
    BegunView,
    FolderView,
    NewDesign,
    RecentView,
    StartView,
    beginning,
    begun,
    folder_view,
    picture_svg,
    start_view,
)

routes = APIRouter(prefix="/api", tags=["start"])
_pictures = Stages()
FolderName = Annotated[str, Query(max_length=1000)]
Name = Annotated[str | None, Query(max_length=80)]


@routes.get("/start")
def start(studio: Room) -> StartView:
    """Return what there is to begin with."""
    return start_view(tuple(_recent(entry) for entry in studio.desk.entries()[:MOST]), examples())


@routes.post("/start")
def come_to(new: NewDesign) -> BegunView:
    """Return what a new design would come to. Nothing is begun."""
    return begun(new, _pictures.at(beginning(new)).size())


@routes.get("/folder")
def folder(path: FolderName = "") -> FolderView:
    """Return what lies in a folder, or in that of a file; the home folder where none is named."""
    return folder_view(look_into(path))


@routes.get("/acts")
def acts() -> list[ActName]:
    """Return every act that there is."""
    return [ActName(name=name_of(act), key=act.key) for act in ACTS]


@routes.get("/picture", response_class=Response, responses={200: {"content": {"image/svg+xml": {}}}})
def picture(studio: Room, example: Name = None, setting: Name = None, recent: Name = None) -> Response:
    """Return the sewn top of an example, a known setting or a recent design, small."""
    named = [name for name in (example, setting, recent) if name is not None]
    if len(named) != 1:
        raise Refusal("This names no one design.", "Name an example, a setting or a recent design.")
    text = _text(studio, example, setting, recent)
    return Response(picture_svg(_pictures.at(text).size()), media_type="image/svg+xml")


@routes.post("/designs", status_code=201)
def open_design(studio: Room, order: OpenOrder) -> Opened:
    """Open a design."""
    return Opened(id=_opened(studio, order).id)


def _opened(studio: Studio, order: OpenOrder) -> Paper:
    if len(order.model_fields_set) != 1:
        raise Refusal("This names no one design.", "Open a file, an example, a new design or a text.")
    if order.open is not None:
        return studio.desk.open(place(order.open))
    if order.recent is not None:
        return studio.desk.paper(order.recent)
    if order.example is not None:
        return studio.desk.begin(_example(order.example))
    if order.new is not None:
        return studio.desk.begin(beginning(order.new))
    if order.text is not None:
        return studio.desk.begin(order.text)
    raise Refusal("This names no design.", "Open a file, an example, a new design or a text.")


def _text(studio: Studio, example: str | None, setting: str | None, recent: str | None) -> str:
    from quarterturn.setting.known import known_names, known_setting

    if example is not None:
        return _example(example)
    if setting is not None:
        if setting not in known_names():
            raise NotHereError(
                f"There is no known setting {setting!r}.", f"Choose {', '.join(known_names())}."
            )
        return known_setting(setting).text
    entry = next((entry for entry in studio.desk.entries() if entry.id == recent), None)
    if entry is None:
        raise NotHereError("This design was not open before.", "Open it from the start page.")
    return read_file(entry.path).text if entry.path else studio.desk.paper(entry.id).now.text


def _example(name: str) -> str:
    if name not in examples():
        raise NotHereError(f"There is no example {name!r}.", f"Choose {', '.join(examples())}.")
    return examples()[name]


def _recent(entry: Entry) -> RecentView:
    return RecentView(
        id=entry.id,
        path=str(entry.path or ""),
        title=entry.title,
        changed=datetime.fromtimestamp(entry.changed, UTC).isoformat(timespec="seconds"),
        missing=entry.path is not None and not entry.path.is_file(),
    )

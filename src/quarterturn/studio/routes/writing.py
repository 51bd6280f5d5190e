"""A design as a paper: what it is, what is done to it, where it is saved, and its news."""

from __future__ import annotations

from pathlib import Path

from fastapi import APIRouter
from fastapi.responses import StreamingResponse

from quarterturn.studio.filing import place
from quarterturn.studio.folders import make_folder_of
from quarterturn.studio.papers import Paper
from quarterturn.studio.routes.asked import (
    ActOrder,
    CopyOrder,
    KeepOrder,
    Open,
    Opened,
    Outcome,
    PaperView,
    RevisionOrder,
    Room,
    SaveOrder,
    outcome,
)
from quarterturn.studio.studio import Studio
from quarterturn.studio.views import paper_facts

routes = APIRouter(prefix="/api/designs/{identity}", tags=["design"])


@routes.get("")
def design(paper: Open, studio: Room) -> PaperView:
    """Return a design as it is."""
    return _view(paper, studio)


@routes.post("/acts")
def act(paper: Open, order: ActOrder) -> Outcome:
    """Do an act."""
    return outcome(paper.act(order.revision, order.act))


@routes.post("/undo")
def undo(paper: Open, order: RevisionOrder) -> Outcome:
    """Undo the last step."""
    return outcome(paper.undo(order.revision))


@routes.post("/redo")
def redo(paper: Open, order: RevisionOrder) -> Outcome:
    """Redo what was undone last."""
    return outcome(paper.redo(order.revision))


@routes.post("/save")
def save(paper: Open, studio: Room, order: SaveOrder) -> PaperView:
    """Save it in its file, or in another."""
    path = _new_place(order.path, make_folder=order.make_folder) if order.path else None
    studio.desk.save(paper, path, replace=order.replace)
    return _view(paper, studio)


@routes.post("/outside")
def keep(paper: Open, order: KeepOrder) -> Outcome:
    """Go on with one of two texts, after the file was changed by someone else."""
    return outcome(paper.keep(order.revision, ours=order.keep == "ours"))


@routes.post("/duplicate", status_code=201)
def duplicate(paper: Open, studio: Room, order: CopyOrder) -> Opened:
    """Copy it into a new file, and open that."""
    return Opened(id=studio.desk.duplicate(paper, _new_place(order.path, make_folder=order.make_folder)).id)


@routes.post("/close", status_code=204)
def close(paper: Open, studio: Room) -> None:
    """Close it; all that was done to it is kept."""
    studio.press.forget(paper)
    studio.desk.close(paper)


@routes.get(
    "/news", response_class=StreamingResponse, responses={200: {"content": {"text/event-stream": {}}}}
)
async def news(paper: Open) -> StreamingResponse:
    """Return a stream of what happens to it: revision, saved, figures, plans, findings, outside, window, publish."""
    return StreamingResponse(paper.news.listen(), media_type="text/event-stream")


def _new_place(written: str, *, make_folder: bool) -> Path:
    path = place(written, new=True)
    if make_folder:
        make_folder_of(path)
    return path


def _view(paper: Paper, studio: Studio) -> PaperView:
    now, made = paper.made()
    facts = paper_facts(made)
    return PaperView(
        **{name: getattr(facts, name) for name in type(facts).model_fields},
        id=paper.id,
        revision=now.revision,
        path=str(now.path or ""),
        name=paper.name,
        saved=now.is_saved,
        missing=now.path is not None and not now.path.is_file(),
        outside=now.is_outside,
        elsewhere=paper.news.is_elsewhere,
        can_undo=now.done is not None,
        can_redo=now.undone is not None,
        undo_of=now.done or "",
        redo_of=now.undone or "",
        found=studio.worker.found(paper, now.revision),
    )

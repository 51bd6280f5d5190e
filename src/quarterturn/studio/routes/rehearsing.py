"""The rehearsal: start it, follow it, call it off. What it found, the rooms tell."""

from __future__ import annotations

from fastapi import APIRouter

from quarterturn.studio.rehearsing import Progress, State
from quarterturn.studio.routes.asked import At, Open, Room
from quarterturn.studio.views.model import View

routes = APIRouter(prefix="/api/designs/{identity}", tags=["rehearsing"])


class RehearsingView(View):
    """How far a rehearsal has come: `done` of `steps`."""

    state: State
    revision: int
    size: str
    done: int
    steps: int
    reason: str


@routes.post("/rehearse", status_code=202)
def rehearse(at: At, studio: Room) -> RehearsingView:
    """Begin to rehearse; the news tell how it goes."""
    return _view(studio.rehearsals.start(at.paper, at.revision, at.size))


@routes.get("/rehearse")
def rehearsing(paper: Open, studio: Room) -> RehearsingView:
    """Return how far it has come."""
    return _view(studio.rehearsals.progress(paper))


@routes.post("/rehearse/cancel")
def cancel_rehearsal(paper: Open, studio: Room) -> RehearsingView:
    """Call it off."""
    return _view(studio.rehearsals.call_off(paper))


def _view(now: Progress) -> RehearsingView:
    return RehearsingView(
        state=now.state,
        revision=now.revision,
        size=now.size,
        done=now.done,
        steps=now.steps,
        reason=now.reason,
    )

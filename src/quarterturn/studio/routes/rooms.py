"""The rooms: each asks its view of the design as it is."""

from __future__ import annotations

from typing import Annotated

from fastapi import APIRouter, Path, Query, Response

from quarterturn.studio.acts import do
from quarterturn.studio.refusals import NotHereError
from quarterturn.studio.routes.asked import At, Drawn, LookOrder, Open, Room, TickOrder
from quarterturn.studio.studio import Studio
from quarterturn.studio.views import (
    BlocksView,
    BookletView,
    ClothRoom,
    CuttingView,
    FiguresView,
    FilmView,
    FinderView,
    FindQuestion,
    FindView,
    FrameView,
    MakingView,
    ProofView,
    QuiltView,
    SeamsView,
    SizesView,
    TemplatesView,
    ValuesView,
    blocks_view,
    booklet_pages,
    booklet_view,
    cloth_view,
    cutting_view,
    figures_view,
    film_view,
    find_view,
    finder_view,
    frame_view,
    making_view,
    proof_view,
    quilt_view,
    seams_view,
    sizes_view,
    templates_view,
    values_view,
)

routes = APIRouter(prefix="/api/designs/{identity}", tags=["rooms"])
Number = Annotated[int, Path(ge=1, le=1_000_000)]


@routes.get("/quilt")
def quilt(at: At) -> QuiltView:
    """Return all that is drawn of the quilt."""
    return quilt_view(at.revision, at.size)


@routes.get("/figures")
def figures(at: At, studio: Room) -> FiguresView:
    """Return the figures: the quick ones until the proved plans are in."""
    return figures_view(at.revision, at.size, studio.worker.effort(at.paper, at.revision))


@routes.get("/blocks")
def blocks(at: At) -> BlocksView:
    """Return the drafting table."""
    return blocks_view(at.revision, at.made)


@routes.get("/cloth")
def cloth(at: At) -> ClothRoom:
    """Return the fabrics."""
    return cloth_view(at.revision, at.size)


@routes.get("/values")
def values(at: At) -> ValuesView:
    """Return the values of the tables that are set in fields."""
    return values_view(at.revision, at.made)


@routes.get("/cutting")
def cutting(at: At, studio: Room) -> CuttingView:
    """Return the plans: the quick ones until the proved ones are in."""
    effort = studio.worker.effort(at.paper, at.revision)
    return cutting_view(at.revision, at.made, at.size, effort)


@routes.get("/sizes")
def sizes(at: At) -> SizesView:
    """Return what each known bed takes."""
    return sizes_view(at.revision, at.size)


@routes.get("/seams")
def seams(at: At) -> SeamsView:
    """Return what is laid over the quilt: joins, flow, bulk, pressing."""
    return seams_view(at.revision, at.size)


@routes.get("/proof")
def proof(at: At, rehearse: bool = False) -> ProofView:
    """Return the findings, with the rehearsal if that is wanted."""
    return proof_view(at.revision, at.made, rehearse=rehearse)


@routes.get("/rehearsal")
def rehearsal(at: At) -> FilmView:
    """Return the list of steps, and what the rehearsal came to."""
    return film_view(at.revision, at.size)


@routes.get("/rehearsal/{step}")
def rehearsed(at: At, step: Number) -> FrameView:
    """Return what is on the table after a step."""
    try:
        return frame_view(at.revision, at.size, step)
    except IndexError as error:
        raise NotHereError("There is no such step.", "Choose one of the list.") from error


@routes.get("/finder")
def finder(at: At) -> FinderView:
    """Return what the finder can be asked for."""
    return finder_view(at.revision, at.size)


@routes.post("/find")
def find(at: At, studio: Room, question: FindQuestion) -> FindView:
    """Return the best settings of a kind. A search that another one overtakes, or an edit, ends as stale."""
    return find_view(at.revision, at.size, question, studio.searches.begin(at.paper, at.revision))


@routes.post("/find/cancel", status_code=204)
def cancel_search(paper: Open, studio: Room) -> None:
    """End what is being searched for."""
    studio.searches.call_off(paper)


@routes.post("/look")
def look(at: At, order: LookOrder) -> QuiltView:
    """Return the quilt as an act would leave it; nothing is changed."""
    return quilt_view(at.revision, do(order.act, at.made.text, at.paper.stages).made.size())


@routes.get("/booklet")
def booklet(at: At, opening: bool = False) -> BookletView:
    """Return the booklet, without its pages' pictures; or, sooner, only what stands before the work."""
    return booklet_view(at.revision, at.made, opening=opening)


@routes.get("/booklet/{page}.png", response_class=Response, responses={200: {"content": {"image/png": {}}}})
def booklet_page(
    at: At, page: Number, width: Annotated[int, Query(ge=50, le=4000)] = 800, opening: bool = False
) -> Response:
    """Return a page as it will print, about so many pixels across."""
    pages = booklet_pages(at.made, width, opening=opening)
    if page > len(pages):
        raise NotHereError("There is no such page.", "Choose one of the list.")
    return Response(pages[page - 1], media_type="image/png")


@routes.get("/templates")
def templates(at: At) -> TemplatesView:
    """Return the pages of templates at their true size."""
    return templates_view(at.revision, at.size)


@routes.get("/making")
def making(at: At, studio: Room) -> MakingView:
    """Return the work, with what is ticked off."""
    return _making(at, studio)


@routes.post("/making/tick")
def tick(at: At, studio: Room, order: TickOrder) -> MakingView:
    """Tick something off, or take its tick away."""
    drawn = Drawn(at.paper, order.size)
    with studio.ticking:
        studio.ticks.tick(at.paper.id, drawn.size.design.size, order.entry, done=order.done)
    return _making(drawn, studio)


@routes.post("/making/untick")
def untick(at: At, studio: Room) -> MakingView:
    """Take all ticks away, to begin anew."""
    with studio.ticking:
        studio.ticks.clear(at.paper.id, at.size.design.size)
    return _making(at, studio)


def _making(at: Drawn, studio: Studio) -> MakingView:
    with studio.ticking:
        ticked = studio.ticks.of(at.paper.id, at.size.design.size)
    return making_view(at.revision, at.size, ticked)

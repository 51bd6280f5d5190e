"""Cutting: the plan of each fabric to scale, the web, what is bought and how near that is to the least; all sizes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from quarterturn.design import write_length
from quarterturn.materials import (
    EFFORT,
    ClothPlan,
    Effort,
    ShoppingLine,
    Split,
    StripGroup,
    gap_percent,
    show_bought,
    show_money,
)
from quarterturn.measure import Length, Units, show_cloth, show_count, show_length, show_plain
from quarterturn.publish.wording import cutting_advice, parcel_line, plan_line, plans_explained
from quarterturn.studio.stages import Made, OneSize
from quarterturn.studio.views.decided import DecisionView, StripKindView, decisions, strip_kinds
from quarterturn.studio.views.figures import FiguresView, figures_view
from quarterturn.studio.views.marks import MarksView, marks_of
from quarterturn.studio.views.model import LengthView, View, inches_of
from quarterturn.studio.views.web import WebView, web_view


class RectView(View):
    """A piece, or an offcut where it has no label, on its cloth: inches from the top left, x across the cloth."""

    label: str
    x: float
    y: float
    width: float
    height: float


class StripView(View):
    """A strip across the cloth: its label and number in its group, where it lies, and what is cut from it."""

    label: str
    number: int
    y: float
    width: float
    height: float
    pieces: tuple[RectView, ...]
    whole: bool
    """Whether it is joined to others before it is cut."""
    parcel: int | None
    """Which of the plan's pieces of cloth it is cut from, from 0; none where it comes off the bolt."""
    said: str


class ParcelView(View):
    """A piece of cloth: how large it is as it lies to be cut, where what it is squared up to begins, and its size."""

    said: str
    upright: bool
    """Whether its strips run along the cloth."""
    y: float
    width: float
    height: float
    whole_width: float
    whole_height: float


class RunCutView(View):
    """Equal pieces that are cut from a run of strips."""

    label: str
    count: int
    length: LengthView


class RunView(View):
    """Strips joined end to end, and what is cut from the run."""

    label: str
    strip: str
    strips: int
    method: str
    length: LengthView
    height: LengthView
    pieces: tuple[RunCutView, ...]


class PieceView(View):
    """A piece of the bill: what it is for, its size as cut, how many are cut, and where it is seen in the quilt."""

    label: str
    name: str
    purpose: str
    size: str
    count: int
    spare: int
    used_for: str
    marks: MarksView


class PlanView(View):
    """The cutting plan of a fabric. What comes first is cut first."""

    letter: str
    name: str
    colour: str
    width: LengthView
    strips: tuple[StripView, ...]
    parcels: tuple[ParcelView, ...]
    """Pieces of cloth that are cut into, where it comes so; their strips lie below those off the bolt."""
    kinds: tuple[StripKindView, ...]
    decisions: tuple[DecisionView, ...]
    heights: tuple[str, ...]
    """The heights that its strips may have; any where there is none."""
    runs: tuple[RunView, ...]
    pieces: tuple[PieceView, ...]
    bought: LengthView
    cut: LengthView
    squaring: LengthView
    slack: LengthView
    bound: LengthView
    hand_rule: LengthView
    gap_percent: float
    unplaced: tuple[str, ...]
    other_way: LengthView | None
    undecided: LengthView | None
    """What would be bought if no strips were decided on."""
    price: str | None
    said: str


class LineView(View):
    """Something that is bought, as the shopping list has it."""

    key: str
    amount: str
    width: str
    price: str | None
    matches: str


class CuttingView(View):
    """All plans of one size, and the figures of every size side by side."""

    revision: int
    settled: bool
    size: str
    plans: tuple[PlanView, ...]
    web: WebView
    shopping: tuple[LineView, ...]
    advice: tuple[str, ...]
    sizes: tuple[FiguresView, ...]


def cutting_view(
    revision: int, made: Made, size: OneSize, effort: Effort = EFFORT, *, all_sizes: bool = True
) -> CuttingView:
    """Return the plans of a size. Raises UnmadeError where the quilt does not fit together."""
    materials, pattern = size.materials(effort), size.pattern(effort)
    sizes = made.sizes if all_sizes else (size,)
    return CuttingView(
        revision=revision,
        settled=effort == EFFORT,
        size=size.design.size,
        plans=tuple(_plan(size, plan, effort) for plan in materials.cloth),
        web=web_view(size, effort),
        shopping=tuple(_lines(size, effort)),
        advice=(*cutting_advice(pattern), *plans_explained(pattern)),
        sizes=tuple(figures_view(revision, each, effort) for each in sizes),
    )


def _plan(size: OneSize, plan: ClothPlan, effort: Effort) -> PlanView:
    design = size.laid_design
    fabric = design.fabric(plan.fabric)
    line = next((each for each in size.materials(effort).shopping if each.key == plan.fabric), None)
    return PlanView(
        letter=plan.fabric,
        name=fabric.name,
        colour=fabric.colour,
        width=_length(size, plan.usable_width),
        strips=tuple(_strips(size, plan)),
        parcels=tuple(_parcels(plan)),
        kinds=tuple(strip_kinds(size, plan)),
        decisions=tuple(decisions(size, plan)),
        heights=tuple(write_length(height, design.units) for height in fabric.strip_heights),
        runs=tuple(_runs(size, plan)),
        pieces=tuple(_pieces(size, plan.fabric)),
        bought=LengthView(inches=inches_of(plan.bought), text=show_bought(plan, design.units)),
        cut=_length(size, plan.cut_length),
        squaring=_length(size, plan.squaring),
        slack=_length(size, plan.slack),
        bound=_length(size, plan.lower_bound),
        hand_rule=_length(size, plan.hand_rule),
        gap_percent=round(gap_percent(plan), 2),
        unplaced=plan.unplaced,
        other_way=None if plan.other_way is None else _cloth(size, plan.other_way),
        undecided=None if plan.unpinned is None else _cloth(size, plan.unpinned),
        price=None if line is None or line.price is None else show_money(line.price),
        said=plan_line(size.pattern(effort), plan),
    )


def _strips(size: OneSize, plan: ClothPlan) -> Iterator[StripView]:
    """Yield what is cut across the cloth, one below the other in cutting order: lengths for the backing first."""
    top = 0.0
    for group in plan.panels:
        for number in range(1, group.panels + 1):
            height, width = float(group.cut_length), float(plan.usable_width)
            piece = RectView(
                label=group.piece, x=0.0, y=inches_of(top), width=inches_of(width), height=inches_of(height)
            )
            yield StripView(
                label=group.piece,
                number=number,
                y=inches_of(top),
                width=inches_of(width),
                height=inches_of(height),
                pieces=(piece,),
                whole=True,
                parcel=None,
                said=f"{show_length(group.cut_length, size.design.units)}",
            )
            top += height
    for strips in plan.strips:
        for number in range(1, strips.strips + 1):
            yield _strip(size, strips, number, top, plan.usable_width)
            top += float(strips.height)
    yield from _from_parcels(size, plan)


def _strip(
    size: OneSize, group: StripGroup, number: int, top: float, width: Length, parcel: int | None = None
) -> StripView:
    return StripView(
        label=group.label,
        number=number,
        y=inches_of(top),
        width=inches_of(width),
        height=inches_of(group.height),
        pieces=tuple(_cuts(group, 0.0, top, float(width))),
        whole=not group.pieces,
        parcel=parcel,
        said=show_length(group.height, size.design.units),
    )


def _parcels(plan: ClothPlan) -> Iterator[ParcelView]:
    """Yield the pieces of cloth, those cut alike one after the other, below what comes off the bolt."""
    top = float(_off_the_bolt(plan))
    for layout in plan.parcels.layouts if plan.parcels else ():
        assert plan.parcels, "a layout is of pieces of cloth"
        stock = plan.parcels.stock(layout.stock)
        sides = (stock.width, stock.height)
        across, down = reversed(sides) if layout.upright else sides
        for number in range(1, layout.count + 1):
            yield ParcelView(
                said=parcel_line(plan, layout, number),
                upright=layout.upright,
                y=inches_of(top),
                width=inches_of(layout.length),
                height=inches_of(layout.room),
                whole_width=inches_of(across),
                whole_height=inches_of(down),
            )
            top += float(layout.room)


def _off_the_bolt(plan: ClothPlan) -> Length:
    """Return the height of all that is cut across the cloth off the bolt."""
    panels = sum((group.cut_length * group.panels for group in plan.panels), Length(0))
    return panels + sum((group.height * group.strips for group in plan.strips), Length(0))


def _from_parcels(size: OneSize, plan: ClothPlan) -> Iterator[StripView]:
    """Yield what is cut from pieces of cloth: every piece's strips, from its top."""
    numbers: Counter[str] = Counter()
    begun, parcel = float(_off_the_bolt(plan)), 0
    for layout in plan.parcels.layouts if plan.parcels else ():
        for _ in range(layout.count):
            top = begun
            for group in layout.strips:
                for _ in range(group.strips):
                    numbers[group.label] += 1
                    yield _strip(size, group, numbers[group.label], top, layout.length, parcel)
                    top += float(group.height)
            begun += float(layout.room)
            parcel += 1


def _cuts(group: StripGroup, left: float, top: float, width: float) -> Iterator[RectView]:
    """Yield the pieces of a strip from the left, those of its segments, those cut from its rest, then offcuts."""
    right = left + width
    height = float(group.height)
    if not (group.pieces or group.rest):
        yield _rect(group.label, left, top, width, height)
        return
    for cut in group.crosscuts:
        for _ in range(cut.count):
            along, across = float(cut.along), float(cut.across)
            yield _rect(cut.piece, left, top, along, across)
            if across < height:
                yield _rect("", left, top + across, along, height - across)
            left += along
    for split in group.splits:
        for _ in range(split.count):
            yield from _segment(split, left, top, height)
            left += float(split.along)
    below = top
    for each in group.rest:
        for _ in range(each.strips // group.strips):
            yield from _cuts(each, left, below, right - left)
            below += float(each.height)
    if top + height - below > 1e-6 and right - left > 1e-6:
        yield _rect("", left, below, right - left, top + height - below)


def _segment(split: Split, left: float, top: float, height: float) -> Iterator[RectView]:
    """Yield the pieces of a segment one below the other, each with what it leaves beside it, then what is left."""
    below, whole = top, float(split.along)
    for cut in split.crosscuts:
        along, across = float(cut.along), float(cut.across)
        for _ in range(cut.count):
            yield _rect(cut.piece, left, below, along, across)
            if along < whole:
                yield _rect("", left + along, below, whole - along, across)
            below += across
    if top + height - below > 1e-6:
        yield _rect("", left, below, whole, top + height - below)


def _rect(label: str, x: float, y: float, width: float, height: float) -> RectView:
    return RectView(
        label=label, x=inches_of(x), y=inches_of(y), width=inches_of(width), height=inches_of(height)
    )


def _runs(size: OneSize, plan: ClothPlan) -> Iterator[RunView]:
    for run in plan.runs:
        yield RunView(
            label=run.label,
            strip=run.strip,
            strips=run.strips,
            method=run.method.value,
            length=_length(size, run.length),
            height=_length(size, run.height),
            pieces=tuple(
                RunCutView(label=cut.piece, count=cut.count, length=_length(size, cut.along))
                for cut in run.crosscuts
            ),
        )


def _pieces(size: OneSize, letter: str) -> Iterator[PieceView]:
    units, marks = size.design.units, size.once("marks", lambda: marks_of(size))
    for piece in size.bill.of_fabric(letter):
        yield PieceView(
            label=piece.label,
            name=piece.name,
            purpose=piece.purpose.value,
            size=f"{show_length(piece.length, units)} × {show_length(piece.width, units)}",
            count=piece.count,
            spare=piece.spare,
            used_for=piece.used_for,
            marks=marks[piece.label],
        )


def _lines(size: OneSize, effort: Effort) -> Iterator[LineView]:
    units = size.design.units
    for line in size.materials(effort).shopping:
        amount = _amount(line, units)
        yield LineView(
            key=line.key,
            amount=amount,
            width="" if line.width is None else show_length(line.width, units),
            price=None if line.price is None else show_money(line.price),
            matches=line.matches,
        )


def _amount(line: ShoppingLine, units: Units) -> str:
    """Say how much: sheets and pieces by their number, batting by its size, cloth and web by the length."""
    if line.sheets:
        return show_count(line.sheets, "sheet")
    if line.count is not None:
        return show_count(line.count, line.piece)
    if line.length is None:
        return ""
    return (show_plain if line.key == "batting" else show_cloth)(line.length, units)


def _length(size: OneSize, value: Length) -> LengthView:
    return LengthView(inches=inches_of(value), text=show_length(value, size.design.units))


def _cloth(size: OneSize, value: Length) -> LengthView:
    return LengthView(inches=inches_of(value), text=show_cloth(value, size.design.units))

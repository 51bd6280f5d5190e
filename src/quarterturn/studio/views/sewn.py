"""What the seams leave of a recipe: its units as trimmed and as sewn, its pieces, and where curves are rejoined."""

from __future__ import annotations

from quarterturn.blocks import Layer, Master, Meeting, Part, Unit, meetings
from quarterturn.design import Curve, Design
from quarterturn.geometry import Motion, Path, StraightLine, shift
from quarterturn.measure import show_length
from quarterturn.studio.views.model import Matrix, View, inches_of, matrix, path_data

Point = tuple[float, float]


class PartFace(View):
    """What shows of a part of the recipe: the ground, or a shape's part; in a rejoined unit `first/ground`."""

    part: str
    path: str


class DraftPiece(View):
    """A piece as the cuts leave it. `cut_at` lays its unit's own frame where it lay in the master.

    `sewn_at` lays it so that sewn edges meet along the cuts; `apart` is which way it goes when all are pulled apart.
    """

    name: str
    unit: int
    outline: str
    cut_at: Matrix
    sewn_at: Matrix
    apart: Point


class DraftUnit(View):
    """A kind of unit in its own frame: as trimmed and as sewn."""

    quarter: str
    width: float
    height: float
    size: tuple[str, str]
    cut_outline: str
    outline: str
    cut: tuple[PartFace, ...]
    sewn: tuple[PartFace, ...]
    each: int
    """How many one master gives, or of rejoined blocks two masters."""
    mirror: str | None


class MeetingView(View):
    """Where a curve is rejoined over a seam: the corner that it makes there, in degrees, and how far it misses."""

    at: Point
    peak: float
    step: float


class SewnView(View):
    """What the seams leave, and its facts: the corner that curves make at a seam, in degrees, and how far they miss."""

    curve: str
    units: tuple[DraftUnit, ...]
    pieces: tuple[DraftPiece, ...]
    meetings: tuple[MeetingView, ...]
    peak: float
    step: float
    step_said: str
    clearance: str
    shown: float
    """The share of the wanted area that is seen."""


def sewn_view(master: Master, curve: Curve, design: Design) -> SewnView:
    """Return what the seams leave of a master."""
    facts = master.facts
    return SewnView(
        curve=curve.value,
        units=tuple(
            draft_unit(unit, master.per_master(k), mirror_of(unit, master.units), design)
            for k, unit in enumerate(master.units)
        ),
        pieces=tuple(_piece(master, part) for part in master.parts),
        meetings=_meetings(master),
        peak=round(facts.peak, 2),
        step=inches_of(facts.step),
        step_said=show_length(facts.step, design.units),
        clearance=show_length(facts.clearance, design.units),
        shown=shown_share(master),
    )


def _meetings(master: Master) -> tuple[MeetingView, ...]:
    found = meetings(master.shapes, master.cuts, float(master.seam))
    return tuple(_meeting(each, each.at) for each in found)


def _meeting(meeting: Meeting, at: complex) -> MeetingView:
    return MeetingView(
        at=(inches_of(at.real), inches_of(at.imag)),
        peak=round(meeting.peak, 2),
        step=inches_of(meeting.step),
    )


def rejoined_meetings(master: Master, unit: Unit) -> tuple[MeetingView, ...]:
    """Return where the curves of a master are rejoined in a unit of its halves, about the middle of that."""
    half = unit.halves[0]
    part = next(each for each in master.parts if each.unit == half.unit)
    way = _sewn_at(master, part).inverse().then(half.motion)
    middle = complex(float(unit.width), float(unit.height)) / 2
    found = meetings(master.shapes, master.cuts, float(master.seam))
    return tuple(_meeting(each, way(each.at) - middle) for each in found)


def shown_share(master: Master) -> float:
    """Return the share of the wanted area that is seen."""
    wanted = master.facts.wanted_area
    return round(master.facts.shape_area / wanted, 4) if wanted else 1.0


def mirror_of(unit: Unit, units: tuple[Unit, ...]) -> str | None:
    """Return the kind that is its mirror image, if one is."""
    return None if unit.mirror is None else units[unit.mirror].quarter


def draft_unit(unit: Unit, each: int, mirror: str | None, design: Design) -> DraftUnit:
    """Return a kind of unit, of which a master gives so many."""
    return DraftUnit(
        quarter=unit.quarter,
        width=inches_of(unit.width),
        height=inches_of(unit.height),
        size=(show_length(unit.width, design.units), show_length(unit.height, design.units)),
        cut_outline=path_data(unit.cut_outline),
        outline=path_data(unit.outline),
        cut=_faces(unit.cut_layers),
        sewn=_faces(unit.sewn_layers),
        each=each,
        mirror=mirror,
    )


def _faces(layers: tuple[Layer, ...]) -> tuple[PartFace, ...]:
    return tuple(PartFace(part=layer.part, path=path_data(layer.region)) for layer in layers)


def _piece(master: Master, part: Part) -> DraftPiece:
    middle = _middle(part.outline)
    return DraftPiece(
        name=part.name,
        unit=part.unit,
        outline=path_data(part.outline),
        cut_at=matrix(part.motion.inverse()),
        sewn_at=matrix(_sewn_at(master, part)),
        apart=(inches_of(middle.real), inches_of(middle.imag)),
    )


def _sewn_at(master: Master, part: Part) -> Motion:
    taken = sum((_taken_up(cut, part.outline, float(master.seam)) for cut in master.cuts), 0j)
    return part.motion.inverse().then(shift(taken))


def _taken_up(cut: StraightLine, outline: Path, seam: float) -> complex:
    """Return how far a piece moves towards a cut when the seam along it has taken an allowance of each side."""
    normal = cut.direction * 1j
    return -normal * seam if cut.side(_middle(outline)) > 0 else normal * seam


def _middle(outline: Path) -> complex:
    """Return a point inside a piece, which the cuts leave without hollows: the mean of its corners."""
    corners = outline.corners()
    return sum(corners, 0j) / len(corners)

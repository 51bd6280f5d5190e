"""Nest shapes: in the hollows of larger ones, in scraps, and the rest on a roll or on sheets."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from fractions import Fraction

from quarterturn.geometry import Region
from quarterturn.materials.nesting.bodies import Catalogue
from quarterturn.materials.nesting.bounds import Wanted, roll_bound, sheet_bound
from quarterturn.materials.nesting.checking import Checker
from quarterturn.materials.nesting.clocked import search
from quarterturn.materials.nesting.holding import Held, Hole, Holes, Source, hold
from quarterturn.materials.nesting.leaving import centres_of
from quarterturn.materials.nesting.model import STEP, Centre, Nesting, Place, Scrap, Shape
from quarterturn.materials.nesting.placing import EFFORT, Effort, Placer, best_on_roll, best_on_sheets
from quarterturn.materials.nesting.rooms import Laid, NoFit
from quarterturn.materials.nesting.rows import (
    diameter,
    first_fitting,
    plain_rows,
    reach,
    sheets_of_rows,
    stacked,
    staggered,
)
from quarterturn.materials.nesting.telling import told
from quarterturn.materials.nesting.validating import validate
from quarterturn.measure import Length


class _Job:
    """What all kinds of nesting begin with: which shapes fit, and what lies in hollows and scraps."""

    def __init__(
        self,
        shapes: Sequence[Shape],
        gap: float,
        size: tuple[float, float],
        scraps: Sequence[Scrap],
        further: Sequence[Shape],
        *,
        apart: bool = False,
    ) -> None:
        validate([*shapes, *further], scraps, gap, size)
        self.size, self.scraps = size, tuple(scraps)
        self.asked = len(shapes)
        self.catalogue = Catalogue([*shapes, *further], gap)
        self.nofit = NoFit(self.catalogue)
        fits = [first_fitting(self.catalogue, k, *size) is not None for k in range(self.asked)]
        self.counts = [s.count if fit else 0 for s, fit in zip(shapes, fits, strict=True)]
        self.counts += [0] * len(further)
        self.unplaced = tuple((s.name, s.count) for s, fit in zip(shapes, fits, strict=True) if not fit)
        self.holes = Holes(self.catalogue, self.nofit, scraps)
        self.held = hold(self.catalogue, self.holes, self.counts, nothing=apart)
        self.outermost = [0] * len(self.counts)
        for piece in self.held.outermost:
            self.outermost[self.held.pieces[piece]] += 1
        self.wanted = Wanted(self.catalogue, self.counts, self.scraps)
        self._checker = Checker(shapes, gap, scraps)

    def first_sound(self, layings: Iterable[Sequence[Sequence[Laid]]]) -> tuple[Place, ...] | None:
        """Return the places of the first laying, sheet by sheet, with which the check finds no fault, if any."""
        for sheets in layings:
            places = told(self.held, self.scraps, self.catalogue, sheets)
            if not self._checker.faults(places, *self.size):
                return places
        return None

    def nesting(self, places: tuple[Place, ...], length: Length, bound: Length, rows: Length) -> Nesting:
        """Return the nesting, with the centres that remain and what of the further shapes fits them."""
        further = range(self.asked, len(self.counts))
        centres = centres_of(self.catalogue, self.holes, self.held, further)
        assert bound <= length + STEP, "no nesting is shorter than its bound"
        return Nesting(places, self.unplaced, length, min(bound, length), rows, centres)


def nest_roll(
    shapes: Sequence[Shape],
    gap: float,
    width: float,
    *,
    scraps: Sequence[Scrap] = (),
    further: Sequence[Shape] = (),
    effort: Effort = EFFORT,
    seconds: int = 0,
) -> Nesting:
    """Nest shapes, outlines a gap apart, in hollows, scraps and on a roll of a width; all in inches.

    Shapes that do not fit the roll are left unplaced. The same input gives the same nesting, unless `seconds` are
    given for a search by the clock besides. Raises ValueError for what is no shape, gap or width.
    """
    for apart in (False, True):
        job = _Job(shapes, gap, (width, math.inf), scraps, further, apart=apart)
        if found := _nested_on_roll(job, width, effort, seconds):
            return found
    raise AssertionError("rows are sound")


def _nested_on_roll(job: _Job, width: float, effort: Effort, seconds: int) -> Nesting | None:
    """Return the shortest nesting that satisfies the check; none where what hollows hold does not."""
    gap = job.catalogue.gap
    rows = stacked(plain_rows(job.catalogue, job.counts, width), gap)
    bound = _down(roll_bound(job.wanted, width))
    layings = _on_roll(job, width, effort)
    if seconds > 0 and sum(job.outermost) > 1 and _up(reach(layings[0])) > bound:
        found = search(job.catalogue, job.outermost, width, seconds)
        layings = _shortest_first([*layings, *([found] if found else [])])
    places = job.first_sound([laid] for laid in layings)
    if places is None:
        return None
    length = _up(_reached(job, places))
    return job.nesting(places, length, bound, _up(reach(rows)))


def lower_bound(shapes: Sequence[Shape], gap: float, width: float, height: float = math.inf) -> Length:
    """Return a length of roll, or a number of sheets, that no nesting of the shapes is below; no place is sought."""
    catalogue = Catalogue(shapes, gap)
    wanted = Wanted(catalogue, [shape.count for shape in shapes], ())
    if math.isinf(height):
        return _down(roll_bound(wanted, width))
    return Length(sheet_bound(wanted, width, height))


def whole_centres(shapes: Sequence[Shape], gap: float, further: Sequence[Shape]) -> tuple[Centre, ...]:
    """Return the hollows of shapes that lie apart, those with the most room first, and what would fit them."""
    catalogue = Catalogue([*shapes, *further], gap)
    holes = Holes(catalogue, NoFit(catalogue), ())
    kinds = [kind for kind, shape in enumerate(shapes) if shape.count and not shape.hollow.is_empty()]
    # One ring of each kind stands for all: its hollow is theirs.
    apart = Held(tuple(kinds), tuple(kinds), tuple(Hole(Source(kind, False), kind) for kind in kinds))
    found = centres_of(catalogue, holes, apart, range(len(shapes), len(shapes) + len(further)))
    counts = {shape.name: shape.count for shape in shapes}
    return tuple(replace(centre, count=counts[centre.owner]) for centre in found)


def fitting(region: Region, shapes: Sequence[Shape]) -> tuple[tuple[str, int], ...]:
    """Return which of the shapes, each taken alone, a scrap holds up to its edges, and how many of each."""
    catalogue = Catalogue(shapes, 0.0)
    holes = Holes(catalogue, NoFit(catalogue), (Scrap("scrap", region),))
    found = ((shape.name, holes.most((Source(0, True), ()), number)) for number, shape in enumerate(shapes))
    return tuple((name, most) for name, most in found if most)


def any_held(shapes: Sequence[Shape], gap: float, width: float) -> bool:
    """Tell whether any shape lies in the hollow of another when they are nested."""
    job = _Job(shapes, gap, (width, math.inf), (), ())
    return len(job.held.outermost) < len(job.held.pieces)


def _on_roll(job: _Job, width: float, effort: Effort) -> list[list[Laid]]:
    """Return the outermost shapes in rows, with circles staggered, and placed; the shortest first."""
    counts, catalogue = job.outermost, job.catalogue
    plain = plain_rows(catalogue, counts, width)
    found = [stacked(plain, catalogue.gap), stacked(_with_circles(job, plain, width), catalogue.gap)]
    limit = min(reach(laid) for laid in found)
    placed = best_on_roll(Placer(catalogue, job.nofit, width), counts, effort, limit)
    return _shortest_first([*found, *([placed] if placed else [])])


def _with_circles(job: _Job, plain: Sequence[list[Laid]], width: float) -> list[list[Laid]]:
    """Return bands in which equal circles stand in staggered rows."""
    bands: list[list[Laid]] = []
    done: set[int] = set()
    for row in plain:
        shape = row[0][0].shape
        if diameter(job.catalogue.shapes[shape]) is None:
            bands.append(row)
        elif shape not in done:
            done.add(shape)
            bands.append(staggered(job.catalogue, shape, job.outermost[shape], width))
    return bands


def _shortest_first(layings: Sequence[list[Laid]]) -> list[list[Laid]]:
    return sorted(layings, key=lambda laid: _up(reach(laid)))


def nest_sheets(
    shapes: Sequence[Shape],
    gap: float,
    width: float,
    height: float,
    *,
    scraps: Sequence[Scrap] = (),
    further: Sequence[Shape] = (),
    effort: Effort = EFFORT,
) -> Nesting:
    """Nest shapes, outlines a gap apart, in hollows, scraps and on sheets; all lengths are numbers of sheets.

    Shapes that do not fit a sheet are left unplaced. The same input gives the same nesting. Raises ValueError for what
    is no shape, gap or size.
    """
    for apart in (False, True):
        job = _Job(shapes, gap, (width, height), scraps, further, apart=apart)
        if found := _nested_on_sheets(job, width, height, effort):
            return found
    raise AssertionError("rows are sound")


def _nested_on_sheets(job: _Job, width: float, height: float, effort: Effort) -> Nesting | None:
    """Return the nesting on the fewest sheets that satisfies the check; none where what hollows hold does not."""
    gap = job.catalogue.gap
    all_rows = sheets_of_rows(plain_rows(job.catalogue, job.counts, width, height), gap, height)
    rows = sheets_of_rows(plain_rows(job.catalogue, job.outermost, width, height), gap, height)
    placed = best_on_sheets(Placer(job.catalogue, job.nofit, width), job.outermost, height, effort)
    layings = sorted([rows, *([placed] if placed else [])], key=len)
    places = job.first_sound(layings)
    if places is None:
        return None
    used = len({place.number for place in places if place.scrap is None})
    bound = sheet_bound(job.wanted, width, height)
    return job.nesting(places, Length(used), Length(bound), Length(len(all_rows)))


def _reached(job: _Job, places: Sequence[Place]) -> float:
    """Return how far shapes on the roll reach along it."""
    numbers = {shape.name: number for number, shape in enumerate(job.catalogue.shapes)}
    turns = {1 + 0j: 0, 1j: 1, -1 + 0j: 2, -1j: 3}
    return max(
        (
            place.motion.move.imag
            + job.catalogue.body(numbers[place.shape], turns[place.motion.factor]).box.bottom
            for place in places
            if place.within is None and place.scrap is None
        ),
        default=0.0,
    )


def _up(length: float) -> Length:
    return Fraction(math.ceil((length - 1e-5) / STEP)) * STEP if length else Length(0)


def _down(length: float) -> Length:
    return Fraction(math.floor((length + 1e-8) / STEP)) * STEP

"""Runs of unequal strips: what other strips and bands have left takes the place of whole strips, if that buys less.

An end is a strip as high as the run and shorter than the cloth is wide, cut from what is left beside the pieces of a
strip or below the strips in the rest of a band. Ends are taken only where less is bought for it, and only as many as
that takes, since each is one join more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace

from quarterturn.materials.lengthwise import Band
from quarterturn.materials.runs import Run
from quarterturn.materials.shelves import Shelf
from quarterturn.measure import Length, inches

SHORTEST: Length = inches(12)
"""A shorter end makes more seams than it saves cloth (our choice)."""

MOST_ENDS = 3
"""For each whole strip that is saved (our choice)."""


@dataclass(slots=True)
class _Place:
    """One strip, or the rest of one band, from which ends can be cut: how long, and what of its height is left."""

    number: int
    is_band: bool
    length: Length
    left: Length
    taken: list[tuple[int, Length]] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Joined:
    """Runs, and the strips and bands from which their ends are cut."""

    runs: tuple[Run, ...]
    shelves: tuple[Shelf, ...]
    bands: tuple[Band, ...]


def with_ends(
    runs: Sequence[Run],
    shelves: Sequence[Shelf],
    bands: Sequence[Band],
    usable: Length,
    bought: Callable[[Length], Length],
) -> Joined:
    """Return the runs with ends in place of as many whole strips as it takes to buy the least.

    `bought` tells what is bought where so much less is cut. Each run keeps one whole strip at least.
    """
    as_it_is = Joined(tuple(runs), tuple(shelves), tuple(bands))
    saved, most = [0] * len(runs), _most_saved(runs, shelves, bands, usable)
    least = bought(_cloth_of(runs, most))
    if least >= bought(Length(0)):
        return as_it_is
    for number, limit in enumerate(most):
        while saved[number] < limit and bought(_cloth_of(runs, saved)) > least:
            saved[number] += 1
    found = _taken(runs, saved, shelves, bands, usable)
    return _made(runs, saved, found, as_it_is) if found else as_it_is


def _cloth_of(runs: Sequence[Run], saved: Sequence[int]) -> Length:
    return sum((run.height * strips for run, strips in zip(runs, saved, strict=True)), Length(0))


def _most_saved(
    runs: Sequence[Run], shelves: Sequence[Shelf], bands: Sequence[Band], usable: Length
) -> list[int]:
    """Return how many whole strips ends can take the place of, run after run."""
    saved = [0] * len(runs)
    for number, run in enumerate(runs):
        for strips in range(1, run.strips):
            tried = [*saved[:number], strips, *saved[number + 1 :]]
            if _taken(runs, tried, shelves, bands, usable) is None:
                break
            saved = tried
    return saved


def _taken(
    runs: Sequence[Run],
    saved: Sequence[int],
    shelves: Sequence[Shelf],
    bands: Sequence[Band],
    usable: Length,
) -> list[_Place] | None:
    """Return the places with the ends that are cut from them, the longest first; None where there are too few."""
    places = sorted(_places(shelves, bands, usable), key=lambda place: -place.length)
    for number, run in enumerate(runs):
        if saved[number] and not _replaced(run, number, saved[number], places, usable):
            return None
    return places


def _replaced(run: Run, number: int, saved: int, places: Sequence[_Place], usable: Length) -> bool:
    """Take ends until the run is long enough with so many whole strips less; tell whether that can be done."""
    length = run.length - saved * (usable - run.loss)
    ends = 0
    for place in places:
        while (
            length < run.need and place.left >= run.height and place.length >= max(SHORTEST, 2 * run.height)
        ):
            place.left -= run.height
            place.taken.append((number, run.height))
            length += place.length - run.loss
            ends += 1
    return length >= run.need and ends <= MOST_ENDS * saved


def _places(shelves: Sequence[Shelf], bands: Sequence[Band], usable: Length) -> Iterator[_Place]:
    """Yield the places. What is left of a strip must be longer than the strip is high, so that it lies as the strip."""
    for number, band in enumerate(bands):
        used = sum((each.height * each.strips for each in band.rest), Length(0))
        yield _Place(number, True, usable - band.used, band.height - used)
    for number, shelf in enumerate(shelves):
        if shelf.room >= max(SHORTEST, shelf.height):
            for _ in range(shelf.strips):
                yield _Place(number, False, shelf.room, shelf.height)


def _made(runs: Sequence[Run], saved: Sequence[int], places: Sequence[_Place], before: Joined) -> Joined:
    lengths: list[list[Length]] = [[] for _ in runs]
    for place in places:
        for number, _ in place.taken:
            lengths[number].append(place.length)
    shortened = (
        _shortened(run, strips, ends) for run, strips, ends in zip(runs, saved, lengths, strict=True)
    )
    cut = [place for place in places if place.taken]
    bands = (
        replace(band, ends=tuple(next((p.taken for p in cut if p.is_band and p.number == n), ())))
        for n, band in enumerate(before.bands)
    )
    shelves = (
        each
        for number, shelf in enumerate(before.shelves)
        for each in _parted(shelf, [p.taken for p in cut if not p.is_band and p.number == number])
    )
    return Joined(tuple(shortened), tuple(shelves), tuple(bands))


def _shortened(run: Run, saved: int, ends: Sequence[Length]) -> Run:
    """Return a run with its ends; the whole strips that are left give the rest of its length."""
    if not saved:
        return run
    whole = (run.length - run.loss) / run.strips
    length = run.length - saved * whole + sum((end - run.loss for end in ends), Length(0))
    return replace(run, strips=run.strips - saved, length=length)


def _parted(shelf: Shelf, taken: Sequence[list[tuple[int, Length]]]) -> Iterator[Shelf]:
    """Yield the strips of a shelf from which ends are cut, equal ones together, then the others."""
    kinds = dict.fromkeys(tuple(ends) for ends in taken)
    for ends in kinds:
        yield replace(shelf, strips=sum(tuple(each) == ends for each in taken), ends=ends)
    if shelf.strips > len(taken):
        yield replace(shelf, strips=shelf.strips - len(taken))

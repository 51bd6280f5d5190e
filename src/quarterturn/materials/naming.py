"""Number the strips of a plan in cutting order, and tell which of them are sewn into which run."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import count, repeat

from quarterturn.materials.ends import Joined
from quarterturn.materials.lengthwise import Band
from quarterturn.materials.model import JoinedRun, RunEnd, Split, StripGroup
from quarterturn.materials.runs import Run, joined_run
from quarterturn.materials.shelves import Segment, Shelf
from quarterturn.measure import Length


def named_strips(
    letter: str, usable: Length, joined: Joined
) -> tuple[tuple[StripGroup, ...], tuple[JoinedRun, ...]]:
    """Number the strips: bands, those to be joined, then the tallest; what is cut from a rest follows its strip."""
    namer = _Namer(letter, usable)
    along = [namer.band(band) for band in joined.bands]
    whole = [StripGroup(namer.next(), run.height, run.strips, (), Length(0)) for run in joined.runs]
    cut = [namer.strip(shelf, usable) for shelf in joined.shelves]
    runs = enumerate(zip(joined.runs, whole, strict=True))
    named = tuple(namer.run(number, strip.label, run) for number, (run, strip) in runs)
    return (*along, *whole, *cut), named


class _Namer:
    """Gives labels in order, and keeps those of the ends for their runs."""

    def __init__(self, letter: str, usable: Length) -> None:
        self.letter, self.usable = letter, usable
        self._numbers = map("{}s{}".format, repeat(letter), count(1))
        self._ends: list[tuple[int, RunEnd]] = []

    def next(self) -> str:
        """Return the next label of a strip."""
        return next(self._numbers)

    def band(self, band: Band) -> StripGroup:
        """Return a band with what is cut from its rest."""
        label, left = self.next(), self.usable - band.used
        rest = (*(self.strip(shelf, left) for shelf in band.rest), *self._ends_of(band.ends, 1, left))
        return StripGroup(label, band.height, 1, band.crosscuts, band.used, rest)

    def strip(self, shelf: Shelf, width: Length) -> StripGroup:
        """Return equal strips as long as `width`, with their segments and what is cut from their rest."""
        label = self.next()
        rest = tuple(self._ends_of(shelf.ends, shelf.strips, shelf.room))
        splits = tuple(_splits(label, shelf.splits))
        return StripGroup(
            label, shelf.height, shelf.strips, shelf.crosscuts, width - shelf.room, rest, splits
        )

    def _ends_of(
        self, ends: Iterable[tuple[int, Length]], strips: int, length: Length
    ) -> Iterator[StripGroup]:
        for (run, height), each in Counter(ends).items():
            label = self.next()
            self._ends.append((run, RunEnd(label, each * strips, length)))
            yield StripGroup(label, height, each * strips, (), Length(0))

    def run(self, number: int, strip: str, run: Run) -> JoinedRun:
        """Return a run with the labels of all of its strips."""
        ends = tuple(end for own, end in self._ends if own == number)
        label = f"{self.letter}r{number + 1}"
        return replace(joined_run(label, strip, run, self.usable), ends=ends)


def _splits(label: str, segments: Sequence[Segment]) -> Iterator[Split]:
    for number, each in enumerate(segments, 1):
        name = f"{label} segment" if len(segments) == 1 else f"{label} segment {number}"
        yield Split(name, each.along, each.across, each.count, each.crosscuts)

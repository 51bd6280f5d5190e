"""Long pieces: strips sewn end to end, from which borders are cut, and which bind the quilt."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby

from quarterturn.materials.model import Crosscut, JoinedRun, JoinMethod
from quarterturn.measure import Length
from quarterturn.pieces import Piece


@dataclass(frozen=True, slots=True)
class Run:
    """So many strips of a height to be joined, and what is cut from the whole; nothing where it stays whole."""

    height: Length
    strips: int
    method: JoinMethod
    loss: Length
    length: Length
    crosscuts: tuple[Crosscut, ...]
    need: Length
    """What its length must reach."""


def joined_run(label: str, strip: str, run: Run, each: Length) -> JoinedRun:
    """Return a run under its label, with the label of its strips and how long each is."""
    return JoinedRun(
        label, strip, run.strips, each, run.height, run.method, run.loss, run.length, run.crosscuts
    )


def strips_to_join(length: Length, usable: Length, loss: Length) -> int:
    """Return the smallest n with n·usable − (n − 1)·loss ≥ length: n strips have n − 1 joins.

    The loss of one join must be less than the usable width.
    """
    return max(1, math.ceil((length - loss) / (usable - loss)))


def join_of(height: Length, usable: Length, seam: Length, method: JoinMethod) -> tuple[JoinMethod, Length]:
    """Return how strips of a height are joined where a method is wanted, and what length each join takes.

    A straight join takes two seam allowances, one on the diagonal the width of the strip (both common practice). Cloth
    no wider than the strip has no diagonal to join on: there the joins are straight.
    """
    if method is JoinMethod.DIAGONAL and height < usable:
        return method, height
    return JoinMethod.STRAIGHT, 2 * seam


def border_runs(
    pieces: Iterable[Piece], usable: Length, seam: Length, method: JoinMethod = JoinMethod.STRAIGHT
) -> list[Run]:
    """Return the runs for border pieces longer than the cloth is wide, the widest first.

    Pieces of equal width share a run, unless a run for each kind takes fewer strips, since runs apart have fewer
    joins.
    """
    runs: list[Run] = []
    for alike in _by_width(pieces):
        shared, apart = [_border_run(alike, usable, seam, method)], separate_runs(alike, usable, seam, method)
        runs += apart if length_of_runs(apart) < length_of_runs(shared) else shared
    return runs


def separate_runs(
    pieces: Iterable[Piece], usable: Length, seam: Length, method: JoinMethod = JoinMethod.STRAIGHT
) -> list[Run]:
    """Return a run for each kind of border piece: the plain hand rule."""
    return [_border_run([piece], usable, seam, method) for alike in _by_width(pieces) for piece in alike]


def length_of_runs(runs: Iterable[Run]) -> Length:
    """Return the length of cloth that the strips of runs take."""
    return sum((run.height * run.strips for run in runs), Length(0))


def least_of_borders(
    pieces: Iterable[Piece], usable: Length, seam: Length, method: JoinMethod = JoinMethod.STRAIGHT
) -> Length:
    """Return the length of cloth below which no runs of these border pieces, joined by a method, can stay.

    However the c pieces of one width are shared out, there are at most c runs. n strips in c runs have at least
    n − c joins, so n·usable − (n − c)·loss must reach the sum of the pieces' lengths.
    """
    return sum(
        (
            alike[0].width * _least_strips(alike, usable, join_of(alike[0].width, usable, seam, method)[1])
            for alike in _by_width(pieces)
        ),
        Length(0),
    )


def _least_strips(alike: Sequence[Piece], usable: Length, loss: Length) -> int:
    need = sum((piece.length * piece.count for piece in alike), Length(0))
    runs = sum(piece.count for piece in alike)
    return math.ceil((need - runs * loss) / (usable - loss))


def _by_width(pieces: Iterable[Piece]) -> list[list[Piece]]:
    """Return the pieces in groups of equal width, wide to narrow, each long to short."""
    ordered = sorted(pieces, key=lambda piece: (-piece.width, -piece.length, piece.label))
    return [list(group) for _, group in groupby(ordered, key=lambda piece: piece.width)]


def _border_run(pieces: Sequence[Piece], usable: Length, seam: Length, method: JoinMethod) -> Run:
    cuts = tuple(Crosscut(piece.label, piece.length, piece.width, piece.count) for piece in pieces)
    need = sum((cut.along * cut.count for cut in cuts), Length(0))
    return _run(pieces[0].width, need, usable, *join_of(pieces[0].width, usable, seam, method), cuts)


def binding_run(piece: Piece, usable: Length, seam: Length) -> Run:
    """Return the run that binds the quilt; it stays whole. Its strips are joined on the diagonal."""
    method, loss = join_of(piece.width, usable, seam, JoinMethod.DIAGONAL)
    return _run(piece.width, piece.length * piece.count, usable, method, loss, ())


def _run(
    height: Length, need: Length, usable: Length, method: JoinMethod, loss: Length, cuts: tuple[Crosscut, ...]
) -> Run:
    strips = strips_to_join(need, usable, loss)
    return Run(height, strips, method, loss, strips * usable - (strips - 1) * loss, cuts, need)

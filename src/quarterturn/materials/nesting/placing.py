"""Shapes laid one after another in the lowest place there is: several orders, and then changes of the best one."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from quarterturn.materials.nesting.bodies import Body, Catalogue
from quarterturn.materials.nesting.rooms import (
    Laid,
    NoFit,
    Room,
    Rule,
    bottom,
    inside_box,
    middle,
    settled,
)
from quarterturn.materials.nesting.rows import reach

RULES: tuple[Rule, ...] = (bottom, middle)


@dataclass(frozen=True, slots=True)
class Effort:
    """How hard to try, counted in work so that equal jobs get equal nestings on every machine."""

    placings: int
    """Shapes laid, over all tries: no try begins when so many are laid, but for the first."""
    shapes: int = 400
    """Outermost shapes: beyond so many, rows stand."""


QUICK = Effort(placings=0)
"""One order only."""

EFFORT = Effort(placings=500)
"""A second or two for most quilts (see the timings)."""


class Placer:
    """Lays shapes on a roll of a width, in an order, by a rule."""

    def __init__(self, catalogue: Catalogue, nofit: NoFit, width: float) -> None:
        self.catalogue, self.nofit, self.width = catalogue, nofit, width
        self.done = 0

    def roll(self, order: Sequence[int], rule: Rule, limit: float) -> list[Laid] | None:
        """Lay all shapes of an order on the roll; None as soon as they reach beyond the limit."""
        gap = self.catalogue.gap
        tall = [max(b.box.height for b in self.catalogue.bodies(shape)) + gap for shape in set(order)]
        room = Room(inside_box(self.width, max(tall) * (len(order) + 1)), self.nofit)
        for shape in order:
            bodies = self.catalogue.bodies(shape)
            found = self._lay(room, bodies, rule)
            assert found is not None, "the roll is long enough for all"
            body, at = found
            if at.imag + body.box.bottom > limit:
                return None
            room.close_above(bodies, at.imag + rule(body), rule)
        return room.laid

    def sheets(self, order: Sequence[int], rule: Rule, height: float) -> list[list[Laid]]:
        """Lay each shape on the first sheet on which there is a place."""
        whole = inside_box(self.width, height)
        rooms: list[Room] = []
        for shape in order:
            bodies = self.catalogue.bodies(shape)
            if not any(self._lay(room, bodies, rule) for room in rooms):
                rooms.append(Room(whole, self.nofit))
                assert self._lay(rooms[-1], bodies, rule), "every shape fits an empty sheet"
        return [room.laid for room in rooms]

    def _lay(self, room: Room, bodies: Sequence[Body], rule: Rule) -> Laid | None:
        found = room.lowest(bodies, rule)
        if found is None:
            return None
        self.done += 1
        body, at = found
        at = settled(body, at, self.width)
        room.put(body, at)
        return body, at


def orders(catalogue: Catalogue, counts: Sequence[int]) -> list[tuple[int, ...]]:
    """Return shapes by area, by height, by width and by perimeter, the largest first; equal orders once."""
    shapes = catalogue.shapes
    box = {shape: catalogue.body(shape, shapes[shape].turns[0]).box for shape in range(len(counts))}
    sizes: tuple[Callable[[int], float], ...] = (
        catalogue.area,
        lambda shape: box[shape].height,
        lambda shape: box[shape].width,
        lambda shape: shapes[shape].outline.length(),
    )
    found = [_order(shapes_by(size, counts, catalogue), counts) for size in sizes]
    return list(dict.fromkeys(found))


def shapes_by(size: Callable[[int], float], counts: Sequence[int], catalogue: Catalogue) -> list[int]:
    """Return the shapes of which there are any, the largest first; of equal ones, by name."""
    wanted = (shape for shape, count in enumerate(counts) if count)
    return sorted(wanted, key=lambda shape: (-round(size(shape), 6), catalogue.shapes[shape].name))


def _order(shapes: Sequence[int], counts: Sequence[int]) -> tuple[int, ...]:
    return tuple(shape for shape in shapes for _ in range(counts[shape]))


def tries(first: Sequence[tuple[int, ...]]) -> Iterator[tuple[tuple[int, ...], Rule]]:
    """Return every order with every rule, the plainest first."""
    return ((order, rule) for rule in RULES for order in first)


def changed(order: tuple[int, ...], chance: random.Random) -> tuple[int, ...]:
    """Return an order in which one run of a shape's pieces, or one piece, has gone to another place."""
    start = chance.randrange(len(order))
    end = start + 1
    if chance.random() < 0.5:
        while end < len(order) and order[end] == order[start]:
            end += 1
    rest = order[:start] + order[end:]
    to = chance.randrange(len(rest) + 1)
    return rest[:to] + order[start:end] + rest[to:]


def best_on_roll(placer: Placer, counts: Sequence[int], effort: Effort, limit: float) -> list[Laid] | None:
    """Return the shortest laying found that is shorter than the limit; None where none is."""
    first = orders(placer.catalogue, counts)
    if not 0 < sum(counts) <= effort.shapes:
        return None
    best: list[Laid] | None = None
    kept, rule = first[0], RULES[0]
    for tried, by in tries(first):
        laid = placer.roll(tried, by, limit - 1e-6)
        if laid is not None:
            best, limit, kept, rule = laid, reach(laid), tried, by
        if placer.done >= effort.placings:
            return best
    for tried in _changes(kept, placer, effort):
        laid = placer.roll(tried, rule, limit)
        if laid is not None and reach(laid) <= limit:
            better = reach(laid) < limit - 1e-6
            best, limit = (laid, reach(laid)) if better or best is None else (best, limit)
    return best


def _changes(order: tuple[int, ...], placer: Placer, effort: Effort) -> Iterator[tuple[int, ...]]:
    """Return changed orders until the work is done; an order of one shape has none."""
    chance = random.Random(1)
    while len(set(order)) > 1 and placer.done < effort.placings:
        yield changed(order, chance)


def best_on_sheets(
    placer: Placer, counts: Sequence[int], height: float, effort: Effort
) -> list[list[Laid]] | None:
    """Return the laying on the fewest sheets that is found, and of those the one that leaves most of the last."""
    first = orders(placer.catalogue, counts)
    if not 0 < sum(counts) <= effort.shapes:
        return None
    best: list[list[Laid]] | None = None
    for tried, rule in tries(first):
        found = placer.sheets(tried, rule, height)
        if best is None or (len(found), reach(found[-1])) < (len(best), reach(best[-1])):
            best = found
        if placer.done >= effort.placings:
            break
    return best

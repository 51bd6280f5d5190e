"""The rehearsal as a film: what is taken up and what is laid down at each step, and what lies on the table then.

The steps are carried out once by the rehearsal itself; a frame is drawn when it is asked for.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from quarterturn.geometry import Path, path_bounds
from quarterturn.measure import Length, Units, show_length
from quarterturn.proof import Pattern, supplies_of
from quarterturn.proof.rehearsal import Good, Rehearsal, Table, rehearse
from quarterturn.proof.rehearsal.cloth import Patch
from quarterturn.publish.wording import tell
from quarterturn.steps import Step
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import View, inches_of, path_data


class StepName(View):
    """A step in the list of the film."""

    number: int
    chapter: str
    title: str
    line: str


class LayerView(View):
    """A layer of cloth as seen from its right side; no letter where it is web."""

    fabric: str
    path: str


class GoodView(View):
    """Equal things: how many, how large one is and what it looks like, in its own frame; `box` is its upright box."""

    label: str
    count: int
    size: str
    box: tuple[float, float, float, float]
    edge: str
    layers: tuple[LayerView, ...]


class FrameView(View):
    """A step of the film: what it takes up and lays down, and what lies on the table when it is done.

    `failed` says why it could not be done; nothing where it was.
    """

    revision: int
    step: StepName
    said: tuple[str, ...]
    uses: tuple[GoodView, ...]
    makes: tuple[GoodView, ...]
    table: tuple[GoodView, ...]
    cloth_left: dict[str, str]
    web_left: str
    failed: str


class FilmView(View):
    """All steps, how many could be done, and what the comparison with the picture found: square inches, and a share."""

    revision: int
    steps: tuple[StepName, ...]
    done: int
    failures: tuple[str, ...]
    difference: float
    share: float
    holds: bool


@dataclass(frozen=True, slots=True)
class Shot:
    """What the rehearsal had when a step was done."""

    makes: Mapping[str, Good]
    table: Mapping[str, int]
    cloth: Mapping[str, Length]
    web: Length


@dataclass(frozen=True, slots=True)
class Film:
    """The rehearsal with a shot of each step that was done."""

    pattern: Pattern
    rehearsal: Rehearsal
    shots: tuple[Shot, ...]


Told = Callable[[int], None]
"""Is told how many steps have been done."""


def film_of(size: OneSize, told: Told = lambda done: None) -> Film:
    """Return the film of a size: carried out once, and told as it goes. What `told` raises ends it."""
    return size.film(lambda: _shot(size.pattern(), told))


def _shot(pattern: Pattern, told: Told) -> Film:
    """Carry out the steps, and keep what each makes."""
    shots: list[Shot] = []

    def watch(step: Step, table: Table) -> None:
        made = {product.label: table.good(product.label) for product in step.makes}
        goods = {label: good for label, good in made.items() if good is not None}
        shots.append(Shot(goods, table.left(), table.cloth_left(), table.web_left()))
        told(len(shots))

    rehearsal = rehearse(supplies_of(pattern), pattern.steps, watch)
    return Film(pattern, rehearsal, tuple(shots))


def film_view(revision: int, size: OneSize) -> FilmView:
    """Return the list of steps, and what the whole rehearsal came to."""
    pattern, proof = size.pattern(), size.prove_by(film_of(size).rehearsal)
    return FilmView(
        revision=revision,
        steps=tuple(_name(step, pattern) for step in pattern.steps.steps),
        done=proof.rehearsal.steps_done,
        failures=tuple(failure.sentence for failure in proof.rehearsal.failures),
        difference=inches_of(proof.difference),
        share=proof.share,
        holds=proof.holds,
    )


def frame_view(revision: int, size: OneSize, number: int) -> FrameView:
    """Return a step by its number, from 1. Raises IndexError where there is none."""
    film = film_of(size)
    pattern, units = film.pattern, size.design.units
    if not 1 <= number <= len(pattern.steps.steps):
        raise IndexError(number)
    step = pattern.steps.steps[number - 1]
    done = min(number, len(film.shots))
    shot = film.shots[done - 1] if done else Shot({}, {}, {}, Length(0))
    failed = next((f.sentence for f in film.rehearsal.failures if f.step == number), "")
    words = tell(step, pattern)
    return FrameView(
        revision=revision,
        step=_name(step, pattern),
        said=words.sentences,
        uses=tuple(
            _good(size, pile.label, pile.count, good)
            for pile in step.uses
            if (good := _before(film, pile.label, number)) is not None
        ),
        makes=tuple(
            _good(size, product.label, product.count, good)
            for product in step.makes
            if number <= len(film.shots) and (good := film.shots[number - 1].makes.get(product.label))
        ),
        table=tuple(_lying(size, film, done)),
        cloth_left={letter: show_length(left, units) for letter, left in shot.cloth.items()},
        web_left=show_length(shot.web, units),
        failed=failed,
    )


def _before(film: Film, label: str, number: int) -> Good | None:
    """Return what a label was when a step took it up: as the last step before it made it."""
    for shot in reversed(film.shots[: number - 1]):
        if label in shot.makes:
            return shot.makes[label]
    return None


def _lying(size: OneSize, film: Film, done: int) -> Iterator[GoodView]:
    """Yield what lies on the table when so many steps are done."""
    for label, count in film.shots[done - 1].table.items() if done else ():
        if good := _before(film, label, done + 1):
            yield _good(size, label, count, good)


def _name(step: Step, pattern: Pattern) -> StepName:
    words = tell(step, pattern)
    return StepName(number=step.number, chapter=step.chapter.value, title=words.title, line=words.line)


def _good(size: OneSize, label: str, count: int, good: Good) -> GoodView:
    units = size.design.units
    if not isinstance(good, Patch):
        box = good_box(good.out.paths[0])
        layers = (LayerView(fabric="", path=path_data(good.out)),)
        drawn = path_data(good.drawn)
        return GoodView(label=label, count=count, size=_sized(box, units), box=box, edge=drawn, layers=layers)
    box = good_box(good.edge)
    return GoodView(
        label=label,
        count=count,
        size=_sized(box, units),
        box=box,
        edge=path_data(good.edge),
        layers=tuple(LayerView(fabric=scrap.fabric, path=path_data(scrap.region)) for scrap in good.scraps),
    )


def good_box(edge: Path) -> tuple[float, float, float, float]:
    """Return left, top, width and height of an outline's upright box."""
    box = path_bounds(edge)
    return inches_of(box.left), inches_of(box.top), inches_of(box.width), inches_of(box.height)


def _sized(box: tuple[float, float, float, float], units: Units) -> str:
    return f"{show_length(box[2], units)} × {show_length(box[3], units)}"

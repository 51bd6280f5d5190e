"""Shapes to nest: rings of circles, hearts and polygons; and the published instances of irregular strips."""

from __future__ import annotations

import csv
import json
from pathlib import Path as File

from hypothesis import strategies as st

from quarterturn.geometry import Cubic, Path, Region, circle, disc, polygon, rectangle
from quarterturn.materials.nesting import Nesting, Shape

DATA = File(__file__).parents[2] / "data" / "irregular_esicup"


def ring(name: str, diameter: float, web: float, count: int) -> Shape:
    """Return a round ring whose web is so wide."""
    return Shape(name, circle(diameter / 2), disc(diameter / 2 - web), count)


def frame(name: str, width: float, height: float, web: float, count: int) -> Shape:
    """Return a frame with its top left corner at 0."""
    hollow = Region((rectangle(web, web, width - web, height - web),))
    return Shape(name, rectangle(0, 0, width, height), hollow, count)


def heart(size: float) -> Path:
    """Return a heart of four cubics, about as wide as it is high."""
    points = (-0.5j, -0.1 - 1.2j, -1 - 1.2j, -1 - 0.3j, -1 + 0.3j, -0.2 + 0.7j, 1j)
    left = [p * size / 2 for p in points]
    right = [complex(-p.real, p.imag) for p in reversed(left)]
    corners = [*left, *right[1:]]
    path = Path(tuple(Cubic(*corners[k : k + 4]) for k in range(0, 12, 3)))
    return path if path.area() > 0 else path.reversed()


def heart_ring(name: str, size: float, count: int) -> Shape:
    """Return a heart with a smaller heart left out of its middle."""
    return Shape(name, heart(size), Region((heart(size * 0.7),)), count)


eighths = st.integers(8, 48).map(lambda n: n / 8)


@st.composite
def corners(draw: st.DrawFn) -> Path:
    """Draw a polygon of three to six corners about 0, convex or not."""
    reaches = draw(st.lists(st.integers(4, 24), min_size=3, max_size=6))
    turn = 1j ** (4 / len(reaches))
    return polygon([reach / 8 * turn**k for k, reach in enumerate(reaches)])


@st.composite
def shapes(draw: st.DrawFn, most: int = 4, count: int = 4) -> list[Shape]:
    """Draw a few kinds of shape, most with a hollow."""
    found = []
    for number in range(draw(st.integers(1, most))):
        name, times = f"{number}", draw(st.integers(1, count))
        match draw(st.sampled_from(["ring", "frame", "corners", "heart"])):
            case "ring":
                found.append(ring(name, draw(eighths), 0.25, times))
            case "frame":
                found.append(frame(name, draw(eighths), draw(eighths), 0.25, times))
            case "corners":
                turns = draw(st.sampled_from([(0,), (0, 2), (0, 1, 2, 3), (1,)]))
                found.append(Shape(name, draw(corners()), count=times, turns=turns))
            case "heart":
                found.append(heart_ring(name, draw(eighths), times))
    return found


gaps = st.sampled_from([0.0, 0.125, 0.5])
widths = st.sampled_from([6.5, 9.0, 17.0])


def instance(name: str) -> tuple[list[Shape], float]:
    """Return the shapes of a published instance, and the width of its roll."""
    data = json.loads((DATA / f"{name}.json").read_text(encoding="utf-8"))
    return [_item(item) for item in data["items"]], data["strip_height"]


def _item(item: dict[str, object]) -> Shape:
    data = item["shape"]["data"]  # type: ignore[index]
    path = polygon([complex(y, x) for x, y in data[:-1]])
    turns = tuple(round(angle / 90) % 4 for angle in item["allowed_orientations"])  # type: ignore[attr-defined]
    count = item["demand"]
    assert isinstance(count, int)
    return Shape(str(item["id"]), path if path.area() > 0 else path.reversed(), count=count, turns=turns)


def best_known(name: str) -> float:
    """Return the published best density of an instance, in per cent."""
    with (DATA / "PUBLISHED_best_density.csv").open(encoding="utf-8", newline="") as file:
        rows = {row["Path"]: float(row["Best known solution value"]) for row in csv.DictReader(file)}
    stem = {"blaz1": "blaz_"}.get(name, name)
    return next(value for path, value in rows.items() if stem in path)


def density(wanted: list[Shape], width: float, nesting: Nesting) -> float:
    """Return the share of the roll that outlines cover, in per cent."""
    return 100 * sum(s.count * s.outline.area() for s in wanted) / (width * float(nesting.length))

"""The examples as the stages make them, and outlines measured, for the tests of views."""

from __future__ import annotations

from pathlib import Path

import pytest
import shapely
import shapely.affinity

from quarterturn.geometry import as_polygon, read_path_data
from quarterturn.geometry.paths import Region
from quarterturn.studio.stages import OneSize, Stages

EXAMPLES = sorted((Path(__file__).parents[3] / "examples").glob("*.toml"))
MADE = {path.stem: Stages().at(path.read_text(encoding="utf-8")) for path in EXAMPLES}
each_example = pytest.mark.parametrize("name", MADE)


def sized(name: str) -> OneSize:
    return MADE[name].size()


def area(data: str) -> float:
    return float(polygon(data).area)


def polygon(data: str) -> shapely.Geometry:
    return as_polygon(Region(tuple(subpath.path() for subpath in read_path_data(data))))

"""One good file, and how a case puts a mistake in it."""

from __future__ import annotations

from dataclasses import dataclass

GOOD = '''\
format = 1
title = "Small Harbour"
units = "inch"
version = "1.0"

[fabrics.A]
name = "oyster"
colour = "#efe6d8"
width = '42"'

[fabrics.B]
name = "ink"
role = "circles"
colour = "#22304a"

[recipes.round]
kind = "circle cut both ways"
finished = '4 1/4"'
trim = '0"'
shape = { diameter = '7"' }
curve = "as drawn"

[colourways.a]
recipe = "round"
ground = "A"
shape = "B"

[setting]
kind = "straight"
map = """
a2 a3 a2
a1 a0 a1
"""
across = 2
down = 3

[[borders]]
fabric = "B"
width = '2"'
first = "sides"

[binding]
fabric = "B"

[backing]
fabric = "A"

[making]
ring_in = '1/4"'

[making.stitch]
kind = "zigzag"

[house]
paper = "letter"
'''


@dataclass(frozen=True)
class Broken:
    """Put `new` in place of `old`; then the findings are `codes`, each at the place beside it.

    The line of the first is that of the change, or where one is given, the line that holds `line`.
    """

    name: str
    old: str
    new: str
    found: tuple[tuple[str, str], ...]
    line: str | None = None
    good: str = GOOD

    @property
    def text(self) -> str:
        """Return the spoilt file."""
        assert self.good.count(self.old) == 1, self.old
        return self.good.replace(self.old, self.new)


def broken(name: str, old: str, new: str, *found: str, line: str | None = None) -> Broken:
    """Build a case; each of `found` is a code and a key with a space between."""
    return Broken(name, old, new, tuple((a, b) for a, _, b in (each.partition(" ") for each in found)), line)

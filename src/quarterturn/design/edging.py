"""How wide to cut a binding for a finished width, and which packages of batting a shop has.

Finished width w is that of one face. Single fold takes 4·w, double fold 6·w, and a little for the turning: 1⅛" and
1⅝" for ¼" (ctpub.com, calculating yardage for bias binding; the single one also mixedupcreativeacademy.com). The
turning of ⅛" is theirs; thick quilts take up to ¼" (from memory). Quilts bound with a seam narrower than w finish
differently: a finished width is good to ⅛" and no better.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from quarterturn.design import limits
from quarterturn.design.cloth import check_count
from quarterturn.design.defaults import BINDING_WIDTH
from quarterturn.design.keys import dotted
from quarterturn.design.model import BindingKind, Fold, Package
from quarterturn.design.notes import Notes
from quarterturn.design.words import read_name
from quarterturn.measure import INCH, Length, cut_up

if TYPE_CHECKING:
    from quarterturn.design.file import BattingTable, BindingTable

TURNING: Length = INCH / 8
"""Added to a strip for the turn of the cloth over its edge."""


FACES = {Fold.SINGLE: 4, Fold.DOUBLE: 6}
"""So many finished widths go into a strip."""


def strip_width(finished: Length, fold: Fold, turning: Length = TURNING) -> Length:
    """Return the width of the strip to cut for a binding of a finished width."""
    return FACES[fold] * finished + turning


def finished_width(strip: Length, fold: Fold, turning: Length = TURNING) -> Length:
    """Return the finished width that a strip gives."""
    return (strip - turning) / FACES[fold]


def read_binding_width(table: BindingTable | None, notes: Notes) -> Length:
    """Return the width of the strip to cut, on the ruler where it follows from the finished width."""
    fold = read_fold(table)
    default = BINDING_WIDTH[fold][notes.units]
    if table is None:
        return default
    width = notes.length(table.width, "binding.width", limits.BINDING)
    finished = notes.length(table.finished, "binding.finished", limits.BINDING_FINISHED)
    if table.width is not None and table.finished is not None:
        sentence = "The strip of the binding is stated, and its finished width as well."
        notes.add("binding-unclear", "binding.finished", sentence, "Keep one of them.")
    if finished is not None and table.width is None:
        return cut_up(strip_width(finished, fold), notes.units)
    return width or default


def read_fold(table: BindingTable | None) -> Fold:
    """Return how the strip is folded."""
    return Fold(table.fold) if table and table.fold else Fold.DOUBLE


def read_kind(table: BindingTable | None) -> BindingKind:
    """Return how the strip lies on the cloth."""
    return BindingKind(table.kind) if table and table.kind else BindingKind.STRAIGHT


def read_packages(table: BattingTable | None, notes: Notes) -> tuple[Package, ...]:
    """Return the packages that the file states, smallest first."""
    packages = table.packages if table else None
    kept = check_count(packages, "packages", limits.MOST_PACKAGES, notes)
    found = [package for name, sides in kept if (package := _package(name, sides, notes))]
    return tuple(sorted(found, key=lambda package: package.short * package.long))


def _package(name: str, sides: list[str | int | float], notes: Notes) -> Package | None:
    key = dotted("batting", "packages", name)
    read_name(name, key, "Name it by a word, such as throw = ['60\"', '60\"'].", notes)
    if len(sides) != 2:
        sentence = f"A package has two sides, and here it has {len(sides)}."
        notes.add("package-unclear", key, sentence, "Write throw = ['60\"', '60\"'].")
        return None
    read = [
        notes.length(side, dotted("batting", "packages", name, n), limits.PACKAGE)
        for n, side in enumerate(sides)
    ]
    found = sorted(side for side in read if side is not None)
    return Package(name, *found) if len(found) == 2 else None


def package_sides(packages: tuple[Package, ...]) -> Mapping[str, tuple[Length, Length]]:
    """Return the sides of packages by name."""
    return {package.name: (package.short, package.long) for package in packages}

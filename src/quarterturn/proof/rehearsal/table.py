"""The table: how much cloth and web is left, and which pieces lie there, by label."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from quarterturn.design import Direction
from quarterturn.measure import Length
from quarterturn.proof.rehearsal.cloth import EQUAL, CutOff, Patch, Print, Ring, SpoiledError, same_cloth
from quarterturn.steps import Pile, Product

Good = Patch | Ring


@dataclass(frozen=True, slots=True)
class Bolt:
    """So much of a cloth or a web as was bought: usable width and length, in inches.

    `upright` says how a print runs that must stand upright in the quilt: up or down alike, or one way only. What is
    bought in sheets has the length of all of them, one after another, and `sheet` is that of one.
    """

    width: Length
    length: Length
    upright: Direction = Direction.NONE
    sheet: Length | None = None


@dataclass(frozen=True, slots=True)
class Parcels:
    """Equal pieces of cloth that are there, on the shelf or bought: their true size as they came off the bolt."""

    fabric: str
    width: Length
    height: Length
    count: int
    upright: Direction = Direction.NONE


@dataclass(frozen=True, slots=True)
class Supplies:
    """Everything there before the first step: cloth by letter of fabric, web, batting (width and height), and cloth in
    pieces by its label."""

    cloth: Mapping[str, Bolt]
    web: Bolt
    batting: Bolt
    parcels: Mapping[str, Parcels] = field(default_factory=dict)


class Table:
    """What is still there while the steps are carried out. Each method is something hands can do."""

    def __init__(self, supplies: Supplies) -> None:
        self._cloth = {fabric: bolt.length for fabric, bolt in supplies.cloth.items()}
        self._parcels = {label: parcels.count for label, parcels in supplies.parcels.items()}
        self._web = supplies.web.length
        self._piles: dict[str, tuple[Good, int]] = {}
        self.supplies = supplies
        self.top: Patch | None = None
        """The top as it was when it was layered."""
        self.seam: Length = Fraction(0)
        """The allowance by which the binding was sewn on."""
        self.fallen: list[CutOff] = []
        """What was cut away behind shapes."""

    def cut_off(self, fabric: str, length: Length) -> Length:
        """Take a length off a fabric; return its usable width."""
        if fabric not in self._cloth:
            raise SpoiledError(f"There is no fabric {fabric}.")
        if length <= 0:
            raise SpoiledError("A cut must be longer than nothing.")
        if length > self._cloth[fabric]:
            raise SpoiledError(
                f"Fabric {fabric} runs out: {float(length):.3f} inches are wanted, "
                f"{float(self._cloth[fabric]):.3f} are left."
            )
        self._cloth[fabric] -= length
        return self.supplies.cloth[fabric].width

    def print_of(self, fabric: str) -> Print | None:
        """Return how a print lies on strips cut across its fabric, if it must stand upright."""
        return _print(self.supplies.cloth[fabric].upright)

    def take_parcels(self, label: str, fabric: str, count: int) -> tuple[Parcels, Print | None]:
        """Take pieces of cloth off the shelf or out of the bag; return what one of them is, and how its print lies."""
        parcels = self.supplies.parcels.get(label)
        if parcels is None or parcels.fabric != fabric:
            raise SpoiledError(f"There are no pieces '{label}' of fabric {fabric}.")
        if not 0 < count <= self._parcels[label]:
            raise SpoiledError(f"{count} of '{label}' are wanted, {self._parcels[label]} are left.")
        self._parcels[label] -= count
        return parcels, _print(parcels.upright)

    def unroll(self, length: Length, gap: Length) -> None:
        """Take a length off the web, and a gap before it where some has been used already."""
        if self._web < self.supplies.web.length:
            length += gap
        if length > self._web:
            raise SpoiledError(
                f"The web runs out: {float(length):.3f} inches are wanted, {float(self._web):.3f} are left."
            )
        self._web -= length

    def take_sheets(self, count: int) -> None:
        """Take whole sheets of web."""
        sheet = self.supplies.web.sheet
        if sheet is None:
            raise SpoiledError("The web was not bought in sheets.")
        if count * sheet > self._web:
            raise SpoiledError(f"{count} sheets of web are wanted, {int(self._web / sheet)} are left.")
        self._web -= count * sheet

    def take(self, pile: Pile) -> Good:
        """Take equal pieces off the table and return what one of them is."""
        good, there = self._piles.get(pile.label, (None, 0))
        if good is None or pile.count < 1 or pile.count > there:
            raise SpoiledError(f"{pile.count} of '{pile.label}' are wanted, {there} are there.")
        if pile.count == there:
            del self._piles[pile.label]
        else:
            self._piles[pile.label] = (good, there - pile.count)
        return good

    def take_patch(self, pile: Pile) -> Patch:
        """Take equal pieces of cloth."""
        good = self.take(pile)
        if not isinstance(good, Patch):
            raise SpoiledError(f"'{pile.label}' is not cloth.")
        return good

    def take_ring(self, pile: Pile) -> Ring:
        """Take equal rings of web."""
        good = self.take(pile)
        if not isinstance(good, Ring):
            raise SpoiledError(f"'{pile.label}' is not a ring of web.")
        return good

    def put(self, product: Product, good: Good) -> None:
        """Lay equal pieces on the table, after measuring one against what the step promised."""
        if product.count < 1:
            raise SpoiledError(f"The step makes no '{product.label}'.")
        if isinstance(good, Patch):
            _measure(product, good)
        lying, count = self._piles.get(product.label, (good, 0))
        if isinstance(good, Patch) and count and not (isinstance(lying, Patch) and same_cloth(lying, good)):
            raise SpoiledError(f"Two different things are called '{product.label}'.")
        self._piles[product.label] = (lying, count + product.count)

    def count(self, label: str) -> int:
        """Return how many pieces of a label lie there."""
        return self._piles.get(label, (None, 0))[1]

    def good(self, label: str) -> Good | None:
        """Return what one of the pieces of a label is; None where none lie there."""
        return self._piles.get(label, (None, 0))[0]

    def left(self) -> dict[str, int]:
        """Return the counts of everything that lies there."""
        return {label: count for label, (_, count) in self._piles.items()}

    def cloth_left(self) -> dict[str, Length]:
        """Return the length left of each fabric."""
        return dict(self._cloth)

    def parcels_left(self) -> dict[str, int]:
        """Return how many pieces of cloth are left of each label."""
        return dict(self._parcels)

    def web_left(self) -> Length:
        """Return the length of web left."""
        return self._web


def _print(upright: Direction) -> Print | None:
    ways = {Direction.ONE_WAY: 1, Direction.TWO_WAY: 2}.get(upright)
    return Print(-1j, ways) if ways else None


def _measure(product: Product, patch: Patch) -> None:
    box = patch.box
    if abs(box.width - product.width) > EQUAL or abs(box.height - product.height) > EQUAL:
        raise SpoiledError(
            f"'{product.label}' should measure {float(product.width):.4f} by {float(product.height):.4f} inches "
            f"but measures {box.width:.4f} by {box.height:.4f}."
        )


def all_used(used: int, made: int) -> None:
    """Raise SpoiledError where pieces are lost or come from nowhere."""
    if used != made:
        raise SpoiledError(f"{used} pieces go in and {made} come out.")

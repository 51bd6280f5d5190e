"""The proof: what the checks and the rehearsal find, each with its place on the canvas, and how much stands proved."""

from __future__ import annotations

import re
from collections.abc import Iterator

from quarterturn.design import (
    ROOT,
    Design,
    Finding,
    LineSet,
    OnPointSet,
    SectionSet,
    Severity,
    StraightSet,
    parts_of,
)
from quarterturn.proof import CHECKS, rehearsal_sentences
from quarterturn.studio.stages import Made, UnmadeError
from quarterturn.studio.views.model import CellView, FindingView, View, finding_view
from quarterturn.studio.views.places import Places, Spot

_ROW = re.compile(r"row (\d+), unit (\d+)(?: of (\S+))?")


class SpotView(View):
    """Where a finding lies: cells of a map, a section, a border, a fabric, a colourway, a recipe; or nowhere.

    `room` is the room of the page in which it is mended.
    """

    kind: str
    name: str
    cells: tuple[CellView, ...]
    room: str


class FoundFinding(View):
    """A finding with its place, and the size that it is told of: empty for the file's own."""

    finding: FindingView
    spot: SpotView


class ProofView(View):
    """All findings, worst first as they are; `proved` says what the rehearsal said, empty until it has been run."""

    revision: int
    findings: tuple[FoundFinding, ...]
    counts: dict[str, int]
    checks: int
    proved: tuple[str, ...]
    holds: bool | None


def proof_view(revision: int, made: Made, *, rehearse: bool = False) -> ProofView:
    """Return the findings; with the rehearsal of the file's own size if that is wanted, which takes seconds."""
    findings = made.findings
    proved: tuple[str, ...] = ()
    holds: bool | None = None
    if rehearse:
        try:
            size = made.size()
            proof = size.proof
        except UnmadeError:
            holds = False
        else:
            holds = proof.holds
            proved = tuple(rehearsal_sentences(size.pattern(), proof))
            findings = (*findings, *proof.findings)
    design = made.reading.design
    return ProofView(
        revision=revision,
        findings=tuple(
            FoundFinding(finding=finding_view(each), spot=spot_of(each, design))
            for each in sorted(findings, key=lambda each: _ORDER.index(each.severity))
        ),
        counts={severity.value: sum(each.severity is severity for each in findings) for severity in Severity},
        checks=len(CHECKS),
        proved=proved,
        holds=holds,
    )


_ORDER = tuple(Severity)

_ROOMS = {
    "fabrics": "cloth",
    "colourways": "cloth",
    "recipes": "drafting",
    "outlines": "drafting",
    "sections": "quilt",
    "setting": "quilt",
    "borders": "quilt",
    "binding": "cutting",
    "backing": "cutting",
    "batting": "cutting",
    "making": "cutting",
    "sizes": "cutting",
    "house": "booklet",
}
"""In which room the tables of a design are changed."""
_CUT = ("strips", "strip_heights")
"""Keys of a fabric that are changed where its plan is seen."""


def spot_of(finding: Finding, design: Design | None) -> SpotView:
    """Return where a finding lies, from the dotted key and the detail of its place."""
    try:
        parts = parts_of(finding.place.key) if finding.place.key else ()
    except ValueError:
        parts = ()
    if not parts:
        return SpotView(kind="design", name="", cells=(), room="booklet")
    room = _ROOMS.get(parts[0], "booklet")
    if parts[0] in ("setting", "sections"):
        return _in_section(parts, finding.place.detail, design)
    if parts[0] == "borders":
        number = int(parts[1]) + 1 if len(parts) > 1 and parts[1].isdecimal() else 1
        return SpotView(kind="border", name=f"border {number} of {ROOT}", cells=(), room=room)
    kind = {"fabrics": "fabric", "colourways": "colourway", "recipes": "recipe", "sizes": "size"}.get(
        parts[0], "key"
    )
    name = parts[1] if len(parts) > 1 and kind != "key" else finding.place.key
    if kind == "fabric" and parts[2:3] and parts[2] in _CUT:
        room = "cutting"
    return SpotView(kind=kind, name=name, cells=(), room=room)


def _in_section(parts: tuple[str, ...], detail: str, design: Design | None) -> SpotView:
    section, rest = (
        (ROOT, parts[1:]) if parts[0] == "setting" else (parts[1] if len(parts) > 1 else "", parts[2:])
    )
    if rest[:1] == ("borders",):
        number = int(rest[1]) + 1 if len(rest) > 1 and rest[1].isdecimal() else 1
        return SpotView(kind="border", name=f"border {number} of {section}", cells=(), room="quilt")
    if rest[:1] == ("motifs",) and len(rest) > 1:
        return SpotView(kind="motif", name=f"{section} {rest[1]}", cells=(), room="quilt")
    cells = tuple(_cells(section, rest, detail, design)) if design else ()
    return SpotView(kind="cells" if cells else "section", name=section, cells=cells, room="quilt")


def _cells(section: str, rest: tuple[str, ...], detail: str, design: Design) -> Iterator[CellView]:
    """Yield the cells that a key, a row of a map, or the detail names, where the map as written has them."""
    places = Places(design)
    numbered = rest[1:2] and rest[1].isdecimal()
    if found := _ROW.search(detail):
        row, column, owner = int(found[1]) - 1, int(found[2]) - 1, found[3] or section
        if numbered and rest[0] in ("map", "between") and isinstance(_setting(places, owner), OnPointSet):
            row = 2 * row + (rest[0] == "between")  # the reader counts rows of the map alone
        if (spot := _spot(places, owner, row, column)) is not None:
            yield CellView(section=spot.section, row=spot.row, column=spot.column)
    elif numbered and rest[0] == "parts":
        number, setting = int(rest[1]), _setting(places, section)
        below = isinstance(setting, LineSet) and setting.below
        yield CellView(section=section, row=number if below else 0, column=0 if below else number)
    elif numbered and rest[0] == "map" and isinstance(setting := _setting(places, section), StraightSet):
        row = int(rest[1])
        columns = len(setting.cells[row]) if row < len(setting.cells) else 0
        yield from (CellView(section=section, row=row, column=column) for column in range(columns))


def _setting(places: Places, section: str) -> SectionSet | None:
    try:
        return places.setting(section)
    except KeyError:
        return None


def _spot(places: Places, section: str, row: int, column: int) -> Spot | None:
    """Return the cell at a place that words name; None where the map is another by now."""
    try:
        return places.spot(section, row, column)
    except (KeyError, IndexError):
        return None

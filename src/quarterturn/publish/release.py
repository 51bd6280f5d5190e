"""All that a publish makes: pattern in, files out, each under its name.

The parts are an explicit list; `release` makes those that are asked for, and a list of contents.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass

from quarterturn.blocks import Blocks
from quarterturn.design import Finding, Kits, Lesson, Severity
from quarterturn.proof import (
    Pattern,
    Proof,
    cut_away_sentences,
    findings_text,
    rehearsal_sentences,
    rehearsal_text,
)

CONTENTS = "contents.txt"
PICTURE_MM = 200.0
PICTURE_PIXELS = 1600


@dataclass(frozen=True, slots=True)
class Verdict:
    """What is known for and against a pattern: the name of its design file, all findings, and the rehearsal."""

    name: str
    findings: tuple[Finding, ...]
    proof: Proof
    others: tuple[tuple[Pattern, Proof], ...] = ()
    """The pattern in its other sizes, each with its rehearsal."""


@dataclass(frozen=True, slots=True)
class Order:
    """What to make the files of: a pattern (its house says on which paper), its verdict, and whether it is a draft."""

    pattern: Pattern
    verdict: Verdict
    draft: bool


@dataclass(frozen=True, slots=True)
class Part:
    """Files that are made together, under the name by which they can be asked for."""

    name: str
    make: Callable[[Order], Mapping[str, bytes]]


def release(
    pattern: Pattern,
    verdict: Verdict,
    *,
    draft: bool = False,
    only: Collection[str] = (),
    watch: Callable[[str], None] = lambda part: None,
) -> dict[str, bytes]:
    """Return the files of a pattern by name, those of the parts named in `only` if any are; a list of contents last.

    Equal patterns give equal bytes. `watch` is told the name of each part as it begins.
    Raises UnprintableTextError for text that the fonts lack.
    """
    order, files = Order(pattern, verdict, draft), dict[str, bytes]()
    for part in PARTS:
        if not only or part.name in only:
            watch(part.name)
            files.update(part.make(order))
    return {**files, CONTENTS: contents(files)}


def contents(files: Mapping[str, bytes]) -> bytes:
    """Return a line for each file, by which sha256sum --check tells whether they are whole (FIPS 180-4)."""
    return "".join(f"{hashlib.sha256(files[name]).hexdigest()}  {name}\n" for name in sorted(files)).encode()


def _booklet(order: Order) -> Mapping[str, bytes]:
    from quarterturn.publish.booklet import booklet
    from quarterturn.publish.wording import sizes_rehearsed

    others = order.verdict.others
    said = (*rehearsal_sentences(order.pattern, order.verdict.proof), *sizes_rehearsed(others))
    paper = order.pattern.design.house.paper
    sizes = [pattern for pattern, _ in others]
    left = cut_away_sentences(order.pattern, order.verdict.proof)
    return {"booklet.pdf": booklet(order.pattern, paper, said, draft_line(order), sizes, left)}


def draft_line(order: Order) -> str:
    """Return what a draft says of itself; nothing where the booklet is none."""
    if not order.draft:
        return ""
    count = sum(finding.severity is Severity.STOPS for finding in order.verdict.findings)
    stops = "finding that stops" if count == 1 else "findings that stop"
    return f"Draft: {count} {stops} the sewer. Not for sale and not for sewing."


def _templates(order: Order) -> Mapping[str, bytes]:
    from quarterturn.publish.dxf import sheet_dxf
    from quarterturn.publish.pdf import sheets_pdf
    from quarterturn.publish.shape_marks import cutter_sheet, template_of
    from quarterturn.publish.svg import sheet_svg
    from quarterturn.publish.templates import template_sheets

    design, blocks, bill = order.pattern.design, order.pattern.blocks, order.pattern.bill
    pages = template_sheets(design, blocks, bill, design.house.paper)
    files = {"templates.pdf": sheets_pdf(pages, f"{design.title} – templates")}
    for stem, (master, shape) in zip(shape_stems(blocks), blocks.templates(), strict=True):
        sheet = cutter_sheet(template_of(shape, master.cuts))
        files[f"{stem}.svg"] = sheet_svg(sheet).encode()
        files[f"{stem}.dxf"] = sheet_dxf(sheet).encode()
    return files


def shape_stems(blocks: Blocks) -> list[str]:
    """Return for each shape to trace a name of its files: letters, figures and hyphens, each name once."""
    return [stem("shape", number, shape.name) for number, (_, shape) in enumerate(blocks.templates(), 1)]


def stem(kind: str, number: int, name: str) -> str:
    """Return a name of files for something with a name of its own; the number keeps it apart from others."""
    word = re.sub("[^a-z0-9]+", "-", name.lower()).strip("-")
    return f"{kind}-{number}-{word}"[:60].rstrip("-")


def _picture(order: Order) -> Mapping[str, bytes]:
    from quarterturn.publish.picture import top_sheet
    from quarterturn.publish.png import sheet_png
    from quarterturn.publish.svg import sheet_svg

    pattern = order.pattern
    sheet = top_sheet(pattern.design, pattern.blocks, pattern.setting, PICTURE_MM)
    return {"picture.svg": sheet_svg(sheet).encode(), "picture.png": sheet_png(sheet, PICTURE_PIXELS)}


def _lists(order: Order) -> Mapping[str, bytes]:
    from quarterturn.publish.tables import sizes_csv

    files = _lists_of(order.pattern, "cut-list", "job")
    patterns = (order.pattern, *(pattern for pattern, _ in order.verdict.others))
    if len(patterns) > 1:
        files["sizes.csv"] = sizes_csv(patterns).encode()
    for number, pattern in enumerate(patterns[1:], 2):
        size = pattern.design.size
        files |= _lists_of(pattern, stem("cut-list", number, size), stem("job", number, size))
    return files


def _lists_of(pattern: Pattern, cuts: str, job: str) -> dict[str, bytes]:
    """Return the lists of one size under these names."""
    from quarterturn.publish.tables import cut_list_csv, job_json

    cut_list = cut_list_csv(pattern.bill, pattern.materials, pattern.design)
    return {f"{cuts}.csv": cut_list.encode(), f"{job}.json": job_json(pattern).encode()}


def _selling(order: Order) -> Mapping[str, bytes]:
    from quarterturn.publish.classes import class_files
    from quarterturn.publish.kits import kit_files
    from quarterturn.publish.money import is_priced, money_files

    pattern, files = order.pattern, dict[str, str]()
    patterns = (pattern, *(other for other, _ in order.verdict.others))
    if is_priced(pattern.design):
        files |= money_files(patterns)
    packed, held = (
        _of_size(patterns, sold) for sold in (pattern.design.selling.kits, pattern.design.selling.lesson)
    )
    kits = packed.design.selling.kits if packed else None
    lesson = held.design.selling.lesson if held else None
    if packed and kits:
        files |= kit_files(packed, kits)
    if held and lesson:
        files |= class_files(held, lesson, kits if held is packed else None)
    return {name: text.encode() for name, text in files.items()}


def _of_size(patterns: Sequence[Pattern], sold: Kits | Lesson | None) -> Pattern | None:
    """Return the pattern of the size that is sold; None where it is not made here, or nothing is sold."""
    return next((pattern for pattern in patterns if sold and pattern.design.size == sold.size), None)


def _findings(order: Order) -> Mapping[str, bytes]:
    verdict = order.verdict
    text = findings_text(verdict.findings, verdict.name) + rehearsal_text(order.pattern, verdict.proof)
    for pattern, proof in verdict.others:
        text += f"In {pattern.design.size} size:\n{rehearsal_text(pattern, proof)}"
    return {"findings.txt": text.encode()}


PARTS: tuple[Part, ...] = (
    Part("booklet", _booklet),
    Part("templates", _templates),
    Part("picture", _picture),
    Part("lists", _lists),
    Part("selling", _selling),
    Part("findings", _findings),
)
"""Every part, in the order in which they are made."""

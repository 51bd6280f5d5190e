"""Every code that the reader can give to a finding, how bad it is, and what it says in general."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from quarterturn.design.findings import Severity

_STOPS = {
    "not-text": "the file is not text in UTF-8",
    "empty-file": "there is nothing in the file",
    "file-too-large": "the file is too large for a design",
    "line-too-long": "a line is too long for a design",
    "bad-syntax": "a line does not follow the rules of TOML",
    "key-twice": "a key or a table is there twice",
    "too-nested": "brackets are nested too deeply",
    "format-missing": "the file does not say which format it has",
    "format-unknown": "there is no such format",
    "format-newer": "the file was written for a later version of this program",
    "unknown-key": "a key that no design has",
    "wrong-type": "a number where there should be text, or the like",
    "missing-key": "a key that every design needs is not there",
    "unknown-word": "a word that is not one of those to choose from",
    "bad-length": "something that cannot be read as a length",
    "size-out-of-range": "a length that is too small or too large for what it measures",
    "count-out-of-range": "a number that is too small or too large for what it counts",
    "bad-colour": "something that is not a colour in the form #rrggbb",
    "bad-letter": "a fabric's letter that is not one or two capital letters",
    "bad-code": "a colourway's code that is not one or two small letters",
    "bad-section-name": "a section's name that is not three to twenty small letters, or is taken",
    "unwanted-key": "a key that a section or border of its kind does not have",
    "section-in-itself": "a section that holds itself, or one that holds it",
    "sections-too-deep": "sections within sections, deeper than can be",
    "bad-text": "text that is empty, too long or not printable",
    "too-many": "more fabrics, recipes, colourways, sections, borders or other things than can be",
    "unknown-fabric": "the letter of a fabric that the file does not have",
    "unknown-outline": "the name of an outline that neither the program nor the file has",
    "unknown-recipe": "the name of a recipe that the file does not have",
    "unknown-code": "the code of a colourway that the file does not have",
    "unknown-section": "the name of a section that the file does not have",
    "bad-cell": "something in the map that is not a code and a turn",
    "unknown-turn": "a turn that is not 0, 1, 2 or 3",
    "unknown-quarter": "a word for a piece of a master that is none",
    "quarter-mirrored": "a unit named by its quarter in a map whose copies are mirrored",
    "section-mirrored": "a section in a map whose copies are mirrored",
    "ragged-map": "rows of the map that differ in length",
    "empty-map": "a map without a unit",
    "map-not-square": "a map to be turned about its corner that has not as many rows as columns",
    "map-too-large": "more rows or columns than can be",
    "sums-missing": "a recipe that gives neither the finished nor the starting size",
    "sums-disagree": "finished, start and trim that do not add up",
    "start-too-small": "a master that is too small for its units",
    "bad-path": "something that cannot be read as path data",
    "outline-unsound": "an outline that is open, crosses itself, has several parts or is too fine",
    "outline-taken": "an outline with the name of one that the program has",
    "shape-unclear": "a shape without a size, with two sizes, or with a size of another outline",
    "shape-too-large": "a shape that the outer seams would cut off",
    "shape-through-corner": "an outline whose edge runs just through the place where the seams cross",
    "shape-outside": "a shape that reaches past the outer seams of its master",
    "shape-hidden": "a shape that lies wholly under others",
    "cut-misses": "a cut that does not cross its master",
    "cut-unclear": "a cut through one point, two cuts along one line, or cuts that no shape can be spread along",
    "piece-too-small": "cuts that leave a piece too narrow to sew",
    "key-unfit": "a key that this kind of recipe does not have",
    "part-unknown": "a fabric for a part that the recipe does not have",
    "not-halved": "halves of a recipe that is not cut just once",
    "self-rejoined": "halves that would be rejoined as they were",
    "unknown-colourway": "the code of a colourway, to be rejoined, that the file does not have",
    "motif-unclear": "a motif of a recipe that has not just one shape without a hole",
    "photo-unclear": "a photo that is no picture beside the design, or what is said of none",
    "strips-unclear": "strips that are decided on without a count and without pieces",
    "upright-unclear": "a print that must stand upright and has no direction",
    "shape-vanishes": "a shape that disappears in the seams",
    "unknown-size": "the name of a size that the file does not have",
    "unknown-place": "a change of a size that names no place in the file",
    "change-forbidden": "a change of what must be alike in all sizes",
    "bed-unclear": "a bed that is stated twice, in part, or not at all",
    "many-more": "more mistakes than anybody wants to read at once",
    "binding-unclear": "a binding whose strip and finished width are both stated",
    "package-unclear": "a package of batting that has not two sides",
    "bad-repeat": "the way of a needle that cannot be read or does not go on",
    "sheet-unclear": "a sheet of web that has not a width and a height",
    "no-web": "a ring without any web",
}
_CONFUSES = {
    "name-twice": "two fabrics of the same name",
    "price-without-currency": "prices, and no currency",
    "symmetry-unused": "a symmetry that has nothing to do, since the map is laid once",
}

_STYLE = {
    "section-unused": "a section that no map calls",
}

CODES: Mapping[str, tuple[Severity, str]] = MappingProxyType(
    {code: (Severity.STOPS, meaning) for code, meaning in _STOPS.items()}
    | {code: (Severity.CONFUSES, meaning) for code, meaning in _CONFUSES.items()}
    | {code: (Severity.STYLE, meaning) for code, meaning in _STYLE.items()}
)
"""Code -> severity and meaning. A finding that stops leaves no design; any other leaves one."""

"""Ways to spoil a size of a design: what the size says, and what the reader must find."""

from __future__ import annotations

from tests.design.spoiling import Broken, broken

MANY = "\n".join(f"[sizes.s{number}]" for number in range(8))

_CASES: tuple[tuple[str, ...], ...] = (
    (
        "a change of a recipe that is not there",
        '[sizes.large]\nchanges = { "recipes.rund.finished" = \'5"\' }',
        'unknown-place sizes.large.changes."recipes.rund.finished"',
    ),
    (
        "a change of a border that is not there",
        '[sizes.large]\nchanges = { "borders.4.width" = \'5"\' }',
        'unknown-place sizes.large.changes."borders.4.width"',
    ),
    (
        "a change within a value",
        '[sizes.large]\nchanges = { "title.words" = "Large" }',
        'unknown-place sizes.large.changes."title.words"',
    ),
    (
        "a change of what is no key at all",
        '[sizes.large]\nchanges = { "the border" = 3 }',
        'unknown-place sizes.large.changes."the border"',
    ),
    (
        "something to take away that is not there",
        '[sizes.large]\nchanges = { "borders.1" = {} }',
        'unknown-place sizes.large.changes."borders.1"',
    ),
    (
        "a change of a key that no table has",
        '[sizes.large]\nchanges = { "setting.acros" = 3 }',
        'unknown-key sizes.large.changes."setting.acros"',
    ),
    (
        "a change that breaks the design",
        '[sizes.large]\nchanges = { "recipes.round.finished" = \'3"\' }',
        'shape-too-large sizes.large.changes."recipes.round.finished"',
    ),
    (
        "a change that is no length",
        '[sizes.large]\nchanges = { borders.0.width = "wide" }',
        "bad-length sizes.large.changes.borders.0.width",
    ),
    (
        "more repeats than can be",
        "[sizes.large]\nchanges = { setting.across = 90, setting.down = 4 }",
        "map-too-large sizes.large.changes.setting.across",
    ),
    (
        "units that differ from size to size",
        '[sizes.large]\nchanges = { units = "metric" }',
        "change-forbidden sizes.large.changes.units",
    ),
    (
        "changes of the file's own size",
        "[sizes.original]\nchanges = { setting.across = 3 }",
        "change-forbidden sizes.original.changes",
    ),
    ("a bed that is not known", '[sizes.large]\nbed = "quen"', "unknown-word sizes.large.bed"),
    (
        "a bed stated twice",
        "[sizes.large]\nbed = \"queen\"\nmattress = ['60\"', '80\"']",
        "bed-unclear sizes.large.mattress",
    ),
    ("a mattress of one side", "[sizes.large]\nmattress = ['60\"']", "bed-unclear sizes.large.mattress"),
    (
        "a mattress for a giant",
        "[sizes.large]\nmattress = ['60\"', '800\"']",
        "size-out-of-range sizes.large.mattress.1",
    ),
    ("a drop from nothing", "[sizes.large]\ndrop = '12\"'", "bed-unclear sizes.large"),
    (
        "a negative drop",
        '[sizes.large]\nbed = "queen"\ndrop = \'-2"\'',
        "size-out-of-range sizes.large.drop",
    ),
    ("a size without a name", '[sizes.""]', 'bad-text sizes.""'),
    (
        "a size with a long name",
        '[sizes."as large as the largest bed"]',
        'bad-text sizes."as large as the largest bed"',
    ),
    ("more sizes than columns", MANY, "too-many sizes"),
)

LAST = '[house]\npaper = "letter"\n'


def _line(text: str, place: str) -> str:
    """Return the line of a size's table on which the last part of a place stands, or else its header."""
    header, *rest = text.splitlines()
    for part in ("changes", "mattress", "bed", "drop"):
        if f".{part}" in place:
            return next(line for line in rest if line.startswith(part))
    return header


BROKEN_SIZES: tuple[Broken, ...] = tuple(
    broken(name, LAST, f"{LAST}\n{text}\n", found, line=_line(text, found.partition(" ")[2]))
    for name, text, found in _CASES
)

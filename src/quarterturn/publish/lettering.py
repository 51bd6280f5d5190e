"""How wide a text will be: the advance widths of the face of all sheets, for layout before typesetting."""

from __future__ import annotations

FIRST = 32
REGULAR = """
200 289 425 497 497 824 609 249 303 303 418 497 249 311 249 350 497 497 497 497 497 497 497 497
497 497 249 249 497 497 497 425 847 544 588 571 615 527 494 617 652 263 480 579 486 727 647 664
566 664 569 534 536 645 515 786 513 476 539 303 350 303 497 500 542 504 553 456 555 496 292 504
544 246 247 495 255 829 547 542 555 555 347 419 338 544 467 718 446 467 425 303 241 303 497
"""
BOLD = """
200 340 536 528 528 857 667 300 344 344 457 528 300 332 300 339 528 528 528 528 528 528 528 528
528 528 300 300 528 528 528 463 903 573 605 582 635 548 524 638 674 301 509 614 518 762 665 684
596 684 613 556 556 665 556 813 567 525 541 344 339 344 528 500 555 527 573 467 573 518 341 534
571 276 278 548 286 857 572 555 573 573 398 443 383 568 523 776 514 521 460 344 268 344 528
"""
"""Widths of the letters from the space to the tilde in thousandths of the size: Source Sans Pro, 2018."""

OTHER = 980
"""Any other letter is taken to be as wide as the ellipsis, wider than the fractions."""

_WIDTHS = {bold: [int(w) for w in table.split()] for bold, table in ((False, REGULAR), (True, BOLD))}


def text_width(text: str, size: float, *, bold: bool = False) -> float:
    """Return the width of a text of a size; kerning, which narrows it a little, is left out."""
    table = _WIDTHS[bold]
    return sum(_width(ord(letter), table) for letter in text) * size / 1000


def _width(code: int, table: list[int]) -> int:
    return table[code - FIRST] if FIRST <= code < FIRST + len(table) else OTHER


def largest_size(text: str, room: float, sizes: tuple[float, ...], *, bold: bool = False) -> float | None:
    """Return the largest of some sizes, given from large to small, in which a text fits a room; None where none."""
    return next((size for size in sizes if text_width(text, size, bold=bold) <= room), None)


def shortened(text: str, room: float, size: float, *, bold: bool = False) -> str:
    """Return a text cut short with … where it is wider than the room."""
    if text_width(text, size, bold=bold) <= room:
        return text
    kept = text
    while kept and text_width(kept + "…", size, bold=bold) > room:
        kept = kept[:-1]
    return kept.rstrip() + "…"


def broken(text: str, room: float, size: float) -> list[str]:
    """Break a text between words into rows that fit the room; a word that is too wide is cut short."""
    rows = [""]
    for word in text.split():
        longer = f"{rows[-1]} {word}".strip()
        if text_width(longer, size) <= room or not rows[-1]:
            rows[-1] = longer
        else:
            rows.append(word)
    return [shortened(row, room, size) for row in rows]

"""Read the words of a file: text that can be printed, letters, codes and colours."""

from __future__ import annotations

import re

from quarterturn.design.notes import Notes, did_you_mean, quoted

LONGEST_NAME = 120
LONGEST_TEXT = 4_000
_LETTER = re.compile(r"[A-Z]{1,2}")
_CODE = re.compile(r"[a-z]{1,2}")
_SECTION = re.compile(r"[a-z]{3,20}")
_TAKEN = ("centre", "top")
_COLOUR = re.compile(r"#[0-9a-fA-F]{6}")
_SHORT_COLOUR = re.compile(r"#?([0-9a-fA-F])([0-9a-fA-F])([0-9a-fA-F])")


def read_text(text: str | None, key: str, notes: Notes, longest: int = LONGEST_NAME) -> str:
    """Return text without the space around it; nothing where there is none."""
    if text is None:
        return ""
    bare = text.replace("\N{NO-BREAK SPACE}", " ").replace("\t", " ").strip()
    lines = bare.split("\n") if longest > LONGEST_NAME else [bare]
    if not all(line.isprintable() for line in lines):
        fault, remedy = "holds characters that cannot be printed", "Write plain text on one line."
    elif len(bare) > longest:
        fault, remedy = f"has {len(bare)} characters", f"Keep it to {longest}."
    else:
        return bare
    notes.add("bad-text", key, f"`{key.rpartition('.')[2]}` {fault}.", remedy)
    return ""


def read_name(text: str | None, key: str, remedy: str, notes: Notes) -> str:
    """Return text that must be there."""
    if text is None:
        notes.missing(key, remedy)
        return ""
    if not text.strip():
        notes.add("bad-text", key, f"`{key.rpartition('.')[2]}` is empty.", remedy)
    return read_text(text, key, notes)


def check_letter(letter: str, key: str, notes: Notes) -> None:
    """Note a fabric's letter that the booklet cannot print beside its pieces."""
    if not _LETTER.fullmatch(letter):
        remedy = "Use one or two capital letters, such as A, and write the name as name."
        notes.add("bad-letter", key, f"{quoted(letter)} cannot be a fabric's letter.", remedy)


def check_code(code: str, key: str, notes: Notes) -> None:
    """Note a colourway's code that the map cannot write."""
    if not _CODE.fullmatch(code):
        remedy = "Use one or two small letters, such as a; digits are for the turns."
        notes.add("bad-code", key, f"{quoted(code)} cannot be a colourway's code.", remedy)


def check_section_name(name: str, key: str, notes: Notes) -> None:
    """Note a section's name that the map cannot write, or by which the program calls the whole."""
    if not _SECTION.fullmatch(name) or name in _TAKEN:
        taken = f"; {' and '.join(_TAKEN)} are taken" if name in _TAKEN else ""
        remedy = f"Use three to twenty small letters, such as wreath{taken}."
        notes.add("bad-section-name", key, f"{quoted(name)} cannot be a section's name.", remedy)


def read_colour(text: str | None, key: str, notes: Notes) -> str:
    """Return a colour as #rrggbb in small letters."""
    if text is None:
        notes.missing(key, 'Write its colour: colour = "#rrggbb".')
        return ""
    if _COLOUR.fullmatch(text.strip()):
        return text.strip().lower()
    short = _SHORT_COLOUR.fullmatch(text.strip())
    full = f"#{''.join(2 * digit for digit in short.groups())}" if short else "#7a8b99"
    notes.add(
        "bad-colour",
        key,
        f"{quoted(text)} is not a colour.",
        f'Write # and six of the digits 0 to 9 and a to f, such as "{full}".',
    )
    return ""


def refer(word: str | None, key: str, kind: str, known: list[str], notes: Notes) -> str:
    """Return the letter or name of a fabric, recipe or the like, which the file must have."""
    if word is None:
        notes.missing(key, f"Name a {kind}.")
        return ""
    if word not in known:
        sentence = f"There is no {kind} {quoted(word)}."
        notes.add(f"unknown-{kind}", key, sentence, did_you_mean(word, known))
    return word

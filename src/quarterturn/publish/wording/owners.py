"""To which section a step of the assembly belongs, told by what it makes."""

from __future__ import annotations

import re

from quarterturn.proof import Pattern
from quarterturn.publish.wording.sections import ROOTS
from quarterturn.steps import LayOut, Step, labels

_OF = re.compile(r" (?:of|for) ([a-z]+)\b")


def owner_of(step: Step, pattern: Pattern) -> str:
    """Return the name of the section that a step is part of making; empty for the root."""
    if isinstance(step.action, LayOut) or not step.makes:
        return ""
    names = {section.name for section in pattern.design.sections}
    label = step.makes[0].label
    if plain_label(label) in names:
        return plain_label(label)
    found = _OF.search(label)
    return found[1] if found and found[1] in names else ""


def plain_label(label: str) -> str:
    """Return a label without the number that tells it from others like it: `wreath` for `wreath (2)`."""
    return re.sub(r" \(\d+\)$", "", label)


def is_section_label(label: str) -> bool:
    """Tell whether a label is the name of a section, and of nothing else that is sewn."""
    return label != labels.TOP and re.fullmatch(r"[a-z]{3,}( \(\d+\))?", label) is not None


def titled(owner: str, title: str) -> str:
    """Return a title that says to which section it belongs."""
    return f"{owner.capitalize()}: {title[0].lower()}{title[1:]}" if owner and owner not in ROOTS else title


def without_owner(label: str) -> str:
    """Return a label without its section, which the title says: `row 2` for `row 2 of wreath`."""
    return _OF.sub("", label)

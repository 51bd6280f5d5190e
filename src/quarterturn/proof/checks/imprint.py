"""Checks of the words around the pattern: who made it, which version, for whom (groups E and K)."""

from __future__ import annotations

import re
from collections.abc import Iterator

from quarterturn.design import PLACEHOLDERS, Severity, dotted
from quarterturn.proof.checks.fault import Fault, check
from quarterturn.proof.model import Pattern

SKILLS = ("beginner", "confident beginner", "intermediate", "advanced")
"""The trade's words for how much a pattern asks."""


def imprint(pattern: Pattern) -> Iterator[Fault]:
    """Ask for what a reader needs to look for corrections: maker, contact, version and date."""
    design = pattern.design
    given = {"maker": design.maker, "contact": design.contact, "version": design.version, "date": design.date}
    missing = [key for key, text in given.items() if not text.strip()]
    if missing:
        listed = _listed([f"`{key}`" for key in missing])
        sentence = f"The back cover lacks {listed}: a reader cannot ask, nor look for corrections."
        yield Fault(missing[0], sentence, f"Give {listed} at the top of the file.")


def _listed(words: list[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)


def about(pattern: Pattern) -> Iterator[Fault]:
    """Ask for a few words that say what the quilt is."""
    if not pattern.design.about.strip():
        sentence = "Nothing is said about the quilt, so the cover has only its title."
        yield Fault("about", sentence, "Write two or three sentences as `about`.")


def placeholders(pattern: Pattern) -> Iterator[Fault]:
    """Ask for the designer's own words where the words that a new file begins with still stand."""
    design = pattern.design
    given = {"maker": design.maker, "contact": design.contact, "about": design.about}
    for key, text in given.items():
        if text == PLACEHOLDERS[key]:
            sentence = f"`{key}` still says what a new file begins with, and would be printed so."
            yield Fault(key, sentence, f"Write your own `{key}` at the top of the file.")


def skill(pattern: Pattern) -> Iterator[Fault]:
    """Ask for one of the trade's words for skill."""
    word = pattern.design.house.skill
    if word not in SKILLS:
        sentence = f"`{word}` is not one of the trade's words for skill."
        yield Fault("house.skill", sentence, f"Use one of {', '.join(SKILLS)}.")


def roles(pattern: Pattern) -> Iterator[Fault]:
    """Ask that each fabric has a role in words, for readers who use other colours."""
    for fabric in pattern.design.fabrics:
        if not fabric.role.strip():
            sentence = (
                f"Fabric {fabric.letter}, {fabric.name}, has no role; a reader with other colours is lost."
            )
            key = dotted("fabrics", fabric.letter, "role")
            yield Fault(key, sentence, "Say what it is for, such as background or circles.")


def names(pattern: Pattern) -> Iterator[Fault]:
    """Ask for fabrics named by a colour word; a stock number tells nobody which is which."""
    for fabric in pattern.design.fabrics:
        if not re.search(r"[^\W\d_]{2}", fabric.name) or len(re.findall(r"\d", fabric.name)) >= 4:
            sentence = f"Fabric {fabric.letter} is called {fabric.name}, which names no colour."
            key = dotted("fabrics", fabric.letter, "name")
            yield Fault(
                key, sentence, "Name it by a colour word, and give the stock number as its role if at all."
            )


IMPRINT = (
    check("imprint-missing", Severity.CONFUSES, (105,), "Maker, contact, version and date stand.", imprint),
    check("about-missing", Severity.STYLE, (), "The cover says what the quilt is.", about),
    check("placeholder-left", Severity.CONFUSES, (70,), "No words of a new file are left.", placeholders),
    check("skill-word", Severity.STYLE, (), "The skill is one of the trade's words.", skill),
    check("role-missing", Severity.STYLE, (61,), "Each fabric has a role.", roles),
    check("name-unclear", Severity.CONFUSES, (61,), "Fabrics are named by words.", names),
)

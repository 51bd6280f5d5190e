"""Keys of the design file that the checks speak of have words in the page's catalogue, for one who works by hand."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterator
from pathlib import Path

from quarterturn.design import PLACEHOLDERS

ROOT = Path(__file__).parents[2]
CATALOGUE = json.loads((ROOT / "frontend/src/words/en.json").read_text("utf-8"))
WORDS = {**CATALOGUE["in-words"], **CATALOGUE["values"]["of"]}
KEY = re.compile(r"\b(?:making|class|money|kits|house)\.[a-z_.]*[a-z]|`[a-z_]+`|\b[a-z]+(?:_[a-z]+)+\b")


def sentences() -> Iterator[str]:
    """Yield the strings of the checks that are sentences, not keys, codes or docstrings."""
    for path in sorted((ROOT / "src/quarterturn/proof/checks").glob("*.py")):
        tree = ast.parse(path.read_text("utf-8"))
        stated = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
        said = (n.value for n in ast.walk(tree) if isinstance(n, ast.Constant) and id(n) not in stated)
        yield from (
            text for text in said if isinstance(text, str) and " " in text.strip() and "\n" not in text
        )


def test_every_key_that_a_check_speaks_of_has_words() -> None:
    keys = {found.strip("`") for sentence in sentences() for found in KEY.findall(sentence)}
    assert {"making.slack", "about", "strip_heights"} <= keys
    keys |= PLACEHOLDERS.keys()
    slugs = {key: re.sub("[^a-z]+", "-", key) for key in keys}
    assert {key for key, slug in slugs.items() if slug not in WORDS} == set()

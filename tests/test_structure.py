"""The shape of the source: small functions and modules, plain names, nothing left undone, locks that hold."""

from __future__ import annotations

import ast
import re
import tomllib
from pathlib import Path
from statistics import median, quantiles

import pytest

ROOT = Path(__file__).parent.parent
MODULES = sorted(file for top in ("src", "tests", "benchmarks") for file in (ROOT / top).rglob("*.py"))
LOCKS = ("requirements.lock", "requirements-dev.lock")

LONGEST_FUNCTION = 50
LONGEST_MODULE = 400
MEDIAN_FUNCTION = 12
NINTH_DECILE_FUNCTION = 30

# "path" or "path:function" -> why it may be longer. One that is no longer needed fails.
LONG_FOR_A_REASON: dict[str, str] = {}

VAGUE_NAMES = {"util", "utils", "helper", "helpers", "common", "misc"}
LEFT_UNDONE = re.compile(r"\b(TODO|FIXME|XXX|NotImplementedError)\b")


def path_of(module: Path) -> str:
    return module.relative_to(ROOT).as_posix()


def line_counts(module: Path) -> list[tuple[str, int]]:
    """Each function of a module with its lines, docstring and decorators included."""
    functions = (
        node
        for node in ast.walk(ast.parse(module.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    )
    return [(f"{path_of(module)}:{node.name}", function_lines(node)) for node in functions]


def function_lines(node: ast.FunctionDef | ast.AsyncFunctionDef) -> int:
    assert node.end_lineno is not None
    first = min([node.lineno, *(decorator.lineno for decorator in node.decorator_list)])
    return node.end_lineno - first + 1


def all_functions() -> list[tuple[str, int]]:
    return [function for module in MODULES for function in line_counts(module)]


def too_long() -> set[str]:
    functions = {name for name, lines in all_functions() if lines >= LONGEST_FUNCTION}
    modules = {
        path_of(module)
        for module in MODULES
        if len(module.read_text(encoding="utf-8").splitlines()) >= LONGEST_MODULE
    }
    return functions | modules


def test_functions_and_modules_are_short_but_for_named_exceptions() -> None:
    assert too_long() - LONG_FOR_A_REASON.keys() == set()


def test_every_named_exception_is_still_needed() -> None:
    assert LONG_FOR_A_REASON.keys() - too_long() == set()


def test_most_functions_are_far_shorter_than_the_limit() -> None:
    lines = [count for _, count in all_functions()]
    assert median(lines) <= MEDIAN_FUNCTION
    assert quantiles(lines, n=10)[-1] <= NINTH_DECILE_FUNCTION


def test_no_module_or_package_has_a_vague_name() -> None:
    named = {path_of(module): set(module.relative_to(ROOT).with_suffix("").parts) for module in MODULES}
    assert [path for path, parts in named.items() if parts & VAGUE_NAMES] == []


def test_every_module_says_what_it_is_for() -> None:
    trees = {path_of(module): ast.parse(module.read_text(encoding="utf-8")) for module in MODULES}
    assert [path for path, tree in trees.items() if not ast.get_docstring(tree)] == []


def test_nothing_in_the_source_is_left_undone() -> None:
    source = (module for module in MODULES if module.is_relative_to(ROOT / "src"))
    undone = [path_of(module) for module in source if LEFT_UNDONE.search(module.read_text(encoding="utf-8"))]
    assert undone == []


@pytest.mark.parametrize("lock", LOCKS)
def test_a_lock_pins_each_package_by_hash_and_names_no_host(lock: str) -> None:
    text = (ROOT / lock).read_text(encoding="utf-8")
    entries = [entry for entry in re.split(r"\n(?=[a-z])", text) if not entry.startswith("#")]
    assert entries
    assert [entry for entry in entries if "==" not in entry or "--hash=sha256:" not in entry] == []
    assert "://" not in text
    assert "index-url" not in text


@pytest.mark.parametrize("lock", LOCKS)
def test_a_lock_holds_every_package_that_the_project_asks_for(lock: str) -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    groups = ["build"] if lock == "requirements.lock" else ["build", "dev"]
    asked = project["project"]["dependencies"] + [
        each for group in groups for each in project["dependency-groups"][group]
    ]
    locked = set(re.findall(r"^([a-z0-9-]+)==", (ROOT / lock).read_text(encoding="utf-8"), re.MULTILINE))
    assert {re.split(r"[<>=~! ]", each)[0] for each in asked} - locked == set()

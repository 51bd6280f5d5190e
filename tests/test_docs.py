"""The documents say what the program does: every command, option, exit code, key, package and file is there."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import click
import pytest

from quarterturn.cli.door import quarterturn
from quarterturn.cli.ending import Ending
from quarterturn.cli.show import STAGES
from quarterturn.design import schema
from quarterturn.publish.release import PARTS

ROOT = Path(__file__).parent.parent
COMMANDS = (ROOT / "docs" / "commands.md").read_text(encoding="utf-8")
FORMAT = (ROOT / "docs" / "file-format.md").read_text(encoding="utf-8")
README = (ROOT / "README.md").read_text(encoding="utf-8")
ARCHITECTURE = (ROOT / "ARCHITECTURE.md").read_text(encoding="utf-8")
PAGES = sorted(
    page for page in (*ROOT.glob("*.md"), *(ROOT / "docs").rglob("*.md")) if page.name != "CHANGELOG.md"
)


def section(command: str) -> str:
    """Return what docs/commands.md says under the name of a command."""
    found = re.search(rf"^## {command}\n(.*?)(?=^## |\Z)", COMMANDS, re.MULTILINE | re.DOTALL)
    assert found, f"docs/commands.md has no section {command}"
    return found[1]


def options(command: click.Command) -> list[str]:
    """Return every spelling of every option of a command."""
    return [name for param in command.params if isinstance(param, click.Option) for name in param.opts]


@pytest.mark.parametrize("name", quarterturn.commands)
def test_every_command_is_documented_with_every_option_and_no_other(name: str) -> None:
    said = set(
        re.findall(
            r"(?<![\w-])--?[a-z][a-z-]*", "".join(re.findall(r"^\| `-.*$", section(name), re.MULTILINE))
        )
    )
    assert {word for word in said if word.startswith("-")} == set(options(quarterturn.commands[name]))
    assert f"| [`{name}`](#{name}) |" in COMMANDS


def test_the_documented_commands_are_the_commands() -> None:
    assert re.findall(r"^## ([a-z]+)$", COMMANDS, re.MULTILINE) == list(quarterturn.commands)


def test_the_exit_codes_are_those_of_the_program() -> None:
    told = re.findall(r"^\| (\d+) \| (.+) \|$", COMMANDS, re.MULTILINE)
    assert told == [(str(ending.value), ending.meaning) for ending in Ending]


def test_every_stage_and_every_part_of_a_publish_is_documented() -> None:
    assert re.findall(r"^\| `([a-z]+)` \|", section("show"), re.MULTILINE) == list(STAGES)
    assert re.findall(r"^\| `([a-z]+)` \| `", section("publish"), re.MULTILINE) == [
        part.name for part in PARTS
    ]


def keys(node: dict[str, Any]) -> Iterator[str]:
    """Return the names of all keys that a schema defines."""
    for name, inner in node.get("properties", {}).items():
        yield name
        yield from keys(inner)
    for inner in node.get("$defs", {}).values():
        yield from keys(inner)


def test_every_key_of_the_file_is_documented() -> None:
    documented = set(re.findall(r"[a-z_]+", " ".join(re.findall(r"`([^`\n]+)`", FORMAT))))
    assert set(keys(schema())) - documented == set()


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_every_command_line_on_a_page_can_be_typed(page: Path) -> None:
    lines = re.findall(r"^(?:\./)?quarterturn ([a-z].*)$", page.read_text(encoding="utf-8"), re.MULTILINE)
    for line in lines:
        name, *rest = re.split(r"\s+(?:>|#)", line)[0].split()
        assert name in quarterturn.commands, line
        known = options(quarterturn.commands[name])
        assert [word for word in rest if word.startswith("-") and word not in known] == [], line


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_every_link_on_a_page_leads_somewhere(page: Path) -> None:
    links = re.findall(r"\]\(([^)#]+)(?:#[^)]*)?\)", page.read_text(encoding="utf-8"))
    assert [link for link in links if not (page.parent / link).exists()] == []


def test_every_package_stands_in_the_architecture_and_in_the_order_of_imports() -> None:
    source = ROOT / "src" / "quarterturn"
    packages = {path.name for path in source.iterdir() if (path / "__init__.py").exists()} | {"pipeline"}
    told = re.findall(r"^\| `([a-z]+)` \|", ARCHITECTURE, re.MULTILINE)
    assert set(told) == packages
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    [layers] = [contract["layers"] for contract in project["tool"]["importlinter"]["contracts"]]
    order = re.search(r"\(`(cli → [^`]+)`\)", ARCHITECTURE)
    assert order
    assert re.split(r"\s*→\s*", order[1]) == layers


def test_the_file_and_folder_names_in_the_architecture_exist() -> None:
    named = re.findall(r"`((?:[a-z_]+/)+(?:[a-z_]+\.[a-z]+)?)`", ARCHITECTURE)
    assert named
    tops = (ROOT, ROOT / "src" / "quarterturn", *(ROOT / "src" / "quarterturn").iterdir())
    assert [name for name in named if not any((top / name).exists() for top in tops)] == []


def test_the_readme_shows_pictures_that_are_small() -> None:
    pictures = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README)
    assert pictures
    assert [picture for picture in pictures if (ROOT / picture).stat().st_size > 200_000] == []


def test_the_readme_leads_to_every_document() -> None:
    documents = {path.relative_to(ROOT).as_posix() for path in PAGES} - {"README.md"}
    assert {document for document in documents if f"({document})" not in README} == set()

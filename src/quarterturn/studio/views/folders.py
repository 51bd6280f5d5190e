"""A folder of designs, to be gone through."""

from __future__ import annotations

import os

from quarterturn.studio.folders import Folder
from quarterturn.studio.views.model import View


class FolderView(View):
    """What lies in a folder. `above` is empty at the root of the disk; `wanted` is what was asked for and is not there.

    Paths of folders end in the sign that parts folders on this machine.
    """

    path: str
    above: str
    folders: tuple[str, ...]
    designs: tuple[str, ...]
    wanted: str


def folder_view(folder: Folder) -> FolderView:
    """Return a folder as the page shows it."""
    path, above = folder.path, folder.path.parent
    return FolderView(
        path=os.path.join(path, ""),  # noqa: PTH118 - a Path has no end that says that it is a folder
        above=os.path.join(above, "") if above != path else "",  # noqa: PTH118
        folders=folder.folders,
        designs=folder.designs,
        wanted=str(folder.wanted or ""),
    )

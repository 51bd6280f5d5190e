"""The OpenAPI document of the studio, from which the page has its types: `python -m quarterturn.studio.openapi`."""

from __future__ import annotations

import json
import sys
import tempfile
from pathlib import Path


def document() -> str:
    """Return the document as text, its keys in order; the same for the same program."""
    from quarterturn.studio.app import api
    from quarterturn.studio.studio import open_studio

    with tempfile.TemporaryDirectory() as folder:
        studio = open_studio(Path(folder))
        try:
            told = api(studio, Path(folder)).openapi()
        finally:
            studio.stop()
    return json.dumps(told, indent=1, sort_keys=True, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    sys.stdout.write(document())

"""The command line: the door through which files come in and go out.

In:  arguments, a design file.
Out: text, JSON, a folder of files, and an exit code of `Ending`.
Promise: a mistake gets a sentence and never a traceback; a file or folder is written whole or not at all.
"""

from quarterturn.cli.door import main
from quarterturn.cli.ending import Ending, RefusedError

__all__ = ["Ending", "RefusedError", "main"]

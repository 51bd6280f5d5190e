"""Write files and folders whole or not at all: what every door that lets files out shares.

In:  paths and bytes.
Out: files on disk.
Promise: what was there stays as it was until what is new is there in full; nothing that no publish made is replaced.
"""

from quarterturn.files.folders import CONTENTS, ForeignFolderError, guard, guard_others
from quarterturn.files.writing import PART, write_file, write_folder

__all__ = ["CONTENTS", "PART", "ForeignFolderError", "guard", "guard_others", "write_file", "write_folder"]

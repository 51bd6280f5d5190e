"""What a request may be refused for: each a sentence and a remedy, and the status by which the page knows the kind."""

from __future__ import annotations

from pathlib import Path

from quarterturn.files import PART


class Refusal(Exception):  # noqa: N818 - it is no error of the program
    """A request that cannot be granted."""

    status = 422

    def __init__(self, sentence: str, remedy: str) -> None:
        super().__init__(f"{sentence} {remedy}")
        self.sentence, self.remedy = sentence, remedy


class NotHereError(Refusal):
    """Something is asked for that is not there."""

    status = 404


class StaleError(Refusal):
    """A change is asked of a text that has been changed since."""

    status = 409

    def __init__(self, revision: int) -> None:
        super().__init__("The design has been changed since.", "Look at it as it is now, and do it again.")
        self.revision = revision


class OutsideError(Refusal):
    """The file holds another text, written by someone else."""

    status = 409

    def __init__(self, name: str) -> None:
        super().__init__(
            f"{name} has been changed by another program.",
            "Say which of the two goes on; undo brings the other back.",
        )


class TakenError(Refusal):
    """A file is there that would be written over."""

    status = 409


class BusyError(Refusal):
    """The same work is being done already."""

    status = 409


def reason(error: OSError) -> str:
    """Return what the system says of a file, as a sentence; of one that is being written, it says it of the folder."""
    said = error.strerror or str(error)
    named = str(error.filename or "")
    if named.endswith(PART):
        named = str(Path(named).parent)
        if isinstance(error, FileNotFoundError):
            return f"There is no folder {named}."
    return f"{named}: {said.lower()}." if named else f"{said}."

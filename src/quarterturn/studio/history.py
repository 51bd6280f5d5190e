"""What was done to a text, in the order in which it was done: undo and redo without limit.

A step keeps only what it took out and what it put in, so that five hundred edits of a large quilt weigh as much as
what was edited, and each can be gone back over.
"""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Splice:
    """A change of a text: at a place, in characters, `cut` goes out and `put` comes in."""

    at: int
    cut: str
    put: str

    def done(self, text: str) -> str:
        """Return the text after the change. Raises ValueError for a text that it was not made from."""
        end = self.at + len(self.cut)
        if self.at < 0 or end > len(text) or text[self.at : end] != self.cut:
            raise ValueError("the text is not the one that was changed")
        return text[: self.at] + self.put + text[end:]

    @property
    def inverse(self) -> Splice:
        """Return the change back."""
        return Splice(self.at, self.put, self.cut)


def splice(before: str, after: str) -> Splice:
    """Return the shortest single change from one text to another."""
    start = _agree(before, after)
    most = min(len(before), len(after)) - start
    end = _agree(before[len(before) - most :][::-1], after[len(after) - most :][::-1])
    return Splice(start, before[start : len(before) - end], after[start : len(after) - end])


def _agree(one: str, other: str) -> int:
    """Return how many characters two texts begin with alike, by halving: comparing runs is quick, looping is not."""
    low, high = 0, min(len(one), len(other))
    while low < high:
        middle = (low + high + 1) // 2
        if one[low:middle] == other[low:middle]:
            low = middle
        else:
            high = middle - 1
    return low


@dataclass(frozen=True, slots=True)
class Step:
    """One change with the name of the act that made it."""

    act: str
    splice: Splice


@dataclass(slots=True)
class History:
    """A text and what was done to it. Not safe to share between threads; its paper holds the lock."""

    text: str
    done: list[Step] = field(default_factory=list)
    undone: list[Step] = field(default_factory=list)
    revision: int = 0
    """Grows by one with every change, undoing included."""

    def do(self, step: Step) -> None:
        """Do a step; what was undone before cannot be redone after it."""
        self.text = step.splice.done(self.text)
        self.done.append(step)
        self.undone.clear()
        self.revision += 1

    def undo(self) -> str:
        """Undo the last step and return the name of its act. Raises IndexError where nothing was done."""
        step = self.done[-1]
        self.text = step.splice.inverse.done(self.text)
        self.undone.append(self.done.pop())
        self.revision += 1
        return step.act

    def redo(self) -> str:
        """Redo what was undone last and return the name of its act. Raises IndexError where nothing was undone."""
        step = self.undone[-1]
        self.text = step.splice.done(self.text)
        self.done.append(self.undone.pop())
        self.revision += 1
        return step.act

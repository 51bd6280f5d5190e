"""The printed booklet.

In:  a `Pattern`, the paper, and what the rehearsal said, if it was run.
Out: a tagged PDF (PDF/UA-1) whose every number is read off the steps, the bill and the materials.
Promise: each step is told exactly once; figures are numbered in order; equal patterns give equal bytes.
"""

from __future__ import annotations

from collections.abc import Sequence

from quarterturn.design import Paper
from quarterturn.proof import Pattern
from quarterturn.publish.booklet.assemble import assemble
from quarterturn.publish.booklet.model import Document
from quarterturn.publish.booklet.printing import print_booklet

__all__ = ["Document", "assemble", "booklet", "print_booklet"]


def booklet(
    pattern: Pattern,
    paper: Paper | None = None,
    rehearsed: Sequence[str] = (),
    draft: str = "",
    others: Sequence[Pattern] = (),
    cut_away: Sequence[str] = (),
) -> bytes:
    """Return the booklet of a pattern on a paper (the design's own, if none is named).

    `rehearsed` holds what the rehearsal found, a sentence each; without it nothing is claimed. `draft` is what
    the cover and the foot of each page say where the booklet is not to be sewn from. `others` are the pattern in
    its other sizes, each of which gets a column. `cut_away` says which scraps fall off behind shapes.
    Raises UnprintableTextError for text that the fonts lack.
    """
    return print_booklet(
        assemble(pattern, paper or pattern.design.house.paper, rehearsed, draft, others, cut_away)
    )

"""The sentences of sewing a quarter circle along its curve."""

from __future__ import annotations

from quarterturn.blocks import pieced_pair
from quarterturn.pieces import pieced_masters
from quarterturn.proof import Pattern
from quarterturn.publish.wording.names import length, listed, plural
from quarterturn.publish.wording.places import measure


def instead(pattern: Pattern) -> tuple[str, ...]:
    """Return which units can be pieced, and what is then left out."""
    pieced = {master.recipe for master in pieced_masters(pattern.design, pattern.blocks, pattern.bill)}
    codes = [each.code for each in pattern.bill.masters if each.recipe in pieced]
    whole = len(codes) == len(pattern.bill.masters)
    units = f"{plural(len(codes), 'unit')} {listed(codes)}"
    what = "the same unit" if whole else f"{units} as well"
    rest = (
        ""
        if whole
        else " What is told of the other units, and of shapes that they share, is done as it stands."
    )
    return (
        f"Who would rather not fuse can piece {what}: a quarter disc is sewn into a surround along the curve. Of such "
        "a unit nothing is fused, edge-stitched, cut apart or trimmed, and none is left over.",
        f"Leave out the lines of {listed([f'colourway {code}' for code in codes])} in the chapters that prepare, fuse, "
        f"stitch and cut apart, and buy less web and no thread for them.{rest} The templates stand behind those of the "
        "shapes; everything from the layout on stays as it is.",
    )


def sewing(pattern: Pattern) -> tuple[str, ...]:
    """Return how the two pieces are sewn, with the radii of each recipe."""
    design = pattern.design
    seam = length(design, design.making.seam)
    return (
        *_radii(pattern),
        "Fold both curves in half and crease their middles; the ticks of the templates lie on one another.",
        "Lay the quarter disc on the surround, right sides together, and pin the middle, then both ends, then between. "
        "The surround lies on top: its edge has to be eased round.",
        f"Sew slowly with a {seam} seam, with the needle down whenever you turn. Do not stretch the bias edges.",
        "Press the seam to the surround. Clip it only if it does not lie flat, and never into the stitches.",
        "The unit has the size that the steps state for a trimmed unit; square it up if it is a hair larger.",
    )


def _radii(pattern: Pattern) -> tuple[str, ...]:
    design, said = pattern.design, []
    names = dict.fromkeys(m.recipe for m in pieced_masters(design, pattern.blocks, pattern.bill))
    for name in names:
        master = pattern.blocks.master(name)
        pair = pieced_pair(master)
        assert pair, "only what can be sewn is offered"
        radii = (pair.seam_arc.radius, pair.disc_radius, pair.surround_radius)
        sewn, disc, surround = (measure(design, radius) for radius in radii)
        said.append(
            f"The curve of {name} has a radius of {sewn} as sewn. The disc is cut {disc}, the surround {surround}: one "
            f"allowance more, and one less."
        )
    return tuple(said)

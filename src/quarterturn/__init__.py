"""Quarterturn: the quilt is made on paper before it is made in cloth.

The stages, in the order in which a design travels through them:

measure    lengths: exact inches, the trade's rounding rules, reading and printing
geometry   lines, arcs and cubics; paths and regions; the exact straight cut
design     text -> Design: the file the designer keeps
blocks     Design -> Blocks: how each master square becomes units
setting    Blocks -> Setting: the quilt top, and what meets at each seam
pieces     Setting -> Bill: every piece that must exist before sewing
materials  Bill -> Materials: how to get the pieces out of cloth and web
steps      all before -> Steps: the ordered operations from bolt to bound quilt
proof      all -> findings: the checks, and the rehearsal that carries the steps out
publish    all -> files: drawings, booklet, templates, lists

`pipeline` runs them in this order; `cli` is the door.
"""

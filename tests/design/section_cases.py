"""A file with a section of every kind, and ways to spoil it: what is wrong, the change, what the reader must find."""

from __future__ import annotations

SECTIONS = '''\
format = 1
title = "Walled Garden"
units = "inch"

[fabrics.A]
name = "oyster"
colour = "#efe6d8"

[fabrics.B]
name = "ink"
colour = "#22304a"

[recipes.round]
kind = "circle cut both ways"
finished = '3"'
shape = { flow = true }

[colourways.a]
recipe = "round"
ground = "A"
shape = "B"

[sections.wreath]
kind = "straight"
map = """
a2 a3
a1 A
"""

[[sections.wreath.borders]]
fabric = "B"
width = '1"'
corners = "mitred"

[sections.field]
kind = "on point"
map = """
wreath0 B
A wreath2
"""
between = "wreath1"
triangles = "A"
corners = "B"
fit = "oversized"
float = '1/2"'
sashing = { fabric = "B", width = '1/2"', cornerstone = "A" }

[[sections.field.borders]]
kind = "coping"
fabric = "A"
to = ['30"', '30"']

[sections.plaque]
kind = "panel"
fabric = "A"
width = '12"'
height = '30"'
motifs = [
  { recipe = "round", fabric = "B", at = ['6"', '9"'], turn = 45 },
  { recipe = "round", fabric = "B", at = ['6"', '21"'] },
]

[sections.hedge]
kind = "straight"
map = "a0"
down = 10
sashing = { fabric = "A", width = '1"' }

[sections.verge]
kind = "rows"
parts = ["a0", { fabric = "B", width = '1 1/2"' }, "a2"]

[setting]
kind = "columns"
parts = [
  "plaque",
  { fabric = "B", width = '3"' },
  "field",
]

[[borders]]
kind = "pieced"
sides = "hedge"
ends = "verge1"
corners = "a0"

[[borders]]
fabric = "B"
width = '2"'
corners = "cornerstones"
cornerstone = "A"

[binding]
fabric = "B"

[backing]
fabric = "A"
'''
"""It reads without a finding; whether its edges fit is no matter of the reader."""

_MOTIF = '  { recipe = "round", fabric = "B", at = [\'6"\', \'21"\'] },\n]\n'


def _motif_of(recipe: str) -> tuple[str, ...]:
    """Return the change of a motif to one of another recipe, which is added, and what the reader finds."""
    new = f"{_MOTIF.replace('round', 'pond')}\n[recipes.pond]\n{recipe}\n"
    return _MOTIF, new, "motif-unclear sections.plaque.motifs.1.recipe"


_DISC = '\n[[recipes.pond.shapes]]\nname = "disc"\nwidth = \'3"\'\n'
_POND = f'kind = "shapes cut"\nstart = \'8"\'\ncuts = "down"\n{_DISC}'

SECTION_CASES: tuple[tuple[str, ...], ...] = (
    ("a motif of two shapes", *_motif_of(f"{_POND}at = ['-2\"', '0\"']\n{_DISC}at = ['1\"', '0\"']")),
    ("a motif with a hole", *_motif_of(f"{_POND}outline = \"ring\"\ninner = '1\"'")),
    ("a motif of halves", *_motif_of(f"kind = \"halves rejoined\"\nof = \"half\"\n[recipes.half]\n"
                                     f"{_POND.replace('pond', 'half')}")),
    ("an unknown section", "wreath0 B", "wreeth0 B", "unknown-section sections.field.map.0"),
    ("an unknown section between", '"wreath1"', '"wraeth1"', "unknown-section sections.field.between"),
    ("an unknown section in a line", '"plaque",', '"plague",', "unknown-section setting.parts.0"),
    ("an unknown section of a border", 'sides = "hedge"', 'sides = "hegde"', "unknown-section borders.0.sides"),
    ("a section turned five times", "A wreath2", "A wreath5", "unknown-turn sections.field.map.1"),
    ("an unknown fabric in a map", "a1 A\n", "a1 Q\n", "unknown-fabric sections.wreath.map.1"),
    ("a section of a short name", "[sections.hedge]", "[sections.hd]", "bad-section-name sections.hd",
     "unknown-section borders.0.sides"),
    ("a section called as the whole is", "[setting]\n", '[sections.centre]\nkind = "rows"\nparts = ["a0"]\n[setting]\n',
     "bad-section-name sections.centre"),
    ("a section that holds itself", "a1 A\n", "a1 wreath0\n", "section-in-itself sections.wreath"),
    ("sections that hold one another", "a1 A\n", "a1 field0\n", "section-in-itself sections.wreath",
     "section-in-itself sections.field"),
    ("a section that is not used", '  "plaque",\n', "", "section-unused sections.plaque"),
    ("a section laid mirrored", 'map = "a0"\n', 'map = "wreath0"\nsymmetry = "mirror"\n',
     "section-mirrored sections.hedge.map.0"),
    ("a panel with a map", "height = '30\"'", "height = '30\"'\nmap = \"a0\"", "unwanted-key sections.plaque.map"),
    ("a line that is laid across", 'kind = "rows"', 'kind = "rows"\nacross = 2', "unwanted-key sections.verge.across"),
    ("a plain border made of sections", "width = '2\"'\n", "sides = \"hedge\"\nwidth = '2\"'\n",
     "unwanted-key borders.1.sides"),
    ("cornerstones without a fabric", 'cornerstone = "A"\n\n[binding]', "[binding]",
     "missing-key borders.1.cornerstone"),
    ("a fabric without cornerstones", 'corners = "cornerstones"\n', "", "unwanted-key borders.1.cornerstone"),
    ("corners of no kind", '"mitred"', '"mitered"', "unknown-word sections.wreath.borders.0.corners"),
    ("a setting of no kind", 'kind = "columns"', 'kind = "hexagons"', "unknown-word setting.kind"),
    ("nothing between", 'between = "wreath1"\n', "", "missing-key sections.field.between"),
    ("too much between", '"wreath1"', '"wreath1 A"', "ragged-map sections.field.between"),
    ("triangles of nothing", 'triangles = "A"\n', "", "missing-key sections.field.triangles"),
    ("oversized by nothing", "float = '1/2\"'\n", "", "missing-key sections.field.float"),
    ("a float and no oversize", 'fit = "oversized"', 'fit = "exact"', "unwanted-key sections.field.float"),
    ("sashing without a width", "sashing = { fabric = \"A\", width = '1\"' }", 'sashing = { fabric = "A" }',
     "missing-key sections.hedge.sashing.width"),
    ("sashing of an unknown fabric", "sashing = { fabric = \"A\",", 'sashing = { fabric = "Q",',
     "unknown-fabric sections.hedge.sashing.fabric"),
    ("sashing as wide as a street", "{ fabric = \"A\", width = '1\"' }", "{ fabric = \"A\", width = '9 yd' }",
     "size-out-of-range sections.hedge.sashing.width"),
    ("a line of nothing", "parts = [\"a0\", { fabric = \"B\", width = '1 1/2\"' }, \"a2\"]", "parts = []",
     "missing-key sections.verge.parts"),
    ("a strip without a width", "{ fabric = \"B\", width = '3\"' }", '{ fabric = "B" }',
     "missing-key setting.parts.1.width"),
    ("a strip that is a word", "{ fabric = \"B\", width = '3\"' }", '"B"', "bad-cell setting.parts.1"),
    ("a strip that is a number", "{ fabric = \"B\", width = '3\"' }", "3", "wrong-type setting.parts.1"),
    ("a strip with a key too many", "width = '3\"' }", "width = '3\"', height = 2 }",
     "unknown-key setting.parts.1.height"),
    ("a line that is one word", "parts = [\"a0\", { fabric = \"B\", width = '1 1/2\"' }, \"a2\"]", 'parts = "a0"',
     "wrong-type sections.verge.parts"),
    ("a motif that is a word", "  { recipe = \"round\", fabric = \"B\", at = ['6\"', '21\"'] },\n", '  "round",\n',
     "wrong-type sections.plaque.motifs.1"),
    ("corners in a list", 'corners = "a0"', 'corners = ["a0"]', "wrong-type borders.0.corners"),
    ("a panel without a height", "height = '30\"'\n", "", "missing-key sections.plaque.height"),
    ("a motif of an unknown recipe", 'recipe = "round", fabric = "B", at = [\'6"\', \'9"\']',
     'recipe = "heart", fabric = "B", at = [\'6"\', \'9"\']', "unknown-recipe sections.plaque.motifs.0.recipe"),
    ("a motif at half a place", "at = ['6\"', '9\"']", "at = ['6\"']", "wrong-type sections.plaque.motifs.0.at"),
    ("a motif at no place", "at = ['6\"', '9\"'], ", "", "missing-key sections.plaque.motifs.0.at"),
    ("a motif turned round and round", "turn = 45", "turn = 720", "count-out-of-range sections.plaque.motifs.0.turn"),
    ("a border pieced of a unit", 'ends = "verge1"', 'ends = "a1"', "bad-cell borders.0.ends"),
    ("a pieced border without sides", 'sides = "hedge"\n', "", "missing-key borders.0.sides"),
    ("coping to half a size", "to = ['30\"', '30\"']", "to = ['30\"']", "wrong-type sections.field.borders.0.to"),
    ("coping to true", "to = ['30\"', '30\"']", "to = ['30\"', true]", "wrong-type sections.field.borders.0.to"),
    ("coping to a word", "to = ['30\"', '30\"']", "to = ['30\"', 'far']", "bad-length sections.field.borders.0.to.1"),
    ("coping to a number alone", "to = ['30\"', '30\"']", "to = 30", "wrong-type sections.field.borders.0.to"),
    ("coping to nothing", "to = ['30\"', '30\"']\n", "", "missing-key sections.field.borders.0.to"),
)  # fmt: skip


def chain(length: int, last: str) -> str:
    """Return so many sections, each of which holds the next ones twice, and the last of which holds a word twice."""
    names = [f"{'abcdefghijkl'[n] * 3}" for n in range(length)]
    held = [*names[1:], last]
    return "\n".join(
        f'[sections.{name}]\nkind = "rows"\nparts = ["{inner}", "{inner}"]'
        for name, inner in zip(names, held, strict=True)
    )


def spoilt(case: tuple[str, ...]) -> str:
    """Return the file as a case spoils it."""
    _, old, new, *_ = case
    assert SECTIONS.count(old) == 1, old
    return SECTIONS.replace(old, new)


def spoilt_sections() -> list[str]:
    """Return every spoilt file, and one whose sections are nested too deeply."""
    deep = SECTIONS.replace("[setting]\n", f"{chain(9, 'a0')}\n[setting]\n").replace(
        '"plaque",', '"plaque", "aaa",'
    )
    return [*(spoilt(case) for case in SECTION_CASES), deep]

"""One good file, and many ways to spoil it. Each case changes one place and says what the reader must find."""

from __future__ import annotations

from dataclasses import replace

from tests.design.cloth_cases import CLOTH_CASES
from tests.design.outline_cases import OUTLINE_CASES, QUARTER_CASES, own_cases
from tests.design.recipe_cases import RECIPE_CASES, RIPPLES
from tests.design.spoiling import GOOD, Broken, broken

__all__ = ["BROKEN", "GOOD", "Broken"]

WIDE_LINE = " ".join(["a0"] * 201)
BORDER = '[[borders]]\nfabric = "B"\nwidth = \'2"\'\n'

_CIRCLE = """\
kind = "circle cut both ways"
finished = '4 1/4"'
trim = '0"'
shape = { diameter = '7"' }
"""

BROKEN: tuple[Broken, ...] = (
    # The file as a whole
    broken("no format", "format = 1\n", "", "format-missing format", line=""),
    broken("a format of the future", "format = 1", "format = 2", "format-newer format"),
    broken("a format that never was", "format = 1", "format = 0", "format-unknown format"),
    broken("a format in quotes", "format = 1", 'format = "1"', "wrong-type format"),
    broken("a format that is true", "format = 1", "format = true", "wrong-type format"),
    broken("no equals sign", 'version = "1.0"', "version 1.0", "bad-syntax "),
    broken("an inch mark in double quotes", "'42\"'", '"42""', "bad-syntax "),
    broken("text without quotes", 'title = "Small Harbour"', "title = Small Harbour", "bad-syntax "),
    broken("quotes left open", '"circles"', '"circles', "bad-syntax "),
    broken("a bracket left open", "[binding]", "[binding", "bad-syntax "),
    broken("lines of text left open", 'a1 a0 a1\n"""', "a1 a0 a1", "bad-syntax ", line="map ="),
    broken("a date that never was", 'version = "1.0"', "date = 2026-13-45", "bad-syntax "),
    broken("a key twice", 'units = "inch"', 'title = "Again"', "key-twice "),
    broken("a fabric twice", "[fabrics.B]", "[fabrics.A]", "key-twice "),
    broken("a line without end", '"1.0"', '"' + "1" * 5000 + '"', "line-too-long "),
    broken("tables within tables", '"1.0"', "[" * 20 + "]" * 20, "too-nested ", line=""),
    # Strips that are decided on
    broken(
        "strips without a height",
        "[fabrics.B]",
        "[[fabrics.A.strips]]\ncount = 4\n\n[fabrics.B]",
        "missing-key fabrics.A.strips.0.height",
        line="[[fabrics.A.strips]]",
    ),
    broken(
        "strips for nothing",
        "[fabrics.B]",
        "[[fabrics.A.strips]]\nheight = '4\"'\n\n[fabrics.B]",
        "strips-unclear fabrics.A.strips.0",
        line="[[fabrics.A.strips]]",
    ),
    broken(
        "no strips at all",
        "[fabrics.B]",
        "[[fabrics.A.strips]]\nheight = '4\"'\ncount = 0\n\n[fabrics.B]",
        "count-out-of-range fabrics.A.strips.0.count",
        line="count = 0",
    ),
    broken(
        "a strip of no height",
        "width = '42\"'",
        "strip_heights = ['4\"', '0\"']",
        "size-out-of-range fabrics.A.strip_heights.1",
    ),
    broken(
        "more layers than a blade cuts",
        "ring_in =",
        "layers = 9\nring_in =",
        "count-out-of-range making.layers",
        line="layers = 9",
    ),
    broken(
        "joins of no kind",
        "ring_in =",
        'joins = "mitred"\nring_in =',
        "unknown-word making.joins",
        line="joins =",
    ),
    # Keys
    broken("an unknown key", "version =", "edition =", "unknown-key edition"),
    broken(
        "a key misspelt",
        'colour = "#efe6d8"',
        'color = "#efe6d8"',
        "missing-key fabrics.A.colour",
        "unknown-key fabrics.A.color",
        line="[fabrics.A]",
    ),
    broken("an unknown table", "[house]", "[home]", "unknown-key home"),
    broken(
        "an unknown key in a shape",
        "diameter =",
        "breadth =",
        "shape-unclear recipes.round.shape",
        "unknown-key recipes.round.shape.breadth",
    ),
    broken("an unknown key in the stitch", 'kind = "zigzag"', "pitch = 3", "unknown-key making.stitch.pitch"),
    broken("an unknown key in a border", "first =", "second =", "unknown-key borders.0.second"),
    broken("no title", 'title = "Small Harbour"\n', "", "missing-key title", line=""),
    broken("no units", 'units = "inch"\n', "", "missing-key units", line=""),
    broken("no name", 'name = "ink"\n', "", "missing-key fabrics.B.name", line="[fabrics.B]"),
    broken("no binding", '[binding]\nfabric = "B"\n', "", "missing-key binding", line=""),
    broken("a backing of nothing", 'fabric = "A"\n', "", "missing-key backing.fabric", line="[backing]"),
    broken(
        "no kind of recipe",
        'kind = "circle cut both ways"\n',
        "",
        "missing-key recipes.round.kind",
        line="[recipes.round]",
    ),
    broken(
        "no shape",
        "shape = { diameter = '7\"' }\n",
        "",
        "missing-key recipes.round.shape",
        line="[recipes.round]",
    ),
    broken("no ground", 'ground = "A"\n', "", "missing-key colourways.a.ground", line="[colourways.a]"),
    broken("no map", 'map = """\na2 a3 a2\na1 a0 a1\n"""\n', "", "missing-key setting.map", line="[setting]"),
    broken("no kind of setting", 'kind = "straight"\n', "", "missing-key setting.kind", line="[setting]"),
    broken(
        "a border without width", "width = '2\"'\n", "", "missing-key borders.0.width", line="[[borders]]"
    ),
    # Types
    broken("a number for a title", '"Small Harbour"', "7", "wrong-type title"),
    broken("a bare version", '"1.0"', "1.0", "wrong-type version"),
    broken("a list for a length", "'4 1/4\"'", "[4, 1]", "wrong-type recipes.round.finished"),
    broken("true for a length", "'4 1/4\"'", "true", "wrong-type recipes.round.finished"),
    broken("a date for a length", "'4 1/4\"'", "2026-01-01", "wrong-type recipes.round.finished"),
    broken("a length without end", "'4 1/4\"'", "inf", "wrong-type recipes.round.finished"),
    broken("text for a count", "across = 2", 'across = "2"', "wrong-type setting.across"),
    broken("a decimal for a count", "across = 2", "across = 2.5", "wrong-type setting.across"),
    broken("text for a shape", "{ diameter = '7\"' }", "'7\"'", "wrong-type recipes.round.shape"),
    broken("flow that is false", "diameter = '7\"'", "flow = false", "wrong-type recipes.round.shape.flow"),
    broken("one border, not a list", "[[borders]]", "[borders]", "wrong-type borders"),
    broken("a list for the house", '[house]\npaper = "letter"', "[[house]]", "wrong-type house"),
    broken("text for yes or no", 'paper = "letter"', 'sixteenths = "yes"', "wrong-type house.sixteenths"),
    broken("a price in words", 'role = "circles"', 'price = "12.50"', "wrong-type fabrics.B.price"),
    # Words to choose from
    broken("units of long ago", 'units = "inch"', 'units = "inches"', "unknown-word units"),
    broken("a curve that is neither", '"as drawn"', '"as sewn"', "unknown-word recipes.round.curve"),
    broken("an unknown stitch", '"zigzag"', '"zig-zag"', "unknown-word making.stitch.kind"),
    broken("an unknown paper", '"letter"', '"a5"', "unknown-word house.paper"),
    broken("an unknown setting", '"straight"', '"twisted"', "unknown-word setting.kind"),
    broken("an unknown recipe kind", '"circle cut both ways"', '"circle"', "unknown-word recipes.round.kind"),
    broken("borders that start nowhere", '"sides"', '"top"', "unknown-word borders.0.first"),
    # Lengths
    broken("words for a length", "'4 1/4\"'", "'four'", "bad-length recipes.round.finished"),
    broken("half a fraction", "'4 1/4\"'", "'4 1/\"'", "bad-length recipes.round.finished"),
    broken("a fraction of nothing", "'4 1/4\"'", "'4 1/0\"'", "bad-length recipes.round.finished"),
    broken("an unknown unit", "'4 1/4\"'", "'4 ells'", "bad-length recipes.round.finished"),
    broken("no length at all", "'4 1/4\"'", "''", "bad-length recipes.round.finished"),
    broken("two lengths", "'4 1/4\"'", "'4\" 5\"'", "bad-length recipes.round.finished"),
    broken("longer than any cloth", "'4 1/4\"'", "1e9", "bad-length recipes.round.finished"),
    broken("a negative unit", "'4 1/4\"'", "'-4 1/4\"'", "size-out-of-range recipes.round.finished"),
    broken("a unit of nothing", "'4 1/4\"'", "0", "size-out-of-range recipes.round.finished"),
    broken("a unit as large as a room", "'4 1/4\"'", "'9 yd'", "size-out-of-range recipes.round.finished"),
    broken("a border of nothing", "width = '2\"'", "width = 0", "size-out-of-range borders.0.width"),
    broken("a negative trim", "'0\"'", "-1", "size-out-of-range recipes.round.trim"),
    broken("no seam", "ring_in = '1/4\"'", "seam = 0", "size-out-of-range making.seam"),
    broken("cloth as narrow as ribbon", "'42\"'", "'1\"'", "size-out-of-range fabrics.A.width"),
    # Counts, colours, letters, text
    broken("never laid", "down = 3", "down = 0", "count-out-of-range setting.down"),
    broken("laid too often", "down = 3", "down = 1000000000", "count-out-of-range setting.down"),
    broken(
        "fewer than no spares",
        "ring_in = '1/4\"'",
        "spare_masters = -1",
        "count-out-of-range making.spare_masters",
    ),
    broken("cloth that pays you", 'role = "circles"', "price = -2", "count-out-of-range fabrics.B.price"),
    broken("a colour by name", '"#22304a"', '"navy"', "bad-colour fabrics.B.colour"),
    broken("a colour of three digits", '"#22304a"', '"#234"', "bad-colour fabrics.B.colour"),
    broken("a colour without its sign", '"#22304a"', '"22304a"', "bad-colour fabrics.B.colour"),
    broken(
        "a fabric with a name for a letter",
        "[fabrics.B]",
        "[fabrics.B]\nname = 'x'\ncolour = '#000000'\n[fabrics.ink]",
        "bad-letter fabrics.ink",
        line="[fabrics.ink]",
    ),
    broken(
        "a code with a digit",
        "[setting]",
        "[colourways.a2]\nrecipe = 'round'\nground = 'A'\nshape = 'B'\n[setting]",
        "bad-code colourways.a2",
        line="[colourways.a2]",
    ),
    broken("an empty title", '"Small Harbour"', '" "', "bad-text title"),
    broken("a title of two lines", '"Small Harbour"', '"Small\\nHarbour"', "bad-text title"),
    broken("a title of a page", '"Small Harbour"', '"' + "Ah " * 60 + '"', "bad-text title"),
    broken("a bell in a name", '"ink"', '"ink\\u0007"', "bad-text fabrics.B.name"),
    broken(
        "a recipe without a name",
        "[recipes.round]",
        '[recipes.""]',
        'bad-text recipes.""',
        "unknown-recipe colourways.a.recipe",
    ),
    broken(
        "too many fabrics",
        "[recipes.round]",
        "\n".join(
            f'[fabrics.{a}{b}]\nname = "{a}{b}"\ncolour = "#101010"'
            for a in "CDE"
            for b in "ABCDEFGHIJKLMNOPQRST"
        )
        + "\n[recipes.round]",
        "too-many fabrics",
        line="[fabrics.A]",
    ),
    broken(
        "too many borders", "[binding]", BORDER * 20 + "[binding]", "too-many borders", line="[[borders]]"
    ),
    broken("two fabrics of one name", '"ink"', '"Oyster"', "name-twice fabrics.B.name"),
    broken(
        "a price in nothing",
        'role = "circles"',
        "price = 12.5",
        "price-without-currency house.currency",
        line="[house]",
    ),
    # What refers to what
    broken("an unknown ground", 'ground = "A"', 'ground = "C"', "unknown-fabric colourways.a.ground"),
    broken("a letter in small", 'ground = "A"', 'ground = "a"', "unknown-fabric colourways.a.ground"),
    broken(
        "an unknown recipe", 'recipe = "round"', 'recipe = "rounds"', "unknown-recipe colourways.a.recipe"
    ),
    broken("an unknown backing", 'fabric = "A"', 'fabric = "Q"', "unknown-fabric backing.fabric"),
    # The map
    broken("an unknown code", "a2 a3 a2", "a2 b3 a2", "unknown-code setting.map.0"),
    broken("an unknown turn", "a1 a0 a1", "a1 a4 a1", "unknown-turn setting.map.1"),
    *(broken(*case, line=line) for line, *case in QUARTER_CASES),
    broken("a turn too many", "a1 a0 a1", "a1 a10 a1", "unknown-turn setting.map.1"),
    broken("not a unit", "a1 a0 a1", "a1 ?? a1", "bad-cell setting.map.1"),
    broken(
        "units without spaces",
        "a1 a0 a1",
        "a1a0a1",
        "ragged-map setting.map.1",
        "bad-cell setting.map.1",
    ),
    broken(
        "a row that is short",
        "a2 a3 a2\n",
        "a2 a3 a2\na1 a0\na1 a0 a1\n",
        "ragged-map setting.map.1",
        line="a1 a0",
    ),
    broken(
        "a row that is long",
        "a2 a3 a2\n",
        "a2 a3 a2\na1 a0 a1\na1 a0 a1 a0\n",
        "ragged-map setting.map.2",
        line="a1 a0 a1 a0",
    ),
    broken(
        "an oblong to be turned",
        "across = 2",
        'symmetry = "turn"\nacross = 2',
        "map-not-square setting.map",
        line="map =",
    ),
    broken(
        "a symmetry of no kind",
        "across = 2",
        'symmetry = "spin"\nacross = 2',
        "unknown-word setting.symmetry",
    ),
    broken(
        "a mirror with nothing before it",
        "across = 2\ndown = 3",
        'symmetry = "mirror"',
        "symmetry-unused setting.symmetry",
    ),
    broken("a map of nothing", "a2 a3 a2\na1 a0 a1\n", "\n", "empty-map setting.map", line="map ="),
    broken("a map as wide as a street", "a2 a3 a2", WIDE_LINE, "map-too-large setting.map", line="map ="),
    broken("repeats without end", "down = 3", "down = 101", "map-too-large setting", line="[setting]"),
    # Sums and shapes
    broken(
        "neither finished nor start",
        "finished = '4 1/4\"'\n",
        "",
        "sums-missing recipes.round",
        line="[recipes.round]",
    ),
    broken(
        "sums that disagree",
        "trim = '0\"'",
        "trim = '1/2\"'\nstart = '9 1/2\"'",
        "sums-disagree recipes.round.start",
        line="start =",
    ),
    broken(
        "a start that is too small", "trim = '0\"'", "start = '9\"'", "start-too-small recipes.round.start"
    ),
    broken(
        "a start eaten by its seams",
        "finished = '4 1/4\"'\ntrim = '0\"'",
        "start = '1 1/4\"'",
        "start-too-small recipes.round.start",
    ),
    broken(
        "a shape of two sizes",
        "diameter = '7\"'",
        "diameter = '7\"', flow = true",
        "shape-unclear recipes.round.shape",
    ),
    broken(
        "a heart in a recipe of circles",
        "diameter = '7\"'",
        'outline = "heart", width = \'5"\'',
        "shape-unclear recipes.round.shape",
    ),
    broken(
        "lobes of a circle",
        "diameter = '7\"'",
        "diameter = '7\"', lobes = 5",
        "shape-unclear recipes.round.shape",
    ),
    broken("a shape of no size", "diameter = '7\"'", "", "shape-unclear recipes.round.shape"),
    broken(
        "a shape larger than its units",
        "diameter = '7\"'",
        "diameter = '9 1/8\"'",
        "shape-too-large recipes.round.shape",
    ),
    broken(
        "a shape lost in the seams",
        "diameter = '7\"'",
        "diameter = '5/8\"'",
        "shape-vanishes recipes.round.shape",
    ),
    *(
        broken(
            what,
            _CIRCLE,
            _CIRCLE.replace("circle cut", "shape cut").replace("diameter = '7\"'", shape),
            *found,
            line="shape =",
        )
        for what, shape, *found in OUTLINE_CASES
    ),
    *(broken(*case, line=line) for line, *case in own_cases(_CIRCLE)),
    *(
        replace(broken(f"{what} (of ripples)", old, new, *found, line=line), good=RIPPLES)
        for what, old, new, line, *found in (*RECIPE_CASES, *CLOTH_CASES)
    ),
    broken(
        "a sheet of one side", "ring_in = '1/4\"'", "web_sheet = ['9\"']", "sheet-unclear making.web_sheet"
    ),
    broken(
        "a sheet as large as a hall",
        "ring_in = '1/4\"'",
        "web_sheet = ['9\"', '600\"']",
        "size-out-of-range making.web_sheet.1",
    ),
    broken("a ring without web", "ring_in = '1/4\"'", "ring_in = 0\nring_out = 0", "no-web making.ring_in"),
)

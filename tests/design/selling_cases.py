"""Ways to spoil money, notions, kits, a class, a stitch or a wash: what stands in the file, and what is found."""

from __future__ import annotations

from tests.design.spoiling import Broken, broken

LAST = '[house]\npaper = "letter"\n'
STITCH = 'kind = "zigzag"'
CLOTH = 'role = "circles"'

_TABLES: tuple[tuple[str, ...], ...] = (
    ("work for less than nothing", "[money]\nrate = -1", "count-out-of-range money.rate", "rate"),
    ("a share of more than ten times", "[money]\nshare = 2000", "count-out-of-range money.share", "share"),
    ("web at a price in words", '[money]\nweb = "7.50"', "wrong-type money.web", "web"),
    ("a spool of a foot", "[money]\nspool = '1 ft'", "size-out-of-range money.spool", "spool"),
    ("minutes of a work that is none", "[money.minutes]\nsew = 3", "unknown-key money.minutes.sew", "sew"),
    ("a seam of a week", "[money.minutes]\nseam = 9999", "count-out-of-range money.minutes.seam", "seam"),
    ("a notion without a name", "[[notions]]\ncount = 2", "missing-key notions.0.name", "[[notions]]"),
    ("a notion of minus one", '[[notions]]\nname = "pins"\ncount = -1', "count-out-of-range notions.0.count", "count"),
    ("more notions than a shop", '[[notions]]\nname = "pins"\n' * 61, "too-many notions", "[[notions]]"),
    ("kits without a count", '[kits]\ncontent = "cloth"', "missing-key kits.count", "[kits]"),
    ("no kits", "[kits]\ncount = 0", "count-out-of-range kits.count", "count"),
    ("kits of scraps", '[kits]\ncount = 2\ncontent = "scraps"', "unknown-word kits.content", "content"),
    ("a bolt of ribbon", "[kits]\ncount = 2\nbolt = '9\"'", "size-out-of-range kits.bolt", "bolt"),
    ("kits of a size that is none", '[kits]\ncount = 2\nsize = "queen"', "unknown-size kits.size", "size"),
    (
        "a class for a size that is none",
        '[class]\nstudents = 8\nhours = 6\nsize = "orignal"',
        "unknown-size class.size",
        "size",
    ),
    (
        "kits of another size in each size",
        '[kits]\ncount = 2\n[sizes.large]\nchanges = { kits.size = "large" }',
        "change-forbidden sizes.large.changes.kits.size",
        "changes",
    ),
    ("a class without students", "[class]\nhours = 6", "missing-key class.students", "[class]"),
    ("a class without end", "[class]\nstudents = 8", "missing-key class.hours", "[class]"),
    ("a class of a month", "[class]\nstudents = 8\nhours = 700", "count-out-of-range class.hours", "hours"),
    (
        "a package of one side",
        "[batting]\npackages = { throw = ['60\"'] }",
        "package-unclear batting.packages.throw",
        "packages",
    ),
    (
        "a package as large as a hall",
        "[batting]\npackages = { throw = ['60\"', '600\"'] }",
        "size-out-of-range batting.packages.throw.1",
        "packages",
    ),
    ("a package of nothing", "[batting]\npackages = { throw = 60 }", "wrong-type batting.packages.throw", "packages"),
    (
        "homework that is no chapter",
        '[class]\nstudents = 8\nhours = 6\nhomework = ["sewing"]',
        "unknown-word class.homework.0",
        "homework",
    ),
    (
        "a mattress of true and false",
        "[sizes.large]\nmattress = [true, false]",
        "wrong-type sizes.large.mattress",
        "mattress",
    ),
)  # fmt: skip

_STITCHES: tuple[tuple[str, ...], ...] = (
    ("a needle that goes nowhere", 'repeat = "0 0, 2 0"', "bad-repeat making.stitch.repeat"),
    ("a needle that strays", 'repeat = "0 0, 2 0, 1 3"', "bad-repeat making.stitch.repeat"),
    ("a needle in words", 'repeat = "in and out"', "bad-repeat making.stitch.repeat"),
    ("a needle that leaps", 'repeat = "0 0, 40 0, 0 3"', "bad-repeat making.stitch.repeat"),
    ("a needle of a hundred points", f'repeat = "{"0 0, " * 99}0 2"', "bad-repeat making.stitch.repeat"),
    ("stitching through nothing", "layers = 0", "count-out-of-range making.stitch.layers"),
    ("a bobbin of a foot", "bobbin = '1 ft'", "size-out-of-range making.stitch.bobbin"),
)


def _line(text: str, word: str) -> str:
    return next(line for line in text.splitlines() if line.startswith(word))


BROKEN_SELLING: tuple[Broken, ...] = (
    *(
        broken(name, LAST, f"{LAST}\n{text}\n", *found.split("; "), line=_line(text, word))
        for name, text, found, word in _TABLES
    ),
    *(broken(name, STITCH, f"{STITCH}\n{text}", found, line=text) for name, text, found in _STITCHES),
    broken(
        "a binding stated twice",
        '[binding]\nfabric = "B"\n',
        "[binding]\nfabric = \"B\"\nwidth = '2 1/2\"'\nfinished = '3/8\"'\n",
        "binding-unclear binding.finished",
        line="finished = '3/8",
    ),
    broken(
        "cloth that shrinks to nothing",
        CLOTH,
        f"{CLOTH}\nshrink_along = 100",
        "count-out-of-range fabrics.B.shrink_along",
        line="shrink_along",
    ),
    broken(
        "prices of the house without a currency",
        LAST,
        f"{LAST}\n[money]\nrate = 20\n",
        "price-without-currency house.currency",
        line="[house]",
    ),
)

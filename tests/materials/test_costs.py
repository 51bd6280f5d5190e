"""What a quilt costs and must bring in."""

from __future__ import annotations

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from quarterturn.design import Money
from quarterturn.materials.costs import CostLine, Costs, costs_of, price_floor, spools
from quarterturn.measure import YARD
from tests.samples import ROUNDS, Changed, pattern_of

PRICED = (
    Changed(ROUNDS)
    .with_('colour = "#efe6d8"', 'colour = "#efe6d8"\nprice = 12')
    .with_(
        '[backing]\nfabric = "A"\n',
        """[backing]
fabric = "A"

[house]
currency = "EUR"

[money]
rate = 20
share = 10
web = 6
thread = 4.5

[[notions]]
name = "square-up ruler"
count = 2
price = 15
""",
    )
    .text
)
PATTERN = pattern_of(PRICED)


def line(key: str) -> CostLine:
    """Return the first line of a key."""
    return next(each for each in costs_of(PATTERN.design, PATTERN.materials).lines if each.key == key)


def test_cloth_and_web_cost_by_the_yard() -> None:
    assert line("A").cost == 12 * PATTERN.materials.plan("A").bought / YARD
    assert line("web").cost == 6 * PATTERN.materials.web.bought / YARD


def test_web_in_sheets_costs_by_the_sheet() -> None:
    pattern = pattern_of(PRICED + "\n[making]\nweb_sheet = ['9\"', '12\"']\n")
    (web,) = (each for each in costs_of(pattern.design, pattern.materials).lines if each.key == "web")
    assert (web.amount, web.cost) == (pattern.materials.web.sheets, 6 * pattern.materials.web.sheets)
    assert web.amount >= 1


def test_thread_is_bought_by_the_spool_and_a_notion_by_the_piece() -> None:
    assert (line("thread").amount, line("thread").cost) == (1, Fraction("4.5"))
    assert line("square-up ruler").cost == 30


def test_what_has_no_price_is_named_and_in_no_sum() -> None:
    costs = costs_of(PATTERN.design, PATTERN.materials)
    assert {each.key for each in costs.unpriced} == {"B", "C", "batting"}
    assert costs.total == sum(each.cost or 0 for each in costs.lines)


def test_the_price_floor_is_materials_and_hours_and_a_share() -> None:
    """(100 + 12.5 · 20) · 1.1 = 385."""
    costs = Costs((CostLine("A", Fraction(5), Fraction(20)),))
    floor = price_floor(costs, 12.5, Money(rate=Fraction(20), share=Fraction(1, 10)))
    assert floor is not None
    assert (floor.materials, floor.work, floor.added, floor.price) == (100, 250, 35, 385)


def test_without_a_rate_there_is_no_price() -> None:
    assert price_floor(Costs(()), 10, Money()) is None


@given(st.floats(0, 200), st.integers(0, 100), st.integers(0, 100))
def test_more_hours_and_a_larger_share_never_cost_less(hours: float, rate: int, percent: int) -> None:
    costs = Costs((CostLine("A", Fraction(5), Fraction(20)),))
    money = Money(rate=Fraction(rate), share=Fraction(percent, 100))
    low, high = price_floor(costs, hours, money), price_floor(costs, hours + 1, money)
    assert low is not None
    assert high is not None
    assert 100 <= low.price <= high.price


def test_a_spool_more_is_bought_for_the_first_inch_beyond() -> None:
    """200 yards on an ordinary spool (W. H. Dooley, *Textiles*, 1914)."""
    assert [spools(inches, 200 * YARD) for inches in (0, 7200, 7201)] == [0, 1, 2]

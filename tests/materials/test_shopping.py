"""What is bought, and what it costs."""

from __future__ import annotations

from fractions import Fraction

from quarterturn.materials import Materials, ShoppingLine
from quarterturn.materials.shopping import METRE, cost_of, show_money
from quarterturn.measure import YARD, Units, inches
from tests.samples import ROUNDS, Changed, pattern_of

PRICED = Changed(ROUNDS).with_('colour = "#efe6d8"', 'colour = "#efe6d8"\nprice = 11.50').text


def line(materials: Materials, key: str) -> ShoppingLine:
    """Return the one line with a key."""
    (found,) = [line for line in materials.shopping if line.key == key]
    return found


def test_a_price_is_for_a_yard_or_for_a_metre() -> None:
    assert cost_of(3 * YARD / 8, Fraction("11.50"), Units.INCH) == Fraction("4.3125")
    assert cost_of(2 * METRE, Fraction("18.90"), Units.METRIC) == Fraction("37.80")
    assert cost_of(YARD, None, Units.INCH) is None


def test_every_fabric_is_bought_in_the_length_and_width_of_its_plan() -> None:
    materials = pattern_of(PRICED).materials
    for plan in materials.cloth:
        found = line(materials, plan.fabric)
        assert (found.length, found.width) == (plan.bought, plan.usable_width)


def test_only_stated_prices_are_counted() -> None:
    materials = pattern_of(PRICED).materials
    found = line(materials, "A")
    assert found.length is not None
    assert found.price == Fraction("11.50") * found.length / 36
    assert line(materials, "B").price is None


def test_web_and_batting_are_bought_too() -> None:
    materials = pattern_of(ROUNDS).materials
    assert line(materials, "web").length == materials.web.bought
    batting = line(materials, "batting")
    assert (batting.length, batting.width) == (materials.batting_width, materials.batting_height)


def test_thread_is_bought_by_the_whole_yard_for_each_colour() -> None:
    materials = pattern_of(ROUNDS).materials
    threads = [line for line in materials.shopping if line.key == "thread"]
    assert [thread.matches for thread in threads] == [s.fabric for s in materials.stitching] == ["A", "B"]
    for thread, stitching in zip(threads, materials.stitching, strict=True):
        assert thread.length is not None
        assert thread.length % YARD == 0
        assert thread.length - YARD < stitching.thread <= thread.length


def test_metric_thread_is_bought_by_the_whole_metre() -> None:
    text = Changed(ROUNDS).with_('units = "inch"', 'units = "metric"').with_("'2\"'", "'50 mm'")
    materials = pattern_of(text.with_("'1 1/2\"'", "'40 mm'").text).materials
    for thread in (line for line in materials.shopping if line.key == "thread"):
        assert thread.length is not None
        assert thread.length % METRE == 0
        assert thread.length > inches(0)


def test_half_a_cent_is_rounded_up() -> None:
    """1.75 yards at 13.50 are 23.625."""
    assert show_money(Fraction("13.50") * Fraction("1.75")) == "23.63"
    assert show_money(Fraction("23.6249")) == "23.62"
    assert show_money(Fraction(7)) == "7.00"

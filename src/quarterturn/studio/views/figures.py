"""The figures on the slip: how much cloth, web and time the quilt takes, as the plans and steps have it."""

from __future__ import annotations

from quarterturn.materials import EFFORT, Effort, ShoppingLine, WebPlan, gap_percent, show_bought, show_money
from quarterturn.materials.costs import costs_of
from quarterturn.materials.hours import hours_of, stage_times
from quarterturn.measure import Length, show_cloth, show_count, show_length
from quarterturn.proof.work import tasks_of
from quarterturn.studio.stages import OneSize
from quarterturn.studio.views.model import LengthView, View, inches_of


class FabricFigures(View):
    """What is bought of a fabric, and how near that is to the least."""

    letter: str
    bought: LengthView
    cut: LengthView
    bound: LengthView
    slack: LengthView
    gap_percent: float
    price: str | None


class MasterFigures(View):
    """Masters of a colourway to make, and what they leave over."""

    code: str
    recipe: str
    masters: int
    needed: int
    spare: int
    surplus: int


class FlowFigures(View):
    """Curves followed through the top: rounds that close, circles among them, paths that do not, steps at seams."""

    rounds: int
    circles: int
    paths: int
    steps: int


class FiguresView(View):
    """The figures of a size. `settled` is false until they come from the proved plans."""

    revision: int
    settled: bool
    size: str
    width: LengthView
    height: LengthView
    units: int
    masters: tuple[MasterFigures, ...]
    fabrics: tuple[FabricFigures, ...]
    web: LengthView
    binding: LengthView
    batting: tuple[LengthView, LengthView]
    batting_package: str
    cost: str | None
    unpriced: tuple[str, ...]
    """What has no price and so is not in the cost: letters of fabrics, or words, each once."""
    currency: str
    hours: float | None
    steps: int | None
    flow: FlowFigures | None
    """Where the curves run; it comes with the proved plans."""


def figures_view(revision: int, size: OneSize, effort: Effort = EFFORT) -> FiguresView:
    """Return the figures. The quick ones come before the steps are built, and have no hours."""
    design, setting, materials = size.laid_design, size.lying, size.materials(effort)
    settled = effort == EFFORT
    tasks = tasks_of(size.steps(effort)) if settled else ()
    hours = hours_of(stage_times(tasks, design.selling.money.minutes)) if settled else None
    costs = costs_of(design, materials)
    return FiguresView(
        revision=revision,
        settled=settled,
        size=design.size,
        width=_length(size, setting.width),
        height=_length(size, setting.height),
        units=len(setting.units),
        masters=_masters(size),
        fabrics=_fabrics(size, effort),
        web=_web(size, materials.web),
        binding=_length(size, materials.binding_run),
        batting=(_length(size, materials.batting_width), _length(size, materials.batting_height)),
        batting_package=materials.batting_package,
        cost=show_money(costs.total) if costs.total else None,
        unpriced=tuple(dict.fromkeys(line.key for line in costs.unpriced)),
        currency=design.house.currency,
        hours=None if hours is None else round(hours, 1),
        steps=len(size.steps(effort).steps) if settled else None,
        flow=_flow(size) if settled else None,
    )


def _flow(size: OneSize) -> FlowFigures:
    flow = size.setting.flow
    paths, steps = len(flow.paths), flow.steps
    return FlowFigures(rounds=len(flow.rounds), circles=flow.circles, paths=paths, steps=steps)


def _masters(size: OneSize) -> tuple[MasterFigures, ...]:
    return tuple(
        MasterFigures(
            code=each.code,
            recipe=each.recipe,
            masters=each.count,
            needed=each.needed,
            spare=each.spare,
            surplus=each.surplus_units,
        )
        for each in size.bill.masters
    )


def _fabrics(size: OneSize, effort: Effort) -> tuple[FabricFigures, ...]:
    materials = size.materials(effort)
    lines: dict[str, ShoppingLine] = {line.key: line for line in materials.shopping}
    found = []
    for plan in materials.cloth:
        price = lines[plan.fabric].price if plan.fabric in lines else None
        found.append(
            FabricFigures(
                letter=plan.fabric,
                bought=LengthView(inches=inches_of(plan.bought), text=show_bought(plan, size.design.units)),
                cut=_length(size, plan.cut_length),
                bound=_length(size, plan.lower_bound),
                slack=_length(size, plan.slack),
                gap_percent=round(gap_percent(plan), 2),
                price=None if price is None else show_money(price),
            )
        )
    return tuple(found)


def _web(size: OneSize, web: WebPlan) -> LengthView:
    text = show_count(web.sheets, "sheet") if web.sheet else show_cloth(web.bought, size.design.units)
    return LengthView(inches=inches_of(web.bought), text=text)


def _length(size: OneSize, value: Length) -> LengthView:
    return LengthView(inches=inches_of(value), text=show_length(value, size.design.units))


def _cloth(size: OneSize, value: Length) -> LengthView:
    return LengthView(inches=inches_of(value), text=show_cloth(value, size.design.units))

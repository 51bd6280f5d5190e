"""Plan everything that a quilt is made from."""

from __future__ import annotations

from quarterturn.blocks import Blocks
from quarterturn.design import Design, package_sides
from quarterturn.materials.backing import PACKAGES, package_for
from quarterturn.materials.model import ClothPlan, Materials
from quarterturn.materials.parcels import plan_cloth
from quarterturn.materials.shopping import shopping_list
from quarterturn.materials.strips import EFFORT, Effort
from quarterturn.materials.thread import stitching_sums
from quarterturn.materials.web import plan_web
from quarterturn.pieces import Bill, CurveBill, to_cut
from quarterturn.setting import Setting


def plan_curves(design: Design, bill: CurveBill) -> tuple[ClothPlan, ...]:
    """Return the plans of all fabrics of a quilt whose curves are sewn instead of fused."""
    return tuple(
        plan_cloth(fabric, pieces, design.making, design.units, plain=True)
        for fabric in design.fabrics
        if (pieces := bill.of_fabric(fabric.letter))
    )


def plan_materials(
    design: Design, blocks: Blocks, setting: Setting, bill: Bill, effort: Effort = EFFORT
) -> Materials:
    """Return the plans of all fabrics that pieces are cut from, web, batting, thread and the shopping list.

    `effort` says how hard to look for short plans; with QUICK the first good ones are taken. Whatever the effort,
    plans can be carried out and their bounds hold.
    What fits nowhere is named in the plans' `unplaced`, and missing from their strips.
    """
    making, over = design.making, 2 * design.making.overage
    cloth = tuple(
        plan_cloth(fabric, pieces, making, design.units, effort)
        for fabric in design.fabrics
        if (pieces := bill.of_fabric(fabric.letter))
    )
    web = plan_web(making, blocks, bill.masters, design.units, bill.motifs, quick=not effort.rounds)
    stitching = stitching_sums(design, blocks, bill.masters, bill.motifs)
    batting = (to_cut(setting.width + over, design.units), to_cut(setting.height + over, design.units))
    return Materials(
        cloth=cloth,
        web=web,
        batting_width=batting[0],
        batting_height=batting[1],
        batting_package=package_for(*batting, package_sides(design.packages) or PACKAGES),
        binding_run=to_cut(2 * (setting.width + setting.height) + making.binding_extra, design.units),
        stitching=stitching,
        shopping=shopping_list(design, cloth, web, batting, stitching),
    )

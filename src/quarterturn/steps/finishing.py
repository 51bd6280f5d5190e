"""The steps from a finished top to a bound quilt."""

from __future__ import annotations

from collections.abc import Iterator

from quarterturn.design import BindingKind, Design
from quarterturn.materials import Materials
from quarterturn.pieces import Bill, Purpose, bias_length, bias_rows
from quarterturn.setting import Setting
from quarterturn.steps import labels
from quarterturn.steps.draft import Draft, draft
from quarterturn.steps.model import Bind, Chapter, CutBias, JoinPanels, LayerQuilt, QuiltLayers
from quarterturn.steps.things import Pile, Product


def finishing_steps(design: Design, setting: Setting, bill: Bill, materials: Materials) -> Iterator[Draft]:
    """Return joining the backing, layering, quilting and binding."""
    seam = design.making.seam
    raw = (setting.width + 2 * seam, setting.height + 2 * seam)
    yield from _backing_steps(bill, materials)
    yield draft(
        Chapter.FINISHING,
        LayerQuilt(design.making.overage, seam),
        (Pile(labels.TOP, 1), Pile(labels.BACKING, 1)),
        (Product(labels.LAYERED, 1, materials.batting_width, materials.batting_height),),
    )
    quilted = Product(labels.QUILTED, 1, *raw)
    yield draft(Chapter.FINISHING, QuiltLayers(), (Pile(labels.LAYERED, 1),), (quilted,))
    yield from _bias_steps(design, bill)
    bound = (Pile(labels.QUILTED, 1), Pile(_binding_run(design, materials), 1))
    finished = Product(labels.QUILT, 1, setting.width, setting.height)
    bind = Bind(seam, design.binding_width, design.binding_fold)
    yield draft(Chapter.FINISHING, bind, bound, (finished,))


def _backing_steps(bill: Bill, materials: Materials) -> Iterator[Draft]:
    sheet = next(p for p in bill.pieces if p.purpose is Purpose.BACKING)
    for group in materials.plan(sheet.fabric).panels:
        made = Product(labels.BACKING, 1, sheet.length, sheet.width)
        used = (Pile(labels.panel(sheet.fabric), group.panels),)
        yield draft(Chapter.FINISHING, JoinPanels(group.seam, group.runs_down), used, (made,))


def _bias_steps(design: Design, bill: Bill) -> Iterator[Draft]:
    """Return cutting the sheet of a binding on the bias to one strip."""
    strip, seam = design.binding_width, design.making.seam
    for sheet in bill.pieces:
        if sheet.purpose is Purpose.BIAS:
            action = CutBias(seam, strip, bias_rows(sheet.length, strip, seam))
            long = bias_length(sheet.width, sheet.length, strip, seam, design.units)
            made = Product(labels.BINDING, 1, long, strip)
            yield draft(Chapter.FINISHING, action, (Pile(sheet.label, 1),), (made,))


def _binding_run(design: Design, materials: Materials) -> str:
    """Return the label of the strip that is long enough to bind the quilt; where no cloth gives one, of a binding."""
    if design.binding_kind is BindingKind.BIAS:
        return labels.BINDING
    runs = materials.plan(design.binding_fabric).runs
    found = (r.label for r in runs if not r.crosscuts and r.height == design.binding_width)
    return next(found, labels.BINDING)

"""Every sentence that the booklet prints, made from the steps.

In:  a `Step` or a stage's result, and the `Pattern` that it belongs to.
Out: `Wording` and plain sentences in the trade's style.
Promise: pure functions; a number is formatted here, never calculated.
"""

from quarterturn.publish.wording import curve_lines
from quarterturn.publish.wording.assembly import centre_sewing, placed_name, row_places
from quarterturn.publish.wording.colophon import defaults, imprint
from quarterturn.publish.wording.flow import flow_facts
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    cloths_of,
    fabric_name,
    fabric_words,
    length,
    named,
    parts_of,
    rectangle,
    sized,
    unit_sizes,
)
from quarterturn.publish.wording.opening import (
    LABEL,
    TECHNIQUE,
    abbreviations,
    assumptions,
    cautions,
    curve_facts,
    cutting_advice,
    notions,
    sizes_said,
)
from quarterturn.publish.wording.requirements import Need, cloth_needs, other_needs, plan_line, width_line
from quarterturn.publish.wording.telling import TELLERS, tell

__all__ = [
    "LABEL",
    "TECHNIQUE",
    "TELLERS",
    "Need",
    "Wording",
    "abbreviations",
    "assumptions",
    "cautions",
    "centre_sewing",
    "cloth_needs",
    "cloths_of",
    "curve_facts",
    "curve_lines",
    "cutting_advice",
    "defaults",
    "fabric_name",
    "fabric_words",
    "flow_facts",
    "imprint",
    "length",
    "named",
    "notions",
    "other_needs",
    "parts_of",
    "placed_name",
    "plan_line",
    "rectangle",
    "row_places",
    "sized",
    "sizes_said",
    "tell",
    "unit_sizes",
    "width_line",
]

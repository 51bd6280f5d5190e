"""Every sentence that the booklet prints, made from the steps.

In:  a `Step` or a stage's result, and the `Pattern` that it belongs to.
Out: `Wording` and plain sentences in the trade's style.
Promise: pure functions; a number is formatted here, never calculated.
"""

from quarterturn.publish.wording import curve_lines
from quarterturn.publish.wording.assembly import centre_sewing, placed_name, row_places
from quarterturn.publish.wording.borders import ring_of
from quarterturn.publish.wording.colophon import defaults, estimates, imprint
from quarterturn.publish.wording.flow import flow_facts
from quarterturn.publish.wording.lines import part_name
from quarterturn.publish.wording.model import Wording
from quarterturn.publish.wording.names import (
    cloths_of,
    fabric_name,
    fabric_words,
    halves_of,
    joined_cloths,
    length,
    listed,
    named,
    parts_of,
    plural,
    rectangle,
    size_named,
    sized,
    turned_by,
)
from quarterturn.publish.wording.opening import (
    LABEL,
    TECHNIQUE,
    abbreviations,
    assumptions,
    cautions,
    cautions_of,
    curve_facts,
    cutting_advice,
    notions,
    sizes_said,
)
from quarterturn.publish.wording.owners import owner_of
from quarterturn.publish.wording.parcels import layout_line, parcel_line
from quarterturn.publish.wording.plans import (
    PLAN_HEADS,
    beside_plan,
    plan_line,
    plan_rows,
    plans_compared,
    plans_explained,
)
from quarterturn.publish.wording.pressing import pressed_to
from quarterturn.publish.wording.requirements import (
    Need,
    cloth_needs,
    other_needs,
    width_line,
)
from quarterturn.publish.wording.sections import (
    Made,
    borders_said,
    held_by,
    node_said,
    section_name,
    sections_of,
    unit_grid,
    unit_sizes,
)
from quarterturn.publish.wording.size_costs import cost_part
from quarterturn.publish.wording.sizes import (
    SizePart,
    by_size,
    size_notes,
    size_parts,
    sizes_rehearsed,
)
from quarterturn.publish.wording.telling import TELLERS, tell
from quarterturn.publish.wording.web import (
    CENTRE_HEADS,
    centre_rows,
    on_ruler,
    room_side,
    web_amount,
    web_name,
    web_sentence,
)

__all__ = [
    "CENTRE_HEADS",
    "LABEL",
    "PLAN_HEADS",
    "TECHNIQUE",
    "TELLERS",
    "Made",
    "Need",
    "SizePart",
    "Wording",
    "abbreviations",
    "assumptions",
    "beside_plan",
    "borders_said",
    "by_size",
    "cautions",
    "cautions_of",
    "centre_rows",
    "centre_sewing",
    "cloth_needs",
    "cloths_of",
    "cost_part",
    "curve_facts",
    "curve_lines",
    "cutting_advice",
    "defaults",
    "estimates",
    "fabric_name",
    "fabric_words",
    "flow_facts",
    "halves_of",
    "held_by",
    "imprint",
    "joined_cloths",
    "layout_line",
    "length",
    "listed",
    "named",
    "node_said",
    "notions",
    "on_ruler",
    "other_needs",
    "owner_of",
    "parcel_line",
    "part_name",
    "parts_of",
    "placed_name",
    "plan_line",
    "plan_rows",
    "plans_compared",
    "plans_explained",
    "plural",
    "pressed_to",
    "rectangle",
    "ring_of",
    "room_side",
    "row_places",
    "section_name",
    "sections_of",
    "size_named",
    "size_notes",
    "size_parts",
    "sized",
    "sizes_rehearsed",
    "sizes_said",
    "tell",
    "turned_by",
    "unit_grid",
    "unit_sizes",
    "web_amount",
    "web_name",
    "web_sentence",
    "width_line",
]

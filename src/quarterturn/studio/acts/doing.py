"""Do an act: change the text, and refuse what would leave no design."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from quarterturn.setting import FIT_CODES
from quarterturn.studio.acts.model import Act, RefusedError
from quarterturn.studio.stages import Made, Stages


@dataclass(frozen=True, slots=True)
class Done:
    """What an act left: its text, whether that is another one, and the facts that the page tells."""

    made: Made
    changed: bool
    act: str
    facts: Mapping[str, str | int] = field(default_factory=dict)


def do(act: Act, text: str, stages: Stages) -> Done:
    """Do an act on the text of a design. Raises RefusedError where the text, or what it would become, is no design.

    What stopped the design before may go on stopping it: an act need not mend everything.
    """
    before = stages.at(text)
    design = before.reading.design
    if design is None and not act.may_break:
        first = before.reading.findings[0]
        raise RefusedError(first.sentence, first.remedy)
    change = act.change(text, design)  # type: ignore[arg-type]
    name = str(getattr(act, "name"))  # noqa: B009 - each act has its own
    if change.text == text:
        return Done(before, changed=False, act=name, facts=change.facts)
    after = stages.at(change.text)
    if not act.may_break:
        _check(before, after, anyway=act.anyway)
    return Done(after, changed=True, act=name, facts=change.facts)


def _check(before: Made, after: Made, *, anyway: bool) -> None:
    """Raise RefusedError where something stops the design that did not before.

    Where parts did not fit before, they need not fit after: a hand mends them one by one.
    """
    stops = after.stops
    if not stops:
        return
    known = {(finding.code, finding.sentence) for finding in before.stops}
    fits_not = all(finding.code in FIT_CODES for finding in stops)
    if fits_not and (anyway or known):
        return
    for finding in stops:
        if after.reading.design is None or (finding.code, finding.sentence) not in known:
            raise RefusedError(finding.sentence, finding.remedy, can_anyway=fits_not)

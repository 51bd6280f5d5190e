"""What each room of the page shows: pure functions from what the stages made to records that become JSON.

In:  a `Made` or one of its sizes (`stages`).
Out: a frozen record of pydantic, whose fields OpenAPI tells the page.
Promise: nothing about a quilt is reckoned here; every number is read off a stage.
"""

from quarterturn.studio.views.figures import FiguresView, figures_view
from quarterturn.studio.views.model import FindingView, finding_view
from quarterturn.studio.views.paper import PaperFacts, paper_facts
from quarterturn.studio.views.quilt import QuiltView, quilt_view

__all__ = [
    "FiguresView",
    "FindingView",
    "PaperFacts",
    "QuiltView",
    "figures_view",
    "finding_view",
    "paper_facts",
    "quilt_view",
]

"""What each room of the page shows: pure functions from what the stages made to records that become JSON.

In:  a `Made` or one of its sizes (`stages`).
Out: a frozen record of pydantic, whose fields OpenAPI tells the page.
Promise: nothing about a quilt is reckoned here; every number is read off a stage.
"""

from quarterturn.studio.views.beginning import BegunView, NewDesign, beginning, begun
from quarterturn.studio.views.blocks import BlocksView, blocks_view
from quarterturn.studio.views.booklet import (
    BookletView,
    TemplatesView,
    booklet_pages,
    booklet_view,
    templates_view,
)
from quarterturn.studio.views.cloth import ClothRoom, cloth_view
from quarterturn.studio.views.cutting import CuttingView, cutting_view
from quarterturn.studio.views.figures import FiguresView, figures_view
from quarterturn.studio.views.film import FilmView, FrameView, film_view, frame_view
from quarterturn.studio.views.finder import FinderView, FindQuestion, FindView, find_view, finder_view
from quarterturn.studio.views.folders import FolderView, folder_view
from quarterturn.studio.views.making import MakingView, making_view
from quarterturn.studio.views.model import FindingView, finding_view
from quarterturn.studio.views.outlines import OutlinesView, outlines_view
from quarterturn.studio.views.palette import PaletteView, palette_view
from quarterturn.studio.views.paper import PaperFacts, paper_facts
from quarterturn.studio.views.proof import ProofView, proof_view
from quarterturn.studio.views.quilt import QuiltView, quilt_view
from quarterturn.studio.views.seams import SeamsView, seams_view
from quarterturn.studio.views.sizes import SizesView, sizes_view
from quarterturn.studio.views.start import RecentView, StartView, picture_svg, start_view
from quarterturn.studio.views.values import ValuesView, values_view

__all__ = [
    "BegunView",
    "BlocksView",
    "BookletView",
    "ClothRoom",
    "CuttingView",
    "FiguresView",
    "FilmView",
    "FindQuestion",
    "FindView",
    "FinderView",
    "FindingView",
    "FolderView",
    "FrameView",
    "MakingView",
    "NewDesign",
    "OutlinesView",
    "PaletteView",
    "PaperFacts",
    "ProofView",
    "QuiltView",
    "RecentView",
    "SeamsView",
    "SizesView",
    "StartView",
    "TemplatesView",
    "ValuesView",
    "beginning",
    "begun",
    "blocks_view",
    "booklet_pages",
    "booklet_view",
    "cloth_view",
    "cutting_view",
    "figures_view",
    "film_view",
    "find_view",
    "finder_view",
    "finding_view",
    "folder_view",
    "frame_view",
    "making_view",
    "outlines_view",
    "palette_view",
    "paper_facts",
    "picture_svg",
    "proof_view",
    "quilt_view",
    "seams_view",
    "sizes_view",
    "start_view",
    "templates_view",
    "values_view",
]

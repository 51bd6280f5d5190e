"""Laws of the rooms that lead to the sewing table: finder, booklet, templates, making."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from PIL import Image, ImageChops

from quarterturn.studio import views
from quarterturn.studio.refusals import StaleError
from quarterturn.studio.searching import Searches
from quarterturn.studio.stages import Stages
from quarterturn.studio.views.booklet import booklet_pages
from tests.samples import ROUNDS
from tests.studio.drafts import file_of, open_desk, titled
from tests.studio.rooms import client, opened
from tests.studio.views.view_cases import MADE, each_example, sized

FOOT = 0.07
"""The share of a page's height in which its foot stands."""


@pytest.mark.parametrize("name", ["lanterns-on-the-quay", "gates-of-the-orchard", "pocket-of-moons"])
def test_the_opening_is_how_the_whole_begins(name: str) -> None:
    made = MADE[name]
    first, whole = booklet_pages(made, 360, opening=True), booklet_pages(made, 360)
    assert 2 <= len(first) < len(whole)
    for early, late in zip(first, whole, strict=False):
        assert _changed_above_the_foot(early, late) is None


def _changed_above_the_foot(one: bytes, other: bytes) -> tuple[int, int, int, int] | None:
    pages = [Image.open(io.BytesIO(each)).convert("RGB") for each in (one, other)]
    wide, high = pages[0].size
    return ImageChops.difference(
        *(page.crop((0, 0, wide, int(high * (1 - FOOT)))) for page in pages)
    ).getbbox()


def test_the_opening_tells_that_more_comes() -> None:
    made = Stages().at(ROUNDS)
    opening, whole = views.booklet_view(1, made, opening=True), views.booklet_view(1, made)
    assert (opening.whole, whole.whole) == (False, True)
    assert opening.choices == whole.choices


@each_example
def test_templates_are_drawn_at_true_size(name: str) -> None:
    size = sized(name)
    told = views.templates_view(1, size)
    for page in told.pages:
        assert f'width="{told.width:g}mm" height="{told.height:g}mm"' in page.svg
        assert page.alt


@each_example
def test_each_chapter_says_what_to_take_care_of(name: str) -> None:
    chapters = {chapter.title: chapter for chapter in views.making_view(1, sized(name)).chapters}
    assert "Rotary cutter" in " ".join(chapters["Cutting"].cautions)
    known = set(views.making_view(1, sized(name)).cautions)
    assert all(set(chapter.cautions) <= known for chapter in chapters.values())
    assert all(chapter.cautions for chapter in chapters.values())


def test_a_setting_is_looked_at_and_nothing_is_changed(tmp_path: Path) -> None:
    with client(tmp_path) as asking:
        design = opened(asking, text=ROUNDS)
        found = asking.post(f"{design}/find", json={"repeat": 2, "symmetry": "mirror"}).json()
        take = {"name": "take-setting", **found["found"][0]["take"]}
        looked = asking.post(f"{design}/look", json={"act": take})
        assert looked.status_code == 200, looked.text
        assert asking.get(design).json()["revision"] == 0
        done = asking.post(f"{design}/acts", json={"revision": 0, "act": take}).json()
        now = asking.get(f"{design}/quilt").json()
        assert {**looked.json(), "revision": done["revision"]} == now


def test_a_search_ends_when_another_begins(tmp_path: Path) -> None:
    searches = Searches()
    with open_desk(tmp_path) as desk:
        paper = desk.open(file_of(tmp_path, ROUNDS))
        first = searches.begin(paper, 0)
        first()
        second = searches.begin(paper, 0)
        second()
        with pytest.raises(StaleError):
            views.find_view(0, paper.made()[1].size(), views.FindQuestion(repeat=4), first)
        paper.act(0, titled("Another"))
        with pytest.raises(StaleError):
            second()


def test_a_search_can_be_called_off(tmp_path: Path) -> None:
    with client(tmp_path) as asking:
        design = opened(asking, text=ROUNDS)
        assert asking.post(f"{design}/find/cancel").status_code == 204


@each_example
def test_what_fits_can_be_searched_for(name: str) -> None:
    size = sized(name)
    told = views.finder_view(1, size)
    fit = [each.code for each in told.codes if not each.why]
    assert all(each.why.endswith(".") and "--" not in each.why for each in told.codes if each.why)
    for section in told.sections[:1]:
        for code in fit[:1]:
            found = views.find_view(1, size, views.FindQuestion(repeat=1, codes=(code,), section=section))
            assert found.found[0].take is not None
            assert found.found[0].take.section == section


def test_a_section_is_laid_by_what_was_found_for_it() -> None:
    question = views.FindQuestion(repeat=1, section="nowhere")
    found = views.find_view(1, Stages().at(ROUNDS).size(), question)
    assert all(each.take is None for each in found.found)


def test_all_ticks_can_be_taken_away(tmp_path: Path) -> None:
    with client(tmp_path) as asking:
        design = opened(asking, text=ROUNDS)
        first = asking.get(f"{design}/making").json()["chapters"][0]["entries"][0]["id"]
        ticked = asking.post(f"{design}/making/tick", json={"entry": first, "done": True}).json()
        assert ticked["done"] == 1
        assert asking.post(f"{design}/making/untick").json()["done"] == 0
        assert asking.get(f"{design}/making").json()["done"] == 0

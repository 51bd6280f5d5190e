"""What is brought is counted, and let in only as what it should be."""

from __future__ import annotations

import io
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from quarterturn.studio import uploads
from quarterturn.studio.uploads import LONGEST_SIDE, PhotoError, most_bytes, read_photo
from tests.studio.drafts import TEXT
from tests.studio.rooms import client, opened


def photo(width: int = 40, height: int = 30, kind: str = "JPEG", **more: object) -> bytes:
    kept = io.BytesIO()
    Image.new("RGB", (width, height), "#a5402c").save(kept, kind, **more)
    return kept.getvalue()


def test_more_is_let_in_for_photos_than_for_anything_else() -> None:
    assert most_bytes("/api/designs/12/photo") == uploads.MOST_PHOTO_BYTES
    assert most_bytes("/api/designs/12/acts") == uploads.MOST_BYTES
    assert most_bytes("/api/designs/1/2/photo") == uploads.MOST_BYTES


@pytest.mark.parametrize("is_stated", [True, False])
def test_a_request_that_brings_too_much_is_turned_away(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, *, is_stated: bool
) -> None:
    monkeypatch.setattr(uploads, "MOST_BYTES", 2**20)
    with client(tmp_path) as asking:
        at = opened(asking, text=TEXT)
        for path in (f"{at}/outline", f"{at}/acts", "/api/designs"):
            body = b"x" * (2**20 + 1)
            content = body if is_stated else iter([body[:1000], body[1000:]])
            answer = asking.post(path, content=content)
            assert (answer.status_code, answer.json()["detail"]) == (413, "This is larger than 1 MB.")


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP"])
def test_a_photo_is_kept_beside_the_design_and_shown_again(tmp_path: Path, kind: str) -> None:
    (tmp_path / "a.toml").write_text(TEXT, encoding="utf-8")
    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(tmp_path / "a.toml"))
        taken = asking.post(f"{at}/photo", content=photo(kind=kind))
        assert (taken.status_code, taken.json()["width"], taken.json()["height"]) == (201, 40, 30)
        name = taken.json()["file"]
        assert (tmp_path / name).is_file()
        shown = asking.get(f"{at}/photo/{name}")
        assert (shown.status_code, shown.headers["content-type"]) == (200, "image/jpeg")


def test_a_photo_of_a_design_without_a_file_comes_along_when_it_is_saved(tmp_path: Path) -> None:
    with client(tmp_path / "state") as asking:
        at = opened(asking, text=TEXT)
        name = asking.post(f"{at}/photo", content=photo()).json()["file"]
        assert asking.get(f"{at}/photo/{name}").status_code == 200
        saved = asking.post(f"{at}/save", json={"path": str(tmp_path / "a.toml")})
        assert (saved.status_code, saved.json()["saved"]) == (200, True)
        assert (tmp_path / name).is_file()


def test_the_colours_of_a_photo_are_told(tmp_path: Path) -> None:
    with client(tmp_path) as asking:
        at = opened(asking, text=TEXT)
        answer = asking.post(f"{at}/palette", content=photo())
        assert answer.status_code == 200
        assert answer.json()["colours"][0]["share"] > 0.9


@pytest.mark.parametrize(
    "name", ["a.toml", "..%2Fa.jpg", "%2Fetc%2Fpasswd", "absent.jpg", "a%00.jpg", "a.svg", "x" * 200 + ".jpg"]
)
def test_no_name_of_a_photo_leads_to_anything_else(tmp_path: Path, name: str) -> None:
    (tmp_path / "a.jpg").write_bytes(photo())
    folder = tmp_path / "quilts"
    folder.mkdir()
    (folder / "a.toml").write_text(TEXT, encoding="utf-8")
    with client(tmp_path / "state") as asking:
        at = opened(asking, open=str(folder / "a.toml"))
        assert asking.get(f"{at}/photo/{name}").status_code in (404, 422)


def test_a_photo_is_made_anew_upright_and_without_what_else_its_file_told() -> None:
    exif = Image.Exif()
    exif[0x0112], exif[0x010F] = 6, "a maker of cameras"  # turned by a quarter; the maker (Exif 2.32, 4.6)
    taken = read_photo(photo(exif=exif))
    assert (taken.width, taken.height) == (30, 40)
    assert b"a maker of cameras" not in taken.content
    assert read_photo(photo(exif=exif)).file == taken.file


def test_a_large_photo_is_kept_smaller() -> None:
    taken = read_photo(photo(LONGEST_SIDE * 2, 60))
    assert (taken.width, taken.height) == (LONGEST_SIDE, 30)


def test_a_photo_with_too_many_points_is_refused_before_they_are_made(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(uploads, "MOST_PIXELS", 40 * 30 - 1)
    with pytest.raises(PhotoError, match="too many points"):
        read_photo(photo()[:200] + bytes(20))


@given(st.integers(0, 600), st.binary(min_size=1, max_size=30))
def test_a_damaged_photo_is_refused_or_read_and_never_a_fault(place: int, by: bytes) -> None:
    whole = photo()
    damaged = whole[: place % len(whole)] + by + whole[place % len(whole) + len(by) :]
    try:
        told = read_photo(damaged).file
    except PhotoError as error:
        told = error.remedy
    assert told


@pytest.mark.parametrize("content", [b"", b"<svg/>", b"GIF89a", b"%!PS-Adobe-3.0 EPSF-3.0", TEXT.encode()])
def test_what_is_no_photo_is_refused_with_a_remedy(tmp_path: Path, content: bytes) -> None:
    with client(tmp_path) as asking:
        at = opened(asking, text=TEXT)
        answer = asking.post(f"{at}/photo", content=content)
        assert (answer.status_code, answer.json()["detail"]) == (422, "This is no photo.")


def test_a_drawing_is_read_and_one_that_reaches_outside_is_refused(tmp_path: Path) -> None:
    drawing = '<svg xmlns="http://www.w3.org/2000/svg" width="2in" height="2in" viewBox="0 0 2 2">{}</svg>'
    entity = '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>' + drawing.format("<text>&x;</text>")
    with client(tmp_path) as asking:
        at = opened(asking, text=TEXT)
        good = asking.post(
            f"{at}/outline", content=drawing.format('<circle cx="1" cy="1" r="0.9" id="disc"/>')
        )
        assert (good.status_code, len(good.json()["outlines"])) == (200, 1)
        for content in (entity, "<svg", "", "\0"):
            bad = asking.post(f"{at}/outline", content=content)
            assert bad.status_code == 422
            assert "root:" not in bad.text
            assert bad.json()["remedy"]

"""How much a request may bring, and what of a photo is let in."""

from __future__ import annotations

import hashlib
import io
import re
import warnings
from dataclasses import dataclass

from starlette.responses import JSONResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

MOST_BYTES = 8 * 2**20
MOST_PHOTO_BYTES = 40 * 2**20
MOST_PIXELS = 80_000_000
LONGEST_SIDE = 2400
"""Pixels of a photo that are kept along its longer side: more than any screen shows of a fabric."""

PHOTO_KINDS = ("JPEG", "PNG", "WEBP")
PHOTO_PATHS = re.compile(r"/api/designs/[^/]+/(photo|palette)")


def most_bytes(path: str) -> int:
    """Return how many bytes a request to a path may bring."""
    return MOST_PHOTO_BYTES if PHOTO_PATHS.fullmatch(path) else MOST_BYTES


class Limit:
    """Turns away requests that bring too much, before it is held in memory."""

    def __init__(self, app: ASGIApp) -> None:
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Let a request in, its body counted as it comes."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        most = most_bytes(str(scope["path"]))
        taken = _stated(scope)
        refused = JSONResponse(too_large(most), status_code=413)
        if taken > most:
            await refused(scope, receive, send)
            return
        taken = 0

        async def counted() -> Message:
            nonlocal taken
            message = await receive()
            taken += len(message.get("body", b""))
            return message if taken <= most else {"type": "http.disconnect"}

        async def watched(message: Message) -> None:
            if taken <= most:
                await send(message)

        await self._app(scope, counted, watched)
        if taken > most:
            await refused(scope, receive, send)


def too_large(most: int) -> dict[str, str]:
    """Return the sentence and the remedy."""
    return {"detail": f"This is larger than {most // 2**20} MB.", "remedy": "Bring something smaller."}


def _stated(scope: Scope) -> int:
    """Return the length that a request states; 0 where it states none."""
    stated = next((value for name, value in scope["headers"] if name == b"content-length"), b"0")
    return int(stated) if stated.isdigit() and len(stated) < 19 else 0


class PhotoError(ValueError):
    """Bytes that are no photo that can be taken: what is so, and what to do instead."""

    def __init__(self, sentence: str, remedy: str = "Bring a photo as JPEG, PNG or WebP.") -> None:
        super().__init__(sentence)
        self.sentence, self.remedy = sentence, remedy


@dataclass(frozen=True, slots=True)
class Picture:
    """A photo as it is kept: made anew from its points, so that nothing else that the file held comes along."""

    content: bytes
    width: int
    height: int

    @property
    def file(self) -> str:
        """Return the name of its file: equal photos have equal names."""
        return f"cloth-{hashlib.sha256(self.content).hexdigest()[:12]}.jpg"


def read_photo(content: bytes) -> Picture:
    """Return a photo upright, without whatever else its file told (place, camera), and no larger than needed.

    Raises PhotoError.
    """
    from PIL import Image, ImageOps, UnidentifiedImageError

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error")
            with Image.open(io.BytesIO(content), formats=PHOTO_KINDS) as image:
                if image.width * image.height > MOST_PIXELS:
                    raise PhotoError("The photo has too many points.", "Bring a smaller one.")
                image.draft("RGB", (LONGEST_SIDE, LONGEST_SIDE))
                upright = ImageOps.exif_transpose(image).convert("RGB")
        upright.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
        kept = io.BytesIO()
        upright.save(kept, "JPEG", quality=88)
    except PhotoError:
        raise
    except UnidentifiedImageError as error:
        raise PhotoError("This is no photo.") from error
    except Exception as error:  # a decoder may raise whatever it likes on bytes that are made to mislead it
        raise PhotoError("The photo cannot be read.") from error
    return Picture(kept.getvalue(), upright.width, upright.height)

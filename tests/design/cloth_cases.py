"""Fabrics of `RIPPLES` that say too much or too little, told as its `RECIPE_CASES` are."""

from __future__ import annotations

CLOTH_CASES: tuple[tuple[str, str, str, str | None, str], ...] = (
    (
        "an upright print without a direction",
        'name = "brick"',
        'name = "brick"\nupright = true',
        "upright",
        "upright-unclear fabrics.C.upright",
    ),
    (
        "a photo in another folder",
        'name = "brick"',
        'name = "brick"\nphoto = "../brick.jpg"',
        "photo =",
        "photo-unclear fabrics.C.photo",
    ),
    (
        "the size of no photo",
        'name = "brick"',
        'name = "brick"\nphoto_width = 3',
        "photo_width",
        "photo-unclear fabrics.C.photo_width",
    ),
    (
        "a photo cropped beyond its edge",
        'name = "brick"',
        'name = "brick"\nphoto = "brick.jpg"\nphoto_crop = [0.5, 0, 0.6, 1]',
        "photo_crop",
        "photo-unclear fabrics.C.photo_crop",
    ),
)
"""What is wrong, what is exchanged, the line of the finding where that is another, and what must be found."""

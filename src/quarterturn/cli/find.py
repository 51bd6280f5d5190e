"""`find`: settings for the units of a design."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterturn.cli.ending import RefusedError
from quarterturn.cli.reading import Taken, design_file, made_pattern, take_in
from quarterturn.cli.telling import tell_json
from quarterturn.files import write_file

if TYPE_CHECKING:
    from quarterturn.proof import Pattern
    from quarterturn.setting.finder import Found, Selection

KINDS = (".pdf", ".svg", ".png")
PIXELS_WIDE = 1600


@click.command(short_help="Find settings for the units of a design.")
@design_file
@click.option(
    "--repeat", type=click.IntRange(1, 4), required=True, help="Lay blocks of so many units each way."
)
@click.option(
    "--symmetry",
    type=click.Choice(["slide", "mirror", "turn", "half turn"]),
    default="slide",
    show_default=True,
    help="How copies of the block are laid.",
)
@click.option("--codes", help="The colourways to use, such as a,b; if not given, those of the map.")
@click.option("--most", type=click.IntRange(1, 200), default=12, show_default=True, help="List so many.")
@click.option(
    "--to", "sheet", type=click.Path(path_type=Path), metavar="FILE", help="Draw them: pdf, svg or png."
)
@click.option("--take", type=click.IntRange(1), metavar="N", help="Take the setting of this number.")
@click.option(
    "--into", type=click.Path(path_type=Path), metavar="FILE", help="Write the design with the one taken."
)
@click.option("--json", "as_json", is_flag=True, help="Print the list as JSON.")
def find(
    file: str,
    repeat: int,
    symmetry: str,
    codes: str | None,
    most: int,
    sheet: Path | None,
    take: int | None,
    into: Path | None,
    as_json: bool,
) -> None:
    """Find the settings of a block, different in more than a turn, a mirror, a shift or an exchange of colourways.

    The most pleasing come first. A design with one of them is written with --take and --into.
    """
    _check_places(sheet, take, into)
    taken = take_in(file)
    pattern, _ = made_pattern(taken)
    size = _size(pattern) if take else (0, 0)
    selection = _selected(pattern, repeat, symmetry, codes, max(most, take or 0))
    if take and len(selection.best) < take:
        raise RefusedError(f"there are only {len(selection.best)} settings to take")
    _tell(taken, selection, most, as_json)
    if sheet:
        write_file(sheet, _drawn(pattern, selection, sheet.suffix.lower()))
    if take and into:
        write_file(into, _changed(taken, size, selection, take).encode())


def _check_places(sheet: Path | None, take: int | None, into: Path | None) -> None:
    if (take is None) != (into is None):
        raise RefusedError(
            "--take says which setting, and --into where to write the design; give both or neither"
        )
    if into and into.exists():
        raise RefusedError(f"{into}: is there already; name a new file")
    if sheet and sheet.suffix.lower() not in KINDS:
        raise RefusedError(f"{sheet}: name a file that ends in {', '.join(KINDS)}")


def _selected(pattern: Pattern, repeat: int, symmetry: str, codes: str | None, most: int) -> Selection:
    from quarterturn.design import Symmetry
    from quarterturn.setting.finder import SearchError, codes_of, find_settings

    wanted = codes.replace(",", " ").split() if codes else ()
    try:
        used = codes_of(pattern.design, pattern.blocks, wanted)
    except SearchError as error:
        others = "; name others with --codes" if error.is_of_code else ""
        raise RefusedError(f"{error}{others}") from error
    return find_settings(pattern.design, pattern.blocks, used, repeat, Symmetry(symmetry), most)


def _tell(taken: Taken, selection: Selection, most: int, as_json: bool) -> None:
    from quarterturn.setting.finder import selection_text

    if as_json:
        tell_json(_record(taken.name, selection))
    else:
        click.echo(selection_text(selection), nl=False)


def _record(name: str, selection: Selection) -> dict[str, object]:
    from quarterturn.setting.finder import SEED

    return {
        "file": name,
        "repeat": selection.size,
        "symmetry": selection.symmetry.value,
        "codes": list(selection.codes),
        "ways": selection.ways,
        "different": selection.different,
        "sampled": selection.sampled,
        "seed": None if selection.sampled is None else SEED,
        "settings": [_setting_record(found) for found in selection.best],
    }


def _setting_record(found: Found) -> dict[str, object]:
    from quarterturn.setting.finder import map_lines

    score = found.score
    return {
        "map": map_lines(found.cells),
        "score": score.total,
        "flow": score.flow,
        "rounds": score.rounds,
        "cloth": score.cloth,
        "balance": score.balance,
    }


def _drawn(pattern: Pattern, selection: Selection, kind: str) -> bytes:
    from quarterturn.publish import sheet_png, sheet_svg, sheets_pdf
    from quarterturn.publish.contact import contact_pages, contact_sheet

    if kind == ".pdf":
        pages = contact_pages(pattern.design, pattern.blocks, selection)
        return sheets_pdf(pages, pages[0].title)
    sheet = contact_sheet(pattern.design, pattern.blocks, selection)
    return sheet_png(sheet, PIXELS_WIDE) if kind == ".png" else sheet_svg(sheet).encode()


def _size(pattern: Pattern) -> tuple[int, int]:
    """Return how many rows and columns the setting has that another is to take the place of."""
    from quarterturn.design import StraightSet

    setting = pattern.design.setting
    if not isinstance(setting, StraightSet):
        raise RefusedError(
            "the design is not set in rows and columns, so that no setting can take their place"
        )
    return setting.size


def _changed(taken: Taken, size: tuple[int, int], selection: Selection, number: int) -> str:
    """Return the text of the design with the setting of a number, in about as many rows and columns as before."""
    from quarterturn.design import Symmetry, write_design
    from quarterturn.setting.finder import map_lines

    setting = selection.setting_like(number, *size)
    slides = setting.symmetry is Symmetry.SLIDE
    changes: dict[str, object] = {
        "setting.map": "\n".join(map_lines(setting.cells)) + "\n",
        "setting.symmetry": None if slides else setting.symmetry.value,
        "setting.across": setting.across,
        "setting.down": setting.down,
    }
    return write_design(taken.content.decode("utf-8-sig"), changes)

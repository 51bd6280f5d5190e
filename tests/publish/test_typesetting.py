"""The typesetter."""

from __future__ import annotations

import pytest

from quarterturn.publish import UnprintableTextError, sheets_pdf, typeset
from quarterturn.publish.typesetting import FONT_PACKAGES, font_folder, fonts
from tests.publish.sheets import every_mark

HEAD = '#set document(title: "t")\n#set text(lang: "en", font: "Source Sans Pro")\n'


def test_only_the_fonts_of_the_program_are_used() -> None:
    families = fonts().families()
    assert {"Source Sans Pro", "Source Serif Pro"} <= set(families)
    folders = tuple(str(font_folder(package)) for package in FONT_PACKAGES)
    assert [f.path for f in fonts().fonts() if f.path and not f.path.startswith(folders)] == []


def test_files_and_inputs_reach_the_text() -> None:
    files = {
        "main": (HEAD + '#import "part.typ": word\n#word #sys.inputs.at("name")').encode(),
        "part.typ": b'#let word = "Hello"',
    }
    [pdf] = typeset(files, inputs={"name": "moon"})
    assert pdf.startswith(b"%PDF-1.7")


def test_each_page_is_a_picture_of_its_own() -> None:
    assert len(typeset({"main": (HEAD + "one\n#pagebreak()\ntwo").encode()}, form="png")) == 2


def test_a_fault_in_the_source_is_told_with_the_compilers_message() -> None:
    with pytest.raises(AssertionError, match="unknown variable: nothing"):
        typeset({"main": b"#nothing"})


def test_a_letter_that_the_fonts_lack_is_named() -> None:
    with pytest.raises(UnprintableTextError, match="漢") as caught:
        sheets_pdf([every_mark("漢")], "title")
    assert caught.value.letters == "漢"


@pytest.mark.parametrize("text", ["¼½¾⅛⅜⅝⅞ ¹⁵⁄₁₆", "′ ″ × ° – − … “ ” ’", "Grüße, été, złoty, ñandú, Þór"])
def test_the_letters_of_a_pattern_can_be_printed(text: str) -> None:
    assert sheets_pdf([every_mark(text)], "title")

"""What the type lacks is named or marked, and what it has comes through untouched."""

import json

import pytest
import typst

from spoolwright.papers import lettering, typesetting
from spoolwright.papers.lettering import ZERO_WIDTH_SPACE, breakable, covers, settable
from tests.unit.papers import samples


@pytest.mark.parametrize(
    "words", ["Grånesvåg", "18 lb ± 0.5 lb", "Ø 24 × 0.8 mm", "Ωμέγα Жанна שלום", "½ “q” – …"]
)
def test_text_that_can_be_set_is_not_touched(words: str) -> None:
    assert settable(words) == words


@pytest.mark.parametrize(
    ("typed", "set_as"),
    [
        ("🐟 on", "[fish] on"),
        ("山田", "□□"),
        ("a\u200db\ufe0f\x00c", "abc"),
        ("A\u030a", "Å"),
        ("a\tb\u3000c", "a b c"),
    ],
)
def test_what_the_type_lacks_is_replaced(typed: str, set_as: str) -> None:
    assert settable(typed) == set_as


def test_a_long_word_may_break_and_a_short_one_may_not() -> None:
    assert breakable("w" * 30) == ZERO_WIDTH_SPACE.join("w" * 30)
    assert breakable("an ordinary sentence of words") == "an ordinary sentence of words"


def test_the_table_is_what_the_typesetter_says() -> None:
    """Every letter of the table is set once: the typesetter itself refuses a letter without a glyph."""
    every = " ".join(chr(code) for code in sorted(lettering._covered()))
    assert typesetting.render("quote", quote_with(every)).startswith(b"%PDF")


def test_the_typesetter_itself_refuses_what_the_table_leaves_out() -> None:
    assert not covers("🐟")
    raw = json.dumps({"data": quote_with("🐟"), "pictures": {}})
    with pytest.raises(typst.TypstError, match="could not be displayed"):
        typst.compile(
            typesetting.TEMPLATES / "quote.typ",
            ignore_system_fonts=True,
            font_paths=[typesetting.FONTS],
            sys_inputs={"paper": raw},
            pdf_standards=[typesetting.STANDARD],
        )


def quote_with(words: str) -> dict[str, object]:
    """The least data of a quote, with these words as the complaint."""
    offer = {"title": "Put right", "plain": "", "total": "1", "time": "", "compared": "", "carried": ""}
    offer |= dict.fromkeys(("works", "promises", "lines", "tax", "left_undone", "warnings", "rests_on"), [])
    return {
        "shop": vars(samples.SHOP), "customer": vars(samples.CUSTOMER), "reel": vars(samples.REEL),
        "number": "1", "date": "", "valid_until": "", "language": "en", "asked": words, "found": [],
        "offers": [offer], "beside": [["Price", "1"]], "cap": "", "law": "", "answer_address": "",
        "cautions": [], "share": "9 times in 10",
    }  # fmt: skip

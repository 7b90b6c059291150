"""The lines of the finder: the words around a hit, and what is marked in them."""

from __future__ import annotations

import pytest

from spoolwright.pages.finder import lines
from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.questions.find import find
from tests.people import owner

LONG = " ".join(f"word{n}" for n in range(100))


def hits(text: str, asked: list[str]) -> list[str]:
    return [piece.text for piece in lines.marked(text, asked) if piece.hit]


@pytest.mark.parametrize(
    ("text", "asked", "marked"),
    [
        ("Tarvak 58R, right-hand", ["58r"], ["58R"]),
        ("Grånesvåg og Øvre", ["granes", "ov"], ["Grånesvåg", "Øvre"]),
        ("catches, catch", ["catch"], ["catches", "catch"]),
        ("a scratch", ["catch"], []),
    ],
)
def test_a_word_is_marked_where_it_begins_so(text: str, asked: list[str], marked: list[str]) -> None:
    assert hits(text, asked) == marked


def test_nothing_of_the_text_is_lost() -> None:
    text = "  Tarvak\t58R – «right»-hand… "
    assert "".join(piece.text for piece in lines.marked(text, ["right"])) == text


def test_the_words_around_the_hit_are_shown_and_the_cut_is_said() -> None:
    around = lines.around(LONG, ["word50"])
    assert around.startswith("… word42 ")
    assert around.endswith(" …")
    assert "word50" in around
    assert lines.around("short words", ["x"]) == "short words"


@pytest.mark.django_db
def test_a_customer_leads_to_their_own_page() -> None:
    ragna = add_customer(hand=owner(), name="Ragna Solbu")
    (line,) = lines.lines("ragna", find("ragna"))
    assert line.address == f"/customers/{ragna.pk}/"

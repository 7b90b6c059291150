"""Search over everything: whole words and beginnings, accents or none, best first, on either database."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.questions.find import find
from tests.shop import walk

pytestmark = pytest.mark.django_db


def kinds(text: str) -> list[str]:
    return [found.kind for found in find(text)]


def test_customers_reels_tags_and_words_of_entries(hand: Any) -> None:
    visit = walk.arrived(hand)
    entry = write_finding(
        hand=hand, visit=visit, part="pawl", evidence="one-sided shine at the crossover"
    ).entry
    assert set(kinds("Solbu")) == {"customer", "reel", "visit"}
    assert kinds("5801") == ["reel"]
    assert kinds("crossover shine") == ["entry"]
    assert find("crossover")[0].ref == entry.pk
    assert find("crossover")[0].visit_id == visit.pk
    assert "visit" in kinds(f"{visit.tag} tarvak")


@pytest.mark.parametrize("typed", ["granesvag", "Grånesvåg", "GRÅNES", "moloveien gra", "  moloveien,  grå-"])
def test_accents_capitals_and_signs_do_not_matter(hand: Any, typed: str) -> None:
    add_customer(hand=hand, name="Ragna Solbu", address="Moloveien 3, Grånesvåg")
    assert kinds(typed) == ["customer"]


def test_every_word_must_be_there(hand: Any) -> None:
    add_customer(hand=hand, name="Ragna Solbu")
    assert find("Ragna Lien") == ()
    assert find("agna") == ()
    assert find("") == find("  ") == find('"*()-!?') == ()


def test_a_name_ranks_before_a_mention(hand: Any) -> None:
    visit = walk.arrived(hand, name="Jonna Fure", reel="Ostrell S71")
    for number in range(3):
        write_word(
            hand=hand, visit=visit, words=f"her neighbour Varg Holmen rang, time {number}, about it all"
        )
    varg = add_customer(hand=hand, name="Varg Holmen")
    found = find("Holmen")
    assert (found[0].kind, found[0].ref) == ("customer", varg.pk)
    assert len(found) == 4
    assert len(find("Holmen", limit=2)) == 2


@pytest.mark.parametrize(
    "typed",
    [
        '" OR 1=1',
        "sol*",
        "NEAR(a b)",
        "a AND NOT b",
        "'); DROP TABLE shop_entry;--",
        "a:b & !c | <->",
        "\\",
        "%",
        "x" * 500,
    ],
)
def test_what_looks_like_a_command_is_only_words(hand: Any, typed: str) -> None:
    walk.arrived(hand)
    find(typed)
    assert find("Solbu")


def test_script_in_a_word_is_kept_and_found_as_words(hand: Any) -> None:
    visit = walk.arrived(hand)
    typed = "<script>alert('crossover')</script>"
    entry = write_word(hand=hand, visit=visit, words=typed).entry
    (found,) = find("alert crossover")
    assert found.words == typed
    entry.refresh_from_db()
    assert entry.words == typed


def test_two_hundred_entries_and_the_right_one_is_found(hand: Any) -> None:
    visit = walk.arrived(hand)
    for number in range(200):
        write_word(hand=hand, visit=visit, words=f"note {number} about grease lot G2-{number:03d}")
    (found,) = find("lot 137")
    assert found.words.startswith("note 137")


def test_papers_are_found_by_the_numbers_that_stand_on_them(hand: Any) -> None:
    walk.agreed(hand)
    visit = walk.agreed(hand, name="Liv Langnesvik")
    quote = walk.quoted(hand, visit, walk.option(walk.COG, key="cog"))
    bill = walk.billed(hand, visit)
    assert find(f"quote {visit.tag}-2")[0].ref == quote.entry_id
    assert find(f"invoice {bill.number}")[0].ref == bill.entry_id

"""Every place of the bench can be said in a sentence, and has a line of its own when it is empty."""

from spoolwright.pages.words import places
from spoolwright.shop.questions.choices import PLACES


def test_every_place_can_be_said() -> None:
    assert tuple(places.THERE) == PLACES
    assert places.there("asked shelf") == "on the asked shelf"


def test_every_place_has_its_own_words_when_it_is_empty() -> None:
    said = [places.empty(place) for place in PLACES]
    assert len(set(said)) == len(PLACES)
    assert all(line.endswith(".") for line in said)

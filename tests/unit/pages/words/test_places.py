"""Every place of the bench can be said in a sentence, and has a line of its own when it is empty."""

from datetime import UTC, datetime
from types import SimpleNamespace

import pytest

from spoolwright.pages.words import places
from spoolwright.shop.questions.choices import PLACES


def test_every_place_can_be_said() -> None:
    assert tuple(places.THERE) == PLACES
    assert places.there("asked shelf") == "on the asked shelf"


def test_every_place_has_its_own_words_when_it_is_empty() -> None:
    said = [places.empty(place) for place in PLACES]
    assert len(set(said)) == len(PLACES)
    assert all(line.endswith(".") for line in said)


CAME = datetime(2001, 6, 3, 9, tzinfo=UTC)


@pytest.mark.parametrize(
    ("went", "said"),
    [
        (None, "since 3 June 2001"),
        (CAME.replace(hour=15), "3 June 2001"),
        (CAME.replace(day=9), "3 June 2001 to 9 June 2001"),
    ],
)
def test_the_days_of_a_visit(went: datetime | None, said: str) -> None:
    assert places.days_here(SimpleNamespace(arrived_at=CAME, sent_home_at=went)) == said

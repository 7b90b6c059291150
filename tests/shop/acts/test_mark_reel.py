"""Identity marks are added one by one, and search knows the reel by each."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.add_customer import add_customer
from spoolwright.shop.acts.add_reel import NewReel, add_reel
from spoolwright.shop.acts.mark_reel import mark_reel
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.questions.find import find

pytestmark = pytest.mark.django_db


@pytest.fixture
def aslak(hand: Any) -> Any:
    return add_customer(hand=hand, name="Aslak Rein")


def test_marks_grow(hand: Any, aslak: Any) -> None:
    reel = add_reel(hand=hand, customer=aslak, reel=NewReel(described="Tarvak 52", serial="A 11"))
    mark_reel(hand=hand, reel=reel, kind="engraving", words="A. R. 1974")
    assert [m.words for m in reel.marks.order_by("id")] == ["A 11", "A. R. 1974"]
    assert [f.ref for f in find("1974")] == [reel.pk]
    with pytest.raises(FieldWasRefused):
        mark_reel(hand=hand, reel=reel, kind="smell", words="fish")
    with pytest.raises(WordsWereMissing):
        mark_reel(hand=hand, reel=reel, kind="serial", words="")

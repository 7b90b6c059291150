"""The link for a first start opens once, for a short time, and the shop keeps only its hash."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_sign_in_link import make_sign_in_link
from spoolwright.shop.acts.use_sign_in_link import LinkDidNotOpen, use_sign_in_link
from tests import people
from tests.shop.at_once import at_once


@pytest.mark.django_db
def test_it_opens_once(owner: Any) -> None:
    token = make_sign_in_link(hand=None, person=owner)
    assert use_sign_in_link(token=token) == owner
    with pytest.raises(LinkDidNotOpen):
        use_sign_in_link(token=token)


@pytest.mark.django_db
def test_it_runs_out(owner: Any) -> None:
    start = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
    with clock.as_of(start):
        token, other = (make_sign_in_link(hand=None, person=owner, minutes=15) for _ in range(2))
    with clock.as_of(start + timedelta(minutes=14, seconds=59)):
        assert use_sign_in_link(token=token) == owner
    with clock.as_of(start + timedelta(minutes=15)), pytest.raises(LinkDidNotOpen):
        use_sign_in_link(token=other)


@pytest.mark.django_db
@pytest.mark.parametrize("token", ["", "guess", "ø" * 50, "' OR 1=1 --", "\x00"])
def test_a_guess_opens_nothing(owner: Any, token: str) -> None:
    make_sign_in_link(hand=None, person=owner)
    with pytest.raises(LinkDidNotOpen):
        use_sign_in_link(token=token)


@pytest.mark.django_db
def test_who_has_left_does_not_come_in(owner: Any, hand: Any) -> None:
    from spoolwright.shop.acts.change_person import change_person

    token = make_sign_in_link(hand=owner, person=hand)
    change_person(hand=owner, person=hand, is_active=False)
    with pytest.raises(LinkDidNotOpen):
        use_sign_in_link(token=token)


def test_of_four_who_use_it_at_once_one_comes_in(own_database: None) -> None:
    owner = people.owner()
    token = make_sign_in_link(hand=None, person=owner)
    came = at_once([lambda: use_sign_in_link(token=token)] * 4)
    assert [who for who in came if who == owner] == [owner]
    assert sum(isinstance(who, LinkDidNotOpen) for who in came) == 3

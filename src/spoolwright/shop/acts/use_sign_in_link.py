"""Use a sign-in link: it opens once, before it runs out, for somebody who is still with us."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_sign_in_link import hashed
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.people import Person, SignInLink


class LinkDidNotOpen(Refused):
    """Used, run out, or never made: a stranger is not told which."""

    def __init__(self) -> None:
        super().__init__(
            "This link does not open any more: each works once, for a short time. Ask for a new one."
        )


@transaction.atomic
def use_sign_in_link(*, token: str) -> Person:
    """The person who may come in. The claim is one conditional update, so two at once cannot both win."""
    now = clock.now()
    # No join in the claim: PostgreSQL would then look at the row as it was before the other one used it.
    waiting = SignInLink.objects.filter(token_hash=hashed(token), used_at=None, expires_at__gt=now)
    if waiting.update(used_at=now) != 1:
        raise LinkDidNotOpen
    person = Person.objects.get(sign_in_links__token_hash=hashed(token))
    if not person.is_active:
        raise LinkDidNotOpen
    return person

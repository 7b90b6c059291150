"""Make a link that signs one person in once. The token is handed out and forgotten; its hash is kept."""

from __future__ import annotations

import hashlib
import secrets
from datetime import timedelta

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.put import our_hand, owners_hand
from spoolwright.shop.records.people import Person, SignInLink


@transaction.atomic
def make_sign_in_link(*, hand: Person | None, person: Person, minutes: int = 15) -> str:
    """The token for the link. `hand` None: the machine that the shop runs on, at its own command line."""
    if hand is not None and our_hand(hand).pk != person.pk:
        owners_hand(hand, "makes a link for somebody else")
    token = secrets.token_urlsafe(32)
    made_at = clock.now()
    SignInLink.objects.create(
        person=person,
        token_hash=hashed(token),
        made_at=made_at,
        expires_at=made_at + timedelta(minutes=minutes),
    )
    return token


def hashed(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()

"""A promise has a bound, an option stands once in a quote, below the code too."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import IntegrityError, transaction

from spoolwright.shop.records.quote import QuoteOption, QuotePromise
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_promise_without_a_bound_is_refused(hand: Any) -> None:
    option = walk.quoted(hand, walk.arrived(hand)).options.get()
    with pytest.raises(IntegrityError), transaction.atomic():
        QuotePromise(option=option, position=9, kind="mass", dimension="mass").save()
    QuotePromise(option=option, position=9, kind="mass", dimension="mass", high_si=0.4).save()


def test_an_option_stands_once(hand: Any) -> None:
    quote = walk.quoted(hand, walk.arrived(hand))
    held = {"key": "put right", "title": "x", "position": 2, "minutes": 1, "total_minor": 1, "whole_minor": 1}
    with pytest.raises(IntegrityError), transaction.atomic():
        QuoteOption(quote=quote, **held).save()

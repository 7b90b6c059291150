"""What was expected when it was offered comes back as it stood."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from spoolwright.shop.acts.send_quote import OfferedPromise
from spoolwright.shop.questions.predictions import expected_of, prediction_of
from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_it_comes_back_to_the_last_figure(hand: Any) -> None:
    expected = walk.expected()
    quote = walk.quoted(hand, walk.arrived(hand), replace(walk.option(), prediction=expected))
    kept = prediction_of(quote.options.get())
    assert kept is not None
    assert kept.values == dict(expected.values)
    assert kept.star_turns == expected.star_turns
    assert kept.limited_by == expected.limited_by
    assert kept.carried is None


def test_what_would_carry_the_pull_is_kept_beside_it(hand: Any) -> None:
    option = replace(walk.option(), prediction=walk.expected(), carried=walk.carries())
    kept = prediction_of(walk.quoted(hand, walk.arrived(hand), option).options.get())
    assert kept is not None
    assert kept.carried == walk.carries()
    assert kept.carried is not None


def test_what_was_expected_of_a_promise_goes_with_the_radius_at_which_it_was_promised(hand: Any) -> None:
    value = walk.expected().values["pull_full_spool"]
    promise = OfferedPromise("pull_full_spool", "force", low=1.0, middle=2 * value.middle)
    option = replace(walk.option(promises=(promise,)), prediction=walk.expected())
    told = expected_of(walk.quoted(hand, walk.arrived(hand), option).options.get().promises.get())
    assert told is not None
    assert told.middle == pytest.approx(2 * value.middle)
    assert told.deviation == pytest.approx(2 * value.deviation)


def test_of_a_promise_without_a_prediction_nothing_was_expected(hand: Any) -> None:
    promise = walk.quoted(hand, walk.arrived(hand)).options.get().promises.first()
    assert expected_of(promise) is None


def test_an_option_without_a_sheet_behind_it_has_none(hand: Any) -> None:
    assert prediction_of(walk.quoted(hand, walk.arrived(hand)).options.get()) is None

"""What is added to a proof by hand."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import QueryDict

from spoolwright.judgement.release_gate import BY_HAND
from spoolwright.pages.proof.forms import CHANGED, ProofForm, paired
from tests.shop import walk

pytestmark = pytest.mark.django_db


def sent(**values: str) -> QueryDict:
    data = QueryDict(mutable=True)
    data.update(values)
    return data


def test_what_can_be_tried_is_what_this_reel_has(visit: Any, bench: Any) -> None:
    form = ProofForm(None, bench(visit))
    here = form.bench.visit.place
    assert [key for key, _ in form.fields["tried"].choices] == list(BY_HAND)
    assert form.fields["moved_to"].choices[0] == ("", f"stays: {here}")


def test_what_was_tried_goes_into_the_ink_in_words(visit: Any, bench: Any) -> None:
    form = ProofForm(sent(tried="click", pairs="", seen="4"), bench(visit))
    assert form.is_valid(), form.errors
    assert [(one.key, one.words) for one in form.tried_by_hand()] == [("click", BY_HAND["click"])]


def test_pairs_that_changed_are_refused_once_and_then_known(hand: Any, visit: Any, bench: Any) -> None:
    walk.read(hand, visit, "pull_full", 6.9 * walk.G, 0.5, "force")
    form = ProofForm(sent(pairs=""), bench(visit))
    assert not form.is_valid()
    assert form.non_field_errors() == [CHANGED]
    assert form["pairs"].value() == paired(bench(visit))

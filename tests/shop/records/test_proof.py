"""A row of a proof holds promise, reading, decision and rule together."""

from __future__ import annotations

from typing import Any

import pytest

from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_a_row_says_all_of_it(hand: Any) -> None:
    row = walk.everything(hand).entries.get(kind="proof").proof.rows.get()
    assert (row.promise.kind, row.measured.kind, row.decision) == ("pull_full", "pull_full", "shown")
    assert row.before.reading.entry.seq < row.measured.reading.entry.seq
    assert row.words.startswith("Promised 6.00 kg to 8.00 kg")
    assert row.rule

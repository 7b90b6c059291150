"""Work holds its parts and lubricants in the order in which they were written."""

from __future__ import annotations

from typing import Any

import pytest

from tests.shop import walk

pytestmark = pytest.mark.django_db


def test_rows_keep_their_order(hand: Any) -> None:
    work = walk.everything(hand).entries.get(kind="work").work
    assert [part.what for part in work.parts.all()] == ["pawl", "check spring"]
    assert [part.source for part in work.parts.all()] == ["new", "own-made"]
    assert [done.position for done in work.done.all()] == [0, 1]
    assert work.left_over == ""

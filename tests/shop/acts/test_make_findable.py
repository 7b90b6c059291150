"""A thing has one row in search, and what is said of it later takes the place of what was said before."""

from __future__ import annotations

from typing import Any

import pytest

from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.questions.find import find
from spoolwright.shop.records.findable import Findable

pytestmark = pytest.mark.django_db


def test_said_again_it_is_still_one_row(db: Any) -> None:
    make_findable(kind="customer", ref=7, title="Sigrun Tveit", words=["river Tysna", "", "fly"])
    assert find("tysna")[0].words == "river Tysna\nfly"
    make_findable(kind="customer", ref=7, title="Sigrun Tveit", words=["lake Øvre Fjølvatn"])
    assert Findable.objects.count() == 1
    assert find("tysna") == ()
    assert [f.title for f in find("ovre fjol")] == ["Sigrun Tveit"]
    Findable.objects.all().delete()
    assert find("Sigrun") == ()

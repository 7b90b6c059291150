"""Values with what stands behind them; an outlier with how far out it is and what it keeps."""

from __future__ import annotations

import pytest

from spoolwright.judgement.book_chapter import Interval, Weighed
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import Family, Kind
from spoolwright.judgement.book_words import ABOUT, outlier_said, span_said, value_said
from spoolwright.judgement.shop_book import CHAPTERS


def kind(family: Family) -> Kind:
    return Kind("k", family, "k", 1.0, 0.1, 0.5, 1.5)


@pytest.mark.parametrize(
    ("family", "value", "said"),
    [("friction", 0.15749, "0.157"), ("bearing", 0.922, "0.92"), ("minutes", 3.22, "3.2 min"),
     ("minutes", 31.4, "31 min"), ("start-up", 1.0799, "1.080")],
)  # fmt: skip
def test_a_value_is_said_as_its_kind_is_read(family: Family, value: float, said: str) -> None:
    assert value_said(kind(family), value) == said


def test_the_unit_stands_once_behind_both_ends() -> None:
    assert span_said(kind("minutes"), Interval(9.0, 8.0, 11.0, 0.1)) == "8.0 to 11 min"


def test_every_chapter_says_what_it_is() -> None:
    assert set(ABOUT) == set(CHAPTERS)


def test_an_outlier_says_how_far_and_which_way() -> None:
    low = outlier_said(Weighed(Seen((), -0.5, 0.01), 0.0017, 3.14, 0.68))
    assert "3.1 deviations" in low
    assert "below the sheet" in low
    assert "68 % of its weight" in low
    assert "less than 1 in a million" in outlier_said(Weighed(Seen((), 0.5, 0.01), 1e-12, 7.1, 0.1))
    assert outlier_said(Weighed(Seen((), 0.0, 0.01), 0.5, 0.67)) == ""

"""The chapters in their order, the most proved coefficients first."""

from __future__ import annotations

from typing import Any

from spoolwright.judgement.book_kinds import FAMILIES
from spoolwright.pages.book.chapters import parts, rate_line, silent
from spoolwright.shop.questions.book import shop_book
from tests.people import bench_hand
from tests.shop import walk
from tests.shop.proved_reel import FAULT


def test_five_chapters_with_their_lines(proof: Any) -> None:
    told = parts(shop_book())
    assert [part.title for part in told] == list(FAMILIES.values())
    friction = told[0]
    assert friction.proofs == 2
    assert [line.proofs for line in friction.lines][:2] == ["1 proof", "1 proof"]
    assert all(" to " in line.span for part in told for line in part.lines)


def test_a_rate_is_said_of_a_hundred_reels(proof: Any) -> None:
    rate = shop_book().rate(FAULT)
    assert rate is not None
    assert rate_line(rate).now.endswith("of 100 reels")


def test_what_taught_nothing_says_why_and_where(proof: Any) -> None:
    walk.worked(bench_hand(), proof.visit)
    (told,) = silent(shop_book())
    assert "Not on the list of works" in told.why
    assert told.diary.startswith(f"/diary/{proof.visit.tag}/#entry-")

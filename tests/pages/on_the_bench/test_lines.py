"""One line a reel: where it leads, since when it waits, what a free hand takes up first."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from spoolwright.pages.on_the_bench.lines import Line, first_of, laid_out, not_to_be_turned
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.questions.by_number import visit as visit_by_id
from spoolwright.shop.questions.on_the_bench import on_the_bench
from tests.pages.coming import came
from tests.people import bench_hand
from tests.shop import walk

pytestmark = pytest.mark.django_db
NOW = datetime(2026, 6, 3, 9, 0, tzinfo=UTC)
TODAY = NOW.date()


@pytest.fixture(autouse=True)
def wednesday() -> Iterator[None]:
    with clock.as_of(NOW):
        yield


def lines() -> dict[str, Line]:
    laid = laid_out(on_the_bench(NOW), {})
    return {line.reel.customer: line for place in laid for line in place.lines}


def promised(visit: Any, likely: int, late: int) -> None:
    fresh = visit_by_id(visit.pk)
    days = (TODAY + timedelta(days=likely), TODAY + timedelta(days=late))
    promise_date(hand=bench_hand(), visit=fresh, p50=days[0], p90=days[1], version=fresh.version)


def test_what_waits_at_its_place_waits_since_it_was_put_there() -> None:
    with clock.as_of(NOW - timedelta(days=9)):
        visit = walk.agreed(bench_hand())
    with clock.as_of(NOW - timedelta(days=2)):
        fresh = visit_by_id(visit.pk)
        move_reel(hand=bench_hand(), visit=fresh, to="waits for a part", version=fresh.version)
    line = lines()["Ragna Solbu"]
    assert (line.reel.waits_for, line.there) == ("a part", "waiting for a part")
    assert line.since == NOW - timedelta(days=2)


def test_a_promise_past_the_day_it_is_needed_is_said() -> None:
    visit = came("Sigrun Tveit", needed_by=TODAY + timedelta(days=9))
    assert not lines()["Sigrun Tveit"].may_come_too_late
    promised(visit, 3, 9)
    assert not lines()["Sigrun Tveit"].may_come_too_late
    promised(visit, 3, 10)
    assert lines()["Sigrun Tveit"].may_come_too_late


def test_the_first_is_the_dunked_one_then_who_waits_then_the_nearest_promise() -> None:
    late, near = came("Late"), came("Near")
    promised(late, 8, 20)
    promised(near, 2, 5)
    first = [first_name()]
    came("Peder Lien", while_you_wait=True)
    first.append(first_name())
    came("Jonna Fure", under_water_at=NOW - timedelta(hours=1))
    first.append(first_name())
    assert first == ["Near", "Peder Lien", "Jonna Fure"]


def first_name() -> str:
    line = first_of(laid_out(on_the_bench(NOW), {}))
    return line.reel.customer if line else "nobody"


def test_what_others_must_move_on_is_never_first() -> None:
    hand = bench_hand()
    walk.quoted(hand, came("Asked"))
    assert first_name() == "nobody"
    came("Here")
    assert first_name() == "Here"


def test_the_dunked_ones_are_named_apart() -> None:
    came()
    came("Jonna Fure", under_water_at=NOW - timedelta(hours=1))
    named = not_to_be_turned(laid_out(on_the_bench(NOW), {}))
    assert [line.reel.customer for line in named] == ["Jonna Fure"]
    assert "without turning the handle" in named[0].reel.next.words

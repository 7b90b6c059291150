"""The ink rule: no sequence of acts, refused ones among them, ever changes a row that was written before."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from django.db import connection, transaction
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from spoolwright.shop.acts.move_reel import move_reel
from spoolwright.shop.acts.promise_date import promise_date
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.acts.take_payment import take_payment
from spoolwright.shop.acts.write_finding import write_finding
from spoolwright.shop.acts.write_word import write_word
from spoolwright.shop.questions.choices import PLACES
from spoolwright.shop.questions.readings import to_prove
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.ink import inked_tables
from spoolwright.shop.records.visit import Visit
from tests import people
from tests.shop import walk

pytestmark = pytest.mark.django_db


def rows() -> dict[str, dict[Any, Any]]:
    held: dict[str, dict[Any, Any]] = {}
    with connection.cursor() as cursor:
        for table in inked_tables():
            cursor.execute(f"SELECT {table.unique[0][0]}, * FROM {table.name}")
            held[table.name] = {row[0]: row[1:] for row in cursor.fetchall()}
    return held


def _proof(hand: Any, visit: Any, number: int) -> Any:
    ready = [row for row in to_prove(visit.pk) if row.measured]
    pairs = [ProofPair(row.promise, row.measured, row.before) for row in ready]
    return prove(hand=hand, visit=visit, pairs=pairs)


def _answer(hand: Any, visit: Any, number: int) -> Any:
    quote = visit.entries.filter(kind="quote").order_by("-seq").first()
    if quote is None:
        return None
    return walk.answered(hand, quote.quote, cap=[None, 1200_00, 5000_00][number % 3])


def _strike(hand: Any, visit: Any, number: int) -> Any:
    entries = list(Entry.objects.filter(visit=visit).order_by("seq"))
    return strike_entry(hand=hand, entry=entries[number % len(entries)], reason="struck by chance")


def _move(hand: Any, visit: Any, number: int) -> Any:
    fresh = Visit.objects.get(pk=visit.pk)
    return move_reel(hand=hand, visit=visit, to=PLACES[number % 9], version=fresh.version - (number % 2))


def _promise(hand: Any, visit: Any, number: int) -> Any:
    from datetime import date, timedelta

    day = date(2026, 3, 2)
    version = Visit.objects.get(pk=visit.pk).version
    return promise_date(hand=hand, visit=visit, p50=day, p90=day + timedelta(number - 3), version=version)


ACTS: dict[str, Callable[[Any, Any, int], Any]] = {
    "word": lambda hand, visit, n: write_word(hand=hand, visit=visit, words=" " * (n % 2) or "word", seen=n),
    "finding": lambda hand, visit, n: write_finding(
        hand=hand, visit=visit, part="pawl", fault=f"F{n:02d}", evidence="seen"
    ),
    "reading": lambda hand, visit, n: walk.read(hand, visit, "pull_full", 50.0 + n, 0.1, "force"),
    "reading without conditions": lambda hand, visit, n: walk.read(
        hand, visit, "pull_full", 50.0, 0.1, "force", conditions={"radius": None}
    ),
    "quote": lambda hand, visit, n: walk.quoted(hand, visit),
    "answer": _answer,
    "work": lambda hand, visit, n: walk.worked(hand, visit),
    "proof": _proof,
    "invoice": lambda hand, visit, n: walk.billed(hand, visit, *walk.CHARGES[: n % 5 + 1]),
    "payment": lambda hand, visit, n: take_payment(hand=hand, visit=visit, amount_minor=n * 100),
    "strike": _strike,
    "move": _move,
    "promise": _promise,
    "dispatch": lambda hand, visit, n: walk.gone(hand, visit),
}


@given(
    steps=st.lists(st.tuples(st.sampled_from(sorted(ACTS)), st.integers(0, 80), st.booleans()), max_size=14)
)
@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_no_sequence_of_acts_changes_what_was_written(
    steps: list[tuple[str, int, bool]], tmp_path: Any
) -> None:
    owner, hand = people.owner(), people.bench_hand()
    with transaction.atomic():
        visit = walk.arrived(owner)
        walk.answered(owner, walk.quoted(owner, visit))
        before = rows()
        for name, number, by_owner in steps:
            try:
                ACTS[name](owner if by_owner else hand, visit, number)
                refused = False
            except Refused:
                refused = True
            after = rows()
            for table, held in before.items():
                assert {key: after[table].get(key) for key in held} == held, (name, table)
            assert not refused or after == before, f"{name} was refused and yet wrote something"
            before = after
        seqs = list(Entry.objects.filter(visit=visit).order_by("seq").values_list("seq", flat=True))
        assert seqs == list(range(1, len(seqs) + 1))
        transaction.set_rollback(True)

"""The diary holds everything that was written, typed, with strikes and files, in few queries."""

from __future__ import annotations

from typing import Any

import pytest
from django.db import connection
from django.test.utils import CaptureQueriesContext

from spoolwright.shop.questions.diary import diary
from tests.shop import walk

pytestmark = pytest.mark.django_db

WHOLE = [
    "arrival",
    "finding",
    "reading",
    "quote",
    "answer",
    "word",
    "work",
    "reading",
    "proof",
    "word",
    "invoice",
    "word",
    "dispatch",
]


def read_all(page: Any) -> list[Any]:
    """Touch everything that a page would show."""
    seen: list[Any] = [page.customer.name, page.next, page.waiting, page.agreed.total_minor]
    rows = {
        "arrival": lambda p: [c.what for c in p.contents.all()],
        "reading": lambda p: [(v.kind, p.conditions, p.attachment) for v in p.values.all()],
        "quote": lambda p: [
            (
                o.title,
                [w.title for w in o.works.all()],
                [x.what for x in o.lines.all()],
                [r.kind for r in o.promises.all()],
            )
            for o in p.options.all()
        ],
        "answer": lambda p: (p.quote.entry.seq, p.option and p.option.title),
        "work": lambda p: [list(p.done.all()), list(p.parts.all()), list(p.lubricants.all())],
        "proof": lambda p: [
            *((r.promise.option.title, r.measured.reading.entry.seq, r.before) for r in p.rows.all()),
            *((sign.entry.author.shown, hasattr(sign.entry, "strike")) for sign in p.signs.all()),
            *(check.words for check in p.checks.all()),
        ],
        "invoice": lambda p: (p.customer.name, [x.what for x in p.lines.all()]),
    }
    for b in page.blocks:
        seen += [
            b.entry.author.shown,
            b.strike and b.strike.author.shown,
            [a.attachment.stored_as for a in b.attached],
        ]
        seen.append(rows[b.kind](b.part) if b.kind in rows else b.part)
    return seen


def test_everything_is_there_in_order(hand: Any) -> None:
    visit = walk.everything(hand)
    page = diary(visit.pk)
    assert [b.kind for b in page.blocks] == WHOLE
    assert [b.entry.seq for b in page.blocks] == list(range(1, 14))
    parts = [type(b.part).__name__ for b in page.blocks]
    assert parts[5] == "Payment"
    assert parts[11] == "NoneType"
    assert page.blocks[11].strike.reason == "written in the wrong diary"
    assert page.blocks[1].attached[0].caption == "the tip"
    assert page.last_seq == 13


def test_a_long_diary_takes_no_more_queries_than_a_short_one(hand: Any) -> None:
    visit = walk.everything(hand)
    with CaptureQueriesContext(connection) as short:
        read_all(diary(visit.pk))
    from spoolwright.shop.acts.strike_entry import strike_entry

    dispatch = visit.entries.get(kind="dispatch")
    strike_entry(hand=hand, entry=dispatch, reason="still here")
    for number in range(6):
        walk.read(hand, visit, "pull_full", 60.0 + number, 0.5, "force")
        walk.answered(hand, walk.quoted(hand, visit, walk.option(walk.COG, key="cog")), cap=None)
        walk.worked(hand, visit)
    with CaptureQueriesContext(connection) as long:
        assert len(read_all(diary(visit.pk))) > 100
    assert len(long) == len(short) <= 28


def test_no_such_diary() -> None:
    assert diary(1) is None

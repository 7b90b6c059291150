"""The verb book: every coefficient, one with its proofs, and the trial whether it keeps its word."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from typing import Any

import pytest

from spoolwright.bench.unreadable import Unreadable
from spoolwright.command import book
from spoolwright.command.__main__ import build_parser, main
from spoolwright.judgement.book_evidence import Learnt
from spoolwright.judgement.book_fit import Seen
from spoolwright.judgement.book_kinds import Kind
from spoolwright.judgement.shop_book import Aside, ShopBook, bind
from tests.filled import FilledShop

FELT = Kind("friction-felt", "friction", "Friction of felt", 0.18, 0.09, 0.14, 0.22)


def bound(*logs: float, aside: tuple[Aside, ...] = ()) -> ShopBook:
    learnt = [
        Learnt((FELT,), Seen(((FELT.key, 1.0),), log, 0.003, instrument="S1", entry=n))
        for n, log in enumerate(logs, 1)
    ]
    return bind(learnt, aside, known=[FELT])


@pytest.fixture
def learned() -> ShopBook:
    return bound(0.02, 0.05, 0.0, 0.03, -0.02, 0.7, 0.04, aside=(Aside(7, "", "wet felt"),))


def test_it_takes_a_coefficient_or_none() -> None:
    args = build_parser(["book"]).parse_args(["book", FELT.key, "--data", "x", "--json"])
    assert (args.coefficient, args.data, args.json, args.trial) == (FELT.key, "x", True, False)
    assert build_parser(["book"]).parse_args(["book"]).coefficient is None


def test_the_whole_book_in_words(learned: ShopBook) -> None:
    told = "\n".join(book.in_words(learned))
    assert "Friction of felt: 0.18" in told
    assert "6 proofs; before 0.155 to 0.209  [friction-felt]" in told
    assert "S1: 6 proofs lean" in told


def test_an_empty_book_says_so() -> None:
    assert "No proof so far" in "\n".join(book.in_words(bind(())))


def test_one_coefficient_names_its_outlier_and_what_is_aside(learned: ShopBook) -> None:
    told = "\n".join(book.one_in_words(learned, FELT.key))
    assert "Entry 6: alone it says 0.362" in told
    assert "Outlier:" in told
    assert "Entry 7 is set aside: wet felt" in told
    data: Any = book.one_as_data(learned, FELT.key)
    assert [one["entry"] for one in data["behind"] if one["outlier"]] == [6]
    assert data["set_aside"] == [{"entry": 7, "reason": "wet felt"}]
    assert data["now"]["low"] < data["now"]["middle"] < data["now"]["high"]


def test_another_name_is_refused_with_those_that_there_are(learned: ShopBook) -> None:
    with pytest.raises(Unreadable, match="friction-felt"):
        book.one_as_data(learned, "friction-cork")


def test_the_trial_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["book", "--trial", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["proofs"] == 2000
    assert 0.85 <= told["share"] <= 0.95
    assert "2,000 new proofs" in next(iter(book.trial_in_words(told)))


def test_the_invented_workshop_has_a_book(filled_shop: FilledShop) -> None:
    words = [sys.executable, "-m", "spoolwright.command", "book", "--json", "--data", str(filled_shop.data)]
    env = {key: value for key, value in os.environ.items() if not key.startswith(("SPOOLWRIGHT_", "DJANGO_"))}
    typed = subprocess.run(words, capture_output=True, text=True, check=True, timeout=120, env=env)
    told = json.loads(typed.stdout)
    assert told["proofs"] > 100
    assert {one["key"].partition("-")[0] for one in told["coefficients"]} >= {
        "friction",
        "bearing",
        "minutes",
    }

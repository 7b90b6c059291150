"""An answer has who, when, by which way, the exact words and the cap. Silence is not a yes."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

import pytest

from spoolwright.shop.acts.record_answer import (
    AnswerWasSilent,
    CapWasBelowTheQuote,
    OptionWasNotOffered,
    QuoteWasStruck,
    Said,
    record_answer,
)
from spoolwright.shop.acts.refused import FieldWasRefused, WordsWereMissing
from spoolwright.shop.acts.strike_entry import strike_entry
from spoolwright.shop.questions.agreed import agreed
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def visit(hand: Any) -> Any:
    return walk.arrived(hand)


@pytest.fixture
def quote(hand: Any, visit: Any) -> Any:
    return walk.quoted(hand, visit)


def say(hand: Any, quote: Any, **changed: Any) -> Any:
    option = changed.pop("option", quote.options.first())
    usual = Said("Ragna Solbu", "telephone", "yes, up to 1,200", 1200_00)
    return record_answer(hand=hand, quote=quote, option=option, said=replace(usual, **changed)).entry.answer


def test_it_is_kept_word_for_word(hand: Any, quote: Any) -> None:
    when = datetime(2026, 4, 7, 16, 52, tzinfo=UTC)
    answer = say(hand, quote, exact_words="  ja, opp til 1 200 — «greit»\n", answered_at=when)
    answer.refresh_from_db()
    assert answer.exact_words == "  ja, opp til 1 200 — «greit»\n"
    assert (answer.answered_at, answer.who, answer.cap_minor) == (when, "Ragna Solbu", 1200_00)


def test_silence_is_not_a_yes(hand: Any, quote: Any) -> None:
    with pytest.raises(AnswerWasSilent):
        say(hand, quote, exact_words=" \n ")
    with pytest.raises(WordsWereMissing):
        say(hand, quote, who="")
    with pytest.raises(FieldWasRefused):
        say(hand, quote, channel="telepathy")
    assert not agreed(quote.entry.visit_id).is_anything


def test_a_no_agrees_to_nothing(hand: Any, visit: Any, quote: Any) -> None:
    assert not say(hand, quote, option=None, cap_minor=None, exact_words="too dear, send it back").is_yes
    held = agreed(visit.pk)
    assert (held.answers, held.said_no, held.total_minor) == ((), True, 0)


def test_the_last_answer_to_a_quote_counts_and_the_first_is_kept(hand: Any, visit: Any, quote: Any) -> None:
    say(hand, quote)
    say(hand, quote, option=None, cap_minor=None, exact_words="no, I have thought about it")
    assert agreed(visit.pk).said_no
    say(hand, quote, cap_minor=1150_00, exact_words="oh well, yes, up to 1,150")
    held = agreed(visit.pk)
    assert (held.cap_minor, len(held.answers)) == (1150_00, 1)
    assert quote.answers.count() == 3


def test_an_answer_is_to_what_was_offered(hand: Any, visit: Any, quote: Any) -> None:
    other = walk.quoted(hand, visit)
    with pytest.raises(OptionWasNotOffered):
        say(hand, quote, option=other.options.first())
    strike_entry(hand=hand, entry=quote.entry, reason="pawl forgotten")
    with pytest.raises(QuoteWasStruck, match="pawl forgotten"):
        say(hand, quote)


def test_a_cap_below_what_it_allows_is_refused(hand: Any, quote: Any) -> None:
    with pytest.raises(CapWasBelowTheQuote, match=r"1,000\.00 kr is less than the 1,104\.00 kr"):
        say(hand, quote, cap_minor=1000_00)


def test_the_cap_is_for_the_whole_bill_extras_among_it(hand: Any, visit: Any, quote: Any) -> None:
    say(hand, quote)
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="idler cog"))
    with pytest.raises(CapWasBelowTheQuote, match=r"less than the 1,169\.00 kr"):
        say(hand, extra, cap_minor=1150_00)
    say(hand, extra, cap_minor=1500_00)
    held = agreed(visit.pk)
    assert (held.total_minor, held.cap_minor) == (1169_00, 1500_00)


def test_striking_the_answer_takes_the_yes_away(hand: Any, visit: Any, quote: Any) -> None:
    answer = say(hand, quote)
    strike_entry(hand=hand, entry=answer.entry, reason="it was the neighbour who rang")
    assert not agreed(visit.pk).is_anything

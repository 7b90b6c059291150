"""Write the customer's answer: who, when, by which way, in the exact words, and up to what sum."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from django.db import transaction

from spoolwright.judgement import money
from spoolwright.shop.acts import clock
from spoolwright.shop.acts.open_diary import NOTHING_BESIDE, Beside, Written, open_diary
from spoolwright.shop.acts.put import needed, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions.agreed import agreed
from spoolwright.shop.records.answer import Answer
from spoolwright.shop.records.entry import Strike
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.quote import Quote, QuoteOption
from spoolwright.shop.records.shop_settings import standing


class AnswerWasSilent(Refused):
    def __init__(self) -> None:
        super().__init__("Silence is not a yes: write the customer's exact words.", "exact_words")


class QuoteWasStruck(Refused):
    def __init__(self, reason: str) -> None:
        super().__init__(
            f"That quote has been struck through ({reason}). Answer the one that was written instead."
        )


class OptionWasNotOffered(Refused):
    def __init__(self) -> None:
        super().__init__(
            "That option is not in this quote. Choose one that was offered, or write a no.", "option"
        )


class CapWasBelowTheQuote(Refused):
    def __init__(self, cap: str, whole: str) -> None:
        super().__init__(
            f"A cap of {cap} is less than the {whole} that would be agreed. "
            "Choose a smaller option, or write a no.",
            "cap_minor",
        )


@dataclass(frozen=True)
class Said:
    """What the customer said; `cap_minor` is the most for the whole bill, None when no cap was named."""

    who: str
    channel: str
    exact_words: str
    cap_minor: int | None = None
    answered_at: datetime | None = None


@transaction.atomic
def record_answer(
    *,
    hand: Person,
    quote: Quote,
    option: QuoteOption | None,
    said: Said,
    beside: Beside = NOTHING_BESIDE,
) -> Written:
    """`option` None is a no."""
    if not said.exact_words.strip():
        raise AnswerWasSilent
    needed(said.who, "who", "Who answered")
    if option and option.quote_id != quote.pk:
        raise OptionWasNotOffered
    diary = open_diary(hand, quote.entry.visit)
    if strike := Strike.objects.filter(entry=quote.pk).first():
        raise QuoteWasStruck(strike.reason)
    if option and said.cap_minor is not None:
        _refuse_low_cap(diary.visit.pk, option, said.cap_minor)
    written = diary.write("answer", beside, [said.who, said.exact_words])
    put(
        Answer(
            entry=written.entry,
            quote=quote,
            option=option,
            who=said.who,
            channel=said.channel,
            answered_at=said.answered_at or clock.now(),
            exact_words=said.exact_words,
            cap_minor=said.cap_minor,
        )
    )
    return written


def _refuse_low_cap(visit_id: int, option: QuoteOption, cap_minor: int) -> None:
    others = [a for a in agreed(visit_id).answers if a.quote_id != option.quote_id]
    whole = sum(a.option.total_minor for a in others) + option.total_minor
    if cap_minor < whole:
        shop = standing()
        mark, per_major = shop.currency_mark or shop.currency, 10**shop.minor_digits
        raise CapWasBelowTheQuote(money.show(cap_minor, mark, per_major), money.show(whole, mark, per_major))

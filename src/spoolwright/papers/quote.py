"""The quote as the customer sees it: what was found, three options, what each would do and leave undone."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from spoolwright.papers import qr_code, typesetting
from spoolwright.papers.figures import Figure, shown
from spoolwright.papers.parties import Addressee, House, ReelMark
from spoolwright.papers.typesetting import Picture


@dataclass(frozen=True)
class Found:
    """A fault or a reading from check-in: what, its words or value, and how it was taken."""

    what: str
    value: Figure
    conditions: str = ""


@dataclass(frozen=True)
class Promise:
    """A reading as the option would leave it, with the conditions under which it will be proved."""

    what: str
    value: Figure
    conditions: str = ""


@dataclass(frozen=True)
class PriceLine:
    """One line of a price: words, amount as text, and a remark ("likely, 6 in 10")."""

    words: str
    amount: str
    remark: str = ""


@dataclass(frozen=True)
class Offer:
    """One of the options.

    `title` ("Put right"), `plain` what it does in plain words, `works` one line each, `time` bench time as
    text, `promises`, `lines` of the price, `tax` lines, `total` as text, `left_undone` and `warnings` one
    sentence each, `rests_on` which readings and guesses the promises stand on, `compared` how the price
    stands beside what the trade commonly asks, `carried` what would carry the pull then, in a line.
    """

    title: str
    plain: str
    total: str
    works: tuple[str, ...] = ()
    time: str = ""
    promises: tuple[Promise, ...] = ()
    lines: tuple[PriceLine, ...] = ()
    tax: tuple[PriceLine, ...] = ()
    left_undone: tuple[str, ...] = ()
    warnings: tuple[str, ...] = ()
    rests_on: tuple[str, ...] = ()
    compared: str = ""
    carried: str = ""


@dataclass(frozen=True)
class Quote:
    """A quote for one reel.

    `system` is the reader's ("metric" | "imperial"). `asked` is the customer's complaint in their own words.
    `cap` is the sum the answer may not be passed by without a new question, as text, or "" before an answer.
    `ceiling_percent` and `ceiling_source` come from the shop's settings; with no percentage no sentence about
    the law is printed. `answer_address` is where the answer can be given; it is printed with a QR code.
    `trace` is the reel's pull trace (papers.sparkline), `drawing` its section with findings ringed.
    """

    shop: House
    customer: Addressee
    reel: ReelMark
    number: str
    date: str
    valid_until: str
    offers: tuple[Offer, ...]
    asked: str = ""
    found: tuple[Found, ...] = ()
    cap: str = ""
    ceiling_percent: str = ""
    ceiling_source: str = ""
    answer_address: str = ""
    cautions: tuple[str, ...] = ()
    trace: Picture | None = None
    drawing: Picture | None = None
    system: str = "metric"
    language: str = "en"
    share: str = field(default="9 times in 10")

    def __post_init__(self) -> None:
        if not self.offers:
            raise ValueError("a quote needs at least one option, none was given")


def cap_sentence(quote: Quote) -> str:
    """How far an answer reaches: nothing above the cap without a new question."""
    if quote.cap:
        return (
            f"Your cap is {quote.cap}. Work that would pass it is not begun: you are asked again, "
            "with a picture and a price, and your first answer is kept beside the second."
        )
    return (
        "Answer with a cap if you like (“yes, up to …”). Nothing above that sum is done or billed until you "
        "have answered again; silence is not a yes."
    )


def law_sentence(quote: Quote) -> str:
    """The ceiling the law puts on a bill above its estimate, said as a reading of it and not as advice."""
    if not quote.ceiling_percent:
        return ""
    source = f" ({quote.ceiling_source})" if quote.ceiling_source else ""
    return (
        f"By the rule this shop keeps{source}, a bill may not pass its estimate by more than "
        f"{quote.ceiling_percent}. This is how we read the law, not legal advice."
    )


def _sentences(items: tuple[str, ...]) -> list[str]:
    """Each with its full stop, so that they can run on in one paragraph."""
    return [item if item.rstrip().endswith((".", "!", "?")) else f"{item.rstrip()}." for item in items]


def _offer_data(offer: Offer, system: str) -> dict[str, Any]:
    return {
        "title": offer.title,
        "plain": offer.plain,
        "total": offer.total,
        "time": offer.time,
        "works": offer.works,
        "promises": [[it.what, shown(it.value, system), it.conditions] for it in offer.promises],
        "lines": [[line.words, line.remark, line.amount] for line in offer.lines],
        "tax": [[line.words, line.remark, line.amount] for line in offer.tax],
        "left_undone": _sentences(offer.left_undone),
        "warnings": _sentences(offer.warnings),
        "rests_on": _sentences(offer.rests_on),
        "compared": offer.compared,
        "carried": offer.carried,
    }


def side_by_side(quote: Quote) -> list[list[str]]:
    """Rows of the table that sets the options beside each other: quantity, then one value per option."""
    quantities_promised = dict.fromkeys(it.what for offer in quote.offers for it in offer.promises)
    rows = []
    for what in quantities_promised:
        values = [
            {it.what: it.value for it in offer.promises}.get(what, "not promised") for offer in quote.offers
        ]
        rows.append([what, *(shown(value, quote.system) for value in values)])
    return [*rows, ["Price, tax included", *(offer.total for offer in quote.offers)]]


def _pictures(quote: Quote) -> Mapping[str, Picture]:
    pictures = {"trace": quote.trace, "drawing": quote.drawing}
    if quote.answer_address:
        pictures["answer"] = qr_code.of(quote.answer_address, f"QR code: opens {quote.answer_address}")
    return {name: picture for name, picture in pictures.items() if picture is not None}


def render(quote: Quote) -> bytes:
    """The quote as a PDF, A4, folding into a window envelope."""
    data = {
        "shop": vars(quote.shop),
        "customer": vars(quote.customer),
        "reel": vars(quote.reel),
        "number": quote.number,
        "date": quote.date,
        "valid_until": quote.valid_until,
        "language": quote.language,
        "asked": quote.asked,
        "found": [[it.what, shown(it.value, quote.system), it.conditions] for it in quote.found],
        "offers": [_offer_data(offer, quote.system) for offer in quote.offers],
        "beside": side_by_side(quote),
        "cap": cap_sentence(quote),
        "law": law_sentence(quote),
        "answer_address": quote.answer_address,
        "cautions": quote.cautions,
        "share": quote.share,
    }
    return typesetting.render("quote", data, _pictures(quote))

"""The invoice: who sold what to whom, the sum with its tax, and why it is not what the quote said."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.papers import typesetting
from spoolwright.papers.parties import Addressee, House, ReelMark
from spoolwright.papers.typesetting import Picture


@dataclass(frozen=True)
class InvoiceLine:
    """One line: words, quantity ("2", "68 min") and amounts as text; `remark` says new, used, own-made."""

    words: str
    amount: str
    quantity: str = ""
    each: str = ""
    remark: str = ""


@dataclass(frozen=True)
class TaxLine:
    """One tax rate: the rate, the sum it is taken of, and the tax, as text."""

    rate: str
    base: str
    tax: str


@dataclass(frozen=True)
class Difference:
    """One step from the quoted sum to the billed one: the sum as text ("+ 65 kr") and why."""

    amount: str
    why: str


@dataclass(frozen=True)
class Invoice:
    """An invoice for one visit, all sums as ready text.

    `tax_words` says whether prices hold tax already. `deposit` is what was paid before, "" for none;
    `quoted`, `answered` (the customer's words) and `differences` tell how the sum came from the quote.
    `old_parts` are the parts given back, `care` the care notes, `warranty` the shop's terms,
    `next_service` when the reel should come back. `credits` is the number of the
    invoice that this one takes back, "" for none.
    """

    shop: House
    customer: Addressee
    reel: ReelMark
    number: str
    date: str
    due_date: str
    lines: tuple[InvoiceLine, ...]
    total: str
    due: str
    delivered: str = ""
    tax: tuple[TaxLine, ...] = ()
    tax_words: str = ""
    deposit: str = ""
    pay_to: str = ""
    quoted: str = ""
    answered: str = ""
    differences: tuple[Difference, ...] = ()
    old_parts: tuple[str, ...] = ()
    care: tuple[str, ...] = ()
    warranty: str = ""
    next_service: str = ""
    cautions: tuple[str, ...] = ()
    credits: str = ""
    trace: Picture | None = None
    language: str = "en"

    def __post_init__(self) -> None:
        if not self.lines:
            raise ValueError("an invoice needs at least one line, none was given")
        if not self.number.strip():
            raise ValueError("an invoice needs a number, none was given")


SET_APART = ("shop", "customer", "reel", "lines", "tax", "differences", "trace")


def render(invoice: Invoice) -> bytes:
    """The invoice as a PDF, A4, folding into a window envelope."""
    plain = {name: value for name, value in vars(invoice).items() if name not in SET_APART}
    data = plain | {
        "shop": vars(invoice.shop),
        "customer": vars(invoice.customer),
        "reel": vars(invoice.reel),
        "lines": [[it.words, it.remark, it.quantity, it.each, it.amount] for it in invoice.lines],
        "tax": [[it.rate, it.base, it.tax] for it in invoice.tax],
        "differences": [[it.why, it.amount] for it in invoice.differences],
    }
    pictures = {"trace": invoice.trace} if invoice.trace else {}
    return typesetting.render("invoice", data, pictures)

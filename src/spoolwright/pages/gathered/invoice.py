"""An invoice in ink as its paper carries it, with the way from the quote to the bill."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from spoolwright.pages.gathered import parties, pictures
from spoolwright.pages.gathered.amounts import Amounts, percent
from spoolwright.pages.words import when
from spoolwright.papers.care_notes import care_notes
from spoolwright.papers.invoice import Difference, Invoice, InvoiceLine, TaxLine
from spoolwright.shop.questions.diary import Diary

TAX_WORDS = {True: "The prices hold the tax.", False: "The tax is added to the prices."}


def gathered(diary: Diary, invoice: Any, shop: Any) -> Invoice:
    """`invoice` is the typed row of the entry; what was written after it is not on it."""
    before = [b for b in diary.blocks if b.entry.seq < invoice.entry.seq and not b.is_struck]
    works = [block for block in before if block.kind == "work"]
    amounts = Amounts(shop, invoice.currency)
    answers = [a for a in diary.agreed.answers if a.entry.seq < invoice.entry.seq]
    sheet = pictures.sheet_of(diary.visit)
    return Invoice(
        shop=parties.house(shop),
        customer=_bill_to(invoice),
        reel=parties.reel_mark(diary.visit),
        number=str(invoice.number),
        date=when.dated(invoice.issued_on),
        due_date=when.dated(invoice.due_on),
        lines=tuple(_line(line, invoice, amounts) for line in invoice.lines.all()),
        total=amounts(invoice.total_minor),
        due=amounts(invoice.due_minor),
        delivered=when.dated(works[-1].entry.written_at) if works else "",
        tax=(TaxLine(percent(invoice.tax_rate), amounts(invoice.net_minor), amounts(invoice.tax_minor)),),
        tax_words=TAX_WORDS[invoice.prices_include_tax],
        deposit=amounts(invoice.deposit_minor) if invoice.deposit_minor else "",
        quoted=amounts(answers[0].option.total_minor) if answers else "",
        answered=answers[-1].exact_words if answers else "",
        differences=tuple(_differences(answers, invoice, amounts)),
        old_parts=_old_parts(before),
        care=care_notes(sheet.reel.kind if sheet else "", diary.customer.water or _water(before)),
        warranty=shop.warranty,
        trace=pictures.mark_before(before),
    )


def _bill_to(invoice: Any) -> Any:
    """As the bill was made out when it was written, whatever the customer is called since."""
    name, *lines = [line.strip() for line in invoice.bill_to.splitlines() if line.strip()] or [""]
    return parties.Addressee(name, tuple(lines))


def _line(line: Any, invoice: Any, amounts: Amounts) -> InvoiceLine:
    amount = line.gross_minor if invoice.prices_include_tax else line.net_minor
    if line.kind == "labour":
        return InvoiceLine(line.what, amounts(amount), when.minutes(line.minutes))
    if line.quantity == 1:
        return InvoiceLine(line.what, amounts(amount))
    each = amounts(round(amount / line.quantity))
    return InvoiceLine(line.what, amounts(amount), f"{line.quantity.normalize():f}", each)


def _differences(answers: list[Any], invoice: Any, amounts: Amounts) -> Iterable[Difference]:
    """Each extra that was said yes to, then what is left between what was agreed and what is billed."""
    if not answers:
        return
    for answer in answers[1:]:
        works = ", ".join(work.title.lower() for work in answer.option.works.all())
        said = f"you answered “{answer.exact_words}”"
        why = f"{answer.option.title}: {works}; {said}" if works else f"{answer.option.title}; {said}"
        yield Difference(amounts.more(answer.option.total_minor), why)
    left = invoice.total_minor - sum(answer.option.total_minor for answer in answers)
    if left:
        yield Difference(amounts.more(left), invoice.why_more or "less than was quoted")


def _old_parts(before: list[Any]) -> tuple[str, ...]:
    """The parts that came off, unless the customer said that they need not come back."""
    wanted = [block.part.old_parts_back for block in before if block.kind == "arrival"]
    if wanted and wanted[-1] is False:
        return ()
    fitted = [part for block in before if block.kind == "work" for part in block.part.parts.all()]
    return tuple(f"{part.count} × {part.what}" if part.count > 1 else _capital(part.what) for part in fitted)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _water(before: list[Any]) -> str:
    waters = [block.part.water for block in before if block.kind == "arrival"]
    return waters[-1] if waters else ""

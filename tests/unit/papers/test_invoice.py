"""The invoice: seller, buyer, sums, and why it is not what the quote said."""

import pytest

from spoolwright.papers import invoice
from tests.unit.papers import pdf, samples


@pytest.fixture(scope="module")
def words() -> str:
    return pdf.text(invoice.render(samples.an_invoice()))


@pytest.mark.parametrize(
    "part",
    [
        "Kvie & Vannes",
        "business no. 17",
        "Ragna Solbu",
        "1044",
        "21 March 2026",
        "Idler cog (own-made)",
        "1,169 kr",
        "233.80 kr",
        "200 kr",
        "Due by 4 April 2026 969 kr",
        "Quoted 1,104 kr",
        "Idler cog found split",
        "yes, up to 1,200",
        "Split idler cog",
        "Store with the drag off.",
        "Two years on our work.",
        "In nine to twelve months.",
        "account 17",
    ],
)
def test_it_says(words: str, part: str) -> None:
    assert part in words


def test_an_invoice_that_takes_another_back_says_which() -> None:
    text = pdf.text(invoice.render(samples.an_invoice(number="1045", credits="1044")))
    assert "Credit note" in text
    assert "Takes back invoice 1044" in text


def test_a_bill_like_its_quote_says_so() -> None:
    text = pdf.text(invoice.render(samples.an_invoice(differences=())))
    assert "The bill is what the quote said." in text


def test_a_bill_of_plain_lines_needs_no_columns() -> None:
    plain = (invoice.InvoiceLine("Basic clean", "250 kr"),)
    assert "how much" not in pdf.text(invoice.render(samples.an_invoice(lines=plain)))


@pytest.mark.parametrize(("changes", "why"), [({"lines": ()}, "one line"), ({"number": " "}, "a number")])
def test_what_is_no_invoice_is_refused(changes: dict[str, object], why: str) -> None:
    with pytest.raises(ValueError, match=why):
        samples.an_invoice(**changes)


def test_a_long_bill_runs_over_pages_and_counts_them() -> None:
    many = tuple(invoice.InvoiceLine(f"Part {k}", f"{k} kr", "1", f"{k} kr") for k in range(120))
    paper = invoice.render(samples.an_invoice(lines=many))
    assert len(pdf.reader(paper).pages) > 2
    assert "Part 119" in pdf.text(paper)

"""A paper is tagged, refuses a picture without words, is the same bytes twice, and no text can break it."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.papers import bag_tag, invoice, proof_sheet, quote, reading_sheet, typesetting
from spoolwright.papers.typesetting import PaperRefused, Picture
from tests.unit.papers import pdf, samples

PAPERS = {
    "bag tag": lambda: bag_tag.render(samples.tag()),
    "quote": lambda: quote.render(samples.a_quote()),
    "proof sheet": lambda: proof_sheet.render(samples.a_proof()),
    "reading sheet": lambda: reading_sheet.render(samples.a_reading()),
    "invoice": lambda: invoice.render(samples.an_invoice()),
}


@pytest.mark.parametrize("name", PAPERS)
def test_every_paper_is_for_everybody(name: str) -> None:
    paper = PAPERS[name]()
    assert pdf.is_tagged(paper)
    assert pdf.claims_universal_access(paper)
    assert pdf.language(paper).startswith("en")
    assert pdf.reader(paper).metadata.title
    assert pdf.fonts_outside(paper) == []


@pytest.mark.parametrize("name", PAPERS)
def test_the_same_data_gives_the_same_bytes(name: str) -> None:
    assert PAPERS[name]() == PAPERS[name]()


def test_other_data_gives_other_bytes() -> None:
    assert bag_tag.render(samples.tag()) != bag_tag.render(samples.tag(number="58R-018"))


def test_a_picture_without_words_is_refused() -> None:
    silent = Picture(samples.SQUARE.svg, "")
    with pytest.raises(PaperRefused, match="alternative|alt"):
        quote.render(samples.a_quote(trace=silent))


def test_an_unknown_template_is_refused_with_those_that_are_known() -> None:
    with pytest.raises(PaperRefused, match="bag_tag, invoice, proof_sheet, quote, reading_sheet"):
        typesetting.render("letter", {})


def test_a_broken_picture_is_refused_and_names_the_paper() -> None:
    with pytest.raises(PaperRefused, match="'quote' could not be set"):
        quote.render(samples.a_quote(trace=Picture("<svg", "broken")))


def test_markup_in_a_name_stays_text() -> None:
    paper = bag_tag.render(samples.tag(owner="#set text(red) *x* <b> $y$"))
    assert "#settext(red)*x*<b>$y$" in pdf.squeezed(paper)


@settings(max_examples=40, deadline=None)
@given(st.text(max_size=60))
def test_any_text_at_all_can_be_set(words: str) -> None:
    assert bag_tag.render(samples.tag(owner=words, marks=(words,), belongs=words, reel=words)).startswith(
        b"%PDF"
    )


@pytest.mark.parametrize("name", ["quote", "proof sheet", "invoice"])
def test_a_nasty_customer_name_stays_on_the_paper(name: str) -> None:
    nasty = samples.Addressee(samples.NASTY, (samples.NASTY,))
    papers = {
        "quote": lambda: quote.render(samples.a_quote(customer=nasty, asked=samples.NASTY)),
        "proof sheet": lambda: proof_sheet.render(samples.a_proof(customer=nasty, rule=samples.NASTY)),
        "reading sheet": lambda: reading_sheet.render(samples.a_reading(customer=nasty, rule=samples.NASTY)),
        "invoice": lambda: invoice.render(samples.an_invoice(customer=nasty, warranty=samples.NASTY)),
    }
    assert "#panic()" in pdf.squeezed(papers[name]())

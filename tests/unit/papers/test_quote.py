"""The quote as the customer sees it."""

import pytest

from spoolwright.papers import quote
from tests.unit.papers import pdf, samples


@pytest.fixture(scope="module")
def words() -> str:
    return pdf.text(quote.render(samples.a_quote()))


@pytest.mark.parametrize(
    "part",
    [
        "It sticks when a fish runs.",
        "3.90 kg ± 0.10 kg",
        "Put right",
        "Improve",
        "The most this reel should be given",
        "6.9 kg, 6.2 to 7.6 kg",
        "line leaving at 23.5 mm",
        "1,104 kr",
        "Pawl (sure)",
        "of which tax, 25 %",
        "Left undone: The plating stays as it is.",
        "What carries the pull: The weakest part behind the drag",
        "Rests on: three pulls at 23.5 mm.",
        "common practice, no source",
        "Nothing above that sum is done or billed",
        "not legal advice",
        "14 April 2026",
        "Hook off while you test a drag.",
        "9 times in 10",
    ],
)
def test_it_says(words: str, part: str) -> None:
    assert part in words


def test_an_option_that_promises_nothing_says_so() -> None:
    rows = quote.side_by_side(samples.a_quote())
    assert ["Pull, full spool", "not promised", "6.9 kg, 6.2 to 7.6 kg", "6.9 kg, 6.2 to 7.6 kg"] in rows
    assert rows[-1] == ["Price, tax included", "785 kr", "1,104 kr", "1,690 kr"]


def test_a_cap_is_named_when_there_is_one() -> None:
    assert "Your cap is 1,200 kr." in quote.cap_sentence(samples.a_quote(cap="1,200 kr"))


def test_no_percentage_no_sentence_about_the_law() -> None:
    assert quote.law_sentence(samples.a_quote(ceiling_percent="")) == ""
    assert "15 %" in quote.law_sentence(samples.a_quote())


def test_imperial_readers_get_pounds() -> None:
    text = pdf.text(quote.render(samples.a_quote(system="imperial")))
    assert "lb" in text
    assert " kg" not in text.replace("Keep to 6.9 kg", "")


def test_no_option_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one option"):
        samples.a_quote(offers=())


def test_a_drawing_brings_its_words() -> None:
    paper = quote.render(samples.a_quote(drawing=samples.Picture(samples.SQUARE.svg, "the reel in section")))
    assert "the reel in section" in pdf.alternatives(paper)

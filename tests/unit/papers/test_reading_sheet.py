"""The reading sheet: everything that the standard's list asks for, and no claim to more."""

import pytest

from spoolwright.papers import reading_sheet
from tests.unit.papers import pdf, samples


@pytest.fixture(scope="module")
def paper() -> bytes:
    return reading_sheet.render(samples.a_reading())


@pytest.mark.parametrize(
    "part",
    [
        # ISO/IEC 17025:2017: 7.8.2.1 opened, quoted on a page; its letters, 7.8.4.1 and 7.8.6 from memory.
        "Reading of your Tarvak 58R: pull trace",  # a: a title
        "Bryggegata 4",  # b, c: name and address, and where it was done
        "88-R7 · page 1 of 2",  # d: a number on each page
        "End of reading sheet 88-R7",  # d: a clear end
        "Ragna Solbu",  # e: the customer
        "Straight from the spool, no rod.",  # f: the method
        "338 g with line",  # g: the item by its marks
        "2 March 2026",  # h: when it was received
        "3 March 2026, 14:10",  # i: when it was read
        "issued 4 March 2026",  # j: when the sheet was issued
        "The results relate only to the item named above",  # l
        "3.90 kg ± 0.10 kg",  # m: results with units
        "The gauge's accuracy was not given.",  # n: what deviates
        "Torbal Kvie",  # o: who answers for it
        "times k = 2",  # calibration a: uncertainty, its factor
        "line on, radius 23.5 mm",  # calibration b: conditions
        "traceable to the checks that are named here",  # calibration c
        "Decision rule:",  # 7.8.6: rule of a statement of conformity
        "1 in 4,000",
        "may be copied only in full",
        "not an accredited laboratory",
        "Load cell L1",
        "1 March 2026",
        "0.050 kg",
    ],
)
def test_it_says(paper: bytes, part: str) -> None:
    assert part in pdf.text(paper).replace("’", "'")


def test_the_trace_is_there_with_its_words(paper: bytes) -> None:
    assert any("Pull trace." in words for words in pdf.alternatives(paper))
    assert pdf.is_tagged(paper)
    assert pdf.claims_universal_access(paper)


def test_without_an_instrument_it_says_so() -> None:
    bare = samples.a_reading(instruments=(), pictures=(), budget=(), deviations=(), rule="", signed=())
    said = pdf.text(reading_sheet.render(bare))
    assert "instrument not named" in said
    assert "Nothing that deviates from the method" in said
    assert "cannot be traced beyond" in said
    assert "Decision rule" not in said


def test_an_instrument_that_was_never_checked_says_so() -> None:
    unchecked = samples.a_reading(instruments=(samples.proof_sheet.Instrument("C1", "0.02 mm"),))
    assert "no check on record" in pdf.text(reading_sheet.render(unchecked))


def test_a_counted_result_is_called_exact() -> None:
    counted = samples.a_reading(results=(reading_sheet.Stated("Teeth counted", "19"),))
    assert "was counted, and is exact" in pdf.text(reading_sheet.render(counted))


def test_words_that_somebody_typed_cannot_become_markup() -> None:
    nasty = samples.a_reading(deviations=(samples.NASTY,), said=(samples.NASTY,))
    assert "#set text(red)" in pdf.text(reading_sheet.render(nasty))


def test_the_same_reading_gives_the_same_bytes(paper: bytes) -> None:
    assert reading_sheet.render(samples.a_reading()) == paper


def test_no_result_and_an_unknown_statement_are_refused() -> None:
    with pytest.raises(ValueError, match="at least one result"):
        samples.a_reading(results=())
    with pytest.raises(ValueError, match="too close to call"):
        reading_sheet.Stated("x", "1", call="passed")

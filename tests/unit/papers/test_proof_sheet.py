"""The proof: measured beside promised, and a decision in words."""

import pytest

from spoolwright.papers import proof_sheet
from tests.unit.papers import pdf, samples


@pytest.fixture(scope="module")
def paper() -> bytes:
    return proof_sheet.render(samples.a_proof())


@pytest.mark.parametrize(
    "part",
    [
        "5.80 kg ± 0.10 kg",
        "6.9 kg, 6.2 to 7.6 kg",
        "6.90 kg ± 0.10 kg",
        "not shown",
        "1 in 60",
        "It may lie too low.",
        "Shown when the whole interval lies inside",
        "Drag table",
        "line leaving at 23.5 mm",
        "0.622 N m ± 0.020 N m",
        "± 0.5 % of the reading",
        "Torbal Kvie",
        "Carbon set fitted",
        "A line under load cuts.",
        "harder to start it than to keep it",
        "no measure of one reel against another",
    ],
)
def test_it_says(paper: bytes, part: str) -> None:
    assert part in pdf.text(paper)


def test_both_charts_have_their_words(paper: bytes) -> None:
    words = " ".join(pdf.alternatives(paper))
    assert "Pull trace." in words
    assert "Spin-down of the free spool." in words


def test_the_verdict_counts() -> None:
    sheet = samples.a_proof()
    assert proof_sheet.verdict(sheet) == "Of 2 promises: 1 shown, 1 not shown."
    assert proof_sheet.verdict(samples.a_proof(proved=sheet.proved[:1])) == "Every promise is shown."


def test_without_charts_and_signatures_it_is_still_a_paper() -> None:
    bare = samples.a_proof(pull=None, spin=None, drag_table=None, instruments=(), signed=(), cautions=())
    assert "The pull" not in pdf.text(proof_sheet.render(bare))


def test_a_decision_of_another_kind_is_refused() -> None:
    with pytest.raises(ValueError, match="shown, not shown, failed"):
        proof_sheet.Proved("x", "1", "1", "passed")


def test_an_empty_proof_is_refused() -> None:
    with pytest.raises(ValueError, match="at least one reading"):
        samples.a_proof(proved=())

"""Rows typed as a pull goes: read strictly, refused with the row and what is accepted."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.bench import live_rows
from spoolwright.bench.unreadable import Unreadable

KG = 9.80665


def test_rows_become_time_and_pull() -> None:
    trace = live_rows.read("0.4 0.6\n\n1.6;2.90\n 2,8\t2,41 \n4 5.2 lb\n")
    assert trace.time.tolist() == pytest.approx([0.0, 1.2, 2.4, 3.6])
    assert trace.force.tolist() == pytest.approx([0.6 * KG, 2.9 * KG, 2.41 * KG, 5.2 * 4.4482216152605])


def test_the_finest_digit_tells_the_step_because_people_leave_noughts_out() -> None:
    assert live_rows.read("0 2.9\n1 2.35\n2 3").step == pytest.approx(0.01 * KG)
    assert live_rows.read("0 23\n1 24", "N").step == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ("", "no number was typed"),
        ("0 0.6\n2.9", "row 2, “2.9”: there is one number where two are needed"),
        ("0 0.6\nx 2.9", "row 2, “x 2.9”: the time is no number of seconds"),
        ("0 0.6\n1 fish", "row 2, “1 fish”: the pull cannot be read"),
        ("0 0.6\n1 2.9 mm", "row 2, “1 2.9 mm”: the pull cannot be read"),
        ("0 0.6\n1 -2.9 kg", "row 2, “1 -2.9 kg”: a pull below zero cannot be"),
        ("2 0.6\n1 2.9", "row 2: time runs backwards, from 2 s to 1 s"),
        ("nan 2.9", "the time is no number of seconds"),
        ("-1 2.9", "the time is no number of seconds"),
        ("\n".join(f"{k} 2" for k in range(501)), "501 rows were typed"),
    ],
)
def test_what_cannot_be_read_is_refused_with_its_row(typed: str, words: str) -> None:
    with pytest.raises(Unreadable) as refused:
        live_rows.read(typed)
    assert words.lower() in refused.value.words.lower()
    assert "Accepted:" in refused.value.words


@given(st.text(alphabet="0123456789.,;- \n\tkgNeinf½", max_size=60))
def test_whatever_is_typed_is_read_or_refused(typed: str) -> None:
    try:
        trace = live_rows.read(typed)
    except Unreadable:
        return
    assert len(trace.time) == len(trace.force) >= 1
    assert (trace.force >= 0).all()

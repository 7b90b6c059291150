"""Folding makes one spelling of a word out of all that people type."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoolwright.shop.records.findable import folded


@pytest.mark.parametrize(
    ("typed", "plain"),
    [
        ("Grånesvåg", "granesvag"),
        ("Øvre Fjølvatn", "ovre fjolvatn"),
        ("ÆØÅ æøå", "aeoa aeoa"),
        ("Straße, Łódź", "strasse lodz"),
        ("G2-07 (5.8 kg)", "g2 07 5 8 kg"),
        ("under_score", "under score"),
        ("  ", ""),
    ],
)
def test_examples(typed: str, plain: str) -> None:
    assert folded(typed) == plain


@given(st.text())
def test_folding_twice_is_folding_once(text: str) -> None:
    assert folded(folded(text)) == folded(text)


@given(st.text())
def test_capitals_make_no_difference_to_ascii(text: str) -> None:
    plain = "".join(c for c in text if c.isascii())
    assert folded(plain.upper()) == folded(plain.lower())

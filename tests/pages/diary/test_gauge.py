"""The gauge as its maker states it: shares, full scale, step; nothing that no gauge has."""

from __future__ import annotations

import pytest
from django import forms

from spoolwright.pages.diary.ask.gauge import ForceField, ShareField, gauge_fields, gauge_of


class Asked(forms.Form):
    def __init__(self, **sent: str) -> None:
        super().__init__(sent)
        self.fields |= gauge_fields()


def test_a_share_is_a_percentage() -> None:
    assert ShareField().clean("0.5 %") == pytest.approx(0.005)
    for text in ("60 %", "-1 %", "half"):
        with pytest.raises(forms.ValidationError):
            ShareField().clean(text)


def test_a_force_is_more_than_nothing() -> None:
    with pytest.raises(forms.ValidationError, match="not more than nothing"):
        ForceField().clean("0 kg")


def test_what_is_stated_is_the_gauge() -> None:
    form = Asked(gauge_accuracy="0.5 %", gauge_step="0.01 kg")
    assert form.is_valid()
    gauge = gauge_of(form)
    assert gauge is not None
    assert gauge.accuracy_of_reading == pytest.approx(0.005)
    assert gauge.resolution == pytest.approx(0.0980665)


def test_a_share_of_the_full_scale_needs_the_full_scale() -> None:
    form = Asked(gauge_of_full_scale="0.5 %")
    form.is_valid()
    assert gauge_of(form) is None
    assert "such as 50 kg" in form.errors["gauge_full_scale"][0]


def test_nothing_need_be_known() -> None:
    form = Asked()
    assert form.is_valid()
    assert gauge_of(form) is not None

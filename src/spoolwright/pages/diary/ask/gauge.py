"""The gauge as its maker states it, remembered from one trace to the next in this browser's session."""

from __future__ import annotations

from typing import Any

from django import forms
from django.http import HttpRequest

from spoolwright.bench.gauge import Gauge
from spoolwright.pages.diary.ask import instrument
from spoolwright.pages.words.asked import QuantityField
from spoolwright.shop.questions.instruments import Shelved

KEPT = "gauge as last time"
OWN = "gauge_own"
SHARES = ("gauge_accuracy", "gauge_of_full_scale")
LARGEST_SHARE = 0.5


class ShareField(QuantityField):
    """ "0.5 %" of the reading or of the full scale."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__("ratio", required=False, **kwargs)

    def to_python(self, value: Any) -> Any:
        share = super().to_python(value)
        if share is not None and not 0 <= share <= LARGEST_SHARE:
            raise forms.ValidationError(
                f"“{value}” is no gauge’s accuracy. Accepted: 0 % to 50 %, such as 0.5 %."
            )
        return share


class ForceField(QuantityField):
    """A pull that can only be more than nothing."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__("force", required=False, **kwargs)

    def to_python(self, value: Any) -> Any:
        force = super().to_python(value)
        if force is not None and not force > 0:
            raise forms.ValidationError(
                f"“{value}” is not more than nothing. Accepted: such as 50 kg or 0.01 kg."
            )
        return force


def gauge_fields() -> dict[str, forms.Field]:
    return {
        "gauge_accuracy": ShareField(label="Right to within, of what it shows"),
        "gauge_of_full_scale": ShareField(label="Right to within, of its full scale"),
        "gauge_full_scale": ForceField(label="Its full scale"),
        "gauge_step": ForceField(label="The step of its display"),
    }


def own_fields() -> dict[str, forms.Field]:
    """The choice among the shop's own instruments for a pull; nothing while there is none."""
    field = instrument.instrument_field("force")
    return {OWN: field} if field else {}


def own_of(form: forms.Form) -> Shelved | None:
    """The one of the shop's own that was chosen."""
    return instrument.chosen(form, OWN)


def gauge_of(form: forms.Form) -> Gauge | None:
    """The gauge: one of the shop's own, else as described; None with a fault where that does not fit."""
    given = form.cleaned_data
    own = own_of(form)
    if own is not None:
        return own.measuring("force").as_gauge()
    try:
        return Gauge(
            accuracy_of_reading=given.get("gauge_accuracy"),
            accuracy_of_range=given.get("gauge_of_full_scale"),
            resolution=given.get("gauge_step"),
            range=given.get("gauge_full_scale"),
        )
    except ValueError:
        form.add_error("gauge_full_scale", "A share of the full scale needs the full scale: such as 50 kg.")
        return None


def as_last_time(request: HttpRequest) -> dict[str, Any]:
    """What was typed for the last trace, word for word."""
    last = request.session.get(instrument.KEPT, {}).get("force")
    return dict(request.session.get(KEPT, {})) | ({OWN: last} if last else {OWN: instrument.NONE_OF_OURS})


def remember(request: HttpRequest, form: forms.Form) -> None:
    request.session[KEPT] = {name: form[name].data for name in gauge_fields() if form[name].data}
    if OWN in form.fields:
        instrument.remember(request, "force", form.data.get(OWN, ""))

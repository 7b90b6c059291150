"""A file of spin times, looked at and not kept."""

from __future__ import annotations

from django import forms

from spoolwright.bench import spin_log_file
from spoolwright.bench.spin_log import Spin
from spoolwright.bench.unreadable import Unreadable

LARGEST = 2 * 1024 * 1024
"""Bytes; a log of five thousand spins is a tenth of it."""


class LogForm(forms.Form):
    file = forms.FileField(
        label="A file of spin times",
        help_text="A CSV with one spin a row: columns bearing and time (s); if you like reel and side.",
        error_messages={"required": "No file came. Accepted: a CSV with the columns bearing and time."},
        widget=forms.ClearableFileInput({"accept": ".csv,.txt,text/csv,text/plain"}),
    )

    spins: tuple[Spin, ...] = ()

    def clean_file(self) -> object:
        file = self.cleaned_data["file"]
        if file.size > LARGEST:
            raise forms.ValidationError("The file is larger than 2 MB. Accepted: a CSV of up to 5,000 spins.")
        try:
            self.spins = spin_log_file.read(file.read(), name=file.name)
        except Unreadable as fault:
            raise forms.ValidationError(fault.words) from fault
        return file

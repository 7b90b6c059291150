"""A file of spin times in a form."""

from __future__ import annotations

from django.core.files.uploadedfile import SimpleUploadedFile

from spoolwright.pages.spin_log.forms import LARGEST, LogForm


def form(data: bytes) -> LogForm:
    return LogForm({}, {"file": SimpleUploadedFile("log.csv", data)})


def test_spins_are_read_and_a_file_without_them_or_too_large_is_refused() -> None:
    good = form(b"bearing,time\nsteel,4\n")
    assert good.is_valid()
    assert good.spins[0].time == 4.0
    assert "no columns" in form(b"x\n1\n").errors["file"][0]
    assert "larger than 2 MB" in form(b"bearing,time\n" + b" " * LARGEST).errors["file"][0]
    assert not LogForm({}, {}).is_valid()

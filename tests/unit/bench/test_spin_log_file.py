"""A spin log as a shop would type it."""

from __future__ import annotations

import pytest

from spoolwright.bench.spin_log import Spin
from spoolwright.bench.spin_log_file import read
from spoolwright.bench.unreadable import Unreadable


def test_names_and_marks_of_several_kinds_are_read() -> None:
    assert read(b"bearing,top,time,spinner\nm,1,151,r\n") == (Spin("m", "r", "1", 151.0),)
    assert read(b"Bearing;Time\nopen steel;14,5\n") == (Spin("open steel", "open steel", "", 14.5),)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"a,b\n1,2\n", "no columns called bearing"),
        (b"bearing,time\nsteel,soon\n", "no time"),
        (b"bearing,time\n,12\n", "no kind"),
        (b"bearing,time\n", "no columns"),
        (b"bearing,time\n" + b"s,1\n" * 5001, "5001 spins"),
    ],
)
def test_what_is_no_log_is_refused_in_words(data: bytes, words: str) -> None:
    with pytest.raises(Unreadable, match=words):
        read(data, name="log.csv")

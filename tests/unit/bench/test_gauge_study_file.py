"""The file of a study: headings in any order, units in the heading or beside the value, holes refused."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from spoolwright.bench import gauge_study_file
from spoolwright.bench.unreadable import Unreadable

LINES = [(part, who) for part in "123" for who in ("Ada", "Ole") for _ in range(2)]


def text(heading: str = "part,person,value mm", mark: str = ",", value: str = "4.0{n}") -> str:
    rows = [mark.join((part, who, value.format(n=n))) for n, (part, who) in enumerate(LINES)]
    return "\n".join([heading, *rows])


@pytest.mark.parametrize(
    "written",
    [
        text(),
        text("part;hand;reading (mm)", ";", "4,0{n}"),
        text("Part\tOperator\tmeasured [mm]", "\t"),
        text("part,person,value", value="4.0{n} mm"),
        text("part,person,value", value="4.0{n}"),
    ],
)
def test_it_is_read_however_it_is_written(written: str) -> None:
    found = gauge_study_file.read(written.encode(), "length", unit="mm")
    assert found.values.shape == (3, 2, 2)
    assert found.parts == ("1", "2", "3")
    assert found.persons == ("Ada", "Ole")
    assert found.rows[1] == ("1", "Ada", 2, pytest.approx(4.01e-3))
    assert found.values[0, 0, 1] == pytest.approx(4.01e-3)


@pytest.mark.parametrize(
    ("written", "why"),
    [
        (b"", "no try|empty"),
        (b"part,person,value mm\n", "no try"),
        (b"a,b,c\n1,2,3\n", "no column is headed part or person or value"),
        (text()[:-12].encode(), "measured part 3 1 times"),
        (b"part,person,value mm\n1,Ada\n", "line 2: a cell is missing"),
        (b"part,person,value mm\n1,,4\n", "line 2: a cell is empty"),
        (b"part,person,value mm\n1,Ada,4 kg\n", "line 2"),
        (b"part,person,value\n1,Ada,4\n", "a unit in the heading"),
        (b"part,person,value mm\n1,Ada,nan\n", "line 2"),
        (("part,person,value mm\n" + "1,Ada,4\n" * 1001).encode(), "at most 1000"),
        (bytes(range(256)) * 20, "Accepted"),
    ],
)
def test_what_is_no_study_is_refused_with_the_place(written: bytes, why: str) -> None:
    with pytest.raises(Unreadable, match=why):
        gauge_study_file.read(written, "length")


@given(
    st.one_of(
        st.binary(max_size=300), st.text(max_size=200).map(lambda t: ("part;person;value\n" + t).encode())
    )
)
@settings(max_examples=80, deadline=None)
def test_whatever_it_holds_it_is_read_or_refused_in_words(data: bytes) -> None:
    refused, values = "", np.zeros(1)
    try:
        values = gauge_study_file.read(data, "length", unit="mm").values
    except Unreadable as fault:
        refused = fault.words
    assert refused or values.ndim == 3
    assert np.isfinite(values).all()

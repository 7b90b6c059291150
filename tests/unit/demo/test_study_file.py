"""The sample study is one that the reader reads, and in which the two hands differ."""

from __future__ import annotations

from spoolwright.bench import gauge_study, gauge_study_file
from spoolwright.demo import study_file


def test_it_can_be_read_and_has_something_to_say() -> None:
    tries = gauge_study_file.read(study_file.discs(), "length", name=study_file.NAME)
    assert tries.values.shape == (5, 2, 3)
    assert tries.persons == ("Ingjerd", "Torbal")
    read = gauge_study.read(tries.values)
    assert 5e-6 < read.repeatability < 1e-5 < read.gauge < 2e-5

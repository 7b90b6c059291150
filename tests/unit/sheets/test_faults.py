"""The fault table: whole, marked, and fit for each kind of reel."""

from __future__ import annotations

import re

import pytest

from spoolwright.sheets.faults import MARK, fault, faults, faults_of
from spoolwright.sheets.sheet_tables import Kind
from spoolwright.shop.acts.write_finding import FAULTS


def test_the_rows_are_those_that_a_finding_may_name() -> None:
    assert tuple(faults()) == FAULTS


def test_every_row_can_be_used_at_the_bench() -> None:
    for row in faults().values():
        assert row.symptom
        assert row.check
        assert set(row.kinds) <= set(Kind.__args__)
        assert sum(cause.share for cause in row.causes) == pytest.approx(1)


def test_the_shares_are_marked_as_priors() -> None:
    assert MARK == "judgement prior"


def test_no_row_points_outside_the_table() -> None:
    text = " ".join(f"{f.symptom} {f.check} {[c.words for c in f.causes]}" for f in faults().values())
    assert not re.search(r"\[|\bS\d\d|\bR\d\d", re.sub(r"\[Cause|\[['\"]", "", text))


def test_a_kind_of_reel_has_its_own_rows() -> None:
    fly = {row.id for row in faults_of("fly")}
    assert "F60" in fly
    assert "F15" not in fly
    assert len(faults_of()) == len(faults())


def test_the_row_of_a_catching_level_wind() -> None:
    assert fault("F15").causes[0].words == "pawl tip worn"


def test_a_row_that_does_not_exist() -> None:
    with pytest.raises(KeyError, match="F71"):
        fault("F71")

"""What is drawn from the table of words fits what the shop knows."""

from __future__ import annotations

from random import Random

import pytest

from spoolwright.demo import words_said
from spoolwright.demo.cast import table
from spoolwright.judgement.works import all_works
from spoolwright.shop.acts.write_finding import FAULTS
from spoolwright.shop.questions.choices import CHANNELS

WORDS = table("words.toml")


@pytest.mark.parametrize("seed", range(20))
def test_a_yes_names_its_cap_and_the_cap_holds_the_sum(seed: int) -> None:
    words, channel, cap = words_said.yes(Random(seed), "put right", 744_00, with_cap=True)
    assert cap is not None
    assert cap >= 744_00
    assert f"{cap // 100:,}" in words
    assert channel in CHANNELS


@pytest.mark.parametrize("seed", range(40))
def test_the_middle_one_is_said_of_the_middle_one_only(seed: int) -> None:
    assert "middle" not in words_said.yes(Random(seed), "put right", 744_00, with_cap=False)[0]


def test_a_no_is_a_no() -> None:
    words, channel = words_said.no(Random(1))
    assert words
    assert channel in CHANNELS


@pytest.mark.parametrize("seed", range(10))
def test_findings_are_rows_of_the_fault_table(seed: int) -> None:
    found = words_said.findings(Random(seed))
    assert 1 <= len(found) <= 3
    assert all(fault in FAULTS and part and evidence for part, fault, evidence in found)


@pytest.mark.parametrize("seed", range(10))
def test_what_was_found_later_was_not_agreed_already(seed: int) -> None:
    extra = words_said.extra(Random(seed), ["new-idler-cog"])
    assert extra["work"] != "new-idler-cog"
    assert extra["fault"] in FAULTS


def test_works_that_are_named_are_on_the_list() -> None:
    named = [row["work"] for row in WORDS["extras"]] + [row["work"][0] for row in WORDS["quick"]]
    assert set(named) <= set(all_works())


def test_small_jobs_and_lines_have_a_price() -> None:
    assert words_said.small_job(Random(1))["priced"][1] > 0
    assert words_said.new_line(Random(1))["kroner"] > 0
    assert words_said.complaint(Random(1))
    assert words_said.last_opened(Random(1))

"""The refusal of a sweep that was to run on a cluster."""

from spoolwright.command.__main__ import in_words, refusals
from spoolwright.judgement.no_cluster import NoCluster


def test_it_is_told_in_its_own_words_and_is_no_crash() -> None:
    assert in_words(NoCluster("nobody answers")) == "nobody answers"
    assert NoCluster in refusals()

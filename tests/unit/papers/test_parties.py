"""Who stands on a paper can be given with as little as a name."""

import dataclasses

import pytest

from spoolwright.papers import quote
from spoolwright.papers.parties import Addressee, House, ReelMark
from tests.unit.papers import pdf, samples


def test_a_name_alone_is_enough() -> None:
    paper = quote.render(
        samples.a_quote(shop=House("Kvie"), customer=Addressee("Ragna"), reel=ReelMark("1", "Tarvak 58R"))
    )
    assert "Ragna" in pdf.text(paper)


def test_a_party_is_not_changed_after_the_fact() -> None:
    with pytest.raises(dataclasses.FrozenInstanceError):
        samples.SHOP.name = "Other"  # type: ignore[misc]

"""In whose units a paper speaks."""

import pytest
from django.test import RequestFactory

from spoolwright.pages.gathered.units import units_of_paper


@pytest.mark.django_db
@pytest.mark.parametrize(
    ("asked", "units"), [("", "metric"), ("?units=imperial", "imperial"), ("?units=cubits", "metric")]
)
def test_the_shops_own_unless_others_are_asked_for(asked: str, units: str) -> None:
    assert units_of_paper(RequestFactory().get(f"/paper/quote-1.pdf{asked}")) == units

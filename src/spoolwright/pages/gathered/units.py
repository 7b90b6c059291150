"""In whose units a paper speaks: the customer's, which the shop has settled, unless another is asked for."""

from __future__ import annotations

from django.http import HttpRequest

from spoolwright import quantities
from spoolwright.pages import doors


def units_of_paper(request: HttpRequest) -> str:
    """ "?units=imperial" in the address goes before what the shop has settled for its papers."""
    asked = request.GET.get("units", "")
    return asked if asked in quantities.SYSTEMS else doors.shop(request).units

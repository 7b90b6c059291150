"""Each person's own units and look, from the foot of every page."""

from django.http import HttpRequest, HttpResponse, HttpResponseRedirect
from django.views.decorators.http import require_POST

from spoolwright.pages import doors
from spoolwright.shop.acts.change_person import change_person
from spoolwright.shop.acts.refused import Refused


@require_POST
def units(request: HttpRequest) -> HttpResponse:
    return chosen(request, "units")


@require_POST
def look(request: HttpRequest) -> HttpResponse:
    return chosen(request, "look")


def chosen(request: HttpRequest, what: str) -> HttpResponse:
    try:
        change_person(hand=request.user, person=request.user, **{what: request.POST.get(what, "")})
    except Refused as refusal:
        return doors.page(request, "refused.html", {"refusal": refusal}, status=doors.REFUSED)
    return HttpResponseRedirect(doors.back_to(request))

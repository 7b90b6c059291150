"""Put a question together and ask it; show it as the customer sees it."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.gathered.units import units_of_paper
from spoolwright.pages.quote.as_shown import as_shown
from spoolwright.pages.quote.desk import KINDS, Desk
from spoolwright.pages.quote.making import Making
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.send_quote import send_quote
from spoolwright.shop.questions import by_number


@require_http_methods(["GET", "HEAD", "POST"])
def quote(request: HttpRequest, tag: int) -> HttpResponse:
    desk = Desk(request, tag)
    making = Making(desk, doors.posted(request))
    if making.wants_sending and making.may_be_sent():
        try:
            sent = send_quote(hand=request.user, visit=desk.visit, **making.offered())
        except Refused as refusal:
            making.refused(refusal)
        else:
            words = "Written. Show this to the customer, or print it; the answer goes into the diary."
            return doors.written(request, words, "quote:customer", tag, sent.entry.pk)
    facts = {"desk": desk, "making": making, "kinds": KINDS, "diary": doors.way_to("diary:diary", tag)}
    status = doors.REFUSED if making.wants_sending else 200
    return doors.page(request, "quote/make.html", facts, piece="quote/_outcomes.html", status=status)


@require_safe
def customer(request: HttpRequest, tag: int, entry: int) -> HttpResponse:
    """No account for the customer: the shop shows this on its own phone, or prints it."""
    asked = doors.found(by_number.entry(entry))
    doors.found(asked if asked.kind == "quote" and asked.visit.tag == tag else None)
    shown = as_shown(asked, doors.shop(request), units_of_paper(request))
    return doors.page(request, "quote/customer.html", {"shown": shown})

"""The bench as it looks: its places in their order, and in each of them the reels that lie there."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.on_the_bench.lines import first_of, laid_out, not_to_be_turned
from spoolwright.pages.words import when
from spoolwright.shop.questions import on_the_bench as ask
from spoolwright.shop.questions.trace_marks import pulls_of_entries


@require_safe
def bench(request: HttpRequest) -> HttpResponse:
    places = ask.on_the_bench()
    marks = pulls_of_entries(reel.trace_entry for place in places for reel in place.reels)
    laid = laid_out(places, marks)
    facts = {
        "places": laid,
        "today": when.today(),
        "first": first_of(laid),
        "minutes": sum(line.reel.next.minutes for place in laid for line in place.lines),
        "not_to_be_turned": not_to_be_turned(laid),
        "arrive": doors.way_to("arrival:arrive"),
    }
    return doors.page(request, "on_the_bench/bench.html", facts)

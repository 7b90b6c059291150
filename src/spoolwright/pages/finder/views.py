"""Look for anything: a tag, a name, a reel, a word that somebody wrote."""

from django.http import HttpRequest, HttpResponse, HttpResponseRedirect
from django.views.decorators.http import require_safe

from spoolwright.pages import doors
from spoolwright.pages.finder.lines import lines
from spoolwright.shop.questions import by_number
from spoolwright.shop.questions import find as ask

MOST = 40
LONGEST = 200


@require_safe
def find(request: HttpRequest) -> HttpResponse:
    text = request.GET.get("q", "").replace("\x00", "")[:LONGEST]
    at_once = "" if doors.fragment_wanted(request) or "all" in request.GET else way_to_tag(text)
    if at_once:
        return HttpResponseRedirect(at_once)
    found = lines(text, ask.find(text, limit=MOST + 1))
    facts = {"text": text, "found": found[:MOST], "more": len(found) > MOST, "most": MOST}
    return doors.page(request, "finder/find.html", facts, piece="finder/_found.html")


def way_to_tag(text: str) -> str:
    """The number on a tag, typed alone, leads straight to its diary."""
    number = text.strip()
    if not (number.isascii() and number.isdigit() and len(number) < 10):
        return ""
    visit = by_number.visit_tagged(int(number))
    return doors.way_to("diary:diary", visit.tag) if visit else ""

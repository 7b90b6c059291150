"""The arrival on one page, and the numbers that were given."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.arrival import given_numbers, mat
from spoolwright.pages.arrival.arriving import received
from spoolwright.pages.arrival.forms import Around, ArrivalForm, as_typed
from spoolwright.pages.arrival.photos import Photos, put_away
from spoolwright.pages.words import shown
from spoolwright.shop.acts.receive_parcel import receive_parcel
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.questions import by_number

WRITE, ONE_MORE = "write", "one more"


@require_http_methods(["GET", "HEAD", "POST"])
def arrive(request: HttpRequest) -> HttpResponse:
    if request.method != "POST":
        rows = mat.reels_counted({mat.REELS: request.GET.get("reels", "")})
        return asked(request, ArrivalForm(rows=rows, around=around(request, rows)))
    step = request.POST.get("step", WRITE)
    rows = min(mat.reels_counted(request.POST) + (step == ONE_MORE), mat.MOST_REELS)
    beside = around(request, rows)
    if step != WRITE:
        return asked(request, as_typed(request.POST, rows=rows, around=beside), step)
    form = ArrivalForm(request.POST, rows=rows, around=beside)
    if form.is_valid():
        try:
            written = receive_parcel(hand=request.user, **received(form))
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            said = given_numbers.said(written)
            return doors.written(request, said, "arrival:arrived", written.parcel.number)
    return asked(request, form)


@require_safe
def arrived(request: HttpRequest, number: int) -> HttpResponse:
    parcel = doors.found(by_number.parcel(number), "No envelope of ours carries this number.")
    reels = given_numbers.given(by_number.visits_of_parcel(parcel))
    return doors.page(request, "arrival/arrived.html", {"parcel": parcel, "reels": reels})


def asked(request: HttpRequest, form: ArrivalForm, step: str = "") -> HttpResponse:
    others = (("customer:add", "a customer"), ("passport:add", "a reel"))
    ways = [(address, words) for name, words in others if (address := doors.way_to(name))]
    return doors.asked(request, "arrival/arrive.html", form, {"step": step, "ways": ways})


def around(request: HttpRequest, rows: int) -> Around:
    photos = [put_away(request, row) if request.method == "POST" else Photos() for row in range(rows)]
    return Around(shown.system_of(request.user), doors.shop(request), photos)

"""The shop book: read by everybody here; a proof is set aside with a reason, and taken back."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from spoolwright.pages import doors
from spoolwright.pages.book.chapters import parts, silent
from spoolwright.pages.book.fault_leaf import FaultLeaf
from spoolwright.pages.book.forms import AsideForm
from spoolwright.pages.book.leaf import Leaf
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.set_aside import set_aside
from spoolwright.shop.acts.take_back import take_back
from spoolwright.shop.questions import book as questions
from spoolwright.shop.questions import by_number


@require_safe
def book(request: HttpRequest) -> HttpResponse:
    held = questions.shop_book()
    aside = [(row, doors.way_to("diary:diary", row.entry.visit.tag)) for row in questions.standing_aside()]
    facts = {
        "parts": parts(held),
        "proofs": held.proofs,
        "leanings": held.leanings,
        "aside": aside,
        "silent": silent(held),
    }
    return doors.page(request, "book/book.html", facts)


@require_http_methods(["GET", "HEAD", "POST"])
def coefficient(request: HttpRequest, key: str) -> HttpResponse:
    leaf = leaf_of(request, key)
    if request.method != "POST":
        return doors.page(request, "book/coefficient.html", {"leaf": leaf})
    typed = request.POST.get("entry", "")
    entry = doors.found(by_number.entry(int(typed)) if typed.isdigit() else None)
    form = AsideForm(request.POST, entry.pk)
    if form.is_valid():
        try:
            everywhere = form.cleaned_data["everywhere"]
            set_aside(
                hand=request.user,
                entry=entry,
                reason=form.cleaned_data["reason"],
                coefficient="" if everywhere else key,
            )
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "Set aside. The book is reckoned anew.", "book:coefficient", key)
    facts = {"leaf": leaf_of(request, key, form), "form": form}
    return doors.page(request, "book/coefficient.html", facts, status=doors.REFUSED)


@require_POST
def back(request: HttpRequest, key: str, number: int) -> HttpResponse:
    row = doors.found(questions.set_aside_row(number))
    leaf_of(request, key)
    try:
        take_back(hand=request.user, set_aside=row, words=request.POST.get("words", "").strip())
    except Refused as refusal:
        return doors.page(request, "refused.html", {"refusal": refusal}, status=doors.REFUSED)
    return doors.written(request, "Taken back: it counts again.", "book:coefficient", key)


def leaf_of(request: HttpRequest, key: str, form: AsideForm | None = None) -> Leaf | FaultLeaf:
    """The page of a coefficient, or of how often a fault is found."""
    return (FaultLeaf if key.startswith("fault-") else Leaf)(request, key, form)

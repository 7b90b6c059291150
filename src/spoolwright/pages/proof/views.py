"""Promised beside measured; the proof is written by one hand and signed by another."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_POST

from spoolwright.pages import doors
from spoolwright.pages.proof.bench import Bench
from spoolwright.pages.proof.forms import ProofForm
from spoolwright.shop.acts.open_diary import Beside, Written
from spoolwright.shop.acts.prove import ProofPair, prove
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.sign_proof import sign_proof
from spoolwright.shop.questions import by_number


@require_http_methods(["GET", "HEAD", "POST"])
def proof(request: HttpRequest, tag: int) -> HttpResponse:
    bench = Bench(request, tag)
    form = ProofForm(doors.posted(request), bench)
    if form.is_bound and form.is_valid():
        try:
            written = write(request, bench, form)
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            words = f"Written.{meanwhile(written)} A second person winds it blind and signs below."
            return doors.written(request, words, "proof:proof", tag)
    facts = {
        "bench": bench,
        "diary": doors.way_to("diary:diary", tag),
        "book": doors.way_to("book:book"),
        "paper": doors.way_to("paper:proof", bench.written.entry.pk) if bench.written else "",
    }
    return doors.asked(request, "proof/proof.html", form, facts)


@require_POST
def sign(request: HttpRequest, tag: int, entry: int) -> HttpResponse:
    """The second hand; whoever wrote the proof is told that it takes another one."""
    proved = doors.found(by_number.entry(entry))
    doors.found(proved if proved.kind == "proof" and proved.visit.tag == tag else None)
    seen = request.POST.get("seen", "")
    try:
        sign_proof(
            hand=request.user,
            proof=proved.proof,
            words=request.POST.get("words", "").strip(),
            seen=int(seen) if seen.isdigit() else None,
        )
    except Refused as refusal:
        return doors.page(request, "refused.html", {"refusal": refusal}, status=doors.REFUSED)
    return doors.written(request, "Signed.", "proof:proof", tag)


def write(request: HttpRequest, bench: Bench, form: ProofForm) -> Written:
    told = form.cleaned_data
    return prove(
        hand=request.user,
        visit=bench.visit,
        pairs=[ProofPair(row.promise, row.measured, row.before) for row in bench.pairs],
        tried=form.tried_by_hand(),
        beside=Beside(words=told["words"], moved_to=told["moved_to"], seen=told["seen"]),
    )


def meanwhile(written: Written) -> str:
    """Whose entries stand before it that the writer had not seen."""
    names = dict.fromkeys(entry.author.shown for entry in written.missed)
    return f" Meanwhile {', '.join(names)} wrote in this diary too." if names else ""

"""The pen: shows a form in the open block, hands what it holds to an act, and shows what was written."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from django.contrib import messages
from django.http import HttpResponse, HttpResponseRedirect

from spoolwright.pages import doors
from spoolwright.pages.diary import head, open_block
from spoolwright.pages.diary.ask.ink_form import InkForm
from spoolwright.pages.diary.desk import Desk
from spoolwright.pages.diary.told.blocks import told
from spoolwright.pages.words import when
from spoolwright.shop.acts.open_diary import Written
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.acts.write_again import write_again
from spoolwright.shop.questions.blocks import Block


def write(desk: Desk, form: InkForm, act: Callable[[], Written]) -> HttpResponse:
    """Let the act write what the form holds; whatever it refuses stands beside its field."""
    if not form.is_ready:
        return asked(desk, form)
    try:
        written = _again(desk, form, act) if form.old_stands else act()
    except Refused as refusal:
        doors.put_refusal_on(form, refusal)
        return asked(desk, form)
    if form.old_stands:
        return doors.written(desk.request, "Written again.", f"{desk.address}#entry-{written.entry.pk}")
    return answered(desk, written, form.cleaned_data["seen"])


def _again(desk: Desk, form: InkForm, act: Callable[[], Written]) -> Written:
    assert form.old is not None
    reason = form.cleaned_data["reason"]
    return write_again(hand=desk.hand, entry=form.old.entry, reason=reason, write=act)


def asked(desk: Desk, form: InkForm | None) -> HttpResponse:
    """The diary with this form in its open block; the block alone where a piece is wanted."""
    refused = form is not None and form.is_bound and not form.is_valid()
    facts = {"open": open_block.laid_out(desk, form)}
    if doors.fragment_wanted(desk.request):
        # A form that was chosen takes the focus; one that comes back leaves it where the hand was.
        facts["takes_focus"] = form is None or not form.is_bound
    if not doors.fragment_wanted(desk.request):
        facts |= head.facts(desk) | {"blocks": told(desk, desk.diary.blocks, seen=_seen(desk))}
    status = doors.REFUSED if refused else 200
    return doors.page(desk.request, "diary/diary.html", facts, piece="diary/_open_block.html", status=status)


def answered(desk: Desk, written: Written, seen: int | None) -> HttpResponse:
    """After an act: the entry, what others wrote meanwhile before it, where the reel is, the next block."""
    since = written.entry.seq - 1 if seen is None else seen
    if not doors.fragment_wanted(desk.request):
        messages.success(desk.request, "Written.")
        missed = f"?seen={since}" if written.missed else ""
        return HttpResponseRedirect(f"{desk.address}{missed}#entry-{written.entry.pk}")
    desk.look_again()
    facts = {"blocks": _since(desk, since), "open": open_block.laid_out(desk, None), "takes_focus": True}
    facts |= head.facts(desk)
    response = doors.page(desk.request, "diary/_written.html", facts)
    response["X-Written"] = "1"
    response["HX-Replace-Url"] = desk.address
    return response


def _since(desk: Desk, seen: int) -> Sequence[Any]:
    new = [block for block in desk.diary.blocks if block.entry.seq > seen]
    return told(desk, new, before=_day_before(desk.diary.blocks, seen), seen=seen)


def _day_before(blocks: Sequence[Block], seen: int) -> Any:
    above = [block for block in blocks if block.entry.seq <= seen]
    return when.local_day(above[-1].entry.written_at) if above else None


def _seen(desk: Desk) -> int:
    """What the writer had seen when others wrote, said in the address after a page without scripts."""
    said = desk.request.GET.get("seen", "")
    return int(said) if said.isascii() and said.isdigit() and len(said) < 9 else -1

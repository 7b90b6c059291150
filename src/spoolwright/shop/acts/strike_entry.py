"""Strike an entry through, with the reason. It stays readable; nothing in it is changed."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.open_diary import open_diary
from spoolwright.shop.acts.put import needed, put
from spoolwright.shop.acts.refused import Refused
from spoolwright.shop.records.entry import Entry, Strike
from spoolwright.shop.records.findable import Findable
from spoolwright.shop.records.people import Person


class EntryWasAlreadyStruck(Refused):
    def __init__(self, strike: Strike) -> None:
        super().__init__(f"{strike.author.shown} has struck this entry already: {strike.reason}")
        self.strike = strike


class ReplacementWasElsewhere(Refused):
    def __init__(self) -> None:
        super().__init__("What was written instead must be a later entry of the same diary.", "replaced_by")


@transaction.atomic
def strike_entry(*, hand: Person, entry: Entry, reason: str, replaced_by: Entry | None = None) -> Strike:
    """`replaced_by` is the entry that was written again, where there is one."""
    diary = open_diary(hand, entry.visit, even_after_dispatch=True)
    _refuse_second_strike(entry)
    if replaced_by and (replaced_by.visit_id != entry.visit_id or replaced_by.seq <= entry.seq):
        raise ReplacementWasElsewhere
    strike = put(
        Strike(
            entry=entry,
            reason=needed(reason, "reason", "The reason"),
            author=diary.hand,
            written_at=clock.now(),
            replaced_by=replaced_by,
        )
    )
    if entry.kind == "dispatch":
        diary.visit.sent_home_at = None
        diary.visit.save(update_fields=["sent_home_at"])
    _let_search_find_the_reason(entry, reason)
    return strike


def _refuse_second_strike(entry: Entry) -> None:
    if earlier := Strike.objects.filter(entry=entry).select_related("author").first():
        raise EntryWasAlreadyStruck(earlier)


def _let_search_find_the_reason(entry: Entry, reason: str) -> None:
    found = Findable.objects.filter(kind="entry", ref=entry.pk).first()
    if found:
        make_findable(
            kind="entry",
            ref=entry.pk,
            title=found.title,
            words=[found.words, f"struck: {reason}"],
            visit=entry.visit,
        )

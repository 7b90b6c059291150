"""Open a visit's diary for writing: the row is locked, and whoever comes second sees what the first wrote."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spoolwright.shop.acts import clock
from spoolwright.shop.acts.make_findable import make_findable
from spoolwright.shop.acts.put import our_hand, put, put_all
from spoolwright.shop.acts.refused import FieldWasRefused, ReelHadGoneHome
from spoolwright.shop.records.attachment import Attachment, EntryAttachment
from spoolwright.shop.records.entry import Entry
from spoolwright.shop.records.people import Person
from spoolwright.shop.records.visit import PLACES, Visit


@dataclass(frozen=True)
class Attached:
    """A file for an entry, with the words beside it."""

    attachment: Attachment
    caption: str = ""


@dataclass(frozen=True)
class Beside:
    """What any entry may have beside its typed part: words, the place it moves the reel to, files.

    `seen` is the number of the last entry that the writer saw; None: nobody was looking.
    """

    words: str = ""
    moved_to: str = ""
    attached: Sequence[Attached] = ()
    seen: int | None = None


NOTHING_BESIDE = Beside()


@dataclass(frozen=True)
class Written:
    """The entry that was written, and those that others wrote since the writer last looked."""

    entry: Entry
    missed: tuple[Entry, ...] = ()


@dataclass
class OpenDiary:
    """A diary under lock; `write` puts the next entry into it."""

    hand: Person
    visit: Visit

    def write(self, kind: str, beside: Beside, said: Iterable[str] = ()) -> Written:
        """Write one entry; `said` are the words of its typed part, for search."""
        if beside.moved_to and beside.moved_to not in PLACES:
            raise FieldWasRefused("moved_to", [f"There is no such place. Accepted: {', '.join(PLACES)}."])
        missed = self._missed(beside.seen)
        entry = put(
            Entry(
                visit=self.visit,
                seq=self.visit.last_seq + 1,
                kind=kind,
                author=self.hand,
                written_at=clock.now(),
                moved_to=beside.moved_to,
                words=beside.words,
            )
        )
        put_all(
            EntryAttachment(entry=entry, position=i, attachment=a.attachment, caption=a.caption)
            for i, a in enumerate(beside.attached)
        )
        self._turn_page(entry)
        self._let_search_find(entry, said)
        return Written(entry, missed)

    def _missed(self, seen: int | None) -> tuple[Entry, ...]:
        if seen is None or seen >= self.visit.last_seq:
            return ()
        later = Entry.objects.filter(visit=self.visit, seq__gt=seen)
        return tuple(later.select_related("author").order_by("seq"))

    def _turn_page(self, entry: Entry) -> None:
        self.visit.last_seq = entry.seq
        changed = ["last_seq"]
        if entry.moved_to:
            self.visit.place = entry.moved_to
            self.visit.place_since = entry.written_at
            self.visit.version += 1
            changed += ["place", "place_since", "version"]
        self.visit.save(update_fields=changed)

    def _let_search_find(self, entry: Entry, said: Iterable[str]) -> None:
        words = [self._number_on_its_paper(entry), entry.words, *said]
        if any(words):
            title = f"{entry.kind}: {self.visit.reel.described}, tag {self.visit.tag}"
            make_findable(kind="entry", ref=entry.pk, title=title, words=words, visit=self.visit)

    def _number_on_its_paper(self, entry: Entry) -> str:
        """ "quote 83-2": what a customer reads aloud who rings about it; a bill has a number of its own."""
        if entry.kind not in ("quote", "proof"):
            return ""
        place = Entry.objects.filter(visit=self.visit, kind=entry.kind, seq__lte=entry.seq).count()
        return f"{entry.kind} {self.visit.tag}-{place}"


def open_diary(hand: Person | None, visit: Visit, *, even_after_dispatch: bool = False) -> OpenDiary:
    """Lock the visit's row and hand out its diary; refused to strangers and for reels gone home."""
    ours = our_hand(hand)
    locked = Visit.objects.select_for_update(of=("self",)).select_related("reel").get(pk=visit.pk)
    if not locked.is_open and not even_after_dispatch:
        raise ReelHadGoneHome(locked.tag)
    return OpenDiary(ours, locked)

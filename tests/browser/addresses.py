"""Which addresses of the filled shop are looked at, for each route that can be opened: some unlike ones."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any

from django.urls import reverse

from spoolwright.pages.casts import ready
from spoolwright.shop.models import (
    Attachment,
    Customer,
    Entry,
    GaugeStudy,
    Invoice,
    Parcel,
    Reel,
    SheetVersion,
    Visit,
)

Args = Iterable[tuple[Any, ...]]
BESIDE_THE_REEL = ("answer", "work", "invoice", "dispatch")


def one_at_each_place() -> list[Visit]:
    """The reel that has lain there longest, for every place where one lies."""
    found: dict[str, Visit] = {}
    for visit in Visit.objects.filter(sent_home_at=None).order_by("place_since"):
        found.setdefault(visit.place, visit)
    return list(found.values())


def longest_of_each_kind() -> list[Visit]:
    """The visit with the most entries for every reel sheet, and of the reels that have none."""
    found: dict[int | None, Visit] = {}
    for visit in Visit.objects.select_related("reel").order_by("-last_seq"):
        found.setdefault(visit.reel.sheet_version_id, visit)
    return list(found.values())


def entries(kind: str, most: int = 3) -> list[Entry]:
    """The newest, the oldest and one between of the entries of a kind that stand."""
    found = list(Entry.objects.filter(kind=kind, strike=None).order_by("pk"))
    step = max(1, (len(found) - 1) // max(1, most - 1))
    return found[::step][:most]


def of_visits(visits: Iterable[Visit], *more: Any) -> Args:
    return [(visit.tag, *more) for visit in {visit.pk: visit for visit in visits}.values()]


def of_entries(kind: str) -> Args:
    return [(entry.visit.tag, entry.pk) for entry in entries(kind)]


def signals() -> Args:
    """Readings with a curve, the oldest of each way that has one."""
    without = ("typed", "by hand")
    kept = Entry.objects.exclude(reading=None).exclude(reading__way__in=without).order_by("-pk")
    found = {entry.reading.way: entry for entry in kept}
    return [(entry.visit.tag, entry.pk) for entry in found.values()]


def reels() -> Args:
    known = [visit.reel_id for visit in longest_of_each_kind()]
    return [(pk,) for pk in dict.fromkeys([*known, Reel.objects.earliest("pk").pk])]


def sheets(*more: Any) -> Args:
    return [(version.sheet.slug, *more) for version in SheetVersion.objects.filter(number=1)]


def once_compiled(chosen: Callable[[], Args]) -> Callable[[], Args]:
    """The same addresses, once a cast can be worked out: until then the page comes again by itself."""

    def ready_first() -> Args:
        assert ready.is_ready(patience=600.0)
        return chosen()

    return ready_first


def pictures(folder: str) -> dict[str, Callable[[], Args]]:
    """The three addresses of a picture: an ordinary sheet, a reel and the visit with the longest diary."""
    described = Visit.objects.exclude(reel__sheet_version=None).order_by("-last_seq", "pk")
    return {
        f"{folder}:sheet": lambda: list(sheets())[:1],
        f"{folder}:reel": lambda: [(described[0].reel_id,)],
        f"{folder}:visit": lambda: [(described[0].tag,)],
    }


def instruments(*pages: str) -> dict[str, Callable[[], Args]]:
    """Pages of one instrument: the one that was studied."""
    return {
        f"instruments:{page}": lambda: [(GaugeStudy.objects.earliest("pk").instrument_id,)] for page in pages
    }


COEFFICIENTS = ("friction-woven-carbon-greased-new-discs", "fault-f15-round-multiplier")

CHOSEN: dict[str, Callable[[], Args]] = {
    "arrival:arrived": lambda: [(parcel.number,) for parcel in Parcel.objects.order_by("-pk")[:2]],
    "book:coefficient": lambda: [(key,) for key in COEFFICIENTS],
    "customer:customer": lambda: [(one.pk,) for one in Customer.objects.order_by("pk")[:3]],
    "customer:change": lambda: [(Customer.objects.latest("pk").pk,)],
    "diary:diary": lambda: of_visits([*one_at_each_place(), *longest_of_each_kind()]),
    "diary:write": lambda: [
        (tag, what) for (tag,) in list(of_visits(one_at_each_place()))[:1] for what in BESIDE_THE_REEL
    ],
    "diary:typed": lambda: [(one_at_each_place()[0].tag, "pull_full")],
    "diary:trace": signals,
    "diary:strike": lambda: [(entry.visit.tag, entry.pk) for entry in entries("arrival", 1)],
    "diary:gauge": lambda: [()],
    "diary:file": lambda: [(one.pk,) for one in Attachment.objects.order_by("pk")[:1]],
    "diary:small": lambda: [(Attachment.objects.filter(media_type="image/png").earliest("pk").pk,)],
    "paper:bag_tag": lambda: of_visits(one_at_each_place()[:1]),
    "paper:quote": lambda: [(entry.pk,) for entry in entries("quote")],
    "paper:proof": lambda: [(entry.pk,) for entry in entries("proof")],
    "paper:invoice": lambda: [(one.number,) for one in Invoice.objects.order_by("-pk")[:1]],
    "passport:passport": reels,
    "proof:proof": lambda: [(entry.visit.tag,) for entry in entries("proof")],
    "quote:quote": lambda: of_visits([*one_at_each_place()[:2], Visit.objects.latest("tag")]),
    "quote:customer": lambda: of_entries("quote"),
    "reel_sheet:sheet": sheets,
    "reel_sheet:parts": sheets,
    "reel_sheet:versions": sheets,
    "reel_sheet:toml": lambda: sheets(1),
    "reel_sheet:new_version": lambda: list(sheets())[:1],
    "settings_page:person": lambda: [("torbal",)],
    "instruments:add": lambda: [("micrometer",)],
    "instruments:study": lambda: [(GaugeStudy.objects.earliest("pk").pk,)],
    "paper:reading": lambda: [(entry,) for _, entry in signals()],
    **instruments("one", "change", "check", "put_away", "add_study"),
    **pictures("carries"),
    **{route: once_compiled(chosen) for route, chosen in pictures("casts").items()},
    **pictures("long_run"),
    **pictures("wears"),
}
"""A route whose address holds something; any other is looked at as it is."""

ASKED = {"finder:find": "?q=Tarvak", "reel_sheet:new_sheet": "?from=tarvak-52"}
"""What is asked for besides, where the bare page says little."""


def addresses(route: str) -> list[str]:
    if route not in CHOSEN:
        return [reverse(route) + ASKED.get(route, "")]
    return [reverse(route, args=args) for args in CHOSEN[route]()]

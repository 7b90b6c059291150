"""What a test of the diary does at the desk: sends a form as a browser would, and reads what came back."""

from __future__ import annotations

import io
import re
from typing import Any

from django.core.files.uploadedfile import SimpleUploadedFile
from django.http import HttpResponse
from django.test import Client, RequestFactory
from PIL import Image

from spoolwright.demo import signals
from spoolwright.pages.diary.desk import Desk
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.describe_reel import describe_reel
from spoolwright.shop.questions.diary import diary
from tests.shop import walk

HTMX = {"HX-Request": "true"}
PULL = {
    "setting": "part",
    "line": "on",
    "radius": "23.5",
    "radius_unit": "mm",
    "star_turns": "1 1/4",
    "pull_number": "2",
    "pulls_of": "3",
    "temperature": "19",
    "temperature_unit": "°C",
}
SPIN = {
    "line": "off",
    "brakes": "off",
    "temperature": "19",
    "temperature_unit": "°C",
    "marks": "1",
    "inertia_from": "unknown",
}


def signed_in(person: Any) -> Client:
    client = Client()
    client.force_login(person)
    return client


def arrived(hand: Any, sheet: str = "tarvak-58r", **told: Any) -> Any:
    """A reel on the mat whose sheet is known."""
    visit = walk.arrived(hand, **told)
    if sheet:
        version = add_sheet_version(hand=hand, toml=reel_sheet.shipped()[sheet])
        describe_reel(hand=hand, reel=visit.reel, sheet_version=version, version=visit.reel.version)
    return visit


def desk_of(hand: Any, visit: Any, method: str = "get", **sent: Any) -> Desk:
    """A desk without a browser, for what needs no request of its own."""
    request = getattr(RequestFactory(), method)("/", sent)
    request.user = hand
    request.session = {}
    return Desk(request, visit.tag)


def way(visit: Any, what: str) -> str:
    return f"/diary/{visit.tag}/write/{what}/"


def typed_way(visit: Any, kind: str) -> str:
    return f"/diary/{visit.tag}/reading/{kind}/"


def send(client: Client, address: str, do: str = "write", htmx: bool = False, **sent: Any) -> HttpResponse:
    return client.post(address, {"do": do, **sent}, headers=HTMX if htmx else {})


def file(data: bytes, name: str = "pull.csv", kind: str = "text/csv") -> SimpleUploadedFile:
    return SimpleUploadedFile(name, data, kind)


def pull_csv(style: str = "plain", seed: int = 2, **shape: float) -> bytes:
    return signals.pull_trace(signals.PullShape(**shape), seed=seed).to_csv(style)


def photo(kind: str = "JPEG", size: tuple[int, int] = (800, 600)) -> bytes:
    out = io.BytesIO()
    Image.new("RGB", size, (190, 180, 160)).save(out, kind)
    return out.getvalue()


def text(response: HttpResponse) -> str:
    """The page without its marks, blanks run together."""
    bare = re.sub(r"<script.*?</script>|<[^>]+>", " ", response.content.decode(), flags=re.DOTALL)
    for mark, sign in (("&nbsp;", " "), ("\u00a0", " "), ("&#x27;", "'"), ("&quot;", '"'), ("&amp;", "&")):
        bare = bare.replace(mark, sign)
    return " ".join(bare.split())


def faults(response: HttpResponse) -> str:
    """What stands beside the fields and in the list of faults."""
    return text(response) if response.status_code == 422 else ""


def form(response: HttpResponse) -> Any:
    return response.context["open"].form


def count(visit: Any) -> int:
    """How many entries the diary has."""
    return len(diary(visit.pk).blocks)


def last(visit: Any) -> Any:
    return diary(visit.pk).blocks[-1]

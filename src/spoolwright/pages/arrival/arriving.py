"""From the form to the act: what is handed over the counter."""

from __future__ import annotations

from typing import Any

from spoolwright import quantities
from spoolwright.pages.arrival import mat
from spoolwright.pages.arrival.forms import ArrivalForm
from spoolwright.pages.arrival.which import NEW
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Counted, Envelope, Told
from spoolwright.shop.questions import reel_sheets

WEIGHED = {"on": "with its line", "off": "without line"}
YES_NO = {"yes": True, "no": False}
TOGETHER = "What else was in the parcel stands in the diary of its first reel."


def received(form: ArrivalForm) -> dict[str, Any]:
    """What the act is told."""
    given = form.cleaned_data
    return {
        "customer": form.chosen or new_customer(given),
        "envelope": envelope(given),
        "reels": [arriving(form, row.row) for row in form.rows],
    }


def new_customer(given: dict[str, Any]) -> NewCustomer:
    return NewCustomer(
        name=given["who"],
        address=given["address"],
        email=given["email"],
        telephone=given["telephone"],
        water=given.get("r0_water", ""),
    )


def envelope(given: dict[str, Any]) -> Envelope:
    return Envelope(
        came_by=given["came_by"],
        carrier=given["carrier"],
        carrier_number=given["carrier_number"],
        mass_kg=given["mass"],
        outer_damage=given["outer_damage"],
    )


def arriving(form: ArrivalForm, row: int) -> ArrivingReel:
    given = form.cleaned_data
    said = {
        name.removeprefix(f"r{row}_"): value for name, value in given.items() if name.startswith(f"r{row}_")
    }
    known = form.known_reels.chosen(said["which"]) if said["which"] != NEW else None
    return ArrivingReel(
        reel=known.reel if known else new_reel(said),
        return_of=known.return_of if known else None,
        contents=contents(given, said, row),
        told=told(said),
        needed_by=said["needed_by"],
        while_you_wait=given["while_you_wait"],
        words=words(given, row),
        attached=form.around.photos[row].attached(),
    )


def new_reel(said: dict[str, Any]) -> NewReel:
    weighed_bare = said["mass"] is not None and said["mass_line"] == "off"
    return NewReel(
        described=said["described"],
        sheet_version=reel_sheets.version(said["sheet"]) if said["sheet"] else None,
        winding_hand=said["winding_hand"],
        serial=said["serial"],
        twin_mark=said["twin_mark"],
        marks=(("mass without line", quantities.show(said["mass"], "mass")),) if weighed_bare else (),
    )


def contents(given: dict[str, Any], said: dict[str, Any], row: int) -> list[Counted]:
    """The reel and its line; and with the first reel everything else that lay on the mat."""
    line, on_mat = line_words(said), mat.lines_counted(given) if row == 0 else 0
    own = [Counted("reel", 1, said["mass"], WEIGHED.get(said["mass_line"], "") if said["mass"] else "")]
    if on_mat or (line and said["line"] != "none"):
        own.append(Counted("line", max(on_mat, 1), words=line))
    return [*own, *(mat.counted(given) if row == 0 else [])]


def line_words(said: dict[str, Any]) -> str:
    """ "nylon, 0.4 mm": it was stated, not measured."""
    if said["line"] == "none":
        return "none on it"
    thick = "" if said["line_diameter"] is None else quantities.show_stated(said["line_diameter"], "length")
    return ", ".join(filter(None, (said["line"], thick)))


def told(said: dict[str, Any]) -> Told:
    return Told(
        complaint=said["complaint"],
        water=said["water"],
        under_water_at=said["under_water_at"],
        last_opened=said["last_opened"],
        line_wish=said["line_wish"],
        line_words=line_words(said),
        old_parts_back=YES_NO.get(said["old_parts_back"]),
        up_to_minor=said["up_to"],
        used_value_minor=said["used_value"],
        send_back_to=said["send_back_to"],
    )


def words(given: dict[str, Any], row: int) -> str:
    if row == 0:
        return str(given["mat_words"])
    return TOGETHER if mat.counted(given) or given["mat_words"] else ""

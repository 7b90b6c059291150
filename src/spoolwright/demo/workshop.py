"""Opens the invented workshop: Ingjerd Vannes and Torbal Kvie, their settings, sheets and instruments."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from random import Random
from typing import Any

from spoolwright.demo import shelf
from spoolwright.judgement.shop_rates import ShopRates
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.add_person import add_person
from spoolwright.shop.acts.add_sheet_version import add_sheet_version
from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.questions.people import people, person
from spoolwright.shop.questions.shop_settings import rates, shop_settings

NAME = "Kvie & Vannes"
WARRANTY = (
    "Ninety days on our work and on the parts that we fitted, longer where the law says so. It does not "
    "cover a dunking, a fall, or a reel that somebody else has opened."
)
OWN_PRICES = {
    "pawl": 95_00, "spool bearing": 85_00, "carbon disc set": 190_00, "idler cog": 65_00,
    "hybrid spool bearing": 150_00, "drag disc set": 80_00, "end disc or shim": 20_00, "worm": 160_00,
    "dog and ears": 70_00, "click set": 40_00, "knob bearing": 50_00, "brake block set": 60_00,
}  # fmt: skip
"""What parts cost here, tax included. Invented; what is not on the list makes a quote a range."""

_AS_FIRST_MEASURED = ('flange_diameter = "50 mm"', 'flange_diameter = "49 mm"')


@dataclass(frozen=True)
class Workshop:
    """The two of them, what they charge by, the newest version of each sheet, instruments by their mark."""

    ingjerd: Any
    torbal: Any
    rates: ShopRates
    sheets: Mapping[str, Any]
    seed: int
    instruments: Mapping[str, Any] = field(default_factory=dict)

    def chance(self, story: str) -> Random:
        """A generator of this story's own, so that one more story does not change all others."""
        return Random(f"{self.seed}/{story}")


def open_workshop(seed: int) -> Workshop:
    """Write the two people, the settings and the sheets into a shop that has no visits yet."""
    owner = next((one for one in people() if one.is_owner and one.is_active), None)
    ingjerd = person("ingjerd") or add_person(
        hand=owner, username="ingjerd", name="Ingjerd Vannes", role="owner"
    )
    torbal = person("torbal") or add_person(hand=ingjerd, username="torbal", name="Torbal Kvie", role="bench")
    _settle(ingjerd)
    instruments = shelf.fill(ingjerd, torbal, Random(f"{seed}/shelf"))
    return Workshop(ingjerd, torbal, rates(), _sheets(ingjerd), seed, instruments)


def _settle(hand: Any) -> None:
    shop = shop_settings()
    if shop.version > 1:  # somebody has decided already what this shop is called and what it charges
        return
    change_settings(
        hand=hand,
        version=shop.version,
        name=NAME,
        address="Naustgata 4, Grånesvåg",
        contact="bench@kvie-vannes.example, by the harbour, weekdays",
        registration="invented",
        own_prices=OWN_PRICES,
        warranty=WARRANTY,
    )


def _sheets(hand: Any) -> dict[str, Any]:
    """The shipped sheets; of the pier reel a first version too, before its spool was measured again."""
    texts = reel_sheet.shipped()
    first = texts["tarvak-58r"].replace(_AS_FIRST_MEASURED[0], _AS_FIRST_MEASURED[1])
    add_sheet_version(hand=hand, toml=first, words="from the first one we had on the bench")
    return {slug: add_sheet_version(hand=hand, toml=text, words=_why(slug)) for slug, text in texts.items()}


def _why(slug: str) -> str:
    return "spool lip measured again, on three reels: 50 mm" if slug == "tarvak-58r" else ""

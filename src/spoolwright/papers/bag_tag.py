"""The tag tied to the reel's foot: its number large, whose it is, and a code that opens its passport."""

from __future__ import annotations

from dataclasses import asdict, dataclass

from spoolwright.papers import qr_code, typesetting

LONGEST_LINE = 72


@dataclass(frozen=True)
class BagTag:
    """What stands on a tag.

    `number` is the reel's own number (one per reel, never per parcel), `reel` its maker and model, `owner`
    whose it is, `arrived` the day as text, `address` what the code opens. `marks` are identity marks
    ("338 g without line", "serial 4471 under the foot"); `belongs` says what came with it ("one of 3 in
    envelope 117; spare spool in the lid"); `caution` is printed strongly ("Do not turn the handle").
    """

    number: str
    reel: str
    owner: str
    arrived: str
    address: str
    shop: str
    place: str = ""
    marks: tuple[str, ...] = ()
    belongs: str = ""
    caution: str = ""
    language: str = "en"


def _shortened(text: str) -> str:
    one_line = " ".join(text.split())
    return one_line if len(one_line) <= LONGEST_LINE else one_line[: LONGEST_LINE - 1] + "…"


def render(tag: BagTag) -> bytes:
    """The tag as a PDF page of 100 by 60 mm."""
    data = {
        key: [_shortened(line) for line in value[:3]] if isinstance(value, tuple) else _shortened(value)
        for key, value in asdict(tag).items()
        if key != "address"
    }
    code = qr_code.of(tag.address, f"QR code: opens the passport of reel {tag.number} at {tag.address}")
    return typesetting.render("bag_tag", data, {"code": code})

"""Reads a drawing back from its SVG text: parts, words with their boxes, leaders."""

import re
import xml.etree.ElementTree as ET
from dataclasses import dataclass

from PIL import ImageFont

from spoolwright.papers.typesetting import FONTS

SVG = "{http://www.w3.org/2000/svg}"
_FACE = ImageFont.truetype(str(FONTS / "routed-gothic.ttf"), 200)


@dataclass(frozen=True)
class Words:
    text: str
    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: "Words") -> bool:
        apart = self.right <= other.left or other.right <= self.left
        return not (apart or self.bottom <= other.top or other.bottom <= self.top)


def root(svg: str) -> ET.Element:
    return ET.fromstring(svg)


def parts(svg: str) -> dict[str, list[ET.Element]]:
    """Everything that can be touched, by its key."""
    found: dict[str, list[ET.Element]] = {}
    for element in root(svg).iter():
        if "part" in element.get("class", "").split():
            found.setdefault(element.attrib["data-part"], []).append(element)
    return found


def words(svg: str, kinds: tuple[str, ...] = ("name", "finding")) -> list[Words]:
    """Every line of lettering of these kinds with the box of its letters, measured by an outside library."""
    return [box(text) for text in root(svg).iter(f"{SVG}text") if text.get("class") in kinds]


def names(svg: str) -> list[str]:
    """The name at the end of each leader, its lines joined."""
    leaders = [g for g in root(svg).iter(f"{SVG}g") if g.get("class") == "leader-to"]
    return [" ".join(text.text or "" for text in g.iter(f"{SVG}text")) for g in leaders]


def box(text: ET.Element) -> Words:
    size, x, y = (float(text.attrib[key]) for key in ("font-size", "x", "y"))
    width = _FACE.getlength(text.text or "") * size / 200
    left = {"start": x, "end": x - width, "middle": x - width / 2}[text.attrib["text-anchor"]]
    return Words(text.text or "", left, y - 0.72 * size, left + width, y + 0.2 * size)


def uprights(svg: str) -> list[tuple[float, float, float]]:
    """The upright end of each leader: x, top, bottom."""
    found = []
    for path in root(svg).iter(f"{SVG}path"):
        if path.get("class") == "leader":
            _, _, x, kink, tip = map(float, re.findall(r"-?[\d.]+", path.attrib["d"]))
            found.append((x, min(kink, tip), max(kink, tip)))
    return found


def spread(element: ET.Element) -> tuple[float, float]:
    """Least and greatest x of the paths of a part."""
    xs = [
        float(x)
        for path in element.iter(f"{SVG}path")
        for x in re.findall(r"[ML](-?[\d.]+) ", path.attrib["d"])
    ]
    return min(xs), max(xs)

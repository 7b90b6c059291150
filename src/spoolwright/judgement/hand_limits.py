"""What may be measured by hand on this reel, how large each part was new, and beyond what it is rejected."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from math import acos, cos, inf, pi, tan

from spoolwright.judgement.guard_band import Limits
from spoolwright.sheets import materials, reading_kinds, wear_rates
from spoolwright.sheets.hand_guides import HandGuide
from spoolwright.sheets.reel_sheet import ReelSheet

TIP_SHARE = 0.85
"""Share of a new tooth's tip below which a gear is rejected: the house's list, judgement prior."""
TIP_MARK = "the house's list of reject limits: 85 % of new (judgement prior)"
FROM_THE_SHEET, AS_CUT = "new, by the sheet", "new, as a standard tooth of the sheet's module is cut"


@dataclass(frozen=True)
class HandPart:
    """One part as it is held against its limits: what it is called, its size when new [SI], the limits.

    `limits` is None where none is known; `source` says where they are from, `new_source` the size when new.
    """

    key: str
    title: str
    limits: Limits | None
    source: str
    new: float | None = None
    new_source: str = ""


def parts_of(
    guide: HandGuide, sheet: ReelSheet | None, tags: tuple[str, ...] = (), new: float | None = None
) -> tuple[HandPart, ...]:
    """The parts that a guide is for on one reel.

    Parameters
    ----------
    guide : HandGuide
        What is measured **[-]**.
    sheet : ReelSheet or None
        The model, where it is known **[SI]**.
    tags : tuple of str
        What limits may hang on **[-]**: kind of reel, "roller clutch".
    new : float or None
        Size when new as somebody typed it **[SI]**; it goes before the sheet's.

    Returns
    -------
    tuple of HandPart
        At least one **[SI]**.

    Notes
    -----
    Disc: rejected below a share of its new thickness, by its material. Tooth: below 85 % of the thickness at
    the tip circle s_a = d_a (pi/(2 z) + inv alpha - inv alpha_a), cos alpha_a = d cos alpha / d_a, for a full
    tooth without shift; that is what a pair is cut like if the sheet says no more.

    Source
    ------
    Limits: the house's list, judgement priors. Tooth: involute geometry, ISO 21771 (from memory).

    Examples
    --------
    >>> from spoolwright.sheets import hand_guides
    >>> worm = parts_of(hand_guides.guide("worm-groove"), None)[0]
    >>> round(worm.limits.high * 1e3, 3), round(worm.limits.reject_high * 1e3, 3)
    (0.1, 0.2)
    """
    found = tuple(_parts(guide, sheet, tags, new))
    return found if found else (HandPart("", _place(guide), None, "no limit is known"),)


def _parts(
    guide: HandGuide, sheet: ReelSheet | None, tags: tuple[str, ...], new: float | None
) -> Iterable[HandPart]:
    if guide.rule == "kind":
        limits = reading_kinds.kind(guide.kind).limits_for(*tags)
        if limits:
            yield HandPart("", _place(guide), Limits(*limits.look), limits.mark)
    elif guide.rule == "depth":
        depth = wear_rates.reject_depth(guide.depth)
        yield HandPart("", guide.place, _up_to(depth.low, depth.high), f"{depth.source} ({depth.how})")
    elif guide.rule == "stated":
        yield from _stated(guide, sheet, tags)
    elif guide.rule == "share of a disc":
        yield from _discs(sheet, new)
    else:
        yield from _teeth(sheet, new)


def _place(guide: HandGuide) -> str:
    return guide.place or reading_kinds.kind(guide.kind).title.lower()


def _up_to(accept: float, reject: float) -> Limits:
    return Limits(high=accept, reject_high=reject)


def _stated(guide: HandGuide, sheet: ReelSheet | None, tags: tuple[str, ...]) -> Iterable[HandPart]:
    row = guide.stated_for(*tags)
    if row is None:
        return
    one = HandPart("", _place(guide), _up_to(row.accept, row.reject), row.mark)
    if guide.part != "drag-" or sheet is None or sheet.drag is None:
        yield one
        return
    metal = [w for w in sheet.drag.stack if w.material not in materials.friction_names()]
    for washer in metal:
        yield replace(one, key=washer.name, title=washer.name)


def _discs(sheet: ReelSheet | None, new: float | None) -> Iterable[HandPart]:
    stack = sheet.drag.stack if sheet and sheet.drag else ()
    discs = [washer for washer in stack if washer.material in materials.friction_names()]
    for disc in discs:
        thick = new or disc.thickness
        yield _disc(disc.name, f"{disc.name}, {disc.material}", thick, disc.material, new is None)
    if not discs:
        thick_ = new
        if thick_ is None:
            yield HandPart("", "friction disc", None, "no limit is known without its thickness when new")
        else:
            yield _disc("", "friction disc", thick_, wear_rates.OTHER_DISC, False)


def _disc(key: str, title: str, new: float, material: str, by_sheet: bool) -> HandPart:
    share = wear_rates.reject_share(material)
    source = f"{share.source}: {100 * share.middle:.0f} % of new ({share.how})"
    said = FROM_THE_SHEET if by_sheet else "new, as typed"
    return HandPart(key, title, Limits(low=share.middle * new, high=inf), source, new, said)


def _teeth(sheet: ReelSheet | None, new: float | None) -> Iterable[HandPart]:
    cut = sheet.gears if sheet else None
    standard = cut is not None and cut.form == "side by side"
    for key, title in (("main", "main gear"), ("pinion", "pinion")):
        tip = new
        if tip is None and cut and standard:
            tip = _tip(cut.main_teeth if key == "main" else cut.pinion_teeth, cut.module, cut.pressure_angle)
        if tip is None:
            yield HandPart(key, title, None, "no limit is known without the thickness of a new tooth")
        else:
            said = AS_CUT if new is None else "new, as typed"
            yield HandPart(key, title, Limits(low=TIP_SHARE * tip), TIP_MARK, tip, said)


def _tip(teeth: int, module: float, angle: float) -> float:
    """Thickness of a full tooth without shift at its tip circle [m]."""
    pitch, tip = teeth * module, (teeth + 2) * module
    at_tip = acos(pitch * cos(angle) / tip)
    return tip * (pi / (2 * teeth) + _involute(angle) - _involute(at_tip))


def _involute(angle: float) -> float:
    return tan(angle) - angle

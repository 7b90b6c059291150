"""What some works make of the reel itself: its sheet with other sizes, other bearings, a part less."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from spoolwright.judgement.works import Effect, Work
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Check, Shaft, Springs

ON_SHEET = "sheet."
"""How the effects begin that change the reel itself; all others change its state."""


def changes_sheet(effect: Effect) -> bool:
    """Whether an effect changes the reel itself and not the state that it is in.

    Parameters
    ----------
    effect : Effect
        One effect of a work **[SI]**.

    Returns
    -------
    bool
        True for a size, a part or a material **[-]**.

    Source
    ------
    Our own bookkeeping.

    Examples
    --------
    >>> changes_sheet(Effect("sheet.handle.arm_length", "times", (1.2, 1.4), "judgement prior"))
    True
    """
    return effect.on.startswith(ON_SHEET)


def changed(sheet: ReelSheet, works: Sequence[Work], share: float = 0.5) -> ReelSheet:
    """The sheet of the reel that some works would leave behind.

    Parameters
    ----------
    sheet : ReelSheet
        The model as it was built **[SI]**; it is not touched.
    works : sequence of Work
        The works, in the order of the list **[-]**.
    share : float
        Where in the range of each change **[-]**, 0 its low end, 1 its high end.

    Returns
    -------
    ReelSheet
        The model after them **[SI]**; the very same where none of them changes it.

    Raises
    ------
    ValueError
        The share is outside 0 to 1; a work changes something that no sheet has.

    Notes
    -----
    A change of something that this reel does not have (a level wind, brake blocks) does nothing.

    Source
    ------
    works.toml, each effect with its mark.

    Examples
    --------
    >>> from spoolwright.judgement.works import all_works
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> changed(sheet, [all_works()["remove-level-wind"]]).level_wind is None
    True
    """
    if not 0 <= share <= 1:
        raise ValueError(f"share: 0 to 1 is accepted; got {share}")
    for work in works:
        for effect in work.effects:
            if changes_sheet(effect):
                sheet = _apply(sheet, effect, share)
    return sheet


def _apply(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    change = _CHANGES.get(effect.on.removeprefix(ON_SHEET))
    if change is None:
        known = ", ".join(f"{ON_SHEET}{name}" for name in _CHANGES)
        raise ValueError(f"works: nothing on a sheet is called {effect.on!r}; accepted: {known}")
    return change(sheet, effect, share)


def _number(effect: Effect, before: float, share: float) -> float:
    if isinstance(effect.value, str):
        raise ValueError(f"works: {effect.on!r} takes a number; got {effect.value!r}")
    low, high = effect.value if isinstance(effect.value, tuple) else (effect.value, effect.value)
    by = low + share * (high - low)
    if effect.way == "times":
        return before * by
    return before + by if effect.way == "plus" else by


def _with(sheet: ReelSheet, table: str, **fields: Any) -> ReelSheet:
    held = getattr(sheet, table)
    return sheet.model_copy(update={table: held.model_copy(update=fields)})


def _arm(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    if sheet.handle is None:
        return sheet
    return _with(sheet, "handle", arm_length=_number(effect, sheet.handle.arm_length, share))


def _blocks(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    if sheet.brakes is None or not sheet.brakes.blocks:
        return sheet
    return _with(sheet, "brakes", blocks=max(0, round(_number(effect, sheet.brakes.blocks, share))))


def _no_level_wind(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    return sheet.model_copy(update={"level_wind": None})


def _spool_bearings(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    bearings = tuple(
        one.model_copy(update={effect.on.rpartition(".")[2]: effect.value})
        if "spool" in one.place.lower()
        else one
        for one in sheet.bearings
    )
    return sheet.model_copy(update={"bearings": bearings})


def _spool_mass(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    """Metal is taken from everywhere alike, so mass and inertia fall by the same share."""
    room = sheet.spool
    fields = {name: held for name in ("mass", "inertia") if (held := getattr(room, name)) is not None}
    if not fields:
        return sheet
    return _with(sheet, "spool", **{name: _number(effect, held, share) for name, held in fields.items()})


def _shaft_material(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    return sheet if sheet.shaft is None else _with(sheet, "shaft", material=effect.value)


def _shaft_diameter(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    """Where the shaft has steps its thickest grow and the ends keep the bores of their bearings."""
    shaft = sheet.shaft
    if shaft is None:
        return sheet
    return _with(
        sheet, "shaft", diameter=_number(effect, shaft.diameter, share), steps=_steps(shaft, effect, share)
    )


def _steps(shaft: Shaft, effect: Effect, share: float) -> tuple[Any, ...]:
    thickest = max((step.diameter for step in shaft.steps), default=0.0)
    return tuple(
        step.model_copy(update={"diameter": _number(effect, step.diameter, share)})
        if step.diameter == thickest
        else step
        for step in shaft.steps
    )


def _springs(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    """The same springs set the other way: all back to back, or in twos nested and the twos back to back."""
    if sheet.drag is None:
        return sheet
    held = sheet.drag.springs
    turned = held.model_copy(update={"arrangement": _arranged(held, str(effect.value))})
    return _with(sheet, "drag", springs=turned)


def _arranged(springs: Springs, way: str) -> str:
    count = len(springs.arrangement)
    if way == "back to back":
        return "".join("()"[at % 2] for at in range(count))
    if way == "nested":
        return "".join("(())"[at % 4] for at in range(count)) if count > 1 else springs.arrangement
    raise ValueError(f"works: springs are set 'back to back' or 'nested'; got {way!r}")


def _click(sheet: ReelSheet, effect: Effect, share: float) -> ReelSheet:
    if sheet.check is not None:
        return sheet
    fitted = Check.model_construct(
        wheel_teeth=24, pawls=1, springs=1, pull=_number(effect, 0.0, share), pawl_material=None
    )
    return sheet.model_copy(update={"check": fitted})


_CHANGES: dict[str, Callable[[ReelSheet, Effect, float], ReelSheet]] = {
    "handle.arm_length": _arm,
    "brakes.blocks": _blocks,
    "level_wind": _no_level_wind,
    "bearings.spool.kind": _spool_bearings,
    "bearings.spool.shields": _spool_bearings,
    "spool.mass": _spool_mass,
    "shaft.material": _shaft_material,
    "shaft.diameter": _shaft_diameter,
    "drag.springs": _springs,
    "check.pull": _click,
}

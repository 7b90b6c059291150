"""What does a work change about the reel, by how much, and who says so? In plain words."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.judgement.works import Effect, Work

_NAMES = {
    "anti_reverse_slips": ("slips of the anti-reverse in 20 tries", ""),
    "bearing_condition": ("drag of the spool bearings, a sound run-in one being 1", ""),
    "bearing_lubricant": ("oil in the spool bearings", ""),
    "discs": ("friction discs", ""),
    "drag_condition": ("friction of the discs, as their material gives being 1", ""),
    "end_drag": ("rubbing at the spool's ends", "torque"),
    "end_float": ("sideways play of the spool", "length"),
    "handle_torque": ("torque that turns the handle with nothing on the line", "torque"),
    "judder": ("unevenness of the pull", ""),
    "pairs": ("slipping pairs", ""),
    "spring_force": ("force of the springs, as drawn being 1", ""),
    "stack_lubrication": ("discs run", ""),
    "stack_material": ("friction discs of", ""),
    "start_up_ratio": ("start-up pull over running pull", ""),
    "train_drag": ("rubbing of a level wind that is driven in the cast", "torque"),
    "sheet.bearings.spool.kind": ("spool bearings", ""),
    "sheet.brakes.blocks": ("brake blocks", ""),
    "sheet.check.pull": ("pull of the click at the line", "force"),
    "sheet.drag.springs": ("spring washers set", ""),
    "sheet.handle.arm_length": ("handle arm", "length"),
    "sheet.level_wind": ("level wind", ""),
    "sheet.shaft.diameter": ("thickness of the spool shaft", "length"),
    "sheet.shaft.material": ("spool shaft of", ""),
    "sheet.spool.mass": ("mass of the spool", "mass"),
}


def changes(work: Work, system: str = "metric") -> tuple[str, ...]:
    """Each physical change of a work: what, by how much, and where that comes from.

    Parameters
    ----------
    work : Work
        One work of the list **[SI]**.
    system : str
        "metric" or "imperial" **[-]**.

    Returns
    -------
    tuple of str
        Sentences without their full stop **[-]**; none where the work changes nothing that is reckoned.

    Source
    ------
    works.toml; the mark of each effect is said.

    Examples
    --------
    >>> from spoolwright.judgement.works import all_works
    >>> changes(all_works()["longer-handle"])
    ('handle arm 15 to 45 % more (45 to 55 or 65 mm, common practice, no source)',)
    """
    return tuple(f"{_what(effect, system)} ({effect.mark})" for effect in work.effects)


def _what(effect: Effect, system: str) -> str:
    name, dimension = _NAMES[effect.on]
    if effect.way == "times" and isinstance(effect.value, tuple):
        return f"{name} {_times(*effect.value)}"
    if effect.way == "plus" and isinstance(effect.value, int):
        return f"{name}: {abs(effect.value)} {'more' if effect.value > 0 else 'fewer'}"
    if isinstance(effect.value, tuple):
        return f"{name}: {_between(*effect.value, dimension, system)}"
    return f"{name} {effect.value}" if name.endswith(_RUNS_ON) else f"{name}: {effect.value}"


_RUNS_ON = (" of", " run", " set", "level wind")
"""Names that what comes after them completes; the others take a colon."""


def _times(low: float, high: float) -> str:
    """Shares of what was there: "15 to 45 % more", "up to 40 % less", "30 % less to 10 % more"."""
    below, above = round(100 * (low - 1)), round(100 * (high - 1))
    if below >= 0:
        return f"{below} to {above} % more" if below else f"up to {above} % more"
    if above <= 0:
        return f"{-above} to {-below} % less" if above else f"up to {-below} % less"
    return f"{-below} % less to {above} % more"


def _between(low: float, high: float, dimension: str, system: str) -> str:
    if low == high == 0.0:
        return "none"
    if dimension:
        return quantities.show_interval(low, high, dimension, system)
    return f"{low:g} to {high:g}"

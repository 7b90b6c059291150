"""What state a reel is in: as it was built, as it was found, or as some works would leave it.

Every range carries its mark, so that a prediction can say what it rests on.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from spoolwright.judgement.changed_sheet import changes_sheet
from spoolwright.judgement.monte_carlo import Triangular
from spoolwright.judgement.works import Effect, Work
from spoolwright.sheets import drag_stack, materials
from spoolwright.sheets.drag_stack import Pair
from spoolwright.sheets.reel_sheet import ReelSheet

PRIOR = "judgement prior"


@dataclass(frozen=True)
class Range:
    """A value between two ends, likelier in the middle; SI, with the mark that says how far to trust it."""

    low: float
    high: float
    mark: str = PRIOR

    @property
    def middle(self) -> float:
        return (self.low + self.high) / 2

    @property
    def distribution(self) -> Triangular:
        return Triangular(self.low, self.high)

    def times(self, low: float, high: float, mark: str = PRIOR) -> Range:
        """Both ends multiplied: what a work does to what was there before."""
        return Range(self.low * low, self.high * high, mark)


@dataclass(frozen=True)
class ReelState:
    """The state of one reel: its slipping pairs, the lubricant of its spool bearings, and ranges by name.

    Names of ranges: `drag_condition` multiplies the friction of the materials (wear, glaze, dirt),
    `spring_force` the force of the springs as drawn, `bearing_condition` the drag of sound, run-in
    bearings; `end_drag` and `train_drag` are torques on the free spool from the cast cap's discs and from
    a level wind that is driven in the cast [N m]; `start_up_ratio`, `judder`, `end_float` [m],
    `anti_reverse_slips`, `handle_torque` [N m].
    """

    pairs: tuple[Pair, ...]
    warnings: tuple[str, ...]
    bearing_lubricant: str
    ranges: Mapping[str, Range]
    new_discs: bool = False

    def with_range(self, name: str, value: Range) -> ReelState:
        """The same state with one range changed."""
        return replace(self, ranges={**self.ranges, name: value})


# As a sound reel leaves the bench, and as an unknown one may come in.
_SOUND = {
    "drag_condition": Range(0.97, 1.03),
    "spring_force": Range(0.92, 1.08, "thickness of spring washers within 2.5 %: judgement prior"),
    "judder": Range(0.04, 0.12),
    "bearing_condition": Range(0.8, 1.4),
    "end_float": Range(0.05e-3, 0.15e-3),
    "anti_reverse_slips": Range(0.0, 0.0),
    "handle_torque": Range(0.005, 0.02),
}
_FOUND = {
    "drag_condition": Range(0.60, 1.15),
    "spring_force": Range(0.80, 1.08),
    "judder": Range(0.05, 0.40),
    "bearing_condition": Range(0.8, 8.0),
    "end_float": Range(0.05e-3, 0.5e-3),
    "anti_reverse_slips": Range(0.0, 2.0),
    "handle_torque": Range(0.005, 0.06),
}
_END_DRAG = Range(1e-6, 8e-6)
_END_DRAG_OF = {"lever drag": Range(3e-6, 30e-6, "plates just clear, seals: judgement prior")}
_HANDLE_TORQUE_OF = {
    "fixed spool": (Range(0.01, 0.03), Range(0.01, 0.09)),
    "lever drag": (Range(0.03, 0.10), Range(0.03, 0.30)),
}
"""Empty turning of a sound reel and of one as found, where the kind turns heavier than a multiplier."""
_TRAIN_DRAG = {"always driven": Range(3e-6, 25e-6), "follows the line": Range(3e-6, 25e-6)}
_NO_DRAG = Range(0.0, 0.0, "nothing there to drag")


def as_built(sheet: ReelSheet) -> ReelState:
    """A sound reel of this model, just as its sheet says.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    ReelState
        Ranges in SI, each with its mark.

    Source
    ------
    Friction ranges from the material files; the rest judgement priors.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> len(as_built(reel_sheet.load("tarvak-54c")).pairs) > len(as_built(reel_sheet.load("tarvak-52")).pairs)
    True
    """
    return _state(sheet, _SOUND, widen=1.0)


def as_found(sheet: ReelSheet) -> ReelState:
    """A reel of this model as it may come in, before any reading has narrowed what it may be.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    ReelState
        Wider ranges than `as_built`, in SI.

    Source
    ------
    Judgement priors; the shop's own readings narrow them.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> built, found = (state.ranges["bearing_condition"] for state in (as_built(sheet), as_found(sheet)))
    >>> found.high > built.high
    True
    """
    return _state(sheet, _FOUND, widen=1.5)


def after(state: ReelState, sheet: ReelSheet, works: Sequence[Work]) -> ReelState:
    """The state that some works would leave behind.

    Parameters
    ----------
    state : ReelState
        The state before the works **[SI]**.
    sheet : ReelSheet
        The model **[SI]**, for works that change its stack.
    works : sequence of Work
        The works, in the order of the list **[-]**.

    Returns
    -------
    ReelState
        The state after them, in SI; what no work touches is the very same range.

    Raises
    ------
    ValueError
        A work has an effect on something that this state does not hold.

    Source
    ------
    works.toml, each effect with its mark.

    Examples
    --------
    >>> from spoolwright.judgement.works import all_works
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-52")
    >>> after(as_found(sheet), sheet, [all_works()["carbon-drag-set"]]).pairs[0].face_material
    'woven carbon'
    """
    for work in works:
        for effect in work.effects:
            if not changes_sheet(effect):
                state = _apply(state, sheet, effect)
    return state


def _state(sheet: ReelSheet, ranges: dict[str, Range], widen: float) -> ReelState:
    reading = drag_stack.slipping_pairs(sheet.drag.stack) if sheet.drag else drag_stack.StackReading((), ())
    kind = sheet.level_wind.kind if sheet.level_wind else ""
    train = _TRAIN_DRAG.get(kind, _NO_DRAG)
    ends = _END_DRAG_OF.get(sheet.reel.kind, _END_DRAG)
    turning = _HANDLE_TORQUE_OF.get(sheet.reel.kind)
    held = {
        **ranges,
        **({"handle_torque": turning[widen > 1.0]} if turning else {}),
        "start_up_ratio": _start_of_material(reading.pairs, widen),
        "end_drag": ends.times(1.0, widen, ends.mark),
        "train_drag": train.times(1.0, widen, train.mark),
    }
    return ReelState(reading.pairs, reading.warnings, spool_lubricant(sheet), held)


def spool_lubricant(sheet: ReelSheet) -> str:
    """The lubricant that the sheet names for the spool's bearings.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.

    Returns
    -------
    str
        Name of a house oil or grease **[-]**; "O1" where the sheet has no spool bearings.

    Source
    ------
    The reel sheet.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> bool(spool_lubricant(reel_sheet.load("tarvak-52")))
    True
    """
    for bearing in sheet.bearings:
        if "spool" in bearing.place.lower():
            return bearing.lubricant
    return "O1"


def _start_of_material(pairs: Sequence[Pair], widen: float) -> Range:
    """Start-up ratio of the stack: the pairs share the load, so their ratios are averaged end by end."""
    if not pairs:
        return Range(1.0, 1.0, "no slipping pair")
    low = sum(pair.start_ratio.low for pair in pairs) / len(pairs)
    high = sum(pair.start_ratio.high for pair in pairs) / len(pairs)
    mark = pairs[0].start_ratio.how
    return Range(low, 1 + (high - 1) * widen, mark)


def _apply(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    special = _SPECIAL.get(effect.on)
    if special is not None:
        return special(state, sheet, effect)
    current = state.ranges.get(effect.on)
    if current is None or not isinstance(effect.value, tuple):
        raise ValueError(f"works: no range called {effect.on!r} can be changed by {effect.value!r}")
    if effect.way == "times":
        return state.with_range(effect.on, current.times(*effect.value, mark=effect.mark))
    return state.with_range(effect.on, Range(*effect.value, mark=effect.mark))


def _new_discs(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    field = "material" if effect.on == "stack_material" else "lubrication"
    pairs = tuple(_refaced(pair, field, str(effect.value)) for pair in state.pairs)
    renewed = state.new_discs or field == "material"
    return replace(state, pairs=pairs, new_discs=renewed).with_range(
        "start_up_ratio", _start_of_material(pairs, 1.0)
    )


def _refaced(pair: Pair, field: str, value: str) -> Pair:
    if pair.face_material == materials.BARE_METAL:
        return pair
    material = value if field == "material" else pair.face_material
    wet = value if field == "lubrication" else pair.lubrication
    entry = materials.friction_material(material)
    return replace(
        pair,
        face_material=material,
        lubrication=wet,
        friction=entry.friction(wet),
        start_ratio=entry.start_ratio(wet),
    )


def _start_up(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    if isinstance(effect.value, tuple):
        return state.with_range("start_up_ratio", Range(*effect.value, mark=effect.mark))
    return state.with_range("start_up_ratio", _start_of_material(state.pairs, 1.0))


def _more_pairs(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    if not state.pairs or not isinstance(effect.value, int):
        return state
    extra = replace(state.pairs[0], lower="the disc under the gear", upper="the gear")
    return replace(state, pairs=(*([extra] * effect.value), *state.pairs))


def _discs(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    return replace(state, new_discs=effect.value == "new")


def _lubricant(state: ReelState, sheet: ReelSheet, effect: Effect) -> ReelState:
    return replace(state, bearing_lubricant=str(effect.value))


_SPECIAL: dict[str, Callable[[ReelState, ReelSheet, Effect], ReelState]] = {
    "stack_material": _new_discs,
    "stack_lubrication": _new_discs,
    "start_up_ratio": _start_up,
    "discs": _discs,
    "pairs": _more_pairs,
    "bearing_lubricant": _lubricant,
}

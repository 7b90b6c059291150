"""Does the line, wound on so tight, crush the arbor of this spool or spread its flanges?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from spoolwright import quantities
from spoolwright.judgement import drag_train
from spoolwright.judgement.line_said import SaidLine, read_line
from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, draw
from spoolwright.judgement.prediction import Predicted
from spoolwright.judgement.taken import Readings, listed
from spoolwright.mechanics import plates, winding
from spoolwright.sheets.materials import StructuralMaterial, structural_material
from spoolwright.sheets.reel_sheet import ReelSheet
from spoolwright.sheets.sheet_tables import Spool

USUAL_SHARE = {"nylon": 0.04, "fluorocarbon": 0.04, "braided polyethylene": 0.10, "dacron": 0.10}
"""Share of its breaking pull at which a line is usually wound on: common practice, 3 to 5 and 8 to 12 %."""
MOST_WINDING = 15.0
"""Most tension at which a line is usually wound on [N]: common practice, about a kilo and a half."""
EXAMPLE = "braid 0.25 mm"

WOUND_DRAWS: Mapping[str, Distribution] = {
    "packing": Rectangular(0.62, 0.80),
    "pressure": Rectangular(0.0, 1.0),
    "sideways": Rectangular(1 / 3, 1.0),
    "yield": Rectangular(0.0, 1.0),
}
"""Where in the band the pack's pressure lies, and how much of it goes sideways: judgement priors."""


SAMPLES, SEED = 2000, 1
SOON = 0.5
"""Share of the mildest rule's tension from which soft line is warned of: judgement prior."""
PLASTIC = 1.5
"""A plate bends visibly when its whole thickness yields, which takes so much more than its skin does."""


@dataclass(frozen=True)
class WoundLine:
    """A wound spool. Predicted values in SI with 90 % bands; `mild` and `harsh` are winding tensions [N].

    At `mild` something gives by the mildest published rule, at `harsh` it does if no layer slackens another.
    """

    line: str
    tension: float
    pressure: Predicted | None
    arbor_stress: Predicted | None
    flange_force: Predicted | None
    flange_stress: Predicted | None
    limit: Predicted | None
    safe_tension: Predicted | None
    mild: float
    harsh: float
    gives_first: str
    words: str
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
    why_not: str


def wound_line(
    sheet: ReelSheet,
    readings: Readings,
    *,
    line: str = EXAMPLE,
    tension: float | None = None,
    fill: float = 1.0,
    anisotropy: float | None = None,
    system: str = "metric",
) -> WoundLine:
    """Tell what a tightly wound line does to a spool.

    Parameters
    ----------
    sheet : ReelSheet
        The model **[SI]**.
    readings : mapping of str to Measured or Taken
        This reel's own readings by kind; `line_diameter` **[m]** counts where no line is named.
    line : str
        Material and diameter **[-]**, such as "braid 0.25 mm"; empty: a braid of the diameter that was read,
        or EXAMPLE.
    tension : float or None
        Tension at which it goes on **[N]**, zero or more; None: the usual share of its breaking pull.
    fill : float
        Share of a full spool's line that is on **[-]**, above zero, at most 1.
    anisotropy : float or None
        Measured softness of the pack (mechanics.winding) **[-]**; None: the band of the published models.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    WoundLine
        In SI; `why_not` in words where the sheet does not tell enough.

    Raises
    ------
    NotAQuantity
        A line that cannot be read.
    ValueError
        Tension or fill outside its range.

    Notes
    -----
    Pressure even on a logarithmic scale between the ends of winding.pressure_band; sideways a third to all of
    it. Arbor: Lame's ring. Flange: a ring plate clamped at the hub. The arbor gives at the metal's yield
    strength, the flange when its whole thickness yields. Left out: line that is drawn tighter on the
    water, nylon that shrinks wet and creeps, holes in a spool, the arbor's own give.

    Source
    ------
    mechanics.winding and mechanics.plates; yield strengths with their sources in sheets/materials.toml.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> found = wound_line(reel_sheet.load("tarvak-58r"), {}, line="braid 0.25 mm", tension=10.0)
    >>> found.pressure.low < found.pressure.middle < found.pressure.high
    True
    """
    said = read_line(line or _read_diameter(readings))
    tension = _usual(said) if tension is None else tension
    _check(tension, fill)
    room = sheet.spool
    if room.material is None or room.wall is None:
        return _unknown(said, tension, system)
    draws = draw(WOUND_DRAWS, samples=SAMPLES, seed=SEED)
    radius = drag_train.radius_at_fill(sheet, fill)
    return _told(room, said, tension, radius, anisotropy, draws, system)


def _check(tension: float, fill: float) -> None:
    if not 0 <= tension < float("inf"):
        raise ValueError(f"tension: zero or more and finite is accepted; got {tension!r}")
    if not 0 < fill <= 1:
        raise ValueError(f"fill: a share above 0 and at most 1 is accepted; got {fill!r}")


def _read_diameter(readings: Readings) -> str:
    read = next((one.measured for one in listed(readings) if one.kind == "line_diameter"), None)
    return EXAMPLE if read is None else f"braid {read.value * 1e3:.3f} mm"


def _usual(line: SaidLine) -> float:
    share = USUAL_SHARE.get(line.material.name, 0.05)
    return min(share * line.strength.middle, MOST_WINDING)


def _pressure_per_newton(
    room: Spool, line: SaidLine, radius: float, anisotropy: float | None, draws: Mapping[str, Sample]
) -> Sample:
    """Pressure on the arbor for each newton of tension [1/m2]."""
    rise = np.pi * line.diameter / (4 * draws["packing"])
    ends = winding.pressure_band(1.0, line.diameter, rise, room.arbor_radius, radius, anisotropy)
    low, high = np.asarray(ends["low"]), np.asarray(ends["high"])
    with np.errstate(divide="ignore", invalid="ignore"):
        between = np.exp(np.log(low) + (np.log(high) - np.log(low)) * draws["pressure"])
    return np.where(low > 0, between, 0.0)


def stresses(
    room: Spool, line: SaidLine, radius: float, draws: Mapping[str, Sample], anisotropy: float | None = None
) -> tuple[Sample, Sample]:
    """What each newton of winding tension does to the arbor and to a flange at its hub.

    Parameters
    ----------
    room : Spool
        The spool, its wall stated **[SI]**.
    line : SaidLine
        The line on it **[SI]**.
    radius : float
        Radius of the top layer **[m]**, above the arbor's.
    draws : mapping of str to array
        `packing`, `pressure` and `sideways` of WOUND_DRAWS **[-]**, shape `(n,)`.
    anisotropy : float or None
        Measured softness of the pack **[-]**; None: the band of the published models.

    Returns
    -------
    tuple of two arrays
        Stress around the arbor and in the flange, for each newton **[Pa/N]**, shape `(n,)`.

    Source
    ------
    mechanics.winding and mechanics.plates.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> room = reel_sheet.load("tarvak-52").spool
    >>> draws = draw(WOUND_DRAWS, samples=100, seed=1)
    >>> thick, thin = (stresses(room, read_line(f"nylon {d} mm"), 0.022, draws)[0] for d in (0.5, 0.3))
    >>> bool((thin > thick).all())
    True
    """
    each = _pressure_per_newton(room, line, radius, anisotropy, draws)
    _, hoop, bent = _stresses(room, radius, each, draws["sideways"])
    return hoop, bent


def _told(
    room: Spool, line: SaidLine, tension: float, radius: float, anisotropy: float | None,
    draws: Mapping[str, Sample], system: str,
) -> WoundLine:  # fmt: skip
    assert room.material is not None
    assert room.wall is not None
    metal = structural_material(room.material)
    strength = metal.yield_strength
    each = _pressure_per_newton(room, line, radius, anisotropy, draws)
    force, hoop, bent = _stresses(room, radius, each, draws["sideways"])
    limit = strength.low + (strength.high - strength.low) * draws["yield"]
    safe = np.minimum(limit / hoop, PLASTIC * limit / bent)
    arbor_first = float(np.mean(limit / hoop < PLASTIC * limit / bent))
    first = "arbor" if arbor_first >= 0.5 else "flange"
    ends = [
        _stands(room, line, radius, anisotropy, (share, sideways, strength.middle))
        for share, sideways in ((0.0, 1 / 3), (1.0, 1.0))
    ]
    why = _why(line, metal)

    def told(quantity: str, sample: Sample, dimension: str) -> Predicted:
        return _predicted(quantity, sample, dimension, why)

    tension_safe = told("tension at which something gives", safe, "force")
    return WoundLine(
        line.words_in(system), tension, told("pressure on the arbor", each * tension, "pressure"),
        told("stress in the arbor", hoop * tension, "pressure"),
        told("force that spreads a flange", force * tension, "force"),
        told("stress in the flange at its hub", bent * tension, "pressure"),
        told("yield strength", limit, "pressure"), tension_safe,
        ends[0], ends[1], first, _words(line, tension, ends, first, system),
        _warnings(line, tension, ends, tension_safe, first), _NOTES, "",
    )  # fmt: skip


def _stresses(room: Spool, radius: float, each: Sample, sideways: Sample) -> tuple[Sample, Sample, Sample]:
    """Force on a flange, stress in the arbor and in the flange at its hub, for each newton of tension."""
    assert room.wall is not None
    force = np.asarray(winding.flange_force(each, room.arbor_radius, radius, sideways))
    hoop = np.asarray(plates.arbor_hoop_stress(each, room.arbor_radius, room.wall))
    bent = np.asarray(plates.flange_stress(force, room.arbor_radius, radius, room.flange))
    return force, hoop, bent


def _stands(
    room: Spool, line: SaidLine, radius: float, anisotropy: float | None, end: tuple[float, float, float]
) -> float:
    """Tension that the spool stands at one end of the band [N]."""
    share, sideways, strength = (np.array([value]) for value in end)
    draws = {"packing": np.array([0.71]), "pressure": share}
    each = _pressure_per_newton(room, line, radius, anisotropy, draws)
    _, hoop, bent = _stresses(room, radius, each, sideways)
    return float(np.minimum(strength / hoop, PLASTIC * strength / bent)[0])


_NOTES = (
    "Nobody has measured how soft this pack is, and published rules differ by more than a factor of ten: "
    "hence the width.",
    "Sound spools stand braid wound on at 1 to 1.5 kg (common practice, no source): for braid the mild end "
    "is near the truth, for solid nylon it lies further in (judgement prior).",
)


def _predicted(quantity: str, sample: Sample, dimension: str, why: tuple[str, ...]) -> Predicted:
    low, middle, high = np.quantile(sample, [0.05, 0.5, 0.95])
    spread = float(np.std(sample, ddof=1))
    return Predicted(quantity, float(middle), float(low), float(high), spread, dimension, {}, why)


def _why(line: SaidLine, metal: StructuralMaterial) -> tuple[str, ...]:
    strength = metal.yield_strength
    return (
        "pressure between the rule for winch drums and no slackening at all (mechanics.winding)",
        "a third to all of it goes sideways: judgement prior",
        f"{metal.title}: {strength.source} ({strength.how})",
        f"62 to 80 % of the room filled with {line.material.name}: judgement prior",
    )


_SOFT = ("braided polyethylene", "dacron")
_FIRST = {"arbor": "the arbor is crushed", "flange": "the flanges spread"}


def _words(line: SaidLine, tension: float, ends: Sequence[float], first: str, system: str) -> str:
    wound, mild, harsh = (quantities.show(value, "force", system) for value in (tension, *ends))
    return (
        f"{line.words_in(system)}, wound on at {wound}. By the mildest published rule {_FIRST[first]} at "
        f"{mild} of winding tension; if no layer slackened another and all pressed sideways, at {harsh}."
    )


def _warnings(
    line: SaidLine, tension: float, ends: Sequence[float], safe: Predicted, first: str
) -> tuple[str, ...]:
    found = []
    near = SOON * ends[0] if line.material.name in _SOFT else safe.middle
    if tension >= ends[0]:
        found.append(
            f"Wound so tight {_FIRST[first]} by any published rule: wind it on with less, or put soft "
            "backing under it."
        )
    elif tension >= near:
        found.append(
            f"It may be that {_FIRST[first]}: measure the spool across its rims before and after winding, "
            "and wind it on with less."
        )
    if line.material.name == "nylon":
        found.append("Nylon wound tight goes on pressing: it shrinks when wet and creeps. Store it slack.")
    return tuple(found)


def _unknown(line: SaidLine, tension: float, system: str) -> WoundLine:
    why_not = "The sheet does not say of what and how thick the spool's walls are: its strength is not known."
    return WoundLine(
        line.words_in(system), tension, None, None, None, None, None, None, 0.0, 0.0, "", "", (), (), why_not
    )

"""One face that slides: with what use, how hard it is pressed, how far it slides, how fast that wears it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import lru_cache

import numpy as np

from spoolwright.judgement.monte_carlo import Distribution, Rectangular, Sample, Triangular, draw
from spoolwright.mechanics import wear
from spoolwright.sheets import materials, wear_rates
from spoolwright.sheets.sourced import Sourced

KEYS = ("pawl", "worm", "worm-bush", "end-disc", "drive-shaft-bush", "line-roller-bush", "disc")
"""Every face that is known; "disc" stands for each friction material in its turn."""

COMMON_DRAWS: Mapping[str, Distribution] = {
    "winding": Triangular(0.7, 1.3),
    "first_ring": Rectangular(0.45, 0.80),
    "bend": Rectangular(0.1, 0.5),
    "bar_friction": Rectangular(0.1, 0.3),
    "carriage": Rectangular(0.1, 0.8),
    "flank_friction": Rectangular(0.08, 0.25),
    "bearing_share": Rectangular(0.3, 0.8),
    "tip_area": Rectangular(0.6e-6, 2.0e-6),
    "crossing": Rectangular(2.0, 6.0),
    "bush_length": Rectangular(2.0e-3, 3.5e-3),
    "journal": Rectangular(0.6, 1.0),
    "end_load": Rectangular(0.1, 1.0),
    "end_area": Rectangular(0.1e-6, 0.4e-6),
    "hand": Rectangular(0.5, 1.2),
    "salt": Rectangular(0.0, 1.0),
    "inside": Rectangular(0.02, 0.20),
}
"""What no sheet tells of how parts are pressed: judgement priors, SI."""


@dataclass(frozen=True)
class Use:
    """A week of use: casts, line out with each [m], winding pull [N], line that fish take [m], at a pull [N].

    `grit` is the share of the winding done with sand or salt crystals in the works.
    """

    casts: float = 60.0
    distance: float = 45.0
    pull: float = 5.0
    fish: float = 20.0
    fish_pull: float = 20.0
    grit: float = 0.01
    salt: bool = False
    oiled: bool = True

    def __post_init__(self) -> None:
        for field in fields(self):
            value = getattr(self, field.name)
            if isinstance(value, bool):
                continue
            if not 0 <= value < float("inf"):
                raise ValueError(f"{field.name}: zero or more and finite is accepted; got {value!r}")
        if self.grit > 1:
            raise ValueError(f"grit: a share from 0 to 1 is accepted; got {self.grit!r}")

    @property
    def cast_line(self) -> float:
        """Metres of line that fly out in a week, and are wound back."""
        return self.casts * self.distance


@dataclass(frozen=True)
class Face:
    """A face that wears: its limit [m], its depth a week [m], and what made it so; samples of one shape."""

    key: str
    part: str
    made_of: str
    limit: Sample
    limit_source: str
    pressure: Sample
    slide: Sample
    per_week: Sample
    rests_on: tuple[str, ...]


def common_draws(samples: int, seed: int) -> dict[str, Sample]:
    """Draw everything that no sheet tells, the same for every state of a reel.

    Parameters
    ----------
    samples : int
        How many draws **[-]**, 100 or more.
    seed : int
        Start of the generator **[-]**.

    Returns
    -------
    dict of str to array
        COMMON_DRAWS by name **[SI]**, and for each key `KEY.clean`, `KEY.grit`, `KEY.hard`, `KEY.limit` and
        `KEY.worn`, even from 0 to 1 **[-]**; each of shape `(samples,)`.

    Source
    ------
    JCGM 101:2008, 7.3.

    Examples
    --------
    >>> common_draws(100, 1)["pawl.clean"].shape
    (100,)
    """
    return dict(_drawn(samples, seed))


@lru_cache(maxsize=8)
def _drawn(samples: int, seed: int) -> Mapping[str, Sample]:
    """Drawn once: every state of a reel asks for the same."""
    even = {
        f"{key}.{what}": Rectangular(0.0, 1.0)
        for key in KEYS
        for what in ("clean", "grit", "hard", "limit", "worn")
    }
    return draw({**COMMON_DRAWS, **even}, samples=samples, seed=seed)


def spread(between: Sourced, share: Sample) -> Sample:
    """A sourced range as a sample, evenly between its ends.

    Parameters
    ----------
    between : Sourced
        The range **[SI]**.
    share : array
        Draws from 0 to 1 **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Values **[unit of the range]**, shape `(n,)`.

    Source
    ------
    JCGM 101:2008, 6.4.2.
    """
    return np.asarray(between.low + (between.high - between.low) * share)


def spread_by_powers(between: Sourced, share: Sample) -> Sample:
    """A sourced range as a sample in which every power of ten is as likely as the next.

    Parameters
    ----------
    between : Sourced
        The range, above zero **[SI]**.
    share : array
        Draws from 0 to 1 **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Values **[unit of the range]**, shape `(n,)`.

    Source
    ------
    JCGM 101:2008, 6.4.2, for the logarithm.
    """
    return np.asarray(between.low * (between.high / between.low) ** share)


def metal_rate(key: str, material: str, use: Use, draws: Mapping[str, Sample]) -> Sample:
    """Wear rate of a metal face that slides on metal, with its oil, its grit and its salt.

    Parameters
    ----------
    key : str
        Which face **[-]**, one of KEYS.
    material : str
        What the worn face is made of **[-]**, a structural material.
    use : Use
        Oiled or dry, share of grit, salt **[-]**.
    draws : mapping of str to array
        What `common_draws` gave **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Wear rate **[m^2/N]**, shape `(n,)`.

    Notes
    -----
    K / (3 H), H the hardness of the worn face; K = (1 - g) K_clean + g K_gritty, g the share of the sliding
    done with grit; salt multiplies it.

    Source
    ------
    Archard; ranges with their sources in sheets/wear.toml.
    """
    pair = wear_rates.face_wear(wear_rates.METAL)
    hardness = spread(materials.structural_material(material).hardness, draws[f"{key}.hard"])
    mixed = _mixed(pair, key, use, draws)
    eaten = spread(wear_rates.salt_factor(), draws["salt"]) if use.salt else 1.0
    return np.asarray(wear.specific_rate(mixed * eaten, hardness))


def plastic_rate(key: str, use: Use, draws: Mapping[str, Sample]) -> Sample:
    """Wear rate of a plastic face on metal, with its oil and its grit.

    Parameters
    ----------
    key : str
        Which face **[-]**, one of KEYS.
    use : Use
        Oiled or dry, share of grit **[-]**.
    draws : mapping of str to array
        What `common_draws` gave **[-]**, shape `(n,)`.

    Returns
    -------
    array
        Wear rate **[m^2/N]**, shape `(n,)`.

    Source
    ------
    Ranges with their sources in sheets/wear.toml.
    """
    return _mixed(wear_rates.face_wear(wear_rates.PLASTIC), key, use, draws)


def _mixed(pair: wear_rates.FaceWear, key: str, use: Use, draws: Mapping[str, Sample]) -> Sample:
    clean = spread_by_powers(pair.clean(use.oiled), draws[f"{key}.clean"])
    gritty = spread_by_powers(pair.gritty, draws[f"{key}.grit"])
    share = use.grit * draws.get("grit_reach", np.float64(1.0))
    return np.asarray((1 - share) * clean + share * gritty)


def why_rate(name: str, use: Use) -> tuple[str, ...]:
    """What a face's wear rate rests on, in words.

    Parameters
    ----------
    name : str
        METAL or PLASTIC **[-]**.
    use : Use
        Oiled or dry, share of grit **[-]**.

    Returns
    -------
    tuple of str
        One line each for clean and for gritty.

    Source
    ------
    sheets/wear.toml.
    """
    pair = wear_rates.face_wear(name)
    clean = pair.clean(use.oiled)
    lines = [f"{name}, {'oiled' if use.oiled else 'dry'}: {clean.source} ({clean.how})"]
    if use.grit > 0:
        lines.append(f"{name}, with grit: {pair.gritty.source} ({pair.gritty.how})")
    return tuple(lines)

"""Is the line too strong for the reel? A drag is set to a quarter to a third of the line's strength."""

from __future__ import annotations

from spoolwright import quantities
from spoolwright.judgement.prediction import Predicted

LOWEST_SHARE, HIGHEST_SHARE = 0.25, 0.33


def line_warning(line_strength: float, full_pull: Predicted, system: str = "metric") -> str:
    """A warning where the drag that suits the line is more than the reel gives.

    Parameters
    ----------
    line_strength : float
        Breaking pull of the line, unknotted **[N]**, more than 0.
    full_pull : Predicted
        Greatest usable pull at a full spool **[N]**.
    system : str
        "metric" or "imperial" **[-]**, for the words.

    Returns
    -------
    str
        The warning, empty where the line suits the reel **[-]**.

    Raises
    ------
    ValueError
        The strength is not more than 0.

    Source
    ------
    25 to 33 % of unknotted strength at strike: common practice, no source.

    Examples
    --------
    >>> pull = Predicted("full pull", 5.0 * 9.80665, 45.0, 53.0, 2.0, "force")
    >>> "asks for 5.75 kg to 7.59 kg" in line_warning(23.0 * 9.80665, pull)
    True
    """
    if not line_strength > 0:
        raise ValueError(f"line_strength: more than 0 is accepted; got {line_strength}")
    low, high = LOWEST_SHARE * line_strength, HIGHEST_SHARE * line_strength
    if low <= full_pull.high:
        return ""
    asked = " to ".join(quantities.show(end, "force", system) for end in (low, high))
    given = quantities.show_interval(full_pull.low, full_pull.high, "force", system)
    return (
        f"The line asks for {asked} of drag (a quarter to a third of its strength); this reel gives "
        f"{given} at a full spool. Nothing protects the reel: a weaker line or leader is safer."
    )

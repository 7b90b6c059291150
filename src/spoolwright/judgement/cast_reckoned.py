"""One reel after some works, reckoned for one throw: everything about the cast but how the brake is set."""

from __future__ import annotations

from dataclasses import dataclass

from spoolwright.judgement.cast_inputs import CAST_DRAWS, CastInputs, cast_inputs, diameter_of
from spoolwright.judgement.changed_sheet import changed
from spoolwright.judgement.monte_carlo import draw
from spoolwright.judgement.narrowing import Known, then
from spoolwright.judgement.reel_state import after
from spoolwright.judgement.spin_witness import spin_witness
from spoolwright.judgement.throw import Throw
from spoolwright.judgement.works import chosen


@dataclass(frozen=True, eq=False)
class Reckoned:
    """Inputs for every draw, with the line's diameter [m] and doubts in words."""

    known: Known
    works: tuple[str, ...]
    inputs: CastInputs
    diameter: float
    notes: tuple[str, ...]


def reckoned(known: Known, works: tuple[str, ...], throw: Throw) -> Reckoned:
    """The inputs of a cast for every draw.

    Parameters
    ----------
    known : Known
        The reel as it stands **[SI]**.
    works : tuple of str
        Ids of works **[-]**.
    throw : Throw
        The throw **[SI]**.

    Returns
    -------
    Reckoned
        Inputs **[SI]**, diameter **[m]**, notes **[-]**.

    Raises
    ------
    ValueError
        A work that is not known or not done on this kind of reel.

    Source
    ------
    JCGM 101:2008, 7.3.

    Examples
    --------
    >>> from spoolwright.judgement.narrowing import know
    >>> from spoolwright.sheets import reel_sheet
    >>> known = know(reel_sheet.load("tarvak-58r"), {}, samples=100, seed=1)
    >>> reckoned(known, (), Throw(0.150, 55.0)).diameter
    0.0003
    """
    sheet = known.sheet
    measured = next((one.measured.value for one in known.taken if one.kind == "line_diameter"), None)
    diameter = diameter_of(throw, measured)
    witness = spin_witness(known)
    done = chosen(works, sheet.reel.kind)
    state, sheet = after(known.state, sheet, done), changed(sheet, done)
    draws = {
        **then(witness.known, state),
        **draw(CAST_DRAWS, samples=known.samples, seed=known.seed + 2),
    }
    inputs = cast_inputs(sheet, state, draws, throw, diameter)
    return Reckoned(known, works, inputs, diameter, (*known.notes, *witness.notes))

"""A moment of inertia as it is read: by which way, beside the sheet and beside other results."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright.judgement import agreement
from spoolwright.pages.words import shown
from spoolwright.papers import charts
from spoolwright.papers.charts import Chart
from spoolwright.sheets import inertia_methods
from spoolwright.shop.questions.kept_inertia import KeptInertia
from spoolwright.shop.questions.measured_inertia import MeasuredInertia

THE_SHEET = "The reel’s sheet"
QUANTITY = "moment of inertia of the spool"


def in_words(kept: KeptInertia, system: str, before: Sequence[MeasuredInertia] = ()) -> tuple[str, ...]:
    """How it was found, whether it agrees with the sheet, and with what was measured before."""
    said = [f"Found by {way(kept.method)}."]
    if kept.friction is not None:
        torque = shown.quantity(kept.friction.value, "torque", system, kept.friction.expanded)
        said.append(f"The spool was held by {torque} of friction meanwhile.")
    if kept.sheet is not None:
        said.append(agreement.beside(kept.inertia, (THE_SHEET, kept.sheet), system))
    others = [one for one in before if one.measured.uncertainty > 0]
    if others:
        ways = [("this one", kept.inertia), *((_named(one), one.measured) for one in others)]
        said.append(agreement.together(ways, system)[1])
    return tuple(shown.raised(shown.together(line)) for line in said)


def chart(
    kept: KeptInertia,
    system: str,
    before: Sequence[MeasuredInertia] = (),
    *,
    width: int | None = None,
) -> Chart:
    """The result above the sheet's and those that were measured before, each with its interval."""
    rows = [(f"by {way(kept.method)}", kept.inertia)]
    rows += [(_named(one), one.measured) for one in before[:4]]
    if kept.sheet is not None:
        rows.append(("by the reel’s sheet", kept.sheet))
    sentence = "Each line is twice the standard uncertainty either way; where lines overlap, results agree."
    return charts.side_by_side(QUANTITY, rows, sentence, system=system, width=width)


def swing_chart(kept: KeptInertia, system: str, width: int | None = None) -> Chart | None:
    """The record of the swing, where there is one."""
    swing = kept.swing
    if swing is None:
        return None
    drawn = charts.Swung(swing.times, swing.signal, swing.fitted, swing.period, swing.decay)
    return charts.swing(drawn, system=system, width=width)


def way(method: str) -> str:
    """The method in words; an id that is no longer in the table stands as it is."""
    found = inertia_methods.methods().get(method)
    return found.title if found else method


def _named(one: MeasuredInertia) -> str:
    by = f"by {way(one.method)}" if one.method else "as typed"
    return by if one.this_visit else f"{by}, an earlier visit"

"""A moment of inertia as it is read: by which way, beside the sheet and beside other results."""

from __future__ import annotations

from collections.abc import Sequence

from spoolwright.bench.inertia_reading import RESULT
from spoolwright.bench.uncertainty import Measured
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


def mostly(kept: KeptInertia) -> str:
    """Where most of the uncertainty comes from, in one sentence: the three largest shares of its square."""
    rows = [row for row in kept.budget if row.result == RESULT and row.uncertainty > 0]
    whole = sum(row.uncertainty**2 for row in rows)
    if not whole:
        return ""
    largest = sorted(rows, key=lambda row: -row.uncertainty)[:3]
    said = "; ".join(
        f"{row.source[:1].lower()}{row.source[1:]}, {100 * row.uncertainty**2 / whole:.0f} %"
        for row in largest
    )
    return f"Of the square of its uncertainty most comes from: {said}."


def inputs(kept: KeptInertia, system: str) -> tuple[tuple[str, str], ...]:
    """What went in, each with its own expanded uncertainty."""
    return tuple((words, _amount(one, system)) for words, one in kept.inputs)


def _amount(one: Measured, system: str) -> str:
    """As it was taken, never rounded past what is known of it."""
    return shown.quantity(one.value, one.dimension, system, one.expanded or None)


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

"""What is wrong with this reel? Findings written at the bench, and readings that lie outside what is good."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from spoolwright.judgement.prediction import Prediction
from spoolwright.judgement.taken import Taken
from spoolwright.judgement.works import band_findings, finding_of, finding_words
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.reel_sheet import ReelSheet

FAR_BELOW = 0.5
"""A pull or a spin below this share of a sound reel's wants more than a wash: judgement prior."""


@dataclass(frozen=True)
class Finding:
    """A part with a fault: `fault` is a row of the fault table (F01 to F70) or a finding's own id."""

    part: str
    fault: str
    words: str = ""

    @property
    def about(self) -> str:
        """The finding that works answer, empty where none does."""
        return finding_of(self.part, self.fault)


@dataclass(frozen=True)
class Wrong:
    """One thing that is wrong, with where it is known from."""

    about: str
    words: str
    known_from: str


def whats_wrong(
    sheet: ReelSheet | None,
    taken: Sequence[Taken],
    findings: Iterable[Finding],
    sound: Prediction | None,
) -> tuple[Wrong, ...]:
    """Everything that is wrong with a reel, each thing once.

    Parameters
    ----------
    sheet : ReelSheet or None
        The model **[SI]**; None: only limits that hold for every reel are used.
    taken : sequence of Taken
        Its readings **[SI]**.
    findings : iterable of Finding
        What was found by eye and hand **[-]**.
    sound : Prediction or None
        What a sound reel of this model gives, to compare pulls and spins with **[SI]**.

    Returns
    -------
    tuple of Wrong
        Findings first, then readings; empty where all is well.

    Source
    ------
    Limits of the registry of readings, and judgement priors.

    Examples
    --------
    >>> from spoolwright.bench.uncertainty import Measured
    >>> from spoolwright.judgement.prediction import predict
    >>> from spoolwright.sheets import reel_sheet
    >>> sheet = reel_sheet.load("tarvak-58r")
    >>> float_ = Taken("end_float", Measured(0.42e-3, 1e-5, "length"))
    >>> [wrong.about for wrong in whats_wrong(sheet, [float_], [], predict(sheet, {}, samples=200))]
    ['end-float-large']
    """
    found: dict[str, Wrong] = {}
    for finding in findings:
        words = finding.words or finding_words().get(finding.about, finding.part)
        found.setdefault(
            finding.about or f"{finding.part}: {finding.fault}", Wrong(finding.about, words, "finding")
        )
    for one in taken:
        about = _of_reading(sheet, one, sound)
        if about and about not in found:
            found[about] = Wrong(about, finding_words()[about], one.kind)
    return tuple(found.values())


def tags(sheet: ReelSheet | None) -> tuple[str, ...]:
    """What limits of readings may hang on: the kind of reel, and how its anti-reverse is built.

    Parameters
    ----------
    sheet : ReelSheet or None
        The model **[SI]**.

    Returns
    -------
    tuple of str
        Tags as the registry of readings uses them **[-]**.

    Source
    ------
    sheets.reading_kinds.

    Examples
    --------
    >>> from spoolwright.sheets import reel_sheet
    >>> tags(reel_sheet.load("tarvak-54c"))
    ('round multiplier', 'roller clutch')
    """
    if sheet is None:
        return ()
    roller = sheet.anti_reverse is not None and sheet.anti_reverse.roller_clutch
    return (sheet.reel.kind, "roller clutch") if roller else (sheet.reel.kind,)


def _of_reading(sheet: ReelSheet | None, one: Taken, sound: Prediction | None) -> str:
    if one.kind == "anti_reverse_slips" and one.measured.value > 0:
        return "roller-clutch-slips" if "roller clutch" in tags(sheet) else "dog-worn"
    if one.kind in ("pull_full", "spin_time"):
        return _far_below(one, sound)
    if one.kind not in reading_kinds.kinds():
        return ""
    band = reading_kinds.kind(one.kind).band(one.measured.value, *tags(sheet))
    return band_findings().get(one.kind, {}).get(band, "")


def _far_below(one: Taken, sound: Prediction | None) -> str:
    key, about = {
        "pull_full": ("pull_full_spool", "drag-weak"),
        "spin_time": ("spin_time", "spool-bearing-gummed"),
    }[one.kind]
    beside = sound.values.get(key) if sound else None
    # A spin with the line on, or a pull at another radius, is not the reading of a sound reel's prediction.
    alike = one.kind == "pull_full" or one.word("line") != "on"
    if beside is None or not alike:
        return ""
    return about if one.measured.value < FAR_BELOW * beside.middle else ""

"""A proof in ink as its paper carries it: promised beside measured, with the traces and the drag table."""

from __future__ import annotations

from typing import Any

from spoolwright import quantities
from spoolwright.judgement.proof import Promise, decide, wrong_pass_said
from spoolwright.pages.gathered import drag_table, findings, offers, parties, pictures, signals
from spoolwright.pages.words import conditions, promised, when
from spoolwright.papers.proof_sheet import Instrument, ProofSheet, Proved, Signature
from spoolwright.sheets import reading_kinds
from spoolwright.sheets.drag_setting import DragSetting, setting_of
from spoolwright.shop.questions.diary import Diary
from spoolwright.shop.questions.predictions import expected_of

CAUTIONS = (
    "A line under load cuts and whips back: keep fingers, eyes and bystanders clear when you try the drag, "
    "and take the hook off.",
)


def gathered(diary: Diary, entry: Any, shop: Any, system: str) -> ProofSheet:
    """`entry` is the entry of the proof; readings and signs are those that stood with it."""
    block = next(b for b in diary.blocks if b.entry.pk == entry.pk)
    before = [b for b in diary.blocks if b.entry.seq < entry.seq and not b.is_struck]
    last_work = max((b.entry.seq for b in before if b.kind == "work"), default=0)
    after = [b for b in before if b.entry.seq > last_work]
    rows = list(block.part.rows.all())
    setting = setting_of(pictures.sheet_of(diary.visit))
    return ProofSheet(
        shop=parties.house(shop),
        customer=parties.addressee(diary.customer),
        reel=parties.reel_mark(diary.visit),
        number=number(diary, entry),
        date=when.dated(entry.written_at),
        proved=tuple(_proved(row, system, setting) for row in rows),
        rule=" ".join(dict.fromkeys(row.rule for row in rows)),
        done=_done(before),
        pull=signals.pull_chart(after, rows, system),
        spin=signals.spin_chart(after, system),
        drag_table=drag_table.gathered(diary, after, system),
        instruments=_instruments(rows, system),
        signed=_signed(block),
        cautions=CAUTIONS,
        trace=pictures.mark_before(after),
        notes=_tried(block),
        system=system,
    )


def number(diary: Diary, entry: Any) -> str:
    """The tag, and which proof of this visit it is."""
    proofs = [block.entry.pk for block in diary.blocks if block.kind == "proof"]
    return f"{diary.visit.tag}-{proofs.index(entry.pk) + 1}"


def _proved(row: Any, system: str, setting: DragSetting) -> Proved:
    promise = Promise(row.promise.low_si, row.promise.high_si, row.promise.dimension)
    taken = findings.measured(row.measured)
    expected = expected_of(row.promise)
    again = decide(promise, taken, expected=expected, system=system)
    words = again.why if again.kind == row.decision else row.words
    return Proved(
        what=promised.title(row.promise),
        promised=offers.promised_figure(row.promise, system),
        measured=findings.figure(row.measured, system),
        decision=row.decision,
        before=findings.figure(row.before, system) if row.before else "no reading",
        conditions=conditions.in_words(row.measured.reading.conditions, system, setting),
        words="" if row.decision == "shown" else words,
        wrong_pass=wrong_pass_said(promise, taken, expected) if row.decision == "shown" else "",
    )


def _tried(block: Any) -> tuple[str, ...]:
    """What has no number, in one sentence."""
    said = [check.words for check in block.part.checks.all()]
    return (f"Tried by hand, and in order: {'; '.join(said)}.",) if said else ()


def _done(before: list[Any]) -> tuple[str, ...]:
    works = [block.part for block in before if block.kind == "work"]
    return tuple(dict.fromkeys(done.title for work in works for done in work.done.all()))


def _instruments(rows: list[Any], system: str) -> tuple[Instrument, ...]:
    """The tool of each kind of reading, once; ratios of a trace come from the gauge that took the pull."""
    found = {}
    for row in rows:
        of_a_trace = row.measured.dimension == "ratio" and row.measured.reading.way != "typed"
        kind = reading_kinds.kind("pull_run" if of_a_trace else row.measured.kind)
        shown = quantities.show(0.0, kind.dimension, system, 2 * kind.uncertainty).partition("± ")[2]
        share = f" and {2 * kind.relative:.0%} of the value" if kind.relative else ""
        found.setdefault(kind.tool, Instrument(_capital(kind.tool), f"± {shown}{share}, as its kind allows"))
    return tuple(found.values())


def _signed(block: Any) -> tuple[Signature, ...]:
    first = Signature(block.entry.author.shown, "measured", when.dated(block.entry.written_at))
    others = [sign.entry for sign in block.part.signs.all() if not hasattr(sign.entry, "strike")]
    return (first, *(Signature(e.author.shown, "wound it blind", when.dated(e.written_at)) for e in others))


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]

"""A reading in ink as its paper carries it: whatever way it was taken, and whatever was kept of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from spoolwright import quantities
from spoolwright.bench import typed
from spoolwright.bench.budget import Contribution
from spoolwright.bench.unreadable import Unreadable
from spoolwright.judgement import findings
from spoolwright.pages.gathered import parties, pictures, reading_judged, told_signals
from spoolwright.pages.words import conditions, shown, when
from spoolwright.pages.words.budget import budget_rows
from spoolwright.papers.proof_sheet import Instrument, Signature
from spoolwright.papers.reading_sheet import BudgetLine, ReadingSheet
from spoolwright.sheets import hand_guides, inertia_methods, reading_kinds
from spoolwright.sheets.drag_setting import setting_of
from spoolwright.shop.acts import clock
from spoolwright.shop.questions import instruments
from spoolwright.shop.questions.blocks import Block
from spoolwright.shop.questions.by_hand import by_hand_of
from spoolwright.shop.questions.diary import Diary
from spoolwright.shop.questions.instruments import Shelved
from spoolwright.shop.questions.kept_inertia import inertia_of

TYPED_AS = "as it was stated when it was written down"


def gathered(diary: Diary, entry: Any, shop: Any, system: str) -> ReadingSheet:
    """`entry` is the entry of the reading; its own ink, nothing that came after it."""
    block = next(b for b in diary.blocks if b.entry.pk == entry.pk)
    reading, sheet = block.part, pictures.sheet_of(diary.visit)
    values = [value for value in reading.values.all() if value.repeat == 0]
    results = tuple(reading_judged.stated(value, findings.tags(sheet), system) for value in values)
    before = [b for b in diary.blocks if b.entry.seq <= entry.seq and not b.is_struck]
    signal = told_signals.told(reading, system)
    return ReadingSheet(
        shop=parties.house(shop),
        customer=parties.addressee(diary.customer),
        reel=parties.reel_mark(diary.visit),
        number=number(diary, entry),
        date=when.dated(entry.written_at),
        title=f"Reading of your {diary.visit.reel.described}: {_way(reading, values)}",
        facts=tuple(_facts(diary, block, before, shop)),
        method=tuple(_method(reading, values)),
        conditions=conditions.in_words(reading.conditions, system, setting_of(sheet)),
        results=results,
        pictures=signal.pictures,
        said=signal.said,
        inputs=signal.inputs,
        instruments=tuple(_instruments(reading, values, system)),
        budget=tuple(_budget(reading, values, system)),
        deviations=tuple(shown.raised(note) for note in reading.analysis.get("notes", ())),
        rule=reading_judged.RULE if any(one.call for one in results) else "",
        signed=(Signature(entry.author.shown, "read it", when.dated(entry.written_at)),),
        trace=pictures.mark_before(before),
        system=system,
    )


def number(diary: Diary, entry: Any) -> str:
    """The tag, and which entry of its diary it is: no other sheet of the shop has it."""
    return f"{diary.visit.tag}-R{entry.seq}"


def _way(reading: Any, values: list[Any]) -> str:
    if reading.way in ("typed", "by hand") and values:
        title = reading_kinds.kind(values[0].kind).title
        return f"{title[0].lower()}{title[1:]}"
    return {"inertia": "moment of inertia of the spool"}.get(reading.way, reading.way)


def _facts(diary: Diary, block: Block, before: list[Block], shop: Any) -> Iterable[tuple[str, str]]:
    reel, entry = diary.visit.reel, block.entry
    yield "item", f"{reel.described}, number {diary.visit.tag} of this shop"
    marks = [parties.marked(mark) for mark in reel.marks.order_by("id")]
    yield "known by", "; ".join(marks) if marks else "no mark was written down"
    arrival = next((b.entry for b in before if b.kind == "arrival"), None)
    yield "received", when.dated(arrival.written_at) if arrival else "not written down"
    yield "read", f"{when.dated(entry.written_at)}, {when.hour(entry.written_at)}, by {entry.author.shown}"
    yield "issued", when.dated(clock.today())
    yield "where", f"at {shop.name}"
    done = [it.title for b in before if b.kind == "work" for it in b.part.done.all()]
    named = "; ".join(f"{title[0].lower()}{title[1:]}" for title in dict.fromkeys(filter(None, done)))
    yield "state", f"after the work: {named}" if named else "as received"


def _method(reading: Any, values: list[Any]) -> Iterable[str]:
    """How it was done, in the words of the kind of reading; a thing said for several kinds is said once."""
    kept = inertia_of(reading)
    if kept is not None:
        method = inertia_methods.methods().get(kept.method)
        yield method.says if method else f"By {kept.method}."
        return
    by_hand = by_hand_of(reading)
    guide = hand_guides.guides().get(by_hand.guide) if by_hand else None
    if guide is not None:
        yield guide.how
        return
    said: dict[str, list[str]] = {}
    for value in values:
        kind = reading_kinds.kind(value.kind)
        said.setdefault(kind.method, []).append(kind.title)
    for method, titles in said.items():
        yield method if len(said) == 1 else f"{', '.join(titles)}: {method[0].lower()}{method[1:]}"


def _instruments(reading: Any, values: list[Any], system: str) -> Iterable[Instrument]:
    """The one that the reading names; of a part measured by hand also one that is not on our shelf."""
    held = instruments.numbered(reading.instrument_id) if reading.instrument_id else None
    by_hand = by_hand_of(reading)
    if held is not None and values:
        yield Instrument(held.called, _sure(held, values, system), _checked(held, system))
    elif by_hand is not None and by_hand.instrument:
        yield Instrument(by_hand.instrument, "as the budget below has it")


def _sure(held: Shelved, values: list[Any], system: str) -> str:
    """What is known of the instrument: its smallest step, its stated limit, its study."""
    own = held.now
    read = next((value for value in values if value.dimension == own.dimension), None)
    said = []
    if own.resolution:
        said.append(f"shows {shown.quantity(own.resolution, own.dimension, system)}")
    limit = own.stated_limit(read.value_si) if read else own.limit
    if limit is not None:
        said.append(f"stated to ± {shown.quantity(limit, own.dimension, system)}")
    if own.share and not read:
        said.append(f"stated to ± {quantities.show(own.share, 'ratio', unit='%')} of what it shows")
    if own.study is not None:
        again = shown.quantity(own.study.repeatability, own.dimension, system)
        said.append(f"one hand again to {again} by the {own.study.words}")
    return "; ".join(said) or "nothing is stated"


def _checked(held: Shelved, system: str) -> str:
    if not held.checks:
        return ""
    check = held.checks[0]
    # To the digit that its display has: what it was off by is lost in fewer.
    finest = held.known.resolution_si or check.standard_uncertainty_si or None
    found, nominal = (
        shown.unbroken(
            quantities.show(value, held.row.dimension, system, finest).partition(shown.PLUS_MINUS)[0]
        )
        for value in (check.found_si, check.nominal_si)
    )
    return shown.raised(f"{when.dated(check.day)}, against {check.against}: {found} for {nominal}")


def _budget(reading: Any, values: list[Any], system: str) -> Iterable[BudgetLine]:
    kept = [Contribution(*row) for row in reading.analysis.get("budget", ())]
    rows = kept or [row for value in values for row in _rows_of(value)]
    is_spin = reading.analysis.get("signal") == "spin"
    per_inertia = is_spin and not any(value.kind == "spin_constant" for value in values)
    for row in sorted(rows, key=lambda row: (_place(row, rows), -row.uncertainty)):
        try:
            (told,) = budget_rows([row], system, per_inertia=per_inertia) or (None,)
        except KeyError:
            continue  # A row of a result that this sheet does not state.
        if told is not None:
            yield BudgetLine(told.result, told.source, told.way, told.amount)


def _place(row: Contribution, rows: Sequence[Contribution]) -> int:
    """Results in the order of the reading, the largest row of each first."""
    return list(dict.fromkeys(one.result for one in rows)).index(row.result)


def _rows_of(value: Any) -> tuple[Contribution, ...]:
    """The rows behind what was typed, worked out again from the text; one row where the text is not kept."""
    spread = value.standard_uncertainty_si or 0.0
    try:
        again = typed.read(value.kind, value.typed_text)
    except (Unreadable, quantities.NotAQuantity):
        again = None
    if again is not None and abs(again.measured.uncertainty - spread) <= 1e-6 * max(spread, 1e-300):
        return again.budget
    return (Contribution(value.kind, TYPED_AS, "B", spread),) if spread else ()

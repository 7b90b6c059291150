"""`spoolwright book`: what this shop has learned from its own proofs, or one coefficient and its proofs."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterable
from contextlib import nullcontext, redirect_stdout
from typing import Any

from spoolwright.command import first_start, house

SUMMARY = "read the shop book: coefficients learned from proofs, instruments that lean, how often faults come"
TYPED = "book [COEFFICIENT] [--data DIR] [--trial] [--json]"


def arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("coefficient", nargs="?", metavar="COEFFICIENT", help="one of them, by its name")
    parser.add_argument("--data", metavar="DIR", help="where the shop's data lies (else shop-data)")
    parser.add_argument("--trial", action="store_true", help="try the book on 2,000 invented proofs instead")
    parser.add_argument("--json", action="store_true", help="print one JSON object")


def run(args: argparse.Namespace) -> int:
    if args.trial:
        told = trial_as_data()
        return _tell(args, told, trial_in_words(told))
    house.open_house(args.data)
    with redirect_stdout(sys.stderr) if args.json else nullcontext():
        first_start.bring_tables_up_to_date()
    from spoolwright.shop.questions.book import shop_book

    book = shop_book()
    if args.coefficient:
        return _tell(args, one_as_data(book, args.coefficient), one_in_words(book, args.coefficient))
    return _tell(args, as_data(book), in_words(book))


def _tell(args: argparse.Namespace, data: dict[str, Any], words: Iterable[str]) -> int:
    print(json.dumps(data, ensure_ascii=False, indent=2) if args.json else "\n".join(words))
    return 0


def _found(book: Any, key: str) -> tuple[Any, Any]:
    from spoolwright.bench.unreadable import Unreadable

    found: tuple[Any, Any] | None = book.kind(key)
    if found is None:
        known = ", ".join(kind.key for chapter in book.chapters.values() for kind in chapter.kinds)
        raise Unreadable(f"the book has no coefficient “{key}”", "COEFFICIENT", known or "none so far")
    return found


def as_data(book: Any) -> dict[str, Any]:
    """The whole book, values in the coefficients' own units."""
    kinds = [kind for chapter in book.chapters.values() for kind in chapter.kinds]
    return {
        "proofs": book.proofs,
        "coefficients": [_line_as_data(book, kind) for kind in kinds],
        "faults": [
            {
                "key": rate.key,
                "title": rate.title,
                "found": rate.found,
                "reels": rate.reels,
                "share": rate.mean,
            }
            for rate in book.rates
            if rate.found
        ],
        "instruments": [vars(one) for one in book.leanings],
        "coverage": 0.90,
    }


def _line_as_data(book: Any, kind: Any) -> dict[str, Any]:
    from spoolwright.judgement.book_chapter import before, now

    chapter = book.chapters[kind.family]
    held, sheet = now(chapter, kind), before(kind)
    return {
        "key": kind.key,
        "title": kind.title,
        "unit": kind.unit or "1",
        "proofs": len(chapter.of(kind.key)),
        "now": {"middle": held.middle, "low": held.low, "high": held.high},
        "sheet": {"middle": sheet.middle, "low": sheet.low, "high": sheet.high, "mark": kind.mark},
    }


def one_as_data(book: Any, key: str) -> dict[str, Any]:
    """One coefficient with every proof behind it."""
    from math import exp

    chapter, kind = _found(book, key)
    proofs = [
        {
            "entry": one.seen.entry,
            "alone": kind.middle * exp(one.seen.log),
            "chance": one.chance,
            "outlier": one.is_outlier,
            "weight": one.weight,
            "instrument": one.seen.instrument,
        }
        for one in chapter.of(key)
    ]
    aside = [{"entry": seen.entry, "reason": why.reason} for seen, why in book.aside_of(key)]
    return {**_line_as_data(book, kind), "behind": proofs, "set_aside": aside}


def in_words(book: Any) -> Iterable[str]:
    """A line for each coefficient."""
    from spoolwright.judgement.book_kinds import FAMILIES

    for family, chapter in book.chapters.items():
        if chapter.kinds:
            yield f"{FAMILIES[family]}:"
        yield from (f"  {_line(book, kind)}" for kind in chapter.kinds)
    yield from (one.words for one in book.leanings)
    if not book.proofs:
        yield "No proof so far: everything stands as the sheets have it."


def _line(book: Any, kind: Any) -> str:
    from spoolwright.judgement.book_chapter import before, now
    from spoolwright.judgement.book_words import proofs_said, span_said, value_said

    chapter = book.chapters[kind.family]
    held = now(chapter, kind)
    behind = proofs_said(len(chapter.of(kind.key)))
    return (
        f"{kind.title}: {value_said(kind, held.middle)} ({span_said(kind, held)}), {behind}; "
        f"before {span_said(kind, before(kind))}  [{kind.key}]"
    )


def one_in_words(book: Any, key: str) -> Iterable[str]:
    """One coefficient and how it moved."""
    from math import exp

    from spoolwright.judgement.book_chapter import how_it_moved
    from spoolwright.judgement.book_words import ABOUT, OVERRULED, outlier_said, span_said, value_said

    chapter, kind = _found(book, key)
    yield f"{_line(book, kind)}."
    yield ABOUT[kind.family]
    if key in chapter.overruled:
        yield OVERRULED
    for one, held in zip(chapter.of(key), how_it_moved(chapter, kind)[1:], strict=True):
        alone = value_said(kind, kind.middle * exp(one.seen.log))
        yield f"  Entry {one.seen.entry}: alone it says {alone}; then {span_said(kind, held)}."
        if one.is_outlier:
            yield f"    {outlier_said(one)}"
    for seen, why in book.aside_of(key):
        yield f"  Entry {seen.entry} is set aside: {why.reason}"


def trial_as_data() -> dict[str, Any]:
    """How the book's intervals hold on invented shops."""
    from spoolwright.judgement.book_trial import trial

    stages = [{**vars(stage), "share": stage.share} for stage in trial()]
    held, proofs = sum(s["held"] for s in stages), sum(s["proofs"] for s in stages)
    return {"stages": stages, "proofs": proofs, "held": held, "share": held / proofs}


def trial_in_words(told: dict[str, Any]) -> Iterable[str]:
    share = f"{100 * told['share']:.1f} %"
    yield f"Of {told['proofs']:,} new proofs in invented shops {share} fell into their 90 % interval."
    for stage in told["stages"]:
        yield (
            f"  after {stage['after']:2} proofs: {100 * stage['share']:.1f} %, "
            f"the interval {stage['width']:.2f} times as wide as the sheet's"
        )

"""A quote is kept as it was offered; what is found later is a new question and the old answer is kept."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from spoolwright.judgement.findings import Finding
from spoolwright.judgement.price import Charge, price
from spoolwright.judgement.quote_options import three_options
from spoolwright.sheets import reel_sheet
from spoolwright.shop.acts.send_quote import (
    NothingWasOffered,
    OfferedOption,
    OfferedPromise,
    OptionWasOfferedTwice,
    PromiseHadNoBound,
    as_offered,
    send_quote,
)
from spoolwright.shop.questions.shop_settings import rates
from spoolwright.shop.records.visit import Visit
from tests.shop import walk

pytestmark = pytest.mark.django_db


@pytest.fixture
def visit(hand: Any) -> Any:
    return walk.arrived(hand)


def test_lines_add_up_to_the_option_and_the_reel_goes_to_the_asked_shelf(hand: Any, visit: Any) -> None:
    quote = walk.quoted(hand, visit)
    option = quote.options.get()
    assert option.total_minor == 1104_00 == sum(line.gross_minor for line in option.lines.all())
    assert [line.what for line in option.lines.all()] == [c.title for c in walk.CHARGES]
    assert Visit.objects.get(pk=visit.pk).place == "asked shelf"
    assert (quote.currency, quote.extends) == ("NOK", None)


def test_three_options_keep_works_promises_and_what_is_left_undone(hand: Any, visit: Any) -> None:
    promise = OfferedPromise(
        "pull_full_spool",
        "force",
        low=6.1 * walk.G,
        middle=6.9 * walk.G,
        high=7.7 * walk.G,
        reading_kind="pull_full",
        conditions={"radius": 0.0235, "line": "on"},
        rests_on="friction of the carbon set, a guess",
    )
    options = [
        OfferedOption(
            key=key,
            title=key,
            lines=price(walk.CHARGES[: 2 + i], rates()).lines,
            promises=[promise],
            left_undone=["worn worm"],
            warnings=["full drag is near what the shaft bears"],
            sureness=["sure", "likely"],
        )
        for i, key in enumerate(("put right", "improve", "the most this reel should be given"))
    ]
    quote = send_quote(hand=hand, visit=visit, options=options, deposit_asked_minor=200_00).entry.quote
    assert [o.total_minor for o in quote.options.all()] == [615_00, 785_00, 975_00]
    first = quote.options.first()
    assert [line.sureness for line in first.lines.all()] == ["sure", "likely"]
    kept = first.promises.get()
    assert (kept.low_si, kept.high_si, kept.conditions) == (
        6.1 * walk.G,
        7.7 * walk.G,
        {"radius": 0.0235, "line": "on"},
    )
    assert (first.left_undone, first.warnings[0][:9]) == (["worn worm"], "full drag")


def test_a_quantity_that_is_no_whole_number_is_kept(hand: Any, visit: Any) -> None:
    metres = Charge("other", "Nylon 0.40 mm, by the metre", 1_20, Fraction("187.5"))
    line = walk.quoted(hand, visit, walk.option(metres)).options.get().lines.get()
    assert (float(line.quantity), line.gross_minor) == (187.5, 225_00)


def test_an_extra_holds_only_what_is_new_and_says_the_whole(hand: Any, visit: Any) -> None:
    answer = walk.answered(hand, walk.quoted(hand, visit)).entry.answer
    extra = walk.quoted(hand, visit, walk.option(walk.COG, key="idler cog"))
    option = extra.options.get()
    assert extra.extends == answer
    assert (option.total_minor, option.whole_minor) == (65_00, 1169_00)


def test_what_the_shop_changes_later_does_not_reach_a_quote_that_is_out(owner: Any, visit: Any) -> None:
    from spoolwright.shop.acts.change_settings import change_settings

    quote = walk.quoted(owner, visit)
    change_settings(hand=owner, version=1, tax_rate="0.12", legal_ceiling="0.05")
    quote.refresh_from_db()
    assert (float(quote.tax_rate), float(quote.legal_ceiling)) == (0.25, 0.15)


@pytest.mark.parametrize(
    ("options", "refusal"),
    [
        ([], NothingWasOffered),
        ([OfferedOption("a", "A", lines=[])], NothingWasOffered),
        (["a", "a"], OptionWasOfferedTwice),
        (["no bound"], PromiseHadNoBound),
    ],
)
def test_what_is_no_offer_is_refused(hand: Any, visit: Any, options: Any, refusal: Any) -> None:
    made = [
        walk.option(key=o, promises=(OfferedPromise("mass", "mass"),) if o == "no bound" else ())
        if isinstance(o, str)
        else o
        for o in options
    ]
    with pytest.raises(refusal):
        send_quote(hand=hand, visit=visit, options=made)
    assert visit.entries.count() == 1


def test_an_option_of_judgement_is_kept_word_for_word(hand: Any, visit: Any) -> None:
    sheet = reel_sheet.load("tarvak-58r")
    option = three_options(sheet, {}, [Finding("pawl", "F15")], rates(), samples=100)[1]
    kept = walk.quoted(hand, visit, as_offered(option, ())).options.get()
    assert (kept.total_minor, kept.minutes, kept.title) == (option.total_minor, option.minutes, option.title)
    assert [work.work for work in kept.works.all()] == [work.id for work in option.works]
    assert tuple(kept.left_undone) == option.left_undone
    assert kept.prediction.limited_by == option.prediction.limited_by

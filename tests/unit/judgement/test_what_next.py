"""The last block of the diary: what comes next, where, in words, with minutes."""

from datetime import UTC, datetime, timedelta

import pytest

from spoolwright.judgement.what_next import EntryFact, Facts, quote_is_open, what_next

QUOTE = EntryFact("quote", amount_minor=110400)
YES = EntryFact("answer", says="yes", amount_minor=120000)
UP_TO_QUOTE = [EntryFact("arrival"), EntryFact("reading"), EntryFact("finding"), QUOTE]
WORKED = [*UP_TO_QUOTE, YES, EntryFact("work")]
SHOWN = EntryFact("proof", says="shown")


@pytest.mark.parametrize(
    ("entries", "act", "place"),
    [
        ([], "arrival", "mat"),
        ([EntryFact("arrival")], "reading", "jig"),
        ([EntryFact("arrival"), EntryFact("reading")], "finding", "mat"),
        ([EntryFact("arrival"), EntryFact("reading"), EntryFact("finding")], "quote", "mat"),
        (UP_TO_QUOTE, "answer", "asked shelf"),
        ([*UP_TO_QUOTE, YES], "work", "mat"),
        (WORKED, "proof", "jig"),
        ([*WORKED, SHOWN], "invoice", "post table"),
        ([*WORKED, SHOWN, EntryFact("invoice")], "dispatch", "post table"),
        ([*WORKED, SHOWN, EntryFact("invoice"), EntryFact("dispatch")], "nothing", "mat"),
    ],
)
def test_a_visit_goes_its_whole_way(entries: list[EntryFact], act: str, place: str) -> None:
    following = what_next(Facts(entries))
    assert (following.act, following.place) == (act, place)
    assert following.words.endswith(".")


def test_a_dunked_reel_is_stripped_before_anybody_turns_it() -> None:
    following = what_next(Facts([EntryFact("arrival")], dunked=True))
    assert following.act == "finding"
    assert "without turning the handle" in following.words
    assert what_next(Facts([EntryFact("arrival"), EntryFact("finding")], dunked=True)).act == "quote"


def test_a_small_job_agreed_at_the_counter_goes_straight_to_the_work() -> None:
    here = [EntryFact("arrival")]
    assert what_next(Facts(here, quick=True)).act == "quote"
    assert what_next(Facts(here, quick=True, beforehand=True)).act == "work"
    assert what_next(Facts(here, beforehand=True)).act == "reading"


def test_a_struck_entry_counts_for_nothing() -> None:
    assert what_next(Facts([EntryFact("arrival", struck=True)])).act == "arrival"
    assert what_next(Facts([*UP_TO_QUOTE, EntryFact("answer", says="yes", struck=True)])).act == "answer"


def test_a_no_sends_the_reel_home() -> None:
    assert what_next(Facts([*UP_TO_QUOTE, EntryFact("answer", says="no")])).act == "dispatch"


def test_a_no_to_an_extra_leaves_the_agreed_work() -> None:
    extra = [*UP_TO_QUOTE, YES, EntryFact("finding"), EntryFact("quote", amount_minor=150000)]
    assert what_next(Facts(extra)).act == "answer"
    assert what_next(Facts([*extra, EntryFact("answer", says="no")])).act == "work"


def test_a_finding_after_the_quote_is_a_new_question() -> None:
    assert what_next(Facts([*UP_TO_QUOTE, YES, EntryFact("finding")])).act == "quote"


def test_an_extra_inside_the_cap_needs_no_new_answer() -> None:
    entries = [*UP_TO_QUOTE, YES, EntryFact("finding"), EntryFact("quote", amount_minor=116900)]
    assert not quote_is_open(Facts(entries))
    assert what_next(Facts(entries)).act == "work"
    over = [*UP_TO_QUOTE, YES, EntryFact("finding"), EntryFact("quote", amount_minor=120001)]
    assert quote_is_open(Facts(over))


def test_work_goes_on_until_none_is_left() -> None:
    assert what_next(Facts(WORKED, works_left=2)).act == "work"
    assert what_next(Facts(WORKED, works_left=0)).act == "proof"


def test_a_failed_proof_goes_back_to_the_mat_and_asks_for_a_new_one() -> None:
    failed = [*WORKED, EntryFact("proof", says="failed")]
    assert what_next(Facts(failed)).act == "work"
    assert what_next(Facts([*failed, EntryFact("work")])).act == "proof"


def test_a_proof_that_shows_nothing_is_taken_again() -> None:
    assert what_next(Facts([*WORKED, EntryFact("proof", says="not shown")])).act == "proof"


def test_a_quick_job_is_not_forced_through_check_in() -> None:
    quick = [EntryFact("arrival")]
    assert what_next(Facts(quick, quick=True)).act == "quote"
    done = [*quick, EntryFact("quote", amount_minor=1), YES, EntryFact("work")]
    assert what_next(Facts(done, quick=True)).act == "invoice"


def test_our_own_fault_is_not_invoiced() -> None:
    assert what_next(Facts([*WORKED, SHOWN], free=True)).act == "dispatch"


def test_our_own_fault_is_mended_without_a_quote_and_read_again_before_it_goes_home() -> None:
    back = [EntryFact("arrival"), EntryFact("reading"), EntryFact("finding")]
    assert what_next(Facts(back, free=True)).act == "work"
    assert what_next(Facts([*back, EntryFact("work")], free=True)).act == "reading"
    assert what_next(Facts([*back, EntryFact("work"), EntryFact("reading")], free=True)).act == "dispatch"


@pytest.mark.parametrize(
    ("place", "word"), [("bath", "rinse"), ("drying rack", "dry"), ("waits for a part", "part")]
)
def test_the_place_gives_the_work_its_words(place: str, word: str) -> None:
    assert word in what_next(Facts([*UP_TO_QUOTE, YES], place=place, work_minutes=68)).words


def test_the_agreed_minutes_are_told() -> None:
    assert what_next(Facts([*UP_TO_QUOTE, YES], work_minutes=68)).minutes == 68


def test_handed_over_the_counter_takes_less_than_a_parcel() -> None:
    ready = [*WORKED, SHOWN, EntryFact("invoice")]
    assert what_next(Facts(ready, posted=False)).minutes < what_next(Facts(ready)).minutes


ASKED_ON = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)


def silent(days: int, *after: EntryFact) -> Facts:
    asked = [*UP_TO_QUOTE[:-1], EntryFact("quote", amount_minor=110400, written_at=ASKED_ON), *after]
    return Facts(asked, "asked shelf", now=ASKED_ON + timedelta(days=days), silence_days=(7, 14, 28))


def word(day: int) -> EntryFact:
    return EntryFact("word", says="said", written_at=ASKED_ON + timedelta(days=day))


def test_silence_is_asked_about_again_and_in_the_end_the_reel_goes_home() -> None:
    # Reminder, reminder, return unrepaired after 7, 14 and 28 days: common practice, no source.
    assert what_next(silent(6)).words.startswith("Ask the customer")
    again = what_next(silent(9))
    assert again.act == "answer"
    assert again.words.startswith("No answer for 9 days: ask again")
    home = what_next(silent(28))
    assert (home.act, home.place) == ("dispatch", "post table")
    assert home.words.startswith("No answer for 28 days: send it back as it came")


def test_a_word_written_since_says_that_it_was_asked_again() -> None:
    assert what_next(silent(9, word(8))).words.startswith("Ask the customer")
    assert what_next(silent(14, word(8))).words.startswith("No answer for 14 days: ask again")
    assert what_next(silent(30, word(29))).act == "answer"
    carried = EntryFact("word", written_at=ASKED_ON + timedelta(days=8))
    assert what_next(silent(9, carried)).words.startswith("No answer for 9 days: ask again")


def test_silence_about_an_extra_never_sends_home_what_was_agreed() -> None:
    extra = EntryFact("quote", amount_minor=150000, written_at=ASKED_ON)
    held = Facts([*UP_TO_QUOTE, YES, extra], now=ASKED_ON + timedelta(days=40), silence_days=(7, 14, 28))
    assert what_next(held).act == "answer"
    assert what_next(held).words.startswith("No answer for 40 days: ask again")

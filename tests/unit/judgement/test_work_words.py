"""What a work changes, said in words with its mark."""

import re

import pytest

from spoolwright.judgement.work_words import changes
from spoolwright.judgement.works import Work, all_works

WORKS = all_works()


@pytest.mark.parametrize("work", WORKS.values(), ids=lambda work: work.id)
def test_every_effect_is_said_with_its_mark(work: Work) -> None:
    told = changes(work)
    assert len(told) == len(work.effects)
    assert all(words.endswith(f"({effect.mark})") for words, effect in zip(told, work.effects, strict=True))
    assert not any(re.search(r"sheet\.|_", words) for words in told)


@pytest.mark.parametrize(
    ("work", "said"),
    [
        ("one-block-fewer", "brake blocks: 1 fewer (counted)"),
        ("new-pawl", "rubbing of a level wind that is driven in the cast up to 30 % less (judgement prior)"),
        ("remove-level-wind", "level wind taken out (the part that is not there any more)"),
        ("clean-roller-clutch", "slips of the anti-reverse in 20 tries: none (judgement prior)"),
        ("lighter-spool", "mass of the spool 15 to 30 % less (22 to 15 g, common practice, no source)"),
        ("regrease-gears", "torque that turns the handle with nothing on the line 20 % less to 10 % more "
         "(judgement prior)"),
    ],
)  # fmt: skip
def test_how_much_is_said_plainly(work: str, said: str) -> None:
    assert said in changes(WORKS[work])


def test_a_size_is_said_in_the_units_of_the_reader() -> None:
    (metric,), (imperial,) = changes(WORKS["fit-clicker"]), changes(WORKS["fit-clicker"], "imperial")
    assert " kg " in metric
    assert " lb " in imperial or " oz " in imperial

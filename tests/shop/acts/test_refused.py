"""A refusal is named in the past tense of the shop and carries words that can be shown as they stand."""

from __future__ import annotations

import importlib
import pkgutil

from spoolwright.shop import acts
from spoolwright.shop.acts.refused import ReelHadGoneHome, Refused, WordsWereMissing


def _all_refusals() -> list[type[Refused]]:
    for module in pkgutil.iter_modules(acts.__path__):
        importlib.import_module(f"spoolwright.shop.acts.{module.name}")
    found, waiting = [], [Refused]
    while waiting:
        for cls in waiting.pop().__subclasses__():
            found.append(cls)
            waiting.append(cls)
    return found


def test_every_refusal_has_words_of_its_own_and_is_named_in_the_past() -> None:
    refusals = [cls for cls in _all_refusals() if cls.__module__.startswith("spoolwright.shop.acts")]
    assert len(refusals) > 35
    past = ("Was", "Were", "Did", "Had", "Wrote")
    assert [cls.__name__ for cls in refusals if not any(word in cls.__name__ for word in past)] == []


def test_it_says_what_to_do_and_at_which_field() -> None:
    gone, missing = ReelHadGoneHome(17), WordsWereMissing("reason", "The reason")
    assert gone.words.startswith("Reel 17 has gone home.")
    assert (missing.field, str(missing)) == ("reason", missing.words)

"""Readings as a key: nothing of them is lost on the way there and back."""

from __future__ import annotations

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.taken import Taken
from spoolwright.pages.gathered.kept_readings import frozen, thawed


def test_readings_survive_being_used_as_a_key() -> None:
    taken = Taken("pull_run", Measured(25.5, 0.25, "force"), {"radius": 0.0235, "star_turns": 1.0})
    key = frozen({"pull_run": (taken,)})
    hash(key)
    assert thawed(key) == {"pull_run": (taken,)}


def test_several_of_a_kind_stay_in_their_order() -> None:
    three = tuple(
        Taken("pull_run", Measured(10.0 * n, 0.1, "force"), {"star_turns": n}) for n in (1.0, 2.0, 3.0)
    )
    assert thawed(frozen({"pull_run": three})) == {"pull_run": three}

"""Every act: arguments by name, the hand first, nothing for a stranger, nothing half done."""

from __future__ import annotations

import importlib
import inspect
import pkgutil
from collections.abc import Callable
from datetime import date
from typing import Any

import pytest
from django.db import connection

from spoolwright.bench import live_pull, live_rows, pull_trace, spin_down, ticks
from spoolwright.bench.budget import Contribution
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.spin_down import SpinDown
from spoolwright.bench.uncertainty import Measured
from spoolwright.demo import signals
from spoolwright.judgement.price import Charge
from spoolwright.sheets import reel_sheet
from spoolwright.shop import acts
from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_instrument import Known
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.check_instrument import HeldAgainst
from spoolwright.shop.acts.prove import ProofPair
from spoolwright.shop.acts.receive_parcel import ArrivingReel
from spoolwright.shop.acts.record_answer import Said
from spoolwright.shop.acts.refused import HandWasNotOurs
from spoolwright.shop.acts.send_home import WayHome
from spoolwright.shop.acts.take_live_pull import TypedPull
from spoolwright.shop.acts.take_pull import Pulled
from spoolwright.shop.acts.take_reading import Value
from spoolwright.shop.acts.write_work import Done, Labour
from spoolwright.shop.questions.kept_inertia import KeptInertia
from spoolwright.shop.questions.kept_series import Drag, KeptSeries, kept_series
from spoolwright.shop.records.ink import inked_tables
from tests import people
from tests.shop import walk
from tests.shop.records.test_kept_noise import KEPT

# Acts that no hand does: a link is used by somebody who is still outside.
BY_NOBODY = {"use_sign_in_link"}


def every_act() -> dict[str, Callable[..., Any]]:
    """Each file of the acts that holds an act named like itself."""
    found = {}
    for module in pkgutil.iter_modules(acts.__path__):
        loaded = importlib.import_module(f"spoolwright.shop.acts.{module.name}")
        act = getattr(loaded, module.name, None)
        if callable(act) and "hand" in inspect.signature(act).parameters and module.name != "open_diary":
            found[module.name] = act
    return found


def usual(hand: Any) -> dict[str, dict[str, Any]]:
    """For each act, arguments with which a hand of the shop would be let through."""
    visit = walk.agreed(hand)
    customer, reel, entry = visit.reel.customer, visit.reel, visit.entries.first()
    quote = visit.entries.get(kind="quote").quote
    walk.worked(hand, visit)
    measured = walk.result(walk.read(hand, visit, "pull_full", 68.0, 0.5, "force"))
    pair = ProofPair(walk.promise_of("pull_full"), measured)
    looked = walk.write_finding(hand=hand, visit=visit, part="pawl", evidence="worn").entry
    version = {"version": visit.__class__.objects.get(pk=visit.pk).version}
    caliper = {"instrument": walk.caliper(hand)}
    return readings_of(visit) | {
        "add_customer": {"name": "Jonna Fure"},
        "add_instrument": {"mark": "S2", "kind": "hanging-scale", "known": Known("Scale", 0.1)},
        "change_instrument": {**caliper, "known": Known("Short caliper", 1e-5)},
        "check_instrument": {**caliper, "held": HeldAgainst("gauge block", 0.01, 0.01, 1e-6)},
        "retire_instrument": {**caliper, "why": "fell on the floor"},
        "write_gauge_study": {**caliper, "studied": walk.studied()},
        "add_person": {"username": "third"},
        "add_reel": {"customer": customer, "reel": NewReel(described="Ostrell S71")},
        "add_sheet_version": {"toml": reel_sheet.shipped()["tarvak-52"]},
        "attach_file": {"data": b"a", "original_name": "a"},
        "change_customer": {"customer": customer, "to": NewCustomer("Ragna"), "version": 1},
        "change_person": {"person": hand, "look": "dark"},
        "change_settings": {"version": 1, "name": "Ours"},
        "describe_reel": {
            "reel": reel,
            "sheet_version": walk.add_sheet_version(hand=hand, toml=reel_sheet.shipped()["tarvak-58r"]),
            "version": 1,
        },
        "issue_invoice": {"visit": visit, "charges": [Charge("tier", "Common tune", 520_00)]},
        "make_sign_in_link": {"person": hand},
        "mark_reel": {"reel": reel, "kind": "other", "words": "a scratch"},
        "move_reel": {"visit": visit, "to": "jig", **version},
        "promise_date": {"visit": visit, "p50": date(2026, 3, 4), "p90": date(2026, 3, 9), **version},
        "prove": {"visit": visit, "pairs": [pair]},
        "receive_parcel": {
            "customer": NewCustomer("Jonna Fure"),
            "reels": [ArrivingReel(reel=NewReel(described="Ostrell S71"))],
        },
        "record_answer": {"quote": quote, "option": None, "said": Said("Ragna", "letter", "no")},
        "send_home": {"visit": visit, "way": WayHome(mass_kg=0.7)},
        "send_quote": {"visit": visit, "options": [walk.option()]},
        "sign_proof": {"proof": walk.prove(hand=people.bench_hand(), visit=visit, pairs=[pair]).entry.proof},
        "set_aside": {"entry": measured.reading.entry, "reason": "the gauge was not at zero"},
        "take_back": {"set_aside": walk.set_aside(hand=hand, entry=looked, reason="wet felt")},
        "strike_entry": {"entry": entry, "reason": "wrong reel"},
        "take_payment": {"visit": visit, "amount_minor": 100},
        "write_again": {
            "entry": measured.reading.entry,
            "reason": "wrong",
            "write": lambda: walk.read(hand, visit, "pull_full", 69.0, 0.5, "force"),
        },
        "write_finding": {"visit": visit, "part": "pawl", "evidence": "worn"},
        "write_word": {"visit": visit, "words": "hello"},
        "write_work": {"visit": visit, "labour": Labour([Done("service", "Service")], 1)},
    }


def readings_of(visit: Any) -> dict[str, dict[str, Any]]:
    """The same for each way of taking a reading."""
    return {
        "take_by_hand": {"visit": visit, "taken": walk.by_hand(), "conditions": {}},
        "take_inertia": {"visit": visit, "kept": an_inertia(), "conditions": {"line": "off"}},
        "take_live_pull": {"visit": visit, "pulled": a_typed_pull(), "conditions": walk.PULLS},
        "take_noise": {"visit": visit, "kept": KEPT, "conditions": {"place_measured": "handle"}},
        "take_pull": {"visit": visit, "pulled": a_pull(), "conditions": walk.PULLS},
        "take_series": {"visit": visit, "kept": a_series(), "conditions": walk.PULLS},
        "take_spin": {"visit": visit, "spin": a_spin(), "conditions": walk.PULLS},
        "take_reading": {
            "visit": visit,
            "values": [Value("pull_full", 68.0, "force", 0.5)],
            "conditions": walk.PULLS,
        },
    }


def a_typed_pull() -> TypedPull:
    trace = live_rows.read("0 2.9\n1 2.4\n2 2.35\n3 2.41")
    return TypedPull(trace, live_pull.analyse(trace, Gauge()))


def a_pull() -> Pulled:
    trace = pull_trace.read(signals.pull_trace(signals.PullShape()).to_csv(), name="pull.csv")
    return Pulled(trace, pull_trace.analyse(trace, Gauge(accuracy_of_reading=0.005)))


def an_inertia() -> KeptInertia:
    stated = Measured(9e-6, 2e-7, "inertia")
    return KeptInertia("sizes", stated, (), (Contribution("spool_inertia", "drawing", "B", 2e-7),))


def a_series() -> KeptSeries:
    taken = [OnePull(t, 8.0 * t, 9.0 * t) for t in (1.0, 2.0, 3.0)]
    return kept_series("turns", taken, Gauge(), Drag(None))


def a_spin() -> SpinDown:
    recorded = signals.spin_recording(signals.SpinShape(), seed=3)
    return spin_down.fit(ticks.mend(ticks.read_csv(recorded.to_csv())), None)


def everything() -> dict[str, Any]:
    tables = [t.name for t in inked_tables()]
    tables += [
        "shop_visit",
        "shop_customer",
        "shop_reel",
        "shop_person",
        "shop_numberseries",
        "shop_findable",
    ]
    held = {}
    with connection.cursor() as cursor:
        for table in tables:
            cursor.execute(f"SELECT * FROM {table} ORDER BY 1")
            held[table] = cursor.fetchall()
    return held


@pytest.mark.django_db
def test_nothing_for_a_stranger_and_nothing_is_left_behind(owner: Any) -> None:
    arguments = usual(owner)
    before = everything()
    for name, act in every_act().items():
        nobodies = (
            [people.stranger()] if name in ("add_person", "make_sign_in_link") else [people.stranger(), None]
        )
        for nobody in nobodies:
            with pytest.raises(HandWasNotOurs):
                act(hand=nobody, **arguments[name])
    assert everything() == before


@pytest.mark.django_db
def test_the_same_arguments_are_let_through_for_one_of_us(owner: Any) -> None:
    """Without this the test above could pass on arguments that are refused for another reason."""
    from django.db import transaction

    arguments = usual(owner)
    for name, act in every_act().items():
        with transaction.atomic():
            act(hand=owner, **arguments[name])
            transaction.set_rollback(True)


@pytest.mark.django_db
def test_the_table_knows_every_act(owner: Any) -> None:
    assert set(usual(owner)) == set(every_act())


def test_arguments_go_by_name_and_the_hand_comes_first() -> None:
    for name, act in every_act().items():
        parameters = list(inspect.signature(act).parameters.values())
        assert parameters[0].name == "hand", name
        assert all(p.kind in (p.KEYWORD_ONLY, p.VAR_KEYWORD) for p in parameters), name

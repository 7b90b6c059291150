"""What is promised, within what; ends follow the prediction until somebody types."""

from __future__ import annotations

from typing import Any

import pytest
from django.http import QueryDict

from spoolwright.judgement.quote_options import Option, offer
from spoolwright.pages.quote.promises_form import PromisesForm

pytestmark = pytest.mark.django_db
SETTING = (0.0235, 2.5)


@pytest.fixture
def improve(visit: Any, sit_down: Any) -> tuple[Any, Option]:
    desk = sit_down(visit)
    return desk, offer(desk.case, desk.ways[1])


def form(improve: tuple[Any, Option], data: dict[str, str] | None, setting: Any = SETTING) -> PromisesForm:
    desk, option = improve
    sent = None
    if data is not None:
        sent = QueryDict(mutable=True)
        sent.update(data)
    return PromisesForm(sent, desk, 1, option, setting)


def as_sent(shown: PromisesForm) -> dict[str, str]:
    """What a browser sends back of an untouched form."""
    names = [name for name in shown.fields if not name.startswith("own_")]
    sent = {shown.add_prefix(name): shown[name].value() for name in names}
    return {name: "on" if value is True else value for name, value in sent.items()}


def test_each_reading_has_the_ends_that_matter(improve: Any) -> None:
    ends = {row.title: [end.label for end in row.ends] for row in form(improve, None).rows}
    assert ends == {
        "Pull with the drag hard on": ["at least", "at most"],
        "Start-up ratio": ["at most"],
        "Judder": ["at most"],
        "Free-spin time": ["at least"],
        "Spool end-float": ["at most"],
    }


def test_what_is_promised_holds_all_that_is_expected(improve: Any) -> None:
    bound = form(improve, as_sent(form(improve, None)))
    assert bound.is_valid(), bound.errors
    for told, one in zip(bound.offered(), bound.promised, strict=True):
        assert told.low is None or told.low <= one.low
        assert told.high is None or told.high >= one.high
        assert told.middle == one.predicted.middle
        assert told.rests_on


def test_a_ratio_is_typed_bare_or_in_per_cent(improve: Any) -> None:
    sent = as_sent(form(improve, None))
    for typed in ("8 %", "0.08", "0,08"):
        bound = form(improve, sent | {"promise_1-judder_high": typed})
        assert bound.is_valid()
        assert {p.reading_kind: p.high for p in bound.offered()}["judder"] == pytest.approx(0.08)


def test_an_untouched_end_follows_and_a_typed_one_stays(improve: Any) -> None:
    sent = as_sent(form(improve, None))
    nearer = form(improve, sent | {"promise_1-spin_time_low": "25 s"}, (0.0180, 2.5))
    assert nearer["spin_time_low"].value() == "25 s"
    at_23_5, at_18 = (form(improve, sent, s)["pull_full_low"].value() for s in (SETTING, (0.0180, 2.5)))
    assert float(at_18.split()[0]) > float(at_23_5.split()[0]), "less line, more pull"


def test_a_reading_that_appears_with_a_work_is_ticked(improve: Any) -> None:
    sent = as_sent(form(improve, None))
    without = {name: value for name, value in sent.items() if "judder" not in name}
    assert form(improve, without)["judder"].value()
    unticked = {name: value for name, value in sent.items() if name != "promise_1-judder"}
    assert not form(improve, unticked)["judder"].value()


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"promise_1-pull_full_low": "", "promise_1-pull_full_high": ""}, "pull_full_low"),
        ({"promise_1-pull_full_low": "9 kg"}, "pull_full_low"),
        ({"promise_1-spin_time_low": "3 mm"}, "spin_time_low"),
        ({"promise_1-own_0_kind": "mass"}, "own_0_low"),
        ({"promise_1-own_0_kind": "mass", "promise_1-own_0_low": "3 s"}, "own_0_low"),
        ({"promise_1-own_0_kind": "good looks"}, "own_0_kind"),
    ],
)
def test_a_promise_that_nothing_could_prove_is_refused(
    improve: Any, changes: dict[str, str], field: str
) -> None:
    bound = form(improve, as_sent(form(improve, None)) | changes)
    assert not bound.is_valid()
    assert list(bound.errors) == [field]


def test_a_promise_unticked_may_hold_nonsense_and_is_not_made(improve: Any) -> None:
    sent = as_sent(form(improve, None)) | {"promise_1-pull_full_low": "9 kg"}
    del sent["promise_1-pull_full"]
    bound = form(improve, sent)
    assert bound.is_valid()
    assert "pull_full" not in [one.reading_kind for one in bound.offered()]


def test_own_promises_come_one_by_one(improve: Any) -> None:
    sent = as_sent(form(improve, None))
    own = {"promise_1-own_0_kind": "feel", "promise_1-own_0_high": "1"}
    bound = form(improve, sent | own)
    assert bound.is_valid()
    assert bound.has_own
    assert len(bound.own_rows) == 2
    last = bound.offered()[-1]
    assert (last.kind, last.high, last.low, last.dimension) == ("feel", 1.0, None, "score")

"""A spin-down by hand: from sound or from ticks, with the inertia of what really turned."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.demo import signals
from tests.pages.diary.at_the_desk import SPIN, arrived, count, file, form, last, send, text, way

pytestmark = pytest.mark.django_db
SHAPE = signals.SpinShape(initial_speed=90.0, constant=6.0, viscous=0.05, quadratic=1e-4)


def recording() -> signals.SpinSignal:
    return signals.spin_recording(SHAPE, seed=3)


def look(client: Client, visit: Any, data: bytes, name: str = "spin.csv", **sent: Any) -> Any:
    return send(client, way(visit, "spin"), "look", signal=file(data, name), **{**SPIN, **sent})


def test_ticks_are_drawn_and_then_written(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, recording().to_csv())
    assert answer.status_code == 200
    assert count(visit) == 1
    drawn = form(answer).drawn
    assert drawn["chart"].spec["description"].startswith("Spin-down")
    assert "mended" in drawn["found"][0]
    assert send(bench, way(visit, "spin"), signal_kept=form(answer).file.last.pk, **SPIN).status_code == 302
    assert {v.kind for v in last(visit).part.values.all()} == {"spin_initial_speed", "stop_time"}


def test_the_sound_of_the_spool_is_read_too(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    signal = recording()
    answer = look(bench, visit, signal.to_wav(), "spin.wav")
    assert answer.status_code == 200
    found = form(answer).spun
    assert found.stop_time.value == pytest.approx(
        signal.truth.stop_time, abs=4 * found.stop_time.uncertainty + 0.2
    )


def test_with_the_sheets_inertia_the_drags_are_said_in_plain_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, recording().to_csv(), inertia_from="sheet")
    said = text(answer)
    assert "dry friction in bearings and at the ends" in said
    assert "μN m" in said
    assert "at the first" not in said or "Of the whole" in said


def test_the_bare_spools_inertia_is_not_that_of_a_spool_with_line(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, recording().to_csv(), inertia_from="sheet", line="on")
    assert answer.status_code == 422
    assert "bare spool’s inertia" in text(answer)


def test_a_typed_inertia_is_needed_where_it_is_chosen(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "No inertia was typed" in text(look(bench, visit, recording().to_csv(), inertia_from="typed"))
    good = look(bench, visit, recording().to_csv(), inertia_from="typed", inertia="80 g cm^2")
    assert form(good).spun.constant.dimension == "torque"


def test_several_marks_on_the_spool_are_one_turn(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    one = form(look(bench, visit, recording().to_csv())).spun.initial_speed.value
    two = form(look(bench, visit, recording().to_csv(), marks="2")).spun.initial_speed.value
    assert two == pytest.approx(one / 2, rel=0.01)


def test_a_reel_without_a_sheet_offers_no_inertia_of_one(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    choices = dict(bench.get(way(visit, "spin")).context["open"].form.fields["inertia_from"].choices)
    assert set(choices) == {"typed", "unknown"}


def test_the_column_of_ticks_is_asked_for_where_there_are_several(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    rows = "".join(f"{t:.4f},{t * 1.01:.4f}\n" for t in recording().ticks)
    answer = look(bench, visit, f"time a,time b\n{rows}".encode())
    assert answer.status_code == 422
    assert [field.name for field in form(answer).answer_fields] == ["time_column"]
    sent = SPIN | {"signal_kept": form(answer).file.last.pk, "time_column": "1"}
    assert send(bench, way(visit, "spin"), "look", **sent).status_code == 200

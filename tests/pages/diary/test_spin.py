"""A spin-down by hand: from sound or from ticks, with the inertia of what really turned."""

from __future__ import annotations

import io
import wave
from typing import Any

import numpy as np
import pytest
from django.test import Client

from spoolwright.demo import signals
from spoolwright.shop.questions.signals import spin_of
from tests.pages.diary.at_the_desk import SPIN, arrived, count, file, form, last, send, text, way
from tests.shop.questions.test_measured_inertia import take
from tests.unit.bench.test_hum import humming

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


def test_the_verdict_is_drawn_with_what_it_rests_on_and_stays_in_the_diary(
    bench: Client, torbal: Any
) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, recording().to_csv(), inertia_from="sheet")
    said = form(answer).drawn
    assert said["verdict"] in ("free", "dry", "dragging", "cannot tell", "gritty: speed falls in steps")
    assert "times as much as foretold" in text(answer)
    kept = form(answer).file.last.pk
    assert (
        send(bench, way(visit, "spin"), signal_kept=kept, **SPIN | {"inertia_from": "sheet"}).status_code
        == 302
    )
    told = text(bench.get(f"/diary/{visit.tag}/"))
    assert "What the spin says" in told
    assert spin_of(last(visit).part).verdict == said["verdict"]


def test_with_brakes_on_the_bearings_are_not_blamed(bench: Client, torbal: Any) -> None:
    answer = look(bench, arrived(torbal), recording().to_csv(), inertia_from="sheet", brakes="on")
    assert form(answer).drawn["verdict"] == "cannot tell"
    assert "Line or brakes were on" in text(answer)


def test_the_hand_before_and_the_thumb_after_are_said_and_drawn(bench: Client, torbal: Any) -> None:
    ticks = recording().ticks
    hand = np.cumsum(0.4 * 0.86 ** np.arange(12))
    free = ticks[: int(0.6 * len(ticks))] - ticks[0] + hand[-1] + 0.07
    thumb = free[-1] + np.cumsum(free[-1] - free[-2] + 0.06 * np.arange(1, 7))
    rows = "\n".join(["tick_time_s", *(f"{t:.5f}" for t in (*hand, *free, *thumb))])
    answer = look(bench, arrived(torbal), rows.encode())
    assert "a hand was at work" in text(answer)
    assert "points after it left out" in text(answer)
    assert "left out" in str(form(answer).drawn["chart"].spec)


def test_a_hum_is_read_where_that_is_said(bench: Client, torbal: Any) -> None:
    sound, _ = humming(1)
    out = io.BytesIO()
    with wave.open(out, "wb") as made:
        made.setparams((1, 2, 8000, 0, "NONE", ""))
        made.writeframes((sound * 32000).astype("<i2").tobytes())
    answer = look(bench, arrived(torbal), out.getvalue(), "hum.wav", heard_as="hum", marks="3")
    assert answer.status_code == 200
    assert form(answer).spun.heard_as == "hum"
    assert "pieces of the sound" in text(answer)


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


def test_an_inertia_that_was_measured_goes_before_the_sheets(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    take(torbal, visit, 9e-6)
    page = bench.get(way(visit, "spin"))
    assert "as measured: the bare spool" in text(page)
    assert form(page).fields["inertia_from"].initial == "measured"
    found = form(look(bench, visit, recording().to_csv(), inertia_from="measured"))
    ratio = found.spun.constant.value / form(look(bench, visit, recording().to_csv())).spun.constant.value
    assert ratio == pytest.approx(9e-6)


def test_of_a_spool_with_line_that_was_not_measured_it_says_so(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    take(torbal, visit, 9e-6)
    answer = look(bench, visit, recording().to_csv(), inertia_from="measured", line="on")
    assert answer.status_code == 422
    assert "With the line on it was not measured" in text(answer)

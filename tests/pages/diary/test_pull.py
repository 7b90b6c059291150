"""A pull trace by hand: drawn before it is written, chosen once, asked for exactly what it does not say."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.questions.signals import pull_of
from tests.pages.diary.at_the_desk import PULL, arrived, count, file, form, last, pull_csv, send, text, way

pytestmark = pytest.mark.django_db


def look(client: Client, visit: Any, data: bytes, **sent: Any) -> Any:
    return send(client, way(visit, "pull"), "look", signal=file(data), **{**PULL, **sent})


def test_it_is_drawn_with_its_numbers_before_anything_is_written(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, pull_csv(running=25.0, start_up_ratio=1.5))
    assert answer.status_code == 200
    assert count(visit) == 1
    drawn = form(answer).drawn
    assert drawn["chart"].spec["description"].startswith("Pull trace.")
    assert [line.quantity for line in drawn["told"].lines] == [
        "Start-up pull",
        "Running pull",
        "Start-up ratio",
    ]
    assert "N\u00a0m at the spool" in drawn["told"].lines[1].conditions
    assert "Write the reading" in text(answer)


def test_only_a_look_asks_for_no_conditions_yet(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), setting="part")
    assert answer.status_code == 200
    assert not form(answer).errors


def test_the_file_is_chosen_once_and_written_with_its_trace(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = form(look(bench, visit, pull_csv())).file.last
    assert send(bench, way(visit, "pull"), signal_kept=kept.pk, **PULL).status_code == 302
    reading = last(visit).part
    assert reading.attachment == kept
    assert pull_of(reading) is not None
    assert reading.conditions == {
        "line": "on",
        "radius": pytest.approx(0.0235),
        "star_turns": 1.25,
        "pull_number": 2,
        "pulls_of": 3,
        "temperature": pytest.approx(292.15),
    }


def test_a_file_that_came_with_the_pen_is_drawn_first(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, way(visit, "pull"), "write", signal=file(pull_csv()), **PULL)
    assert answer.status_code == 200
    assert form(answer).drawn
    assert count(visit) == 1


def test_hard_on_it_is_the_most_the_reel_holds_and_the_star_need_not_be_counted(
    bench: Client, torbal: Any
) -> None:
    visit = arrived(torbal)
    sent = {key: value for key, value in PULL.items() if key != "star_turns"} | {"setting": "hard"}
    kept = form(send(bench, way(visit, "pull"), "look", signal=file(pull_csv()), **sent)).file.last
    assert send(bench, way(visit, "pull"), signal_kept=kept.pk, **sent).status_code == 302
    assert [value.kind for value in last(visit).part.values.all()] == ["pull_full"]


def test_what_the_file_does_not_say_is_asked_and_nothing_else(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    bare = b"time [s];pull\n" + b"".join(
        b"%.2f;%d\n" % (k / 20, 0 if k < 20 else 25 if k < 120 else 0) for k in range(140)
    )
    answer = look(bench, visit, bare)
    assert answer.status_code == 422
    assert [field.name for field in form(answer).answer_fields] == ["force_unit"]
    assert "In which unit is the pull" in text(answer)
    kept = form(answer).file.last.pk
    again = send(bench, way(visit, "pull"), "look", signal_kept=kept, force_unit="N", **PULL)
    assert again.status_code == 200
    assert "in N" in " ".join(form(again).drawn["found"])
    assert [field.name for field in form(again).answer_fields] == ["force_unit"]


def test_columns_rate_and_unit_can_all_be_asked(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    rows = b"".join(b"%d;%d;%d\n" % (k % 3, 0 if k < 20 else 25 if k < 120 else 0, k % 5) for k in range(140))
    answer = look(bench, visit, b"a;b;c\n" + rows)
    asked = {"force_column", "force_unit", "rate"}
    assert {field.name for field in form(answer).answer_fields} == asked
    sent = PULL | {"signal_kept": form(answer).file.last.pk, "force_column": "2", "rate": "20 Hz"}
    second = send(bench, way(visit, "pull"), "look", **sent)
    assert second.status_code == 422
    assert set(form(second).errors) == {"force_unit"}
    assert form(second)["rate"].value() == "20 Hz"
    third = send(bench, way(visit, "pull"), "look", **sent, force_unit="N")
    assert third.status_code == 200
    assert form(third).pulled.trace.found.rate == pytest.approx(20)


@pytest.mark.parametrize("rate", ["fast", "20 kg", "-3 Hz", "20 furlongs"])
def test_a_rate_that_is_none_is_refused_beside_its_field(bench: Client, torbal: Any, rate: str) -> None:
    visit = arrived(torbal)
    rows = b"".join(b"%d\n" % (0 if k < 20 else 25 if k < 120 else 0) for k in range(140))
    answer = look(bench, visit, b"kg\n" + rows, rate=rate)
    assert answer.status_code == 422
    assert "rate" in form(answer).errors or "signal" in form(answer).errors


def test_of_several_pulls_one_is_chosen(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    one = pull_csv().decode().splitlines()
    head, rows = one[0], [row.split(",") for row in one[1:]]
    length = float(rows[-1][0]) + 1.0
    twice = [head, *(",".join(row) for row in rows)]
    twice += [f"{float(row[0]) + length:.4f},{row[1]}" for row in rows]
    data = "\n".join(twice).encode()
    first = form(look(bench, visit, data, pull="1"))
    assert first.drawn["pulls"] == 2
    assert first.pulled.read.pull_number == 1
    none = look(bench, visit, data, pull="7")
    assert none.status_code == 422
    assert "no pull number 7" in text(none)


def test_the_gauge_is_remembered_word_for_word(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    gauge = {"gauge_accuracy": "0.5", "gauge_accuracy_unit": "%", "gauge_step": "0.01 kg"}
    kept = form(look(bench, visit, pull_csv(), **gauge)).file.last.pk
    send(bench, way(visit, "pull"), signal_kept=kept, **gauge, **PULL)
    fresh = bench.get(way(visit, "pull")).context["open"].form
    assert (fresh["gauge_accuracy"].value(), fresh["gauge_step"].value()) == ("0.5 %", "0.01 kg")


def test_the_gauge_widens_the_uncertainty(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    plain = form(look(bench, visit, pull_csv())).pulled.read.running
    stated = form(look(bench, visit, pull_csv(), gauge_accuracy="2 %")).pulled.read.running
    assert stated.uncertainty > plain.uncertainty


def test_the_next_pull_begins_where_the_last_one_ended(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = form(look(bench, visit, pull_csv())).file.last.pk
    send(bench, way(visit, "pull"), signal_kept=kept, **PULL)
    fresh = bench.get(way(visit, "pull")).context["open"].form
    assert (fresh["pull_number"].value(), fresh["pulls_of"].value()) == (3, 3)
    assert fresh["line"].value() == "on"
    assert fresh["radius"].value() == "23.5 mm"


def test_written_again_the_file_and_the_conditions_are_there(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    kept = form(look(bench, visit, pull_csv())).file.last.pk
    send(bench, way(visit, "pull"), signal_kept=kept, **PULL)
    old = last(visit).entry
    fresh = bench.get(f"{way(visit, 'pull')}?again={old.pk}").context["open"].form
    assert fresh.file.last.pk == kept
    assert fresh["radius"].value() == "23.5 mm"
    sent = PULL | {"radius": "24", "again": old.pk, "signal_kept": kept, "reason": "radius misread"}
    assert send(bench, way(visit, "pull"), **sent).status_code == 302
    assert last(visit).part.radius_m == pytest.approx(0.024)

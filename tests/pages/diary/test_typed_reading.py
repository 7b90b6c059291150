"""A reading that is typed: three tries, its conditions, what the limits say, and the same again."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from tests.pages.diary.at_the_desk import arrived, form, last, send, text, typed_way

pytestmark = pytest.mark.django_db


def test_each_try_is_kept_and_the_mean_is_the_result(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {"values": "338", "values_2": "339", "values_3": "338", "values_unit": "g", "line": "on"}
    assert send(bench, typed_way(visit, "mass"), **sent).status_code == 302
    values = {v.repeat: v for v in last(visit).part.values.all()}
    assert [round(values[k].value_si, 6) for k in (1, 2, 3)] == [0.338, 0.339, 0.338]
    assert values[0].value_si == pytest.approx((0.338 + 0.339 + 0.338) / 3)
    assert values[0].typed_text == "338 g; 339 g; 338 g"


def test_semicolons_in_one_field_count_as_well(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, typed_way(visit, "mass"), values="338 g; 339; 338 g", values_unit="g", line="on")
    assert last(visit).part.values.count() == 4


def test_the_limits_are_said_with_their_mark_before_and_after(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = text(bench.get(typed_way(visit, "end_float")))
    assert "Good from 0.05 mm to 0.12 mm, wants a look from 0.01 mm to 0.3 mm" in page
    assert "judgement prior" in page
    send(bench, typed_way(visit, "end_float"), values="0.42 mm")
    assert "To be acted on: good is from 0.05 mm to 0.12 mm" in text(bench.get(f"/diary/{visit.tag}/"))


def test_a_score_is_chosen_in_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = text(bench.get(typed_way(visit, "feel")))
    assert "3: rough" in page
    send(bench, typed_way(visit, "feel"), values="3")
    assert last(visit).part.values.get(repeat=0).value_si == 3
    assert "“rough”" in text(bench.get(f"/diary/{visit.tag}/"))


def test_only_the_conditions_of_the_kind_are_asked(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)

    def asked(kind: str) -> set[str]:
        return {f.name for f in form(bench.get(typed_way(visit, kind))).asked_conditions}

    assert asked("end_float") == set()
    assert asked("mass") == {"line"}
    assert asked("spin_time") == {"line", "brakes", "temperature"}
    assert asked("anti_reverse_slips") == {"anti_reverse_cold"}


def test_cold_is_a_condition_like_any_other(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, typed_way(visit, "anti_reverse_slips"), values="7", anti_reverse_cold="cold")
    reading = last(visit).part
    assert reading.anti_reverse_cold is True
    send(bench, typed_way(visit, "anti_reverse_slips"), values="0", anti_reverse_cold="warm")
    assert last(visit).part.anti_reverse_cold is False


def test_a_reading_under_load_says_that_lines_whip(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "whips back" in text(bench.get(typed_way(visit, "click_pull")))
    assert "whips back" not in text(bench.get(typed_way(visit, "mass")))
    assert "fast spool" in text(bench.get(typed_way(visit, "spin_time")))


def test_written_again_as_it_was_typed(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, typed_way(visit, "mass"), values="338 g; 339 g", line="on")
    old = last(visit).entry
    fresh = form(bench.get(f"{typed_way(visit, 'mass')}?again={old.pk}"))
    assert fresh["values"].value() == "338 g; 339 g"
    assert fresh["line"].value() == "on"


def test_an_imperial_reader_types_and_reads_ounces(bench: Client, torbal: Any) -> None:
    torbal.units = "imperial"
    torbal.save()
    visit = arrived(torbal)
    page = bench.get(typed_way(visit, "mass")).content.decode()
    assert page.index('value="oz"') < page.index('value="g"')
    send(bench, typed_way(visit, "mass"), values="12", values_unit="oz", line="off")
    assert last(visit).part.values.get(repeat=0).value_si == pytest.approx(0.340194, abs=1e-6)
    # 12 oz of 28.349523125 g: international avoirdupois ounce, by definition.

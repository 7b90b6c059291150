"""A series of pulls by hand: typed row by row, drawn before it is written, compared with an earlier one."""

from __future__ import annotations

from typing import Any

import pytest
from django.test import Client

from spoolwright.shop.questions.kept_series import series_of
from tests.pages.diary.at_the_desk import arrived, count, file, form, last, send, text, way

pytestmark = pytest.mark.django_db

KNOWN = {
    "along": "turns",
    "unit": "kg",
    "line": "on",
    "radius": "23.5",
    "radius_unit": "mm",
    "temperature": "19",
    "temperature_unit": "°C",
}
PULLS = (("1", "0.60", "0.45"), ("2", "1.50", "1.15"), ("3", "2.40", "1.85"), ("4", "3.25", "2.50"))


def typed(pulls: Any = PULLS) -> dict[str, str]:
    return {
        f"pull-{n}-{cell}": text
        for n, row in enumerate(pulls)
        for cell, text in zip(("point", "start", "run"), row, strict=True)
    }


def look(client: Client, visit: Any, **sent: Any) -> Any:
    return send(client, way(visit, "series"), "look", **{**KNOWN, **typed(), **sent})


def test_it_is_drawn_with_its_verdict_before_anything_is_written(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit)
    assert answer.status_code == 200
    assert count(visit) == 1
    drawn = form(answer).drawn
    assert drawn["chart"].spec["description"].startswith("4 pulls against turns of the star")
    assert [line.quantity for line in drawn["told"].lines][0] == "Pull that one turn adds"
    assert "The pulls " in drawn["said"][0]
    assert any("judgement prior" in line for line in drawn["said"])
    assert "sound, by the sheet" in str(drawn["chart"].spec)


def test_the_pen_writes_only_what_was_drawn(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    mark = form(look(bench, visit)).mark
    other = {**KNOWN, **typed(), "pull-0-run": "0.50", "drawn_as": mark}
    changed = send(bench, way(visit, "series"), **other)
    assert changed.status_code == 200
    assert count(visit) == 1
    assert send(bench, way(visit, "series"), **{**KNOWN, **typed(), "drawn_as": mark}).status_code == 302
    reading = last(visit).part
    assert reading.way == "pull series"
    kept = series_of(reading)
    assert kept is not None
    assert len(kept.pulls) == 4
    kinds = [value.kind for value in reading.values.all()]
    assert kinds == ["pull_per_turn", "drag_onset", "series_start_ratio"]
    page = text(bench.get(f"/diary/{visit.tag}/"))
    assert kept.said["metric"][0] in page.replace("&#x27;", "'")


def test_its_chart_has_a_page_and_it_can_be_written_again(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    mark = form(look(bench, visit)).mark
    send(bench, way(visit, "series"), **{**KNOWN, **typed(), "drawn_as": mark})
    entry = last(visit).entry.pk
    told = text(bench.get(f"/diary/{visit.tag}/trace/{entry}/"))
    assert "a series of pulls" in told
    assert "setting at which the drag bites" in told
    again = form(bench.get(f"{way(visit, 'series')}?again={entry}"))
    assert [row["run"].value() for row in again.pulls[:2]] == ["0.450 kg", "1.15 kg"]
    assert form(bench.get(way(visit, "series"))).earlier_words


def test_what_is_known_beside_the_pulls_counts(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    mark = form(look(bench, visit)).mark
    send(bench, way(visit, "series"), **{**KNOWN, **typed(), "drawn_as": mark})
    number = form(bench.get(way(visit, "series"))).earlier_words[0][0]
    more = {
        "compare": str(number), "felt": "on", "lost": "0.3", "lost_unit": "mm", "ruled_out": ["weak"],
        "pulley_up": "5.2", "pulley_up_unit": "kg", "pulley_down": "5.0", "pulley_down_unit": "kg",
        "zero_before": "0.02", "zero_before_unit": "kg",
    }  # fmt: skip
    drawn = form(look(bench, visit, **more)).drawn
    said = " ".join(drawn["said"])
    for words in ("earlier series", "found by feel", "thinner than new", "not found: a weak spring"):
        assert words in said
    assert any("pulley" in note for note in drawn["notes"])


def test_a_fade_asks_how_the_drag_was_set_and_numbers_may_stay_empty(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    fading = typed([("", "", str(4 - 0.3 * n)) for n in range(6)])
    sent = {**KNOWN, **fading, "along": "number"}
    mark = form(send(bench, way(visit, "series"), "look", **sent)).mark
    refused = send(bench, way(visit, "series"), **sent, drawn_as=mark)
    assert "star_turns" in form(refused).errors
    written = send(bench, way(visit, "series"), **sent, drawn_as=mark, star_turns="2")
    assert written.status_code == 302
    kept = series_of(last(visit).part)
    assert kept is not None
    assert kept.verdict == "fades"


def test_slow_and_fast_pulls_say_from_which_speed_it_is_smooth(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    rows = typed([("0.02", "", "3.0"), ("0.1", "", "3.0"), ("0.4", "", "3.0")])
    shaken = {f"pull-{n}-judder": text for n, text in enumerate(("40", "15", "3"))}
    answer = send(bench, way(visit, "series"), "look", **{**KNOWN, **rows, **shaken, "along": "speed"})
    assert "sticks and slips" in form(answer).drawn["said"][0]
    assert "judder, %" in text(answer)


def test_a_table_from_a_spreadsheet_does_as_well(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    table = "turns;start-up [kg];running [kg]\n" + "".join(f"{a};{b};{c}\n" for a, b, c in PULLS)
    answer = send(bench, way(visit, "series"), "look", signal=file(table.encode()), **KNOWN)
    assert form(answer).drawn
    kept = form(answer).file.last
    mark = form(answer).mark
    sent = send(bench, way(visit, "series"), signal_kept=kept.pk, drawn_as=mark, **KNOWN)
    if sent.status_code == 200:
        sent = send(bench, way(visit, "series"), signal_kept=kept.pk, drawn_as=form(sent).mark, **KNOWN)
    assert sent.status_code == 302
    assert last(visit).part.attachment == kept


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"pull-1-run": "much"}, "Pull 2, running"),
        ({"pull-1-run": ""}, "Pull 2"),
        ({"pull-2-point": "2", "pull-3-point": "2", "pull-0-point": "2"}, "settings"),
        ({"line_angle": "70", "line_angle_unit": "deg"}, "60 deg"),
        ({"pulley_up": "5", "pulley_up_unit": "kg"}, "both ways"),
    ],
)
def test_what_cannot_be_read_is_refused_and_stays(
    more: dict[str, str], words: str, bench: Client, torbal: Any
) -> None:
    visit = arrived(torbal)
    answer = look(bench, visit, **more)
    assert words in text(answer).replace("&#x27;", "'")
    assert form(answer).drawn is None
    assert form(answer).pulls[3]["run"].value() == "2.50"
    assert count(visit) == 1


def test_an_empty_form_is_refused_only_by_the_pen(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert form(send(bench, way(visit, "series"), "look", **KNOWN)).drawn is None
    mark = form(send(bench, way(visit, "series"), "look", **KNOWN)).mark
    refused = send(bench, way(visit, "series"), **KNOWN, drawn_as=mark)
    assert refused.status_code == 422
    assert "No pull was typed" in text(refused)

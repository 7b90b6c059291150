"""A moment of inertia by hand: the ways to choose from, the result before it is written."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from django.test import Client

from spoolwright.sheets import inertia_methods
from tests.pages.diary.at_the_desk import arrived, count, file, form, last, send, text, way

pytestmark = pytest.mark.django_db
METHODS = ("fall", "threads")
"""One that falls, one that swings; each method's own arithmetic is tried in tests/unit/bench."""


def asked(method: str, **more: Any) -> dict[str, Any]:
    """The examples of the table, as somebody would type them."""
    typed = {one.key: one.example for one in inertia_methods.method(method).asks}
    return {**typed, "line": "off", "timing": "video", **more}


def to(visit: Any, method: str) -> str:
    return f"{way(visit, 'inertia')}?method={method}"


def test_every_way_is_offered_in_words(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    page = bench.get(way(visit, "inertia")).content.decode()
    for method in inertia_methods.methods().values():
        assert f"?method={method.id}" in page
    assert f"{way(visit, 'inertia')}#next" in bench.get(f"{way(visit, 'reading')}?all=1").content.decode()


@pytest.mark.parametrize("method", METHODS)
def test_each_is_worked_out_and_then_written(bench: Client, torbal: Any, method: str) -> None:
    visit = arrived(torbal)
    page = bench.get(to(visit, method))
    assert page.status_code == 200
    answer = send(bench, to(visit, method), "look", **asked(method))
    assert answer.status_code == 200, text(answer)
    assert count(visit) == 1
    said = text(answer)
    assert "Moment of inertia of the spool" in said
    assert "The reel’s sheet says" in said
    assert "agree" in said
    assert "what the uncertainty is made of" in said
    assert send(bench, to(visit, method), **asked(method)).status_code == 302
    part = last(visit).part
    assert part.way == "inertia"
    assert part.analysis["method"] == method
    assert part.values.get().value_si == pytest.approx(form(answer).kept.inertia.value)


def test_falls_say_friction_and_carry_their_caution(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "feet and hands clear" in text(bench.get(to(visit, "fall")))
    assert "of friction meanwhile" in text(send(bench, to(visit, "fall"), "look", **asked("fall")))


def test_a_thumb_is_less_sure_than_a_video(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    video, thumb = (
        form(send(bench, to(visit, "fall"), "look", **asked("fall", timing=timing))).kept.inertia.uncertainty
        for timing in ("video", "hand")
    )
    assert thumb > 3 * video


def test_tries_in_three_boxes_with_one_unit_are_read_together(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    tries = {"time_1": "1.58", "time_1_2": "1.60", "time_1_3": "1.62", "time_1_unit": "s"}
    answer = send(bench, to(visit, "fall"), "look", **asked("fall", **tries))
    rows = form(answer).kept.budget
    scatter = "Time of the lighter one’s fall: scatter of 3 tries, widened for their number"
    assert scatter in {row.source for row in rows}


def test_what_is_missing_or_wrong_is_said_at_its_field(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, to(visit, "fall"), "look", **asked("fall", height="", radius="20"))
    assert answer.status_code == 422
    assert set(form(answer).errors) == {"height", "radius"}
    assert 'value="2.00"' in answer.content.decode()


def test_what_makes_no_sense_together_is_said_above_the_form(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, to(visit, "fall"), "look", **asked("fall", time_2="3.0 s"))
    assert answer.status_code == 422
    assert "did not fall faster" in text(answer)
    assert send(bench, to(visit, "fall"), **asked("fall", time_2="3.0 s")).status_code == 422
    assert count(visit) == 1


def swung() -> bytes:
    t = np.arange(0, 5, 0.01)
    rates = np.exp(-0.2 * t) * np.cos(15.5 * t)
    return ("time,rate\n" + "".join(f"{a:.3f},{b:.6f}\n" for a, b in zip(t, rates, strict=True))).encode()


def test_a_record_stands_for_the_timing_and_is_drawn(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    sent = {"stiffness": "2.40 mN m/rad", "line": "off", "timing": "video"}
    answer = send(bench, to(visit, "spring"), "look", signal=file(swung(), "swing.csv"), **sent)
    assert answer.status_code == 200, text(answer)
    assert "One swing there and back takes" in text(answer)
    kept = form(answer).file.last.pk
    assert send(bench, to(visit, "spring"), signal_kept=kept, **sent).status_code == 302
    block = last(visit)
    assert block.part.attachment_id == kept
    page = bench.get(f"/diary/{visit.tag}/trace/{block.entry.pk}/")
    assert "A swing of" in page.content.decode()


def test_without_record_and_times_the_swing_is_missed(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, to(visit, "spring"), "look", stiffness="2.40 mN m/rad", line="off", timing="video")
    assert "time of the swing is missing" in text(answer)


def test_a_file_that_is_no_record_is_refused_at_its_field(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    answer = send(bench, to(visit, "spring"), "look", signal=file(b"hello"), **asked("spring"))
    assert answer.status_code == 422
    assert "signal" in form(answer).errors


def test_the_next_one_is_set_beside_the_first(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, to(visit, "sizes"), **asked("sizes"))
    said = text(send(bench, to(visit, "threads"), "look", **asked("threads")))
    assert "The 2 ways" in said
    assert "its sizes and its mass" in said


def test_the_diary_tells_it_and_leads_to_its_budget(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, to(visit, "fall"), **asked("fall"))
    page = bench.get(f"/diary/{visit.tag}/")
    assert "Found by two falling weights." in text(page)
    trace = f"/diary/{visit.tag}/trace/{last(visit).entry.pk}/"
    assert trace in page.content.decode()
    told = text(bench.get(trace))
    assert "Radius of the thread: last digit that was typed" in told
    assert "moment of inertia" in told


def test_written_again_opens_the_same_way(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    send(bench, to(visit, "threads"), **asked("threads"))
    page = bench.get(f"{way(visit, 'inertia')}?again={last(visit).entry.pk}")
    assert "hanging on two threads" in text(page)


def test_a_reel_without_a_sheet_is_compared_with_nothing(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal, sheet="")
    said = text(send(bench, to(visit, "sizes"), "look", **asked("sizes")))
    assert "The reel’s sheet says" not in said


def test_an_unknown_way_shows_the_list_and_takes_nothing(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    assert "by which way?" in text(bench.get(to(visit, "rolling")))
    assert send(bench, to(visit, "rolling"), **asked("fall")).status_code == 405

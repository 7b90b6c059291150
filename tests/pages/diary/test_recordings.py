"""A phone's recording in the form of a spin; and the worst files, after which the desk still answers."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from django.test import Client

from spoolwright.bench import decoding
from spoolwright.demo import signals
from tests import hostile
from tests.encoded import encode
from tests.pages.diary.at_the_desk import SPIN, arrived, count, file, form, send, text, way

pytestmark = pytest.mark.django_db
SHAPE = signals.SpinShape(initial_speed=60.0, constant=12.0, viscous=0.05, quadratic=1e-4, rate=48_000)
WORST = (
    "hours of FLAC",
    "MOV of NaN",
    "stsz of 4294967295",
    "eight channels of 192 kHz",
    "lines without end",
)


def test_what_a_phone_records_is_drawn_and_read_once(
    bench: Client, torbal: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    decoded = []
    real = decoding.decode
    monkeypatch.setattr(decoding, "decode", lambda *a, **k: decoded.append(a[0]) or real(*a, **k))
    signal = signals.spin_recording(SHAPE, seed=3)
    sound = encode("webm", np.stack([signal.samples()] * 2))
    answer = send(
        bench, way(arrived(torbal), "spin"), "look", signal=file(sound, "spin.webm", "video/any"), **SPIN
    )
    assert answer.status_code == 200
    found = form(answer).spun
    assert found.stop_time.value == pytest.approx(
        signal.truth.stop_time, abs=4 * found.stop_time.uncertainty + 0.2
    )
    assert len(decoded) == 1
    assert form(answer).file.last.media_type.startswith("video/")


def test_what_the_recording_lacks_is_said_with_the_reading(bench: Client, torbal: Any) -> None:
    sound = encode("webm", signals.spin_recording(SHAPE, seed=3).samples())
    sent = file(sound[: int(0.8 * len(sound))], "spin.webm")
    answer = send(bench, way(arrived(torbal), "spin"), "look", signal=sent, **SPIN)
    assert answer.status_code == 200
    assert "The file is cut short" in text(answer)


def test_the_worst_files_are_refused_in_words_and_the_desk_still_answers(bench: Client, torbal: Any) -> None:
    visit = arrived(torbal)
    for name, data in hostile.named(WORST).items():
        sent = SPIN | {"words": "typed before"}
        answer = send(bench, way(visit, "spin"), "look", signal=file(data, "spin.m4a"), **sent)
        assert answer.status_code == 422, name
        assert "Accepted:" in text(answer), name
        assert "typed before" in answer.content.decode()
        assert form(answer).file.last.original_name == "spin.m4a"
    assert count(visit) == 1
    assert bench.get(way(visit, "spin")).status_code == 200

"""Files dropped by mistake: each a plain sentence with the place and what is accepted, and no number."""

import io
import wave
from contextlib import suppress

import numpy as np
import pytest

from spoolwright.bench import pull_trace, recording, spin_down, ticks
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable
from spoolwright.demo.signals import pull_trace as a_pull
from spoolwright.demo.signals import spin_recording

PULL = a_pull(seed=3).to_csv()
SPIN = spin_recording(seed=3)
LINES = PULL.decode().splitlines()
NOISE = np.random.default_rng(1).normal(0, 0.05, 400)


def table(force: np.typing.ArrayLike, rate: float = 100.0) -> bytes:
    rows = "".join(f"{i / rate:.3f},{f:.4f}\n" for i, f in enumerate(np.asarray(force)))
    return f"time_s,force_n\n{rows}".encode()


def with_line(number: int, line: str) -> bytes:
    return "\n".join([*LINES[:number], line, *LINES[number + 1 :]]).encode()


def wav(samples: np.typing.ArrayLike) -> bytes:
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setparams((1, 2, 16_000, 0, "NONE", ""))
        file.writeframes((np.asarray(samples) * 32767).astype("<i2").tobytes())
    return out.getvalue()


PULLS = {
    "nothing": (b"", "empty"),
    "blank lines": (b"\n\n   \n", "nothing but blanks"),
    "a photo": (b"\xff\xd8\xff\xe0\x00\x10JFIF" + bytes(range(256)), "photo"),
    "a workbook": (b"PK\x03\x04" + bytes(range(200)), "save the sheet as CSV"),
    "a recording": (SPIN.to_wav(), "sound recording"),
    "a program": (b"MZ\x90\x00" + bytes(range(200)), "a program"),
    "zero bytes": (PULL[:500] + b"\x00\x00" + PULL[500:], "zero bytes"),
    "a letter": (b"Dear Torbal,\nthe drag jerks when a fish runs.\n", "no rows of numbers"),
    "one column of words": ("\n".join(["state", *["OK", "over", "low"] * 20]).encode(), "no rows of numbers"),
    "script": (b"<script>alert(1)</script>\n" * 30, "no rows of numbers"),
    "a header alone": (b"time_s,force_n\n", "no rows of numbers"),
    "a list of ticks": (SPIN.to_csv(), "ticks"),
    "five samples": ("\n".join(LINES[:6]).encode(), "5 samples"),
    "a value left out": (with_line(50, "0.49,"), "line 51: a value is missing"),
    "not a number": (with_line(50, "0.49,nan"), "line 51: the gauge wrote “nan”"),
    "endless": (with_line(50, "0.49,inf"), "line 51: the gauge wrote “inf”"),
    "an overload": (with_line(50, "0.49,OL"), "line 51: “OL” is not a number"),
    "a value beyond belief": (with_line(50, "0.49,1e300"), "beyond anything"),
    "time backwards": (with_line(50, "0.10,0.0"), "line 51: time runs backwards"),
    "comma twice": (b"time_s,force_n\n" + b"0,01,12,50\n" * 40, "both parts the columns"),
    "all the same": (table(np.full(200, 3.0)), "same value throughout"),
    "noise only": (table(NOISE), "no pull in it"),
    "held, never slipping": (
        table(np.r_[np.zeros(50), np.linspace(0, 20, 300), np.zeros(50)] + NOISE),
        "slips for",
    ),
    "stretched and let back": (
        table(np.r_[np.linspace(0, 20, 200), np.linspace(20, 0, 200)] + NOISE, rate=20.0),
        "never runs level",
    ),
    "begun too late": (table(20.0 + NOISE + 0.3 * np.sin(np.arange(400) / 50)), "already pulled"),
}
SPINS = {
    "nothing": (b"", "empty"),
    "a photo as WAV": (b"\xff\xd8\xff\xe0\x00\x10JFIF" + bytes(range(256)), "photo"),
    "cut short": (SPIN.to_wav()[:40_000], "cut short"),
    "silent": (wav(np.zeros(16_000)), "silent"),
    "a level": (wav(np.full(16_000, 0.5)), "constant level"),
    "one sample": (wav([0.5]), "one sample"),
    "a hum": (wav(0.3 * np.sin(np.arange(48_000) * 0.02)), "ticks|turning|rad/s|tick"),
    "three ticks": (wav((np.arange(32_000) % 11_000 == 5_000) * 0.9), "ticks"),
    "hiss": (wav(np.random.default_rng(2).normal(0, 0.1, 80_000).clip(-1, 1)), "tick|turning|rad/s|drag"),
}
TICKS = {
    "a pull trace": (PULL, "pull trace"),
    "backwards": (b"tick_s\n0.1\n0.5\n0.3\n0.9\n1.2\n1.5\n1.8\n2.2\n", "run backwards"),
    "five ticks": (b"tick_s\n0.1\n0.5\n0.9\n1.3\n1.7\n", "5 ticks"),
    "a clock that ticks faster than any spool": (
        "\n".join(["tick_s", *(f"{i * 0.002 * (1 + i * 1e-4):.6f}" for i in range(300))]).encode(),
        "rad/s at the start",
    ),
    "ticks at random": (
        "\n".join(
            ["tick_s", *(f"{t:.4f}" for t in np.sort(np.random.default_rng(4).uniform(0, 60, 80)))]
        ).encode(),
        "steady turning|drag explains|rad/s|alike|fastest moment|to rest",
    ),
    "speeding up": (
        "\n".join(["tick_s", *(f"{t:.5f}" for t in np.cumsum(0.5 * 0.96 ** np.arange(60)))]).encode(),
        "fastest moment",
    ),
}


@pytest.mark.parametrize("name", PULLS)
def test_a_bad_pull_trace(name: str) -> None:
    data, words = PULLS[name]
    with pytest.raises(Unreadable, match=f"(?i){words}") as refused:
        pull_trace.analyse(pull_trace.read(data, name="pull.csv"), Gauge())
    assert refused.value.reason
    assert refused.value.accepted or refused.value.where


@pytest.mark.parametrize("name", SPINS)
def test_a_bad_recording(name: str) -> None:
    data, words = SPINS[name]
    with pytest.raises(Unreadable, match=f"(?i){words}"):
        spin_down.fit(ticks.mend(ticks.find(recording.read_wav(data, name="spin.wav"))))


@pytest.mark.parametrize("name", TICKS)
def test_a_bad_list_of_ticks(name: str) -> None:
    data, words = TICKS[name]
    with pytest.raises(Unreadable, match=f"(?i){words}"):
        spin_down.fit(ticks.mend(ticks.read_csv(data, name="ticks.csv")))


def test_a_missing_unit_is_a_question_and_never_a_guess() -> None:
    bare = PULL.replace(b"time_s,force_n", b"time,force")
    with pytest.raises(NeedsAnswer) as asked:
        pull_trace.read(bare, name="pull.csv")
    assert asked.value.missing == ("force_unit",)
    assert "kgf" in asked.value.accepted


@pytest.mark.parametrize("seed", range(40))
def test_any_bytes_are_read_or_refused_and_nothing_else(seed: int) -> None:
    rng = np.random.default_rng(seed)
    data = bytearray(PULL if seed % 2 else SPIN.to_wav()[:60_000])
    for at in rng.integers(0, len(data), 30):
        data[at] = rng.integers(0, 256)
    cut = bytes(data[: rng.integers(1, len(data))])
    for read in (
        lambda: pull_trace.analyse(pull_trace.read(cut), Gauge()),
        lambda: spin_down.fit(ticks.mend(ticks.find(recording.read_wav(cut)))),
        lambda: spin_down.fit(ticks.mend(ticks.read_csv(cut))),
    ):
        with suppress(Unreadable):
            read()

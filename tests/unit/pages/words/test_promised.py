"""Promises in words: at least, at most, between; chosen figures without idle noughts."""

from types import SimpleNamespace

import pytest

from spoolwright.pages.words import promised

KILO = 9.80665


def promise(kind: str, dimension: str, low: float | None, high: float | None, words: str = "") -> object:
    return SimpleNamespace(
        kind=kind, reading_kind=kind, dimension=dimension, low_si=low, high_si=high, words=words
    )


@pytest.mark.parametrize(
    ("kind", "dimension", "low", "high", "system", "said"),
    [
        ("start_up_ratio", "ratio", None, 1.15, "metric", "at most 1.15"),
        ("judder", "ratio", None, 0.09, "metric", "at most 9 %"),
        ("spin_time", "time", 19.0, None, "metric", "at least 19 s"),
        ("end_float", "length", None, 0.00011, "metric", "at most 0.11 mm"),
        ("pull_full", "force", 5.5 * KILO, 8.0 * KILO, "metric", "5.5 to 8.0 kg"),
        ("pull_full", "force", 20 * KILO, None, "metric", "at least 20 kg"),
        ("pull_full", "force", None, 22.0462 * 4.4482216, "imperial", "at most 22 lb"),
    ],
)
def test_it_is_said_so(
    kind: str, dimension: str, low: float | None, high: float | None, system: str, said: str
) -> None:
    words = promised.in_words(promise(kind, dimension, low, high), system)
    assert words.replace("\u00a0", " ") == said


def test_it_is_called_as_the_registry_of_readings_calls_it() -> None:
    assert promised.title(promise("end_float", "length", None, 1e-4)) == "Spool end-float"
    assert promised.title(promise("smoothness", "score", None, 1.0)) == "smoothness"
    assert promised.title(promise("smoothness", "score", None, 1.0, "No grinding")) == "No grinding"

"""The examples in the docstrings of mechanics run and print what they say."""

from __future__ import annotations

import doctest
from importlib import import_module

import pytest

import spoolwright.mechanics as mechanics


@pytest.mark.parametrize("chapter", [name for name in mechanics.__all__ if name != "arguments"])
def test_examples_of(chapter: str) -> None:
    outcome = doctest.testmod(import_module(f"spoolwright.mechanics.{chapter}"))
    assert outcome.attempted > 0
    assert outcome.failed == 0

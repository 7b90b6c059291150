"""Wear rates and reject limits, each with its source."""

from __future__ import annotations

import tomllib
from importlib.resources import files

import pytest

from spoolwright.sheets import materials, wear_rates

FILE = tomllib.loads((files("spoolwright.sheets") / "wear.toml").read_text(encoding="utf-8"))


@pytest.mark.parametrize("name", [wear_rates.METAL, wear_rates.PLASTIC])
def test_oil_helps_and_grit_ruins(name: str) -> None:
    pair = wear_rates.face_wear(name)
    assert pair.oiled.low < pair.dry.low < pair.gritty.low
    assert pair.oiled.high <= pair.dry.high <= pair.gritty.high
    assert pair.clean(oiled=True) is pair.oiled
    assert pair.clean(oiled=False) is pair.dry


@pytest.mark.parametrize("material", materials.friction_names())
def test_every_disc_has_a_rate_and_a_limit(material: str) -> None:
    greased, dry = (wear_rates.disc_wear(material, wet) for wet in ("greased", "dry"))
    assert greased.low <= dry.low
    assert 0.5 < wear_rates.reject_share(material).middle < 1.0


@pytest.mark.parametrize("part", list(FILE["reject"]))
def test_reject_limits_are_tenths_of_a_millimetre(part: str) -> None:
    limit = wear_rates.reject_depth(part)
    assert 0.04e-3 <= limit.low <= limit.high <= 0.5e-3


def test_salt_never_helps() -> None:
    assert wear_rates.salt_factor().low >= 1.0


def test_what_is_not_in_the_file_is_named() -> None:
    with pytest.raises(KeyError, match=r"wood on wood.*metal on metal"):
        wear_rates.face_wear("wood on wood")
    with pytest.raises(KeyError, match=r"halo.*pawl"):
        wear_rates.reject_depth("halo")

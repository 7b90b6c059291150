"""The same arm with another spool."""

from __future__ import annotations

import numpy as np
import pytest

from spoolwright.judgement.same_arm import ROD_SHARE, speed_with
from spoolwright.mechanics import spool
from tests.unit.judgement.casting import case


def test_the_energy_of_payload_rod_spool_and_line_stays() -> None:
    inputs = case().inputs
    assert inputs is not None
    now = inputs.middle
    lighter = now.with_plain(spool_inertia=np.asarray(now.plain["spool_inertia"]) * 0.5)
    faster = speed_with(now, lighter)

    def energy(which: object, speed: object) -> float:
        plain = which.plain  # type: ignore[attr-defined]
        line = spool.line_inertia(
            plain["arbor_radius"],
            plain["full_radius"],
            plain["spool_width"],
            plain["line_density"],
            plain["packing"],
        )
        turning = (plain["spool_inertia"] + line) / plain["full_radius"] ** 2
        return float((0.5 * (plain["payload_mass"] * (1 + ROD_SHARE) + turning) * speed**2)[0])

    assert faster[0] > now.plain["release_speed"][0]
    assert energy(lighter, faster) == pytest.approx(energy(now, now.plain["release_speed"]), rel=1e-12)


def test_nothing_changed_changes_nothing() -> None:
    inputs = case().inputs
    assert inputs is not None
    assert speed_with(inputs.middle, inputs.middle)[0] == pytest.approx(
        inputs.middle.plain["release_speed"][0]
    )

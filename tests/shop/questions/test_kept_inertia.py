"""What will be kept of an inertia: the words of its inputs, the notes of its swing, a thinned record."""

from __future__ import annotations

import numpy as np

from spoolwright.bench import inertia, swing
from spoolwright.bench.thinning import MOST
from spoolwright.bench.uncertainty import Measured
from spoolwright.sheets import inertia_methods
from spoolwright.shop.questions.kept_inertia import kept_inertia

SHEET = Measured(9e-6, 5e-7, "inertia")


def test_a_recorded_swing_is_thinned_and_its_notes_are_kept() -> None:
    t = np.arange(0, 2, 0.0005)
    swung = swing.fit(t, np.exp(-0.3 * t) * np.sin(15 * t))
    bar = inertia_methods.method("spring").asks[0]
    read = inertia.read("spring", {"stiffness": inertia.known(bar, "2.40 mN m/rad")}, swung)
    kept = kept_inertia("spring", read, swung, SHEET)
    assert kept.swing is not None
    assert len(kept.swing.times) <= MOST < len(t)
    assert any("Only 5 swings" in note for note in kept.notes)
    assert kept.inputs[0][0] == "Stiffness of the spring in twist"
    assert kept.sheet == SHEET

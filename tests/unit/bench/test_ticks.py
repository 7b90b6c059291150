"""The way from a file or a recording to counted turns, through the one door that others use."""

import numpy as np

from spoolwright.bench import recording, spin_down, ticks
from spoolwright.demo.signals import SpinShape, spin_recording


def test_a_recording_and_a_list_of_its_ticks_say_the_same() -> None:
    signal = spin_recording(SpinShape(missed=0.03, doubled=0.03), seed=11)
    heard = spin_down.fit(ticks.mend(ticks.find(recording.read_wav(signal.to_wav()))))
    listed = spin_down.fit(ticks.mend(ticks.read_csv(signal.to_csv())))
    for name in ("initial_speed", "constant", "viscous", "quadratic", "stop_time"):
        one, other = getattr(heard, name), getattr(listed, name)
        assert abs(one.value - other.value) < 2 * np.hypot(one.uncertainty, other.uncertainty)

"""Real files of real gauges, as their programs wrote them. They are not shipped with the program.

Sources: pull_load_unload.csv, load cell on an elastic strip, repository Chongran-Zhao/VHB4910_data;
friction_rack_*.csv, one stroke of a rack, repository KonradMnich/friction-identification; bearing_*.wav, Case
Western Reserve University bearing data.
"""

import io
from pathlib import Path

import numpy as np
import pytest
from scipy.io import wavfile

from spoolwright.bench import pull_trace, recording, spin_down, ticks
from spoolwright.bench.gauge import Gauge
from spoolwright.bench.trace import TraceForm
from spoolwright.bench.unreadable import NeedsAnswer, Unreadable

DATA = Path(__file__).resolve().parents[3] / "shared" / "references" / "data"

pytestmark = pytest.mark.skipif(
    not DATA.is_dir(),
    reason="the open data lie beside the project, in ../shared/references/data, and are not here",
)


def test_a_chinese_header_and_quoted_values_are_read() -> None:
    # Source: pull_load_unload.csv as above; compared with a plain parse of the same lines.
    data = (DATA / "pull_load_unload.csv").read_bytes()
    trace = pull_trace.read(data, name="pull_load_unload.csv")
    lines = data.decode("gb18030").replace('"', "").split("\r\n")[3:]
    plain = np.loadtxt(io.StringIO("\n".join(lines)), delimiter=",")
    np.testing.assert_allclose(trace.force, plain[:, 2])
    np.testing.assert_allclose(trace.time, plain[:, 0] - plain[0, 0])
    assert (trace.found.encoding, trace.found.force_unit, trace.found.time_unit) == ("gb18030", "N", "s")


def test_a_strip_that_is_stretched_and_let_back_has_not_slipped() -> None:
    # Source: pull_load_unload.csv as above: an elastic strip, load and unload.
    trace = pull_trace.read((DATA / "pull_load_unload.csv").read_bytes())
    with pytest.raises(Unreadable, match="never runs level"):
        pull_trace.analyse(trace, Gauge())


def test_volts_are_no_pull_until_somebody_says_so() -> None:
    # Source: friction_rack_force.csv as above: header of four lines, volts.
    with pytest.raises(NeedsAnswer) as asked:
        pull_trace.read((DATA / "friction_rack_force.csv").read_bytes())
    assert asked.value.missing == ("time_unit", "force_unit")
    assert "Force V" in str(asked.value)


def test_a_servo_log_of_sixteen_columns_asks_which_is_the_pull() -> None:
    # Source: friction_rack_velocity.csv as above: time in ms, 1024 samples at 0.667 ms (its own header).
    data = (DATA / "friction_rack_velocity.csv").read_bytes()
    with pytest.raises(NeedsAnswer) as asked:
        pull_trace.read(data)
    assert asked.value.missing == ("force_column", "force_unit")
    trace = pull_trace.read(data, form=TraceForm(force_column="Servo motor speed", force_unit="N"))
    assert len(trace.force) == 1024
    assert trace.found.rate == pytest.approx(1 / 0.667e-3, rel=1e-3)


@pytest.mark.parametrize(
    "name", ["bearing_outer_1796rpm.wav", "bearing_inner_1797rpm.wav", "bearing_sound_1796rpm.wav"]
)
def test_recordings_are_read_as_another_library_reads_them(name: str) -> None:
    # Source: bearing_*.wav as above; read by scipy.io.wavfile.
    data = (DATA / name).read_bytes()
    rate, samples = wavfile.read(io.BytesIO(data))
    mine = recording.read_wav(data, name=name)
    plain = samples / 32768.0
    assert mine.rate == rate
    np.testing.assert_allclose(mine.samples, plain - plain.mean(), atol=1e-6)


@pytest.mark.parametrize(
    "name", ["bearing_outer_1796rpm.wav", "bearing_inner_1797rpm.wav", "bearing_sound_1796rpm.wav"]
)
def test_a_machine_that_keeps_turning_is_no_coast_down(name: str) -> None:
    # Source: bearing_*.wav as above: a motor at constant speed.
    with pytest.raises(Unreadable):
        spin_down.fit(ticks.mend(ticks.find(recording.read_wav((DATA / name).read_bytes()))))

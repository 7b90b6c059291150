"""When a result is called loose."""

from spoolwright.bench.inertia_reading import LOOSE, loose
from spoolwright.bench.uncertainty import Measured


def test_the_limit_itself_is_not_loose() -> None:
    assert loose(Measured(1.0, LOOSE, "inertia")) == ()
    assert "more tries" in loose(Measured(1.0, 1.01 * LOOSE, "inertia"))[0]

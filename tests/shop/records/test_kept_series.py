"""What is kept of a series of pulls comes back as it was."""

import json

from spoolwright.bench.budget import Contribution
from spoolwright.bench.pulls import OnePull
from spoolwright.bench.uncertainty import Measured
from spoolwright.shop.records.kept_series import KeptSeries, series_from


def kept() -> KeptSeries:
    return KeptSeries(
        along="turns",
        pulls=(OnePull(1.0, 10.0, 11.0, 0.5), OnePull(2.0, 20.0)),
        results=(("pull_per_turn", Measured(10.0, 0.5, "force")),),
        fitted=((0.0, 0.0), (2.0, 20.0)),
        band=((0.0, 0.0, 5.0), (2.0, 15.0, 25.0)),
        verdict="cannot tell",
        said={"metric": ("One.", "Two."), "imperial": ("Three.",)},
        gain=0.003,
        notes=("A note.",),
        budget=(Contribution("per_turn", "scatter", "A", 0.5),),
    )


def test_it_goes_through_plain_data_and_back() -> None:
    assert series_from(json.loads(json.dumps(kept().as_data()))) == kept()


def test_another_signal_is_no_series() -> None:
    assert series_from({}) is None
    assert series_from({"signal": "pull"}) is None

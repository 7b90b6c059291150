"""What was expected of a reel when it was quoted: kept with the option, so that it can be shown again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from spoolwright.judgement.prediction import Predicted, Prediction, StarTurn
from spoolwright.shop.records.quote import QuoteOption, QuotePrediction


@dataclass(frozen=True)
class KeptPrediction:
    """Expected readings by their id, the pull at turns of the star, and what gives way first."""

    values: Mapping[str, Predicted]
    star_turns: tuple[StarTurn, ...] = ()
    limited_by: str = ""


def prediction_of(option: QuoteOption) -> KeptPrediction | None:
    """What stood on the quote; None where no sheet described the reel."""
    kept = QuotePrediction.objects.filter(option=option.pk).first()
    if kept is None:
        return None
    turns = tuple(StarTurn(turns, _predicted(data)) for turns, data in kept.star_turns)
    return KeptPrediction(
        {key: _predicted(data) for key, data in kept.values.items()}, turns, kept.limited_by
    )


def as_data(prediction: Prediction) -> dict[str, Any]:
    """A prediction as the columns of the row that keeps it."""
    return {
        "values": {key: _data(value) for key, value in prediction.values.items()},
        "star_turns": [[row.turns, _data(row.pull)] for row in prediction.star_turns],
        "limited_by": prediction.limited_by,
    }


def _data(value: Predicted) -> dict[str, Any]:
    return {**vars(value), "conditions": dict(value.conditions), "rests_on": list(value.rests_on)}


def _predicted(data: Mapping[str, Any]) -> Predicted:
    return Predicted(**{**data, "rests_on": tuple(data["rests_on"])})

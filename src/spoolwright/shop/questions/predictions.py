"""What was expected of a reel when it was quoted: kept with the option, so that it can be shown again."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from spoolwright.judgement.carried import Carried
from spoolwright.judgement.prediction import Predicted, Prediction, StarTurn
from spoolwright.judgement.wrong_pass import Expected
from spoolwright.shop.records.quote import QuoteOption, QuotePrediction, QuotePromise


@dataclass(frozen=True)
class KeptPrediction:
    """Expected readings by id, the pull at turns of the star, what gives first, what carries the pull."""

    values: Mapping[str, Predicted]
    star_turns: tuple[StarTurn, ...] = ()
    limited_by: str = ""
    carried: Carried | None = None


def prediction_of(option: QuoteOption) -> KeptPrediction | None:
    """What stood on the quote; None where no sheet described the reel."""
    kept = QuotePrediction.objects.filter(option=option.pk).first()
    if kept is None:
        return None
    turns = tuple(StarTurn(turns, _predicted(data)) for turns, data in kept.star_turns)
    return KeptPrediction(
        {key: _predicted(data) for key, data in kept.values.items()},
        turns,
        kept.limited_by,
        _carried(kept.carried),
    )


def expected_of(promise: QuotePromise) -> Expected | None:
    """What was expected of a promised reading when it was promised; None where nothing was worked out.

    A pull may have been promised at another radius than it was predicted at: its spread goes with its middle.
    """
    kept = QuotePrediction.objects.filter(option=promise.option_id).values_list("values", flat=True).first()
    told = (kept or {}).get(promise.kind)
    if told is None or promise.middle_si is None or not told["middle"]:
        return None
    return Expected(promise.middle_si, abs(told["deviation"] * promise.middle_si / told["middle"]))


def as_data(prediction: Prediction, carried: Carried | None = None) -> dict[str, Any]:
    """A prediction as the columns of the row that keeps it."""
    return {
        "values": {key: _data(value) for key, value in prediction.values.items()},
        "star_turns": [[row.turns, _data(row.pull)] for row in prediction.star_turns],
        "limited_by": prediction.limited_by,
        "carried": {**vars(carried), "drag": _data(carried.drag)} if carried else None,
    }


def _carried(data: Mapping[str, Any] | None) -> Carried | None:
    return Carried(**{**data, "drag": _predicted(data["drag"])}) if data else None


def _data(value: Predicted) -> dict[str, Any]:
    return {**vars(value), "conditions": dict(value.conditions), "rests_on": list(value.rests_on)}


def _predicted(data: Mapping[str, Any]) -> Predicted:
    return Predicted(**{**data, "rests_on": tuple(data["rests_on"])})

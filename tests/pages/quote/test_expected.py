"""Predicted values as text: the middle no finer than the ends."""

from spoolwright.judgement.prediction import Predicted
from spoolwright.pages.quote.expected import expected

KILO = 9.80665
PULL = Predicted(
    "greatest usable pull", 6.673 * KILO, 5.57 * KILO, 7.91 * KILO, 5.0, "force", {"radius": 0.0235}
)


def test_the_middle_is_rounded_to_the_place_of_the_ends() -> None:
    told = expected(PULL, "metric")
    assert (told.middle, told.span.replace("\u00a0", " ")) == ("6.7\u00a0kg", "5.6 to 7.9 kg")
    assert told.quantity == "Greatest usable pull"
    assert told.conditions == "radius 23.5\u00a0mm"


def test_in_the_readers_units_and_in_per_cent_where_the_bench_says_it_so() -> None:
    assert expected(PULL, "imperial").middle == "14.7\u00a0lb"
    judder = Predicted("unevenness", 0.0654, 0.0412, 0.0891, 0.01, "ratio")
    assert expected(judder, "metric", "judder").middle == "6.5\u00a0%"

"""What is counted, in the order in which it is counted out of a parcel."""

import pytest

from spoolwright.pages.arrival import mat
from spoolwright.shop.acts.receive_parcel import Counted

# Order of the mat: handbook of the trade, receipt of parcels; common practice, no source.
ORDER = ["reel", "spare spool", "handle", "knob cap", "rod clamp and nuts", "bag, case or box"]


def test_the_mat_is_counted_in_the_order_of_the_trade() -> None:
    assert [field.label for _, field in mat.fields()][:6] == ORDER


@pytest.mark.parametrize(
    ("sent", "reels"),
    [({}, 1), ({"count_0": "3"}, 3), ({"count_0": "0"}, 1), ({"count_0": "25"}, 1), ({"count_0": "³"}, 1)],
)
def test_there_is_a_place_for_each_reel_counted(sent: dict[str, str], reels: int) -> None:
    assert mat.reels_counted(sent) == reels


def test_where_the_count_cannot_be_read_every_reel_described_keeps_its_place() -> None:
    assert mat.reels_counted({"count_0": "three", "r2_complaint": "slips"}) == 3


def test_units_and_untouched_choices_describe_nothing() -> None:
    assert mat.reels_described({"r1_mass_unit": "g", "r1_which": "new", "r1_serial": " "}) == 0
    assert mat.reels_described({"r1_mass": "3 g", "who": "x"}) == 2


def test_only_what_is_there_is_written_and_reels_are_written_apart() -> None:
    given = {"count_0": 1, "count_1": 2, "count_2": 0, "count_8": 1, "count_11": None}
    assert mat.counted(given) == [Counted("spare spool", 2)]
    assert mat.lines_counted(given) == 1

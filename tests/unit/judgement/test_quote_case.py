"""What the options of one quote share, with a sheet and without."""

from __future__ import annotations

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement.findings import Finding
from spoolwright.judgement.job_price import Before
from spoolwright.judgement.quote_case import Around, open_case
from spoolwright.judgement.shop_rates import starting_rates
from spoolwright.judgement.works import chosen
from spoolwright.sheets import reel_sheet

RATES = starting_rates()
SHEET = reel_sheet.load("tarvak-58r")
KIND = "round multiplier"


def test_with_a_sheet_readings_and_findings_both_say_what_is_wrong() -> None:
    readings = {"end_float": Measured(0.42e-3, 1e-5, "length")}
    case = open_case(SHEET, readings, [Finding("pawl", "F15")], RATES, samples=200)
    assert {wrong.about for wrong in case.wrong} == {"pawl-worn", "end-float-large"}
    assert case.kind == KIND
    assert case.predict([]) is not None


def test_without_a_sheet_only_what_holds_for_every_reel_is_judged() -> None:
    readings = {
        "start_up_ratio": Measured(1.5, 0.03, "ratio"),
        "pull_full": Measured(3.0, 0.1, "force"),
        "handle_torque": Measured(0.05, 0.001, "torque"),
    }
    case = open_case(None, readings, [], RATES, around=Around(kind="fixed spool"))
    assert [wrong.about for wrong in case.wrong] == ["drag-jerks"]
    assert case.predict(chosen(["strip-and-wash"], "fixed spool")) is None


def test_an_extra_is_predicted_after_what_was_agreed_before() -> None:
    before = Around(before=Before("common", ("strip-and-wash", "carbon-drag-set", "a word of our own")))
    worn = {"start_up_ratio": Measured(1.5, 0.03, "ratio")}
    alone = open_case(SHEET, worn, [], RATES, samples=300).predict(chosen(["new-idler-cog"], KIND))
    after = open_case(SHEET, worn, [], RATES, around=before, samples=300).predict(
        chosen(["new-idler-cog"], KIND)
    )
    assert alone is not None
    assert after is not None
    assert after.values["start_up_ratio"].middle < 1.2 < alone.values["start_up_ratio"].middle
    assert after.works == ("strip-and-wash", "carbon-drag-set", "new-idler-cog")

"""Whatever is typed is read or refused, quickly; whatever is shown is read back."""

from __future__ import annotations

from datetime import timedelta

from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from spoolwright.quantities import DIMENSIONS, SYSTEMS, NotAQuantity, read, read_typed, show

EVERY = sorted(DIMENSIONS)
PEOPLE_WRITE = st.text(
    alphabet="0123456789.,+-−*/^'\" ±eExX%:½¼²³µ°CFNmkglbozinftydrpsPa()\u00a0\u202f", max_size=70
)
IN_A_SHOP = {"count": st.integers(0, 10**6).map(float)}


def value_of(dimension: str) -> st.SearchStrategy[float]:
    """Values from far below to far above what a bench meets, of both signs where the kind has both."""
    if dimension in IN_A_SHOP:
        return IN_A_SHOP[dimension]
    if dimension == "temperature":
        return st.floats(200.0, 600.0)
    size = st.floats(1e-9, 1e9)
    return st.one_of(st.just(0.0), size, size.map(lambda v: -v))


def read_or_refuse(text: str, dimension: str) -> float | NotAQuantity:
    try:
        return read(text, dimension)
    except NotAQuantity as fault:
        return fault


def last_digit(text: str) -> float:
    """What one step of the last digit of a shown number is worth, in its unit."""
    number = text.split(" ")[0]
    mantissa, _, power = number.partition("e")
    return 10.0 ** (int(power or 0) - len(mantissa.partition(".")[2]))


@given(data=st.data(), dimension=st.sampled_from(EVERY), system=st.sampled_from(SYSTEMS))
def test_what_is_shown_is_read_back_within_half_of_its_last_digit(
    data: st.DataObject, dimension: str, system: str
) -> None:
    value = data.draw(value_of(dimension))
    text = show(value, dimension, system)
    typed = read_typed(text, dimension)
    step = float(DIMENSIONS[dimension].unit(typed.unit).factor) * last_digit(text)
    assert abs(typed.value - value) <= 0.5 * step * (1 + 1e-9) + 1e-12 * abs(value)


@given(data=st.data(), dimension=st.sampled_from(EVERY))
def test_what_is_shown_in_any_unit_of_the_table_is_read_in_that_unit(
    data: st.DataObject, dimension: str
) -> None:
    unit = data.draw(st.sampled_from([u.name for u in DIMENSIONS[dimension].units]))
    value = data.draw(value_of(dimension))
    assert read_typed(show(value, dimension, unit=unit), dimension).unit == unit


@given(data=st.data(), dimension=st.sampled_from(EVERY), share=st.floats(1e-6, 3.0))
def test_the_stated_interval_keeps_the_value_it_was_rounded_from(
    data: st.DataObject, dimension: str, share: float
) -> None:
    value = data.draw(value_of(dimension))
    assume(not DIMENSIONS[dimension].whole)
    spread = max(abs(value), 1e-6) * share
    left, right = show(value, dimension, uncertainty=spread).split(" ± ")
    unit = DIMENSIONS[dimension].unit(left.partition(" ")[2])
    shown, stated = (float(side.split(" ")[0]) * float(unit.factor) for side in (left, right))
    assert abs(stated - spread) <= 0.051 * spread
    assert abs(shown + float(unit.offset) - value) <= 0.051 * spread + 1e-9 * abs(value)
    assert last_digit(left) == last_digit(right)


@given(text=st.one_of(st.text(max_size=200), PEOPLE_WRITE), dimension=st.sampled_from(EVERY))
@example(text="9**9**9 m", dimension="length")
@example(text="1e999999999 m", dimension="length")
@example(text="9" * 64, dimension="count")
@example(text="1/" * 32, dimension="length")
@example(text=" " * 64, dimension="mass")
@example(text="1 000" * 12, dimension="mass")
@example(text="٣ mm", dimension="length")
@settings(
    max_examples=600, deadline=timedelta(seconds=20)
)  # a reader that hangs is found; speed is not judged here
def test_any_text_is_read_or_refused_and_never_keeps_anybody_waiting(text: str, dimension: str) -> None:
    got = read_or_refuse(text, dimension)
    if isinstance(got, NotAQuantity):
        assert got.typed == text
        assert got.reason
        assert got.accepted == DIMENSIONS[dimension].accepted
    else:
        assert abs(got) < float("inf")


@given(number=st.integers(-999, 999), dimension=st.sampled_from(EVERY))
def test_a_number_alone_is_read_only_where_a_plain_number_is_meant(number: int, dimension: str) -> None:
    got = read_or_refuse(str(number), dimension)
    if DIMENSIONS[dimension].plain:
        assert got == number
    else:
        assert isinstance(got, NotAQuantity)
        assert got.reason == "has no unit"


@given(whole=st.integers(0, 99), top=st.integers(1, 31), under=st.sampled_from([2, 4, 8, 16, 32, 64]))
def test_a_fraction_is_the_sum_that_it_says(whole: int, top: int, under: int) -> None:
    assume(top < under)
    typed = read(f"{whole} {top}/{under} in", "length")
    assert abs(typed - (whole + top / under) * 0.0254) < 1e-15


@given(a=st.integers(0, 9999), b=st.integers(0, 99))
def test_point_and_comma_are_the_same_decimal_mark(a: int, b: int) -> None:
    assert read(f"{a},{b:02} mm", "length") == read(f"{a}.{b:02} mm", "length")

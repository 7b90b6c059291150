"""Invented customers: none comes twice, and the same seed hands out the same ones."""

from __future__ import annotations

from random import Random

from spoolwright.demo.cast import Cast, table


def names(seed: int, count: int = 30) -> list[str]:
    cast = Cast(Random(seed))
    return [cast.customer().name for _ in range(count)]


def test_nobody_comes_twice() -> None:
    assert len(set(names(1))) == 30


def test_the_same_seed_the_same_people() -> None:
    assert names(3) == names(3)
    assert names(3) != names(4)


def test_each_can_be_written_to_or_rung() -> None:
    cast = Cast(Random(1))
    for customer in [cast.customer() for _ in range(25)]:
        assert customer.address
        assert bool(customer.email) != bool(customer.telephone)
        assert not customer.email or (customer.email.isascii() and customer.email.endswith(".example"))


def test_no_telephone_number_can_be_anybodys() -> None:
    cast = Cast(Random(2))
    rung = [customer.telephone for customer in (cast.customer() for _ in range(30)) if customer.telephone]
    assert rung
    assert all(number.startswith("00 ") for number in rung)


def test_there_are_names_enough_for_the_whole_workshop() -> None:
    people = table("people.toml")
    assert min(len(set(people["given"])), len(set(people["family"]))) >= 31

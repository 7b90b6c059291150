"""The customers who have no story of their own: invented names, drawn so that none comes twice."""

from __future__ import annotations

import tomllib
from functools import lru_cache
from pathlib import Path
from random import Random
from typing import Any

from spoolwright.shop.acts.add_customer import NewCustomer

SPELT = str.maketrans({"ø": "o", "å": "a", "æ": "ae", " ": "."})


@lru_cache
def table(name: str) -> dict[str, Any]:
    """One of the tables of words beside this file."""
    return tomllib.loads((Path(__file__).parent / name).read_text(encoding="utf-8"))


class Cast:
    """Hands out customers, one after the other."""

    def __init__(self, chance: Random) -> None:
        people = table("people.toml")
        self._chance = chance
        self._given = chance.sample(people["given"], len(people["given"]))
        self._family = chance.sample(people["family"], len(people["family"]))
        self._notes, self._streets, self._towns = people["notes"], people["streets"], people["towns"]

    def customer(self) -> NewCustomer:
        chance, name = self._chance, f"{self._given.pop()} {self._family.pop()}"
        by_mail = chance.random() < 0.7
        number = f"00 {chance.randrange(20, 90)} {chance.randrange(10, 99)} {chance.randrange(10, 99)}"
        return NewCustomer(
            name=name,
            address=f"{chance.choice(self._streets)} {chance.randrange(1, 40)}, {chance.choice(self._towns)}",
            email=f"{name.lower().translate(SPELT)}@post.example" if by_mail else "",
            telephone="" if by_mail else number,
            water=chance.choice(("salt", "salt", "brackish", "fresh")),
            note=chance.choice(self._notes),
        )

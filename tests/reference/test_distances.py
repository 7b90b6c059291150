"""Casts, runs and fish as they are told, in feet, yards and pounds: the reader of quantities agrees."""

from __future__ import annotations

import pytest

from spoolwright.quantities import read
from tests.reference.published import Published, each


def metres(words: str) -> float:
    return read(words, "length")


CHECKS = [
    Published(
        "longest surf cast with 150 g, m",
        lambda: metres("308 yd"),
        281.75,
        0.3,
        "sea-angling magazine's report of a federation record (S-CAST-040)",
        "opened",
    ),
    Published(
        "record with 150 g of 2004, m",
        lambda: metres("915.22 ft"),
        278.96,
        0.1,
        "outdoor magazine, Record Casts (S-CAST-041)",
        "opened",
    ),
    Published(
        "best cast outside a competition, 2002, m",
        lambda: metres("933 ft"),
        284.4,
        0.1,
        "outdoor magazine, Record Casts (S-CAST-041)",
        "opened",
    ),
    Published(
        "championship cast with 125 g, m",
        lambda: metres("799 ft"),
        243.5,
        0.1,
        "casting club's report of 2018 (S-CAST-043)",
        "opened",
    ),
    Published(
        "championship cast with 8 oz, m",
        lambda: metres("712 ft") + metres("4 in"),
        217.1,
        0.1,
        "casting club's report of 2018 (S-CAST-043)",
        "opened",
    ),
    Published(
        "fly distance with one hand, m",
        lambda: metres("227 ft"),
        69.2,
        0.1,
        "results of the 109th national championship (S-CAST-048)",
        "opened",
    ),
    Published(
        "fly distance with two hands, m",
        lambda: metres("283 ft"),
        86.3,
        0.1,
        "results of the 109th national championship (S-CAST-048)",
        "opened",
    ),
    Published(
        "longest run of a false albacore, m",
        lambda: metres("75 yd"),
        68.6,
        0.1,
        "saltwater fly page, questions and answers (S-CAST-166)",
        "opened",
    ),
    Published(
        "longest run of a bonefish, m",
        lambda: metres("100 yd"),
        91.4,
        0.1,
        "saltwater fly page, questions and answers (S-CAST-166)",
        "opened",
    ),
    Published(
        "pull of a fresh tuna, N",
        lambda: read("28 lb", "force"),
        124.5,
        0.1,
        "outdoor magazine's column on what pulls hardest (S-CAST-164)",
        "opened",
    ),
    Published(
        "diameter of 2X by the old scale, thousandths of an inch",
        lambda: (11 - 2) * read("0.001 in", "length") / read("0.009 in", "length") * 9,
        9,
        1e-9,
        "old X scale, (11 - X) / 1000 in (S-CAST-109)",
        "opened: fly-fishing forum",
    ),
]


@each(CHECKS)
def test_told_in_one_unit_and_printed_in_the_other(check: Published) -> None:
    check.agrees()


def test_power_of_a_salmon_is_its_thrust_times_its_speed() -> None:
    """Tang and Wardle, J. exp. Biol. 166 (1992) 33 (opened, S-CAST-157): 0.3 N at 0.87 m/s are 0.26 W."""
    assert read("0.3 N", "force") * read("0.87 m/s", "speed") == pytest.approx(0.26, rel=0.02)

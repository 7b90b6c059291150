"""Agreement in words: it agrees, or by how much it does not, and which of several lies apart."""

from spoolwright.bench.uncertainty import Measured
from spoolwright.judgement import agreement


def m(value: float, spread: float) -> Measured:
    return Measured(value * 1e-7, spread * 1e-7, "inertia")


def test_inside_both_intervals_it_agrees() -> None:
    said = agreement.beside(m(81, 2), ("The reel’s sheet", m(85, 4)))
    assert said == (
        "The reel’s sheet says 85.0 g cm^2 ± 8.0 g cm^2. It agrees: the two lie 4.00 g cm^2 apart, and up to "
        "8.94 g cm^2 is explained by both uncertainties."
    )


def test_outside_it_says_by_how_much() -> None:
    said = agreement.beside(m(81, 2), ("The reel’s sheet", m(99, 4)))
    assert "It does not agree: the two lie 18.0 g cm^2 apart" in said


def test_the_edge_itself_agrees() -> None:
    """ISO/IEC 17043, from memory: a normalised error up to and with 1."""
    assert agreement.agrees(m(0, 3), m(10, 4))
    assert not agreement.agrees(m(0, 3), m(10.1, 4))


def test_several_that_agree_have_a_mean_surer_than_each() -> None:
    mean, said = agreement.together([("a fall", m(81, 2)), ("a ring", m(82, 2)), ("the sizes", m(80, 4))])
    assert mean.uncertainty < 2e-7
    assert said.startswith("The 3 ways agree: ")


def test_the_one_that_lies_apart_is_named() -> None:
    mean, said = agreement.together([("a fall", m(81, 1)), ("a ring", m(81, 1)), ("the sizes", m(95, 2))])
    assert "do not agree" in said
    assert "Farthest out is the sizes" in said
    assert mean.uncertainty > 1e-7

"""What a tooth and a turning shaft bear, by material: the ranges hold what texts print for the same metal."""

from __future__ import annotations

import pytest

from spoolwright.sheets.materials import structural_material
from spoolwright.sheets.sourced import Sourced

LEWIS = "safe static stress in Lewis's formula, Kent's and Marks' handbooks; from memory"
AGMA_FLANK = "AGMA grade 1 through-hardened steel, 322 HB + 29,100 psi (Shigley, fig. 14-5); from memory"
AGMA_BRONZE = "AGMA heat-treated bronze, 65,000 psi (Shigley, table 14-7); from memory"
ASM = "ASM Handbook, fatigue strength in reversed bending; from memory"
VDI = "VDI 2736, POM, greased, 20 degrees; from memory"
PSI = 6894.757

ROWS = [
    ("brass", "allowable_bending", 12e3 * PSI, LEWIS + " (bronze)"),
    ("carbon steel", "allowable_bending", 20e3 * PSI, LEWIS + " (0.3 % carbon, untreated)"),
    ("carbon steel", "allowable_bending", 25e3 * PSI, LEWIS + " (0.5 % carbon, untreated)"),
    ("hardened carbon steel", "allowable_bending", 35e3 * PSI, LEWIS + " (0.5 % carbon, heat-treated)"),
    ("bronze", "allowable_contact", 65e3 * PSI, AGMA_BRONZE),
    ("carbon steel", "allowable_contact", (322 * 180 + 29100) * PSI, AGMA_FLANK + " of 180 Brinell"),
    ("hardened carbon steel", "allowable_contact", (322 * 350 + 29100) * PSI, AGMA_FLANK + " of 350 Brinell"),
    ("POM", "allowable_bending", 30e6, VDI),
    ("aluminium alloy", "endurance", 97e6, ASM + ", 6061-T6"),
    ("zinc alloy", "endurance", 48e6, ASM + ", ZnAl4"),
    ("titanium alloy", "endurance", 510e6, ASM + ", Ti-6Al-4V annealed"),
    ("stainless steel", "endurance", 240e6, ASM + ", 304 annealed"),
    ("carbon steel", "endurance", 0.5 * 450e6, "half the tensile strength (Shigley, eq. 6-8); from memory"),
]


@pytest.mark.parametrize(("name", "field", "printed", "source"), ROWS, ids=[f"{r[0]} {r[1]}" for r in ROWS])
def test_range_holds_the_printed_value(name: str, field: str, printed: float, source: str) -> None:
    span: Sourced = getattr(structural_material(name), field)
    assert span.low <= printed * 1.001, source
    assert printed * 0.999 <= span.high, source


@pytest.mark.parametrize(
    ("softer", "harder"),
    [
        ("brass", "high-strength brass"),
        ("stainless steel", "precipitation-hardened stainless steel"),
        ("carbon steel", "hardened carbon steel"),
        ("nylon", "POM"),
    ],
)
def test_the_harder_of_two_alike_bears_more(softer: str, harder: str) -> None:
    """Order only, as every table of these materials has it."""
    soft, hard = structural_material(softer), structural_material(harder)
    for field in ("allowable_bending", "allowable_contact", "endurance"):
        assert getattr(soft, field).middle < getattr(hard, field).middle

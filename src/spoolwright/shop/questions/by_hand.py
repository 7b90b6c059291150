"""What was kept of a size taken by hand."""

from __future__ import annotations

from spoolwright.shop.records.kept_by_hand import KeptByHand, from_data
from spoolwright.shop.records.reading import Reading

__all__ = ["KeptByHand", "by_hand_of"]


def by_hand_of(reading: Reading) -> KeptByHand | None:
    return from_data(reading.analysis)

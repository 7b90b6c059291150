"""Take the next number of a series. The row stays locked until the act is over, so no number is lost."""

from __future__ import annotations

from django.db import transaction

from spoolwright.shop.records.number_series import NumberSeries


def take_number(series: str) -> int:
    """The next number; call it inside the act's transaction, as late as possible.

    A database's own sequence leaves a gap where a transaction is undone. This row does not.
    """
    if not transaction.get_connection().in_atomic_block:
        raise RuntimeError("take_number: a number is taken inside the act's own transaction")
    NumberSeries.objects.get_or_create(name=series)
    row = NumberSeries.objects.select_for_update().get(name=series)
    number = row.next_number
    row.next_number = number + 1
    row.save(update_fields=["next_number"])
    return number

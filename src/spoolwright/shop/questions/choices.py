"""The closed lists that forms offer: the words are the shop's, kept with the records."""

from spoolwright.shop.records.answer import CHANNELS, PAID_BY
from spoolwright.shop.records.arrival import CONTENTS, LINE_WISHES
from spoolwright.shop.records.customer import WATERS
from spoolwright.shop.records.dispatch import WAYS_HOME
from spoolwright.shop.records.entry import ENTRY_KINDS
from spoolwright.shop.records.money import LINE_KINDS
from spoolwright.shop.records.parcel import WAYS_IN
from spoolwright.shop.records.people import LOOKS, ROLES, UNITS
from spoolwright.shop.records.quote import SURENESS
from spoolwright.shop.records.reading import CONDITION_COLUMNS, WAYS
from spoolwright.shop.records.reel import HANDS, MARK_KINDS
from spoolwright.shop.records.shop_settings import TAX_BASES
from spoolwright.shop.records.visit import PLACES
from spoolwright.shop.records.work import PART_SOURCES

CONDITIONS = tuple(CONDITION_COLUMNS)

__all__ = [
    "CHANNELS",
    "CONDITIONS",
    "CONTENTS",
    "ENTRY_KINDS",
    "HANDS",
    "LINE_KINDS",
    "LINE_WISHES",
    "LOOKS",
    "MARK_KINDS",
    "PAID_BY",
    "PART_SOURCES",
    "PLACES",
    "ROLES",
    "SURENESS",
    "TAX_BASES",
    "UNITS",
    "WATERS",
    "WAYS",
    "WAYS_HOME",
    "WAYS_IN",
]

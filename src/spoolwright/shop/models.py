"""Django looks for tables here; they are kept in records, one family a file."""

from spoolwright.shop.records.answer import Answer, Payment
from spoolwright.shop.records.arrival import Arrival, ArrivalContent
from spoolwright.shop.records.attachment import Attachment, EntryAttachment
from spoolwright.shop.records.customer import Customer
from spoolwright.shop.records.dispatch import Dispatch
from spoolwright.shop.records.entry import Entry, Strike
from spoolwright.shop.records.findable import Findable
from spoolwright.shop.records.finding import Finding
from spoolwright.shop.records.instrument import (
    GaugeStudy,
    GaugeTrial,
    Instrument,
    InstrumentCheck,
    InstrumentVersion,
)
from spoolwright.shop.records.invoice import Invoice, InvoiceLine
from spoolwright.shop.records.number_series import NumberSeries
from spoolwright.shop.records.parcel import Parcel
from spoolwright.shop.records.people import Person, SignInLink
from spoolwright.shop.records.proof import Proof, ProofCheck, ProofRow, ProofSign
from spoolwright.shop.records.quote import (
    Quote,
    QuoteLine,
    QuoteOption,
    QuotePrediction,
    QuotePromise,
    QuoteWork,
)
from spoolwright.shop.records.reading import Reading, ReadingValue
from spoolwright.shop.records.reel import IdentityMark, Reel
from spoolwright.shop.records.reel_sheet import Sheet, SheetVersion
from spoolwright.shop.records.set_aside import SetAside, TakenBack
from spoolwright.shop.records.shop_settings import ShopSettings
from spoolwright.shop.records.visit import Visit
from spoolwright.shop.records.work import LubricantUsed, PartFitted, Work, WorkDone

__all__ = [
    "Answer",
    "Arrival",
    "ArrivalContent",
    "Attachment",
    "Customer",
    "Dispatch",
    "Entry",
    "EntryAttachment",
    "Findable",
    "Finding",
    "GaugeStudy",
    "GaugeTrial",
    "IdentityMark",
    "Instrument",
    "InstrumentCheck",
    "InstrumentVersion",
    "Invoice",
    "InvoiceLine",
    "LubricantUsed",
    "NumberSeries",
    "Parcel",
    "PartFitted",
    "Payment",
    "Person",
    "Proof",
    "ProofCheck",
    "ProofRow",
    "ProofSign",
    "Quote",
    "QuoteLine",
    "QuoteOption",
    "QuotePrediction",
    "QuotePromise",
    "QuoteWork",
    "Reading",
    "ReadingValue",
    "Reel",
    "SetAside",
    "Sheet",
    "SheetVersion",
    "ShopSettings",
    "SignInLink",
    "Strike",
    "TakenBack",
    "Visit",
    "Work",
    "WorkDone",
]

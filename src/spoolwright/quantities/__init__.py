"""The one place where text with a unit becomes SI, and SI becomes text again.

    read("18 lb", "force")              80.07 (newtons, rounded here)
    show(80.07, "force", "imperial")    "18.0 lb"

Inside the house there is only SI; what a person types and what a person sees passes through here. The table
of units is closed: what is not in it is refused, with a sentence that says what is accepted.
"""

from spoolwright.quantities.reading import NotAQuantity, Typed, read, read_typed
from spoolwright.quantities.showing import SYSTEMS, display_unit, show, show_end, show_interval, show_stated
from spoolwright.quantities.table import DIMENSIONS
from spoolwright.quantities.units import Dimension, Unit

__all__ = [
    "DIMENSIONS",
    "SYSTEMS",
    "Dimension",
    "NotAQuantity",
    "Typed",
    "Unit",
    "display_unit",
    "read",
    "read_typed",
    "show",
    "show_end",
    "show_interval",
    "show_stated",
]

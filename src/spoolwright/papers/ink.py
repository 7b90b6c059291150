"""The ink of every picture of the house: the colour of the text around it, one accent, one drawing face."""

from __future__ import annotations

INK = "currentColor"
"""Black on paper, ink by day, chalk by night: the page says which."""

ACCENT = "#8660c0"
"""The one accent, the violet of an indelible pencil, which no metal and no corrosion has; at least 3 : 1 on
warm paper and on dark slate (WCAG 2.2, 1.4.11). A page draws it in its own live ink."""

DRAWING_FACE = "Routed Gothic"
"""The face of dimensions and axes (papers/fonts); the pages carry the same one."""

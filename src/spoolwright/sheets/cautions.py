"""Cautions that several places of the house say in the same words."""

from __future__ import annotations

LINE_UNDER_LOAD = (
    "A line under load whips back when it or a knot lets go: eyes covered, nobody in line with the pull, "
    "the reel held in a jig."
)
"""Before any pull on a line."""

FAST_SPOOL = (
    "A fast spool takes skin, hair and sleeves: nothing loose near it, eyes covered, no finger to brake it."
)
"""Before any spool is spun."""

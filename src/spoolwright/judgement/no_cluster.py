"""The one refusal of a sweep that was to run on a cluster."""

from __future__ import annotations


class NoCluster(Exception):
    """The cluster cannot be used, in words for the person who asked for it."""

"""Spoolwright: workbench software for a shop that services, repairs and tunes fishing reels."""

__version__ = "0.1.0"

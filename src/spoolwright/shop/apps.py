"""The shop as Django knows it: one app, one label, one migrations folder."""

from __future__ import annotations

from typing import Any

from django.apps import AppConfig
from django.db import connections
from django.db.models.signals import post_migrate


def _lay_ink(using: str, **_: Any) -> None:
    # On SQLite a migration that remakes a table drops its triggers; laying them again costs nothing.
    from spoolwright.shop.records import ink

    ink.lay_again(connections[using])


class ShopConfig(AppConfig):
    name = "spoolwright.shop"
    label = "shop"
    verbose_name = "shop"
    default_auto_field = "django.db.models.BigAutoField"

    def ready(self) -> None:
        post_migrate.connect(_lay_ink, sender=self, dispatch_uid="shop-ink")

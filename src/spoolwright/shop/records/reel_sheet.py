"""Reel sheets as the shop keeps them: one sheet a model, its versions in ink."""

from __future__ import annotations

from django.db import models

from spoolwright.shop.records.ink import Inked
from spoolwright.shop.records.people import Person


class Sheet(models.Model):
    """One model of reel; what is known of it stands in the versions."""

    slug = models.CharField(max_length=100, unique=True)
    maker = models.CharField(max_length=200)
    model = models.CharField(max_length=200)
    kind = models.CharField(max_length=60)

    @property
    def shown(self) -> str:
        return f"{self.maker} {self.model}"


class SheetVersion(Inked):
    """The text of a sheet on one day, exactly as it was written."""

    sheet = models.ForeignKey(Sheet, on_delete=models.PROTECT, related_name="versions")
    number = models.PositiveIntegerField()
    toml = models.TextField()
    sha256 = models.CharField(max_length=64)
    author = models.ForeignKey(Person, on_delete=models.PROTECT, related_name="+")
    written_at = models.DateTimeField()
    words = models.TextField(blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["sheet", "number"], name="shop_sheet_version_once")]

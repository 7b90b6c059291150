"""What search looks through: one row for each customer, reel, tag and entry, folded to plain letters."""

from __future__ import annotations

import re
import unicodedata

from django.db import models

KINDS = ("customer", "reel", "visit", "entry", "sheet")
_SPELT_OUT = str.maketrans({"ø": "o", "æ": "ae", "œ": "oe", "ß": "ss", "ð": "d", "ł": "l", "đ": "d"})


def folded(text: str) -> str:
    """Lower case, accents off, everything but letters and figures a space: the same on both databases."""
    plain = unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", text).casefold())
    bare = "".join(c for c in plain if not unicodedata.combining(c)).translate(_SPELT_OUT)
    return " ".join(re.findall(r"[^\W_]+", bare))


class Findable(models.Model):
    kind = models.CharField(max_length=10, choices=[(k, k) for k in KINDS])
    ref = models.BigIntegerField()
    visit = models.ForeignKey("shop.Visit", on_delete=models.CASCADE, null=True, blank=True, related_name="+")
    title = models.TextField()
    words = models.TextField(blank=True)
    folded_title = models.TextField()
    folded_words = models.TextField(blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["kind", "ref"], name="shop_findable_once")]

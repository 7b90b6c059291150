"""The people who write in the shop, and the link that opens the door once."""

from __future__ import annotations

from django.contrib.auth.models import AbstractUser
from django.db import models

ROLES = {"owner": "owner", "bench": "bench hand"}
UNITS = {"metric": "millimetres, grams, kilograms", "imperial": "inches, ounces, pounds"}
LOOKS = {"device": "as the device", "light": "light", "dark": "dark"}


class Person(AbstractUser):
    """Somebody with a hand in the diary: the owner or a bench hand."""

    name = models.CharField(max_length=200, blank=True)
    role = models.CharField(max_length=10, choices=list(ROLES.items()), default="bench")
    units = models.CharField(max_length=10, choices=list(UNITS.items()), default="metric")
    look = models.CharField(max_length=10, choices=list(LOOKS.items()), default="device")

    @property
    def shown(self) -> str:
        """The name that stands beside what this person wrote."""
        return self.name or self.get_full_name() or self.username

    @property
    def is_owner(self) -> bool:
        return self.role == "owner"


class SignInLink(models.Model):
    """A link that signs one person in once. Only the hash of its token is kept."""

    person = models.ForeignKey(Person, on_delete=models.CASCADE, related_name="sign_in_links")
    token_hash = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField()
    expires_at = models.DateTimeField()
    used_at = models.DateTimeField(null=True, blank=True)

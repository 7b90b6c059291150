"""What is asked about a person."""

from __future__ import annotations

from typing import Any

from django import forms

ROLES = (("bench", "bench hand: writes in every diary"), ("owner", "owner: also prices, settings and people"))
WITH_US = (("yes", "yes"), ("no", "no: what was written stays, the door is shut"))


class NewPersonForm(forms.Form):
    username = forms.CharField(
        label="Name at the door",
        max_length=150,
        help_text="Short and in one word, to sign in with.",
        widget=forms.TextInput({"autocomplete": "off", "autocapitalize": "none", "spellcheck": "false"}),
    )
    name = forms.CharField(label="Name beside what this person writes", max_length=200)
    role = forms.ChoiceField(label="May do", choices=ROLES, widget=forms.RadioSelect, initial="bench")


class PersonForm(forms.Form):
    name = forms.CharField(label="Name beside what is written", max_length=200)
    password = forms.CharField(
        label="A new password",
        required=False,
        strip=False,
        help_text="Ten characters or more, nothing that is easily guessed. Left empty, the old one stays.",
        widget=forms.PasswordInput({"autocomplete": "new-password"}),
    )
    role = forms.ChoiceField(label="May do", choices=ROLES, widget=forms.RadioSelect)
    is_active = forms.ChoiceField(label="Works here", choices=WITH_US, widget=forms.RadioSelect)

    def __init__(self, data: Any = None, *, person: Any, by_owner: bool) -> None:
        active = "yes" if person.is_active else "no"
        super().__init__(data, initial={"name": person.shown, "role": person.role, "is_active": active})
        if not by_owner:
            del self.fields["role"], self.fields["is_active"]

    def changes(self) -> dict[str, Any]:
        """What the act is told; an empty password says nothing."""
        given = {name: value for name, value in self.cleaned_data.items() if name != "password" or value}
        if "is_active" in given:
            given["is_active"] = given["is_active"] == "yes"
        return given

"""What is asked about a customer."""

from __future__ import annotations

from typing import Any

from django import forms

from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.questions import customers
from spoolwright.shop.questions.find import folded

WATERS = (("", "not known"), ("fresh", "fresh"), ("brackish", "brackish"), ("salt", "salt"))
SAME_NAME = "Somebody of this name is written down already. If this is another person, say so below."


class CustomerForm(forms.Form):
    name = forms.CharField(label="Name", max_length=200)
    telephone = forms.CharField(label="Telephone", max_length=60, required=False)
    email = forms.CharField(label="E-mail", max_length=254, required=False)
    address = forms.CharField(
        label="Address", max_length=1000, required=False, widget=forms.Textarea({"rows": 3})
    )
    water = forms.ChoiceField(label="Fishes in", choices=WATERS, required=False, widget=forms.RadioSelect)
    note = forms.CharField(
        label="A note to ourselves", max_length=4000, required=False, widget=forms.Textarea({"rows": 3})
    )

    def told(self) -> NewCustomer:
        return NewCustomer(**{name: self.cleaned_data[name] for name in NewCustomer.__annotations__})


class NewCustomerForm(CustomerForm):
    """Asks back when the name is known, so that nobody is written down twice by a slip."""

    another = forms.BooleanField(label="This is another person of the same name", required=False)

    @property
    def asks_back(self) -> bool:
        return self.is_bound and bool(self.same_name())

    def same_name(self) -> list[Any]:
        name = self["name"].value() or ""
        return [one for one in customers.known_as(name) if folded(one.name) == folded(name)]

    def clean(self) -> None:
        if self.same_name() and not self.cleaned_data.get("another"):
            self.add_error("name", SAME_NAME)


class ChangeForm(CustomerForm):
    version = forms.IntegerField(widget=forms.HiddenInput)

    def __init__(self, data: Any = None, *, customer: Any) -> None:
        names = [*CustomerForm.base_fields, "version"]
        super().__init__(data, initial={name: getattr(customer, name) for name in names})

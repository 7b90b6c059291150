"""What the front door asks."""

from django import forms


class SignInForm(forms.Form):
    username = forms.CharField(
        label="Your name at the door",
        max_length=150,
        widget=forms.TextInput({"autocomplete": "username", "autocapitalize": "none", "spellcheck": "false"}),
    )
    password = forms.CharField(
        label="Password", strip=False, widget=forms.PasswordInput({"autocomplete": "current-password"})
    )

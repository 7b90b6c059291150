"""The front door, and the two choices each person makes for themself."""

from django.urls import path

from spoolwright.pages.sign_in import choices, views

app_name = "sign_in"
urlpatterns = [
    path("sign-in/", views.sign_in, name="page"),
    path("sign-in/<str:token>/", views.once, name="once"),
    path("sign-out/", views.sign_out, name="out"),
    path("units/", choices.units, name="units"),
    path("look/", choices.look, name="look"),
]

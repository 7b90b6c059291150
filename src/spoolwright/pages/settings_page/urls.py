"""The shop about itself, and its people."""

from django.urls import path

from spoolwright.pages.settings_page import people, views

app_name = "settings_page"
urlpatterns = [
    path("", views.shop, name="shop"),
    path("change/", views.change, name="change"),
    path("people/", people.people, name="people"),
    path("people/<str:username>/", people.person, name="person"),
    path("people/<str:username>/link/", people.link, name="link"),
]

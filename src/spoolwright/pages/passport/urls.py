"""One reel and all that is known of it; a reel that is only written down."""

from django.urls import path

from spoolwright.pages.passport import adding, views

app_name = "passport"
urlpatterns = [
    path("new/", adding.add, name="add"),
    path("<int:reel_id>/", views.passport, name="passport"),
    path("<int:reel_id>/mark/", views.mark, name="mark"),
    path("<int:reel_id>/sheet/", views.describe, name="describe"),
]

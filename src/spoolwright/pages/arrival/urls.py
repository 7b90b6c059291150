"""What comes through the door, and the numbers that it is given."""

from django.urls import path

from spoolwright.pages.arrival import pieces, views

app_name = "arrival"
urlpatterns = [
    path("", views.arrive, name="arrive"),
    path("known/", pieces.known, name="known"),
    path("reels/", pieces.reels, name="reels"),
    path("reel/", pieces.reel, name="reel"),
    path("<int:number>/", views.arrived, name="arrived"),
]

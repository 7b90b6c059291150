"""The spin log: the shop's own spin times over kinds of bearing, or those of a file."""

from django.urls import path

from spoolwright.pages.spin_log import views

app_name = "spin_log"
urlpatterns = [path("spin-log/", views.spin_log, name="log")]

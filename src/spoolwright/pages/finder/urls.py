"""Search over everything."""

from django.urls import path

from spoolwright.pages.finder import views

app_name = "finder"
urlpatterns = [path("", views.find, name="find")]

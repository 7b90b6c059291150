"""What lies on the bench: the first page of the house."""

from django.urls import path

from spoolwright.pages.on_the_bench import views

app_name = "on_the_bench"
urlpatterns = [path("", views.bench, name="bench")]

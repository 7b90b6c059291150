"""The question to the customer: putting it together, and what the customer sees."""

from django.urls import path

from spoolwright.pages.quote import views

app_name = "quote"
urlpatterns = [
    path("visits/<int:tag>/quote/", views.quote, name="quote"),
    path("visits/<int:tag>/quote/<int:entry>/", views.customer, name="customer"),
]

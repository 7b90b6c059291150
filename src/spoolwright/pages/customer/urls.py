"""Customers, and the reels of each."""

from django.urls import path

from spoolwright.pages.customer import views

app_name = "customer"
urlpatterns = [
    path("new/", views.add, name="add"),
    path("<int:number>/", views.customer, name="customer"),
    path("<int:number>/change/", views.change, name="change"),
]

"""The shop book: every coefficient that the shop learns, and one page for each."""

from django.urls import path

from spoolwright.pages.book import views

app_name = "book"
urlpatterns = [
    path("book/", views.book, name="book"),
    path("book/<str:key>/", views.coefficient, name="coefficient"),
    path("book/<str:key>/back/<int:number>/", views.back, name="back"),
]

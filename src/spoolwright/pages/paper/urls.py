"""Papers: each a PDF that the browser shows."""

from django.urls import path

from spoolwright.pages.paper import views

app_name = "paper"
urlpatterns = [
    path("tag-<int:tag>.pdf", views.bag_tag, name="bag_tag"),
    path("quote-<int:entry>.pdf", views.quote, name="quote"),
    path("proof-<int:entry>.pdf", views.proof, name="proof"),
    path("reading-<int:entry>.pdf", views.reading, name="reading"),
    path("invoice-<int:number>.pdf", views.invoice, name="invoice"),
]

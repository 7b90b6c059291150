"""The proof: promised beside measured, the release, and the second hand under it."""

from django.urls import path

from spoolwright.pages.proof import views

app_name = "proof"
urlpatterns = [
    path("visits/<int:tag>/proof/", views.proof, name="proof"),
    path("visits/<int:tag>/proof/<int:entry>/sign/", views.sign, name="sign"),
]

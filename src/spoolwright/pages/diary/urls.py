"""A diary and everything that is written into it; files out of the record."""

from django.urls import path

from spoolwright.pages.diary import files, gauge_line, strike, views

app_name = "diary"
urlpatterns = [
    path("<int:tag>/", views.diary, name="diary"),
    path("<int:tag>/write/<slug:what>/", views.write, name="write"),
    path("<int:tag>/reading/<slug:kind>/", views.typed, name="typed"),
    path("<int:tag>/trace/<int:entry>/", views.trace, name="trace"),
    path("<int:tag>/strike/<int:entry>/", strike.strike, name="strike"),
    path("gauge/", gauge_line.gauge_line, name="gauge"),
    path("file/<int:number>/", files.file, name="file"),
    path("file/<int:number>/small/", files.small, name="small"),
]

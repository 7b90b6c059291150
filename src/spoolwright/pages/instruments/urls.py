"""The shop's own instruments: the list, one of them, its checks and its studies."""

from django.urls import path

from spoolwright.pages.instruments import study_views, views

app_name = "instruments"
urlpatterns = [
    path("", views.every, name="every"),
    path("new/<slug:kind>/", views.add, name="add"),
    path("<int:number>/", views.one, name="one"),
    path("<int:number>/change/", views.change, name="change"),
    path("<int:number>/check/", views.check, name="check"),
    path("<int:number>/put-away/", views.put_away, name="put_away"),
    path("<int:number>/study/", study_views.add, name="add_study"),
    path("study/<int:number>/", study_views.study, name="study"),
]

"""Reel sheets: the shelf, one sheet, its parts list, its versions, a new one."""

from django.urls import path

from spoolwright.pages.reel_sheet import views, writing

app_name = "reel_sheet"
urlpatterns = [
    path("", views.sheets, name="sheets"),
    path("new/", writing.new_sheet, name="new_sheet"),
    path("reel-sheet.schema.json", views.schema, name="schema"),
    path("<slug:slug>/", views.sheet, name="sheet"),
    path("<slug:slug>/parts/", views.parts, name="parts"),
    path("<slug:slug>/versions/", views.versions, name="versions"),
    path("<slug:slug>/versions/<int:number>/sheet.toml", views.toml, name="toml"),
    path("<slug:slug>/new-version/", writing.new_version, name="new_version"),
]

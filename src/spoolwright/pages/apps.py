"""The pages as Django knows them: templates, tags and static files, no records of their own."""

from django.apps import AppConfig


class PagesConfig(AppConfig):
    name = "spoolwright.pages"
    label = "pages"
    verbose_name = "pages"

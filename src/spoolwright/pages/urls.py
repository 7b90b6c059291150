"""Every address of the house. A page is a folder; its own urls.py says what lies under its first word."""

from django.urls import include, path

from spoolwright.pages import doors

urlpatterns = [
    path("here/", doors.here, name="here"),
    path("", include("spoolwright.pages.sign_in.urls")),
    path("arrival/", include("spoolwright.pages.arrival.urls")),
    path("customers/", include("spoolwright.pages.customer.urls")),
    path("diary/", include("spoolwright.pages.diary.urls")),
    path("find/", include("spoolwright.pages.finder.urls")),
    path("", include("spoolwright.pages.on_the_bench.urls")),
    path("", include("spoolwright.pages.book.urls")),
    path("", include("spoolwright.pages.carries.urls")),
    path("", include("spoolwright.pages.casts.urls")),
    path("", include("spoolwright.pages.long_run.urls")),
    path("", include("spoolwright.pages.spin_log.urls")),
    path("", include("spoolwright.pages.wears.urls")),
    path("instruments/", include("spoolwright.pages.instruments.urls")),
    path("sheets/", include("spoolwright.pages.reel_sheet.urls")),
    path("", include("spoolwright.pages.quote.urls")),
    path("", include("spoolwright.pages.proof.urls")),
    path("paper/", include("spoolwright.pages.paper.urls")),
    path("reels/", include("spoolwright.pages.passport.urls")),
    path("shop/", include("spoolwright.pages.settings_page.urls")),
]

"""The shop about itself: read as sentences by everybody here, changed by the owner."""

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_http_methods, require_safe

from spoolwright.pages import doors
from spoolwright.pages.settings_page.forms import SettingsForm
from spoolwright.shop.acts.change_settings import change_settings
from spoolwright.shop.acts.refused import Refused


@require_safe
def shop(request: HttpRequest) -> HttpResponse:
    here = doors.shop(request)
    return doors.page(
        request,
        "settings_page/shop.html",
        {"shop": here, "rates": here.rates(), "book": doors.way_to("book:book")},
    )


@doors.owner_only
@require_http_methods(["GET", "HEAD", "POST"])
def change(request: HttpRequest) -> HttpResponse:
    here = doors.shop(request)
    form = SettingsForm(doors.posted(request), shop=here)
    if form.is_bound and form.is_valid():
        try:
            change_settings(hand=request.user, version=form.cleaned_data["version"], **form.changes())
        except Refused as refusal:
            doors.put_refusal_on(form, refusal)
        else:
            return doors.written(request, "The shop’s settings are written.", "settings_page:shop")
    return doors.asked(request, "settings_page/change.html", form)

"""How a sheet's reel, one reel, or a reel at the bench casts."""

from spoolwright.pages.casts import views
from spoolwright.pages.gathered.three_addresses import three_addresses

app_name = "casts"
urlpatterns = three_addresses("casts", views.casts)

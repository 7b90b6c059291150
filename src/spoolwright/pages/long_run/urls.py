"""What a long run does to a sheet's reel, one reel, or a reel at the bench."""

from spoolwright.pages.gathered.three_addresses import three_addresses
from spoolwright.pages.long_run import views

app_name = "long_run"
urlpatterns = three_addresses("long-run", views.long_run)

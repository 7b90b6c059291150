"""What a sheet's reel, one reel, or a reel at the bench carries."""

from spoolwright.pages.carries import views
from spoolwright.pages.gathered.three_addresses import three_addresses

app_name = "carries"
urlpatterns = three_addresses("carries", views.carries)

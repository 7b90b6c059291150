from spoolwright.pages.gathered.three_addresses import three_addresses
from spoolwright.pages.wears import views

app_name = "wears"
urlpatterns = three_addresses("wears", views.wears)

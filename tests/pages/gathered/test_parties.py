"""Who stands on a paper."""

from types import SimpleNamespace
from typing import Any

from spoolwright.pages.gathered import parties


def test_the_shop_with_its_lines_and_nothing_where_nothing_is_known() -> None:
    address = " Bryggegata 4\n\nGrånesvåg "
    shop = SimpleNamespace(name="Kvie & Vannes", address=address, contact="", registration="17")
    house = parties.house(shop)
    assert (house.name, house.lines, house.contact) == ("Kvie & Vannes", ("Bryggegata 4", "Grånesvåg"), ())
    assert house.registration == "17"


def test_the_customer_and_the_reel(whole: Any) -> None:
    customer = parties.addressee(whole.reel.customer)
    assert (customer.name, customer.lines) == ("Ragna Solbu", ("Moloveien 3, Grånesvåg",))
    mark = parties.reel_mark(whole)
    assert (mark.number, mark.name, mark.marks) == (str(whole.tag), "Tarvak 58R", "serial 5801")
    assert parties.marked(SimpleNamespace(kind="other", words="a scratch")) == "a scratch"

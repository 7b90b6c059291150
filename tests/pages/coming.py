"""A reel that comes in, with whatever a test needs to say about its coming."""

from __future__ import annotations

from typing import Any

from spoolwright.shop.acts.add_customer import NewCustomer
from spoolwright.shop.acts.add_reel import NewReel
from spoolwright.shop.acts.receive_parcel import ArrivingReel, Envelope, Told, receive_parcel
from tests.people import bench_hand

TOLD = set(Told.__annotations__)


def came(name: str = "Ragna Solbu", reel: str = "Tarvak 58R", came_by: str = "post", **said: Any) -> Any:
    """The new visit; what is said goes to the reel's arrival or to what the customer told."""
    told = Told(**{key: value for key, value in said.items() if key in TOLD})
    arriving = {key: value for key, value in said.items() if key not in TOLD}
    received = receive_parcel(
        hand=bench_hand(),
        customer=NewCustomer(name=name),
        envelope=Envelope(came_by=came_by),
        reels=[ArrivingReel(reel=NewReel(described=reel), told=told, **arriving)],
    )
    return received.written[0].entry.visit

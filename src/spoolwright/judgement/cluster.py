"""Chunks of a sweep on a Dask cluster: whichever worker casts one, its numbers are the same."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any
from uuid import uuid4

from spoolwright.judgement.no_cluster import NoCluster
from spoolwright.judgement.sweep_chunk import Cast, Chunk, Order, cast_chunk

WAIT = 10
"""Seconds until a cluster that does not answer is given up."""

TRIES = 3
"""How often a chunk is tried again that fails by itself; one whose worker dies is always given to another."""


def on_cluster(address: str, order: Order, wanted: Sequence[Chunk]) -> Iterator[Cast]:
    """Cast chunks on the workers of a Dask cluster, each given back as it is done.

    Parameters
    ----------
    address : str
        Where the scheduler listens **[-]**, such as "tcp://bench:8786".
    order : Order
        Reel, throw and options **[SI]**.
    wanted : sequence of Chunk
        The chunks **[-]**.

    Returns
    -------
    iterator of Cast
        In the order in which they are done.

    Raises
    ------
    NoCluster
        The extra is not installed, or nothing answers at the address.

    Notes
    -----
    Every worker needs the same version of Spoolwright. A chunk whose worker is killed is cast again elsewhere
    from the same seed.

    Source
    ------
    distributed, the scheduler of Dask.
    """
    distributed = _distributed()
    try:
        client = distributed.Client(address, timeout=WAIT, set_as_default=False)
    except (OSError, TimeoutError, ValueError) as fault:
        said = f"No cluster answers at {address}. Accepted: the address that its scheduler prints."
        raise NoCluster(said) from fault
    with client:
        mark = uuid4().hex
        futures = [
            client.submit(cast_chunk, order, one, key=f"cast-{mark}-{one.number}", retries=TRIES)
            for one in wanted
        ]
        for _, found in distributed.as_completed(futures, loop=client.loop, with_results=True):
            yield found


def _distributed() -> Any:
    try:
        import distributed
    except ImportError as fault:
        said = (
            'A cluster needs the extra that is not installed here: pip install "spoolwright[cluster]". '
            "Without it the sweep runs on all cores of this machine."
        )
        raise NoCluster(said) from fault
    return distributed

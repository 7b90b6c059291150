"""A sweep on a Dask cluster: the same numbers, also when a worker is killed halfway."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Any

import pytest

from spoolwright.judgement import sweep as sweeping
from spoolwright.judgement.cluster import on_cluster
from spoolwright.judgement.no_cluster import NoCluster
from spoolwright.judgement.sweep import Sweep, sweep
from spoolwright.judgement.sweep_chunk import Cast, Chunk, Order
from spoolwright.judgement.throw import Throw
from spoolwright.sheets import reel_sheet

SHEET = reel_sheet.load("tarvak-58r")
THROW = Throw(0.150, 55.0, diameter=0.31e-3)
OPTIONS = {"hybrids": ("hybrid-spool-bearings",)}


def swept(**more: Any) -> Sweep:
    return sweep(SHEET, None, OPTIONS, throw=THROW, samples=2400, seed=5, **more)


def numbers(found: Sweep) -> list[Any]:
    rows = [(row.over_runs, *row.values.values(), row.gain, row.gain_again) for row in found.rows]
    return [*rows, *found.weights]


@contextmanager
def worker(address: str) -> Iterator[subprocess.Popen[bytes]]:
    """A worker of the cluster in a process of its own, ended in any case."""
    command = [sys.executable, "-m", "distributed.cli.dask_worker", address, "--no-nanny", "--no-dashboard"]
    paths = os.pathsep.join(path for path in sys.path if path)
    with subprocess.Popen(
        [*command, "--nthreads", "1"],
        env={**os.environ, "PYTHONPATH": paths},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    ) as process:
        try:
            yield process
        finally:
            process.kill()


@pytest.mark.skipif(
    sys.platform == "win32", reason="there a process cannot be stopped and killed by a signal"
)
def test_the_numbers_are_those_of_this_machine_though_a_worker_is_killed_halfway(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    distributed = pytest.importorskip("distributed", reason="the extra `cluster` is not installed")
    monkeypatch.setattr(sweeping, "CHUNK", 200)
    killed: list[int] = []
    with (
        distributed.LocalCluster(
            n_workers=0, processes=True, host="127.0.0.1", dashboard_address=None, silence_logs=50
        ) as cluster,
        worker(cluster.scheduler_address) as doomed,
        worker(cluster.scheduler_address),
    ):

        def killing_one(order: Order, wanted: Sequence[Chunk]) -> Iterator[Cast]:
            # Stopped first, so that it surely holds chunks that it has not cast when it is killed.
            os.kill(doomed.pid, signal.SIGSTOP)
            for done, one in enumerate(on_cluster(cluster.scheduler_address, order, wanted), start=1):
                if done == 2:
                    os.kill(doomed.pid, signal.SIGKILL)
                    killed.append(doomed.pid)
                yield one

        with distributed.Client(cluster.scheduler_address, set_as_default=False) as client:
            client.wait_for_workers(2, timeout=120)
        far = swept(cast_with=killing_one)
    assert killed
    assert far.chunks == 12
    assert numbers(far) == numbers(swept())


def test_without_the_extra_it_says_how_to_come_by_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "distributed", None)
    with pytest.raises(NoCluster, match=r'pip install "spoolwright\[cluster\]"'):
        list(on_cluster("tcp://127.0.0.1:1", Order(SHEET, (), THROW, ()), ()))


def test_a_cluster_that_does_not_answer_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    pytest.importorskip("distributed", reason="the extra `cluster` is not installed")
    monkeypatch.setattr("spoolwright.judgement.cluster.WAIT", 0.2)
    with pytest.raises(NoCluster, match="No cluster answers at tcp://127.0.0.1:1"):
        list(on_cluster("tcp://127.0.0.1:1", Order(SHEET, (), THROW, ()), ()))

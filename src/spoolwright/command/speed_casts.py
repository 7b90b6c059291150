"""How fast casts are flown: beside SciPy, beside C, with two threads, and as their number grows."""

from __future__ import annotations

import ctypes
import os
import shutil
import subprocess
import tempfile
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np

from spoolwright.command import scipy_cast, some_casts
from spoolwright.command.house import CHECKOUT
from spoolwright.command.speed_clock import (
    Error,
    in_turn,
    in_turn_on_the_wall,
    processor_seconds,
    unevenness,
)
from spoolwright.mechanics import cast
from spoolwright.mechanics.cast_cases import Cases

RTOL = 1e-6
REFERENCE = {"method": "DOP853", "rtol": 1e-10, "atol": 1e-10, "max_step": 0.03}
RIVALS = ("RK45", "LSODA")
SEED = 1
POOL = 20_000
KINDS = 100
RUNS = 5
IN_A_PIECE = 30
STEADY = 2000
C_SOURCE = CHECKOUT / "tests" / "speed" / "cast.c"
COMPILERS = ("cc", "gcc", "clang")
FLAGS = ("-O3", "-march=native", "-shared", "-fPIC")


@dataclass(frozen=True)
class Rate:
    """Casts in a second of one core, and how far their distances are from the reference."""

    per_second: float
    error: Error
    work: str


@dataclass(frozen=True)
class BesideC:
    """Casts a second of the kernel alone and of the same in C; `why_not` where C could not be had."""

    ours: float = 0.0
    theirs: float = 0.0
    apart: float = 0.0
    two_of_one: float | None = None
    why_not: str = ""


def beside_scipy(count: int) -> dict[str, Rate]:
    """This program and SciPy's solvers on the same casts, with the same events."""
    drawn = some_casts.some_casts(count, SEED)
    singles = [some_casts.one(drawn, number) for number in range(count)]
    wanted = [scipy_cast.fly(one, **REFERENCE)["distance"] for one in singles]
    many = some_casts.some_casts(POOL, SEED)
    flown: dict[str, list[float]] = {method: [] for method in RIVALS}
    seconds = dict.fromkeys(("ours", *RIVALS), 0.0)

    def fly(method: str, some: list[dict[str, float]]) -> None:
        flown[method] += [scipy_cast.fly(one, method=method, rtol=RTOL)["distance"] for one in some]

    starts = range(0, count, IN_A_PIECE)
    for start in starts:
        seconds["ours"] += processor_seconds(partial(cast.simulate, **many, rtol=RTOL), 1)
        for method in RIVALS:
            some = singles[start : start + IN_A_PIECE]
            seconds[method] += processor_seconds(partial(fly, method, some), 1)
    ours = Error.of(cast.simulate(**drawn, rtol=RTOL).distance, wanted)
    found = {"ours": Rate(len(starts) * POOL / seconds["ours"], ours, f"{POOL:,} casts in a call")}
    for method in RIVALS:
        error = Error.of(flown[method], wanted)
        found[method] = Rate(count / seconds[method], error, f"{count} casts, one after another")
    return found


def beside_c(count: int = POOL) -> BesideC:
    """The compiled kernel and the same algorithm in C, on one core, on the same table of casts."""
    if not C_SOURCE.is_file():
        return BesideC(why_not="the C source is not here: it stands in tests/speed of the source tree")
    compiler = next((found for name in COMPILERS if (found := shutil.which(name))), None)
    if compiler is None:
        return BesideC(why_not="there is no C compiler on this machine")
    from spoolwright.mechanics import cast_kernel

    table = _table(cast_kernel, count)
    ours, theirs = np.zeros((count, cast_kernel.RESULTS)), np.zeros((count, cast_kernel.RESULTS))
    nothing = np.zeros((0, cast_kernel.NOTED))
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        library = Path(folder) / "cast.so"
        words = [compiler, *FLAGS, str(C_SOURCE), "-o", str(library), "-lm"]
        done = subprocess.run(words, capture_output=True, text=True, check=False)
        if done.returncode:
            return BesideC(why_not=f"{compiler} does not compile it: {done.stderr.strip().splitlines()[:1]}")
        in_c = ctypes.CDLL(str(library)).fly
        given = [values.ctypes.data_as(ctypes.c_void_p) for values in (table, theirs)]

        def fly_in_c(*_: Any) -> None:
            in_c(*given, ctypes.c_longlong(count))

        mine, other = in_turn(lambda: cast_kernel.fly(table, ours, nothing, 0), fly_in_c, 3 * RUNS)
        both = _twice_and_at_once(fly_in_c)
    apart = float(np.max(np.abs(ours[:, cast_kernel.DISTANCE] - theirs[:, cast_kernel.DISTANCE])))
    return BesideC(count / mine, count / other, apart, both[0] / both[1] if both else None)


def _table(kernel: Any, count: int) -> np.ndarray:
    """The kernel's rows for so many casts."""
    given = {**(cast.simulate.__kwdefaults__ or {}), **some_casts.some_casts(count, SEED), "rtol": RTOL}
    variant = given.pop("variant")
    ((_, block),) = Cases.of(given, variant).blocks(kernel, count)
    return np.asarray(block)


def in_two_threads(count: int = 2 * POOL) -> tuple[float, float] | None:
    """Casts a second on the wall with one thread and with two; nothing on a machine with one core."""
    drawn = some_casts.some_casts(count // 2, SEED)
    both = _twice_and_at_once(lambda _: cast.simulate(**drawn))
    return (count / both[0], count / both[1]) if both else None


def _twice_and_at_once(work: Callable[[int], Any]) -> tuple[float, float] | None:
    """Seconds for the same work twice over, one after the other and on two threads."""
    if (os.cpu_count() or 1) < 2:
        return None
    with ThreadPoolExecutor(2) as pool:
        return in_turn_on_the_wall(
            lambda: [work(part) for part in (0, 1)], lambda: list(pool.map(work, (0, 1))), 3 * RUNS
        )


def how_uneven() -> float:
    """How much longer than at its best this machine takes for the same few casts, as a rule."""
    drawn = some_casts.some_casts(STEADY, SEED)
    return unevenness(lambda: cast.simulate(**drawn))


def growth(most: int) -> dict[int, float]:
    """Processor seconds for a cast, as ten times as many are asked for again and again."""
    few = some_casts.some_casts(KINDS, SEED)
    found = {}
    count = KINDS
    while count <= most:
        many = {name: np.tile(values, count // KINDS) for name, values in few.items()}
        runs = max(3, min(40, 200_000 // count))
        found[count] = processor_seconds(partial(cast.simulate, **many), runs) / count
        count *= 10
    return found

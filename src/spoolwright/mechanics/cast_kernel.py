"""The cast, step by step, compiled: Dormand and Prince's pair with every change of the motion located.

Nothing here is checked; cast.py does that at the door. What `fly` calls stands here, since the compiler's
cache does not see a change in another file, and has no signatures: what has one is compiled at every start.
Algebra: docs/derivations/cast.md.
"""

from __future__ import annotations

from math import sqrt
from typing import Any

import numpy as np
from numba import njit

WITHIN: dict[str, Any] = {"error_model": "numpy", "no_cpython_wrapper": True, "no_cfunc_wrapper": True}

GRAVITY, STEPS, LONGEST_STEP, CREEP, SOFT_TOUCH, NO_TOUCH = 9.80665, 100_000, 1.0, 0.01, 1e-3, -1e-9

# what is known of one cast, and what comes out of it, in the order of their rows
(
    MASS, EASE, AIR, VX, VY, HEIGHT, WIND, SKIN, LINE, FALL, TOP, FLOOR, BULK, BARE, LENGTH, B_CONST, B_VISC,
    B_QUAD, WINDAGE, MAGNET, BLOCKS, ENGAGE, GUIDE, PRESS, LIMIT, HOLD, LIP, RTOL, FIRST, FIXED, COLUMNS,
) = range(31)  # fmt: skip
(
    DISTANCE, TIME, ARC, OUT, PEAK_SPIN, PEAK_SLACK, E_BRAKE, E_BEARING, E_WINDAGE, E_GUIDE, E_THUMB,
    E_PAYLOAD, E_LINE, E_SLACK, E_JOIN, E_START, E_END, STATUS, RESULTS,
) = range(19)  # fmt: skip
LANDED, OUT_OF_LINE, HUNG, GAVE_UP = range(4)
TIGHT, HELD, SLACK, STOPPED, FREE = range(5)
LANDS, RUNS_OUT, CATCHES, THUMB, STOPS, BRAKE, LOOSENS, TIGHTENS, KINDS = range(9)
NOTHING, NOTED = -1, 9

# The work space b, one array since many are slow to pass on: the row of the case; in eights the state (x, y,
# vx, vy, arc, spin, slack, height energy of the line) now, tried, between, 7 slopes, 7 times the powers, what
# the line needs at each, energies, two to spare, what is watched for; the row of results; the phase
Y, NEW, MID, K, P, NEED, ENERGY, SPARE, WATCH, R, MODE, BRAKED, PRESSED, HOLDS, ROOM = (
    32, 40, 48, 56, 112, 168, 176, 184, 200, 208, 228, 229, 230, 231, 232,
)  # fmt: skip


@njit(None, forceinline=True, **WITHIN)
def _spool(b: Any, y: int) -> tuple[float, float]:
    """Radius of the line on the spool, and inertia with that line, in the state at y."""
    rr = max(b[TOP] - b[FALL] * (b[y + 4] + b[y + 6]), 0.5 * b[FLOOR])
    return sqrt(rr), b[BARE] + b[BULK] * max(rr * rr - b[FLOOR] * b[FLOOR], 0.0)


@njit(None, forceinline=True, **WITHIN)
def _slope(b: Any, y: int, g: int, w: int) -> float:
    """Slopes of the state at y into g, powers lost into w; gives the torque that the tight line brings."""
    mode, vx, vy, s = b[MODE], b[y + 2], b[y + 3], b[y + 4]
    v = max(sqrt(vx * vx + vy * vy), 1e-12)
    per_v = 1.0 / v
    tx, ty = vx * per_v, vy * per_v
    rx = vx - b[WIND]
    pull = b[AIR] * sqrt(rx * rx + vy * vy)
    ax, ay = -pull * rx * b[EASE], -GRAVITY - pull * vy * b[EASE]
    along = ax * tx + ay * ty
    u = v - b[WIND] * (b[y] / s if s > 1e-9 else tx)
    skin = b[SKIN] * s * u * abs(u)
    lift = b[LINE] * GRAVITY * (b[y + 1] - b[HEIGHT])
    force = b[MASS] * along - skin - lift
    mass = b[MASS] + b[LINE] * s
    r, inertia = _spool(b, y)
    per_r = 1.0 / r
    spin = v * per_r if mode <= HELD else (max(b[y + 5], 0.0) if mode == SLACK else 0.0)
    brake = b[MAGNET] * spin + b[BRAKED] * b[BLOCKS] * (spin * spin - b[ENGAGE] * b[ENGAGE])
    bearing = b[B_CONST] + spin * (b[B_VISC] + spin * b[B_QUAD])
    air = b[WINDAGE] * spin * sqrt(spin)
    torque = brake + bearing + air + b[GUIDE]
    lip = df = dw = need = thumb = fluff = 0.0
    if mode <= HELD:
        hurry = 0.5 * b[FALL] * v * v * per_r * per_r
        if mode == TIGHT:
            dv = (force - (inertia * hurry * per_r + torque) * per_r) / (mass + inertia * per_r * per_r)
        else:
            dv = force / mass
        dw = (dv + hurry) * per_r
        need = inertia * dw + torque
        thumb = -need if mode == HELD else 0.0
    elif mode == FREE:
        lip = b[LIP]
        need = lip + b[LINE] * v * v
        dv = (force - need) / mass
        fluff = 0.5 * b[LINE] * v * v * v
    else:
        dv = force / mass
        run = r * spin
        df = run - v
        fluff = 0.5 * b[LINE] * (run * run * run - v * v * v)
        if mode == SLACK:
            thumb = b[PRESSED] * b[PRESS]
            dw = -(torque + thumb) / max(inertia, 1e-300)
    b[g], b[g + 1], b[g + 4], b[g + 5], b[g + 6], b[g + 7] = vx, vy, v, dw, df, lift * v
    b[g + 2], b[g + 3] = ax + (dv - along) * tx, ay + (dv - along) * ty
    b[w], b[w + 1], b[w + 2], b[w + 3] = spin * brake, spin * bearing, spin * air, spin * b[GUIDE] + lip * v
    b[w + 4], b[w + 5], b[w + 6], b[w + 7] = spin * thumb, pull * (rx * vx + vy * vy), skin * v, fluff
    return need


@njit(None, **WITHIN)
def _try(b: Any, h: float) -> float:
    """One step of length h into NEW; gives its error over what is allowed."""
    k1, k2, k3, k4, k5, k6, k7 = K, K + 8, K + 16, K + 24, K + 32, K + 40, K + 48
    for i in range(8):
        b[MID + i] = b[Y + i] + h * (1 / 5 * b[k1 + i])
    b[NEED + 1] = _slope(b, MID, k2, P + 8)
    for i in range(8):
        b[MID + i] = b[Y + i] + h * (3 / 40 * b[k1 + i] + 9 / 40 * b[k2 + i])
    b[NEED + 2] = _slope(b, MID, k3, P + 16)
    for i in range(8):
        b[MID + i] = b[Y + i] + h * (44 / 45 * b[k1 + i] - 56 / 15 * b[k2 + i] + 32 / 9 * b[k3 + i])
    b[NEED + 3] = _slope(b, MID, k4, P + 24)
    for i in range(8):
        a = 19372 / 6561 * b[k1 + i] - 25360 / 2187 * b[k2 + i] + 64448 / 6561 * b[k3 + i]
        b[MID + i] = b[Y + i] + h * (a - 212 / 729 * b[k4 + i])
    b[NEED + 4] = _slope(b, MID, k5, P + 32)
    for i in range(8):
        a = 9017 / 3168 * b[k1 + i] - 355 / 33 * b[k2 + i] + 46732 / 5247 * b[k3 + i]
        b[MID + i] = b[Y + i] + h * (a + 49 / 176 * b[k4 + i] - 5103 / 18656 * b[k5 + i])
    b[NEED + 5] = _slope(b, MID, k6, P + 40)
    for i in range(8):
        a = 35 / 384 * b[k1 + i] + 500 / 1113 * b[k3 + i] + 125 / 192 * b[k4 + i]
        b[NEW + i] = b[Y + i] + h * (a - 2187 / 6784 * b[k5 + i] + 11 / 84 * b[k6 + i])
    b[NEED + 6] = _slope(b, NEW, k7, P + 48)
    total = 0.0
    for i in range(8):
        e = 71 / 57600 * b[k1 + i] - 71 / 16695 * b[k3 + i] + 71 / 1920 * b[k4 + i]
        e = h * (e - 17253 / 339200 * b[k5 + i] + 22 / 525 * b[k6 + i] - 1 / 40 * b[k7 + i])
        total += (e / (b[RTOL] * (1.0 + max(abs(b[Y + i]), abs(b[NEW + i]))))) ** 2
    return sqrt(total / 8.0)


@njit(None, **WITHIN)
def _at(b: Any, h: float, t: float, i: int) -> Any:
    """Entry i of the state at the share t of the step (Shampine's interpolant of fourth order)."""
    if t >= 1.0:
        return b[NEW + i]
    rise = b[NEW + i] - b[Y + i]
    bend = h * b[K + i] - rise
    twist = rise - h * b[K + 48 + i] - bend
    d = -12715105075 / 11282082432 * b[K + i] + 87487479700 / 32700410799 * b[K + 16 + i]
    d += -10690763975 / 1880347072 * b[K + 24 + i] + 701980252875 / 199316789632 * b[K + 32 + i]
    d += -1453857185 / 822651844 * b[K + 40 + i] + 69997945 / 29380423 * b[K + 48 + i]
    return b[Y + i] + t * (rise + (1.0 - t) * (bend + t * (twist + (1.0 - t) * h * d)))


@njit(None, **WITHIN)
def _gauge(kind: int, b: Any, h: float, t: float) -> Any:
    """How far off an event is at the share t of a step: above zero before it, below zero after."""
    if kind == RUNS_OUT:
        return b[LENGTH] - _at(b, h, t, 4) - _at(b, h, t, 6)
    if kind == THUMB:
        return (1.0 - 2.0 * b[PRESSED]) * (b[LIMIT] - _at(b, h, t, 6))
    if kind == BRAKE:
        return (1.0 - 2.0 * b[BRAKED]) * (b[ENGAGE] - _at(b, h, t, 5))
    if kind < LOOSENS:
        return _at(b, h, t, 1 if kind == LANDS else (6 if kind == CATCHES else 5))
    for i in range(8):
        b[MID + i] = _at(b, h, t, i)
    need = _slope(b, MID, SPARE, SPARE + 8)
    return -need if kind == TIGHTENS else need + (b[HOLDS] if b[MODE] == HELD else 0.0)


@njit(None, **WITHIN)
def _where(kind: int, b: Any, h: float, end: float) -> float:
    """Share of the step at which an event happens that has happened by `end`, by false position."""
    low, high, side = 0.0, end, 0
    at_low, at_high = _gauge(kind, b, h, low), _gauge(kind, b, h, high)
    for _ in range(80):
        t = high - at_high * (high - low) / (at_high - at_low) if at_low > 0.0 else 0.5 * (low + high)
        if high - low < 1e-13 or t <= low or t >= high:
            break
        value = _gauge(kind, b, h, t)
        if abs(value) <= 1e-14 * h:
            return t
        if value > 0.0:
            low, at_low, at_high, side = t, value, at_high * (0.5 if side > 0 else 1.0), 1
        else:
            high, at_high, at_low, side = t, value, at_low * (0.5 if side < 0 else 1.0), -1
    return high


@njit(None, **WITHIN)
def _turn(b: Any, h: float, i: int, sign: float) -> Any:
    """Share of the step at which entry i turns (sign 1: a top, -1: a bottom), or -1 where it does not."""
    before, after = sign * b[K + i], sign * b[K + 48 + i]
    if before <= 0.0 or after >= 0.0:
        return -1.0
    mean = sign * (b[NEW + i] - b[Y + i]) / h
    a = 3.0 * (before + after) - 6.0 * mean
    half = 3.0 * mean - 2.0 * before - after
    root = sqrt(max(half * half - a * before, 0.0))
    t = before / (root - half) if half < 0.0 else -(half + root) / a
    return t if t > 0.0 and t < 1.0 else 0.5


@njit(None, **WITHIN)
def _first(b: Any, h: float, kinds: int) -> tuple[int, float]:
    """Which event comes first in the step, and at which share of it."""
    first, share = NOTHING, 1.0
    for kind in range(kinds):
        if b[WATCH + kind] == 0.0:
            continue
        end, t = -1.0, -1.0
        if kind < LOOSENS:
            end = 1.0 if _gauge(kind, b, h, 1.0) < 0.0 else -1.0
            if kind in (CATCHES, THUMB):
                t = _turn(b, h, 6, -1.0 if kind == CATCHES else 1.0 - 2.0 * b[PRESSED])
        else:
            sign = 1.0 if kind == LOOSENS else -1.0
            offset = b[HOLDS] if b[MODE] == HELD and kind == LOOSENS else 0.0
            end = 1.0 if sign * b[NEED + 6] + offset < 0.0 else -1.0
            for j in range(2, 5):
                if sign * b[NEED + j] + offset < 0.0:
                    t = 0.3 if j == 2 else (0.8 if j == 3 else 8 / 9)
        if end < 0.0 and t > 0.0 and _gauge(kind, b, h, t) < 0.0:
            end = t
        if end > 0.0:
            t = _where(kind, b, h, end)
            if first == NOTHING or t < share:
                first, share = kind, t
    return first, share


@njit(None, **WITHIN)
def _watch(b: Any) -> None:
    """The first slope of a phase, and which events can end it."""
    b[NEED], mode = _slope(b, Y, K, P), b[MODE]
    thumb = mode == SLACK and b[LIMIT] > 0.0 and b[LIMIT] < 1e300 and b[PRESS] > 0.0
    brake = mode <= SLACK and b[BLOCKS] > 0.0 and b[ENGAGE] > 0.0
    b[WATCH + LANDS] = b[WATCH + RUNS_OUT] = 1.0
    b[WATCH + CATCHES], b[WATCH + STOPS] = SLACK <= mode <= STOPPED, mode == SLACK
    b[WATCH + LOOSENS], b[WATCH + TIGHTENS] = mode <= HELD, mode == HELD
    b[WATCH + THUMB], b[WATCH + BRAKE] = thumb, brake


@njit(None, **WITHIN)
def _settle(b: Any) -> None:
    """A line without slack is tight, held by a thumb, or goes slack."""
    b[MODE], b[PRESSED], b[HOLDS] = TIGHT, 0.0, b[HOLD]
    b[Y + 5] = sqrt(b[Y + 2] ** 2 + b[Y + 3] ** 2) / _spool(b, Y)[0]
    b[BRAKED] = 1.0 if b[ENGAGE] <= 0.0 or b[Y + 5] > b[ENGAGE] else 0.0
    if _slope(b, Y, K, P) < 0.0:
        b[MODE] = HELD
        if _slope(b, Y, K, P) + b[HOLD] < 0.0:
            b[MODE], b[PRESSED] = SLACK, 1.0 if b[LIMIT] <= 0.0 else 0.0


@njit(None, **WITHIN)
def _change(kind: int, b: Any) -> None:
    """What an event changes: phase, state, first slope."""
    v = sqrt(b[Y + 2] ** 2 + b[Y + 3] ** 2)
    r, inertia = _spool(b, Y)
    ahead = r * b[Y + 5] - v
    if kind == CATCHES:  # line and spool come to one speed; momentum is kept, some energy lost
        mass, turning = b[MASS] + b[LINE] * b[Y + 4], inertia / (r * r)
        share = turning / (mass + turning)
        b[R + E_JOIN] += 0.5 * mass * share * ahead * ahead
        b[Y + 2] *= 1.0 + share * ahead / v
        b[Y + 3] *= 1.0 + share * ahead / v
        b[Y + 6] = 0.0
        _settle(b)
    elif kind == THUMB:
        b[PRESSED] = 1.0 - b[PRESSED]
        if ahead > NO_TOUCH * v and ahead < SOFT_TOUCH * v:  # touched softly, it holds the slack there
            b[MODE] = HELD
            need = _slope(b, Y, SPARE, SPARE + 8)
            if need < 0.0 and need + b[PRESS] > 0.0:
                b[R + E_THUMB] += 0.5 * inertia * (b[Y + 5] ** 2 - (v / r) ** 2)
                b[Y + 5], b[HOLDS] = v / r, b[PRESS]
            else:
                b[MODE] = SLACK
    elif kind == STOPS:
        b[MODE], b[Y + 5] = STOPPED, 0.0
    elif kind == BRAKE:
        b[BRAKED] = 1.0 - b[BRAKED]
    elif kind == TIGHTENS:
        b[MODE], b[PRESSED] = SLACK if b[Y + 6] > 0.0 else TIGHT, 0.0
    elif b[MODE] == TIGHT and b[HOLDS] > 0.0:
        b[MODE] = HELD
    else:
        b[PRESSED] = 1.0 if b[MODE] == HELD or b[LIMIT] <= 0.0 else 0.0
        b[MODE] = SLACK
    _watch(b)


@njit(None, **WITHIN)
def _collect(b: Any, h: float) -> None:
    """Energies and peaks of a step that counts; then the state is the new one."""
    for i in range(8):
        w = 35 / 384 * b[P + i] + 500 / 1113 * b[P + 16 + i] + 125 / 192 * b[P + 24 + i]
        b[ENERGY + i] += h * (w - 2187 / 6784 * b[P + 32 + i] + 11 / 84 * b[P + 40 + i])
    for i in range(5, 7 if b[MODE] != FREE else 5):
        top = _turn(b, h, i, 1.0)
        peak = max(b[NEW + i], _at(b, h, top, i) if top > 0.0 else 0.0)
        b[R + PEAK_SPIN + i - 5] = max(b[R + PEAK_SPIN + i - 5], peak)
    for i in range(8):
        b[Y + i] = b[NEW + i]
    b[Y + 6] = max(b[Y + 6], 0.0)
    if b[MODE] <= HELD:
        b[Y + 5] = sqrt(b[Y + 2] ** 2 + b[Y + 3] ** 2) / _spool(b, Y)[0]


@njit(None, **WITHIN)
def _energy(b: Any) -> Any:
    """Energy of payload, line in the air and spool in the state as it is."""
    flying = 0.5 * (b[MASS] + b[LINE] * b[Y + 4]) * (b[Y + 2] ** 2 + b[Y + 3] ** 2)
    turning = 0.5 * _spool(b, Y)[1] * b[Y + 5] ** 2
    return flying + turning + b[MASS] * GRAVITY * b[Y + 1] + b[Y + 7]


@njit(None, **WITHIN)
def _note(rec: Any, at: int, t: float, h: float, points: int, b: Any) -> int:
    """Lines of a trace (of the state as it is where h is zero), while there is room; gives their count."""
    for j in range(1, points + 1 if h > 0.0 or points == 0 else 2):
        share = j / points if h > 0.0 else 0.0
        for i in range(8):
            b[MID + i] = _at(b, h, share, i)
        radius = _spool(b, MID)[0]
        if b[MODE] <= HELD:
            b[MID + 5] = sqrt(b[MID + 2] ** 2 + b[MID + 3] ** 2) / radius
        need = _slope(b, MID, SPARE, SPARE + 8)
        if at < rec.shape[0]:
            rec[at, 0] = t + h * share
            for i in range(7):
                rec[at, i + 1] = b[MID + i]
            rec[at, 8] = need if b[MODE] == FREE else (need / radius if b[MODE] == TIGHT else 0.0)
        at += 1
    return at


@njit(None, **WITHIN)
def _one(b: Any, rec: Any, points: int) -> int:
    """From the release to the end, event by event; gives the number of lines of the trace."""
    t, rush = 0.0, 0
    h = min(b[FIRST] * sqrt((b[VX] ** 2 + b[VY] ** 2) / (b[K + 2] ** 2 + b[K + 3] ** 2)), LONGEST_STEP)
    b[R + STATUS] = LANDED if b[HEIGHT] <= 0.0 and b[VY] <= 0.0 else GAVE_UP
    noted = _note(rec, 0, t, 0.0, points, b)
    for _ in range(STEPS if b[R + STATUS] == GAVE_UP else 0):
        error = _try(b, h)
        quarter = sqrt(sqrt(max(error, 1e-8)))
        factor = min(max(0.9 * sqrt(sqrt(quarter)) / quarter, 0.2), 5.0)
        if not error <= 1.0:
            h *= factor if error > 1.0 else 0.2
            continue
        # after many events in no time at all, one short step is taken without looking for more of them
        kind, share = _first(b, h, KINDS if rush < 5 else CATCHES)
        taken = share * h
        if share < 1.0:
            _try(b, taken)
        if points > 0:
            noted = _note(rec, noted, t, taken, points, b)
        _collect(b, taken)
        t += taken
        b[R + TIME] = t
        if LANDS <= kind <= RUNS_OUT:
            b[R + STATUS] = kind
            break
        rush = rush + 1 if kind != NOTHING and taken < 1e-9 else 0
        if kind == NOTHING:
            b[NEED] = b[NEED + 6]
            for i in range(8):
                b[K + i], b[P + i] = b[K + 48 + i], b[P + 48 + i]
        else:
            _change(kind, b)
            noted = _note(rec, noted, t, 0.0, points, b)
        # a payload may come to a stand in the air, where friction carries its weight on the tight line
        if b[Y + 2] ** 2 + b[Y + 3] ** 2 < CREEP * CREEP and (b[MODE] == TIGHT or b[MODE] == FREE):
            least = b[LIP] if b[MODE] == FREE else (b[B_CONST] + b[GUIDE]) / _spool(b, Y)[0]
            if b[K + 2] ** 2 + b[K + 3] ** 2 < (0.05 * GRAVITY) ** 2 or least >= b[MASS] * GRAVITY:
                b[R + STATUS] = HUNG
                break
        h = min(h * factor, LONGEST_STEP if rush < 5 else 1e-3)
    return noted


def _fly(cases: Any, results: Any, trace: Any, points: int) -> int:
    """Fly every cast of a table, one after another, without holding Python's lock."""
    b, noted = np.zeros(ROOM), 0
    for n in range(cases.shape[0]):
        b[:COLUMNS], b[Y:] = cases[n], 0.0
        b[Y + 1], b[Y + 2], b[Y + 3], b[MODE] = b[HEIGHT], b[VX], b[VY], FREE
        if b[FIXED] == 0.0:
            _settle(b)
        _watch(b)
        b[R + PEAK_SPIN], b[R + E_START] = b[Y + 5], _energy(b)
        noted = _one(b, trace, points)
        if b[R + STATUS] == LANDED and b[Y + 3] < 0.0:
            b[Y], b[Y + 1] = b[Y] - b[Y + 1] * b[Y + 2] / b[Y + 3], 0.0
        b[R + DISTANCE], b[R + ARC], b[R + OUT] = b[Y], b[Y + 4], b[Y + 4] + b[Y + 6]
        for i in range(8):
            b[R + E_BRAKE + i] += b[ENERGY + i]
        b[R + E_END] = _energy(b)
        results[n] = b[R : R + RESULTS]
    return noted


fly = njit("i8(f8[:, ::1], f8[:, ::1], f8[:, ::1], i8)", error_model="numpy", nogil=True, cache=True)(_fly)

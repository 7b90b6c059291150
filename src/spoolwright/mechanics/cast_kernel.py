"""The cast, step by step, compiled: Dormand and Prince's pair with every change of the motion located.

Nothing here is checked; `cast.py` does that at the door. Everything that `fly` calls stands in this file, because
the compiler's cache does not see a change made in another one. Derivations in docs/derivations/cast.md.
"""

from __future__ import annotations

from math import sqrt
from typing import Any

import numpy as np
from numba import njit

WITHIN: dict[str, Any] = {"error_model": "numpy", "no_cpython_wrapper": True, "no_cfunc_wrapper": True}

GRAVITY = 9.80665
STEPS = 100_000
LONGEST_STEP = 1.0
CREEP = 0.01
SOFT_TOUCH = 1e-3

# what is known of one cast, in the order of its row
(
    MASS, AIR, VX, VY, HEIGHT, WIND, SKIN, LINE, FALL, TOP, FLOOR, BULK, BARE, LENGTH,
    B_CONST, B_VISC, B_QUAD, WINDAGE, MAGNET, BLOCKS, ENGAGE, GUIDE,
    PRESS, LIMIT, HOLD, LIP, RTOL, FIRST, FIXED,
) = range(29)  # fmt: skip
COLUMNS = 29

# what comes out, in the order of its row
(
    DISTANCE, TIME, ARC, OUT, PEAK_SPIN, PEAK_SLACK, E_BRAKE, E_BEARING, E_WINDAGE, E_GUIDE, E_THUMB, E_PAYLOAD,
    E_LINE, E_SLACK, E_JOIN, E_START, E_END, STATUS,
) = range(18)  # fmt: skip
RESULTS = 18
LANDED, OUT_OF_LINE, HUNG, GAVE_UP = range(4)

TIGHT, SLACK, HELD, STOPPED, FREE = range(5)
LANDS, RUNS_OUT, CATCHES, PRESSES, LETS_GO, STOPS, ENGAGES, FREES, LOOSENS, TIGHTENS = range(10)
NOTHING = -1

# rows of the work space: the state now, the state tried, one in between, 7 slopes, 7 rows of powers, the rest
Y, NEW, MID, K, P, NEED, ENERGY, SPARE = 0, 1, 2, 3, 10, 17, 18, 19
WORK_ROWS = 21
NOTED = 9


@njit("f8(f8[::1], i8[::1], f8[::1], f8[::1], f8[::1])", **WITHIN)
def _slope(p: Any, c: Any, y: Any, g: Any, w: Any) -> float:
    """Slopes of the state into g, powers lost into w; gives the torque that the tight line has to bring."""
    mode, vx, vy, s = c[0], y[2], y[3], y[4]
    v = max(sqrt(vx * vx + vy * vy), 1e-12)
    tx, ty = vx / v, vy / v
    rx = vx - p[WIND]
    pull = p[AIR] * sqrt(rx * rx + vy * vy)
    ax = -pull * rx / p[MASS]
    ay = -GRAVITY - pull * vy / p[MASS]
    along = ax * tx + ay * ty
    u = v - p[WIND] * (y[0] / s if s > 1e-9 else tx)
    skin = p[SKIN] * s * u * abs(u)
    lift = p[LINE] * GRAVITY * (y[1] - p[HEIGHT])
    force = p[MASS] * along - skin - lift
    mass = p[MASS] + p[LINE] * s
    rr = max(p[TOP] - p[FALL] * (s + y[6]), 0.5 * p[FLOOR])
    r = sqrt(rr)
    inertia = p[BARE] + p[BULK] * max(rr * rr - p[FLOOR] * p[FLOOR], 0.0)
    lip = spin = df = dw = need = thumb = 0.0
    if mode == TIGHT or mode == HELD:
        spin = v / r
    elif mode == SLACK:
        spin = max(y[5], 0.0)
    brake = p[MAGNET] * spin
    if c[1] == 1:
        brake += p[BLOCKS] * (spin * spin - p[ENGAGE] * p[ENGAGE])
    bearing = p[B_CONST] + spin * (p[B_VISC] + spin * p[B_QUAD])
    air = p[WINDAGE] * spin * sqrt(spin)
    torque = brake + bearing + air + p[GUIDE]
    if mode == TIGHT or mode == HELD:
        hurry = p[FALL] * v * v / (2.0 * rr)
        if mode == TIGHT:
            dv = (force - (inertia * hurry / r + torque) / r) / (mass + inertia / rr)
        else:
            dv = force / mass
        dw = (dv + hurry) / r
        need = inertia * dw + torque
        if mode == HELD:
            thumb = -need
    elif mode == FREE:
        lip = p[LIP]
        dv = (force - lip - p[LINE] * v * v) / mass
        need = lip + p[LINE] * v * v
    else:
        dv = force / mass
        df = r * spin - v
        if mode == SLACK:
            thumb = p[PRESS] if c[2] == 1 else 0.0
            dw = -(torque + thumb) / max(inertia, 1e-300)
    g[0], g[1], g[4], g[5], g[6], g[7] = vx, vy, v, dw, df, lift * v
    g[2], g[3] = ax + (dv - along) * tx, ay + (dv - along) * ty
    w[0], w[1], w[2], w[3] = spin * brake, spin * bearing, spin * air, spin * p[GUIDE] + lip * v
    w[4], w[5], w[6], w[7] = spin * thumb, pull * (rx * vx + vy * vy), skin * v, 0.0
    if mode == FREE:
        w[7] = 0.5 * p[LINE] * v * v * v
    elif mode == SLACK or mode == STOPPED:
        w[7] = 0.5 * p[LINE] * ((r * spin) ** 3 - v * v * v)
    return need


@njit("f8(f8[::1], i8[::1], f8[:, ::1], f8)", **WITHIN)
def _try(p: Any, c: Any, b: Any, h: float) -> float:
    """One step of length h into b[NEW]; gives its error over what is allowed."""
    y, m, n = b[Y], b[MID], b[NEW]
    k1, k2, k3, k4, k5, k6, k7 = b[K], b[K + 1], b[K + 2], b[K + 3], b[K + 4], b[K + 5], b[K + 6]
    need = b[NEED]
    for i in range(8):
        m[i] = y[i] + h * (1 / 5 * k1[i])
    need[1] = _slope(p, c, m, k2, b[P + 1])
    for i in range(8):
        m[i] = y[i] + h * (3 / 40 * k1[i] + 9 / 40 * k2[i])
    need[2] = _slope(p, c, m, k3, b[P + 2])
    for i in range(8):
        m[i] = y[i] + h * (44 / 45 * k1[i] - 56 / 15 * k2[i] + 32 / 9 * k3[i])
    need[3] = _slope(p, c, m, k4, b[P + 3])
    for i in range(8):
        a = 19372 / 6561 * k1[i] - 25360 / 2187 * k2[i] + 64448 / 6561 * k3[i]
        m[i] = y[i] + h * (a - 212 / 729 * k4[i])
    need[4] = _slope(p, c, m, k5, b[P + 4])
    for i in range(8):
        a = 9017 / 3168 * k1[i] - 355 / 33 * k2[i] + 46732 / 5247 * k3[i]
        m[i] = y[i] + h * (a + 49 / 176 * k4[i] - 5103 / 18656 * k5[i])
    need[5] = _slope(p, c, m, k6, b[P + 5])
    for i in range(8):
        a = 35 / 384 * k1[i] + 500 / 1113 * k3[i] + 125 / 192 * k4[i]
        n[i] = y[i] + h * (a - 2187 / 6784 * k5[i] + 11 / 84 * k6[i])
    need[6] = _slope(p, c, n, k7, b[P + 6])
    total = 0.0
    for i in range(8):
        e = 71 / 57600 * k1[i] - 71 / 16695 * k3[i] + 71 / 1920 * k4[i]
        e = h * (e - 17253 / 339200 * k5[i] + 22 / 525 * k6[i] - 1 / 40 * k7[i])
        e = e / (p[RTOL] * (1.0 + max(abs(y[i]), abs(n[i]))))
        total += e * e
    return sqrt(total / 8.0)


@njit("f8(f8[:, ::1], f8, f8, i8)", **WITHIN)
def _at(b: Any, h: float, t: float, i: int) -> Any:
    """Entry i of the state at the share t of the step (Shampine's interpolant of fourth order)."""
    rise = b[NEW, i] - b[Y, i]
    bend = h * b[K, i] - rise
    twist = rise - h * b[K + 6, i] - bend
    d = -12715105075 / 11282082432 * b[K, i] + 87487479700 / 32700410799 * b[K + 2, i]
    d += -10690763975 / 1880347072 * b[K + 3, i] + 701980252875 / 199316789632 * b[K + 4, i]
    d += -1453857185 / 822651844 * b[K + 5, i] + 69997945 / 29380423 * b[K + 6, i]
    return b[Y, i] + t * (rise + (1.0 - t) * (bend + t * (twist + (1.0 - t) * h * d)))


@njit("f8(f8[::1], i8[::1], f8[:, ::1], f8, f8)", **WITHIN)
def _need_at(p: Any, c: Any, b: Any, h: float, t: float) -> Any:
    for i in range(8):
        b[MID, i] = _at(b, h, t, i)
    return _slope(p, c, b[MID], b[SPARE], b[SPARE + 1])


@njit("f8(i8, f8[::1], i8[::1], f8[:, ::1], f8, f8, f8)", **WITHIN)
def _gauge(kind: int, p: Any, c: Any, b: Any, h: float, t: float, hold: float) -> Any:
    """How far off an event is at the share t of a step: above zero before it, below zero after."""
    if kind == LANDS:
        return _at(b, h, t, 1)
    if kind == RUNS_OUT:
        return p[LENGTH] - _at(b, h, t, 4) - _at(b, h, t, 6)
    if kind == CATCHES:
        return _at(b, h, t, 6)
    if kind == PRESSES:
        return p[LIMIT] - _at(b, h, t, 6)
    if kind == LETS_GO:
        return _at(b, h, t, 6) - p[LIMIT]
    if kind == STOPS:
        return _at(b, h, t, 5)
    if kind == ENGAGES:
        return p[ENGAGE] - _at(b, h, t, 5)
    if kind == FREES:
        return _at(b, h, t, 5) - p[ENGAGE]
    if kind == LOOSENS:
        return _need_at(p, c, b, h, t) + (hold if c[0] == HELD else 0.0)
    return -_need_at(p, c, b, h, t)


@njit("f8(i8, f8[::1], i8[::1], f8[:, ::1], f8, f8, f8)", **WITHIN)
def _where(kind: int, p: Any, c: Any, b: Any, h: float, end: float, hold: float) -> float:
    """Share of the step at which an event happens that has happened by `end`: false position, halved if lazy."""
    low, high = 0.0, end
    at_low = _gauge(kind, p, c, b, h, low, hold)
    at_high = _gauge(kind, p, c, b, h, high, hold)
    side = 0
    for _ in range(80):
        if at_low > 0.0 and side < 3 and side > -3:
            t = high - at_high * (high - low) / (at_high - at_low)
        else:
            t = 0.5 * (low + high)
            side = 0
        if high - low < 1e-13 or t <= low or t >= high:
            break
        value = _gauge(kind, p, c, b, h, t, hold)
        if abs(value) <= 1e-15 * abs(at_high):
            return t
        if value > 0.0:
            low, at_low = t, value
            side = side - 1 if side < 0 else -1
            if side < -1:
                at_high *= 0.5
        else:
            high, at_high = t, value
            side = side + 1 if side > 0 else 1
            if side > 1:
                at_low *= 0.5
    return high


@njit("f8(f8[:, ::1], f8, i8, f8)", **WITHIN)
def _turn(b: Any, h: float, i: int, sign: float) -> Any:
    """Share of the step at which entry i turns (sign 1: a top, -1: a bottom), or -1 where it does not."""
    before, after = sign * b[K, i], sign * b[K + 6, i]
    if before <= 0.0 or after >= 0.0:
        return -1.0
    mean = sign * (b[NEW, i] - b[Y, i]) / h
    a = 3.0 * (before + after) - 6.0 * mean
    half = mean * 3.0 - 2.0 * before - after
    root = sqrt(max(half * half - a * before, 0.0))
    t = before / (root - half) if half < 0.0 else -(half + root) / a
    return t if t > 0.0 and t < 1.0 else 0.5


@njit("f8(i8, f8[::1], i8[::1], f8[:, ::1], f8, f8)", **WITHIN)
def _end_of(kind: int, p: Any, c: Any, b: Any, h: float, hold: float) -> float:
    """Share of the step by which an event of this kind has happened; -1 where none has."""
    mode = c[0]
    spins = mode == TIGHT or mode == SLACK or mode == HELD
    if kind == LANDS or kind == RUNS_OUT:
        return 1.0 if _gauge(kind, p, c, b, h, 1.0, hold) < 0.0 else -1.0
    if kind == LOOSENS or kind == TIGHTENS:
        if (mode != TIGHT or kind == TIGHTENS) and mode != HELD:
            return -1.0
        offset = hold if mode == HELD else 0.0
        for j in range(6, 1, -1):
            bad = b[NEED, j] + offset < 0.0 if kind == LOOSENS else b[NEED, j] > 0.0
            if bad:
                t = 1.0 if j > 4 else (8 / 9 if j == 4 else (0.8 if j == 3 else 0.3))
                if _gauge(kind, p, c, b, h, t, hold) < 0.0:
                    return t
        return -1.0
    if kind == ENGAGES or kind == FREES:
        if not spins or p[BLOCKS] <= 0.0 or p[ENGAGE] <= 0.0 or (kind == ENGAGES) != (c[1] == 0):
            return -1.0
        return 1.0 if _gauge(kind, p, c, b, h, 1.0, hold) < 0.0 else -1.0
    if mode != SLACK and (mode != STOPPED or kind != CATCHES):
        return -1.0
    if kind == PRESSES or kind == LETS_GO:
        if p[LIMIT] <= 0.0 or p[PRESS] <= 0.0 or (kind == PRESSES) != (c[2] == 0):
            return -1.0
    if _gauge(kind, p, c, b, h, 1.0, hold) < 0.0:
        return 1.0
    t = _turn(b, h, 6, 1.0 if kind == PRESSES else -1.0) if kind != STOPS else -1.0
    return t if t > 0.0 and _gauge(kind, p, c, b, h, t, hold) < 0.0 else -1.0


@njit("f8(f8[::1], f8[::1])", **WITHIN)
def _radius(p: Any, y: Any) -> float:
    return sqrt(max(p[TOP] - p[FALL] * (y[4] + y[6]), 0.5 * p[FLOOR]))


@njit("f8(f8[::1], f8)", **WITHIN)
def _inertia(p: Any, r: float) -> float:
    return p[BARE] + p[BULK] * max(r**4 - p[FLOOR] * p[FLOOR], 0.0)


@njit("f8(f8[::1], i8[::1], f8[:, ::1])", **WITHIN)
def _settle(p: Any, c: Any, b: Any) -> float:
    """Whether a line without slack is tight, held by a thumb, or going slack; gives what the thumb can hold."""
    c[0], c[2] = TIGHT, 0
    r = _radius(p, b[Y])
    b[Y, 5] = sqrt(b[Y, 2] ** 2 + b[Y, 3] ** 2) / r
    c[1] = 1 if p[ENGAGE] <= 0.0 or b[Y, 5] > p[ENGAGE] else 0
    if _slope(p, c, b[Y], b[K], b[P]) < 0.0:
        c[0] = HELD
        if _slope(p, c, b[Y], b[K], b[P]) + p[HOLD] < 0.0:
            c[0], c[2] = SLACK, 1 if p[LIMIT] <= 0.0 else 0
    return float(p[HOLD])


@njit("f8(f8[::1], f8[:, ::1])", **WITHIN)
def _join(p: Any, b: Any) -> float:
    """The slack is used up: line and spool come to one speed, momentum kept; gives the energy lost."""
    y = b[Y]
    y[6] = 0.0
    r = _radius(p, y)
    v = sqrt(y[2] ** 2 + y[3] ** 2)
    mass, turning = p[MASS] + p[LINE] * y[4], _inertia(p, r) / (r * r)
    gap = v - r * y[5]
    share = turning / (mass + turning)
    y[2] *= 1.0 - share * gap / v
    y[3] *= 1.0 - share * gap / v
    return float(0.5 * mass * share * gap * gap)


@njit("f8(f8[::1], i8[::1], f8[:, ::1], f8[::1])", **WITHIN)
def _touch(p: Any, c: Any, b: Any, out: Any) -> float:
    """The slack has reached what the thumb allows: it presses, or, touched softly, holds it there."""
    c[2] = 1
    y = b[Y]
    r = _radius(p, y)
    v = sqrt(y[2] ** 2 + y[3] ** 2)
    ahead = r * y[5] - v
    if ahead > 0.0 and ahead < SOFT_TOUCH * v:
        c[0] = HELD
        need = _slope(p, c, y, b[SPARE], b[SPARE + 1])
        if need < 0.0 and need + p[PRESS] > 0.0:
            out[E_THUMB] += 0.5 * _inertia(p, r) * (y[5] ** 2 - (v / r) ** 2)
            y[5] = v / r
            return float(p[PRESS])
        c[0] = SLACK
    return 0.0


@njit("f8(i8, f8[::1], i8[::1], f8[:, ::1], f8[::1], f8)", **WITHIN)
def _change(kind: int, p: Any, c: Any, b: Any, out: Any, hold: float) -> float:
    """What an event changes: the mode, the flags, the state; gives what the thumb can hold from now on."""
    if kind == CATCHES:
        out[E_JOIN] += _join(p, b)
        return _settle(p, c, b)
    if kind == PRESSES:
        hold = _touch(p, c, b, out)
    elif kind == LETS_GO:
        c[2] = 0
    elif kind == STOPS:
        c[0], b[Y, 5] = STOPPED, 0.0
    elif kind == ENGAGES or kind == FREES:
        c[1] = 1 if kind == ENGAGES else 0
    elif kind == LOOSENS and c[0] == TIGHT and p[HOLD] > 0.0:
        c[0], hold = HELD, p[HOLD]
    elif kind == LOOSENS:
        c[2] = 1 if c[0] == HELD or p[LIMIT] <= 0.0 else 0
        c[0] = SLACK
    elif kind == TIGHTENS:
        c[0], c[2] = SLACK if b[Y, 6] > 0.0 else TIGHT, 0
    b[NEED, 0] = _slope(p, c, b[Y], b[K], b[P])
    return hold


@njit("UniTuple(f8, 2)(f8[::1], i8[::1], f8[:, ::1], f8[::1])", **WITHIN)
def _begin(p: Any, c: Any, b: Any, out: Any) -> tuple[float, float]:
    """Everything at the moment of release; gives what the thumb can hold, and the first step to try."""
    for i in range(8):
        b[Y, i] = b[ENERGY, i] = 0.0
    for i in range(RESULTS):
        out[i] = 0.0
    b[Y, 1], b[Y, 2], b[Y, 3] = p[HEIGHT], p[VX], p[VY]
    hold = 0.0
    if p[FIXED] > 0.0:
        c[0], c[1], c[2] = FREE, 0, 0
        b[NEED, 0] = _slope(p, c, b[Y], b[K], b[P])
    else:
        hold = _settle(p, c, b)
        b[NEED, 0] = _slope(p, c, b[Y], b[K], b[P])
    v, r = sqrt(p[VX] ** 2 + p[VY] ** 2), _radius(p, b[Y])
    out[PEAK_SPIN] = b[Y, 5]
    out[E_START] = 0.5 * (p[MASS] * v * v + _inertia(p, r) * b[Y, 5] ** 2) + p[MASS] * GRAVITY * p[HEIGHT]
    a = sqrt(b[K, 2] ** 2 + b[K, 3] ** 2)
    return hold, p[FIRST] * v / a


@njit("void(f8[::1], i8[::1], f8[:, ::1], f8[::1], f8)", **WITHIN)
def _collect(p: Any, c: Any, b: Any, out: Any, h: float) -> None:
    """Energies and peaks of a step that counts; then the state is the new one."""
    for i in range(8):
        w = 35 / 384 * b[P, i] + 500 / 1113 * b[P + 2, i] + 125 / 192 * b[P + 3, i]
        b[ENERGY, i] += h * (w - 2187 / 6784 * b[P + 4, i] + 11 / 84 * b[P + 5, i])
    if c[0] != FREE:
        for peak, i in ((PEAK_SPIN, 5), (PEAK_SLACK, 6)):
            top = _turn(b, h, i, 1.0)
            if top > 0.0:
                out[peak] = max(out[peak], _at(b, h, top, i))
            out[peak] = max(out[peak], b[NEW, i])
    for i in range(8):
        b[Y, i] = b[NEW, i]
    b[Y, 6] = max(b[Y, 6], 0.0)
    if c[0] == TIGHT or c[0] == HELD:
        b[Y, 5] = sqrt(b[Y, 2] ** 2 + b[Y, 3] ** 2) / _radius(p, b[Y])


@njit("void(i8, f8, f8[::1], f8[:, ::1], f8[::1])", **WITHIN)
def _finish(status: int, t: float, p: Any, b: Any, out: Any) -> None:
    y, r = b[Y], _radius(p, b[Y])
    if status == LANDED and y[3] < 0.0:
        y[0] -= y[1] * y[2] / y[3]
        y[1] = 0.0
    e = b[ENERGY]
    out[DISTANCE], out[TIME], out[ARC], out[OUT], out[STATUS] = y[0], t, y[4], y[4] + y[6], status
    out[E_BRAKE], out[E_BEARING], out[E_WINDAGE], out[E_GUIDE] = e[0], e[1], e[2], e[3]
    out[E_PAYLOAD], out[E_LINE], out[E_SLACK] = e[5], e[6], e[7]
    out[E_THUMB] += e[4]
    flying = 0.5 * (p[MASS] + p[LINE] * y[4]) * (y[2] ** 2 + y[3] ** 2)
    out[E_END] = flying + 0.5 * _inertia(p, r) * y[5] ** 2 + p[MASS] * GRAVITY * y[1] + y[7]


@njit("b1(f8[::1], i8[::1], f8[:, ::1])", **WITHIN)
def _hangs(p: Any, c: Any, b: Any) -> bool:
    """Whether a payload on a tight line has come to a stand in the air, where friction carries its weight."""
    if (c[0] != TIGHT and c[0] != FREE) or b[Y, 2] ** 2 + b[Y, 3] ** 2 > CREEP * CREEP:
        return False
    least = p[LIP] if c[0] == FREE else (p[B_CONST] + p[GUIDE]) / _radius(p, b[Y])
    creeps = b[K, 2] ** 2 + b[K, 3] ** 2 < (0.05 * GRAVITY) ** 2
    return bool(creeps or least >= p[MASS] * GRAVITY)


@njit("i8(f8[:, ::1], i8, f8, f8[::1], i8[::1], f8[:, ::1], f8[::1])", **WITHIN)
def _note(rec: Any, at: int, t: float, p: Any, c: Any, b: Any, y: Any) -> int:
    """Write one line of a trace where there is room for it; gives how many lines there are."""
    if at < rec.shape[0]:
        need = _slope(p, c, y, b[SPARE], b[SPARE + 1])
        rec[at, 0] = t
        for i in range(7):
            rec[at, i + 1] = y[i]
        rec[at, 8] = need if c[0] == FREE else (need / _radius(p, y) if c[0] == TIGHT else 0.0)
    return at + 1


@njit("i8(f8[:, ::1], i8, f8, f8, i8, f8[::1], i8[::1], f8[:, ::1])", **WITHIN)
def _draw(rec: Any, at: int, t: float, h: float, points: int, p: Any, c: Any, b: Any) -> int:
    """A trace's lines inside a step."""
    for j in range(1, points + 1):
        for i in range(8):
            b[MID, i] = _at(b, h, j / points, i)
        if c[0] == TIGHT or c[0] == HELD:
            b[MID, 5] = sqrt(b[MID, 2] ** 2 + b[MID, 3] ** 2) / _radius(p, b[MID])
        at = _note(rec, at, t + h * j / points, p, c, b, b[MID])
    return at


@njit("Tuple((i8, f8))(f8[::1], i8[::1], f8[:, ::1], f8, f8, i8)", **WITHIN)
def _first(p: Any, c: Any, b: Any, h: float, hold: float, kinds: int) -> tuple[int, float]:
    """Which event comes first in the step, and at which share of it."""
    kind, share = NOTHING, 1.0
    for e in range(kinds):
        end = _end_of(e, p, c, b, h, hold)
        if end > 0.0:
            t = _where(e, p, c, b, h, end, hold)
            if kind == NOTHING or t < share:
                kind, share = e, t
    return kind, share


@njit("i8(f8[::1], f8[::1], f8[:, ::1], f8[:, ::1], i8[::1], i8)", **WITHIN)
def _one(p: Any, out: Any, rec: Any, b: Any, c: Any, points: int) -> int:
    hold, h = _begin(p, c, b, out)
    noted = _note(rec, 0, 0.0, p, c, b, b[Y]) if points > 0 else 0
    t, rush, status = 0.0, 0, GAVE_UP
    if p[HEIGHT] <= 0.0 and p[VY] <= 0.0:
        status = LANDED
    for _ in range(STEPS if status == GAVE_UP else 0):
        error = _try(p, c, b, h)
        quarter = sqrt(sqrt(max(error, 1e-8)))
        factor = min(max(0.9 * sqrt(sqrt(quarter)) / quarter, 0.2), 5.0)
        if not error <= 1.0:
            h *= factor if error > 1.0 else 0.2
            continue
        # after some events in no time at all, one short step is taken without looking for more of them
        kind, share = _first(p, c, b, h, hold, 2 if rush > 4 else TIGHTENS + 1)
        taken = h
        if kind != NOTHING and share < 1.0:
            taken = share * h
            _try(p, c, b, taken)
        if points > 0:
            noted = _draw(rec, noted, t, taken, points, p, c, b)
        _collect(p, c, b, out, taken)
        t += taken
        if kind == LANDS or kind == RUNS_OUT:
            status = kind
            break
        rush = rush + 1 if kind != NOTHING and taken < 1e-9 else 0
        if kind == NOTHING:
            b[NEED, 0] = b[NEED, 6]
            for i in range(8):
                b[K, i], b[P, i] = b[K + 6, i], b[P + 6, i]
        else:
            hold = _change(kind, p, c, b, out, hold)
            if points > 0:
                noted = _note(rec, noted, t, p, c, b, b[Y])
        if _hangs(p, c, b):
            status = HUNG
            break
        h = min(h * factor, LONGEST_STEP if rush <= 4 else 1e-3)
    _finish(status, t, p, b, out)
    return noted


@njit("i8(f8[:, ::1], f8[:, ::1], f8[:, ::1], i8)", error_model="numpy", nogil=True, cache=True)
def fly(cases: Any, results: Any, trace: Any, points: int) -> int:
    """Fly every cast of a table, one after another, without holding Python's lock."""
    work, flags = np.zeros((WORK_ROWS, 8)), np.zeros(3, np.int64)
    noted = 0
    for i in range(cases.shape[0]):
        noted = _one(cases[i], results[i], trace, work, flags, points)
    return noted

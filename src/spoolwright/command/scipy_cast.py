"""The cast once more, by SciPy's general solvers: `spoolwright speed` compares with it, tests check by it.

The same equations as mechanics/cast.py, written down a second time from docs/derivations/cast.md, one phase
(line tight, held, slack, spool stopped) after another, each ended by an event.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from math import cos, hypot, inf, pi, sin, sqrt
from typing import Any

GRAVITY = 9.80665
LONGEST = 1000.0
SOFT_TOUCH, NO_TOUCH = 1e-3, -1e-9
MOST_PHASES = 500
ROUNDING = 1e-12  # of a metre of slack: a phase that begins at its own end would end there again

State = list[float]


@dataclass
class Flight:
    """One cast on its way: what it is made of, and which phase it is in."""

    given: Mapping[str, float]
    variant: str = "multiplier"
    phase: str = "tight"
    braked: bool = True
    pressed: bool = False
    hold: float = 0.0
    evaluations: int = 0
    joins: int = 0
    joined: float = 0.0
    peak_slack: float = 0.0
    made: dict[str, float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        a = self.given
        per_metre = a["line_diameter"] ** 2 / (4 * a["packing"] * a["spool_width"])
        top, arbor = a["full_radius"] ** 2, a["arbor_radius"] ** 2
        fits = (top - arbor) / per_metre if per_metre > 0 else inf
        self.made = {
            "line": a["line_density"] * pi * a["line_diameter"] ** 2 / 4,
            "per_metre": per_metre,
            "bottom": max(arbor, top - per_metre * a["line_length"]),
            "length": min(a["line_length"], fits),
            "thumb": a["thumb_force"] * a["full_radius"],
        }

    # ---- the spool ----

    def radius(self, out: float) -> float:
        squared = self.given["full_radius"] ** 2 - self.made["per_metre"] * out
        return sqrt(max(squared, self.made["bottom"] / 2))

    def inertia(self, r: float) -> float:
        """Bare spool, and a ring of line from the lowest layer to the radius."""
        a = self.given
        ring = pi / 2 * a["line_density"] * a["packing"] * a["spool_width"]
        return a["spool_inertia"] + ring * max(r**4 - self.made["bottom"] ** 2, 0.0)

    def torque(self, w: float) -> float:
        a = self.given
        bearing = a["bearing_constant"] + a["bearing_viscous"] * w + a["bearing_quadratic"] * w * w
        blocks = a["brake_centrifugal"] * (w * w - a["brake_engages"] ** 2) if self.braked else 0.0
        air = a["windage"] * w * sqrt(w)
        return bearing + air + a["brake_magnetic"] * w + blocks + a["level_wind_torque"]

    # ---- forces on what flies ----

    def flying(self, y: State) -> tuple[float, float, float, float, float, float]:
        """Speed, direction, mass, force along the path, and the payload's own acceleration across it."""
        a = self.given
        x, height, vx, vy, s = y[:5]
        v = max(hypot(vx, vy), 1e-12)
        tx, ty = vx / v, vy / v
        against = hypot(vx - a["wind"], vy)
        drag = 0.5 * a["air_density"] * a["payload_drag_area"] * against
        fx, fy = -drag * (vx - a["wind"]), -a["payload_mass"] * GRAVITY - drag * vy
        pull = fx * tx + fy * ty
        slip = v - a["wind"] * (x / s if s > 1e-9 else tx)
        wetted = pi * a["line_diameter"] * s
        skin = 0.5 * a["air_density"] * a["line_drag"] * wetted * slip * abs(slip)
        hanging = self.made["line"] * GRAVITY * (height - a["release_height"])
        across = (fy * tx - fx * ty) / a["payload_mass"]
        mass = a["payload_mass"] + self.made["line"] * s
        return v, tx, ty, mass, pull - skin - hanging, across

    def wanted(self, y: State) -> tuple[float, float, float]:
        """Slowing, spool acceleration and the line's torque if it is to stay tight and bear nothing."""
        v, _, _, mass, force, _ = self.flying(y)
        out = y[4] + (y[6] if len(y) > 5 else 0.0)
        r = self.radius(out)
        dv = force / mass
        dw = dv / r + self.made["per_metre"] * v * v / (2 * r**3)
        return dv, dw, self.inertia(r) * dw + self.torque(v / r)

    def slope(self, t: float, y: State) -> State:
        self.evaluations += 1
        v, tx, ty, mass, force, across = self.flying(y)
        spool: State = []
        if self.phase == "tight":
            r = self.radius(y[4])
            turning = self.inertia(r)
            hurry = turning * self.made["per_metre"] * v * v / (2 * r**4)
            dv = (force - hurry - self.torque(v / r) / r) / (mass + turning / r**2)
        elif self.phase == "free":
            dv = (force - self.given["lip_friction"] - self.made["line"] * v * v) / mass
        else:
            dv = force / mass
            spool = self._loose(y, v)
        return [y[2], y[3], dv * tx - across * ty, dv * ty + across * tx, v, *spool]

    def _loose(self, y: State, v: float) -> State:
        r = self.radius(y[4] + y[6])
        if self.phase == "held":
            return [self.wanted(y)[1], 0.0]
        if self.phase == "stopped":
            return [0.0, -v]
        w = max(y[5], 0.0)
        thumb = self.made["thumb"] if self.pressed else 0.0
        return [-(self.torque(w) + thumb) / self.inertia(r), r * w - v]

    # ---- what ends a phase ----

    def events(self) -> dict[str, Callable[[float, State], float]]:
        a, length = self.given, self.made["length"]
        loose = self.phase in ("slack", "stopped", "held")
        found: dict[str, Callable[[float, State], float]] = {
            "lands": lambda t, y: y[1],
            "runs out": lambda t, y: length - y[4] - (y[6] if loose else 0.0),
        }
        if self.phase in ("slack", "stopped"):
            found["catches"] = lambda t, y: y[6] + ROUNDING
        if self.phase == "slack":
            found["stops"] = lambda t, y: y[5]
            if 0 < a["slack_limit"] < inf and a["thumb_force"] > 0:
                sign = -1.0 if self.pressed else 1.0
                found["thumb"] = lambda t, y: sign * (a["slack_limit"] - y[6]) + ROUNDING
        if self.phase == "tight":
            found["loosens"] = lambda t, y: self.wanted(y)[2]
        if self.phase == "held":
            found["tightens"] = lambda t, y: -self.wanted(y)[2]
            found["loosens"] = lambda t, y: self.wanted(y)[2] + self.hold
        if self.phase in ("tight", "held", "slack") and a["brake_centrifugal"] > 0 and a["brake_engages"] > 0:
            turn = 1.0 if self.braked else -1.0
            found["brake"] = lambda t, y: turn * (self._spin(y) - a["brake_engages"])
        for event in found.values():
            event.terminal, event.direction = True, -1.0  # type: ignore[attr-defined]
        return found

    def _spin(self, y: State) -> float:
        return y[5] if self.phase == "slack" else hypot(y[2], y[3]) / self.radius(y[4])

    # ---- what an event changes ----

    def settle(self, y: State) -> State:
        """The phase of a line that has no slack."""
        a = self.given
        w = hypot(y[2], y[3]) / self.radius(y[4])
        self.braked = a["brake_engages"] <= 0 or w > a["brake_engages"]
        self.pressed = False
        self.hold = inf if self.variant == "ideal thumb" else 0.0
        if self.variant == "multiplier" and a["slack_limit"] == 0:
            self.hold = self.made["thumb"]
        self.phase = "tight"
        need = self.wanted(y[:5])[2]
        if need >= 0:
            return y[:5]
        self.phase = "held" if need + self.hold >= 0 else "slack"
        self.pressed = self.phase == "slack" and a["slack_limit"] == 0
        return [*y[:5], w, 0.0]

    def change(self, event: str, y: State) -> State:
        if event == "catches":
            return self.settle(self._join(y))
        if event == "thumb":
            self.pressed = not self.pressed
            return self._touch(y)
        if event == "stops":
            self.phase = "stopped"
            return [*y[:5], 0.0, y[6]]
        if event == "brake":
            self.braked = not self.braked
            return y
        w = hypot(y[2], y[3]) / self.radius(y[4] + (y[6] if len(y) > 5 else 0.0))
        slack = y[6] if len(y) > 5 else 0.0
        if event == "tightens":
            self.phase, self.pressed = ("slack", False) if slack > 0 else ("tight", False)
            return [*y[:5], w, slack] if slack > 0 else y[:5]
        if self.phase == "tight" and self.hold > 0:
            self.phase = "held"
        else:
            self.pressed = self.phase == "held" or self.given["slack_limit"] == 0
            self.phase = "slack"
        return [*y[:5], w, slack]

    def _join(self, y: State) -> State:
        r, v = self.radius(y[4]), hypot(y[2], y[3])
        mass = self.given["payload_mass"] + self.made["line"] * y[4]
        turning = self.inertia(r)
        after = (mass * v + turning * y[5] / r) / (mass + turning / r**2)
        before = mass * v * v + turning * y[5] ** 2
        self.joins += 1
        self.joined += 0.5 * (before - mass * after**2 - turning * (after / r) ** 2)
        return [y[0], y[1], y[2] * after / v, y[3] * after / v, y[4]]

    def _touch(self, y: State) -> State:
        r, v = self.radius(y[4] + y[6]), hypot(y[2], y[3])
        ahead = r * y[5] - v
        if NO_TOUCH * v < ahead < SOFT_TOUCH * v and -self.made["thumb"] < self.wanted(y)[2] < 0:
            self.phase, self.hold = "held", self.made["thumb"]
            return [*y[:5], v / r, y[6]]
        return y


def fly(
    given: Mapping[str, float],
    variant: str = "multiplier",
    *,
    method: str = "RK45",
    rtol: float = 1e-6,
    **more: Any,
) -> dict[str, float]:
    """One cast by `solve_ivp`: where it lands and when, and what it took."""
    from scipy.integrate import solve_ivp

    flight = Flight(given, variant)
    speed, angle = given["release_speed"], given["release_angle"]
    y: State = [0.0, given["release_height"], speed * cos(angle), speed * sin(angle), 0.0]
    if variant == "fixed spool":
        flight.phase = "free"
    else:
        y = flight.settle(y)
    t, event, phases = 0.0, "", 0
    while event not in ("lands", "runs out") and phases < MOST_PHASES:
        watched = flight.events()
        found = solve_ivp(
            flight.slope, (t, t + LONGEST), y, method=method, rtol=rtol, events=list(watched.values()), **more
        )
        t, y, phases = float(found.t[-1]), [float(value) for value in found.y[:, -1]], phases + 1
        if len(y) > 5:
            flight.peak_slack = max(flight.peak_slack, float(found.y[6].max()))
        happened = [name for name, times in zip(watched, found.t_events, strict=True) if len(times)]
        if not happened:
            raise ArithmeticError(f"no end of the phase {flight.phase}: {found.message}")
        event = happened[0]
        if event not in ("lands", "runs out"):
            y = flight.change(event, y)
    slack = y[6] if len(y) > 5 else 0.0
    return {
        "distance": y[0],
        "flight_time": t,
        "arc": y[4],
        "line_out": y[4] + slack,
        "peak_slack": flight.peak_slack,
        "joins": flight.joins,
        "join_energy": flight.joined,
        "landed": float(event == "lands"),
        "phases": phases,
        "evaluations": flight.evaluations,
    }

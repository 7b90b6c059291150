"""Heat into a thick body, through a stack and out of a lump: worked examples, closed forms, other solvers."""

from __future__ import annotations

from math import pi, sqrt

import numpy as np
import pytest
from scipy.integrate import quad, solve_ivp

from spoolwright.mechanics import heat
from spoolwright.mechanics.heat import Body, Face, Layer, Link, Run, constant_run, stack_temperatures
from tests.reference.published import Published, each

NOTEBOOK = "opened: notebook of the textbook companion project, printed output"


def cooled(
    size: float, density: float, specific_heat: float, loss: float, hot: float, air: float, wait: float
) -> heat.StackTemperatures:
    """A ball as two layers of very good conductors that lose heat to the air; no run. Given in deg C."""
    volume, skin = pi * size**3 / 6, pi * size**2
    half = Layer(0.01, 1e6, density, specific_heat, volume / 0.02, loss * skin / 2)
    still = constant_run(1e-3, 0.0, 0.0)
    room, start = air + 273.15, hot + 273.15
    return stack_temperatures(
        [half, half], [Face(0, 1.0)], still, surroundings=room, start=start, wait=wait, cells=1, steps=1000
    )


def lump_rate(size: float, density: float, specific_heat: float, loss: float) -> float:
    """1 / time constant, read off a ball that was heated and is left to cool."""
    told = cooled(size, density, specific_heat, loss, 120.0, 20.0, 0.5)
    ratio = (told.layers[0, -1] - 293.15) / 100.0
    return float(-np.log(ratio) / told.time[-1])


def one_stop(energy: float, mass: float, specific_heat: float) -> float:
    """Rise of a lump that keeps all of the heat, long after it went in."""
    half = Layer(0.01, 1e5, mass / 0.02, specific_heat, 1.0)
    told = stack_temperatures(
        [half, half], [Face(0, 1.0)], constant_run(10.0, 1.0, energy / 10.0), wait=100.0
    )
    return float(told.layers[0, -1] - heat.ROOM)


CHECKS = [
    Published(
        "surface of a steel slab after 30 s of 3.2e5 W/m2, deg C",
        lambda: 35 + heat.semi_infinite_rise(3.2e5, 30.0, 45.0, 45.0 / 1.4e-5, 1.0),
        199.4,
        0.06,
        "Holman, Heat Transfer, ex. 4.2 (k 45, alpha 1.4e-5, from 35 deg C)",
        "opened: notebook of the textbook companion project, printed output",
    ),
    Published(
        "surface of a copper slab after 120 s of 3e5 W/m2, deg C",
        lambda: 20 + heat.semi_infinite_rise(3e5, 120.0, 401.0, 401.0 / 117e-6, 1.0),
        120.0,
        0.1,
        "Incropera et al., ch. 5 finite-difference example (k 401, alpha 117e-6, from 20 deg C)",
        "from memory; the companion notebook prints 25.6 through a slip of its own",
    ),
    Published(
        "steel slab 25 mm below its surface after 30 s of 3.2e5 W/m2, deg C",
        lambda: 35 + heat.semi_infinite_rise(3.2e5, 30.0, 45.0, 45.0 / 1.4e-5, 1.0, depth=0.025),
        79.3,
        0.05,
        "Holman, Heat Transfer, ex. 4.2",
        NOTEBOOK,
    ),
    Published(
        "copper slab 150 mm below its surface after 120 s of 3e5 W/m2, deg C",
        lambda: 20 + heat.semi_infinite_rise(3e5, 120.0, 401.0, 401.0 / 117e-6, 1.0, depth=0.15),
        45.4,
        0.05,
        "Incropera et al., ch. 5 finite-difference example, part (c)",
        NOTEBOOK,
    ),
    Published(
        "steel ball of 50 mm from 450 to 150 deg C in air of 100 deg C, s",
        lambda: cooled(0.05, 7800.0, 460.0, 10.0, 450.0, 100.0, 9000.0).wait_until_below(150.0 + 273.15),
        5818.0,
        1.0,
        "Holman, Heat Transfer, ex. 4.1",
        NOTEBOOK,
    ),
    Published(
        "rate at which a 1 mm bead follows the gas round it, 1/s",
        lambda: lump_rate(0.001, 8500.0, 320.0, 210.0),
        0.463235,
        2e-6,  # the steps' own error; the printed rounding is 5e-7
        "Cengel, Heat and Mass Transfer, ex. 4.1",
        NOTEBOOK,
    ),
    Published(
        "brakes of a 10 t truck that stops from 75 m of fall, K",
        lambda: one_stop(10_000 * 9.80 * 75, 100.0, 800.0),
        91.9,
        0.2,
        "OpenStax College Physics, ex. 14.2",
        "opened: code file of the example in a textbook companion project",
    ),
    Published(
        "two flywheels coupled at 1250 rpm, J",
        lambda: heat.slip_energy(800 * 0.2**2, 1300 * 0.18**2, 1250 * 2 * pi / 60),
        156000,
        500,
        "Khurmi & Gupta, Theory of Machines, ex. 10.27",
        NOTEBOOK,
    ),
    Published(
        "cone clutch that starts 0.4 kg m2 to 1440 rpm, J",
        lambda: heat.slip_energy(0.4, float("inf"), 1440 * 2 * pi / 60),
        4548,
        1,
        "Jindal, Machine Design, ex. 22-8",
        NOTEBOOK,
    ),
    Published(
        "steel plate of 6 mm may be taken as thick, s",
        lambda: heat.thick_until(3e-3, 1.5e-5, 1.0, 1.0),
        0.0453,
        5e-5,
        "Lienhard, A Heat Transfer Textbook, ex. 5.4",
        NOTEBOOK,
    ),
]


@each(CHECKS)
def test_printed(check: Published) -> None:
    check.agrees()


def test_the_notebook_with_the_wrong_time_is_not_followed() -> None:
    assert 20 + heat.semi_infinite_rise(3e5, 120.0, 401.0, 401.0 / 117e-6, 1.0) > 100


def test_rivals_closed_form_and_pulses_added_up() -> None:
    """A pulse q dt leaves q dt / sqrt(pi k rho c (t - s)) at the surface (Carslaw & Jaeger, from memory)."""
    q, t, k, rho, c = 2e5, 1.7, 17.0, 7900.0, 460.0
    added = quad(lambda x: 2 * q / sqrt(pi * k * rho * c), 0, sqrt(t))[0]  # s = t - x^2
    assert heat.semi_infinite_rise(q, t, k, rho, c) == pytest.approx(added, rel=1e-12)


def test_rivals_closed_form_and_small_steps() -> None:
    """Explicit steps on a bar long enough not to feel its far end; the heat put in is in the bar."""
    q, k, rho, c, end = 2e5, 17.0, 7900.0, 460.0, 0.5
    dx = 2e-5
    alpha = k / (rho * c)
    dt = 0.4 * dx**2 / alpha
    bar = np.zeros(int(6 * sqrt(alpha * end) / dx))
    steps = int(round(end / dt))
    for _ in range(steps):
        flow = -k * np.diff(bar) / dx
        bar[0] += dt / (rho * c * dx / 2) * (q - flow[0])
        bar[1:-1] += dt / (rho * c * dx) * (flow[:-1] - flow[1:])
    assert heat.semi_infinite_rise(q, steps * dt, k, rho, c) == pytest.approx(bar[0], rel=5e-3)


def test_twice_the_time_is_root_two_the_rise() -> None:
    """The surface follows the square root of time (any heat transfer text)."""
    rise = heat.semi_infinite_rise(1e5, np.array([0.0, 1.0, 2.0, 4.0]), 17.0, 7900.0, 460.0)
    assert rise / rise[1] == pytest.approx(np.sqrt([0.0, 1.0, 2.0, 4.0]))  # type: ignore[index]


# ---- the whole stack


def plates(count: int, thickness: float = 0.02) -> list[Layer]:
    return [Layer(thickness, 17.0, 7900.0, 460.0, 4e-4)] * count


def test_a_short_slip_between_thick_plates_is_the_semi_infinite_one() -> None:
    """Source: Carslaw & Jaeger 2.9, from memory: each of two like bodies takes half of the heat."""
    told = stack_temperatures(plates(2, 0.012), [Face(0, 1.0)], constant_run(2.0, 4.0, 50.0), cells=40)
    for at in (0.5, 1.0, 2.0):
        rise = heat.semi_infinite_rise(100.0 / 4e-4, at, 17.0, 7900.0, 460.0)
        assert np.interp(at, told.time, told.faces[0]) - heat.ROOM == pytest.approx(rise, rel=4e-3)


def test_unlike_plates_share_the_heat_by_their_effusivities() -> None:
    """Source: Carslaw & Jaeger 2.15 (two bodies in contact, sqrt(k rho c)), from memory."""
    steel, brass = (17.0, 7900.0, 460.0), (120.0, 8400.0, 380.0)
    pair = [Layer(far, *values, 4e-4) for far, values in ((0.01, steel), (0.03, brass))]
    told = stack_temperatures(pair, [Face(0, 1.0)], constant_run(1.0, 4.0, 50.0), cells=40)
    grip = [sqrt(k * rho * c) for k, rho, c in (steel, brass)]
    taken = np.array([(told.layers[n, -1] - heat.ROOM) * pair[n].heat_capacity for n in (0, 1)])
    assert taken / taken.sum() == pytest.approx(np.array(grip) / sum(grip), rel=4e-3)
    assert told.after_run - heat.ROOM == pytest.approx(
        2 * (200.0 / 4e-4) / sum(grip) * sqrt(1.0 / pi), rel=4e-3
    )


def test_long_after_the_run_it_is_one_adiabatic_lump() -> None:
    """Source: heat is mass times specific heat times rise, definition."""
    layers = [Layer(2.5e-3, 118.0, 8470.0, 377.0, 9e-4), Layer(0.8e-3, 0.3, 1300.0, 1500.0, 4.5e-4)] * 2
    told = stack_temperatures(layers, [Face(0, 0.6), Face(2, 0.4)], constant_run(25.0, 4.0, 20.0), wait=900.0)
    rise = 2000.0 / sum(float(layer.heat_capacity) for layer in layers)
    assert told.layers[:, -1] - heat.ROOM == pytest.approx(rise, rel=1e-6)


def method_of_lines(layers: list[Layer], power: float, end: float, nodes: int) -> np.ndarray:
    """Temperatures at the faces between layers by another way: nodes on the faces, SciPy's BDF in time."""
    step = [layer.thickness / nodes for layer in layers]
    count = nodes * len(layers) + 1
    capacity, gain = np.zeros(count), np.zeros((count, count))
    for i in range(count - 1):
        layer, dx = layers[i // nodes], step[i // nodes]
        half = layer.area * dx / 2 * layer.density * layer.specific_heat
        capacity[i] += half
        capacity[i + 1] += half
        flow = layer.conductivity * layer.area / dx
        gain[i, [i, i + 1]] += (-flow, flow)
        gain[i + 1, [i, i + 1]] += (flow, -flow)
    born = np.zeros(count)
    inner = np.arange(nodes, count - 1, nodes)
    born[inner] = power / len(inner)
    rate = gain / capacity[:, np.newaxis]
    found = solve_ivp(
        lambda t, y: rate @ y + born / capacity, (0.0, end), np.zeros(count), "BDF",
        jac=rate, rtol=1e-7, atol=1e-7,
    )  # fmt: skip
    return np.asarray(found.y[inner, -1])


def test_in_between_it_is_what_a_method_of_lines_gives() -> None:
    """Source: SciPy solve_ivp (BDF) on a mesh of another kind, run here."""
    disc = Layer(0.7e-3, 15.0, 7950.0, 500.0, 4.5e-4)
    soft = Layer(0.8e-3, 0.8, 1600.0, 1100.0, 4.2e-4)
    layers = [Layer(2.5e-3, 118.0, 8470.0, 377.0, 9e-4), soft, disc, soft, disc]
    told = stack_temperatures(
        layers, [Face(n, 0.25) for n in range(4)], constant_run(4.0, 4.0, 20.0), cells=12, steps=200
    )
    other = method_of_lines(layers, 80.0, 4.0, 24)
    assert told.faces[:, told.run_end] - heat.ROOM == pytest.approx(other, rel=1e-3)


def slab(cells: int, steps: int, fade: float = 0.0) -> float:
    """Rise of the face of two slabs whose slip swells and ebbs, at one moment."""
    times = np.linspace(0.0, 2.0, steps + 1)
    run = Run(times, np.sin(pi * times / 2) ** 2, np.full(steps + 1, 50.0))
    told = stack_temperatures(plates(2, 0.01), [Face(0, 1.0, fade)], run, cells=cells, steps=steps)
    return float(told.after_run - heat.ROOM)


def test_the_error_falls_with_the_square_of_the_cells() -> None:
    """Finite volumes with series conductances are of second order (Patankar, from memory)."""
    best = slab(64, 40)
    errors = [abs(slab(cells, 40) - best) for cells in (4, 8, 16)]
    orders = np.log2(np.array(errors[:-1]) / errors[1:])
    assert np.all(orders > 1.8)


@pytest.mark.parametrize("fade", [0.0, 4e-3])
def test_the_error_falls_with_the_square_of_the_step(fade: float) -> None:
    """A two-stage SDIRK of order two (Alexander 1977, from memory), fading friction or not."""
    best = slab(4, 640, fade)
    errors = [abs(slab(4, steps, fade) - best) for steps in (20, 40, 80)]
    orders = np.log2(np.array(errors[:-1]) / errors[1:])
    assert np.all((orders > 1.7) & (orders < 2.6)), orders


@pytest.mark.parametrize("fade", [0.0, 2e-3])
def test_the_balance_of_energy_closes(fade: float) -> None:
    """Source: conservation of energy. Heat in is heat kept and heat lost, however coarse the steps.

    In is the run's own pull times way where nothing fades, and lost is what the temperatures at the rims say.
    """
    disc = Layer(0.7e-3, 15.0, 7950.0, 500.0, 4.5e-4, 0.02)
    soft = Layer(0.8e-3, 0.8, 1600.0, 1100.0, 4.2e-4)
    layers, bodies = [disc, soft, disc, soft, disc], [Body(20.0, 0.3)]
    run = Run(
        np.array([0.0, 3.0, 8.0, 25.0]), np.array([0.0, 6.0, 3.0, 1.0]), np.array([10.0, 20.0, 20.0, 30.0])
    )
    for cells, steps in ((1, 3), (3, 200)):
        told = stack_temperatures(
            layers, [Face(0, 0.5, fade), Face(2, 0.5, fade)], run,
            bodies=bodies, links=[Link(2, 5, 0.1)], wait=300.0, cells=cells, steps=steps,
        )  # fmt: skip
        assert told.heat_lost + told.heat_stored == pytest.approx(told.heat_in, rel=1e-9)
        if not fade:
            assert told.heat_in == pytest.approx(run.energy, rel=1e-9)
    rims = 0.02 * told.layers[[0, 2, 4]].sum(axis=0) + 0.3 * told.bodies[0] - (0.06 + 0.3) * heat.ROOM
    assert np.trapezoid(rims, told.time) == pytest.approx(told.heat_lost, rel=2e-3)

"""Measurement to gravitation: motions integrated step by step, bodies cut into parts, conservation laws solved."""

import math
from math import cos, pi, sin, sqrt, tan

import numpy
from scipy import constants

from routes import area, g_n, motion, period, root, slope, together, until, vector
from rows import C

G = constants.G
N_A = constants.N_A


def fall(t, y):
    """Free fall of (height, velocity)."""
    return [y[1], -g_n]


def throw(t, y):
    """Free fall of (x, y, v_x, v_y)."""
    return [y[2], y[3], 0.0, -g_n]


# Measurement
C("density", "m = 54.0 g; V = 20.0 cm^3", "ρ [kg/m^3]", "definition", lambda m, V: m / V)
C("foil_thickness", "m = 1.35 g; ρ = 2700 kg/m^3; A = 310 cm^2", "d [µm]", "volume over area", lambda m, ρ, A: m / ρ / A)
C("circumference", "s = 44.0 cm", "r [cm]", "length of the circle integrated", lambda s: s / area(lambda φ: 1.0, 0, 2 * pi))
C("circle_area", "r = 0.250 mm", "A [mm^2]", "strips integrated", lambda r: 4 * r**2 * area(lambda φ: cos(φ) ** 2, 0, pi / 2))
C("sphere_area", "r = 6.50 cm", "A [m^2]", "rings integrated", lambda r: area(lambda θ: 2 * pi * r**2 * sin(θ), 0, pi))
C("sphere_volume", "V = 0.0500 cm^3", "r [mm]", "discs integrated, then a root",
  lambda V: root(lambda r: area(lambda x: pi * (r**2 - x**2), -r, r) - V, 1e-4, 1e-1))
C("cylinder_volume", "V = 33.3 cm^3; r = 1.20 cm", "l [cm]", "rings integrated", lambda V, r: V / area(lambda x: 2 * pi * x, 0, r))
C("amount_of_substance", "m = 2.50 g; M = 63.546e-3 kg/mol", "n [mol]", "definition", lambda m, M: m / M)
C("particle_number", "N = 3.011e22", "n [mol]", "definition of the mole", lambda N: N / N_A)
C("counting_uncertainty", "N = 1850", "u_N", "width of the Poisson distribution (scipy.stats)",
  lambda N: __import__("scipy.stats").stats.poisson(N).std())

# Kinematics
C("mean_velocity_displacement", "s = 36.0 m; v_0 = 4.0 m/s; v = 14.0 m/s", "t [s]", "the motion integrated",
  lambda s, v_0, v: root(lambda t: motion(lambda x, y: [v_0 + (v - v_0) * x / t], [0.0], t)[0] - s, 0.1, 100))
C("fall_speed", "v = 12.0 m/s", "s [m]", "the motion integrated", lambda v: -motion(fall, [0.0, 0.0], v / g_n)[0])
C("throw_height", "v_0 = 8.5 m/s", "y_m [m]", "the motion integrated to the turning point",
  lambda v_0: motion(fall, [0.0, v_0], until(fall, [0.0, v_0], 10, lambda y: y[1]))[0])
C("flight_time", "v_0 = 18.0 m/s; θ = 40.0 °", "t [s]", "the motion integrated to the ground",
  lambda v_0, θ: until(throw, [0, 0, v_0 * cos(θ), v_0 * sin(θ)], 10, lambda y: y[1]))
C("trajectory", "x = 6.00 m; θ = 52.0 °; v_0 = 9.20 m/s", "y [m]", "the motion integrated",
  lambda x, θ, v_0: motion(throw, [0, 0, v_0 * cos(θ), v_0 * sin(θ)], x / (v_0 * cos(θ)))[1])
C("horizontal_throw", "v_0 = 1.80 m/s; y = 0.920 m", "x [m]", "the motion integrated to the floor",
  lambda v_0, y: motion(throw, [0, y, v_0, 0], until(throw, [0, y, v_0, 0], 5, lambda s: s[1]))[0])
C("relative_velocity", "v = 1.10 m/s; v_1 = 2.60 m/s", "v_2 [m/s]", "difference of velocities", lambda v, v_1: v - v_1)
C("stopping_distance", "v = 14.0 m/s; t_r = 0.80 s; a = 6.5 m/s^2", "s [m]", "the motion integrated",
  lambda v, t_r, a: v * t_r + motion(lambda t, y: [y[1], -a], [0.0, v], v / a)[0])

# Forces
C("slip_angle", "μ_s = 0.45", "θ [°]", "balance along the slope solved", lambda μ_s: root(lambda θ: sin(θ) - μ_s * cos(θ), 0, 1.5))
C("springs_series", "k_1 = 25.0 N/m; k_2 = 40.0 N/m", "k [N/m]", "stretches under 1 N added", lambda k_1, k_2: 1 / (1 / k_1 + 1 / k_2))
C("springs_parallel", "k = 65.0 N/m; k_1 = 25.0 N/m", "k_2 [N/m]", "pulls at a stretch of 1 m added", lambda k, k_1: k - k_1)
C("incline_force", "m = 12.0 kg; θ = 20.0 °", "F_p [N]", "weight dotted with the direction of the slope",
  lambda m, θ: float(numpy.dot(vector(0, -m * g_n), vector(-cos(θ), -sin(θ)))))
C("incline_normal", "F_n = 551 N; θ = 25.0 °", "m [kg]", "weight dotted with the normal of the slope",
  lambda F_n, θ: F_n / float(numpy.dot(vector(0, -g_n), -vector(-sin(θ), cos(θ)))))
C("hanging_angle", "F = 4.30 mN; m = 5.00 g", "θ [°]", "direction of the sum of the forces", lambda F, m: math.atan2(F, m * g_n))
C("force_component", "F_x = 85.0 N; F = 110 N", "θ [°]", "root of the projection", lambda F_x, F: root(lambda θ: F * cos(θ) - F_x, 0, 1.57))
C("drag", "F_d = 320 N; ρ = 1.21 kg/m^3; C_d = 0.30; A = 2.10 m^2", "v [m/s]", "root of the drag",
  lambda F_d, ρ, C_d, A: root(lambda v: ρ * v * abs(v) * C_d * A / 2 - F_d, 0, 1000))
C("stokes_drag", "F_d = 2.0e-9 N; η = 1.00e-3 Pa s; r = 25 µm", "v [mm/s]", "two thirds of the drag from shear, one third from pressure, each integrated over the ball",
  lambda F_d, η, r: F_d / (area(lambda θ: 1.5 * η / r * sin(θ) ** 2 * 2 * pi * r**2 * sin(θ), 0, pi)
                           + area(lambda θ: 1.5 * η / r * cos(θ) ** 2 * 2 * pi * r**2 * sin(θ), 0, pi)))
C("torque", "τ = 18.0 N m; r = 0.250 m; θ = 70.0 °", "F [N]", "cross product",
  lambda τ, r, θ: τ / float(numpy.linalg.norm(numpy.cross([r, 0, 0], [cos(θ), sin(θ), 0]))))
C("lever", "F_1 = 90.0 N; r_1 = 1.20 m; F_2 = 240 N", "r_2 [m]", "sum of the torques is zero",
  lambda F_1, r_1, F_2: root(lambda r_2: F_1 * r_1 - F_2 * r_2, 0, 10))
C("stress", "σ = 1.5e8 Pa; F = 42.0 N", "A [mm^2]", "definition", lambda σ, F: F / σ)
C("strain", "ε = 0.0015; l_0 = 2.400 m", "l [m]", "definition", lambda ε, l_0: l_0 + ε * l_0)

# Work and energy
C("work", "F = 85.0 N; s = 24.0 m; θ = 35.0 °", "W [J]", "dot product",
  lambda F, s, θ: float(numpy.dot(vector(F * cos(θ), F * sin(θ)), vector(s, 0))))
C("lifting_power", "P = 1.20 kW; m = 160 kg; y = 9.00 m", "t [s]", "work of the weight integrated",
  lambda P, m, y: area(lambda h: m * g_n, 0, y) / P)
C("force_power", "P = 42.0 kW; v = 28.0 m/s", "F [N]", "work in one second", lambda P, v: P * 1.0 / (v * 1.0))
C("efficiency", "η = 0.34; W_in = 5.2 MJ", "W_out [MJ]", "definition", lambda η, W_in: η * W_in)
C("friction_heat", "Q = 615 J; s = 4.10 m", "F_f [N]", "definition", lambda Q, s: Q / s)
C("sliding_distance", "v_0 = 11.0 m/s; μ_k = 0.55", "s [m]", "the motion integrated to rest",
  lambda v_0, μ_k: motion(lambda t, y: [y[1], -μ_k * g_n], [0.0, v_0], v_0 / (μ_k * g_n))[0])
C("momentum_energy", "E_k = 2.4e-15 J; m = 9.109e-31 kg", "p [kg m/s]", "mass times the speed of that energy",
  lambda E_k, m: m * sqrt(2 * E_k / m))

# Momentum
C("impulse", "J = 3.30 N s; t = 5.0 ms", "F [N]", "definition", lambda J, t: J / t)
C("impulse_momentum", "F = 95.0 N; t = 0.120 s; m = 0.430 kg; v_0 = -8.0 m/s", "v [m/s]", "the motion integrated",
  lambda F, t, m, v_0: motion(lambda x, y: [F / m], [v_0], t)[0])
C("momentum_conservation", "m_1 = 0.30 kg; v_1 = 1.5 m/s; m_2 = 0.50 kg; v_2 = -0.40 m/s; w_1 = -0.20 m/s", "w_2 [m/s]", "motion of the centre of mass kept",
  lambda m_1, v_1, m_2, v_2, w_1: ((m_1 * v_1 + m_2 * v_2) / (m_1 + m_2) * (m_1 + m_2) - m_1 * w_1) / m_2)
C("recoil", "m_1 = 62.0 kg; v_1 = 1.90 m/s; v_2 = 2.70 m/s", "m_2 [kg]", "momenta add to zero",
  lambda m_1, v_1, v_2: root(lambda m: m * v_2 - m_1 * v_1, 1, 1e3))
C("restitution", "ε = 0.80; w_1 = 0.30 m/s; v_1 = 2.0 m/s; v_2 = 0.50 m/s", "w_2 [m/s]", "speeds of leaving and approaching", lambda ε, w_1, v_1, v_2: w_1 + ε * (v_1 - v_2))
C("bounce_height", "ε = 0.75; y_1 = 1.60 m", "y_2 [m]", "the motion after the bounce integrated",
  lambda ε, y_1: motion(fall, [0.0, ε * sqrt(2 * g_n * y_1)], ε * sqrt(2 * g_n * y_1) / g_n)[0])
C("ballistic_pendulum", "m_1 = 8.0 g; m_2 = 1.200 kg; y = 12.0 cm", "v [m/s]", "momentum and energy solved together",
  lambda m_1, m_2, y: together(lambda u: [m_1 * u[0] - (m_1 + m_2) * u[1], u[1] ** 2 / 2 - g_n * y], [100, 1])[0])
C("center_of_mass", "m_1 = 2.0 kg; x_1 = 0.10 m; m_2 = 3.0 kg; x_2 = 0.90 m", "x_c [m]", "torques about it add to zero",
  lambda m_1, x_1, m_2, x_2: root(lambda x: m_1 * (x_1 - x) + m_2 * (x_2 - x), 0, 1))
C("rocket_equation", "v = 2600 m/s; v_0 = 100 m/s; v_e = 2400 m/s; m = 1200 kg", "m_0 [kg]", "momentum of rocket and exhaust integrated over the mass",
  lambda v, v_0, v_e, m: root(lambda m_0: v_0 + area(lambda x: v_e / x, m, m_0) - v, m, 100 * m))

# Rotation
C("arc_length", "s = 31.0 cm; r = 24.0 cm", "θ [rad]", "share of the whole circle", lambda s, r: s / (2 * pi * r) * 2 * pi)
C("angular_velocity", "ω = 3.49 rad/s; t = 12.0 s", "θ [rad]", "the motion integrated", lambda ω, t: motion(lambda x, y: [ω], [0.0], t)[0])
C("rotation_period", "ω = 7.292e-5 rad/s", "T [s]", "the motion integrated to a whole turn",
  lambda ω: root(lambda T: motion(lambda x, y: [ω], [0.0], T)[0] - 2 * pi, 1e4, 1e6))
C("circular_speed", "r = 3.20 m; T = 7.50 s", "v [m/s]", "slope of the place on the circle",
  lambda r, T: abs(slope(lambda t: r * complex(cos(2 * pi * t / T), sin(2 * pi * t / T)), 0.3, 1e-3)), close=1e-8)
C("spin_acceleration", "a_c = 3.0e4 m/s^2; r = 8.0 cm", "ω [rad/s]", "root of the second slope of the place on the circle",
  lambda a_c, r: root(lambda ω: r * ω * ω - a_c, 0, 1e5))
C("angle_time", "θ = 150 rad; ω_0 = 4.0 rad/s; t = 6.0 s", "α [rad/s^2]", "the motion integrated",
  lambda θ, ω_0, t: root(lambda α: motion(lambda x, y: [y[1], α], [0.0, ω_0], t)[0] - θ, 0, 100))
C("inertia_ring", "I = 0.0288 kg m^2; m = 0.50 kg", "r [m]", "the ring integrated",
  lambda I, m: sqrt(I / area(lambda φ: m / (2 * pi), 0, 2 * pi)))
C("inertia_disc", "m = 85.0 kg; r = 0.320 m", "I [kg m^2]", "rings integrated",
  lambda m, r: area(lambda x: m / (pi * r**2) * 2 * pi * x * x**2, 0, r))
C("inertia_sphere", "m = 7.20 kg; r = 10.9 cm", "I [kg m^2]", "discs integrated",
  lambda m, r: area(lambda z: m / (4 / 3 * pi * r**3) * pi * (r**2 - z**2) ** 2 / 2, -r, r))
C("inertia_shell", "m = 2.70 g; r = 20.0 mm", "I [kg m^2]", "rings integrated",
  lambda m, r: area(lambda θ: m / 2 * sin(θ) * (r * sin(θ)) ** 2, 0, pi))
C("inertia_rod", "m = 0.150 kg; l = 1.00 m", "I [kg m^2]", "parts integrated", lambda m, l: area(lambda x: m / l * x**2, -l / 2, l / 2))
C("inertia_rod_end", "m = 50.0 kg; l = 4.00 m", "I [kg m^2]", "parts integrated", lambda m, l: area(lambda x: m / l * x**2, 0, l))
C("parallel_axis", "I_c = 0.0125 kg m^2; m = 0.150 kg; d = 0.350 m", "I [kg m^2]", "a rod of that inertia integrated about the other axis",
  lambda I_c, m, d: area(lambda x: m / sqrt(12 * I_c / m) * (x + d) ** 2, -sqrt(3 * I_c / m), sqrt(3 * I_c / m)))
C("rotational_power", "P = 74.0 kW; ω = 580 rad/s", "τ [N m]", "work in one second", lambda P, ω: P / ω)
C("orbital_angular_momentum", "m = 15.0 kg; v = 2.0 km/s; r = 35.36 km; θ = 135 °", "L [J s]", "cross product",
  lambda m, v, r, θ: float(numpy.linalg.norm(numpy.cross([r, 0, 0], [m * v * cos(θ), m * v * sin(θ), 0]))))
C("rolling_acceleration", "θ = 14.0 °; I = 1.6e-4 kg m^2; m = 0.50 kg; r = 2.5 cm", "a [m/s^2]", "forces and torques solved together",
  lambda θ, I, m, r: together(lambda u: [m * g_n * sin(θ) - u[1] - m * u[0], u[1] * r - I * u[0] / r], [1, 1])[0])

# Gravitation
C("gravity_with_height", "g = 9.65 m/s^2; g_0 = 9.81 m/s^2; r = 6371 km", "y [km]", "root of the inverse square",
  lambda g, g_0, r: root(lambda y: g_0 * r**2 / (r + y) ** 2 - g, 0, 1e6))
C("gravitational_energy", "m_1 = 5.97e24 kg; m_2 = 450 kg; r = 7000 km", "E_p [J]", "force integrated from far away",
  lambda m_1, m_2, r: -area(lambda u: G * m_1 * m_2, 0, 1 / r))
C("gravitational_potential", "φ = -2.81e6 J/kg; M = 7.35e22 kg", "r [km]", "force on 1 kg integrated from far away, then a root",
  lambda φ, M: root(lambda r: -area(lambda u: G * M, 0, 1 / r) - φ, 1e5, 1e8))
C("orbital_speed", "v = 7.67e3 m/s; M = 5.972e24 kg", "r [km]", "gravity is the centripetal force, solved",
  lambda v, M: root(lambda r: G * M / r**2 - v**2 / r, 1e6, 1e8))


def orbit(M):
    """Motion of (x, y, v_x, v_y) about a mass at the origin."""

    def rates(t, s):
        cube = math.hypot(s[0], s[1]) ** 3
        return [s[2], s[3], -G * M * s[0] / cube, -G * M * s[1] / cube]

    return rates


def turn(M, far, speed, longest):
    """Time of half an orbit from its farthest point, twice; lengths in units of the start, so that errors are relative."""
    scale = sqrt(far**3 / (G * M))
    rates = lambda t, s: [s[2], s[3], -s[0] / math.hypot(s[0], s[1]) ** 3, -s[1] / math.hypot(s[0], s[1]) ** 3]
    half = until(rates, [1.0, 0.0, 0.0, speed * scale / far], longest / scale, lambda s: s[1])
    return 2 * half * scale


C("orbital_period", "r = 6.771e6 m; M = 5.972e24 kg", "T [s]", "the motion integrated over half an orbit",
  lambda r, M: turn(M, r, sqrt(G * M / r), 2e4))
C("kepler_third", "T = 3.156e7 s; a = 1.496e11 m", "M [kg]", "the motion on an ellipse of eccentricity 0.3 integrated, then a root",
  lambda T, a: root(lambda M: turn(M, 1.3 * a, sqrt(G * M / a * 0.7 / 1.3), 1e8) - T, 1.8e30, 2.2e30), close=1e-8)
C("orbital_energy", "E = -5.30e9 J; M = 5.972e24 kg; m = 180 kg", "a [km]", "energy of a circular orbit solved",
  lambda E, M, m: root(lambda r: m * (G * M / r) / 2 - G * M * m / r - E, 1e6, 1e8))
C("orbit_speed_anywhere", "M = 1.989e30 kg; r = 8.77e10 m; a = 2.67e12 m", "v [m/s]", "energy and angular momentum at nearest and farthest point solved together",
  lambda M, r, a: together(lambda u: [u[0] ** 2 / 2 - 1 / (r / a) - u[1] ** 2 / 2 + 1 / (2 - r / a), u[0] * r / a - u[1] * (2 - r / a)], [7, 0.1])[0] * sqrt(G * M / a))
C("tidal_acceleration", "M = 7.35e22 kg; r = 6.37e6 m; d = 3.84e8 m", "a_t [m/s^2]", "slope of the pull times the radius",
  lambda M, r, d: -slope(lambda x: G * M / x**2, d, d * 1e-3) * r)

"""Electrostatics to induction: fields by Coulomb's and Biot and Savart's laws, circuits by their differential equations."""

from math import cos, inf, log, pi, sin, sqrt

import numpy
from scipy import constants, integrate

from routes import area, g_n, motion, period, root, slope, together
from rows import C

e, eps, mu = constants.e, constants.epsilon_0, constants.mu_0
k_e = 1 / (4 * pi * eps)

# Electrostatics
C("charge_energy", "E_p = -4.36e-18 J; q_1 = 1.602e-19 C; q_2 = -1.602e-19 C", "r [pm]", "force integrated from far away, then a root",
  lambda E_p, q_1, q_2: root(lambda r: area(lambda u: k_e * q_1 * q_2, 0, 1 / r) - E_p, 1e-12, 1e-9))
C("plate_field", "E = 2.0e5 V/m", "σ [µC/m^2]", "fields of rings of both plates integrated, then a root",
  lambda E: E / (2 * area(lambda u: k_e * 2 * pi * u / (1 + u * u) ** 1.5, 0, inf)))
C("sheet_field", "σ = 3.4 µC/m^2", "E [V/m]", "fields of rings integrated",
  lambda σ: area(lambda u: k_e * σ * 2 * pi * u / (1 + u * u) ** 1.5, 0, inf))
C("line_charge_field", "λ = 25 nC/m; r = 4.0 cm", "E [V/m]", "fields of the parts of the line integrated",
  lambda λ, r: 2 * area(lambda u: k_e * λ / r / (1 + u * u) ** 1.5, 0, inf))
C("surface_charge", "q = 35 nC; A = 0.0707 m^2", "σ [C/m^2]", "definition", lambda q, A: q / A)
C("electric_flux", "Φ = 3.1 V m; E = 150 V/m; A = 0.0250 m^2", "θ [°]", "root of the dot product",
  lambda Φ, E, A: root(lambda θ: E * A * cos(θ) - Φ, 0, 1.57))


def through_a_cube(q):
    """Flux of a point charge through the six faces of a cube around it."""
    face = integrate.dblquad(lambda y, x: k_e * q / (1 + x * x + y * y) ** 1.5, -1, 1, -1, 1, epsabs=0, epsrel=1e-11)[0]
    return 6 * face


C("gauss", "q = 5.0 nC", "Φ [V m]", "Coulomb's field integrated over the faces of a cube", through_a_cube)
C("dipole_moment", "p = 6.19e-30 C m; q = 1.602e-19 C", "d [pm]", "definition", lambda p, q: p / q)
C("dipole_torque", "p = 6.2e-30 C m; E = 2.0e6 V/m; θ = 60 °", "τ [N m]", "slope of the energy",
  lambda p, E, θ: slope(lambda x: -p * E * cos(x), θ, 1e-3), close=1e-8)
C("capacitance", "Q = 26.6 µC; C = 8.85 nF", "U [V]", "definition", lambda Q, C: Q / C)


def voltage(field, low, high):
    """The field of one coulomb integrated between two radii."""
    return area(field, low, high)


C("ball_capacitance", "r = 12.5 cm", "C [pF]", "field of one coulomb integrated to far away", lambda r: 1 / area(lambda u: k_e, 0, 1 / r))
C("spherical_capacitor", "r_1 = 4.00 cm; r_2 = 5.00 cm", "C [pF]", "field of one coulomb integrated between the spheres",
  lambda r_1, r_2: 1 / voltage(lambda r: k_e / r**2, r_1, r_2))
C("cylinder_capacitor", "l = 1.00 m; r_1 = 0.45 mm; r_2 = 1.47 mm", "C [pF]", "field of one coulomb integrated between the cylinders",
  lambda l, r_1, r_2: 1 / voltage(lambda r: 1 / (2 * pi * eps * l * r), r_1, r_2))
C("capacitors_parallel", "C = 6.80 µF; C_1 = 4.70 µF", "C_2 [µF]", "charges at one volt added", lambda C, C_1: C - C_1)
C("electric_energy_density", "w = 39.8 J/m^3", "E [V/m]", "energy of a plate capacitor of one cubic metre",
  lambda w: root(lambda E: area(lambda q: q / eps, 0, eps * E) - w, 1e3, 1e9))
C("hanging_balls", "l = 0.500 m; m = 5.0 g; θ = 5.0 °", "q [nC]", "balance of weight, thread and repulsion solved together",
  lambda l, m, θ: together(lambda u: [u[0] * cos(θ) - 1, u[0] * sin(θ) - k_e * (u[1] * 1e-8) ** 2 / (2 * l * sin(θ)) ** 2 / (m * g_n)], [1, 6])[1] * 1e-8)
C("oil_drop", "m = 3.27e-15 kg; q = 3.204e-19 C", "E [V/m]", "sum of the forces is zero", lambda m, q: root(lambda E: q * E - m * g_n, 0, 1e9))

# Circuits
C("current_density", "J = 2.5e6 A/m^2; A = 1.50 mm^2", "I [A]", "definition", lambda J, A: J * A)
C("electric_energy", "E = 3.6 MJ; U = 230 V; I = 4.35 A", "t [s]", "energy integrated over time", lambda E, U, I: E / (U * I))
C("resistors_series", "R_s = 7.00 Ω; R_1 = 1.00 Ω", "R_2 [Ω]", "voltages at one ampere added", lambda R_s, R_1: R_s - R_1)
C("resistors_parallel", "R_1 = 6.00 Ω; R_2 = 13.0 Ω", "R_p [Ω]", "currents at one volt added", lambda R_1, R_2: 1 / (1 / R_1 + 1 / R_2))
C("junction_rule", "I = 14.92 A; I_1 = 12.00 A", "I_2 [A]", "charge in one second kept", lambda I, I_1: I - I_1)
C("loop_rule", "U_0 = 12.0 V; U_1 = 2.35 V", "U_2 [V]", "energy of one coulomb kept", lambda U_0, U_1: U_0 - U_1)
C("voltage_divider", "U_2 = 3.30 V; U_0 = 5.00 V; R_1 = 10.0 kΩ", "R_2 [kΩ]", "the same current in both, solved",
  lambda U_2, U_0, R_1: root(lambda R: U_2 / R - (U_0 - U_2) / R_1, 1, 1e7))
C("current_divider", "I = 2.35 A; R_1 = 6.00 Ω; R_2 = 13.0 Ω", "I_1 [A]", "the same voltage on both, solved",
  lambda I, R_1, R_2: root(lambda i: i * R_1 - (I - i) * R_2, 0, I))
C("wheatstone", "R_x = 47.2 Ω; R_2 = 100 Ω; R_1 = 220 Ω", "R_3 [Ω]", "equal potentials on both sides, solved",
  lambda R_x, R_2, R_1: root(lambda R_3: R_2 / (R_1 + R_2) - R_x / (R_3 + R_x), 1, 1e4))
C("rc_charging", "U_0 = 9.00 V; t = 1.50 s; R_1 = 22.0 kΩ; C = 47.0 µF", "U [V]", "differential equation integrated",
  lambda U_0, t, R_1, C: motion(lambda x, u: [(U_0 - u[0]) / (R_1 * C)], [0.0], t)[0])
C("rc_discharging", "U = 1.00 V; U_0 = 9.00 V; R_1 = 22.0 kΩ; C = 47.0 µF", "t [s]", "differential equation integrated, then a root",
  lambda U, U_0, R_1, C: root(lambda t: motion(lambda x, u: [-u[0] / (R_1 * C)], [U_0], t)[0] - U, 0.01, 20))
C("rl_current", "U_0 = 12.0 V; R_1 = 3.00 Ω; t = 5.00 ms; L = 7.50 mH", "I [A]", "differential equation integrated",
  lambda U_0, R_1, t, L: motion(lambda x, i: [(U_0 - R_1 * i[0]) / L], [0.0], t)[0])
C("rms_current", "I = 10.0 A", "I_m [A]", "square averaged over a period", lambda I: I / sqrt(area(lambda φ: sin(φ) ** 2, 0, 2 * pi) / (2 * pi)))

# Magnetism and induction


def gyration(q, B, m):
    """Time in which the velocity of a charge turns half around, twice."""
    return period(lambda t, v: [v[1], -v[0]], [1.0, 0.0], 20) / (q * B / m)


C("cyclotron_frequency", "q = 3.204e-19 C; B = 0.050 T; m = 6.645e-27 kg", "f [kHz]", "the motion integrated over a turn",
  lambda q, B, m: 1 / gyration(q, B, m))
C("loop_field", "B = 1.20 mT; N = 130; r = 15.0 cm", "I [A]", "Biot and Savart's law integrated around the turns",
  lambda B, N, r: B / (N * mu / (4 * pi) * area(lambda φ: r / r**2, 0, 2 * pi)))
C("loop_axis_field", "I = 10.0 mA; r = 50.0 cm; z = 25.0 cm", "B [T]", "Biot and Savart's law integrated around the loop",
  lambda I, r, z: mu * I / (4 * pi) * area(lambda φ: numpy.cross([-r * sin(φ), r * cos(φ), 0], [-r * cos(φ), -r * sin(φ), z])[2] / (r**2 + z**2) ** 1.5, 0, 2 * pi))
C("toroid_field", "B = 15.0 mT; N = 600; r = 6.0 cm", "I [A]", "current through the circle (Ampère's law)", lambda B, N, r: B * 2 * pi * r / (N * mu))
C("parallel_wires", "I_1 = 12.0 A; I_2 = 9.0 A; l = 0.800 m; d = 1.5 cm", "F [mN]", "field of one wire by Biot and Savart's law integrated, times the other current",
  lambda I_1, I_2, l, d: I_2 * l * mu * I_1 / (4 * pi * d) * 2 * area(lambda u: 1 / (1 + u * u) ** 1.5, 0, inf))
C("magnetic_moment", "μ = 0.720 A m^2; N = 200; A = 12.0 cm^2", "I [A]", "definition", lambda μ, N, A: μ / (N * A))
C("magnetic_flux", "Φ = 2.4e-4 Wb; B = 50.0 mT; θ = 30 °", "A [m^2]", "dot product", lambda Φ, B, θ: Φ / (B * cos(θ)))
C("back_emf", "I = 1.60 A; U = 24.0 V; R_1 = 2.50 Ω", "U_b [V]", "voltages around the loop", lambda I, U, R_1: U - I * R_1)
C("mutual_induction", "U_2 = -0.360 V; I_a = 0.50 A; I_b = 2.30 A; t = 40.0 ms", "M [mH]", "slope of the current", lambda U_2, I_a, I_b, t: -U_2 / ((I_b - I_a) / t))
C("self_induction", "L = 0.850 H; I_1 = 1.40 A; I_2 = 0 A; t = 2.5 ms", "U_i [V]", "slope of the current", lambda L, I_1, I_2, t: -L * (I_2 - I_1) / t)
C("magnetic_energy_density", "B = 1.50 T", "w [J/m^3]", "energy of a long coil of one cubic metre, its power integrated", lambda B: area(lambda b: b / mu, 0, B))

"""Oscillation, waves, sound, light, quanta, nuclei: oscillators integrated, wave fronts counted, rays and events followed."""

from math import asin, atan2, cos, exp, hypot, log, log1p, pi, sin, sqrt

import numpy
from scipy import constants

from routes import area, g_n, motion, period, root, slope, together, until
from rows import C

c, h, hbar, e, k_e = constants.c, constants.h, constants.hbar, constants.e, 1 / (4 * pi * constants.epsilon_0)
m_e, m_n, u = constants.m_e, constants.m_n, constants.u
R, N_A, k = constants.R, constants.N_A, constants.k


def oscillator(stiffness, inertia, damping=0.0):
    """Motion of (displacement, velocity)."""
    return lambda t, y: [y[1], -(stiffness * y[0] + damping * y[1]) / inertia]


def swing(stiffness, inertia):
    return period(oscillator(1.0, 1.0), [1.0, 0.0], 20) * sqrt(inertia / stiffness)


# Oscillation and waves
C("spring_period", "T = 0.920 s; k = 14.0 N/m", "m [kg]", "the motion integrated over a period, then scaled",
  lambda T, k: k * (T / period(oscillator(1.0, 1.0), [1.0, 0.0], 20)) ** 2)
C("physical_pendulum", "I = 0.0500 kg m^2; m = 0.150 kg; d = 0.500 m", "T [s]", "the small swing integrated over a period",
  lambda I, m, d: period(oscillator(m * g_n * d, I), [1.0, 0.0], 10))
C("torsion_pendulum", "T = 0.500 s; I = 0.0300 kg m^2", "κ [N m]", "the motion integrated over a period, then scaled",
  lambda T, I: I * (period(oscillator(1.0, 1.0), [1.0, 0.0], 20) / T) ** 2)
C("shm_position", "x_m = 4.0 cm; t = 0.47 s; T = 1.30 s", "x [cm]", "the motion integrated",
  lambda x_m, t, T: motion(oscillator((2 * pi / T) ** 2, 1.0), [x_m, 0.0], t)[0])
C("shm_max_speed", "v_m = 0.55 m/s; x_m = 6.0 cm", "T [s]", "the motion integrated to the middle, then scaled",
  lambda v_m, x_m: x_m / v_m * abs(motion(oscillator(1.0, 1.0), [1.0, 0.0], pi / 2)[1]) * period(oscillator(1.0, 1.0), [1.0, 0.0], 20))
C("shm_max_acceleration", "T = 0.80 s; x_m = 5.0 cm", "a_m [m/s^2]", "second slope of the cosine", lambda T, x_m: slope(lambda t: -slope(lambda s: x_m * cos(2 * pi * s / T), t, 1e-3), 0.0, 1e-3), close=1e-7)
C("oscillation_energy", "E = 0.63 J; k = 35.0 N/m", "x_m [cm]", "force integrated over the stretch, then a root",
  lambda E, k: root(lambda x: area(lambda s: k * s, 0, x) - E, 1e-3, 10))
C("damped_amplitude", "x_0 = 9.0 cm; b = 0.060 kg/s; t = 15.0 s; m = 0.400 kg", "x_m [cm]", "the damped motion integrated for whole turns",
  lambda x_0, b, t, m: motion(oscillator(m * ((2 * pi * 9 / t) ** 2 + (b / (2 * m)) ** 2), m, b), [x_0, -b / (2 * m) * x_0], t)[0])
C("damped_frequency", "k = 20.0 N/m; m = 0.500 kg; b = 2.0 kg/s", "ω [rad/s]", "the damped motion integrated over a period",
  lambda k, m, b: 2 * pi / period(oscillator(k, m, b), [1.0, 0.0], 20))
C("string_wave", "v = 427.2 m/s; μ = 3.09e-4 kg/m", "F [N]", "first mode of a string of one metre integrated along it, then a root",
  lambda v, μ: root(lambda F: until(oscillator(μ * (pi * v) ** 2, F), [0.0, 1.0], 2.0, lambda y: y[0]) - 1, 0.5 * μ * v**2, 2 * μ * v**2))
C("string_harmonic", "f = 329.6 Hz; n = 1; l = 0.650 m", "v [m/s]", "length of the string as half wavelengths", lambda f, n, l: f * (l / (n / 2)))
C("wave_function", "y_m = 2.0 cm; x = 0.35 m; λ = 1.20 m; t = 0.30 s; T = 0.80 s", "y [cm]", "the oscillation of a place that starts later, integrated",
  lambda y_m, x, λ, t, T: motion(oscillator((2 * pi / T) ** 2, 1.0), [y_m * sin(2 * pi * x / λ), -y_m * 2 * pi / T * cos(2 * pi * x / λ)], t)[0])
C("wave_power", "μ = 0.0350 kg/m; ω = 377 rad/s; y_m = 4.00 cm; v = 50.7 m/s", "P [W]", "energy of one wavelength integrated",
  lambda μ, ω, y_m, v: 2 * area(lambda φ: 0.5 * μ * (ω * y_m * cos(φ)) ** 2, 0, 2 * pi) / (2 * pi) * v)
C("sphere_intensity", "I = 1361 W/m^2; r = 1.496e11 m", "P [W]", "intensity integrated over the sphere",
  lambda I, r: area(lambda θ: I * 2 * pi * r**2 * sin(θ), 0, pi))
C("intensity_ratio", "I_1 = 0.80 W/m^2; r_1 = 2.0 m; I_2 = 0.050 W/m^2", "r_2 [m]", "power through both spheres kept",
  lambda I_1, r_1, I_2: root(lambda r: 4 * pi * r**2 * I_2 - 4 * pi * r_1**2 * I_1, 0.1, 1e3))
C("beats", "f_1 = 443.5 Hz; f_2 = 440.0 Hz", "f_b [Hz]", "time in which one gains a cycle, solved", lambda f_1, f_2: 1 / root(lambda t: f_1 * t - f_2 * t - 1, 0, 100))

# Sound
C("sound_in_gas", "v = 1010 m/s; γ = 1.667; M = 4.003e-3 kg/mol", "T [K]", "slope of pressure by density at constant entropy, then a root",
  lambda v, γ, M: root(lambda T: slope(lambda x: x**γ, 1.0, 1e-3) * R * T / M - v**2, 10, 1e4), close=1e-8)
C("sound_in_liquid", "v = 1482 m/s; ρ = 998 kg/m^3", "K [GPa]", "momentum given to the column that is set in motion", lambda v, ρ: ρ * v * v)
C("sound_in_rod", "Y = 2.00e11 Pa; ρ = 7800 kg/m^3", "v [m/s]", "momentum given to the part that is set in motion, solved",
  lambda Y, ρ: root(lambda v: Y / v - ρ * v, 1, 1e5))
C("echo", "d = 85.0 m; v = 343 m/s", "t [s]", "there and back", lambda d, v: d / v + d / v)
C("open_pipe", "f = 440 Hz; n = 1; v = 344 m/s", "l [m]", "half a wavelength in the pipe", lambda f, n, v: n * (v / f) / 2)
C("doppler", "f_0 = 500 Hz; v = 340 m/s; v_l = 15.0 m/s; v_s = 25.0 m/s", "f [Hz]", "arrival of two wave fronts followed",
  lambda f_0, v, v_l, v_s: 1 / (((10 - v_s / f_0) + v / f_0) / (v + v_l) - 10 / (v + v_l)))
C("mach_angle", "θ = 38.0 °; v = 300 m/s", "v_s [m/s]", "common tangent of the wave fronts",
  lambda θ, v: root(lambda s: atan2(v, sqrt(s * s - v * v)) - θ, v * 1.0001, 100 * v))

# Optics
C("light_wave", "f = 2.45 GHz", "λ [cm]", "way of light in one period", lambda f: c * (1 / f))
C("light_distance", "s = 384400 km", "t [s]", "speed of light", lambda s: s / c)
C("reflection", "θ_i = 35.0 °", "θ_r [°]", "shortest way by the mirror (Fermat), solved",
  lambda θ_i: root(lambda θ_r: sin(θ_i) - sin(θ_r), 0, pi / 2))
C("lensmaker", "n = 1.52; r_1 = 20.0 cm; r_2 = -30.0 cm", "f [cm]", "two refractions of a ray near the axis (matrices)",
  lambda n, r_1, r_2: -1 / (numpy.array([[1, 0], [-(1 - n) / r_2, n]]) @ numpy.array([[1, 0], [-(n - 1) / (n * r_1), 1 / n]]))[1][0])
C("lenses_in_contact", "f = 12.0 cm; f_1 = 20.0 cm", "f_2 [cm]", "deflections of one ray added", lambda f, f_1: 1 / (1 / f - 1 / f_1))
C("apparent_depth", "d = 2.00 m; n_1 = 1.333; n_2 = 1.000", "d_a [m]", "a ray near the vertical bent by Snell's law",
  lambda d, n_1, n_2: 1e-7 / (lambda r: sin(r) / cos(r))(asin(n_1 / n_2 * sin(atan2(1e-7, d)))))
C("magnifier", "M = 5.0; d_n = 25 cm", "f [cm]", "angle of the image by angle at the near point", lambda M, d_n: d_n / M)
C("telescope", "M = -40.0; f_e = 20.0 mm", "f_o [cm]", "angles at objective and eyepiece", lambda M, f_e: -M * f_e)
C("microscope", "l = 16.0 cm; d_n = 25 cm; f_o = 8.0 mm; f_e = 20 mm", "M", "magnification of the objective times that of the eyepiece",
  lambda l, d_n, f_o, f_e: -(l / f_o) * (d_n / f_e))
C("fringe_spacing", "λ = 633 nm; l = 2.50 m; d = 0.250 mm", "x [mm]", "difference of two ways is one wavelength, solved (good to small angles)",
  lambda λ, l, d: root(lambda x: (2 * x * d) / (hypot(l, x + d / 2) + hypot(l, x - d / 2)) - λ, 1e-4, 1e-1), close=1e-5)
C("f_number", "N = 2.8; f = 50 mm", "d [mm]", "definition", lambda N, f: f / N)
C("em_wave_fields", "E = 2505 V/m", "B [µT]", "energy densities of both fields are equal",
  lambda E: sqrt(constants.mu_0 * constants.epsilon_0) * E)
C("radiation_pressure", "I = 1361 W/m^2", "p [µPa]", "momentum of the photons that arrive in one second", lambda I: I / (h * 5e14) * (h * 5e14 / c))

# Modern physics


def boost(v):
    """Lorentz transformation of (ct, x)."""
    b = v / c
    w = 0.5 * log((1 + b) / (1 - b))
    return numpy.array([[numpy.cosh(w), numpy.sinh(w)], [numpy.sinh(w), numpy.cosh(w)]])


C("length_contraction", "l = 0.60 m; l_0 = 1.00 m", "v [m/s]", "ends at one time by the Lorentz transformation, then a root",
  lambda l, l_0: root(lambda v: l_0 / boost(v)[0][0] - l, 1e7, 2.99e8))
C("relativistic_momentum", "m = 1.6726e-27 kg; v = 2.40e8 m/s", "p [kg m/s]", "rest energy transformed to the moving frame", lambda m, v: float((boost(v) @ [m * c, 0.0])[1]))
C("relativistic_energy", "E = 8.0e-13 J; m = 9.109e-31 kg", "v [m/s]", "rest energy transformed to the moving frame, then a root",
  lambda E, m: root(lambda v: float((boost(v) @ [m * c * c, 0.0])[0]) - E, 1e7, 2.9979e8))
C("energy_momentum", "E = 2.50e-10 J; m = 1.6726e-27 kg", "p [kg m/s]", "hyperbolic angle of the energy", lambda E, m: m * c * numpy.sinh(numpy.arccosh(E / (m * c * c))))
C("photon_energy", "E = 3.10 eV", "f [Hz]", "definition of the Planck constant", lambda E: E / h)
C("photoelectric", "E_k = 0.85 eV; f = 7.40e14 Hz", "W_0 [eV]", "energy balance", lambda E_k, f: h * f - E_k)
C("stopping_voltage", "U = 0.52 V", "E_k [eV]", "work against the voltage", lambda U: e * U)
C("threshold_wavelength", "λ = 540 nm", "W_0 [eV]", "energy of the photon", lambda λ: h * (c / λ))
C("position_uncertainty", "u_x = 0.0100 nm", "u_p [kg m/s]", "mean square of the slope of a Gaussian packet, integrated",
  lambda u_x: hbar / u_x * sqrt(area(lambda q: q * q / 4 * exp(-q * q / 2), 0, 40) / area(lambda q: exp(-q * q / 2), 0, 40)))
C("bohr_orbit", "n = 3; Z = 1", "r [pm]", "Coulomb force and quantised angular momentum solved together",
  lambda n, Z: together(lambda s: [s[1] ** 2 * s[0] - Z, s[1] * s[0] - n], [9, 0.3])[0] * hbar**2 / (m_e * k_e * e**2), close=1e-8)
C("xray_limit", "λ = 24.8 pm", "U [kV]", "energy of the photon by charge", lambda λ: h * c / λ / e)
C("oscillator_levels", "E = 0.550 eV; n = 1", "f [Hz]", "area in phase space is (n + 1/2) h", lambda E, n: E / ((n + 0.5) * h))
C("zeeman", "m_l = 1; B = 1.50 T", "E [J]", "moment of a circling electron with one ħ times the field", lambda m_l, B: m_l * (e / (2 * m_e)) * hbar * B)
C("hubble", "H_0 = 2.2e-18 1/s; v = 2.5e6 m/s", "d [m]", "definition", lambda H_0, v: v / H_0)

# Nuclear physics
C("mass_defect", "Z = 2; m_H = 1.007825 u; A = 4; M = 4.002602 u", "m_B [u]", "parts less the whole, neutron mass of CODATA 2022",
  lambda Z, m_H, A, M: Z * m_H + (A - Z) * m_n - M, close=1e-7)
C("decay_law", "N = 2.5e9; N_0 = 1.0e10; λ = 0.0126 1/s", "t [s]", "differential equation integrated, then a root",
  lambda N, N_0, λ: root(lambda t: motion(lambda x, y: [-λ * y[0]], [1.0], t)[0] - N / N_0, 1, 1e3))
C("half_life", "T = 30.2 a", "λ [1/s]", "differential equation integrated, then a root",
  lambda T: root(lambda x: motion(lambda t, y: [-x * y[0]], [1.0], 1.0)[0] - 0.5, 0.1, 2) / T)
C("activity_decay", "A_0 = 370 kBq; λ = 7.28e-10 1/s; t = 15.0 a", "A [kBq]", "differential equation integrated",
  lambda A_0, λ, t: A_0 * motion(lambda x, y: [-λ * t * y[0]], [1.0], 1.0)[0])
C("absorption", "I = 0.25 W/m^2; I_0 = 1.00 W/m^2; x = 1.80 cm", "μ [1/m]", "differential equation integrated, then a root",
  lambda I, I_0, x: root(lambda m: motion(lambda s, y: [-m * y[0]], [I_0], x)[0] - I, 1, 1e3))
C("equivalent_dose", "H = 9.8 mSv; w_R = 20", "D [mGy]", "definition", lambda H, w_R: H / w_R)
C("closest_approach", "q_1 = 3.204e-19 C; q_2 = 1.266e-17 C; E_k = 5.50 MeV", "r [fm]", "work of the repulsion integrated, then a root",
  lambda q_1, q_2, E_k: root(lambda r: area(lambda x: k_e * q_1 * q_2, 0, 1 / r) - E_k, 1e-16, 1e-10))

"""Fluids, thermal physics and gases: pressures and flows integrated, averages over Planck's and Maxwell's distributions."""

from math import exp, inf, log, pi, sqrt

from scipy import constants

from routes import area, g_n, motion, root, turning
from rows import C

k, h, c, R, N_A = constants.k, constants.h, constants.c, constants.R, constants.N_A

# Fluids
C("hydrostatic_pressure", "p = 2.50e5 Pa; p_0 = 1.013e5 Pa; ρ = 1025 kg/m^3", "d [m]", "weight of the layers integrated, then a root",
  lambda p, p_0, ρ: root(lambda d: p_0 + area(lambda z: ρ * g_n, 0, d) - p, 0, 1e3))
C("submerged_weight", "F = 76.5 mN; m = 8.630 g; ρ = 1000 kg/m^3", "V [cm^3]", "weight less buoyancy solved",
  lambda F, m, ρ: root(lambda V: m * g_n - ρ * V * g_n - F, 0, 1e-5))
C("continuity", "A_1 = 2.545 cm^2; v_1 = 1.96 m/s; v_2 = 25.0 m/s", "A_2 [cm^2]", "volume in one second", lambda A_1, v_1, v_2: A_1 * v_1 / v_2)
C("torricelli", "v = 2.80 m/s", "y [m]", "energy of a litre that sank from the surface",
  lambda v: root(lambda y: area(lambda z: g_n, 0, y) - v**2 / 2, 1e-6, 1e3))
C("pitot_tube", "v = 62.0 m/s; p_2 = 9.00e4 Pa; ρ = 1.06 kg/m^3", "p_1 [Pa]", "the flow slowed to rest, integrated",
  lambda v, p_2, ρ: p_2 + area(lambda u: ρ * u, 0, v))
C("viscous_force", "F = 0.36 N; A = 0.0200 m^2; v = 0.15 m/s; d = 0.40 mm", "η [Pa s]", "definition: stress by shear rate", lambda F, A, v, d: (F / A) / (v / d))
C("settling_speed", "v = 3.1 cm/s; r = 1.00 mm; ρ_1 = 7800 kg/m^3; ρ_2 = 1260 kg/m^3", "η [Pa s]", "weight, buoyancy and Stokes drag in balance, solved",
  lambda v, r, ρ_1, ρ_2: root(lambda η: 4 / 3 * pi * r**3 * (ρ_1 - ρ_2) * g_n - 6 * pi * η * r * v, 1e-4, 1e3))
C("surface_tension", "γ = 0.0728 N/m; l = 8.0 cm", "F [mN]", "definition", lambda γ, l: γ * l)
C("barometric", "p_0 = 1.013e5 Pa; m = 4.81e-26 kg; y = 3000 m; T = 270 K", "p [Pa]", "the layers of air integrated",
  lambda p_0, m, y, T: motion(lambda z, p: [-p[0] * m * g_n / (k * T)], [p_0], y)[0])

# Thermal physics and gases
C("volume_expansion", "V = 61.14 L; V_0 = 60.0 L; β = 950e-6 1/K; T_0 = 15 °C", "T [°C]", "root of the expansion",
  lambda V, V_0, β, T_0: root(lambda T: V_0 + V_0 * β * (T - T_0) - V, T_0, T_0 + 100), close=1e-7)
C("thermal_stress", "Y = 2.10e11 Pa; α = 12e-6 1/K; T_0 = 20 °C; T = 45 °C", "p [Pa]", "strain times Young's modulus", lambda Y, α, T_0, T: α * (T - T_0) * Y)
C("heating_time", "P = 2.00 kW; m = 0.850 kg; c_s = 4186 J/(kg K); T_0 = 18.0 °C; T = 100 °C", "t [s]", "heat integrated over the temperature",
  lambda P, m, c_s, T_0, T: area(lambda x: m * c_s, T_0, T) / P)


def planck(λ, T):
    """Power per area and wavelength of a black body."""
    return 2 * pi * h * c**2 / λ**5 / (exp(h * c / (λ * k * T)) - 1)


C("stefan_boltzmann", "ε = 0.92; A = 0.150 m^2; T = 640 K", "P [W]", "Planck's law integrated over all wavelengths",
  lambda ε, A, T: ε * A * 2 * pi * (k * T) ** 4 / (h**3 * c**2) * area(lambda x: x**3 / (exp(x) - 1) if x > 1e-9 else x * x, 0, 200))
C("wien", "λ_m = 502 nm", "T [K]", "maximum of Planck's law", lambda λ_m: h * c / (k * λ_m * turning(lambda x: x - 5 * (1 - exp(-x)), 4, 6)), close=1e-9)
C("boyle", "p_1 = 1.01e5 Pa; V_1 = 60.0 mL; p_2 = 2.70e5 Pa", "V_2 [mL]", "number of molecules kept (pV/kT)", lambda p_1, V_1, p_2: (p_1 * V_1 / k) * k / p_2)
C("charles", "V_1 = 2.40 L; T_1 = 22.0 °C; T_2 = -18.0 °C", "V_2 [L]", "number of molecules kept (pV/kT)", lambda V_1, T_1, T_2: V_1 / (k * T_1) * k * T_2)
C("combined_gas", "p_1 = 1.00e5 Pa; V_1 = 3.00 m^3; T_1 = 290 K; p_2 = 1.20e4 Pa; T_2 = 220 K", "V_2 [m^3]", "number of molecules kept (pV/kT)",
  lambda p_1, V_1, T_1, p_2, T_2: p_1 * V_1 / (k * T_1) * k * T_2 / p_2)
C("gas_density", "p = 1.013e5 Pa; M = 28.96e-3 kg/mol; T = 0 °C", "ρ [kg/m^3]", "mass of the molecules in one cubic metre",
  lambda p, M, T: p / (k * T) * M / N_A)
C("dalton", "p = 1.013e5 Pa; p_2 = 2.33e3 Pa", "p_1 [Pa]", "sum of the pressures", lambda p, p_2: p - p_2)


def maxwell(power, m, T):
    """Mean of a power of the speed of molecules."""
    weight = lambda x: x**2 * exp(-(x**2))
    mean = area(lambda x: x**power * weight(x), 0, 12) / area(weight, 0, 12)
    return mean * (2 * k * T / m) ** (power / 2)


C("kinetic_pressure", "V = 1.00 L; N = 2.5e22; m = 4.65e-26 kg; v = 517 m/s", "p [Pa]", "momentum given to a wall, averaged over all directions",
  lambda V, N, m, v: N / V * m * v**2 * area(lambda u: u**2, 0, 1))
C("rms_speed_molar", "T = 293 K; M = 32.00e-3 kg/mol", "v [m/s]", "Maxwell's distribution integrated", lambda T, M: sqrt(maxwell(2, M / N_A, T)))
C("mean_free_path", "T = 273.15 K; r = 1.70e-10 m; p = 101325 Pa", "λ [nm]", "one over density, cross-section and mean relative speed by mean speed (Maxwell's distribution integrated)",
  lambda T, r, p: 1 / (p / (k * T) * pi * (2 * r) ** 2 * maxwell(1, 0.5, T) / maxwell(1, 1.0, T)))
C("monatomic_energy", "U = 5.60 kJ; n = 1.50 mol", "T [K]", "mean energy of Maxwell's distribution integrated",
  lambda U, n: U / (n * N_A * maxwell(2, 1.0, 1.0) / 2))
C("mayer", "C_p = 29.1 J/(mol K)", "C_V [J/(mol K)]", "work of expansion of one mole by one kelvin", lambda C_p: C_p - N_A * k)
C("isobaric_work", "W = 152 J; p = 1.01e5 Pa; V_1 = 2.50 L", "V_2 [L]", "pressure integrated over the volume, then a root",
  lambda W, p, V_1: root(lambda V: area(lambda x: p, V_1, V) - W, V_1, 1))
C("isothermal_work", "n = 0.250 mol; T = 300 K; V_1 = 2.00 L; V_2 = 5.00 L", "W [J]", "pressure integrated over the volume",
  lambda n, T, V_1, V_2: area(lambda V: n * R * T / V, V_1, V_2))
C("refrigerator", "K = 3.2; W = 450 kJ", "Q_c [kJ]", "definition", lambda K, W: K * W)
C("heat_pump", "K = 4.1; Q_h = 30.0 kJ", "W [kJ]", "definition", lambda K, Q_h: Q_h / K)
C("gas_entropy", "S = 11.5 J/K; n = 2.00 mol; V_1 = 1.00 L", "V_2 [L]", "heat over temperature integrated along an isotherm, then a root",
  lambda S, n, V_1: root(lambda V: area(lambda x: n * R / x, V_1, V) - S, V_1, 100 * V_1))
C("boltzmann_entropy", "S = 9.2e-22 J/K", "W", "exponential of the entropy", lambda S: exp(S / k), close=1e-8)

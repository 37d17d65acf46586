"""Re-computes what the notes of `plainscale/printed/*.txt` give where a book's number is not the rounded value.

Nothing is written. A note without a formula here, a formula without a note, and a number that differs are told.
"""

import re
import sys
from decimal import ROUND_HALF_EVEN, Decimal
from math import asin, atan, atan2, cos, exp, log, pi, radians, sin, sqrt, tan

import tables

PRINTED = tables.FIXTURES.parent / "printed"

# School values of constants, College Physics 2e, Useful Information (m42720).
g, G, c, h, e = 9.80, 6.67e-11, 3.00e8, 6.63e-34, 1.60e-19
k_e, eps0, mu0, N_A, k_B, R = 8.99e9, 8.85e-12, 1.26e-6, 6.02e23, 1.38e-23, 8.31
m_e, m_p, m_n, sigma, eV = 9.11e-31, 1.6726e-27, 1.6749e-27, 5.67e-8, 1.602176634e-19
# CODATA 2022, where an example asks for it.
E_EXACT, M_E, M_U = 1.602176634e-19, 9.1093837139e-31, 1.66053906892e-27
C_EXACT, N_A_EXACT = 299792458, 6.02214076e23
YEAR = 365.25 * 86400
SUN_LOSS = 4 * 1.007825 - 4.002603 - 2 * 0.000549  # u


def d_sin(angle):
    """Of degrees; so the two below."""
    return sin(radians(angle))


def d_cos(angle):
    return cos(radians(angle))


def d_tan(angle):
    return tan(radians(angle))


def halley_axis():
    """In astronomical units."""
    return (G * 2.00e30 / (4 * pi**2) * (75.3 * 365 * 86400) ** 2) ** (1 / 3) / 149597870700


def reactance_uncertainty():
    """Of JCGM 100:2008, H.2: from the covariances of the means of five readings."""
    volts = [5.007, 4.994, 5.005, 4.990, 4.999]
    amperes = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3]
    radians_ = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433]
    series = [volts, amperes, radians_]
    v, i, phi = (sum(x) / 5 for x in series)
    slopes = [sin(phi) / i, -v * sin(phi) / i**2, v * cos(phi) / i]
    # What each row of readings adds to the deviation of X, to first order.
    rows = [sum(s * (x[k] - m) for s, x, m in zip(slopes, series, (v, i, phi))) for k in range(5)]
    return sqrt(sum(row**2 for row in rows) / (5 * 4))


# id and name of the example: the number in the unit of the note.
FORMULAS = {
    # plane-motion
    "volcano v_y": lambda: -sqrt((25 * d_sin(35)) ** 2 + 2 * g * 20),
    "volcano φ": lambda: -atan(sqrt((25 * d_sin(35)) ** 2 + 2 * g * 20) / (25 * d_cos(35))) * 180 / pi,
    "skier-on-a-slope x": lambda: 75 + 41 + 0.5 * 2.1 * d_cos(15) * 100,
    "skier-on-a-slope y": lambda: -20 - 11 - 0.5 * 2.1 * d_sin(15) * 100,
    "skier-on-a-slope v_x": lambda: 4.1 + 2.1 * d_cos(15) * 10,
    "golf-shots b_2": lambda: d_tan(70) / 90,
    "proton-in-a-circle ω": lambda: 5.0e6 / 0.175,
    "proton-in-a-circle y": lambda: 0.175 * sin(5.0e6 / 0.175 * 2.0e-7),
    "growing-speed-on-a-circle a": lambda: sqrt((2.5**2 / 2) ** 2 + 1.5**2),
    # forces
    "skier N": lambda: 60 * g * d_cos(25),
    "rocket-sled-again T": lambda: (2100 * 49 + 650) / 4,
    "crate-pushed a": lambda: (180 - 0.600 * 20 * g) / 20,
    "baggage T": lambda: 820 * 3 * 400 / 1050,
    "four-forces a": lambda: sqrt((10 * d_cos(30) - 5) ** 2 + (10 * d_sin(30) + 2 - 40) ** 2) / 4,
    # gravitation
    "masses-of-earth-and-moon M_E": lambda: g * 6.37e6**2 / G,
    "masses-of-earth-and-moon g_M": lambda: g * 1.7e6 / 6.37e6,
    "weightless-equator v": lambda: sqrt(g * 6.37e6),
    "weightless-equator T": lambda: 2 * pi * sqrt(6.37e6 / g),
    "mass-from-the-moon M": lambda: 4 * pi**2 * 3.84e8**3 / (G * 2.36e6**2),
    "how-far r_2": lambda: 1 / (1 / 1.50e11 - 30e3**2 / (2 * G * 1.99e30)),
    "space-station v": lambda: sqrt(G * 5.96e24 / 6.77e6),
    "halley a_h": halley_axis,
    "halley Q": lambda: 2 * halley_axis() - 0.586,
    # statics
    "pillar m": lambda: 2700 * 0.20 * 3.0,
    "pillar p": lambda: (1620 * g + 1e4) / 0.20 / 1e3,
    "pillar x": lambda: (1620 * g + 1e4) / 0.20 / 4.5e10,
    "press x": lambda: 2.0e-5 * 2300 * 6894.757293168 / 101325,
    # fluids
    "soap-bubble p": lambda: 740 / 133.322387415,
    "eardrum p": lambda: 3e4 / 133.322387415,
    "needle N_R": lambda: 2 * 1025 * 0.120e-6 / (pi * 0.150e-3 * 1.00e-3),
    "ladder F_f": lambda: sqrt(400**2 + (200 / d_tan(53)) ** 2),
    "ladder φ": lambda: atan(400 / (200 / d_tan(53))) * 180 / pi,
    # heat
    "heat-pump η": lambda: 60 / 318.15,
    # gases
    "water-vapour c_n": lambda: 2.33e3 / (R * 293.15),
    # charge
    "penny x": lambda: 2.0e-9 / E_EXACT * M_E / 2.5e-3 * 100,
    "copper-ball-again m_a": lambda: 63.5 * M_U,
    "copper-ball-again n_a": lambda: 0.050 / (63.5 * M_U),
    "copper-ball-again n": lambda: 29 * 0.050 / (63.5 * M_U),
    "copper-ball-again x": lambda: 2.00e-6 / E_EXACT / (29 * 0.050 / (63.5 * M_U)),
    "plutonium m_a": lambda: 244 * M_U,
    "plutonium n_a": lambda: 4 / (244 * M_U),
    "plutonium n": lambda: 94 * 4 / (244 * M_U),
    "drift n": lambda: 8.80e3 / 63.54e-3 * N_A,
    # electrostatics
    "hanging-balls d": lambda: 2 * 0.50 * d_sin(5),
    "hanging-balls Q": lambda: 2 * 0.50 * d_sin(5) * sqrt(5e-3 * g * d_tan(5) / k_e),
    "charge-from-field Q": lambda: 1e4 * 0.250**2 / k_e,
    "field-of-the-earth Q": lambda: 150 * 6.37e6**2 / k_e,
    "triangle-of-charges F_net": lambda: 2 * k_e * 5e-6 * 2.5e-6 / 0.13**2 * 5 / 13,
    "alpha-and-electron F": lambda: 3.2e-19 * k_e * e / 1e-20,
    "thundercloud a": lambda: 2.0e5 * E_EXACT / M_E,
    "ball-at-a-plate E": lambda: 30e-6 / (2 * eps0),
    "ball-at-a-plate θ": lambda: atan(9e-10 * 30e-6 / (2 * eps0) / (0.25e-3 * g)) * 180 / pi,
    # circuits
    "discharge V_1": lambda: 1e4 * exp(-1),
    # optics
    "cornea f": lambda: 1 / (1 / 12.0 - 1 / 0.384),
    "cornea R": lambda: 2 / (1 / 12.0 - 1 / 0.384),
    # wave-optics
    "grating y_v": lambda: 2 * tan(asin(0.380)),
    "grating y_r": lambda: 2 * tan(asin(0.760)),
    # quantum
    "photon-and-electron K": lambda: (h / 500e-9) ** 2 / (2 * m_e),
    "electron-in-an-atom K": lambda: (h / (4 * pi * 1e-11)) ** 2 / (2 * m_e) / eV,
    # nuclei
    "caesium m": lambda: 6.0e6 * 3.7e10 * 30.2 * YEAR / log(2) * 0.137 / N_A,
    "strontium λ": lambda: log(2) / (28.8 * YEAR),
    "strontium A": lambda: log(2) / (28.8 * YEAR) * N_A_EXACT / 89.91,
    "burial t": lambda: 5730 * log(1.25) / log(2),
    "sun n": lambda: 3.8e26 / (SUN_LOSS * M_U * C_EXACT**2),
    "sun μ": lambda: 3.8e26 / C_EXACT**2,
    "ice-box-again Q": lambda: 0.035 * 0.950 * 35 / 0.0250 * 86400,
    "ice-box-again m": lambda: 0.035 * 0.950 * 35 / 0.0250 * 86400 / 334e3,
    # estimates
    "trillion y": lambda: 9e8 / 6480000 / 12,
    # unreasonable
    "mountain M": lambda: 0.02 * g * 1e8 / G,
    "gymnast t": lambda: 0.050 * 10.0 / 500 * 1e3,
    "cold-steam T_c": lambda: 0.300 * 723.15 - 273.15,
    "low-voltage-line P_l": lambda: (1e8 / 480) ** 2 / 1e6,
    "red-on-magnesium K": lambda: 6.62607015e-34 * C_EXACT / 700e-9 / eV - 3.68,
    # uncertainty
    "impedance-of-a-coil u(X)": reactance_uncertainty,
    "copper-wire E": lambda: 1.68e-8 * 10e-3 / (pi * 2.053e-3**2 / 4),
    "opposed-batteries I": lambda: 12 / 50,
    # momentum
    "crater F": lambda: 7970 * 4 / 3 * pi * 25**3 * 1.28e4 / 2,
    "airbag F_2": lambda: 860 / g * 27 / 0.20,
    "bouncing-ball Δp": lambda: 2 * 0.25 * sqrt(2 * g * 1.50),
    "bouncing-ball Δv": lambda: 2 * 0.25 * sqrt(2 * g * 1.50) / 5.97e24,
    "comet-lander Δp": lambda: 96 * 1.38,
    "comet-lander Δv": lambda: -96 * 1.38 / 1.0e13,
    "car-and-truck-crash v": lambda: 2.5 * sqrt(2 * 0.62 * 9.80665 * 10),
    "crossing w": lambda: sqrt((1200 * 60) ** 2 + (3000 * 40) ** 2) / 4200 / 3.6,
    "earth-and-moon R_c": lambda: 7.36e22 * 3.82e8 / (5.97e24 + 7.36e22),
    # rotation
    "centrifuge-stops ω": lambda: 1e4 * pi / 30 / 30,
    "centrifuge-stops a_c": lambda: 0.2 * (1e4 * pi / 900) ** 2,
    "centrifuge-stops a": lambda: 0.2 * sqrt((1e4 * pi / 900) ** 4 + (1e4 * pi / 900) ** 2),
    "boomerang K_r": lambda: 0.5 * 0.7**2 / 12 * (20 * pi) ** 2,
    "compton Δλ_m": lambda: 2 * 6.62607015e-34 / (M_E * C_EXACT) * 1e12,
    "balmer-limits λ_1": lambda: 1e9 / (1.09737e7 * (1 / 4 - 1 / 9)),
    "balmer-limits λ_2": lambda: 4e9 / 1.09737e7,
    "electron-slits θ": lambda: 180 / pi * asin(6.62607015e-34 / sqrt(2 * M_E * 600 * E_EXACT) / 272e-9),
    # relativity
    "picture-tube t_0": lambda: 0.200 / 6.00e7 * sqrt(0.96),
    # induction
    "decaying-field U_1": lambda: 5.0 * 1.5 * pi * 0.25,
    "decaying-field U_2": lambda: 5.0 * 1.5 * pi * 0.25 * exp(-0.25),
    "generator-power P": lambda: 4.0**2 / 2 * 5 / (25 + (20 - 25) ** 2),
    # electromagnetic-waves
    "hot-spots d": lambda: 3.00e8 / (2 * 2.45e9) * 100,
}


def notes():
    """The notes of all files: id and name, and the number as text."""
    for file in sorted(PRINTED.glob("*.txt")):
        for line in file.read_text(encoding="utf-8").splitlines():
            word, _, rest = line.partition(" ")
            if word == "example":
                example = rest.partition(":")[0]
            elif word == "printed":
                name = rest.partition(" = ")[0]
            elif word == "note":
                yield f"{example} {name}", rest.partition(":")[0].split(" ")[0]


def agrees(value, text):
    shown = Decimal(text)
    exponent = Decimal((0, (1,), shown.as_tuple().exponent))
    return Decimal(f"{value:.12e}").quantize(exponent, ROUND_HALF_EVEN) == shown


def main():
    wrong, seen = [], set()
    for key, text in notes():
        seen.add(key)
        if key not in FORMULAS:
            wrong.append(f"{key}: no formula")
        elif not agrees(FORMULAS[key](), text):
            wrong.append(f"{key}: {FORMULAS[key]()!r}, the note has {text}")
    wrong += [f"{key}: no such note" for key in FORMULAS.keys() - seen]
    print(f"{len(seen)} notes", *wrong, sep="\n")
    sys.exit(bool(wrong))


if __name__ == "__main__":
    main()

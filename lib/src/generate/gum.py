"""Writes fixtures/gum.txt: examples H.1 and H.2 of the GUM, its printed numbers beside computed ones."""

import math

import numpy
import scipy
import uncertainties
from scipy.stats import t as student
from uncertainties import correlated_values, correlation_matrix, ufloat, umath

import tables

# H.1, table H.1: value, standard uncertainty, degrees of freedom (None: not needed), unit.
GAUGE = {
    "l_S": (50000623, 25, 18, "nm"),
    "d": (215, 9.7, 25.6, "nm"),
    "da": (0, 0.58e-6, 50, "1/K"),
    "th": (-0.1, 0.41, None, "K"),
    "a_S": (11.5e-6, 1.2e-6, None, "1/K"),
    "dth": (0, 0.029, 2, "K"),
}
# H.2, table H.2: five simultaneous readings of V in volts, I in milliamperes, phi in radians.
READINGS = {
    "V": "5.007 4.994 5.005 4.990 4.999",
    "I": "19.663 19.639 19.640 19.685 19.678",
    "phi": "1.0456 1.0438 1.0468 1.0428 1.0433",
}


def gauge():
    names = {name: ufloat(value, u) for name, (value, u, _, _) in GAUGE.items()}
    l_S, d, da, th, a_S, dth = names.values()
    length = l_S + d - l_S * (da * th + a_S * dth)
    parts = {variable: abs(part) for variable, part in length.error_components().items()}
    u = length.std_dev
    # Only the components with a table entry enter the Welch-Satterthwaite formula (GUM G.4).
    nu = u**4 / sum(
        parts.get(variable, 0) ** 4 / GAUGE[name][2]
        for name, variable in names.items()
        if GAUGE[name][2]
    )
    k = student.ppf(0.995, math.floor(nu))
    second = [l_S.nominal_value * da.s * th.s, l_S.nominal_value * a_S.s * dth.s]
    lines = ["id: H.1", "source: JCGM 100:2008, H.1 (end-gauge calibration), table H.1"]
    for name, (value, deviation, degrees, unit) in GAUGE.items():
        lines.append(f"input: {name} = {value!r} {unit}; u {deviation!r}; nu {degrees or '-'}")
    lines.append("formula: l = l_S + d - l_S*(da*th + a_S*dth)")
    shown = {"l_S": 25, "d": 9.7, "da": 2.9, "dth": 16.6}
    for name, printed in shown.items():
        lines.append(f"component: {name}; printed {printed}; computed {parts[names[name]]!r}; nm")
    results = [
        ("l", "50000838", length.nominal_value, "nm"),
        ("u", "32", u, "nm"),
        ("nu_eff", "16", nu, "1"),
        ("k_99", "2.92", k, "1"),
        ("U_99", "93", k * u, "nm"),
        ("u_second_order", "34", math.hypot(u, *second), "nm"),
    ]
    lines += [f"result: {n}; printed {p}; computed {float(c)!r}; {unit}" for n, p, c, unit in results]
    lines.append("remark: nu_eff is cut to its whole part before k is looked up; U_99 = k_99 u. The GUM")
    lines.append("remark: prints 16.6 for the component of dth, which is 16.68.")
    return lines


def circuit():
    data = numpy.array([[float(text) for text in values.split()] for values in READINGS.values()])
    count = data.shape[1]
    means, covariance = data.mean(axis=1), numpy.cov(data) / count
    voltage, current, phase = correlated_values(means, covariance)
    outputs = {
        "R": voltage / current * umath.cos(phase) * 1000,
        "X": voltage / current * umath.sin(phase) * 1000,
        "Z": voltage / current * 1000,
    }
    lines = ["id: H.2", "source: JCGM 100:2008, H.2 (resistance and reactance), tables H.2 to H.4"]
    units = {"V": "V", "I": "mA", "phi": "rad"}
    for name, values in READINGS.items():
        lines.append(f"readings: {name} = {values} {units[name]}")
    lines += ["formula: R = V/I*cos(phi)", "formula: X = V/I*sin(phi)", "formula: Z = V/I"]
    inputs = {"V": ("4.9990", "0.0032"), "I": ("19.6610", "0.0095"), "phi": ("1.04446", "0.00075")}
    for index, (name, printed) in enumerate(inputs.items()):
        computed = float(means[index]), float(math.sqrt(covariance[index, index]))
        lines.append(result(name, printed[0], computed[0], units[name]))
        lines.append(result(f"u({name})", printed[1], computed[1], units[name]))
    published = {"R": ("127.732", "0.071"), "X": ("219.847", "0.295"), "Z": ("254.260", "0.236")}
    for name, printed in published.items():
        lines.append(result(name, printed[0], outputs[name].nominal_value, "Ω"))
        lines.append(result(f"u({name})", printed[1], outputs[name].std_dev, "Ω"))
    lines += correlations([voltage, current, phase], {(0, 1): "-0.36", (0, 2): "0.86", (1, 2): "-0.65"}, list(READINGS))
    lines += correlations(
        list(outputs.values()), {(0, 1): "-0.588", (0, 2): "-0.485", (1, 2): "0.993"}, list(outputs)
    )
    free = [ufloat(mean, math.sqrt(covariance[i, i])) for i, mean in enumerate(means)]
    ignoring = {
        "R": free[0] / free[1] * umath.cos(free[2]),
        "X": free[0] / free[1] * umath.sin(free[2]),
        "Z": free[0] / free[1],
    }
    for name, value in ignoring.items():
        lines.append(f"uncorrelated: u({name}); computed {value.std_dev * 1000!r}; Ω")
    lines.append("remark: u(X) is 0.2956, which the GUM prints as 0.295. The uncorrelated lines are wrong")
    lines.append("remark: answers that leave out the correlation of the inputs (not in the GUM).")
    return lines


def result(name, printed, computed, unit):
    return f"result: {name}; printed {printed}; computed {float(computed)!r}; {unit}"


def correlations(values, printed, names):
    matrix = correlation_matrix(values)
    return [result(f"r({names[i]},{names[j]})", text, matrix[i, j], "1") for (i, j), text in printed.items()]


def main():
    tables.write(
        tables.FIXTURES / "gum.txt",
        [
            "Two examples of the Guide to the expression of uncertainty in measurement, JCGM 100:2008.",
            f"Computed with uncertainties {uncertainties.__version__}, SciPy {scipy.__version__}:",
            "`python lib/src/generate/gum.py`. The printed numbers and the readings are the GUM's.",
            "Blocks are separated by an empty line; a line is `key: value`, parts of a value by `;`.",
            "printed is rounded as in the GUM; computed is in doubles, from the readings or table values.",
        ],
        ["", *gauge(), "", *circuit()],
    )


if __name__ == "__main__":
    main()

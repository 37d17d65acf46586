"""Writes fixtures/uncertainties.tsv: first-order propagation as the Python package `uncertainties` does it."""

import random
import re

import uncertainties
from uncertainties import ufloat, umath

import tables

FUNCTIONS = {
    "sqrt": umath.sqrt,
    "sin": umath.sin,
    "cos": umath.cos,
    "tan": umath.tan,
    "asin": umath.asin,
    "acos": umath.acos,
    "atan": umath.atan,
    "exp": umath.exp,
    "ln": umath.log,
    "log10": umath.log10,
}

# Expression; then its variables, all independent of one another; angles say `rad`.
CASES = """
x + y                             x=20±4; y=12±3
x - y                             x=20±4; y=12±3
x * y                             x=20±4; y=12±3
x / y                             x=20±4; y=12±3
-x                                x=20±4
x + 5                             x=20±4
3 * x                             x=20±4
x / 4                             x=20±4
4 / x                             x=20±4
x + x                             x=20±4
x - x                             x=20±4
x * x                             x=20±4
x / x                             x=20±4
2*x - x - x                       x=20±4
x - y                             x=5.0±0.5; y=5.0±0.5
u + 2*v                           u=1±0.1; v=10±0.1
x^2                               x=3.00±0.02
x^3                               x=-1.5±0.1
x^0.5                             x=2.25±0.03
x^(-1)                            x=0.125±0.005
x^(-2)                            x=0.53e-10±0.01e-10
x^1                               x=7.4±0.3
2^x                               x=3.0±0.1
x^y                               x=4.5±0.2; y=3.4±0.4
x^x                               x=1.7±0.05
(x^2)^0.5 - x                     x=2.0±0.1
sqrt(x)                           x=6.25±0.25
sqrt(x^2 + y^2)                   x=3.0±0.1; y=4.0±0.2
sqrt(230*x + 3)                   x=0.2±0.01
sqrt(x) * sqrt(x)                 x=2.0±0.1
sin(x)                            x=0.2±0.01 rad
cos(x)                            x=0.2±0.01 rad
tan(x)                            x=1.2±0.02 rad
sin(x)^2 + cos(x)^2               x=0.7±0.05 rad
sin(x) / cos(x) - tan(x)          x=0.7±0.05 rad
sin(2*x) - 2*sin(x)*cos(x)        x=0.4±0.03 rad
asin(x)                           x=0.3±0.02
acos(x)                           x=0.3±0.02
atan(x)                           x=2.5±0.4
asin(x) + acos(x)                 x=0.3±0.02
atan(y / x)                       x=3.0±0.1; y=4.0±0.2
sin(asin(x)) - x                  x=0.6±0.05
asin(d / (2*s))                   d=0.140±0.005; s=0.900±0.002
exp(x)                            x=1.5±0.1
exp(-x / 3)                       x=0.2±0.01
ln(x)                             x=12.0±0.5
log10(x)                          x=12.0±0.5
ln(exp(x)) - x                    x=0.8±0.1
exp(ln(x)) / x                    x=0.8±0.1
log10(x / y)                      x=2.27e39±0.01e39; y=1.00±0.03
10^log10(x)                       x=250±10
x + y - x                         x=20±4; y=12±3
(x + y) * (x - y)                 x=20±4; y=12±3
(x + y)^2 - (x - y)^2             x=20±4; y=12±3
(x + y) / (x - y)                 x=20±4; y=12±3
x*y / (x + y)                     x=100±1; y=220±2
1 / (1/x + 1/y)                   x=100±1; y=220±2
(x - y) / x                       x=20±4; y=12±3
x*y + y*z + z*x                   x=1.0±0.1; y=2.0±0.1; z=3.0±0.1
(x + y + z) / 3                   x=1.0±0.1; y=2.0±0.2; z=3.0±0.3
x + x*(y - y)                     x=20±4; y=12±3
x^2 + y^2                         x=0±0.005; y=0±0.005
x^2 + y^2                         x=0.010±0.005; y=0±0.005
x * y                             x=0±0.1; y=5.0±0.2
a*exp(-b*t)                       a=8.0±0.1; b=0.35±0.02; t=2.00±0.05
a*t + 0.5*b*t^2                   a=3.2±0.1; b=9.81±0.01; t=1.25±0.02
2*h / t^2                         h=1.0000±0.0005; t=0.45173±0.00004
4*3.141592653589793^2*l / t^2     l=0.75000±0.00005; t=1.7357±0.0003
m*g*tan(a)                        m=2.70e-3±0.05e-3; g=9.81; a=0.0779±0.0029 rad
d*sqrt(m*g*tan(asin(d/(2*s)))/k)  d=0.140±0.005; m=2.70e-3±0.05e-3; g=9.81; s=0.900±0.002; k=8.98755e9
G*a*b / r^2                       G=6.67430e-11±0.00015e-11; a=9000±10; b=9000±10; r=10.0±0.1
V * cos(p) / I                    V=4.9990±0.0032; I=19.6610e-3±0.0095e-3; p=1.04446±0.00075 rad
m*9.81 / (2*sin(a))               m=70.0±0.1; a=0.0873±0.0017 rad
(a*b)^2 / (a^2*b^2)               a=3.0±0.1; b=7.0±0.2
"""


# Expressions made at random, so that no case was chosen because it works.
SEED = 20080901
RANDOM_CASES = 200
DEPTH = 4
NUMBERS = ["x", "y", "z"]
ANGLES = ["p", "q"]


def number(rng, depth):
    """A random expression that is a plain number."""
    if depth == 0:
        return rng.choice([*NUMBERS, *NUMBERS, f"{rng.uniform(0.5, 9):.2f}"])
    one = f"({number(rng, depth - 1)})"
    return rng.choice(
        [
            lambda: f"{one} + ({number(rng, depth - 1)})",
            lambda: f"{one} - ({number(rng, depth - 1)})",
            lambda: f"{one} * ({number(rng, depth - 1)})",
            lambda: f"{one} / ({number(rng, depth - 1)})",
            lambda: f"{one}^{rng.choice([2, 3])}",
            lambda: f"sqrt({one}^2 + {rng.choice(NUMBERS)}^2)",
            lambda: f"exp(-({one}/9)^2)",
            lambda: f"ln({one}^2 + {rng.uniform(0.5, 2):.2f})",
            lambda: f"log10({one}^2 + 1)",
            lambda: f"{rng.choice(['sin', 'cos', 'tan'])}({angle(rng, depth - 1)})",
            lambda: f"(({one})^2 + 1)^{rng.choice(['0.5', '1.5', '(-0.25)'])}",
        ]
    )()


def angle(rng, depth):
    """A random expression that is an angle."""
    return rng.choice(
        [
            lambda: rng.choice(ANGLES),
            lambda: f"{rng.choice(ANGLES)} - {rng.uniform(0.3, 2):.2f}*{rng.choice(ANGLES)}",
            lambda: f"atan({number(rng, depth)})",
            lambda: f"asin(exp(-(({number(rng, depth)})/5)^2)/2)",
        ]
    )()


def random_case(rng):
    """An expression and its variables, as a row of CASES."""
    expression = number(rng, DEPTH)
    parts = []
    for name in [*NUMBERS, *ANGLES]:
        if re.search(rf"\b{name}\b", expression):
            value = rng.uniform(0.2, 1.2) if name in ANGLES else rng.uniform(0.5, 9)
            unit = " rad" if name in ANGLES else ""
            parts.append(f"{name}={value:.3f}±{value * rng.uniform(0.002, 0.05):.4f}{unit}")
    return expression, "; ".join(parts)


def random_cases():
    """Cases whose value and uncertainty are neither zero nor huge: dust has no digits to compare."""
    rng = random.Random(SEED)
    cases = {}
    while len(cases) < RANDOM_CASES:
        expression, given = random_case(rng)
        try:
            value, deviation = evaluate(expression, variables(given)) if given else (0, 0)
        except (ValueError, ZeroDivisionError, OverflowError):
            continue
        if 1e-3 < abs(value) < 1e6 and 1e-4 < deviation < 1e6 and len(expression) < 200:
            cases[expression] = given
    return list(cases.items())


def variables(text):
    """`x=20±4; g=9.81` as independent variables; a number without `±` is exact."""
    result = {}
    for part in text.split(";"):
        name, number = part.strip().removesuffix(" rad").split("=")
        value, _, deviation = number.partition("±")
        result[name] = ufloat(float(value), float(deviation)) if deviation else float(value)
    return result


def evaluate(expression, names):
    """A number or one with an uncertainty; a bare float has none."""
    result = eval(expression.replace("^", "**"), {"__builtins__": {}}, {**FUNCTIONS, **names})
    return (result.nominal_value, result.std_dev) if hasattr(result, "std_dev") else (result, 0.0)


def main():
    lines = []
    chosen = [re.split(r"\s{2,}", case.strip(), maxsplit=1) for case in CASES.strip().splitlines()]
    for expression, given in [*chosen, *random_cases()]:
        value, deviation = evaluate(expression, variables(given))
        lines.append(tables.row(expression, given, repr(value), repr(deviation)))
    tables.write(
        tables.FIXTURES / "uncertainties.tsv",
        [
            "First-order propagation of independent standard uncertainties.",
            f"Computed with the Python package uncertainties {uncertainties.__version__}:",
            "`python lib/src/generate/uncertainty_cases.py`.",
            "variables: value±u; without ± exact; an angle has ` rad` after it, everything else is a number.",
            "Operators + - * / ^ (binding tighter than a sign), brackets, functions of radians; ln and log10.",
            f"The last {RANDOM_CASES} rows were made at random from the seed {SEED}.",
            "Where a result is zero in exact arithmetic, value or u may hold rounding dust of the doubles.",
        ],
        [tables.row("expression", "variables", "value", "u"), *lines],
    )


if __name__ == "__main__":
    main()

"""Ways to a number that do not pass through the law itself: integrals, motions, roots, turning points."""

import numpy
from scipy import constants, integrate, optimize

g_n = constants.g
EXACT = dict(epsabs=0, epsrel=1e-12, limit=400)


def area(function, low, high):
    """The integral of a function."""
    return integrate.quad(function, low, high, **EXACT)[0]


def motion(rates, start, end):
    """The state at the end of a motion whose rates of change are given."""
    return integrate.solve_ivp(rates, (0, end), start, method="DOP853", rtol=1e-13, atol=1e-14).y[:, -1]


def until(rates, start, longest, crossing):
    """The time at which `crossing` of the state is zero, after the start."""
    event = lambda t, y: crossing(y)
    solution = integrate.solve_ivp(rates, (0, longest), start, method="DOP853", rtol=1e-13, atol=1e-14, events=event)
    return next(t for t in solution.t_events[0] if t > longest * 1e-6)


def period(rates, start, longest):
    """Twice the time between two passages of the first coordinate through zero."""
    first = until(rates, start, longest, lambda y: y[0])
    there = motion(rates, start, first)
    return 2 * until(rates, [0.0, there[1]], longest, lambda y: y[0])


def root(function, low, high):
    """Where a function is zero."""
    return optimize.brentq(function, low, high, xtol=1e-300, rtol=1e-14)


def turning(slope, low, high):
    """Where a function's slope is zero."""
    return root(slope, low, high)


def slope(function, x, step):
    """The slope of a smooth function by five points."""
    f = function
    return (f(x - 2 * step) - 8 * f(x - step) + 8 * f(x + step) - f(x + 2 * step)) / (12 * step)


def together(equations, guess):
    """The values at which all the expressions, which are of the order of one, are zero."""
    found = optimize.root(equations, guess, options={"xtol": 1e-14})
    if max(abs(x) for x in equations(found.x)) > 1e-10:
        raise ArithmeticError(found.message)
    return found.x


def vector(*parts):
    return numpy.array(parts, dtype=float)

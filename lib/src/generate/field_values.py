"""Writes field/*.tsv: potentials and fields by direct integration of Coulomb's law with SciPy.

Nothing of the closed forms in the Java code is used: each source is cut into rings, lines or shells
whose share is an integral over the charge. Only the ring itself, as a part of the disc, is taken by
SciPy's complete elliptic integrals, and rows of the ring check that against direct integration.
"""

import math
import random

import numpy
import scipy
from scipy import integrate, special

import tables

FIELD = tables.MODULE / "src/test/resources/plainscale/field"
SEED = 18200706
EXACT = dict(epsabs=0, epsrel=1e-13, limit=400)
KINDS = ["point", "line", "ring", "disc", "sphere", "shell"]
ROWS_OF_A_KIND = 40
CONFIGURATIONS = 60


def vector(rng, reach):
    return numpy.array([rng.uniform(-reach, reach) for _ in range(3)])


def unit(rng):
    v = vector(rng, 1)
    return v / numpy.linalg.norm(v)


def quad(function, low, high, points=()):
    """The integral in pieces that end at `points`, so that no peak is missed."""
    inner = sorted(p for p in points if low < p < high)
    bounds = [low, *inner, high]
    pieces = [quiet(function, a, b) for a, b in zip(bounds, bounds[1:])]
    return math.fsum(pieces)


def quiet(function, low, high):
    """SciPy's own estimate of the error must be small where the value is not."""
    value, error = integrate.quad(function, low, high, full_output=1, **EXACT)[:2]
    size = integrate.quad(lambda t: abs(function(t)), low, high, full_output=1, **EXACT)[0]
    if error > 1e-10 * max(size, 1e-300):
        raise ArithmeticError(f"not exact enough: {value} ± {error}")
    return value


def point(place, charge, at):
    seen = at - place
    r = numpy.linalg.norm(seen)
    return charge / r, charge * seen / r**3


def line(start, end, charge, at):
    near = float(numpy.dot(at - start, end - start) / numpy.dot(end - start, end - start))

    def seen(t):
        return at - (start + t * (end - start))

    v = quad(lambda t: 1 / numpy.linalg.norm(seen(t)), 0, 1, [near])
    e = [quad(lambda t, i=i: seen(t)[i] / numpy.linalg.norm(seen(t)) ** 3, 0, 1, [near]) for i in range(3)]
    return charge * v, charge * numpy.array(e)


def axial(centre, axis, at):
    """Along the axis, off it, and the unit vectors of both."""
    seen = at - centre
    z = float(numpy.dot(seen, axis))
    across = seen - z * axis
    rho = float(numpy.linalg.norm(across))
    return z, rho, across / rho if rho else numpy.zeros(3)


def ring(centre, axis, radius, charge, at):
    """By the angle around the ring, in the plane of the place and the axis."""
    z, rho, out = axial(centre, axis, at)

    def distance(phi):
        return math.sqrt(rho**2 + radius**2 - 2 * rho * radius * math.cos(phi) + z**2)

    v = quad(lambda p: 1 / distance(p), 0, math.pi, [0.1, 0.5]) / math.pi
    e_z = quad(lambda p: z / distance(p) ** 3, 0, math.pi, [0.1, 0.5]) / math.pi
    e_r = quad(lambda p: (rho - radius * math.cos(p)) / distance(p) ** 3, 0, math.pi, [0.1, 0.5]) / math.pi
    return charge * v, charge * (e_z * axis + e_r * out)


def elliptic_ring(z, rho, radius):
    """V, E_z, E_rho of a unit charge, by SciPy's K and E with the complementary parameter."""
    far, near = (radius + rho) ** 2 + z**2, (radius - rho) ** 2 + z**2
    k, e = special.ellipkm1(near / far), special.ellipe(1 - near / far)
    v = 2 / math.pi * k / math.sqrt(far)
    e_z = 2 / math.pi * z * e / (math.sqrt(far) * near)
    e_r = (k - (radius**2 - rho**2 + z**2) / near * e) / (math.pi * rho * math.sqrt(far))
    return v, e_z, e_r


def disc(centre, axis, radius, charge, at):
    """Rings side by side."""
    z, rho, out = axial(centre, axis, at)
    peaks = [rho, rho - abs(z), rho + abs(z)]
    parts = [
        quad(lambda r, i=i: 2 * r / radius**2 * elliptic_ring(z, rho, r)[i], 0, radius, peaks)
        for i in range(3)
    ]
    return charge * parts[0], charge * (parts[1] * axis + parts[2] * out)


def shell(centre, radius, charge, at):
    """Rings around the direction of the place: an integral over the cosine of the angle."""
    seen = at - centre
    r = float(numpy.linalg.norm(seen))

    def distance(mu):
        return math.sqrt(r**2 + radius**2 - 2 * r * radius * mu)

    v = quad(lambda mu: 1 / distance(mu), -1, 1, [0.9, 0.99]) / 2
    e = quad(lambda mu: (r - radius * mu) / distance(mu) ** 3, -1, 1, [0.9, 0.99]) / 2
    return charge * v, charge * e * seen / r


def sphere(centre, radius, charge, at):
    """Shells one in another, each by its integral."""
    seen = at - centre
    r = float(numpy.linalg.norm(seen))
    unit_shell = lambda a: shell(numpy.zeros(3), a, 1.0, numpy.array([r, 0.0, 0.0]))
    nodes, weights = numpy.polynomial.legendre.leggauss(12)
    v = e = 0.0
    for low, high in [(0, min(r, radius)), (min(r, radius), radius)]:
        for x, w in zip(nodes, weights):
            a = (low + high) / 2 + (high - low) / 2 * x
            part_v, part_e = unit_shell(a)
            density = 3 * a**2 / radius**3 * w * (high - low) / 2
            v += density * part_v
            e += density * part_e[0]
    return charge * v, charge * e * seen / r


FORMS = {"point": point, "line": line, "ring": ring, "disc": disc, "sphere": sphere, "shell": shell}


def source(rng, kind):
    """Random arguments of one kind: a metre in size, up to 10 C."""
    charge = rng.choice([-1, 1]) * rng.uniform(0.5, 10)
    if kind == "point":
        return [vector(rng, 1), charge]
    if kind == "line":
        return [vector(rng, 1), vector(rng, 1), charge]
    if kind in ("ring", "disc"):
        return [vector(rng, 1), unit(rng), rng.uniform(0.2, 1.5), charge]
    return [vector(rng, 1), rng.uniform(0.2, 1.5), charge]


def place(rng, kind, arguments):
    """A place near the source or far from it; not so near that the integrals here fail."""
    while True:
        at = arguments[0] + unit(rng) * 10 ** rng.uniform(-0.7, 1.5)
        if clearance(kind, arguments, at) > 0.05:
            return at


def clearance(kind, arguments, at):
    if kind in ("ring", "disc"):
        z, rho, _ = axial(arguments[0], arguments[1], at)
        return math.hypot(z, rho - arguments[2]) if kind == "ring" or rho > arguments[2] else abs(z)
    r = float(numpy.linalg.norm(at - arguments[0]))
    if kind == "line":
        start, end = arguments[0], arguments[1]
        t = float(numpy.dot(at - start, end - start) / numpy.dot(end - start, end - start))
        return float(numpy.linalg.norm(at - start - min(1, max(0, t)) * (end - start)))
    return r if kind == "point" else abs(r - arguments[1])


def numbers(arguments):
    return [repr(float(x)) for argument in arguments for x in numpy.atleast_1d(argument)]


def text(kind, arguments):
    return " ".join([kind, *numbers(arguments)])


def value(sources, at):
    results = [FORMS[kind](*arguments, at) for kind, arguments in sources]
    return sum(v for v, _ in results), sum(e for _, e in results)


def line_of(sources, at):
    v, e = value(sources, at)
    written = "; ".join(text(kind, arguments) for kind, arguments in sources)
    return tables.row(written, " ".join(numbers([at])), repr(float(v)), " ".join(numbers([e])))


def one_source(rng):
    lines = []
    for kind in KINDS:
        for _ in range(ROWS_OF_A_KIND):
            arguments = source(rng, kind)
            lines.append(line_of([(kind, arguments)], place(rng, kind, arguments)))
    return lines


def several_sources(rng):
    lines = []
    while len(lines) < CONFIGURATIONS:
        sources = [(kind, source(rng, kind)) for kind in rng.choices(KINDS, k=rng.randint(2, 6))]
        at = vector(rng, 3)
        if all(clearance(kind, arguments, at) > 0.05 for kind, arguments in sources):
            lines.append(line_of(sources, at))
    return lines


def header(what):
    return [
        what,
        "By direct integration of Coulomb's law over the charges, with a constant of 1, by",
        f"SciPy {scipy.__version__} (quad) and NumPy {numpy.__version__}:",
        f"`python lib/src/generate/field_values.py`, seed {SEED}.",
        "sources: point x y z q | line x y z x y z q | ring, disc: centre, axis, radius, q |",
        "sphere, shell: centre, radius, q; several parted by semicolons. Metres and coulombs.",
    ]


def elliptic_lines():
    """K and E by complementary modulus; ellipe of 1 − k'² is that of Carlson's forms, too."""
    lines = []
    for complement in [1.0, 0.999, 0.9, 0.5, 0.1, 1e-2, 1e-4, 1e-8, 1e-12]:
        squared = complement**2
        k = special.elliprf(0, squared, 1)
        e = 2 * special.elliprg(0, squared, 1)
        assert math.isclose(k, special.ellipkm1(squared), rel_tol=1e-14)
        lines.append(tables.row(repr(complement), repr(float(k)), repr(float(e))))
    return lines


def main():
    rng = random.Random(SEED)
    columns = tables.row("sources", "at", "potential", "field")
    tables.write(FIELD / "sources.tsv", header("One source each."), [columns, *one_source(rng)])
    tables.write(
        FIELD / "configurations.tsv", header("Several sources."), [columns, *several_sources(rng)]
    )
    tables.write(
        FIELD / "elliptic.tsv",
        [
            "Complete elliptic integrals K and E by the complementary modulus k', by Carlson's forms",
            f"elliprf and elliprg of SciPy {scipy.__version__}: `python lib/src/generate/field_values.py`.",
        ],
        [tables.row("complement", "K", "E"), *elliptic_lines()],
    )


if __name__ == "__main__":
    main()

"""Writes fixtures/fits.tsv and fixtures/samples.tsv: random data fitted and described by SciPy and NumPy."""

import warnings

import numpy
import scipy
from scipy.optimize import curve_fit

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from scipy import odr

import tables

SEED = 19040503
CASES = 12
random = numpy.random.default_rng(SEED)


def line(x, b, m):
    return b + m * x


def proportional(x, m):
    return m * x


def power(x, a, p):
    return a * x**p


def exponential(x, a, b):
    return a * numpy.exp(b * x)


MODELS = {"LINE": line, "PROPORTIONAL": proportional, "POWER": power, "EXPONENTIAL": exponential}


def points(model):
    n = int(random.integers(4, 15))
    x = numpy.round(numpy.sort(random.uniform(0.5, 8, n)), 3)
    parameters = {
        "LINE": (random.uniform(-20, 20), random.uniform(-5, 5)),
        "PROPORTIONAL": (random.uniform(-5, 5),),
        "POWER": (random.uniform(0.5, 5), random.uniform(-2.5, 2.5)),
        "EXPONENTIAL": (random.uniform(0.5, 5), random.uniform(-0.8, 0.8)),
    }[model]
    y = MODELS[model](x, *parameters)
    uy = numpy.round(numpy.abs(y) * random.uniform(0.01, 0.08, n) + 0.001, 4)
    ux = numpy.round(x * random.uniform(0.005, 0.05, n) + 0.001, 4)
    y = numpy.round(y + uy * random.normal(size=n), 4)
    return x, ux, y, uy, parameters


def fitted(model, weighting, x, ux, y, uy, start):
    if weighting == "BOTH":
        data = odr.RealData(x, y, sx=ux, sy=uy)
        run = odr.ODR(data, odr.Model(lambda p, x: p[0] + p[1] * x), beta0=start)
        run.set_job(fit_type=0, deriv=0)
        run.sstol = run.partol = 1e-15
        run.maxit = 1000
        out = run.run()
        out = run.restart(iter=1000) if out.info >= 4 else out
        return out.beta, out.cov_beta, out.sum_square
    sigma = uy if weighting == "Y" else None
    if model in ("LINE", "PROPORTIONAL"):
        return linear(model, x, y, sigma)
    p, cov = curve_fit(
        MODELS[model], x, y, p0=start, sigma=sigma, absolute_sigma=sigma is not None,
        ftol=1e-15, xtol=1e-15, gtol=1e-15, maxfev=100000,
    )
    r = (y - MODELS[model](x, *p)) / (1 if sigma is None else sigma)
    return p, cov, float(r @ r)


def linear(model, x, y, sigma):
    """numpy.linalg.lstsq, since curve_fit differentiates numerically and keeps eight digits."""
    w = numpy.ones_like(y) if sigma is None else 1 / sigma
    design = numpy.vander(x, 2, increasing=True) if model == "LINE" else x[:, None]
    p = numpy.linalg.lstsq(design * w[:, None], y * w)[0]
    r = (y - design @ p) * w
    squares = float(r @ r)
    q = numpy.linalg.inv(numpy.linalg.qr(design * w[:, None])[1])
    return p, q @ q.T * (squares / (len(y) - len(p)) if sigma is None else 1), squares


def numbers(values):
    return " ".join(repr(float(v)) for v in values)


def fits():
    for model in MODELS:
        for weighting in ["NONE", "Y"] + (["BOTH"] if model == "LINE" else []):
            for _ in range(CASES):
                x, ux, y, uy, start = points(model)
                with warnings.catch_warnings():
                    warnings.simplefilter("ignore")
                    p, cov, squares = fitted(model, weighting, x, ux, y, uy, start)
                yield tables.row(
                    model, weighting, numbers(x), numbers(ux), numbers(y), numbers(uy),
                    numbers(p), numbers(numpy.atleast_2d(cov).ravel()), repr(squares),
                )


def samples():
    for n in [2, 3, 4, 5, 7, 10, 25, 100]:
        values = numpy.round(random.normal(random.uniform(-5, 5), 2, n), 3)
        u = numpy.round(random.uniform(0.1, 3, n), 2)
        w = 1 / u**2
        mean = numpy.average(values, weights=w)
        yield tables.row(
            numbers(values), numbers(u), repr(float(values.mean())), repr(float(values.std(ddof=1))),
            numbers(numpy.percentile(values, [25, 50, 75])), repr(float(mean)),
            repr(float(1 / numpy.sqrt(w.sum()))), repr(float((w * (values - mean) ** 2).sum())),
            repr(float(scipy.stats.chi2.sf((w * (values - mean) ** 2).sum(), n - 1))),
        )


def header(what):
    return [
        what,
        f"Computed with SciPy {scipy.__version__} and NumPy {numpy.__version__}, seed {SEED}:",
        "`python lib/src/generate/fits.py`.",
    ]


if __name__ == "__main__":
    import scipy.stats

    tables.write(
        tables.FIXTURES / "fits.tsv",
        header("Curves through random points; lines by numpy.linalg.lstsq, BOTH by scipy.odr, POWER and EXPONENTIAL by scipy.optimize.curve_fit.")
        + ["squares: sum of squared residuals, over their uncertainties where these are weights."],
        ["model\tweighting\tx\tux\ty\tuy\tparameters\tcovariance\tsquares", *fits()],
    )
    tables.write(
        tables.FIXTURES / "samples.tsv",
        header("Random samples: quartiles are NumPy's linear ones; then the mean with weights 1/u²."),
        ["values\tu\tmean\tdeviation\tquartiles\tweighted\tinternal\tsquares\tprobability", *samples()],
    )

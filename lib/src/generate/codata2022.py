"""Writes laws/codata2022.tsv from the CODATA 2022 table that SciPy carries (see README.md)."""

import re

import scipy
from scipy.constants import _codata

import tables

# SciPy keeps the text of the published table; its columns are fixed.
NAME, VALUE, UNCERTAINTY, UNIT = slice(0, 60), slice(60, 85), slice(85, 110), slice(110, None)
NUMBER = re.compile(r"-?\d+(\.\d+)?(e-?\d+)?")
ROWS = 355


def number(printed):
    """The printed digits without the spaces between groups: `1.054 571 817... e-34` to `1.054571817e-34`."""
    text = printed.replace(" ", "").replace("...", "")
    if not NUMBER.fullmatch(text):
        raise ValueError(f"not a number: {printed!r}")
    return text


def line(printed):
    exact = "(exact)" in printed[UNCERTAINTY]
    truncated = "..." in printed[VALUE]
    if truncated and not exact:
        raise ValueError(f"truncated but not exact: {printed!r}")
    return tables.row(
        printed[NAME].strip(),
        number(printed[VALUE]),
        "exact" if exact else number(printed[UNCERTAINTY]),
        printed[UNIT].strip() or "1",
        "truncated" if truncated else "whole",
    )


def main():
    lines = [line(printed) for printed in _codata.txt2022.splitlines()]
    if len(lines) != ROWS:
        raise ValueError(f"{len(lines)} rows, not {ROWS}")
    tables.write(
        tables.LAWS / "codata2022.tsv",
        [
            "CODATA recommended values of the fundamental constants, 2022 adjustment: the whole table.",
            f"Taken from the copy in SciPy {scipy.__version__} (scipy.constants, BSD-3-Clause); published by",
            "NIST, Fundamental Physical Constants. Written by lib/src/generate/codata2022.py.",
            "value: every printed digit. uncertainty: one standard uncertainty, in the same form, or `exact`.",
            "unit: as printed; `1` where the table prints none.",
            "digits: `truncated` where the table prints `...`: an exact number of which these are the first",
            "digits only; `whole` elsewhere.",
            f"rows: {ROWS}",
        ],
        [tables.row("name", "value", "uncertainty", "unit", "digits"), *lines],
    )


if __name__ == "__main__":
    main()

"""Rows of laws_evaluated.tsv: how they are given, read and written."""

import inspect
import math
import re
from dataclasses import dataclass

import pint

UNITS = pint.UnitRegistry()
UNITS.default_format = "~P"

# Units as the notation writes them, where pint has another word.
WORDS = {"°": "degree", "Ω": "ohm", "kΩ": "kiloohm", "d": "day", "a": "julian_year", "u": "unified_atomic_mass_unit"}
CELSIUS = "°C"

ROWS = {}


@dataclass(frozen=True)
class Row:
    law: str
    constants: str
    replaced: str
    givens: str
    asked: str
    unit: str
    expected: float
    within: float
    source: str


def unit(text):
    """The pint unit of a text such as `N m^2/C^2`."""
    if text in ("", "1"):
        return UNITS.dimensionless
    words = re.sub(r"[^\s/*()^0-9-]+", lambda m: WORDS.get(m.group(), m.group()), text)
    return UNITS.parse_units(words.replace("^", "**").replace(" ", "*"))


def coherent(number, text):
    """The number in SI units; an angle in radians, a temperature in kelvins."""
    if text == CELSIUS:
        return number + 273.15
    return (number * unit(text)).to_base_units().magnitude


def within(number, text):
    """A number in SI units expressed in a unit."""
    if text == CELSIUS:
        return number - 273.15
    one = (1 * unit(text)).to_base_units()
    return number / one.magnitude


def parsed(givens):
    """`m = 54.0 g; V = 20 cm^3` as SI numbers by name."""
    values = {}
    for part in filter(None, (p.strip() for p in givens.split(";"))):
        name, value = (side.strip() for side in part.split("="))
        number, _, text = value.partition(" ")
        values[name] = coherent(float(number), text.strip())
    return values


def split(asked):
    """`F [N]` as name and unit."""
    match = re.fullmatch(r"(\S+)(?: \[(.+)\])?", asked)
    return match.group(1), match.group(2) or "1"


def add(row):
    if row.law in ROWS:
        raise ValueError(f"{row.law} twice")
    ROWS[row.law] = row


def C(law, givens, asked, how, compute, replaced="-", close=1e-9):
    """A row computed here: `compute` takes the givens in SI units by their names; `how` tells the way."""
    name, text = split(asked)
    values = parsed(givens)
    wanted = list(inspect.signature(compute).parameters)
    result = within(float(compute(*(values[w] for w in wanted))), text)
    if not math.isfinite(result):
        raise ValueError(law)
    add(Row(law, "codata", replaced, givens, name, text, result, abs(result) * close, f"computed with SciPy: {how}"))


def P(law, givens, printed, source, constants="textbook", replaced="-"):
    """A row with a printed answer, good to half a unit of its last figure."""
    name, value = (side.strip() for side in printed.split("="))
    number, _, text = value.partition(" ")
    mantissa, _, exponent = number.lower().partition("e")
    decimals = len(mantissa.partition(".")[2])
    half = 0.5 * 10.0 ** (int(exponent or 0) - decimals)
    add(Row(law, constants, replaced, givens, name, text.strip() or "1", float(number), half, f"printed in {source}"))

"""Computes every formula of fixtures/openstax.txt and writes what it gives beside the book's answer."""

import math
import re
from decimal import ROUND_HALF_EVEN, Decimal

import tables

FIXTURE = tables.FIXTURES / "openstax.txt"
COMPUTED = ("value", "textbook", "codata", "differs")
FUNCTIONS = {name: getattr(math, name) for name in ("sqrt", "sin", "cos", "tan", "asin", "pi")}
SI = {
    "1": 1, "m": 1, "kg": 1, "s": 1, "A": 1, "K": 1, "mol": 1, "N": 1, "C": 1, "V": 1, "W": 1, "J": 1,
    "F": 1, "Pa": 1, "Hz": 1, "g": 1e-3, "cm": 1e-2, "mm": 1e-3, "km": 1e3, "nm": 1e-9, "µC": 1e-6,
    "nC": 1e-9, "nF": 1e-9, "µF": 1e-6, "kV": 1e3, "kA": 1e3, "mA": 1e-3, "kPa": 1e3, "ms": 1e-3,
    "min": 60, "h": 3600, "d": 86400, "L": 1e-3, "mL": 1e-6, "eV": 1.602176634e-19, "%": 1e-2,
    "°": math.pi / 180,
}  # fmt: skip
# Temperatures on a scale: factor, and what to add to the kelvins.
SCALES = {"°C": (1, -273.15), "°F": (5 / 9, -459.67 * 5 / 9)}


def factor(unit):
    """`m^3/(kg s^2)` in SI."""
    over, _, under = unit.replace("(", "").replace(")", "").partition("/")

    def product(text):
        result = 1
        for part in text.split():
            name, _, power = part.partition("^")
            result *= SI[name] ** int(power or 1)
        return result

    return product(over) / product(under) if under else product(over)


def to_si(number, unit):
    if unit in SCALES:
        size, zero = SCALES[unit]
        return number * size - zero
    return number * factor(unit or "1")


def from_si(number, unit):
    if unit in SCALES:
        size, zero = SCALES[unit]
        return (number + zero) / size
    return number / factor(unit or "1")


def rows(name):
    """The rows of one of the tables, without its comments and its line of names."""
    lines = (tables.LAWS / name).read_text(encoding="utf-8").splitlines()
    return [line.split("\t") for line in lines if not line.startswith("#")][1:]


def constants(profile):
    """The symbols of symbols.tsv with their CODATA or, where there is one, their textbook value."""
    codata = {name: float(value) for name, value, *_ in rows("codata2022.tsv")}
    result, formulas = {"π": math.pi}, []
    for symbol, also, source, exactly, _, _, textbook, _ in rows("symbols.tsv"):
        formula = source.removeprefix("derived: ") if source.startswith("derived") else exactly
        if profile == "textbook" and textbook != "-":
            result[symbol] = result[also] = float(textbook)
        elif formula == "-":
            result[symbol] = result[also] = codata[source]
        else:
            formulas.append((symbol, also, formula))
    for symbol, also, formula in formulas:
        # A space between two factors multiplies.
        python = re.sub(r"(?<=[\w)]) (?=[\w(])", "*", formula).replace("^", "**")
        result[symbol] = result[also] = eval(python, {"__builtins__": {}}, result)
    return result


def split(text):
    """`F = 8.25e-8 N` to name, number as text, unit."""
    name, _, rest = text.partition(" = ")
    number, _, unit = rest.partition(" ")
    return name, number, unit


def evaluate(block, known):
    """All quantities of a block in SI, and whether a constant took part."""
    names, used = {}, False
    for text in block.get("given", []):
        name, number, unit = split(text)
        names[name] = to_si(float(number), unit)
    for text in block["formula"]:
        name, _, expression = text.partition(" = ")
        code = compile(expression.replace("^", "**"), name, "eval")
        used = used or any(word not in names and word not in FUNCTIONS for word in code.co_names)
        names[name] = eval(code, {"__builtins__": {}}, {**known, **FUNCTIONS, **names})
    return names, used


def agrees(value, printed):
    """Whether the value rounds to the printed digits; within 1e-12 of a tie it counts as the tie."""
    shown = Decimal(printed)
    clean = Decimal(f"{value:.12e}")
    return clean.quantize(Decimal((0, (1,), shown.as_tuple().exponent)), ROUND_HALF_EVEN) == shown


def computed(block):
    """The lines that this script writes into a block."""
    profiles = {name: evaluate(block, constants(name)) for name in ("textbook", "codata")}
    profile = block["constants"][0]
    used = profiles["textbook"][1]
    if used != (profile != "none"):
        raise ValueError(f"{block['id'][0]}: says constants {profile}")
    lines, wrong = [], []
    for text in block["printed"]:
        name, number, unit = split(text)
        for key in ("textbook", "codata") if used else ("value",):
            value = from_si(profiles["codata" if key == "value" else key][0][name], unit)
            lines.append(f"{key}: {name} = {value!r} {unit}".rstrip())
        chosen = from_si(profiles["textbook" if profile == "textbook" else "codata"][0][name], unit)
        if not agrees(chosen, number):
            wrong.append(name)
    if wrong:
        lines.append("differs: " + ", ".join(wrong))
        if "remark" not in block:
            raise ValueError(f"{block['id'][0]}: {wrong} without a remark: {lines}")
    return lines


def rewrite(text):
    lines = [line for line in text.splitlines() if line.split(":")[0] not in COMPUTED]
    block, result = {}, []
    for line in lines:
        key, _, value = line.partition(": ")
        block.setdefault(key, []).append(value)
        if key == "remark":
            result += computed(block)
        result.append(line)
        if not line:
            if "printed" in block and "remark" not in block:
                result[-1:] = [*computed(block), ""]
            block = {}
    return "\n".join(result)


def main():
    text = FIXTURE.read_text(encoding="utf-8").rstrip("\n") + "\n\n"
    written = rewrite(text + "\n").rstrip("\n") + "\n"
    FIXTURE.write_text(written, encoding="utf-8", newline="\n")
    print(f"{FIXTURE.name}: {len(re.findall('^id: ', written, re.M))} records,"
          f" {len(re.findall('^printed: ', written, re.M))} answers;"
          f" {re.findall('^differs: .*', written, re.M)}")


if __name__ == "__main__":
    main()

"""Answers agree with SymPy, a library of its own, but for the systems that are listed with a reason."""

import csv
import multiprocessing
import random
import re
import subprocess
from pathlib import Path

import sympy

from environment import MODULE, jar, java

HERE = Path(__file__).parent
SYSTEMS = MODULE.parent / "lib/src/test/resources/plainscale/fixtures/derivations.tsv"
# Seconds after which SymPy is taken to find nothing.
PATIENCE = 12
SEED = 29
NAME = re.compile(r"[^\W\d]\w*")
FUNCTIONS = {"ln": "log", "cbrt": "cbrt", "sqrt": "sqrt", "exp": "exp"} | {
    name: name for name in ("sin", "cos", "tan", "asin", "acos", "atan")
}


def rows(path):
    with open(path, encoding="utf-8", newline="") as file:
        lines = (line for line in file if not line.startswith("#"))
        return list(csv.DictReader(lines, delimiter="\t", quoting=csv.QUOTE_NONE))


def python_text(text):
    """The notation as Python: a space or a bracket multiplies, ^ is a power, ° is π/180; SI units are 1."""
    without_units = re.sub(r"\[[^\]]*\]", "", text)
    tokens = re.findall(r"\d+\.?\d*(?:e-?\d+)?|[^\W\d]\w*|\S", without_units)
    parts, before = [], ""
    for token in tokens:
        operand_before = before == ")" or re.fullmatch(r"\w[\w.]*", before)
        begins = token == "(" or re.fullmatch(r"\w[\w.]*", token)
        if operand_before and begins and not (token == "(" and before in FUNCTIONS):
            parts.append("*")
        parts.append({"^": "**", "°": "* pi/180"}.get(token, FUNCTIONS.get(token, token)))
        before = token
    return " ".join(parts)


def expression(text):
    names = set(NAME.findall(text)) - set(FUNCTIONS)
    symbols = {name: sympy.Symbol(name, real=True) for name in names}
    return sympy.sympify(python_text(text), locals=symbols)


def equations(system):
    sides = [relation.split(" = ", 1) for relation in system["relations"].split("; ")]
    return [expression(left) - expression(right) for left, right in sides]


def values(system):
    """The known names as small fractions in the order of the file, so that every run has the same."""
    source = random.Random(SEED)
    known = system["known"].split()
    return {
        sympy.Symbol(name, real=True): sympy.Rational(source.randint(11, 29), 20) for name in known
    }


def solve(system, queue):
    """Puts the real values of the unknown that SymPy finds with the known names as numbers."""
    known = values(system)
    exact = [equation.subs(known) for equation in equations(system)]
    unknowns = sorted(set().union(*(e.free_symbols for e in exact)), key=str)
    wanted = sympy.Symbol(system["unknown"], real=True)
    solutions = sympy.solve(exact, unknowns, dict=True)
    found = []
    for solution in solutions:
        value = solution.get(wanted)
        if value is not None and not value.free_symbols:
            number = complex(value.evalf(30))
            if abs(number.imag) < 1e-12 * max(1, abs(number)):
                found.append(number.real)
    queue.put(found)


def found_by_sympy(system):
    queue = multiprocessing.Queue()
    process = multiprocessing.Process(target=solve, args=(system, queue))
    process.start()
    process.join(PATIENCE)
    if process.is_alive():
        process.terminate()
        process.join()
        return None
    return queue.get() if process.exitcode == 0 else None


def told():
    """Each system with our outcome, answers and rejected roots; those without an answer are left out."""
    systems = rows(SYSTEMS)
    lines = "\n".join("\t".join((s["relations"], s["unknown"], s["known"])) for s in systems)
    command = [java(), "-cp", str(jar()), str(HERE / "SolveMany.java")]
    done = subprocess.run(command, input=lines, capture_output=True, text=True, encoding="utf-8", timeout=300)
    assert done.returncode == 0, done.stderr
    for system, line in zip(systems, done.stdout.splitlines(), strict=True):
        outcome, answers, rejected = line.split("\t")
        assert outcome == system["outcome"], system["id"]
        if answers:
            yield system, answers.split("; "), rejected.split("; ") if rejected else []


def numbers(texts, known):
    results = [complex(expression(text).subs(known).evalf(30)) for text in texts]
    return [z.real for z in results if abs(z.imag) < 1e-12 * max(1, abs(z))]


def near(number, others):
    return any(abs(number - other) <= 1e-9 * max(1, abs(number)) for other in others)


def verdict(system, answers, rejected):
    known = values(system)
    theirs = found_by_sympy(system)
    if theirs is None:
        return "none"
    ours = numbers(answers, known)
    every = ours + numbers(rejected, known)
    if any(not near(number, theirs) for number in ours):
        return "ours only"
    return "theirs more" if any(not near(number, every) for number in theirs) else "same"


def test_the_reader_of_the_notation_knows_products_and_powers():
    x, v = sympy.symbols("x v_1", real=True)
    assert expression("2*x (v_1 + 1)^2/(3*v_1) sin(x)") == 2 * x * (v + 1) ** 2 / (3 * v) * sympy.sin(x)


def test_they_agree_but_for_the_listed_differences():
    listed = {row["id"]: row for row in rows(HERE / "derivations_differences.tsv")}
    assert all(row["reason"] for row in listed.values())
    differences = {}
    for system, answers, rejected in told():
        result = verdict(system, answers, rejected)
        if result != "same":
            differences[system["id"]] = result
    assert differences == {name: row["verdict"] for name, row in listed.items()}

"""Writes laws_evaluated.tsv: every law of the table evaluated once, by printed answers and by SciPy.

Nothing of the project is used. Where there is a way around the law (a motion, an integral, a balance of forces) it is
taken; the last column says which."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent / "laws"))

import scipy  # noqa: E402

import tables  # noqa: E402
from rows import ROWS  # noqa: E402
import published, mechanics, matter, electricity, light  # noqa: E402, F401

HEADER = [
    "Every law evaluated once, written by lib/src/generate/law_values.py; nothing of the project takes part in it.",
    "constants: the set that the source uses. replaced: what stands for a constant of the law (`-`: nothing).",
    "givens: as in a cell, without the word. asked: the symbol that the relation is solved for.",
    "expected: in that unit; within: half a unit of the last printed figure, or what the computation is good to.",
    "source: a printed answer (UP University Physics, CP College Physics 2e; commits in the table's sources.tsv), or how",
    f"SciPy {scipy.__version__} came to it with CODATA 2022.",
]
FILES = sorted((tables.LAWS / "table").glob("*.tsv"))


def laws():
    """The names of the table, in its order."""
    names = []
    fields = [line.split("\t")[0] for line in lines(tables.LAWS / "table/fields.tsv")][1:]
    for field in fields:
        names += [line.split("\t")[0] for line in lines(tables.LAWS / f"table/{field}.tsv")][1:]
    return names


def lines(path):
    return [line for line in path.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")]


names = laws()
missing, unknown = set(names) - set(ROWS), set(ROWS) - set(names)
if missing or unknown:
    raise SystemExit(f"without a value: {sorted(missing)}; unknown: {sorted(unknown)}")
rows = [tables.row("law", "constants", "replaced", "givens", "asked", "unit", "expected", "within", "source")]
for name in names:
    r = ROWS[name]
    rows.append(tables.row(r.law, r.constants, r.replaced, r.givens, r.asked, r.unit, f"{r.expected:.13g}", f"{r.within:.3g}", r.source))
tables.write(tables.FIXTURES / "laws_evaluated.tsv", HEADER, rows)

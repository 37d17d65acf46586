"""Number words agree with num2words, a library of its own, but for the differences that are listed and explained."""

import csv
import random
import re
import subprocess
from pathlib import Path

import pytest
from num2words import num2words

from environment import jar, java

HERE = Path(__file__).parent
SAMPLES = 10_000
# Our language and scale, what num2words calls the language, and the power of ten up to which it goes.
LANGUAGES = [
    ("BRITISH", "SHORT", "en", 66),
    ("INDIAN_ENGLISH", "INDIAN", "en_IN", 10),
    ("SPANISH", "LONG", "es", 27),
    ("FRENCH", "MILLIARD", "fr", 66),
    ("GERMAN", "MILLIARD", "de", 66),
    ("BRAZILIAN", "SHORT", "pt_BR", 18),
    ("PORTUGUESE", "LONG", "pt", 27),
    ("ITALIAN", "MILLIARD", "it", 63),
]


def differences(language):
    with open(HERE / "number_words_differences.tsv", encoding="utf-8", newline="") as file:
        lines = (line for line in file if not line.startswith("#"))
        rows = list(csv.DictReader(lines, delimiter="\t", quoting=csv.QUOTE_NONE))
    assert all(row["reason"] and row["source"] for row in rows)
    assert {row["in"] for row in rows} == {"theirs", "both"}
    assert {row["language"] for row in rows} <= {language for language, *_ in LANGUAGES}
    return [row for row in rows if row["language"] == language]


def samples(seed, reach):
    """Groups of three, many of them zero, small or whole hundreds, so that every joint is met."""
    source = random.Random(seed)
    group = [
        lambda: 0,
        lambda: 0,
        lambda: source.randrange(100),
        lambda: 100 * source.randrange(10),
        lambda: source.randrange(1000),
        lambda: source.randrange(1000),
    ]
    numbers = []
    while len(numbers) < SAMPLES:
        number = 0
        for _ in range(source.randint(1, (reach + 2) // 3)):
            number = 1000 * number + source.choice(group)()
        if number < 10**reach:
            numbers.append(-number if source.random() < 0.1 else number)
    return numbers


def spelled(language, scale, numbers):
    command = [java(), "-cp", str(jar()), str(HERE / "SpellMany.java"), language, scale]
    lines = "\n".join(map(str, numbers))
    done = subprocess.run(command, input=lines, capture_output=True, text=True, encoding="utf-8", timeout=300)
    assert done.returncode == 0, done.stderr
    return done.stdout.splitlines()


def reconciled(theirs, ours, listed, needed):
    """Both texts after the listed differences; adds the numbers of the rows that were needed."""
    for i, row in enumerate(listed):
        becomes = row["becomes"].replace("_", " ")
        changed = re.sub(row["pattern"], becomes, theirs)
        if changed != theirs and theirs != ours:
            needed.add(i)
        theirs = changed
        if row["in"] == "both":
            ours = re.sub(row["pattern"], becomes, ours)
    return theirs, ours


@pytest.mark.parametrize("language, scale, name, reach", LANGUAGES, ids=[row[0] for row in LANGUAGES])
def test_they_agree_but_for_the_listed_differences(language, scale, name, reach):
    listed, needed = differences(language), set()
    numbers = samples(41, reach)
    for number, ours in zip(numbers, spelled(language, scale, numbers), strict=True):
        theirs = num2words(number, lang=name)
        wanted, given = reconciled(theirs, ours, listed, needed)
        assert given == wanted, f"{number}: we say {ours}; num2words says {theirs}"
    never = [row["pattern"] for i, row in enumerate(listed) if i not in needed]
    assert not never, "a listed difference was never needed"

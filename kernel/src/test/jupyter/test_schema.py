"""The published schema, read by another validator, and notebooks that use all of it."""

import json
import subprocess

import jsonschema
import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

from environment import JAVA_KERNEL, LESSONS, MODULE, jar, java, plainscale

SCHEMA = json.loads(
    (MODULE.parent / "lib/src/main/resources/plainscale/document/lesson.schema.json").read_text(encoding="utf-8")
)
KEY = "plainscale"
NOTEBOOK, CELL = SCHEMA["$defs"]["notebook"]["properties"], SCHEMA["$defs"]["cell"]["properties"]


def faults(definition, value):
    part = {"$schema": SCHEMA["$schema"], "$ref": f"#/$defs/{definition}", "$defs": SCHEMA["$defs"]}
    return [error.message for error in jsonschema.Draft202012Validator(part).iter_errors(value)]


def examples(fields):
    return {name: field["examples"][0] for name, field in fields.items()}


@pytest.fixture
def full(tmp_path):
    """A notebook with every field of the schema and fields of somebody else."""
    cell = new_code_cell("1 + 1", metadata={KEY: {**examples(CELL), "role": "result", "mine": {"a": [1]}}, "tags": ["x"]})
    notebook = new_notebook(
        cells=[new_markdown_cell("# " + NOTEBOOK["title"]["examples"][0]), cell],
        metadata={
            "kernelspec": {"name": JAVA_KERNEL, "language": "java", "display_name": "Java"},
            KEY: {**examples(NOTEBOOK), "mine": None},
        },
    )
    path = tmp_path / "full.ipynb"
    nbformat.write(notebook, path)
    return path


def found(path):
    """What the check finds; it fails on purpose where there are errors."""
    command = [java(), "-jar", str(jar()), "check", "--json", str(path)]
    done = subprocess.run(command, capture_output=True, text=True, encoding="utf-8", timeout=300)
    assert done.returncode in (0, 1) and done.stderr == "", done.stderr
    return json.loads(done.stdout)


def test_the_schema_is_one_of_2020_12():
    assert SCHEMA["$schema"] == jsonschema.Draft202012Validator.META_SCHEMA["$id"]
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


@pytest.mark.parametrize("lesson", LESSONS, ids=lambda path: path.stem)
def test_the_lessons_that_ship_keep_to_it(lesson):
    notebook = nbformat.read(lesson, as_version=4)
    assert faults("notebook", notebook.metadata.get(KEY, {})) == []
    for cell in notebook.cells:
        assert faults("cell", cell.metadata.get(KEY, {})) == []


def test_a_notebook_with_every_field_is_one_of_format_4_5(full):
    notebook = nbformat.read(full, as_version=nbformat.NO_CONVERT)
    nbformat.validate(notebook, version=4, version_minor=5)
    assert faults("notebook", notebook.metadata[KEY]) == []
    assert faults("cell", notebook.cells[1].metadata[KEY]) == []


def test_the_check_reads_every_field_and_leaves_those_of_others_alone(full):
    assert [finding for finding in found(full) if finding["rule"] == "metadata"] == []


def converted(source, target):
    plainscale("convert", source, "--out", target)
    return target


@pytest.mark.parametrize("lesson", LESSONS, ids=lambda path: path.stem)
def test_a_lesson_that_is_converted_there_and_back_is_one_of_format_4_5(lesson, tmp_path):
    assert_converts(lesson, tmp_path)


def test_so_is_a_notebook_with_every_field(full, tmp_path):
    assert_converts(full, tmp_path)


def assert_converts(path, folder):
    """Through the text form the notebook keeps its metadata, and stays a notebook that both schemas accept."""
    text = converted(path, folder / "there.md")
    back = nbformat.read(converted(text, folder / "back.ipynb"), as_version=nbformat.NO_CONVERT)
    nbformat.validate(back, version=4, version_minor=5)
    before = nbformat.read(path, as_version=4)
    assert own(back) == own(before)
    assert [cell.metadata for cell in back.cells] == [cell.metadata for cell in before.cells]
    assert faults("notebook", back.metadata[KEY]) == []


def own(notebook):
    """What it says of itself; each conversion writes the digest anew."""
    return {field: value for field, value in notebook.metadata[KEY].items() if field != "twin"}


def test_both_validators_refuse_the_same(tmp_path):
    expected = {}
    for field in NOTEBOOK:
        for number, value in enumerate([None, True, -1, 45, 3.5, "", "x", "long", [], [7], ["x"], {"a": 1}]):
            path = tmp_path / f"{field}-{number}.ipynb"
            nbformat.write(new_notebook(cells=[new_markdown_cell("# T")], metadata={KEY: {field: value}}), path)
            expected[str(path)] = bool(faults("notebook", {field: value}))
    refused = {finding["file"] for finding in found(tmp_path) if finding["rule"] == "metadata"}
    assert refused == {path for path, fault in expected.items() if fault}
    assert 0 < len(refused) < len(expected)

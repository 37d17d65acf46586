"""The students' copy of a lesson runs in the real kernel from the first blank to the last."""

import re

import nbformat
import pytest
from nbclient import NotebookClient

from environment import KERNEL, LESSONS, plainscale

# Values of our own, not those of the lesson: mass, thread, distance and radius, one after the other.
MEASURED = {
    "m": ("? ± ? g", "3.10 ± 0.05 g"),
    "s": ("? ± ? m", "0.800 ± 0.002 m"),
    "d": ("? ± ? cm", "12.0 ± 0.5 cm"),
    "r": ("? ± ? cm", "1.90 ± 0.02 cm"),
}


@pytest.fixture(scope="module", params=LESSONS, ids=lambda path: path.stem)
def copy(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp("students")
    plainscale("handout", request.param, "--edition", "student", "--notebook", "--out", folder)
    (path,) = folder.iterdir()
    assert path.name == f"{request.param.stem}-student.ipynb"
    return path


@pytest.fixture(scope="module")
def balls(tmp_path_factory):
    folder = tmp_path_factory.mktemp("balls")
    (lesson,) = [path for path in LESSONS if path.stem == "two-balls"]
    plainscale("handout", lesson, "--edition", "student", "--notebook", "--out", folder)
    return folder / "two-balls-student.ipynb"


def executed(notebook):
    NotebookClient(notebook, timeout=120, kernel_name=KERNEL, record_timing=False).execute()
    return notebook


def filled(path, *names):
    """The copy with the values of these names put in."""
    notebook = nbformat.read(path, as_version=4)
    (givens,) = [cell for cell in notebook.cells if cell.id == "givens"]
    for name in names:
        blank, value = MEASURED[name]
        assert f"given {name} = {blank}" in givens.source
        givens.source = givens.source.replace(f"given {name} = {blank}", f"given {name} = {value}")
    return notebook


def outputs(notebook):
    return [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]


def text(notebook, identity):
    (cell,) = [cell for cell in notebook.cells if cell.id == identity]
    return "\n".join(output.data["text/plain"] for output in cell.outputs)


def test_it_is_a_notebook_of_format_4_5_without_outputs(copy):
    notebook = nbformat.read(copy, as_version=nbformat.NO_CONVERT)
    nbformat.validate(notebook, version=4, version_minor=5)
    assert (notebook.nbformat, notebook.nbformat_minor) == (4, 5)
    assert notebook.metadata.kernelspec.name == KERNEL
    assert outputs(notebook) == []
    assert len({cell.id for cell in notebook.cells}) == len(notebook.cells)


def test_it_runs_to_its_end_before_anything_is_filled_in(copy):
    notebook = executed(nbformat.read(copy, as_version=4))
    shown = outputs(notebook)
    assert [output for output in shown if output.output_type in ("error", "stream")] == []
    said = "\n".join(output.data["text/plain"] for output in shown)
    assert "is still blank: put your value" in said
    assert " waits for " in said
    nbformat.validate(notebook, version=4, version_minor=5)


def test_nothing_for_the_teacher_is_in_it(copy):
    notebook = nbformat.read(copy, as_version=4)
    roles = {cell.metadata.get("plainscale", {}).get("role") for cell in notebook.cells}
    assert roles.isdisjoint({"answer", "note", "slips"})
    assert notebook.cells[0].source.startswith("**How to work with this notebook.**")
    questions = [i for i, cell in enumerate(notebook.cells) if "question" in str(cell.metadata)]
    assert questions
    assert all(notebook.cells[i + 1].source.startswith("**Your answer:**") for i in questions)


def test_one_value_brings_what_hangs_on_it_alone(balls):
    notebook = executed(filled(balls, "m"))
    assert "w = m g_n = (0.0304 ± 0.0005) N" in text(notebook, "charge")
    assert re.search(r"n_there = .* = \(9\.\d+ ± 0\.\d+\) × 10²³", text(notebook, "count"))
    assert "n_moved waits for s and d, which are still blank." in text(notebook, "count")
    assert "waits for s and d" in text(notebook, "contrast")


def test_all_values_bring_all_results(balls):
    notebook = executed(filled(balls, *MEASURED))
    said = "\n".join(output.data["text/plain"] for output in outputs(notebook))
    assert " waits for " not in said and "blank" not in said
    assert [output for output in outputs(notebook) if output.output_type == "error"] == []
    assert re.search(r"for every one of the first there are about", text(notebook, "contrast"), re.I)


def test_a_value_that_is_put_in_later_updates_what_waited(kernel):
    kernel.execute("given m = ? kg", cell_id="given")
    waiting = kernel.execute("w = 2*m", cell_id="result")
    assert waiting.content["status"] == "ok"
    assert waiting.bundles[0]["text/plain"] == "w waits for m, which is still blank."
    answer = kernel.execute("given m = 3.00 kg", cell_id="given")
    updates = [content["data"]["text/plain"] for content in answer.of("update_display_data")]
    assert updates == ["w = 2*m = 6.00 kg"]

"""Every lesson that ships runs in the real kernel, as a notebook of the published format, and exports."""

import re

import nbformat
import pytest
from nbclient import NotebookClient

from environment import KERNEL, LESSONS, run_python


def test_there_are_lessons():
    assert LESSONS


@pytest.fixture(scope="module", params=LESSONS, ids=lambda path: path.stem)
def lesson(request):
    return request.param


@pytest.fixture(scope="module")
def executed(lesson):
    notebook = nbformat.read(lesson, as_version=4)
    NotebookClient(notebook, timeout=120, kernel_name=KERNEL, record_timing=False).execute()
    return notebook


@pytest.fixture(scope="module")
def exported(executed, lesson, tmp_path_factory):
    folder = tmp_path_factory.mktemp("exported")
    nbformat.write(executed, folder / "lesson.ipynb")
    done = run_python("-m", "nbconvert", "--to", "html", folder / "lesson.ipynb", cwd=folder)
    assert done.returncode == 0, done.stderr
    return (folder / "lesson.html").read_text(encoding="utf-8")


def outputs(notebook):
    return [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]


def test_the_file_is_a_notebook_of_format_4_5(lesson):
    notebook = nbformat.read(lesson, as_version=nbformat.NO_CONVERT)
    nbformat.validate(notebook, version=4, version_minor=5)
    assert (notebook.nbformat, notebook.nbformat_minor) == (4, 5)
    assert notebook.metadata.kernelspec.name == KERNEL
    assert len({cell.id for cell in notebook.cells}) == len(notebook.cells)


def test_it_is_kept_without_outputs_and_counts(lesson):
    notebook = nbformat.read(lesson, as_version=4)
    assert outputs(notebook) == []
    assert {cell.execution_count for cell in notebook.cells if cell.cell_type == "code"} == {None}


def test_it_runs_without_an_error_and_shows_something(executed):
    shown = outputs(executed)
    assert [output for output in shown if output.output_type in ("error", "stream")] == []
    assert any(re.search(r"\d", output.data["text/plain"]) for output in shown)
    nbformat.validate(executed, version=4, version_minor=5)


def test_everything_it_shows_has_text_and_html(executed):
    for output in outputs(executed):
        assert output.data["text/plain"].strip()
        assert output.data["text/html"].strip()


def test_running_it_twice_shows_the_same(executed, lesson):
    again = nbformat.read(lesson, as_version=4)
    NotebookClient(again, timeout=120, kernel_name=KERNEL, record_timing=False).execute()
    assert [o.data["text/plain"] for o in outputs(again)] == [o.data["text/plain"] for o in outputs(executed)]


def test_it_exports_to_html_with_its_outputs(exported):
    assert "jp-OutputArea-output" in exported
    for kind in ("error", "stderr"):
        assert f'data-mime-type="application/vnd.jupyter.{kind}"' not in exported

"""A lesson in the real JupyterLab, in a real browser."""

import re
import shutil

import pytest

import browsers
import lab
from environment import JAVA_LESSONS, LESSONS, TARGET

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module", params=LESSONS + JAVA_LESSONS, ids=lambda path: path.stem)
def page(request, tmp_path_factory):
    folder, state, profile = (tmp_path_factory.mktemp(name) for name in ("work", "state", "profile"))
    shutil.copy(request.param, folder / "lesson.ipynb")
    with (
        lab.server(folder, state) as address,
        browsers.chromium(profile, "--window-size=1280,1000") as session,
    ):
        page = lab.Page(session, address("lesson.ipynb"))
        page.run_all()
        page.lesson = request.param.stem
        yield page


def test_every_cell_ran_without_an_error(page):
    assert page.texts(".jp-RenderedText[data-mime-type='application/vnd.jupyter.error']") == []
    assert page.texts(".jp-RenderedText[data-mime-type='application/vnd.jupyter.stderr']") == []


def test_an_output_with_digits_is_visible(page):
    shown = page.all(".jp-OutputArea-output")
    assert any(output.is_displayed() and re.search(r"\d", output.text) for output in shown)


def test_mathematics_is_typeset(page):
    page.wait(lambda: page.all(".jp-OutputArea-output mjx-container"), "MathJax has worked")
    assert all(element.size["width"] > 0 for element in page.all(".jp-OutputArea-output mjx-container"))


def test_no_tex_is_left_in_the_outputs(page):
    page.wait(lambda: page.all(".jp-OutputArea-output mjx-container"), "MathJax has worked")
    left = [text for text in page.texts(".jp-OutputArea-output") if re.search(r"\\[(\[]|\\frac|\$\$", text)]
    assert left == []


def test_pictures_are_drawn(page):
    sizes = page.session.execute_script(
        "return [...document.querySelectorAll('.jp-OutputArea-output img')].map(i => [i.alt, i.naturalWidth])"
    )
    assert all(alt and width > 0 for alt, width in sizes)


def plain(text):
    """The digits of a number, whatever parts them."""
    return re.sub(r"[^\d.]", "", text)


def test_digits_that_are_copied_are_a_plain_number(page):
    copied = browsers.selected(page.session, ".ps-contrast .ps-digits")
    assert copied
    assert all(re.fullmatch(r"[\d.]*(\s*[A-Za-z/²³·°Ωµ]+)?", text) for text in copied), copied
    shown = page.texts(".ps-contrast .ps-digits")
    assert [plain(text) for text in copied] == [plain(text) for text in shown if plain(text)]


def test_the_whole_lesson_is_photographed(page):
    page.show_whole(1280)
    picture = TARGET / f"jupyterlab-{page.lesson}.png"
    browsers.screenshot(page.session, picture)
    assert picture.read_bytes().startswith(b"\x89PNG")

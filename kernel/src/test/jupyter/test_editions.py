"""The editions of a lesson: lines that a hand can fill, screens that a wall can show."""

import re

import pytest

import browsers
from environment import LESSONS, TARGET, plainscale
from test_handout import References

EDITIONS = ("", "-teacher", "-student", "-projector")
WALL = (1280, 720)
A4 = (794, 1123)
MILLIMETRE = 96 / 25.4  # CSS pixels
SMALLEST_TYPE = 28


@pytest.fixture(scope="module", params=LESSONS, ids=lambda path: path.stem)
def editions(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp("editions")
    plainscale("handout", request.param, "--edition", "all", "--out", folder)
    return {edition: folder / f"{request.param.stem}{edition}.html" for edition in EDITIONS}


@pytest.fixture(scope="module")
def offline(tmp_path_factory):
    with browsers.chromium(tmp_path_factory.mktemp("profile"), browsers.OFFLINE) as session:
        yield session


@pytest.fixture
def wall(offline, editions):
    browsers.resize(offline, *WALL)
    offline.get(editions["-projector"].as_uri())
    return offline


@pytest.fixture
def paper(offline, editions):
    browsers.resize(offline, *A4)
    offline.get(editions["-student"].as_uri())
    offline.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
    yield offline
    offline.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": ""})


def test_there_is_one_file_for_each_edition(editions):
    folder = editions[""].parent
    assert sorted(folder.iterdir()) == sorted(editions.values())


@pytest.mark.parametrize("edition", EDITIONS)
def test_it_refers_to_nothing_outside_and_runs_nothing(editions, edition):
    references = References(editions[edition].read_text(encoding="utf-8"))
    assert references.external == []
    assert "script" not in references.elements


@pytest.mark.browser
def test_nothing_has_to_be_scrolled_sideways_on_the_wall(wall):
    inside, outside = wall.execute_script(
        "const e = document.scrollingElement; return [e.clientWidth, e.scrollWidth]"
    )
    assert outside <= inside
    wide = wall.execute_script(
        """return [...document.querySelectorAll('.screen, .screen .idea, .screen .idea > *')]
          .filter(e => e.scrollWidth > e.clientWidth + 1)
          .map(e => e.closest('.screen').id)"""
    )
    assert wide == []


@pytest.mark.browser
def test_every_screen_fits_on_the_wall(wall):
    tall = wall.execute_script(
        """return [...document.querySelectorAll('.screen')]
          .filter(e => e.offsetHeight > innerHeight + 1).map(e => [e.id, e.offsetHeight])"""
    )
    assert tall == []


@pytest.mark.browser
def test_type_is_large_on_the_wall(wall):
    small = wall.execute_script(
        """return [...document.querySelectorAll('.screen *')]
          .filter(e => !e.closest('svg') && !e.closest('math'))
          .filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
          .filter(e => parseFloat(getComputedStyle(e).fontSize) < arguments[0])
          .map(e => e.outerHTML.slice(0, 80))""",
        SMALLEST_TYPE,
    )
    assert small == []


@pytest.mark.browser
def test_an_anchor_leads_to_its_screen(offline, editions):
    browsers.resize(offline, *WALL)
    offline.get(editions["-projector"].as_uri() + "#s3")
    assert abs(offline.execute_script("return document.getElementById('s3').getBoundingClientRect().top")) < 1


@pytest.mark.browser
def test_each_screen_is_a_page_in_print(wall, editions):
    screens = wall.execute_script("return document.querySelectorAll('.screen').length")
    printed = browsers.pdf(wall, preferCSSPageSize=True)
    (TARGET / f"{editions['-projector'].stem}.pdf").write_bytes(printed)
    assert len(re.findall(rb"/Type\s*/Page\b", printed)) == screens


@pytest.mark.browser
def test_lines_and_gaps_are_large_enough_for_a_hand(paper):
    low = paper.execute_script(
        """return [...document.querySelectorAll('.ws-line, .ws-gap, .ws-box, .ws-grid td')]
          .map(e => e.getBoundingClientRect()).filter(b => b.height < arguments[0]).length""",
        8 * MILLIMETRE - 0.5,
    )
    narrow = paper.execute_script(
        """return [...document.querySelectorAll('.ws-gap')]
          .map(e => e.getBoundingClientRect()).filter(b => b.width < arguments[0]).length""",
        30 * MILLIMETRE,
    )
    assert (low, narrow) == (0, 0)


@pytest.mark.browser
def test_rows_of_boxes_fit_on_paper(paper):
    wide = paper.execute_script(
        """const right = document.querySelector('main').getBoundingClientRect().right
        return [...document.querySelectorAll('.ws-row, .ws-row *, .ws-grid')]
          .filter(e => e.getBoundingClientRect().right > right + 1).length"""
    )
    assert wide == 0


@pytest.mark.browser
def test_numbers_begin_under_one_another(paper):
    first = paper.execute_script(
        """return [...document.querySelectorAll('div.ws-number')]
          .map(number => number.querySelector('.ws-row .ws-box')).filter(box => box)
          .map(box => Math.round(box.getBoundingClientRect().left))"""
    )
    assert len(first) > 1
    assert len(set(first)) == 1


@pytest.mark.browser
def test_the_students_page_prints(paper, editions):
    printed = browsers.pdf(paper, paperWidth=8.27, paperHeight=11.69)
    (TARGET / f"{editions['-student'].stem}.pdf").write_bytes(printed)
    assert len(re.findall(rb"/Type\s*/Page\b", printed)) > 1

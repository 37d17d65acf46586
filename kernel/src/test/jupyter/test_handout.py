"""The handout: one file that needs nothing else, reads on paper and on a telephone."""

import re
from html.parser import HTMLParser

import pytest

import browsers
from environment import LESSONS, TARGET, plainscale

LINKS = {"src", "href", "xlink:href", "srcset", "action", "formaction", "poster", "data", "background"}
SCHEME = re.compile(r"^\s*(?!data:)(//|[a-z][a-z0-9+.-]*:)", re.I)
CSS_LINK = re.compile(r"url\(\s*['\"]?([^'\")]*)|@import\s+['\"]?([^'\";]*)", re.I)
WIDTHS = {"A4": 794, "telephone": 390}  # CSS pixels: 210 mm, and a common small screen


class References(HTMLParser):
    """Every address that a page mentions in a place where a browser follows or fetches it."""

    def __init__(self, html):
        super().__init__()
        self.found, self.elements = [], set()
        self.feed(html)
        self.close()
        for match in CSS_LINK.finditer(html):
            self.found.append(match[1] or match[2] or "")

    def handle_starttag(self, tag, attrs):
        self.elements.add(tag)
        self.found += [value or "" for name, value in attrs if name in LINKS]

    @property
    def external(self):
        return [address for address in self.found if SCHEME.match(address)]


@pytest.fixture(scope="module", params=LESSONS, ids=lambda path: path.stem)
def handout(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp("handout")
    plainscale("handout", request.param, "--out", folder)
    (page,) = folder.glob("*.html")
    return page


@pytest.fixture(scope="module")
def offline(tmp_path_factory):
    with browsers.chromium(tmp_path_factory.mktemp("profile"), browsers.OFFLINE) as session:
        yield session


@pytest.fixture
def opened(offline, handout):
    browsers.resize(offline, WIDTHS["A4"], 1123)
    offline.get(handout.as_uri())
    return offline


def test_it_is_the_only_file(handout):
    assert [path.name for path in handout.parent.iterdir()] == [handout.name]


def test_it_refers_to_nothing_outside(handout):
    assert References(handout.read_text(encoding="utf-8")).external == []


def test_it_says_its_language_and_encoding_and_has_mathematics(handout):
    html = handout.read_text(encoding="utf-8")
    assert re.match(r"(?i)\s*<!doctype html>", html)
    assert re.search(r"<html[^>]* lang=", html)
    assert re.search(r"(?i)<meta[^>]* charset=['\"]?utf-8", html[:1024])
    assert "math" in References(html).elements
    assert "script" not in References(html).elements


@pytest.mark.browser
def test_the_mathematics_is_drawn(opened):
    boxes = opened.execute_script(
        "return [...document.querySelectorAll('math')].map(m => m.getBoundingClientRect().width)"
    )
    assert boxes
    assert all(width > 0 for width in boxes)


@pytest.mark.browser
def test_it_fetches_nothing(opened):
    fetched = opened.execute_script("return performance.getEntriesByType('resource').map(e => e.name)")
    assert [name for name in fetched if not name.startswith("data:")] == []


@pytest.mark.browser
def test_it_prints(opened, handout):
    printed = browsers.pdf(opened, paperWidth=8.27, paperHeight=11.69)
    (TARGET / f"{handout.stem}.pdf").write_bytes(printed)
    assert printed.startswith(b"%PDF")
    assert len(re.findall(rb"/Type\s*/Page\b", printed)) > 0


@pytest.mark.browser
@pytest.mark.parametrize("medium", ["screen", "print"])
@pytest.mark.parametrize("width", WIDTHS.values(), ids=WIDTHS.keys())
def test_nothing_sticks_out_sideways(opened, width, medium):
    opened.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": medium})
    browsers.resize(opened, width, 1123)
    try:
        inside, outside = opened.execute_script(
            "const e = document.scrollingElement; return [e.clientWidth, e.scrollWidth]"
        )
        assert outside <= inside
    finally:
        opened.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": ""})


@pytest.mark.browser
def test_on_a_desk_no_result_has_to_be_scrolled_sideways(opened):
    browsers.resize(opened, 900, 1123)
    hidden = opened.execute_script(
        """return [...document.querySelectorAll('.worked')]
          .filter(e => e.scrollWidth > e.clientWidth + 1).map(e => e.innerText.slice(0, 80))"""
    )
    assert hidden == []


@pytest.mark.browser
def test_every_picture_has_a_text(opened):
    silent = opened.execute_script(
        """return [...document.querySelectorAll('img, svg')]
          .filter(e => !e.closest('[aria-hidden=true]'))
          .filter(e => !(e.getAttribute('alt') || e.getAttribute('aria-label') || e.querySelector('title')))
          .map(e => e.outerHTML.slice(0, 100))"""
    )
    assert silent == []


@pytest.mark.browser
def test_digits_that_are_copied_are_a_plain_number(opened):
    copied = browsers.selected(opened, ".ps-contrast .ps-digits")
    numbers = [re.match(r"[\d.]*", text)[0] for text in copied]
    assert any(numbers)
    # Only a unit follows, so that no room or sign parts the digits.
    assert all(re.fullmatch(r"[\d.]*(\s+[^\d\s].*)?", text, re.DOTALL) or not number for number, text in zip(numbers, copied))
    shown = opened.execute_script(
        "return [...document.querySelectorAll('.ps-contrast .ps-digits')].map(place => place.innerText)"
    )
    assert "".join(numbers) == re.sub(r"[^\d.]", "", "".join(re.split(r"[^\d.\s]", text)[0] for text in shown))

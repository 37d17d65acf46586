"""What cells show: text and HTML for everything, and for a mistake one error made of sentences."""

from html.parser import HTMLParser

import pytest

BAD = {
    "unknown name": "nowhere + 1",
    "adds unlike units": "x = 1 m + 1 s",
    "unknown unit": "given m = 3 flurbs",
    "no value": "given m =",
    "no name": "= 3 g",
    "open bracket": "x = (1 + 2\ny = 3",
    "closing bracket": "x = 1 + 2)",
    "unending text": 'say "never closed',
    "division by zero": "1 / 0",
    "root of a negative number": "sqrt(-4)",
    "logarithm of a length": "ln(3 m)",
    "arcsine beyond one": "asin(2)",
    "unit in an exponent": "2^(3 m)",
    "fraction that can be read in two ways": "k = 2\nq = 3\n6 / k q",
    "two readings of a unit": "given m = 3 g\n2 m",
    "huge power": "10^10^10^10",
    "itself": "a = b\nb = a\na",
    "a character of no language": "x = 3 \u2603",
    "control characters": "x = \x00\x07",
    "deep brackets": "(" * 9000 + "1" + ")" * 9000,
    "show what is not there": "show nowhere in mN",
    "wrong unit to show": "given m = 3 g\nshow m in s",
    "contrast unlike units": "given m = 3 g\ngiven t = 2 s\ncontrast m with t",
    "figures below one": "given m = 3 g\nshow m in g to 0 figures",
}


@pytest.mark.parametrize("code", BAD.values(), ids=BAD.keys())
def test_a_mistake_is_one_error_of_sentences(shared, code):
    answer = shared.execute(code)
    assert answer.content["status"] == "error"
    (error,) = answer.of("error")
    assert error == {key: answer.content[key] for key in ("ename", "evalue", "traceback")}
    assert error["ename"] and error["evalue"]
    text = "\n".join([error["ename"], error["evalue"], *error["traceback"]])
    for trace in ("\tat ", ".java", "java.", "Exception", "plainscale.", "null"):
        assert trace not in text
    assert len(text) < 5000
    assert shared.execute("1 + 1").bundles[0]["text/plain"] == "2"


def test_a_very_long_line_is_answered(kernel):
    answer = kernel.execute("x = " + "1 + " * 50000 + "1")
    assert answer.content["status"] in ("ok", "error")
    assert kernel.execute("1 + 1").bundles[0]["text/plain"] == "2"


def test_what_was_shown_is_updated_when_a_given_is_run_again(kernel):
    kernel.execute("given m = 2.0 g", cell_id="a")
    shown = kernel.execute("w = m g_n\nshow w in mN to 2 figures", cell_id="b")
    identities = {content["transient"]["display_id"] for content in shown.of("display_data")}
    again = kernel.execute("given m = 3.0 g", cell_id="a")
    updates = again.of("update_display_data")
    assert {content["transient"]["display_id"] for content in updates} & identities
    assert any("29" in content["data"]["text/plain"] for content in updates)


SHOWN = {
    "a given": 'given m = 2.70 ± 0.05 g "mass"',
    "a definition": "given m = 3.0 g\nw = m g_n",
    "a value in a unit": "given m = 3.0 g\nshow m in kg to 2 figures",
    "a sentence": 'n = 5\nsay "There are {n} & <b>more</b> of them"',
    "a contrast": "a = 3\nb = 8.7e12\ncontrast a with b",
    "a result": "2 m * 3 m",
}
FORBIDDEN = {"math", "svg", "script", "style", "iframe", "object", "embed", "link", "form"}


class Elements(HTMLParser):
    """The names of the elements and attributes of a piece of HTML."""

    def __init__(self, html):
        super().__init__()
        self.elements, self.attributes = set(), set()
        self.feed(html)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.elements.add(tag)
        self.attributes.update(name for name, _ in attrs)


@pytest.mark.parametrize("code", SHOWN.values(), ids=SHOWN.keys())
def test_everything_shown_has_text_and_html_that_survives_sanitising(kernel, code):
    answer = kernel.execute(code)
    assert answer.content["status"] == "ok"
    assert answer.bundles
    for bundle in answer.bundles:
        assert bundle["text/plain"].strip()
        found = Elements(bundle["text/html"])
        assert not found.elements & FORBIDDEN
        assert not [name for name in found.attributes if name.startswith("on")]
        assert "application/json" not in bundle
        assert not [key for key in bundle if ";" in key]


def test_text_from_the_user_is_text_in_the_html(shared):
    (bundle,) = shared.execute('say "<i>a</i> < b"').bundles
    assert "i" not in Elements(bundle["text/html"]).elements
    assert bundle["text/plain"].strip() == "<i>a</i> < b"

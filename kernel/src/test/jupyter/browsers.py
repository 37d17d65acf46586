"""A headless Chromium without a past, and without anything it would like to fetch for itself."""

import base64
import shutil
from contextlib import contextmanager

from selenium import webdriver

BROWSERS = ("chromium", "chromium-browser", "google-chrome", "chrome")
QUIET = (
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)
OFFLINE = "--host-resolver-rules=MAP * ~NOTFOUND"


def found(names):
    """The first of these commands that the machine has."""
    return next((path for path in map(shutil.which, names) if path), None)


@contextmanager
def chromium(profile, *flags):
    """A driver; `profile` is an empty folder for this browser alone."""
    browser, driver = found(BROWSERS), found(("chromedriver",))
    if not browser or not driver:
        raise FileNotFoundError(
            'Chromium and chromedriver are needed; leave these tests out with -m "not browser"'
        )
    options = webdriver.ChromeOptions()
    options.binary_location = browser
    for flag in (*QUIET, f"--user-data-dir={profile}", *flags):
        options.add_argument(flag)
    session = webdriver.Chrome(options=options, service=webdriver.ChromeService(driver))
    try:
        yield session
    finally:
        session.quit()


def resize(session, width, height):
    """The page's own size in CSS pixels, whatever the window does."""
    metrics = {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": False}
    session.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", metrics)


def screenshot(session, path):
    picture = session.execute_cdp_cmd("Page.captureScreenshot", {"captureBeyondViewport": True})
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(base64.b64decode(picture["data"]))


def pdf(session, **options):
    printed = session.execute_cdp_cmd("Page.printToPDF", {"printBackground": True, **options})
    return base64.b64decode(printed["data"])


def selected(session, selector):
    """What a reader copies who selects each of these places in turn; empty ones are left out."""
    return session.execute_script(
        """return [...document.querySelectorAll(arguments[0])].map(place => {
          getSelection().selectAllChildren(place)
          return getSelection().toString().trim()
        }).filter(text => text)""",
        selector,
    )

"""A JupyterLab server of our own, and a lesson opened in it."""

import json
import secrets
import socket
import subprocess
import sys
import time
import urllib.request
from contextlib import contextmanager

from selenium.common.exceptions import TimeoutException
from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import WebDriverWait

import browsers
from environment import PATIENCE, TARGET

SETTINGS = {
    # Every cell stands in the page, also those that are out of sight.
    "@jupyterlab/notebook-extension/tracker": {"windowingMode": "none"},
    "@jupyterlab/apputils-extension/notification": {"checkForUpdates": False, "fetchNews": "false"},
}


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@contextmanager
def server(folder, state):
    """Serves `folder`; JupyterLab's settings and workspaces go to `state`. Yields the address to open."""
    for name, content in SETTINGS.items():
        path = state / "settings" / f"{name}.jupyterlab-settings"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(json.dumps(content), encoding="utf-8")
    port, token = free_port(), secrets.token_hex(16)
    command = [
        sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root",
        "--ServerApp.ip=127.0.0.1", f"--ServerApp.port={port}", "--ServerApp.port_retries=0",
        f"--ServerApp.root_dir={folder}", f"--IdentityProvider.token={token}",
        f"--LabApp.user_settings_dir={state / 'settings'}", f"--LabApp.workspaces_dir={state / 'workspaces'}",
        "--LabApp.news_url=None", "--LabApp.extension_manager=readonly",
    ]  # fmt: skip
    with open(state / "server.log", "wb") as log:
        process = subprocess.Popen(command, stdout=log, stderr=log, stdin=subprocess.DEVNULL, cwd=folder)
    try:
        _wait_for(process, f"http://127.0.0.1:{port}/api/status?token={token}", state / "server.log")
        yield lambda path: f"http://127.0.0.1:{port}/lab/tree/{path}?reset&token={token}"
    finally:
        process.terminate()
        process.wait(timeout=PATIENCE)


def _wait_for(process, address, log):
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end and process.poll() is None:
        try:
            with urllib.request.urlopen(address, timeout=5):
                return
        except OSError:
            time.sleep(0.2)
    raise RuntimeError("JupyterLab did not start:\n" + log.read_text(encoding="utf-8", errors="replace"))


class Page:
    """A notebook that is open in a browser."""

    def __init__(self, session, address):
        self.session = session
        session.get(address)
        self.wait(lambda: self.all(".jp-Notebook .jp-Cell"), "the notebook is open")
        self.wait(self._idle, "the kernel is idle")

    def wait(self, condition, what, patience=PATIENCE):
        """Waits; when it was in vain, leaves a picture of what stood there instead."""
        try:
            WebDriverWait(self.session, patience, poll_frequency=0.2).until(lambda _: condition())
        except TimeoutException as problem:
            browsers.screenshot(self.session, TARGET / "jupyterlab-failed.png")
            raise AssertionError(f"waited in vain until {what}") from problem

    def all(self, selector):
        return self.session.find_elements(By.CSS_SELECTOR, selector)

    def texts(self, selector):
        """What the page shows at these places, read at once."""
        return self.session.execute_script(
            "return [...document.querySelectorAll(arguments[0])].map(e => e.innerText)", selector
        )

    def run_all(self):
        """Through the menu, as a teacher would."""
        self._click(".lm-MenuBar-item", "Run")
        self._click('.lm-Menu-item[data-command="runmenu:run-all"]')
        self.wait(self._all_ran, "the last cell has its number", patience=3 * PATIENCE)
        self.wait(self._idle, "the kernel is idle")

    def _all_ran(self):
        prompts = self.texts(".jp-CodeCell .jp-InputPrompt")
        return prompts and all(prompt.strip(" []:").isdigit() for prompt in prompts)

    def _click(self, selector, text=""):
        def visible():
            return [e for e in self.all(selector) if e.is_displayed() and text in e.text]

        self.wait(visible, f"{selector} is there")
        visible()[0].click()

    def _idle(self):
        # The round indicator beside the kernel's name says idle before there is a kernel; the status
        # bar's words do not, and they change only when the front end has heard from the kernel.
        return any(text.strip().endswith("| Idle") for text in self.texts(".jp-StatusBar-TextItem"))

    def show_whole(self, width):
        """Makes the window as high as the notebook, and goes to its beginning."""
        panel = "document.querySelector('.jp-WindowedPanel-outer')"
        height = self.session.execute_script(f"return {panel}.scrollHeight")
        browsers.resize(self.session, width, height + 200)
        first = "document.querySelector('.jp-Cell').getBoundingClientRect().top"
        script = f"{panel}.scrollTop = 0; return {first} >= {panel}.getBoundingClientRect().top"
        self.wait(lambda: self.session.execute_script(script), "the first cell is in sight")

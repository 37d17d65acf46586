"""Where things are, and a Jupyter of our own: its folders hold our kernelspec and nothing of the user's."""

import json
import os
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

MODULE = Path(__file__).resolve().parents[3]
TARGET = MODULE / "target"
SHIPPED = sorted((MODULE.parent / "notebooks").glob("*.ipynb"))
JAVA_LESSONS = [path for path in SHIPPED if json.loads(path.read_text(encoding="utf-8"))["metadata"]["plainscale"].get("cells") == "java"]
LESSONS = [path for path in SHIPPED if path not in JAVA_LESSONS]
KERNEL = "plainscale"
JAVA_KERNEL = "plainscale-java"
# Seconds after which something is taken to hang; nothing is measured by it.
PATIENCE = 60


def jar():
    """The jar under test: PLAINSCALE_JAR, or the one that the build has left in target."""
    path = Path(os.environ.get("PLAINSCALE_JAR", TARGET / "plainscale.jar"))
    if not path.is_file():
        raise FileNotFoundError(f"{path}: build it with `mvn package`, or set PLAINSCALE_JAR")
    return path


def java():
    home = os.environ.get("JAVA_HOME")
    return str(Path(home, "bin", "java")) if home else "java"


def plainscale(*arguments):
    """Runs the command line and returns what it printed; fails when it fails."""
    command = [java(), "-jar", str(jar()), *map(str, arguments)]
    done = subprocess.run(command, capture_output=True, text=True, encoding="utf-8", timeout=300)
    if done.returncode != 0:
        raise RuntimeError(f"{command}: {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


class Jupyter:
    """Temporary folders for everything that Jupyter reads and writes, with the kernelspec installed."""

    def __init__(self):
        self.home = Path(tempfile.mkdtemp(prefix="plainscale-"))
        places = {"CONFIG_DIR": "config", "DATA_DIR": "data", "RUNTIME_DIR": "runtime"}
        for name, folder in places.items():
            os.environ[f"JUPYTER_{name}"] = str(self.home / folder)
        os.environ["IPYTHONDIR"] = str(self.home / "ipython")
        os.environ["JUPYTER_PATH"] = str(self.home / "prefix/share/jupyter")
        os.environ["JUPYTER_PLATFORM_DIRS"] = "0"

    def install(self):
        plainscale("install", "--prefix", self.home / "prefix")

    def remove(self):
        shutil.rmtree(self.home, ignore_errors=True)


def run_python(*arguments, **options):
    """A Python module of this environment, such as nbconvert, as a command."""
    return subprocess.run(
        [sys.executable, *map(str, arguments)],
        capture_output=True, text=True, encoding="utf-8", timeout=600, **options,
    )  # fmt: skip

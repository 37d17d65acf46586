import pytest

import environment
from kernels import Kernel

_jupyter = None


def pytest_configure(config):
    """Before any test module is read: the conformance suite starts kernels from class attributes."""
    global _jupyter
    if not config.option.collectonly:
        _jupyter = environment.Jupyter()
        try:
            _jupyter.install()
        except (OSError, RuntimeError) as problem:
            pytest.exit(f"The kernel could not be installed: {problem}", returncode=1)


def pytest_unconfigure(config):
    if _jupyter:
        _jupyter.remove()


@pytest.fixture
def kernel():
    """A kernel that no other test has touched."""
    with Kernel() as started:
        yield started


@pytest.fixture(scope="module")
def shared():
    """One kernel for the tests of a module that do not depend on what was run before."""
    with Kernel() as started:
        yield started

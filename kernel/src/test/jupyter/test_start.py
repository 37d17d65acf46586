"""What a kernel holds in memory, and from when on."""

import subprocess
from pathlib import Path

from environment import java
from kernels import Kernel

SPELLER = ("com.ibm.icu.text.RuleBasedNumberFormat", "plainscale.magnitude.ScaleNames")


def held(kernel, names):
    """Which of these classes have instances in the kernel's process, by the JDK's own tool."""
    jcmd = str(Path(java()).with_name("jcmd")) if "/" in java() else "jcmd"
    pid = str(kernel.manager.provisioner.process.pid)
    histogram = subprocess.run(
        [jcmd, pid, "GC.class_histogram", "-all"], capture_output=True, text=True, check=True, timeout=60
    ).stdout
    words = set(histogram.split())
    return [name for name in names if name in words]


def test_the_speller_is_loaded_by_the_first_word_and_not_before():
    with Kernel() as kernel:
        kernel.execute("given m = 2.70 ± 0.05 g\nw = m g_n")
        assert held(kernel, ("plainscale.sheet.Sheet", *SPELLER)) == ["plainscale.sheet.Sheet"]
        kernel.execute("show w in words")
        assert held(kernel, SPELLER) == list(SPELLER)

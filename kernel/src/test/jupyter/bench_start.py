"""Prints how fast kernels start and answer. Not a test: numbers of one machine at one moment.

python bench_start.py [STARTS [ROUND_TRIPS]]
"""

import statistics
import sys
import time

import psutil
from jupyter_client import KernelManager

from environment import JAVA_KERNEL, KERNEL, PATIENCE, Jupyter

KERNELS = {"Plainscale": KERNEL, "Plainscale Java": JAVA_KERNEL, "ipykernel": "python3"}


def memory(process):
    """Resident megabytes of a process and its children."""
    family = [process, *process.children(recursive=True)]
    return sum(member.memory_info().rss for member in family) / 1e6


def measure(name, trips):
    """Seconds to ready, seconds of each `1+1`, megabytes when ready and after."""
    manager = KernelManager(kernel_name=name)
    begin = time.perf_counter()
    manager.start_kernel()
    client = manager.blocking_client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=PATIENCE)
        ready = time.perf_counter() - begin
        process = psutil.Process(manager.provisioner.process.pid)
        fresh, times = memory(process), []
        for _ in range(trips):
            begin = time.perf_counter()
            reply = client.execute_interactive("1+1", timeout=PATIENCE, output_hook=lambda message: None)
            times.append(time.perf_counter() - begin)
            if reply["content"]["status"] != "ok":
                raise RuntimeError(reply["content"])
        return ready, times, fresh, memory(process)
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)


def main(starts=5, trips=100):
    jupyter = Jupyter()
    try:
        jupyter.install()
        print(f"{starts} starts each, in turns; {trips} round trips of `1+1` after each start")
        print(
            "| kernel | ready, median (s) | worst (s) | first (ms) | `1+1`, median (ms) | fresh (MB) | after (MB) |"
        )
        print("| --- | --- | --- | --- | --- | --- | --- |")
        results = {label: [] for label in KERNELS}
        for _ in range(starts):
            for label, name in KERNELS.items():
                results[label].append(measure(name, trips))
        for label, runs in results.items():
            ready, times, fresh, after = zip(*runs, strict=True)
            median = statistics.median
            print(
                f"| {label} | {median(ready):.2f} | {max(ready):.2f} | {1e3 * median(t[0] for t in times):.1f}"
                f" | {1e3 * median(t for run in times for t in run[1:]):.1f} | {median(fresh):.0f} | {median(after):.0f} |"
            )
    finally:
        jupyter.remove()


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))

"""The line protocol of all rivals: a number in, nanoseconds out."""

import sys
import time


def serve(work, answer=""):
    """Does `work` as often as each line asks, and says how long it took."""
    print("ready", answer, flush=True)
    for line in sys.stdin:
        times = int(line)
        start = time.perf_counter_ns()
        for _ in range(times):
            work()
        print(time.perf_counter_ns() - start, flush=True)

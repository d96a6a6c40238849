"""The curvature that remains of bent tubes, in closed form with NumPy and with numba, on one core.

Reads the number of tubes (8 bytes, little-endian) and six columns of doubles: outer radius, bore radius, elastic
modulus, yield strength, tangent modulus, radius held. Answers JSON: versions, times in nanoseconds a tube, the
curvatures, and digests of the first thousand rows of each column. Where numba is missing it says so and leaves its
part out. The law: elastic up to yield, then straight with the tangent modulus; the neutral axis in the middle.
"""

import hashlib
import json
import os
import sys
from math import asin, inf, pi, sqrt
from time import perf_counter_ns

# One core for all.
for threads in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "NUMBA_NUM_THREADS"):
    os.environ[threads] = "1"

COUNTS = (1_000, 10_000, 100_000)
DIGEST_ROWS = 1_000
# NumPy makes whole columns of every step; blocks of this many rows stay in the cache.
BLOCK = 8_192


def with_numpy(np):
    def disc(r, core, modulus, tangent, curvature, at_zero):
        c = np.minimum(core, r)
        h2 = r * r - c * c
        h = np.sqrt(h2)
        r4 = (r * r) ** 2
        elastic = 0.5 * (r4 * np.arcsin(c / r) - c * h * (r * r - 2.0 * c * c))
        hard = 0.25 * pi * r4 - elastic
        return curvature * (modulus * elastic + tangent * hard) + at_zero * (4.0 / 3.0) * h * h2

    def remaining(columns, out):
        for start in range(0, out.size, BLOCK):
            block = slice(start, start + BLOCK)
            outer, bore, modulus, strength, tangent, radius = (column[block] for column in columns)
            curvature = 1.0 / radius
            core = strength * radius / modulus
            at_zero = strength * (1.0 - tangent / modulus)
            moment = disc(outer, core, modulus, tangent, curvature, at_zero)
            moment -= disc(bore, core, modulus, tangent, curvature, at_zero)
            out[block] = curvature - moment / (modulus * 0.25 * pi * (outer**4 - bore**4))

    return remaining


def with_numba(numba):
    @numba.njit(error_model="numpy", inline="always")
    def disc(r, core, modulus, tangent, curvature, at_zero):
        c = min(core, r)
        h = sqrt(r * r - c * c)
        r4 = r * r * r * r
        elastic = 0.5 * (r4 * asin(c / r) - c * h * (r * r - 2.0 * c * c))
        hard = 0.25 * pi * r4 - elastic
        return curvature * (modulus * elastic + tangent * hard) + at_zero * (4.0 / 3.0) * h * h * h

    @numba.njit(error_model="numpy")
    def loop(outer, bore, modulus, strength, tangent, radius, out):
        for i in range(out.shape[0]):
            curvature = 1.0 / radius[i]
            core = strength[i] * radius[i] / modulus[i]
            at_zero = strength[i] * (1.0 - tangent[i] / modulus[i])
            moment = disc(outer[i], core, modulus[i], tangent[i], curvature, at_zero)
            moment -= disc(bore[i], core, modulus[i], tangent[i], curvature, at_zero)
            o2 = outer[i] * outer[i]
            b2 = bore[i] * bore[i]
            out[i] = curvature - moment / (modulus[i] * 0.25 * pi * (o2 * o2 - b2 * b2))

    return lambda columns, out: loop(*columns, out)


def best(work, count, rounds, milliseconds):
    """Nanoseconds a row: the best of some rounds of a few milliseconds."""
    start = perf_counter_ns()
    work()
    repeats = max(1, int(milliseconds * 1e6 / max(1, perf_counter_ns() - start))) if rounds > 1 else 1
    least = inf
    for _ in range(rounds):
        start = perf_counter_ns()
        for _ in range(repeats):
            work()
        least = min(least, perf_counter_ns() - start)
    return least / (repeats * count)


def main():
    answer = {"python": sys.version.split()[0]}
    try:
        import numpy as np
    except ImportError as error:
        json.dump(answer | {"missing": f"{error}"}, sys.stdout)
        return
    raw = sys.stdin.buffer.read()
    count = int.from_bytes(raw[:8], "little")
    columns = [np.array(column) for column in np.frombuffer(raw, "<f8", offset=8).reshape(6, count)]
    peers = {"numpy": with_numpy(np)}
    answer["numpy"] = np.__version__
    try:
        import numba
    except ImportError as error:
        answer["missing"] = f"{error}"
    else:
        peers["numba"] = with_numba(numba)
        answer["numba"] = numba.__version__
    rounds = 1 if "--once" in sys.argv[1:] else 40
    answer["digests"] = [hashlib.sha256(column[:DIGEST_ROWS].tobytes()).hexdigest()[:16] for column in columns]
    answer["times"], answer["curvatures"] = {}, {}
    for name, remaining in peers.items():
        out = np.empty(count)
        remaining(columns, out)
        answer["curvatures"][name] = out.tolist()
        for rows in COUNTS:
            part = [column[:rows] for column in columns]
            into = np.empty(rows)
            answer["times"][f"{name} {rows}"] = best(lambda: remaining(part, into), rows, rounds, 5)
    json.dump(answer, sys.stdout)


if __name__ == "__main__":
    main()

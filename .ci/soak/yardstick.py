#!/usr/bin/env python3
"""The work that bench/…/yardstick/Yardstick.java does, written with numpy and scipy as an engineer
would: one thread, float32, the fastest plain form of each stage. Usage:

    yardstick.py make FOLDER SAMPLES   the record: int16 files of input, output and load, and a CSV
    yardstick.py run FOLDER            prints a median time for each stage, writes numpy.npz
    yardstick.py compare FOLDER        holds the program's results to numpy's
    yardstick.py csv FOLDER            sums of the CSV's columns, in the last decimal
"""
import os
import sys

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"
import statistics
import time

import numpy as np
from scipy import signal

HOLDS, RATE, RUNS = 200, 1.0e6, 3
FULL_SCALE = {"input": 20.0, "output": 80.0, "load": 5.0}
SETTLE = 0.2
CSV_ROWS = 6_000_000


def make(folder, samples):
    length = samples // HOLDS
    rng = np.random.default_rng(1)
    levels = [0.0, 0.5, 1, 2, 3, 2, 1, 0.5]
    k = np.arange(length, dtype="f4")
    files = {name: open(f"{folder}/{name}.i2", "wb") for name in FULL_SCALE}
    before = 0.0
    for hold in range(HOLDS):
        level = levels[hold % len(levels)]

        def noise():
            return rng.standard_normal(length, dtype="f4")

        ripple = 0.08 * np.sin(2 * np.pi * 0.1003 * k, dtype="f4")
        dip = 0.8 * (level - before) * np.exp(-k / 800)
        values = {
            "input": 12 - 0.08 * level + 0.01 * noise(),
            "output": 48 - 0.03 * level + ripple - dip + 0.02 * noise(),
            "load": level + 0.004 * noise(),
        }
        for name, x in values.items():
            codes = np.clip(np.rint(x / FULL_SCALE[name] * 32768), -32768, 32767)
            codes.astype("<i2").tofile(files[name])
        before = level
    for f in files.values():
        f.close()
    columns = [read(folder, n)[:CSV_ROWS] * (FULL_SCALE[n] / 32768) for n in FULL_SCALE]
    with open(f"{folder}/record.csv", "w") as csv:
        csv.write("time_s,input_V,output_V,load_A\n")
        for at in range(0, len(columns[0]), 100_000):
            part = [c[at : at + 100_000] for c in columns]
            times = np.arange(at, at + len(part[0])) / RATE
            csv.write("".join("%.6f,%.4f,%.4f,%.4f\n" % row for row in zip(times, *part)))


def read(folder, name):
    return np.fromfile(f"{folder}/{name}.i2", "<i2")


def run(folder):
    raw = [read(folder, name) for name in FULL_SCALE]
    scales = [np.float32(full / 32768) for full in FULL_SCALE.values()]
    scaled = [np.empty(len(codes), "f4") for codes in raw]
    _, output, load = scaled
    samples = len(output)
    length = samples // HOLDS
    settle = int(length * SETTLE)

    def calibrate():
        for codes, scale, into in zip(raw, scales, scaled):
            np.multiply(codes, scale, out=into, dtype="f4", casting="unsafe")

    def window_statistics():
        rows = np.empty((HOLDS, 4))
        for hold in range(HOLDS):
            w = output[hold * length + settle : (hold + 1) * length]
            rows[hold] = w.mean(dtype="f8"), w.std(dtype="f8"), w.min(), w.max()
        return rows

    def medians():
        windows = (output[h * length + settle : (h + 1) * length] for h in range(HOLDS))
        return np.array([np.median(w) for w in windows])

    def welch():
        return signal.welch(output, RATE, "hann", 65536, 32768, detrend="constant")[1]

    def steps():
        jumps = np.flatnonzero(np.abs(np.diff(load)) > 0.2)
        return jumps[np.concatenate(([True], np.diff(jumps) > 100))] + 1

    def transients(edges):
        ends = np.append(edges[1:], samples)
        rows = np.empty((len(edges), 2))
        for i, (edge, end) in enumerate(zip(edges, ends)):
            w = output[edge:end]
            mean = w[settle:].mean(dtype="f8")
            outside = np.flatnonzero(np.abs(w - np.float32(mean)) > 0.48)
            rows[i] = mean - w[:settle].min(), (outside[-1] + 1) / RATE if len(outside) else 0
        return rows

    clock = time.process_time if os.environ.get("CLOCK") == "cpu" else time.perf_counter

    def timed(work):
        times = []
        for _ in range(RUNS):
            start = clock()
            result = work()
            times.append(clock() - start)
        return statistics.median(times), result

    t_cal, _ = timed(calibrate)
    t_stat, rows = timed(window_statistics)
    t_median, middle = timed(medians)
    t_welch, density = timed(welch)
    t_steps, edges = timed(steps)
    t_answers, answers = timed(lambda: transients(edges))
    np.savez(f"{folder}/numpy.npz", rows=rows, medians=middle, density=density, edges=edges, answers=answers)
    print("statistics %.6f" % (t_cal + t_stat + t_median))
    print("transients %.6f" % (t_steps + t_answers))
    print("welch %.6f" % t_welch)
    print("all %.6f" % (t_cal + t_stat + t_median + t_welch + t_steps + t_answers))


def compare(folder):
    ours = np.loadtxt(f"{folder}/holds.txt")
    bins = np.loadtxt(f"{folder}/bins.txt")
    theirs = np.load(f"{folder}/numpy.npz")
    density = theirs["density"].astype("f8")
    rounding = 1e-5 * density + 2e-7 * np.sqrt(density * density.max())
    # float32 carries 48 V to 2 µV; the sums of a window are numpy's pairwise ones in double.
    checks = {
        "steps": (ours[1:, 0], theirs["edges"], 0),
        "mean": (ours[:, 1], theirs["rows"][:, 0], 3e-6),
        "deviation": (ours[:, 2], theirs["rows"][:, 1], 1e-6),
        "lowest": (ours[:, 3], theirs["rows"][:, 2], 4e-6),
        "highest": (ours[:, 4], theirs["rows"][:, 3], 4e-6),
        "median": (ours[:, 5], theirs["medians"], 4e-6),
        "undershoot": (ours[1:, 6], theirs["answers"][:, 0], 6e-6),
        "recovery": (ours[1:, 7], theirs["answers"][:, 1], 1e-9),
        # Both compute in single precision, whose rounding the strongest bins leave in all: against
        # what that allows. Bin 0 is what rounding leaves of the mean that was taken out.
        "density": (((bins - density) / rounding)[1:], np.zeros(len(bins) - 1), 1),
    }
    wrong = 0
    for name, (a, b, allowed) in checks.items():
        worst = float(np.max(np.abs(a - b))) if a.shape == b.shape else float("inf")
        print("%-10s %4d values, largest difference %.2g, allowed %.2g" % (name, len(a), worst, allowed))
        wrong += not worst <= allowed
    sys.exit(1 if wrong else 0)


def csv(folder):
    names = list(FULL_SCALE)
    columns = [read(folder, n)[:CSV_ROWS] * (FULL_SCALE[n] / 32768) for n in names]
    sums = [0, 0, 0]
    for i, column in enumerate(columns):
        for at in range(0, len(column), 100_000):
            sums[i] += sum(int(("%.4f" % v).replace(".", "")) for v in column[at : at + 100_000])
    print("rows %d sums %d %d %d" % (len(columns[0]), *sums))


if __name__ == "__main__":
    mode, folder = sys.argv[1:3]
    if mode == "make":
        make(folder, int(float(sys.argv[3])))
    else:
        {"run": run, "compare": compare, "csv": csv}[mode](folder)

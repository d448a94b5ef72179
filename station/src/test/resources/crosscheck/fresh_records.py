#!/usr/bin/env python3
"""Makes ten records of load steps and computes their readings with numpy and scipy, apart from the
program that is checked with them. Each has a formula for its noise-free truth.

usage: fresh_records.py FOLDER SEED
Writes FOLDER/<n>.csv.gz and FOLDER/<n>.json (settings, truth, and numpy's readings of the samples).
Definitions: measures/README.md."""
import gzip, json, sys
import numpy as np
from scipy import optimize, signal

folder, seed = sys.argv[1], int(sys.argv[2])
NOMINAL = 48.0


def record(n, rng):
    switching = n % 3 == 0                      # ripple of a converter, fast; or slow holds with noise
    rate = 1e6 if switching else float(rng.choice([5e3, 10e3, 20e3]))
    hold = 0.009 if switching else float(rng.uniform(1.2, 2.0))
    hold = round(hold * rate) / rate
    settle, guard = (0.004, 1e-4) if switching else (0.3, 0.02)
    loads = [0.0] + [float(x) for x in np.round(rng.choice(np.arange(2, 13), size=rng.integers(2, 6), replace=False) * 0.25, 2)]
    total = round(len(loads) * hold * rate)
    t = np.arange(total) / rate
    k = np.minimum((t / hold + 1e-9).astype(int), len(loads) - 1)
    since = t - k * hold
    resistance = rng.uniform(0.01, 0.3)
    tau = rng.uniform(1e-4, 3e-4) if switching else rng.uniform(2e-3, 8e-3)
    depth = rng.uniform(0.2, 0.5)               # V for each ampere of the step
    drift = 0.0 if switching else rng.uniform(-0.02, 0.02)
    step = np.diff([loads[0]] + loads)
    load = np.array(loads)[k]
    level = NOMINAL - resistance * load
    dip = depth * step[k] * (since / tau) * np.exp(1 - since / tau)
    output = level - dip + drift * (since - hold / 2)
    ripple_Hz = rng.uniform(60e3, 140e3)
    ripple = 0.02 * (1 + load)
    if switching:
        output = output + ripple * np.sin(2 * np.pi * ripple_Hz * t)
    supply = 12.4 - 0.3 * load
    noise = (0.002, 0.001, 0.002) if switching else (0.02, 0.01, 0.005)
    lsb = np.array([80, 20, 5]) / 2 ** int(rng.choice([14, 16]))
    channels = []
    for x, sd, q in zip((output, supply, load), noise, lsb):
        channels.append(np.rint((x + sd * rng.standard_normal(total)) / q) * q)
    channels = [np.round(c, 5) for c in channels]
    with gzip.open(f'{folder}/{n}.csv.gz', 'wt', compresslevel=1) as out:
        out.write('time_s,input_V,output_V,load_A\n')
        np.savetxt(out, np.column_stack([t, channels[1], channels[0], channels[2]]), fmt=['%.7f', '%.5f', '%.5f', '%.5f'], delimiter=',')
    holds = []
    for j in range(len(loads)):
        start, end = j * hold, (j + 1) * hold
        truth = dict(output=NOMINAL - resistance * loads[j] + drift * (settle - guard) / 2, load=loads[j],
                     input=12.4 - 0.3 * loads[j], droop=resistance * loads[j])
        if not switching:
            truth['drift'] = 60 * drift
        if j > 0 and not switching and abs(step[j]) * depth > 1:
            # with noise a return is only sharp where it is steep: the later crossing of ±1 %
            band = 0.01 * NOMINAL / (abs(step[j]) * depth)
            truth['recovery'] = tau * optimize.brentq(lambda x: x * np.exp(1 - x) - band, 1, 60)
        holds.append(dict(start_s=start, end_s=end, truth=truth, numpy=readings(t, channels, rate, start, end, settle, guard, j > 0, switching)))
    zero = holds[0]['numpy']['output']
    for h in holds:
        h['numpy']['droop'] = zero - h['numpy']['output']
        h['numpy']['loadRegulation'] = 100 * h['numpy']['droop'] / h['numpy']['output']
    json.dump(dict(rate_Hz=rate, settle_s=settle, guard_s=guard, nominal_V=NOMINAL, switching=bool(switching), holds=holds), open(f'{folder}/{n}.json', 'w'), indent=1)


def readings(t, channels, rate, start, end, settle, guard, edge, switching):
    output, supply, load = channels
    inside = lambda a, b: (t >= a - 1e-9) & (t < b - 1e-9)
    w = inside(start + settle, end - guard)
    v = output[w]
    r = dict(output=v.mean(), input=supply[w].mean(), load=load[w].mean(), rippleRms=v.std(), ripplePeakToPeak=float(np.ptp(v)),
             inputMinimum=supply[inside(start, end)].min())
    if end - start >= 1:
        r['drift'] = 60 * np.polyfit(t[w] - t[w].mean(), v, 1)[0]
    if switching:
        x = signal.detrend(v) * signal.get_window('hann', len(v))
        a = np.abs(np.fft.rfft(x))
        f = np.fft.rfftfreq(len(v), 1 / rate)
        i = np.flatnonzero(f >= 1.2e3)[0] + np.argmax(a[f >= 1.2e3])
        side = 1 if i + 1 < len(a) and a[i + 1] >= a[i - 1] else -1
        q = a[i + side] / a[i]
        d = (2 * q - 1) / (q + 1)
        r['rippleFundamental'] = (i + side * d) * rate / len(v)
        r['rippleFundamentalAmplitude'] = 4 * a[i] / len(v) / (np.sinc(d) / (1 - d * d))
    if edge:
        y = average(output, rate)
        e = y[inside(start, min(start + settle, end))]
        r['undershoot'], r['overshoot'] = v.mean() - e.min(), e.max() - v.mean()
        z = y[inside(start, end - guard)]
        bad = np.flatnonzero(np.abs(z - v.mean()) > 0.01 * NOMINAL)
        r['recovery'] = 0.0 if len(bad) == 0 else (bad[-1] + 1) / rate
    return {key: float(value) for key, value in r.items()}


def average(x, rate):
    """Centred 20 us mean of the polygon through the samples, where that is at least two samples."""
    half = 10e-6 * rate
    if half < 1:
        return x
    half = int(round(half))
    sums = np.concatenate(([0], np.cumsum((x[1:] + x[:-1]) / 2)))
    i = np.arange(len(x))
    low, high = np.maximum(i - half, 0), np.minimum(i + half, len(x) - 1)
    return (sums[high] - sums[low]) / (high - low)


for n in range(10):
    record(n, np.random.default_rng([seed, n]))

"""The x-ray observer in numpy: sizes for the cases of a JSON file, and the time per size.

Same equations as the program (Hotelling observer over channels, grain and unevenness noise, chord profile of a
sphere, geometric mean of d' over the spread of sizes), vectorised over sizes, frequencies, chords and energy bins;
waves are worked out once for all cases of one pixel. The outside measure of speed for `npm run bench`.
Writes {"sizesMm": [...], "secondsPerSize": s} to standard output.
"""
import json
import sys
import time

import numpy as np

FREQUENCIES = 96
CHORDS = 32
# Standard deviation of ln size, and outer nodes of the three-point Gauss-Hermite rule, so many steps of the sizes away.
SPREAD = 0.2
OUTER_STEPS = 4
STEP = SPREAD * np.sqrt(3) / OUTER_STEPS
SMALLEST_MM = 0.1


def bessel_j0(x):
    """J0 by Abramowitz & Stegun 1964, 9.4.1 and 9.4.3."""
    result = np.empty_like(x)
    near = x <= 3
    t = (x[near] / 3) ** 2
    result[near] = np.polyval([0.00021, -0.0039444, 0.0444479, -0.3163866, 1.2656208, -2.2499997, 1], t)
    far = x[~near]
    u = 3 / far
    f = np.polyval([0.00014476, -0.00072805, 0.00137237, -0.00009512, -0.0055274, -0.00000077, 0.79788456], u)
    theta = far + np.polyval([0.00013558, -0.00029333, -0.00054125, 0.00262573, -0.00003954, -0.04166397, -0.78539816], u)
    result[~near] = f * np.cos(theta) / np.sqrt(far)
    return result


def noise_inverse(case, f):
    n = len(case["foodMu"])
    a = case["objectPixelMm"]
    mtf = np.abs(np.sinc(f * a)) * np.exp(-2 * (np.pi * f * case["blurPixels"] * a) ** 2)
    texture = case["packing"] ** 2 * case["unevennessMm"] ** 2 / (36 * np.pi) / np.maximum(f, 0.05) ** 3
    if case["grainMm"] > 0:
        x = f * case["grainMm"]
        share = min(1, max(0, (case["packing"] - 0.45) / 0.15))
        table = case["texture"]
        inside = np.minimum(x, table["fD"][-1])
        g = np.interp(inside, table["fD"], table["g45"]) * (1 - share) + np.interp(inside, table["fD"], table["g60"]) * share
        g = np.where(x > table["fD"][-1], g * (table["fD"][-1] / np.maximum(x, 1e-9)) ** 4, g)
        texture = texture + case["textureScale"] * case["packing"] * (1 - case["packing"]) * case["pathMm"] * case["grainMm"] ** 3 * g
    t = np.array(case["foodMu"])
    q = np.array(case["noise"])
    seen = texture * mtf**2
    k = seen[:, None, None] * np.outer(t, t)[None]
    k = k + np.eye(n)[None] * (q[None, :, None] + seen[:, None, None] * (case["kappa"] * t[None, :, None]) ** 2)
    return np.linalg.inv(k), mtf


class Waves:
    """What all cases of one pixel share: sizes, frequencies, chords, and J0 at every one of them."""

    def __init__(self, pixel_mm, limit_mm):
        nodes, weights = np.polynomial.legendre.leggauss(FREQUENCIES)
        self.f = (nodes + 1) / 2 / (2 * pixel_mm)
        self.df = weights / 2 / (2 * pixel_mm)
        x, wx = np.polynomial.legendre.leggauss(CHORDS)
        theta = (x + 1) * np.pi / 4
        steps = np.arange(np.floor(np.log(SMALLEST_MM / limit_mm) / STEP) - OUTER_STEPS, OUTER_STEPS + 1)
        self.sizes = limit_mm * np.exp(STEP * steps)
        self.chords = np.outer(self.sizes, np.cos(theta))
        self.measure = 2 * np.pi * np.outer((self.sizes / 2) ** 2, wx * np.pi / 4 * np.cos(theta) * np.sin(theta))
        self.j0 = bessel_j0(2 * np.pi * np.multiply.outer(np.outer(self.sizes / 2, np.sin(theta)), self.f))


def size_of(case, waves):
    inverse, mtf = noise_inverse(case, waves.f)
    # (sizes, chords, bins) against (channels, bins): the relative drop of the signal along each chord.
    drop = -np.expm1(-waves.chords[:, :, None] * np.array(case["deltaMu"])) @ np.array(case["weights"]).T
    s = mtf * np.matmul((drop * waves.measure[:, :, None]).transpose(0, 2, 1), waves.j0)
    form = np.einsum("dif,fij,djf->df", s, inverse, s)
    ln_d = np.log(form @ (2 * np.pi * waves.f * waves.df)) / 2
    inner = slice(OUTER_STEPS, -OUTER_STEPS)
    spread = 2 / 3 * ln_d[inner] + (ln_d[: -2 * OUTER_STEPS] + ln_d[2 * OUTER_STEPS :]) / 6
    above = spread - np.log(case["needed"])
    if above[-1] < 0:
        return None
    last = np.flatnonzero(above < 0)[-1]
    share = above[last] / (above[last] - above[last + 1])
    return float(waves.sizes[inner][last] * np.exp(STEP * share))


def sizes_of(cases):
    shared = {}
    sizes = []
    for case in cases:
        key = (case["objectPixelMm"], case["limitMm"])
        if key not in shared:
            shared[key] = Waves(*key)
        sizes.append(size_of(case, shared[key]))
    return sizes


def main():
    with open(sys.argv[1], encoding="utf8") as file:
        cases = json.load(file)
    sizes_of(cases[:1])
    start = time.process_time()
    sizes = sizes_of(cases)
    json.dump({"sizesMm": sizes, "secondsPerSize": (time.process_time() - start) / len(cases)}, sys.stdout)


main()

"""The x-ray observer in numpy: sizes for the cases of a JSON file, and the time per size.

Same equations as the program (Hotelling observer over channels, grain and unevenness noise, chord
profile of a sphere), vectorised over frequencies, chords and energy bins; the outside measure of
speed for `npm run bench`. Writes {"sizesMm": [...], "secondsPerSize": s} to standard output.
"""
import json
import sys
import time

import numpy as np

FREQUENCIES = 300
CHORDS = 48


def bessel_j0(x):
    """J0 by Abramowitz & Stegun 1964, 9.4.1 and 9.4.3."""
    ax = np.abs(x)
    t = (np.minimum(ax, 3) / 3) ** 2
    small = 1 + t * (-2.2499997 + t * (1.2656208 + t * (-0.3163866 + t * (0.0444479 + t * (-0.0039444 + t * 0.00021)))))
    u = 3 / np.maximum(ax, 3)
    f = 0.79788456 + u * (-0.00000077 + u * (-0.0055274 + u * (-0.00009512 + u * (0.00137237 + u * (-0.00072805 + u * 0.00014476)))))
    theta = ax - 0.78539816 + u * (-0.04166397 + u * (-0.00003954 + u * (0.00262573 + u * (-0.00054125 + u * (-0.00029333 + u * 0.00013558)))))
    return np.where(ax <= 3, small, f * np.cos(theta) / np.sqrt(np.maximum(ax, 3)))


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


def size_of(case):
    a = case["objectPixelMm"]
    nodes, node_weights = np.polynomial.legendre.leggauss(FREQUENCIES)
    f = (nodes + 1) / 2 / (2 * a)
    df = node_weights / 2 / (2 * a)
    inverse, mtf = noise_inverse(case, f)
    w = np.array(case["weights"])
    delta = np.array(case["deltaMu"])
    x, wx = np.polynomial.legendre.leggauss(CHORDS)
    theta = (x + 1) * np.pi / 4

    def d_prime(d):
        r = d / 2
        drop = -np.tensordot(w, np.expm1(-np.outer(delta, d * np.cos(theta))), axes=(1, 0))
        measure = wx * np.pi / 4 * r * np.cos(theta) * 2 * np.pi * r * np.sin(theta)
        s = mtf * ((drop * measure) @ bessel_j0(2 * np.pi * np.outer(r * np.sin(theta), f)))
        form = np.einsum("if,fij,jf->f", s, inverse, s)
        return np.sqrt(np.sum(2 * np.pi * f * form * df))

    low, high = case["limitMm"], case["limitMm"]
    if d_prime(high) < case["needed"]:
        return None
    while d_prime(low) >= case["needed"]:
        high, low = low, low / 1.06
    for _ in range(16):
        middle = np.sqrt(low * high)
        if d_prime(middle) >= case["needed"]:
            high = middle
        else:
            low = middle
    return float(np.sqrt(low * high))


def main():
    with open(sys.argv[1], encoding="utf8") as file:
        cases = json.load(file)
    size_of(cases[0])
    start = time.perf_counter()
    sizes = [size_of(case) for case in cases]
    json.dump({"sizesMm": sizes, "secondsPerSize": (time.perf_counter() - start) / len(cases)}, sys.stdout)


main()

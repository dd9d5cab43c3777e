"""What the tool makes of the torque, and what the link makes of that."""

import math
import random

from gyroscope import Gyroscope
from physics import DT


class Tool:
    angle = False  # whether tools send one

    def __init__(self, rng, rate_hz, noise_nm, filter_hz=None, step_counts=1, gyroscope=None):
        self.rng, self.rate, self.noise, self.filter_hz = rng, rate_hz, noise_nm, filter_hz
        self.gyroscope = gyroscope
        self.step_counts = step_counts  # of 0.01 N·m
        self.zero_nm = rng.uniform(-0.3, 0.3)
        self.clock = 1 + rng.uniform(-50e-6, 50e-6)

    def read(self, world):
        """(seconds, counts, hundredths of a degree) of each sample in turn."""
        nm = lowpass(world.nm, self.filter_hz) if self.filter_hz else world.nm
        deg, end = world.deg, len(nm) - 1
        step_s = self.clock / self.rate
        t = self.rng.uniform(0, step_s)
        gauss = self.rng.gauss
        gyroscope = (self.gyroscope or Gyroscope(random.Random(len(nm)))) if self.angle else None
        out = []
        while True:
            x = t / DT
            i = int(x)
            if i >= end:
                return out
            part = x - i
            value = nm[i] + (nm[i + 1] - nm[i]) * part + self.zero_nm + gauss(0, self.noise)
            angle = gyroscope.says(deg[i] + (deg[i + 1] - deg[i]) * part, step_s) if gyroscope else 0
            out.append((t, self.step_counts * round(100 * value / self.step_counts), angle))
            t += step_s


def lowpass(nm, hz):
    """First order, as a tool smooths its own readings."""
    share = 1 - math.exp(-2 * math.pi * hz * DT)
    y, out = 0.0, []
    for x in nm:
        y += (x - y) * share
        out.append(y)
    return out


class Link:
    """`bunch` samples a packet; arrival late by `late_s` and a jitter; packets lost; the tool may number its packets."""

    def __init__(self, rng, bunch=1, jitter_s=0.0, loss=0.0, counter=False, late_s=0.004):
        self.rng, self.bunch, self.jitter, self.loss, self.counter, self.late = rng, bunch, jitter_s, loss, counter, late_s

    def carry(self, samples):
        """Packets as they arrive: (atUs, samples, readings lost just before that the tool's counter shows), and the holes."""
        rng, last, lost = self.rng, 0, 0
        packets, gone = [], []
        for i in range(0, len(samples), self.bunch):
            packet = samples[i : i + self.bunch]
            if rng.random() < self.loss:
                lost += len(packet)
                gone.append((i, i + len(packet)))
                continue
            late = self.late + (abs(rng.gauss(0, self.jitter)) if self.jitter else 0.0)
            last = max(last, round((packet[-1][0] + late) * 1e6))
            packets.append((last, packet, lost if self.counter else 0))
            lost = 0
        return packets, gone


def ideal_bounds(world, samples, gone, truth):
    """Between which torques one who knows every true torque outside the holes, and when the holes were, must leave the peak."""
    a, b = truth['fromUs'] / 1e6, truth['toUs'] / 1e6
    hidden = set()
    for i, j in gone:
        hidden.update(range(i, j))
    seen = highest = 0.0
    before = None
    hole_from = None
    for i, (t, _, _) in enumerate(samples):
        if t < a - 0.05 or t > b + 0.05:
            continue
        if i in hidden:
            hole_from = before if hole_from is None else hole_from
            continue
        nm = world.nm[int(t / DT)]
        if hole_from is not None:
            t0, nm0, slope = hole_from
            # Unseen it may have gone on at its pace to the end of the hole.
            highest = max(highest, nm0 + slope * (t - t0))
            hole_from = None
        slope = max(0.0, (nm - before[1]) / (t - before[0])) if before and t > before[0] else 0.0
        before = (t, nm, slope)
        seen = max(seen, nm)
    return seen, max(seen, highest)

"""A wrench that lies about, is carried, falls: torques that turn no plug."""

import math

from physics import DT


def laid_down(world):
    rng = world.rng
    for _ in range(rng.randint(1, 3)):
        peak, n = rng.choice([-1, 1]) * rng.uniform(0.2, 3.0), round(rng.uniform(0.04, 0.2) / DT)
        world.feel([peak * math.sin(math.pi * i / n) for i in range(n)])
        world.rest(rng.uniform(0.02, 0.25))


def dropped(world):
    """Strikes the bench, rings or is thrown to one side, strikes again; some come to lie on their own handle and rock."""
    rng = world.rng
    size, gap = rng.uniform(5, 60), rng.uniform(0.12, 0.3)
    rings = rng.random() < 0.5
    for _ in range(rng.randint(1, 4)):
        f, tau, sign = rng.uniform(12, 80), rng.uniform(0.015, 0.08), rng.choice([-1, 1])
        if rings:
            blow = [sign * size * math.exp(-i * DT / tau) * math.sin(2 * math.pi * f * i * DT) for i in range(round(5 * tau / DT))]
        else:
            n = round(rng.uniform(0.008, 0.09) / DT)
            blow = [sign * size * math.sin(math.pi * i / n) for i in range(n)]
        world.feel(blow)
        world.rest(gap)
        size *= rng.uniform(0.3, 0.7)
        gap *= 0.7
    if rng.random() < 0.3:
        f, tau, nm = rng.uniform(1.5, 5), rng.uniform(0.2, 0.8), rng.uniform(1, 9)
        world.feel([nm * math.exp(-i * DT / tau) * math.sin(2 * math.pi * f * i * DT) for i in range(round(4 * tau / DT))])


def carried(world):
    rng = world.rng
    y, share, sigma = 0.0, DT * 2 * math.pi * rng.uniform(0.8, 2.0), rng.uniform(0.1, 0.5)
    nms = []
    kick = sigma * math.sqrt(2 * share) / share
    for _ in range(round(rng.uniform(3, 15) / DT / 20)):
        wanted = rng.gauss(0, kick / math.sqrt(20))
        for _ in range(20):
            y += (wanted - y) * share
            nms.append(y)
    for _ in range(rng.randint(0, 3)):
        at, n, peak = rng.randrange(max(1, len(nms) - 300)), rng.randint(40, 250), rng.choice([-1, 1]) * rng.uniform(0.5, 5)
        for i in range(n):
            if at + i < len(nms):
                nms[at + i] += peak * math.sin(math.pi * i / n)
    world.feel(nms)


def ratchet_play(world):
    rng = world.rng
    for _ in range(rng.randint(2, 8)):
        n, nm = round(rng.uniform(0.2, 0.5) / DT), rng.choice([-1, 1]) * rng.uniform(0.2, 0.9)
        world.feel([nm * min(1, i / 30, (n - i) / 30) for i in range(n)])
        world.rest(rng.uniform(0.05, 0.3))


def leaned_on(world):
    """Hung on a hook or leaned on: it presses for a while."""
    rng = world.rng
    nm, n = rng.choice([-1, 1]) * rng.uniform(0.5, 6), round(rng.uniform(0.5, 4) / DT)
    edge = round(rng.uniform(0.1, 0.4) / DT)
    world.feel([nm * min(1, i / edge, (n - i) / edge) for i in range(n)])


def twisted_by_hand(world):
    """The drive turned in the fist, to try the tool."""
    rng = world.rng
    nm, n = rng.choice([-1, 1, 1]) * rng.uniform(1.5, 9), round(rng.uniform(0.2, 1.2) / DT)
    world.feel([nm * math.sin(math.pi * i / n) ** 0.7 for i in range(n)])


HANDLING_AN_HOUR = ((laid_down, 60), (dropped, 25), (carried, 40), (ratchet_play, 25), (leaned_on, 8), (twisted_by_hand, 4))


def hours(world, seconds):
    """So much of it at random; the truth counts the events."""
    rng = world.rng
    total = sum(n for _, n in HANDLING_AN_HOUR)
    while world.now() < seconds:
        world.rest(rng.expovariate(total / 3600))
        what = rng.choices([f for f, _ in HANDLING_AN_HOUR], [n for _, n in HANDLING_AN_HOUR])[0]
        start, first = world.now(), len(world.nm)
        what(world)
        nms = world.nm[first:]
        world.truth.append(
            {
                'plug': None,
                'was': what.__name__.replace('_', ' '),
                'fromUs': round(start * 1e6),
                'toUs': round(world.now() * 1e6),
                'peakNm': max(nms, key=abs),
                'peakUs': round(start * 1e6),
                'turnedDeg': 0,
                'clickNm': None,
                'ended': 'handling',
            }
        )
    world.rest(4)

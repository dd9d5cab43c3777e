"""Invented jobs at a torque wrench as JSON lines, with what truly happened: python3 generate.py CELL --seed 1 --size 1.

Independent of the program and of its simulator: other physics, other people, another language. Standard library only.
A job is: {"job": …, "truth": […]}, then in the order of arrival {"t": [µs], "c": [counts]} (samples of one packet or more),
{"missed": …}, {"command": …}, and {"end": µs}. With --angle the samples carry "a" too, hundredths of a degree of a gyroscope (gyroscope.py).
"""

import argparse
import json
import random
import sys

sys.dont_write_bytecode = True  # nothing but sources in this folder

import handling
from gyroscope import Gyroscope
from physics import World
from tool import Link, Tool, ideal_bounds
from work import PEOPLE, SEATS, SPRINGS, Bay

NOISE_OF_NM = 60.0
RATES = (100, 200, 500, 1000)
NOISES = (0.0005, 0.001, 0.003)
HABITS = ('smooth', 'hold', 'ratchet', 'snatch', 'jerky')
SPEEDS = (5, 15, 25, 40, 60, 90, 130, 200)
CHUNK = 1000


def put(line):
    sys.stdout.write(json.dumps(line, separators=(',', ':')) + '\n')


def send(cell, key, bay, tool, link):
    """One job as it reaches the station."""
    world = bay.world
    samples = tool.read(world)
    packets, gone = link.carry(samples)
    for truth in world.truth if gone else ():
        truth['seenNm'], truth['mayBeNm'] = ideal_bounds(world, samples, gone, truth)
    cylinders = len(bay.joints)
    put(
        {
            'job': {
                'cell': cell,
                'key': key,
                'seat': bay.seat,
                'lowerNm': bay.lower,
                'upperNm': bay.upper,
                'cylinders': cylinders,
                'clicks': bay.click is not None,
                'stepCounts': tool.step_counts,
            },
            'truth': world.truth,
        }
    )
    commands = list(world.commands)
    t, c, a, last = [], [], [], 0

    def flush():
        if t:
            put({'t': t, 'c': c, 'a': a} if tool.angle else {'t': t, 'c': c})
        t.clear(), c.clear(), a.clear()

    for at_us, packet, lost in packets:
        if lost:
            flush()
            put({'missed': {'fromUs': last, 'atUs': at_us, 'readings': lost}})
        while commands and commands[0][0] * 1e6 <= at_us:
            flush()
            put({'command': commands.pop(0)[1]})
        for _, count, deg in packet:
            t.append(at_us)
            c.append(count)
            a.append(deg)
        last = at_us
        if len(t) >= CHUNK:
            flush()
    flush()
    put({'end': last})


def one_pull(cell, key, rng, seat, spring, habit, rate, noise, clicks=True, drop=None, fall_s=None, drag=None, filter_hz=None, step_counts=1, link=None):
    """A plug on its own, its setting drawn from a little below the window to a little above."""
    bay = Bay(rng, seat, spring, 1, clicks, None, drop, fall_s)
    bay.setting = rng.uniform(0.97 * bay.lower, 1.03 * bay.upper)
    if clicks:
        bay.click.setting = bay.setting
    bay.pull(1, habit, (0.8, 2.2), drag=drag)
    bay.world.rest(3.5)
    send(cell, key, bay, Tool(rng, rate, noise * NOISE_OF_NM, filter_hz, step_counts), link or Link(rng))


def draw(seed, *name):
    return random.Random('/'.join(map(str, (seed, *name))))


def some_joint(rng):
    return rng.choice(SEATS), rng.choice(list(SPRINGS))


def plain_drop(rng):
    """A click that is easy to see: what weak ones do has a cell of its own."""
    return rng.uniform(0.12, 0.40)


def pulls(seed, size):
    for habit in HABITS:
        for rate in RATES:
            for noise in NOISES:
                for n in range(max(1, round(6 * size))):
                    rng = draw(seed, 'pulls', habit, rate, noise, n)
                    key = {'habit': habit, 'rate': rate, 'noise': 100 * noise}
                    one_pull('pulls', key, rng, *some_joint(rng), habit, rate, noise)


def unclicked(seed, size):
    """A wrench that only shows the torque."""
    for habit in HABITS:
        for rate in RATES:
            for n in range(max(1, round(9 * size))):
                rng = draw(seed, 'unclicked', habit, rate, n)
                one_pull('unclicked', {'habit': habit, 'rate': rate}, rng, *some_joint(rng), habit, rate, rng.choice(NOISES), clicks=False)


def coarse(seed, size):
    """Steps of 0.01, 0.05, 0.1 and 0.2 N·m."""
    for counts in (1, 5, 10, 20):
        for rate in (100, 1000):
            for n in range(max(1, round(18 * size))):
                rng = draw(seed, 'coarse', counts, rate, n)
                one_pull('coarse', {'step N·m': counts / 100, 'rate': rate}, rng, *some_joint(rng), rng.choice(HABITS[:2]), rate, 0.0005, step_counts=counts)


def slow(seed, size):
    for rate in (10, 20, 30, 50):
        for seat in SEATS:
            for n in range(max(1, round(12 * size))):
                rng = draw(seed, 'slow', rate, seat, n)
                one_pull('slow', {'rate': rate, 'seat': seat}, rng, seat, rng.choice(list(SPRINGS)), 'smooth', rate, 0.001)


def jitter(seed, size):
    for bunch, ms in ((1, 2), (1, 6), (1, 15), (4, 0), (10, 6)):
        for rate in (100, 200):
            for n in range(max(1, round(18 * size))):
                rng = draw(seed, 'jitter', bunch, ms, rate, n)
                link = Link(rng, bunch, ms / 1000)
                one_pull('jitter', {'bunch': bunch, 'jitter ms': ms, 'rate': rate}, rng, *some_joint(rng), rng.choice(HABITS[:3]), rate, 0.001, link=link)


def filtered(seed, size):
    for hz in (0, 10, 5, 3):
        for n in range(max(1, round(27 * size))):
            rng = draw(seed, 'filter', hz, n)
            one_pull('filter', {'filter Hz': hz}, rng, *some_joint(rng), 'smooth', 100, 0.001, filter_hz=hz or None)


def drag(seed, size):
    for nm in (0.0, 0.2, 0.4, 0.8):
        for rate in (100, 500):
            for n in range(max(1, round(18 * size))):
                rng = draw(seed, 'drag', nm, rate, n)
                one_pull('drag', {'drag N·m': nm, 'rate': rate}, rng, *some_joint(rng), 'ratchet', rate, 0.001, drag=nm)


def weak(seed, size):
    for drop in (0.05, 0.08, 0.12, 0.2, 0.4):
        for ms in (10, 30, 60):
            for n in range(max(1, round(9 * size))):
                rng = draw(seed, 'weak', drop, ms, n)
                one_pull('weak', {'drop %': round(100 * drop), 'fall ms': ms}, rng, *some_joint(rng), 'smooth', 100, 0.001, drop=drop, fall_s=ms / 1000)


def trial(seed, size):
    """Whole jobs with a wrench whose click is weak or not, with a trial click before the first plug and without."""
    for drop in (0.05, 0.06, 0.07, 0.08, 0.09, 0.12, 0.2):
        for tried in (False, True):
            for n in range(max(1, round(9 * size))):
                rng = draw(seed, 'trial', drop, n)
                bay = Bay(rng, *some_joint(rng), 4, drop=drop, fall_s=rng.uniform(0.010, 0.050))
                if tried:
                    bay.tries_click()
                PEOPLE['careful'](bay, [1, 2, 3, 4])
                bay.world.rest(4)
                send('trial', {'drop %': round(100 * drop), 'trial': tried}, bay, Tool(rng, 100, 0.001 * NOISE_OF_NM), Link(rng))


def loss(seed, size):
    for rate, bunch in ((100, 1), (200, 10), (500, 10), (1000, 20)):
        for share in (0.01, 0.05, 0.10):
            for counter in (False, True):
                for n in range(max(1, round(18 * size))):
                    rng = draw(seed, 'loss', rate, bunch, share, counter, n)
                    key = {'rate': rate, 'bunch': bunch, 'loss %': round(100 * share), 'counter': counter}
                    link = Link(rng, bunch, 0.002, share, counter)
                    one_pull('loss', key, rng, *some_joint(rng), rng.choice(('smooth', 'hold', 'snatch')), rate, 0.001, link=link)


def leftout(seed, size):
    """All plugs but the last, with care; then an earlier one again at a steady pace, in its place. 108 jobs a pace at size 1."""
    for pace in SPEEDS:
        for seat in SEATS:
            for spring in SPRINGS:
                for n in range(max(1, round(12 * size))):
                    rng = draw(seed, 'leftout', pace, seat, spring, n)
                    bay = Bay(rng, seat, spring, 4, drop=plain_drop(rng))
                    for plug in (1, 2, 3):
                        bay.go()
                        bay.pull(plug)
                    bay.go()
                    bay.again(rng.choice((1, 2, 3)), 'steady', pace, note='in place of the last')
                    bay.world.rest(4)
                    key = {'pace deg/s': pace, 'seat': seat, 'spring': spring}
                    send('leftout', key, bay, Tool(rng, rng.choice((100, 200, 500)), rng.choice(NOISES) * NOISE_OF_NM), Link(rng))


def gyroscopes(seed, size):
    """The same at several paces, with a gyroscope that fails: it must not prove what it does not know. 108 jobs a fault at size 1."""
    for fault in ('drifts', 'wraps', 'stands', 'turned round', 'jumps'):
        for pace in (5, 25, 90):
            for seat in SEATS:
                for n in range(max(1, round(12 * size))):
                    rng = draw(seed, 'gyroscopes', fault, pace, seat, n)
                    bay = Bay(rng, seat, rng.choice(list(SPRINGS)), 4, drop=plain_drop(rng))
                    for plug in (1, 2, 3):
                        bay.go()
                        bay.pull(plug)
                    bay.go()
                    bay.again(rng.choice((1, 2, 3)), 'steady', pace, note='in place of the last')
                    bay.world.rest(4)
                    tool = Tool(rng, rng.choice((100, 200, 500)), rng.choice(NOISES) * NOISE_OF_NM, gyroscope=Gyroscope(rng, fault))
                    send('gyroscopes', {'fault': fault, 'pace deg/s': pace, 'seat': seat}, bay, tool, Link(rng))


def people(seed, size):
    for who, works in PEOPLE.items():
        for n in range(max(1, round(18 * size))):
            rng = draw(seed, 'people', who, n)
            seat, spring = some_joint(rng)
            bay = Bay(rng, seat, spring, 6, clicks=n % 4 != 3, drop=plain_drop(rng))
            works(bay, list(range(1, 7)))
            bay.world.rest(4)
            key = {'who': who, 'seat': seat}
            send('people', key, bay, Tool(rng, rng.choice((100, 200, 500)), rng.choice(NOISES) * NOISE_OF_NM), Link(rng))


def handled(seed, size):
    """12 h at size 1, a job every quarter of an hour."""
    for n in range(max(1, round(48 * size))):
        rng = draw(seed, 'handling', n)
        bay = Bay(rng, *some_joint(rng), 4)
        handling.hours(bay.world, 900)
        send('handling', {'rate': 100}, bay, Tool(rng, 100, rng.choice(NOISES) * NOISE_OF_NM), Link(rng))


def cost(seed, size):
    """One long job at 1 kHz, to see what a sample costs."""
    rng = draw(seed, 'cost')
    bay = Bay(rng, 'new gasket', 'short', max(4, round(8 * size)))
    PEOPLE['careful'](bay, list(range(1, len(bay.joints) + 1)))
    send('cost', {'rate': 1000}, bay, Tool(rng, 1000, 0.06), Link(rng))


CELLS = {
    'pulls': pulls,
    'unclicked': unclicked,
    'weak': weak,
    'trial': trial,
    'drag': drag,
    'filter': filtered,
    'coarse': coarse,
    'slow': slow,
    'jitter': jitter,
    'loss': loss,
    'leftout': leftout,
    'gyroscopes': gyroscopes,
    'people': people,
    'handling': handled,
    'cost': cost,
}

if __name__ == '__main__':
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument('cell', choices=CELLS)
    asked.add_argument('--seed', type=int, default=1)
    asked.add_argument('--size', type=float, default=1.0)
    asked.add_argument('--angle', action='store_true', help='the tool sends its angle too')
    given = asked.parse_args()
    Tool.angle = World.turns = given.angle or given.cell == 'gyroscopes'
    CELLS[given.cell](given.seed, given.size)

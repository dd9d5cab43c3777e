"""A plug in its thread, pulled by a wrench through a series spring: what the drive of the tool feels.

Quasi-static. The hand turns the handle; wrench, extension and joint wind up as one spring; the plug stands until the torque
exceeds static friction, then turns against kinetic friction of a seat that hardens. Degrees, N·m, seconds.
All constants are assumptions of a size that workshops see; none is a maker's figure.
"""

import math
import random

DT = 0.001
STANDS_AFTER_S = 0.03
TIMEOUT_S = 25.0


class Joint:
    """One plug and its seat. `phi` counts from where the seat first carries load."""

    def __init__(self, rng, seat, nominal_nm, series):
        self.seat = seat
        self.series = series
        self.nominal = nominal_nm
        self.rng = rng
        self.sigma = rng.uniform(0.02, 0.18)  # static over kinetic friction
        self.slip_deg = rng.uniform(0.2, 1.0)  # on which the excess dies away
        self.relax = rng.uniform(0.0, 0.07)  # of the clamp force that settling costs
        self.ripple = rng.choice([0.0, 0.0, rng.uniform(0.003, 0.02)])
        self.ripple_deg = rng.uniform(0.8, 4.0)
        self.shape(seat)
        self.fit()

    def shape(self, seat):
        rng = self.rng
        if seat == 'new gasket':
            # Touches, collapses at a nearly steady torque, then hardens as the ring closes.
            self.reach, self.line, self.power, self.collapse = rng.uniform(170, 250), rng.uniform(0.08, 0.25), rng.uniform(2.0, 3.6), rng.uniform(0.0, 0.10)
        elif seat == 'used gasket':
            self.reach, self.line, self.power, self.collapse = rng.uniform(24, 46), rng.uniform(0.5, 0.8), rng.uniform(1.3, 1.8), 0.0
        else:
            self.reach, self.line, self.power, self.collapse = rng.uniform(14, 27), rng.uniform(0.3, 0.7), rng.uniform(1.3, 1.9), 0.0

    def fit(self):
        """Screwed in by hand with a holder that is not the wrench, until it is snug."""
        hand_nm = self.rng.uniform(1.5, 4.5) if self.seat == 'new gasket' else self.rng.uniform(0.4, 1.5)
        self.phi = self.at(min(hand_nm, 0.3 * self.nominal))
        self.stand(-10.0)
        self.pulled_nm = 0.0

    def taken_out(self):
        """A gasket that was crushed stays so."""
        if self.seat == 'new gasket' and self.pulled_nm > 0.5 * self.nominal:
            self.seat = 'used gasket'
            self.shape(self.seat)
        self.fit()

    def kinetic(self, phi):
        x = phi / self.reach
        if x <= 0:
            return 0.0
        nm = self.line * x + (1 - self.line - self.collapse) * x**self.power
        if self.collapse:
            nm += self.collapse * (1 - math.exp(-x / 0.07))
        nm *= self.nominal
        return nm * (1 + self.ripple * math.sin(2 * math.pi * phi / self.ripple_deg)) if self.ripple else nm

    def at(self, nm):
        """Where turning takes so much."""
        low, high = 0.0, 3 * self.reach
        for _ in range(30):
            mid = (low + high) / 2
            low, high = (mid, high) if self.kinetic(mid) < nm else (low, mid)
        return low

    def stand(self, now):
        self.stands, self.since, self.still = True, now, 0.0

    def holds_nm(self, now):
        rested = now - self.since
        stiffer = 1 + self.sigma * (1 - math.exp(-rested / 0.3))
        return self.kinetic(self.phi) * stiffer * (1 - self.relax * (1 - math.exp(-rested / 30)))

    def advance(self, nm, now):
        """One step under the torque `nm`; turns the plug where it gives way."""
        if self.stands:
            if nm < 0.8 * self.kinetic(self.phi) or nm <= self.holds_nm(now):
                return
            self.excess = max(0.0, self.holds_nm(now) / max(1e-9, self.kinetic(self.phi)) - 1)
            self.stands, self.from_phi, self.still = False, self.phi, 0.0
        resists = self.kinetic(self.phi) * (1 + self.excess * math.exp(-(self.phi - self.from_phi) / self.slip_deg))
        over = nm - resists
        if over > 0:
            self.phi += over / (self.series + 2 * self.nominal / self.reach) * 0.5
            self.still = 0.0
            return
        self.still += DT
        if self.still > STANDS_AFTER_S:
            self.stand(now)


class World:
    """All that the drive of the tool feels, every millisecond, and what truly happened."""

    turns = False  # whether anybody looks at how the handle turns where no torque is felt

    def __init__(self, rng):
        self.rng = rng
        self.nm = []
        self.deg = []
        self.truth = []
        self.commands = []

    def now(self):
        return len(self.nm) * DT

    def feel(self, values, deg=None):
        last = self.deg[-1] if self.deg else 0.0
        self.nm.extend(values)
        self.deg.extend([last] * len(values) if deg is None else deg)

    def rest(self, seconds):
        self.feel([0.0] * round(seconds / DT))

    def carry(self, seconds):
        """To another plug: the handle is turned on the way."""
        if not self.turns:
            return self.rest(seconds)
        n = round(seconds / DT)
        first = self.deg[-1] if self.deg else 0.0
        rng = random.Random(len(self.nm))
        knots = [0.0, *(rng.uniform(-90, 90) for _ in range(3))]
        path = []
        for a, b in zip(knots, knots[1:]):
            path += smooth(a, b, n * DT / 4)
        path = path[:n]
        path += [path[-1] if path else 0.0] * (n - len(path))
        self.feel([0.0] * n, [first + x for x in path])

    def slack(self):
        """Teeth and play are taken up before anything is felt."""
        if not self.turns:
            return
        rng = random.Random(len(self.nm))
        first = self.deg[-1] if self.deg else 0.0
        self.feel([0.0] * 60, [first + x for x in smooth(0.0, rng.uniform(0.5, 6), 60 * DT)])

    def say(self, **command):
        self.commands.append((self.now(), command))


def eased(start, end, seconds):
    """From one torque to the other, fast at first."""
    n = max(1, round(seconds / DT))
    return [start + (end - start) * (1 - (1 - (i + 1) / n) ** 2) for i in range(n)]


def smooth(start, end, seconds):
    n = max(1, round(seconds / DT))
    return [start + (end - start) * (s * s * (3 - 2 * s)) for s in ((i + 1) / n for i in range(n))]


def held(nm, seconds, tremor, rng):
    f1, f2, p1, p2 = rng.uniform(2, 4), rng.uniform(6, 10), rng.uniform(0, 6.28), rng.uniform(0, 6.28)
    n = round(seconds / DT)
    return [
        nm * (1 + tremor * min(1, i / 100) * (0.6 * math.sin(6.28 * f1 * i * DT + p1) + 0.4 * math.sin(6.28 * f2 * i * DT + p2)))
        for i in range(n)
    ]


def stroke(world, plug, joint, hand, click, goal_nm, arc_deg=None, note='fresh'):
    """One pull until the wrench clicks, the goal is reached, or the arm is at its end; gives what truly happened.

    `click`: None for a wrench that only shows the torque. A wrench that clicks above the goal is let off there.
    """
    rng = world.rng
    k = joint.series
    world.slack()
    first, start = len(world.nm), world.now()
    phi0 = joint.phi
    theta, nm, t = phi0, 0.0, 0.0
    trip = None if click is None else click.trip(rng)
    turn_from = 0.92 * goal_nm if trip is None or goal_nm < trip else None
    nms, degs = [], []
    base = (world.deg[-1] if world.deg else 0.0) - phi0
    ended, slope = 'goal', 1.0
    while t < TIMEOUT_S:
        theta += hand.speed(t, nm, goal_nm) * DT
        before = nm
        joint.advance(k * (theta - joint.phi), start + t)
        nm = k * (theta - joint.phi)
        nms.append(nm)
        degs.append(base + theta)
        t += DT
        slope = 0.9 * slope + 0.1 * (nm - before) / DT
        if trip is not None and nm >= trip:
            ended = 'click'
            break
        if turn_from is not None and nm >= turn_from:
            break
        if arc_deg is not None and theta - phi0 >= arc_deg:
            ended = 'arc'
            break
    fired = t if ended == 'click' else None
    if ended == 'click':
        low = nm * (1 - click.drop)
        then = eased(nm, low, click.fall_s)
        falls = len(then)
        after = low + hand.follow(rng) * (nm - low)
        then += smooth(low, after, rng.uniform(0.06, 0.2))
        then += held(after, hand.holds(rng), hand.tremor, rng)
    elif ended == 'goal':
        top = max(goal_nm, nm)
        then = eased(nm, top, min(0.6, max(0.02, 2 * (top - nm) / max(1.0, slope))))
        then += held(top, hand.holds(rng), hand.tremor, rng)
    else:
        then = []
    top_of_then = then[-1] if then else nm
    lets_go = len(then)
    then += smooth(top_of_then, 0.0, rng.uniform(*hand.lets_go_s))
    tip = 0.0
    for i, wanted in enumerate(then):
        joint.advance(wanted, start + t)
        nms.append(wanted)
        elastic = base + joint.phi + wanted / k
        if fired is not None and i < falls:
            # The head gives way under a handle that stays where it is.
            tip = max(0.0, degs[-1] - elastic)
        # It springs back when hardly anything is left.
        home = min(1.0, max(0.0, wanted / goal_nm - 0.12) / 0.15) if i >= lets_go else 1.0
        degs.append(elastic + tip * home)
        t += DT
    world.feel(nms, degs)
    peak = max(nms)
    joint.pulled_nm = max(joint.pulled_nm, peak)
    world.truth.append(
        {
            'plug': plug,
            'was': note,
            'fromUs': us(start),
            'toUs': us(world.now()),
            'peakNm': peak,
            'peakUs': us((first + nms.index(peak)) * DT),
            'turnedDeg': round(joint.phi - phi0, 3),
            'clickNm': None if fired is None else trip,
            'ended': ended,
        }
    )
    return ended


def back_swing(world, drag_nm, arc_deg):
    """A ratchet is swung back: its pawls drag the other way. Often the next stroke follows without a rest."""
    rng = world.rng
    n = round(rng.uniform(0.3, 1.2) / DT)
    f, depth = rng.uniform(15, 40), rng.choice([0.0, rng.uniform(0.05, 0.35)])
    edge = 40
    at = world.deg[-1]
    world.rest(rng.choice([0.0, rng.uniform(0.03, 0.1)]))
    world.feel(
        [-drag_nm * min(1, i / edge, (n - i) / edge) * (1 - depth * math.sin(6.28 * f * i * DT)) for i in range(n)],
        [at - arc_deg * i / n for i in range(n)],
    )
    world.rest(rng.choice([0.0, rng.uniform(0.03, 0.12)]))


def loosen(world, plug, joint, with_this_wrench):
    """Backed out; another tool leaves no trace in the readings."""
    rng = world.rng
    start, first = world.now(), len(world.nm)
    if not with_this_wrench:
        world.rest(rng.uniform(2, 4))
    else:
        breaks = rng.uniform(0.72, 0.98) * joint.kinetic(joint.phi) * (1 + joint.sigma)
        down = smooth(0.0, -breaks, rng.uniform(0.25, 0.7)) + eased(-breaks, -0.6 * breaks, 0.03)
        down += smooth(-0.6 * breaks, -0.1 * breaks, rng.uniform(0.4, 0.9)) + smooth(-0.1 * breaks, 0.0, 0.3)
        world.feel(down)
    nms = world.nm[first:]
    world.truth.append(
        {
            'plug': plug,
            'was': 'loosened' if with_this_wrench else 'loosened unseen',
            'fromUs': us(start),
            'toUs': us(world.now()),
            'peakNm': min(nms),
            'peakUs': us(start),
            'turnedDeg': -90,
            'clickNm': None,
            'ended': 'out',
        }
    )
    joint.taken_out()


def us(seconds):
    return round(seconds * 1e6)

"""How people pull."""

import math


class Click:
    """A setting wrench: at its setting it gives way for a moment."""

    def __init__(self, rng, setting_nm, drop=None, fall_s=None):
        self.setting = setting_nm
        self.spread = rng.uniform(0.002, 0.008)
        self.drop = rng.uniform(0.05, 0.40) if drop is None else drop
        self.fall_s = rng.uniform(0.010, 0.060) if fall_s is None else fall_s

    def trip(self, rng):
        return self.setting * (1 + rng.gauss(0, self.spread))


class Hand:
    """`pace`: degrees of wrench a second. `habit`: smooth, hold, snatch, jerky; a ratchet is swung by a smooth hand."""

    def __init__(self, rng, habit, pace):
        self.habit, self.pace = habit, pace
        self.up_s = {'jerky': 0.08, 'steady': 0.02}.get(habit) or rng.uniform(0.15, 0.4)
        self.tremor = rng.uniform(0.003, 0.012)
        self.shake = rng.uniform(0.03, 0.08)
        self.f = (rng.uniform(2.5, 4.5), rng.uniform(6, 9))
        self.p = (rng.uniform(0, 6.28), rng.uniform(0, 6.28))
        self.slows = {'steady': 0.0, 'jerky': rng.uniform(0.0, 0.3)}.get(habit, rng.uniform(0.2, 0.6))
        self.lets_go_s = (0.04, 0.12) if habit == 'snatch' else (0.08, 0.3)
        self.rng = rng
        self.knot = (0.0, 1.0, 0.1, 1.0)
        # Brought up calmly so far, then torn.
        self.torn_from, self.torn_pace = rng.choice([0.0, rng.uniform(0.3, 0.7)]), rng.uniform(120, 350)

    def speed(self, t, nm, goal):
        if self.habit == 'snatch':
            return self.torn_pace if nm > self.torn_from * goal else self.pace * min(1.0, t / 0.2)
        up = min(1.0, t / self.up_s)
        if self.habit == 'steady':
            return self.pace * up
        v = self.pace * up * (1 + self.shake * (math.sin(6.28 * self.f[0] * t + self.p[0]) + 0.6 * math.sin(6.28 * self.f[1] * t + self.p[1])))
        if self.habit == 'jerky':
            v *= self.jerk(t)
        share = nm / goal
        if share > 0.7 and self.slows:
            v *= max(0.15, 1 - self.slows * (share - 0.7) / 0.3)
        return v

    def jerk(self, t):
        from_s, was, to_s, will = self.knot
        if t >= to_s:
            rng = self.rng
            low = -0.3 if rng.random() < 0.15 else 0.1
            self.knot = from_s, was, to_s, will = (t, will, t + rng.uniform(0.05, 0.18), rng.uniform(low, 2.3))
        return was + (will - was) * (t - from_s) / (to_s - from_s)

    def follow(self, rng):
        """How much of the drop the hand makes good before it understands; some go on beyond the click, some let go at once."""
        low, high = {'snatch': (0.2, 1.2), 'jerky': (0.0, 1.1), 'hold': (0.3, 0.95)}.get(self.habit, (-0.3, 0.85))
        return rng.uniform(low, high)

    def holds(self, rng):
        low, high = {'hold': (0.4, 1.5), 'snatch': (0.0, 0.06)}.get(self.habit, (0.02, 0.2))
        return rng.uniform(low, high)


def own_pace(rng, joint, goal_nm, seconds):
    """The pace at which this plug takes so long."""
    angle = max(0.0, joint.at(goal_nm) - joint.phi) + goal_nm / joint.series
    return min(140.0, angle / rng.uniform(*seconds))

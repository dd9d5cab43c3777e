"""What a tool says of its angle: a gyroscope in the handle, summed up. Degrees in, hundredths of a degree out."""


class Gyroscope:
    """`fault`: None, or what goes wrong with it."""

    def __init__(self, rng, fault=None):
        self.rng, self.fault = rng, fault
        self.gain = 1 + rng.gauss(0, 0.005)
        self.bias = rng.gauss(0, 0.05)  # degrees a second that it runs by itself
        self.wander = rng.uniform(0.001, 0.006)  # and how that changes, per root second
        self.walk = rng.uniform(0.01, 0.05)  # degrees per root second
        self.noise = rng.uniform(0.02, 0.1)
        self.step = rng.choice([1, 5, 10, 25])
        self.sum = rng.uniform(-180, 180)
        self.last = None
        self.went = 0.0
        if fault == 'drifts':
            self.bias = rng.choice([-1, 1]) * rng.uniform(1.5, 4)
        self.jumps_s = 0.0

    def says(self, deg, dt):
        rng = self.rng
        if self.last is not None:
            self.bias += rng.gauss(0, self.wander) * dt**0.5
            self.sum += self.gain * (deg - self.last) + self.bias * dt + rng.gauss(0, self.walk) * dt**0.5
        self.last = deg
        out = self.sum + rng.gauss(0, self.noise)
        if self.fault == 'wraps':
            out %= 90.0
        elif self.fault == 'stands':
            out = 12.3
        elif self.fault == 'turned round':
            out = -out
        elif self.fault == 'jumps':
            self.jumps_s -= dt
            if self.jumps_s <= 0:
                self.sum += rng.choice([-1, 1]) * rng.uniform(25, 120)
                self.jumps_s = rng.uniform(0.2, 2.0)
        return self.step * round(100 * out / self.step)

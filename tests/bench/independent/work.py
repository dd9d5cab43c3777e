"""Whole jobs: who works, on which joints, in what order. Nobody looks at a screen: what is done next is drawn beforehand."""

from hands import Click, Hand, own_pace
from physics import Joint, World, back_swing, loosen, stroke

SEATS = ('new gasket', 'used gasket', 'cone')
# Spring of wrench, extension and joint, N·m a degree at 20 N·m.
SPRINGS = {'short': (3.0, 8.0), 'extension': (1.3, 3.0), 'soft': (0.5, 1.3)}
WINDOWS = {'new gasket': (25.0, 30.0), 'used gasket': (25.0, 30.0), 'cone': (15.0, 20.0)}
CALM_S = (0.8, 2.0)
PAUSE_S = (3.5, 8.0)


class Bay:
    """An engine with its plugs, one wrench, one person."""

    def __init__(self, rng, seat, spring, cylinders, clicks=True, setting=None, drop=None, fall_s=None, pause_s=PAUSE_S):
        self.rng, self.seat, self.pause_s = rng, seat, pause_s
        self.lower, self.upper = WINDOWS[seat]
        self.world = World(rng)
        low, high = SPRINGS[spring]
        series = rng.uniform(low, high)
        middle = (self.lower + self.upper) / 2
        self.joints = [Joint(rng, seat, middle, series) for _ in range(cylinders)]
        self.setting = setting if setting is not None else middle * (1 + rng.gauss(0, 0.01))
        self.click = Click(rng, self.setting, drop, fall_s) if clicks else None
        self.world.rest(rng.uniform(2.0, 4.0))

    def goal(self):
        """Where a wrench without a click is let off; with one, far enough to be sure that it clicks."""
        if self.click is not None:
            return 1.2 * self.setting
        return self.setting * (1 + self.rng.gauss(0, 0.012))

    def pull(self, plug, habit='smooth', seconds=CALM_S, pace=None, share=None, note='fresh', drag=None):
        """One tightening, in one stroke or with a ratchet; `share`: only so far."""
        joint, rng = self.joints[plug - 1], self.rng
        goal = self.goal() if share is None else share * self.setting
        if pace is None:
            pace = own_pace(rng, joint, min(goal, self.setting), seconds)
        if habit != 'ratchet':
            return stroke(self.world, plug, joint, Hand(rng, habit, pace), self.click, goal, note=note)
        left = max(3.0, joint.at(self.setting) - joint.phi + self.setting / joint.series)
        strokes = rng.randint(2, 4)
        arc = left / strokes * rng.uniform(1.02, 1.25)
        # Winding up again costs part of every further stroke.
        arc = max(arc, 1.3 * self.setting / joint.series)
        drag = rng.uniform(0.1, 0.6) if drag is None else drag
        for _ in range(40):
            how = stroke(self.world, plug, joint, Hand(rng, 'smooth', pace), self.click, goal, arc, note)
            if how != 'arc':
                return how
            back_swing(self.world, drag, arc)
        return 'arc'

    def tries_click(self):
        """Pulled in a vise, which does not give."""
        vise = Joint(self.rng, 'cone', 4 * self.setting, self.joints[0].series)
        vise.phi = vise.at(3 * self.setting)
        vise.stand(-10.0)
        pace = self.setting / vise.series / self.rng.uniform(0.4, 1.5)
        stroke(self.world, None, vise, Hand(self.rng, 'smooth', pace), self.click, self.goal(), note='trial')
        self.world.rest(self.rng.uniform(3.0, 6.0))

    def again(self, plug, habit='smooth', pace=None, seconds=(0.25, 0.8), note='again'):
        return self.pull(plug, habit, seconds, pace, note=note)

    def go(self, seconds=None):
        self.world.carry(self.rng.uniform(*(seconds or self.pause_s)))


def careful(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug, bay.rng.choice(['smooth', 'smooth', 'hold']))


def rehits_all(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug)
        bay.go((0.15, 0.8))
        bay.again(plug, seconds=(0.2, 0.6))


def two_stage_per_plug(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug, share=bay.rng.uniform(0.45, 0.65), seconds=(0.6, 1.4), note='stage')
        bay.go((0.8, 3.5))
        bay.pull(plug, seconds=(0.5, 1.4))


def two_stage_in_rounds(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug, share=bay.rng.uniform(0.45, 0.65), seconds=(0.6, 1.4), note='stage')
    for plug in order:
        bay.go()
        bay.pull(plug, seconds=(0.5, 1.4))


def loosens_and_redoes(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug)
        if bay.rng.random() < 0.4:
            bay.go((1.5, 4.0))
            seen = bay.rng.random() < 0.6
            if not seen:
                bay.world.say(do='start-again', cylinder=plug)
            loosen(bay.world, plug, bay.joints[plug - 1], seen)
            bay.go((2.5, 6.0))
            bay.pull(plug)


def one_second(bay, order):
    for plug in order:
        bay.go((0.8, 1.3))
        bay.pull(plug, seconds=(0.6, 1.2))


def jerky(bay, order):
    for plug in order:
        bay.go()
        bay.pull(plug, 'jerky', seconds=(0.4, 1.6))


def leaves_out_last(bay, order):
    for plug in order[:-1]:
        bay.go()
        bay.pull(plug)
    bay.go()
    bay.again(bay.rng.choice(order[:-1]))


def goes_back(bay, order):
    """After one of the plugs he tries an earlier one again, and goes on."""
    back_after = bay.rng.randrange(1, len(order))
    for i, plug in enumerate(order):
        bay.go()
        bay.pull(plug)
        if i == back_after:
            bay.go()
            bay.again(bay.rng.choice(order[:i]))


def skips(bay, order):
    """Passes over one without a word and does it last."""
    skipped = bay.rng.choice(order[:-1])
    careful(bay, [plug for plug in order if plug != skipped] + [skipped])


def reversed_order(bay, order):
    careful(bay, order[::-1])


PEOPLE = {
    'careful': careful,
    're-hits all': rehits_all,
    'two-stage per plug': two_stage_per_plug,
    'two-stage in rounds': two_stage_in_rounds,
    'loosens and redoes': loosens_and_redoes,
    '1 s between plugs': one_second,
    'jerky': jerky,
    'leaves out the last': leaves_out_last,
    'goes back to check': goes_back,
    'skips unannounced': skips,
    'reversed': reversed_order,
}

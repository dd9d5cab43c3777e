import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { outOfOrderIn } from '../../src/job/early.ts';
import type { Strictness } from '../../src/job/order-of-work.ts';
import { phaseOf } from '../../src/job/phase.ts';
import { isProvenThroughout } from '../../src/job/proof.ts';
import { replay } from '../../src/job/replay.ts';
import { itemsOf, type ListPhase, type Routine, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { exampleOrder, workshop } from './workshop.ts';

type Shop = ReturnType<typeof workshop>;
const ALL = [1, 2, 3, 4];
const by = (order: Routine['order']) => ({ ...USUAL_ROUTINE, ...(order === undefined ? {} : { order }) });
const usual = (order?: Routine['order']) => workshop(exampleOrder(4), by(order));
const say = (shop: Shop, command: Command) => {
  const out = shop.give({ kind: 'command', command });
  return out.ok ? null : out.error.message;
};
const attest = (shop: Shop, phase: ListPhase) =>
  say(shop, {
    do: 'attest',
    phase,
    steps: itemsOf(USUAL_ROUTINE, phase).map(({ id, choices }) => ({
      item: id,
      as: choices?.[0]?.id ?? 'done',
    })),
  });
const readOld = (shop: Shop) =>
  say(shop, { do: 'read-old-plugs', cylinders: ALL, condition: 'normal', damage: [], thread: 'sound' });
const checkNew = (shop: Shop) => {
  const { part } = shop.bench.state().order.plug;
  return say(shop, { do: 'check-new-plugs', cylinders: ALL, part, lot: null, differs: [] });
};
/** All that comes before the first gap. */
function upToGaps(shop: Shop): Shop {
  say(shop, { do: 'confirm-windows' });
  attest(shop, 'before-removal');
  readOld(shop);
  checkNew(shop);
  return shop;
}
const gaps = (shop: Shop) => {
  for (const _ of ALL) shop.gap(0.75);
  return shop;
};

function proveItself(shop: Shop) {
  const again = replay(JSON.parse(JSON.stringify(shop.events)));
  if (!again.ok) throw new Error(`${again.error.where ?? ''} ${again.error.message}`);
  expect(again.value.state()).toEqual(shop.bench.state());
}
const steps = (shop: Shop) => outOfOrderIn(shop.bench.state()).map(({ step, pull }) => `${step} ${pull}`);

describe('a pull in front of a step whose order is binding', () => {
  it('is held at once and named with what comes first', () => {
    const shop = gaps(upToGaps(usual()));
    shop.pull(27.5);
    expect(shop.bench.state()).toMatchObject({
      questions: [{ kind: 'early', pull: 1, cylinder: 1, answers: ['refit', 'replace'] }],
      tooEarly: { what: 'pull', cylinder: 1, steps: ['fitting'] },
    });
    expect(shop.cylinder(1).torque).toBe('ask');
    proveItself(shop);
  });

  it('proves nothing even when the step is made up for afterwards', () => {
    const shop = gaps(upToGaps(usual()));
    shop.pull(27.5);
    attest(shop, 'fitting');
    expect(shop.cylinder(1).torque).toBe('ask');
    say(shop, { do: 'accept', pull: 1, by: 'Foreman One', reason: 'it was done, and not confirmed' });
    expect(shop.cylinder(1).torque).toBe('settled');
    expect(steps(shop)).toEqual(['fitting 1']);
    proveItself(shop);
  });

  it('done again behind the step counts, and the first one stays on the record', () => {
    const shop = gaps(upToGaps(usual()));
    shop.pull(27.5);
    shop.answer('refit');
    expect(phaseOf(shop.bench.state())).toBe('fitting');
    attest(shop, 'fitting');
    expect(phaseOf(shop.bench.state())).toBe('torque');
    shop.pull(27.4);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(outOfOrderIn(shop.bench.state())).toEqual([
      { step: 'fitting', what: 'pull', cylinder: 1, pull: 1, doneAgain: true },
    ]);
    proveItself(shop);
  });

  it('cannot be kept by name where the gap was not measured: the plug comes out', () => {
    const shop = upToGaps(usual());
    attest(shop, 'fitting');
    shop.pull(27.5);
    expect(say(shop, { do: 'accept', pull: 1, by: 'Foreman One', reason: 'any' })).toMatch('not proven');
    shop.answer('refit');
    shop.gap(0.75);
    shop.pull(27.5);
    expect(shop.cylinder(1)).toMatchObject({ gap: 'done', torque: 'done' });
    proveItself(shop);
  });

  it('goes in with its first stroke: a step between two strokes came too late', () => {
    const shop = gaps(upToGaps(usual()));
    shop.stopShort(19);
    shop.rest();
    attest(shop, 'fitting');
    shop.goOn(19, 27.4);
    expect(shop.cylinder(1).pulls.at(-1)?.early).toEqual(['fitting']);
    expect(shop.cylinder(1).torque).not.toBe('done');
    proveItself(shop);
  });
});

describe('what is put right later', () => {
  const TAKEN_BACK = ['windows', 'before-removal', 'old-plugs', 'new-plugs', 'fitting'] as const;
  const again = (shop: Shop, step: (typeof TAKEN_BACK)[number]) => {
    if (step === 'windows') return say(shop, { do: 'confirm-windows' });
    if (step === 'old-plugs') return readOld(shop);
    return step === 'new-plugs' ? checkNew(shop) : attest(shop, step);
  };
  const takeBack = (shop: Shop, step: string) => {
    const { statements } = shop.bench.state();
    const at = statements.findLastIndex(
      (one) => one.what === step || (one.what === 'list' && one.phase === step),
    );
    return say(shop, { do: 'take-back', said: at + 1, why: 'it was not done' });
  };
  const tightened = (order?: Routine['order']) => {
    const shop = gaps(upToGaps(usual(order)));
    attest(shop, 'fitting');
    for (const _ of ALL) shop.pull(27.5);
    return shop;
  };

  it.each(TAKEN_BACK)('%s, taken back behind the pulls and said again, is no step in its order', (step) => {
    const shop = tightened();
    expect(takeBack(shop, step)).toBeNull();
    expect(again(shop, step)).toBeNull();
    attest(shop, 'afterwards');
    say(shop, { do: 'close' });
    expect(shop.bench.state().closed?.complete).toBe(true);
    expect(isProvenThroughout(shop.bench.state())).toBe(false);
    expect(steps(shop)).toEqual(expect.arrayContaining(ALL.map((pull) => `${step} ${pull}`)));
    proveItself(shop);
  });

  it('does not stand against a plug that came out since', () => {
    const shop = tightened();
    takeBack(shop, 'fitting');
    attest(shop, 'fitting');
    say(shop, { do: 'start-again', cylinder: 2, newPlug: false, why: 'cleaned now' });
    shop.pull(27.5);
    expect(outOfOrderIn(shop.bench.state()).filter(({ doneAgain }) => doneAgain === true)).toEqual([
      { step: 'fitting', what: 'pull', cylinder: 2, pull: 2, doneAgain: true },
    ]);
    proveItself(shop);
  });

  it('is out of order once, however often it is taken back, and never where its step is free', () => {
    const shop = tightened();
    for (const _ of [1, 2]) {
      takeBack(shop, 'fitting');
      attest(shop, 'fitting');
    }
    expect(steps(shop)).toEqual(ALL.map((pull) => `fitting ${pull}`));
    const free = tightened({ fitting: 'free' });
    takeBack(free, 'fitting');
    attest(free, 'fitting');
    expect(steps(free)).toEqual([]);
  });

  it('a pull that was given to no plug at first came as early as it was pulled', () => {
    const shop = gaps(upToGaps(usual()));
    shop.doubtful(27.5, 0.01);
    expect(shop.bench.state().questions).toMatchObject([{ kind: 'unsure', pull: 1 }]);
    shop.answer('handling');
    attest(shop, 'fitting');
    say(shop, { do: 'give-pull', pull: 1, cylinder: 1, why: 'it was on that plug' });
    expect(shop.cylinder(1).torque).toBe('ask');
    expect(steps(shop)).toEqual(['fitting 1']);
    proveItself(shop);
  });

  it('a gap measured behind a pull that was given to its plug later does not count, even where the order is free', () => {
    const shop = upToGaps(usual({ gap: 'free', fitting: 'free' }));
    shop.doubtful(27.5, 0.01);
    shop.answer('handling');
    gaps(shop);
    expect(shop.cylinder(1).gap).toBe('done');
    say(shop, { do: 'give-pull', pull: 1, cylinder: 1, why: 'it was on that plug' });
    expect(shop.cylinder(1).gap).toBe('again');
    proveItself(shop);
  });
});

describe('a gap', () => {
  it('behind the torque of its plug proves nothing, and goes to no other plug', () => {
    const shop = workshop();
    for (const _ of ALL) shop.pull(27.5);
    gaps(shop);
    const { cylinders, gapTarget, tooEarly } = shop.bench.state();
    expect(cylinders.map(({ gap, gaps: taken }) => [gap, taken.length])).toEqual(ALL.map(() => ['todo', 0]));
    expect(gapTarget).toBeNull();
    expect(tooEarly).toMatchObject({ because: 'plug-fitted' });
    expect(shop.events.filter(({ type }) => type === 'gap-out-of-turn')).toHaveLength(4);
    proveItself(shop);
  });

  it('goes to no plug while it is asked about one that was pulled without: it may be that of either', () => {
    const shop = upToGaps(usual());
    attest(shop, 'fitting');
    shop.pull(27.5);
    shop.gap(0.75);
    expect([1, 2].map((cylinder) => shop.cylinder(cylinder).gap)).toEqual(['todo', 'todo']);
    expect(shop.bench.state().tooEarly).toMatchObject({ what: 'gap', because: 'pulled-early' });
    shop.answer('refit');
    shop.gap(0.75);
    expect([1, 2].map((cylinder) => shop.cylinder(cylinder).gap)).toEqual(['done', 'todo']);
    proveItself(shop);
  });

  it('is that of the next plug in the hand where nothing is asked, not of the one that is in the engine already', () => {
    const shop = workshop();
    shop.pull(27.5);
    shop.gap(0.75);
    expect(shop.cylinder(1).gap).toBe('todo');
    expect(shop.cylinder(2).gap).toBe('done');
  });

  it.each([
    ['windows', () => usual()],
    [
      'before-removal',
      () => {
        const shop = usual();
        say(shop, { do: 'confirm-windows' });
        return shop;
      },
    ],
    [
      'new-plugs',
      () => {
        const shop = usual();
        say(shop, { do: 'confirm-windows' });
        attest(shop, 'before-removal');
        readOld(shop);
        return shop;
      },
    ],
  ] as const)(
    'in front of %s is kept and given to no plug, however often it is measured',
    (because, shopAt) => {
      const shop = shopAt();
      for (let i = 0; i < 11; i += 1) shop.gap(0.75);
      const { oldPlugs, cylinders, tooEarly } = shop.bench.state();
      expect(Object.values(oldPlugs).filter(({ gap }) => gap !== null)).toEqual([]);
      expect(cylinders.every(({ gaps: taken }) => taken.length === 0)).toBe(true);
      expect(tooEarly).toMatchObject({ what: 'gap', gapMm: 0.75, because });
      expect(shop.events.filter(({ type }) => type === 'gap-out-of-turn')).toHaveLength(11);
      proveItself(shop);
    },
  );
});

describe('the lists', () => {
  it('before removal comes before any old plug is read; one that was loosened before stays told', () => {
    const shop = usual();
    say(shop, { do: 'confirm-windows' });
    shop.rest();
    shop.loosen(18);
    expect(shop.bench.state().tooEarly).toMatchObject({ what: 'loosening' });
    expect(readOld(shop)).toMatch('First confirm the list before removal');
    attest(shop, 'before-removal');
    expect(readOld(shop)).toBeNull();
    expect(outOfOrderIn(shop.bench.state())).toEqual([
      { step: 'before-removal', what: 'loosening', pull: 1 },
    ]);
    proveItself(shop);
  });

  it('for afterwards comes last, and again when a plug came out since', () => {
    const shop = gaps(upToGaps(usual()));
    attest(shop, 'fitting');
    for (const _ of ALL.slice(1)) shop.pull(27.5);
    expect(attest(shop, 'afterwards')).toMatch('This list comes last');
    shop.pull(27.5);
    expect(attest(shop, 'afterwards')).toBeNull();
    expect(phaseOf(shop.bench.state())).toBe('sign');
    say(shop, { do: 'start-again', cylinder: 2, newPlug: false, why: 'misfire' });
    shop.pull(27.5);
    expect(phaseOf(shop.bench.state())).toBe('afterwards');
    proveItself(shop);
  });
});

describe('a tight plug that is tried once more', () => {
  const tried = (afterwards: Strictness) => {
    const shop = gaps(upToGaps(usual({ afterwards })));
    attest(shop, 'fitting');
    for (const _ of ALL) shop.pull(27.5);
    attest(shop, 'afterwards');
    shop.rest();
    shop.again(27.6);
    return shop;
  };

  it('has its boot off again: the list for afterwards is confirmed anew', () => {
    const shop = tried('binding');
    expect(shop.bench.state().lastPull?.pull).toBe(ALL.length + 1);
    expect(phaseOf(shop.bench.state())).toBe('afterwards');
    proveItself(shop);
  });

  it('is an exception where the shop is only told', () => {
    const shop = tried('told');
    expect(phaseOf(shop.bench.state())).toBe('sign');
    expect(outOfOrderIn(shop.bench.state())).toMatchObject([
      { step: 'afterwards', what: 'pull', pull: ALL.length + 1 },
    ]);
    proveItself(shop);
  });
});

describe('the shop chooses', () => {
  const early = (fitting: Strictness) => {
    const shop = gaps(upToGaps(usual({ fitting })));
    shop.pull(27.5);
    return shop;
  };

  it('a step that is told: the pull counts, and is out of order', () => {
    const shop = early('told');
    expect(shop.cylinder(1).torque).toBe('done');
    expect(shop.bench.state().questions).toEqual([]);
    expect(steps(shop)).toEqual(['fitting 1']);
    proveItself(shop);
  });

  it('a step that is free: nothing is said', () => {
    const shop = early('free');
    expect(shop.cylinder(1).torque).toBe('done');
    expect(steps(shop)).toEqual([]);
    proveItself(shop);
  });

  it('and the job freezes it, defaults filled in', () => {
    expect(early('free').bench.state().basis.orderOfWork).toEqual({
      windows: 'binding',
      'before-removal': 'binding',
      'old-plugs': 'binding',
      'new-plugs': 'binding',
      gap: 'binding',
      fitting: 'free',
      afterwards: 'binding',
    });
    expect(workshop().bench.state().basis.orderOfWork).toMatchObject({ windows: 'free', gap: 'told' });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { commandOf, eventOf } from '../../src/job/command-event.ts';
import type { OpenItem } from '../../src/job/open-item.ts';
import { phaseOf, phasesOf } from '../../src/job/phase.ts';
import { replay } from '../../src/job/replay.ts';
import { itemsOf, type ListPhase, routineSchema, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { exampleOrder, workshop } from './workshop.ts';

type Shop = ReturnType<typeof workshop>;

const usual = () => workshop(exampleOrder(4), USUAL_ROUTINE);
/** A shop that lets nothing be held: what came too early counts, and is told. */
const told = () => workshop(exampleOrder(4), { ...USUAL_ROUTINE, order: TOLD });
const TOLD = {
  windows: 'told',
  'before-removal': 'told',
  'old-plugs': 'told',
  'new-plugs': 'told',
  gap: 'told',
  fitting: 'told',
  afterwards: 'told',
} as const;
const say = (shop: Shop, command: Command) => {
  const out = shop.give({ kind: 'command', command });
  return out.ok ? null : out.error.message;
};
const phase = (shop: Shop) => phaseOf(shop.bench.state());
const open = (shop: Shop): readonly OpenItem[] => {
  say(shop, { do: 'close' });
  return shop.bench.state().closed?.open ?? [];
};

/** Every item of a list, done or by its first choice. */
const attested = (list: ListPhase) => ({
  do: 'attest' as const,
  phase: list,
  steps: itemsOf(USUAL_ROUTINE, list).map(({ id, choices }) => ({
    item: id,
    as: choices?.[0]?.id ?? 'done',
  })),
});
const NORMAL = { condition: 'normal', damage: [], thread: 'sound' } as const;
const ALL = [1, 2, 3, 4];

function proveItself(shop: Shop) {
  const again = replay(JSON.parse(JSON.stringify(shop.events)));
  if (!again.ok) throw new Error(`${again.error.where ?? ''} ${again.error.message}`);
  expect(again.value.state()).toEqual(shop.bench.state());
}

/** Cylinder 1 went above the window, and somebody answered for it. */
function overAndAccepted(): Shop {
  const shop = workshop();
  for (const _ of ALL) shop.gap(0.75);
  shop.pull(34);
  say(shop, { do: 'accept', pull: 1, by: 'Foreman One', reason: 'threads sound' });
  return shop;
}

describe('the order of the work', () => {
  it('leads through every phase, and the job is complete', () => {
    const shop = usual();
    const seen: string[] = [];
    const note = () => seen.push(phase(shop));
    note();
    say(shop, { do: 'confirm-windows' });
    note();
    say(shop, attested('before-removal'));
    note();
    say(shop, { do: 'read-old-plugs', cylinders: ALL, ...NORMAL, damage: [] });
    note();
    const { part } = shop.bench.state().order.plug;
    expect(say(shop, { do: 'check-new-plugs', cylinders: ALL, part, lot: 'L7', differs: [] })).toBeNull();
    note();
    for (const _ of ALL) shop.gap(0.75);
    note();
    say(shop, attested('fitting'));
    note();
    for (const _ of ALL) shop.pull(27.5);
    note();
    say(shop, attested('afterwards'));
    note();
    expect(open(shop)).toEqual([]);
    note();
    expect(seen).toEqual([
      'windows',
      'before-removal',
      'old-plugs',
      'new-plugs',
      'gap',
      'fitting',
      'torque',
      'afterwards',
      'sign',
      'closed',
    ]);
    proveItself(shop);
  });

  it('leaves the hands at the wrench once they are there, and brings back what was passed over', () => {
    const shop = told();
    shop.pull(27.5);
    expect(phase(shop)).toBe('torque');
    for (const _ of ALL.slice(1)) shop.pull(27.5);
    expect(phase(shop)).toBe('torque');
    for (const cylinder of ALL) {
      say(shop, { do: 'start-again', cylinder, newPlug: false, why: 'to measure its gap' });
      shop.gap(0.75);
      shop.pull(27.5);
    }
    expect(phase(shop)).toBe('windows');
    proveItself(shop);
  });

  it('has no phase that the shop does not want', () => {
    expect(phasesOf(workshop().bench.state()).map(({ phase }) => phase)).toEqual(['gap', 'torque']);
    const routine = { ...USUAL_ROUTINE, confirmWindows: false, oldPlugs: false, afterwards: [] };
    const phases = phasesOf(workshop(exampleOrder(4), routine).bench.state()).map(({ phase }) => phase);
    expect(phases).toEqual(['before-removal', 'new-plugs', 'gap', 'fitting', 'torque']);
  });

  it('stays open while anything is not said, and names it', () => {
    const shop = told();
    for (const _ of ALL) {
      shop.gap(0.75);
      shop.pull(27.5);
    }
    say(shop, { do: 'read-old-plugs', cylinders: [1, 2, 3], ...NORMAL, damage: [] });
    expect(open(shop)).toEqual([
      { kind: 'new-plug-not-checked', cylinder: 1 },
      { kind: 'gap-not-measured', cylinder: 1 },
      { kind: 'new-plug-not-checked', cylinder: 2 },
      { kind: 'new-plug-not-checked', cylinder: 3 },
      { kind: 'old-plug-not-read', cylinder: 4 },
      { kind: 'new-plug-not-checked', cylinder: 4 },
      { kind: 'windows-not-confirmed' },
      { kind: 'before-removal-not-attested' },
      { kind: 'fitting-not-attested' },
      { kind: 'afterwards-not-attested' },
    ]);
  });
});

describe('lists', () => {
  it('take nothing that is not on them, and no item unsaid', () => {
    const shop = told();
    const { steps } = attested('afterwards');
    const refused = (changed: typeof steps) =>
      say(shop, { do: 'attest', phase: 'afterwards', steps: changed });
    expect(refused(steps.slice(1))).toMatch('Answer this item too: "Compound in the boots');
    expect(refused([...steps, { item: 'oil', as: 'done' }])).toMatch('"oil" is not on this list');
    expect(refused(steps.map((one) => ({ ...one, as: 'done' })))).toMatch('are: none, as-allowed, not-done');
    expect(refused([...steps, ...steps])).toMatch('twice');
    expect(refused(steps)).toBeNull();
  });

  it('let an item be left undone, with a reason', () => {
    const shop = usual();
    const without = (why?: string) => ({
      ...attested('before-removal'),
      steps: attested('before-removal').steps.map((one) =>
        one.item === 'engine-cold' ? { item: one.item, as: 'not-done', ...(why ? { why } : {}) } : one,
      ),
    });
    expect(say(shop, without())).toMatch('Give the reason why this is not done');
    expect(say(shop, without('stood 40 min, as the maker asks'))).toBeNull();
    expect(shop.bench.state().attested['engine-cold']).toEqual({
      as: 'not-done',
      why: 'stood 40 min, as the maker asks',
    });
    proveItself(shop);
  });

  it('of a shop with the same item twice are refused with the place', () => {
    const twice = { ...USUAL_ROUTINE, afterwards: [...USUAL_ROUTINE.afterwards, ...USUAL_ROUTINE.fitting] };
    const read = routineSchema.safeParse(twice);
    expect(read.error?.issues[0]).toMatchObject({
      path: ['afterwards', 4, 'id'],
      message: '"threads-clean" is there twice',
    });
    expect(routineSchema.safeParse(USUAL_ROUTINE).success).toBe(true);
  });
});

describe('old plugs', () => {
  it('take the gap readings and the loosening pulls that come while they are read', () => {
    const shop = usual();
    say(shop, { do: 'confirm-windows' });
    say(shop, attested('before-removal'));
    shop.rest();
    shop.loosen(18);
    shop.gap(1.1);
    say(shop, { do: 'read-old-plugs', cylinders: [1], condition: 'worn', damage: [], thread: 'sound' });
    shop.gap(0.9);
    const { oldPlugs, oldPlugTarget, cylinders } = shop.bench.state();
    expect(oldPlugs[1]).toMatchObject({ read: { condition: 'worn' }, gap: { gapMm: 1.1 }, removal: 1 });
    expect(oldPlugs[2]).toMatchObject({ read: null, gap: { gapMm: 0.9 } });
    expect(oldPlugTarget).toBe(shop.bench.state().order.engine.serviceOrder[1]);
    expect(cylinders.every(({ gaps }) => gaps.length === 0)).toBe(true);
    proveItself(shop);
  });

  it('that are measured too early or too late prove no new one', () => {
    const early = usual();
    early.gap(0.75);
    expect(early.bench.state()).toMatchObject({
      oldPlugs: {},
      tooEarly: { what: 'gap', gapMm: 0.75, because: 'windows' },
    });
    const late = usual();
    say(late, { do: 'confirm-windows' });
    expect(say(late, { do: 'read-old-plugs', cylinders: ALL, ...NORMAL, damage: [] })).toMatch('Too early');
    say(late, attested('before-removal'));
    late.gap(1.1);
    late.gap(1.2);
    expect(late.bench.state()).toMatchObject({
      oldPlugs: { 1: { gap: { gapMm: 1.1 } } },
      tooEarly: { gapMm: 1.2, because: 'old-gap-known' },
    });
    say(late, { do: 'read-old-plugs', cylinders: ALL, ...NORMAL, damage: [] });
    late.gap(0.75);
    for (const shop of [early, late]) {
      expect(shop.bench.state().cylinders.every(({ gap }) => gap === 'todo')).toBe(true);
      proveItself(shop);
    }
  });

  it('may be read again', () => {
    const shop = usual();
    say(shop, { do: 'confirm-windows' });
    say(shop, attested('before-removal'));
    say(shop, { do: 'read-old-plugs', cylinders: [1], ...NORMAL, damage: [] });
    say(shop, { do: 'choose-cylinder', quantity: 'old-plug', cylinder: 1 });
    expect(shop.bench.state().oldPlugTarget).toBe(1);
    say(shop, { do: 'read-old-plugs', cylinders: [1], condition: 'oily', damage: [], thread: 'sound' });
    expect(shop.bench.state().oldPlugs[1]?.read?.condition).toBe('oily');
    expect(shop.bench.state().oldPlugTarget).not.toBe(1);
    proveItself(shop);
  });
});

describe('new plugs', () => {
  it('of a part that the specification does not name are refused, unless they are said to differ', () => {
    const shop = usual();
    const check = (part: string, differs: ('reach' | 'seat')[]) =>
      say(shop, { do: 'check-new-plugs', cylinders: ALL, part, lot: null, differs });
    expect(check('OTHER 9', [])).toMatch('not OTHER 9');
    expect(check('OTHER 9', ['reach'])).toBeNull();
    expect(open(shop)).toContainEqual({ kind: 'new-plug-differs', cylinder: 1, features: ['reach'] });
  });

  it('may be of two parts where the specification says so', () => {
    const order = exampleOrder(4);
    const two = { ...order, plug: { ...order.plug, alsoParts: ['EXAMPLE 4 B'] } };
    const shop = workshop(two, USUAL_ROUTINE);
    const check = (cylinders: number[], part: string) =>
      say(shop, { do: 'check-new-plugs', cylinders, part, lot: null, differs: [] });
    expect(check([1, 2], order.plug.part)).toBeNull();
    expect(check([3, 4], 'EXAMPLE 4 B')).toBeNull();
    expect(shop.bench.state().newPlugs[3]).toEqual({ part: 'EXAMPLE 4 B', lot: null, differs: [] });
    proveItself(shop);
  });
});

describe('a torque that is not proven', () => {
  it('over the window is left as it is when somebody answers for it by name, and is never called proven', () => {
    const shop = workshop();
    for (const _ of ALL) shop.gap(0.75);
    shop.pull(34);
    expect(say(shop, { do: 'accept', pull: 1, by: 'Foreman One', reason: 'threads sound' })).toBeNull();
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'settled',
      settlement: { kind: 'accepted', pull: 1, by: 'Foreman One' },
    });
    expect(shop.bench.state().torqueTarget).not.toBe(1);
    for (const _ of ALL.slice(1)) shop.pull(27.5);
    expect(open(shop)).toEqual([]);
    proveItself(shop);
  });

  it('above the window after it was proven is proven no more once somebody answers for it', () => {
    const shop = workshop();
    shop.pull(27.5);
    shop.again(45);
    expect(say(shop, { do: 'accept', pull: 2, by: 'Foreman One', reason: 'threads sound' })).toBeNull();
    expect(shop.cylinder(1).torque).toBe('settled');
    proveItself(shop);
  });

  it('is not mended by a later pull on the same plug', () => {
    const shop = overAndAccepted();
    shop.pull(27.5);
    say(shop, { do: 'give-pull', pull: 2, cylinder: 1, why: 'it was on this plug' });
    expect(shop.cylinder(1).torque).toBe('settled');
    proveItself(shop);
  });

  it('is answered for no more when the plug comes out, is scrapped, or the pull was on another', () => {
    const refitted = overAndAccepted();
    refitted.rest(4000);
    refitted.loosen(15);
    refitted.answer('replace');
    const scrapped = overAndAccepted();
    say(scrapped, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    const moved = overAndAccepted();
    say(moved, { do: 'give-pull', pull: 1, cylinder: 3, why: 'it was on that plug' });
    for (const shop of [refitted, scrapped, moved]) {
      expect(shop.cylinder(1).torque).not.toBe('settled');
      proveItself(shop);
    }
  });

  it('cannot be accepted once its plug has come out', () => {
    const shop = workshop();
    for (const _ of ALL) shop.gap(0.75);
    shop.pull(34);
    say(shop, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    const accept = { do: 'accept', pull: 1, by: 'Foreman One', reason: 'threads sound' } as const;
    expect(say(shop, accept)).toMatch('was taken out since');
  });

  it('cannot be accepted where nothing of the kind is asked', () => {
    const shop = workshop();
    shop.pull(20);
    expect(say(shop, { do: 'accept', pull: 1, by: 'Foreman One', reason: 'good enough' })).toMatch(
      'No question about a pull over the window',
    );
  });

  it('because no wrench reaches the plug is recorded by its angle, until it is proven after all', () => {
    const shop = workshop();
    for (const _ of ALL) shop.gap(0.75);
    const byAngle = { do: 'fit-by-angle', cylinder: 1, turn: '1/2 turn', why: 'bulkhead' } as const;
    expect(say(shop, byAngle)).toBeNull();
    expect(shop.cylinder(1)).toMatchObject({ torque: 'settled', settlement: { kind: 'by-angle' } });
    say(shop, { do: 'start-again', cylinder: 1, newPlug: false, why: 'a shorter socket was found' });
    expect(shop.cylinder(1)).toMatchObject({ torque: 'again' });
    expect(shop.cylinder(1).settlement).toBeUndefined();
    shop.loosen(12);
    shop.pull(27.5);
    expect(shop.cylinder(1).torque).toBe('done');
    expect(say(shop, byAngle)).toMatch('proven by torque');
    proveItself(shop);
  });
});

describe('what was turned by an angle', () => {
  const byAngle = { do: 'fit-by-angle', cylinder: 1, turn: '1/2 turn', why: 'bulkhead' } as const;

  it('is forgotten with the plug', () => {
    const shop = workshop();
    say(shop, byAngle);
    say(shop, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    expect(shop.cylinder(1).torque).toBe('again');
    proveItself(shop);
  });

  it('gets no pull of another cylinder when one was left out', () => {
    const shop = workshop();
    say(shop, { ...byAngle, cylinder: 2 });
    for (const nm of [27, 27.2]) shop.pull(nm);
    shop.rest();
    shop.again(27.6);
    say(shop, { do: 'left-out', pull: 3, cylinder: 1, on: 4, why: 'finger-tight' });
    expect(shop.cylinder(2)).toMatchObject({ torque: 'settled', pulls: [] });
    proveItself(shop);
  });
});

it('a pull that a lost link cut proves no plug, whichever it is given to', () => {
  const shop = workshop();
  shop.rest();
  shop.halfPull(27.5);
  shop.give({
    kind: 'link',
    tool: 'wrench',
    driver: 'test',
    source: 'linked',
    link: { state: 'lost', reason: 'tool-switching-off' },
  });
  say(shop, { do: 'give-pull', pull: 1, cylinder: 2, why: 'it was on that plug' });
  expect(shop.cylinder(2)).toMatchObject({ torque: 'ask', pulls: [{ kind: 'unsure', judgement: null }] });
  proveItself(shop);
});

it('a new plug in the place of a checked one has not been checked', () => {
  const shop = usual();
  const { part } = shop.bench.state().order.plug;
  say(shop, { do: 'check-new-plugs', cylinders: ALL, part, lot: 'L7', differs: [] });
  say(shop, { do: 'scrap-plug', cylinder: 2, reason: 'dropped' });
  expect(Object.keys(shop.bench.state().newPlugs)).toEqual(['1', '3', '4']);
  proveItself(shop);
});

it('a list with an item of a name that every object has is not attested by itself', () => {
  const routine = { ...USUAL_ROUTINE, beforeRemoval: [{ id: 'constructor', text: 'Anything' }] };
  const shop = workshop(exampleOrder(4), routine);
  say(shop, { do: 'confirm-windows' });
  expect(phase(shop)).toBe('before-removal');
});

it('an acceptance under the name of another pull is not what the job writes', () => {
  const shop = overAndAccepted();
  const forged = shop.events.map((event) =>
    event.type === 'pull-accepted' ? { ...event, cylinder: 2 } : event,
  );
  expect(replay(forged)).toMatchObject({
    ok: false,
    error: { message: expect.stringContaining('is not what the job writes here') },
  });
});

it('what a person says is one event, and the event leads back to what was said', () => {
  const cylinder = fc.integer({ min: 1, max: 8 });
  const text = fc.string({ minLength: 1, maxLength: 40 });
  const command = fc.oneof(
    fc.record({
      do: fc.constant('choose-cylinder' as const),
      quantity: fc.constantFrom('torque' as const, 'length' as const, 'old-plug' as const),
      cylinder,
    }),
    fc.record({ do: fc.constant('start-again' as const), cylinder, newPlug: fc.boolean(), why: text }),
    fc.record({ do: fc.constant('fit-by-angle' as const), cylinder, turn: text, why: text }),
    fc.record({ do: fc.constant('hand-over' as const), to: text }),
    fc.record({
      do: fc.constant('read-old-plugs' as const),
      cylinders: fc.array(cylinder, { minLength: 1 }),
      condition: fc.constantFrom('normal' as const, 'oily' as const),
      damage: fc.constant<'flashover'[]>(['flashover']),
      thread: fc.constantFrom('sound' as const, 'damaged' as const),
      note: text,
    }),
    fc.record({
      do: fc.constant('check-new-plugs' as const),
      cylinders: fc.array(cylinder, { minLength: 1 }),
      part: text,
      lot: fc.option(text, { nil: null }),
      differs: fc.constant<'reach'[]>(['reach']),
    }),
  );
  fc.assert(
    fc.property(command, (given) => {
      const event = eventOf(given);
      expect(event === null ? null : commandOf(event)).toEqual(given);
    }),
  );
});

/** What was stated can be taken back, with a reason; nothing is erased, and the verdicts follow. */
import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/job/command.ts';
import { replay } from '../../src/job/replay.ts';
import { USUAL_ROUTINE } from '../../src/job/routine.ts';
import { referenceTo } from '../../src/job/statements.ts';
import { statementWords } from '../../src/report/words/index.ts';
import { exampleOrder, workshop } from './workshop.ts';

type Shop = ReturnType<typeof workshop>;

const say = (shop: Shop, command: Command) => shop.give({ kind: 'command', command });
const WHY = 'the wrong key was pressed';

/** Takes the newest statement back that stands. */
function takeBackLast(shop: Shop) {
  const state = shop.bench.state();
  const at = state.statements.findLastIndex(({ takenBack }) => takenBack !== true);
  const out = shop.bench.accept({
    kind: 'command',
    command: { do: 'take-back', ...referenceTo(state, at + 1), why: WHY },
  });
  if (out.ok) shop.events.push(...out.value);
  return out;
}

const measured = (): Shop => {
  const shop = workshop();
  for (const { cylinder: _ } of shop.bench.state().cylinders) shop.gap(0.75);
  return shop;
};

describe('a discarded plug', () => {
  it('is the one in hand after all, with its gap', () => {
    const shop = measured();
    say(shop, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    expect(shop.cylinder(1).gap).toBe('again');
    expect(takeBackLast(shop).ok).toBe(true);
    expect(shop.cylinder(1).gap).toBe('done');
    expect(shop.events.at(-1)).toMatchObject({ type: 'taken-back', said: 1, of: 'plug-scrapped', why: WHY });
  });

  it('that was tight is proven as before, and is not due', () => {
    const shop = measured();
    shop.pull(27.5);
    say(shop, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    expect(shop.cylinder(1)).toMatchObject({ gap: 'again', torque: 'again' });
    takeBackLast(shop);
    expect(shop.cylinder(1)).toMatchObject({ gap: 'done', torque: 'done' });
    expect(shop.bench.state()).toMatchObject({ refitting: null, torqueTarget: 2 });
  });

  it('stays discarded once the new one was measured, until that is taken back', () => {
    const shop = measured();
    say(shop, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    shop.gap(0.75);
    const state = shop.bench.state();
    const at = state.statements.findIndex(({ what }) => what === 'scrapped');
    const refused = shop.bench.accept({
      kind: 'command',
      command: { do: 'take-back', ...referenceTo(state, at + 1), why: WHY },
    });
    expect(refused).toMatchObject({ ok: false, error: { message: expect.stringContaining('cylinder 1') } });
    takeBackLast(shop);
    expect(takeBackLast(shop).ok).toBe(true);
    expect(shop.cylinder(1).gap).toBe('done');
  });

  it('stays discarded once its cylinder was pulled or started again', () => {
    const pulled = measured();
    say(pulled, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    pulled.pull(27.5);
    expect(takeBackLast(pulled).ok).toBe(false);
    const again = measured();
    again.pull(27.5);
    say(again, { do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    say(again, { do: 'start-again', cylinder: 1, newPlug: false, why: '' });
    expect(takeBackLast(again).ok).toBe(false);
  });
});

describe('an answer', () => {
  const over = (): Shop => {
    const shop = measured();
    shop.pull(34);
    return shop;
  };

  it('is asked again, the plug as it stood before', () => {
    for (const answer of ['refit', 'replace'] as const) {
      const shop = over();
      const before = shop.bench.state();
      say(shop, { do: 'answer', pull: 1, answer });
      expect(shop.bench.state().questions).toEqual([]);
      expect(takeBackLast(shop).ok).toBe(true);
      const { cylinders, questions, plugs, newPlugs, refitting } = shop.bench.state();
      expect({ cylinders, questions, plugs, newPlugs, refitting }).toEqual({
        cylinders: before.cylinders,
        questions: before.questions,
        plugs: before.plugs,
        newPlugs: before.newPlugs,
        refitting: before.refitting,
      });
    }
  });

  it('stands once work went on, and the refusal says how a pull is corrected', () => {
    const shop = over();
    say(shop, { do: 'answer', pull: 1, answer: 'refit' });
    shop.pull(27.5);
    const { statements } = shop.bench.state();
    const at = statements.findIndex(({ what }) => what === 'answer');
    const refused = shop.bench.accept({
      kind: 'command',
      command: { do: 'take-back', ...referenceTo(shop.bench.state(), at + 1), why: WHY },
    });
    expect(refused).toMatchObject({ ok: false, error: { message: expect.stringContaining('pull 1') } });
  });
});

describe('a gap that was looked at', () => {
  it('is open again, and the look before it counts', () => {
    const { specification } = exampleOrder(4);
    const shop = workshop({
      ...exampleOrder(4),
      specification: { ...specification, gapRules: { check: 'visual-only' } },
    });
    say(shop, { do: 'gap-inspected', cylinder: 1, sound: true });
    expect(shop.cylinder(1).gap).toBe('done');
    takeBackLast(shop);
    expect(shop.cylinder(1).gap).toBe('todo');
    say(shop, { do: 'gap-inspected', cylinder: 1, sound: false });
    takeBackLast(shop);
    expect(shop.bench.state().plugs[1]?.step ?? null).toBeNull();
  });
});

describe('a gap that came too early', () => {
  const held = (): Shop => {
    const shop = workshop(exampleOrder(4), USUAL_ROUTINE);
    shop.gap(0.75);
    return shop;
  };

  it('is kept by a named person with a reason: not proven, and out of order', () => {
    const shop = held();
    say(shop, { do: 'keep-gap', cylinder: 1, by: 'A. Foreman', reason: 'windows known' });
    expect(shop.events.slice(-2)).toMatchObject([
      { type: 'gap-kept', cylinder: 1, step: 'windows', by: 'A. Foreman' },
      { type: 'gap-measured', cylinder: 1, tool: 'gauge' },
    ]);
    expect(shop.cylinder(1)).toMatchObject({ gap: 'settled', gaps: [{ kept: { by: 'A. Foreman' } }] });
    expect(shop.bench.state().outOfOrder).toEqual([{ step: 'windows', what: 'gap', cylinder: 1 }]);
  });

  it('is measured again once it is taken back', () => {
    const shop = held();
    say(shop, { do: 'keep-gap', cylinder: 1, by: 'A. Foreman', reason: 'windows known' });
    takeBackLast(shop);
    expect(shop.cylinder(1).gap).toBe('again');
  });

  it('cannot be kept where no plug has it, or once something else came', () => {
    const slip = workshop(exampleOrder(4), USUAL_ROUTINE);
    slip.gap(95);
    const keep = { do: 'keep-gap', cylinder: 1, by: 'A. Foreman', reason: 'x' } as const;
    expect(slip.bench.accept({ kind: 'command', command: keep }).ok).toBe(false);
    const late = held();
    say(late, { do: 'confirm-windows' });
    expect(late.bench.accept({ kind: 'command', command: keep }).ok).toBe(false);
  });
});

it('every statement has its words, and a record with all of it is played back alike', () => {
  const shop = workshop(exampleOrder(4), USUAL_ROUTINE);
  shop.gap(0.75);
  say(shop, { do: 'keep-gap', cylinder: 1, by: 'A. Foreman', reason: 'windows known' });
  say(shop, { do: 'confirm-windows' });
  say(shop, { do: 'scrap-plug', cylinder: 2, reason: 'dropped' });
  takeBackLast(shop);
  expect(shop.bench.state().statements.map(statementWords)).toEqual([
    'gap of cylinder 1, 0.750 mm',
    'the windows were confirmed',
    'plug for cylinder 2 discarded: it was dropped',
  ]);
  const again = replay(shop.events);
  expect(again.ok && again.value.state()).toEqual(shop.bench.state());
});

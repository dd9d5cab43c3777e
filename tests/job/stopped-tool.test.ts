import { describe, expect, it } from 'vitest';
import { replay } from '../../src/job/replay.ts';
import { nextSentence } from '../../src/ui/next-step.ts';
import { WRENCH, workshop } from './workshop.ts';

// The tool sends what its profile does not say: from then on nothing of it counts.

function stopped(tool: 'wrench' | 'gauge' = 'wrench') {
  const shop = workshop();
  shop.rest();
  shop.pull(27);
  const contradict = () =>
    shop.give({
      kind: 'reading',
      tool,
      reading: { kind: 'contradicted', n: shop.next(tool), atUs: 9_000_000_000, because: 'bytes' },
    });
  return { shop, contradict };
}

const proven = ({ bench }: ReturnType<typeof workshop>) =>
  bench.state().cylinders.filter(({ torque }) => torque === 'done').length;

const joined = (shop: ReturnType<typeof workshop>, driver: string) =>
  shop.give({
    kind: 'link',
    tool: 'wrench',
    driver,
    source: 'linked',
    link: { state: 'linked', description: WRENCH },
  });

describe('a wrench whose profile is contradicted', () => {
  it('proves nothing any more; what it reads is kept, and judging again agrees', () => {
    const { shop, contradict } = stopped();
    expect(proven(shop)).toBe(1);
    contradict();
    expect(shop.events.at(-1)).toMatchObject({
      type: 'profile-contradicted',
      tool: 'wrench',
      because: 'bytes',
    });
    const from = shop.events.length;
    shop.rest(20_000);
    shop.pull(27);
    shop.rest(20_000);
    shop.give({ kind: 'flush' });
    expect(proven(shop)).toBe(1);
    const later = shop.events.slice(from);
    expect(new Set(later.map(({ type }) => type))).toEqual(new Set(['readings']));
    const kept = later.reduce((sum, event) => sum + (event.type === 'readings' ? event.count : 0), 0);
    expect(kept).toBeGreaterThan(4_000);
    expect(replay(shop.events)).toMatchObject({ ok: true });
  });

  it('cuts the pull that was under way: its end was never seen', () => {
    const { shop, contradict } = stopped();
    shop.halfPull(27);
    contradict();
    expect(shop.events.slice(-3)).toMatchObject([
      { type: 'profile-contradicted' },
      { type: 'pull-detected', cut: 'tool-stopped' },
      { type: 'pull-placed', judgement: null },
    ]);
    expect(replay(shop.events)).toMatchObject({ ok: true });
  });

  it('stays stopped with the same driver, and counts again with another', () => {
    const { shop, contradict } = stopped();
    contradict();
    joined(shop, 'test');
    shop.rest();
    shop.pull(27);
    expect(proven(shop)).toBe(1);
    joined(shop, 'test, corrected');
    shop.rest();
    shop.pull(27);
    expect(proven(shop)).toBe(2);
    expect(replay(shop.events)).toMatchObject({ ok: true });
  });

  it('stays stopped when the program is started again', () => {
    const { shop, contradict } = stopped();
    contradict();
    const again = replay(shop.events);
    if (!again.ok) throw new Error(again.error.message);
    expect(again.value.state().stopped).toEqual({ wrench: 'test' });
  });

  it('is what the screen speaks of', () => {
    const shop = workshop();
    for (let plug = 0; plug < 4; plug++) shop.gap(0.75);
    shop.give({
      kind: 'reading',
      tool: 'wrench',
      reading: { kind: 'contradicted', n: 1, atUs: 9_000_000, because: 'bytes' },
    });
    expect(shop.bench.state().tools['wrench']).toMatchObject({ link: 'linked', stopped: true });
    expect(nextSentence(shop.bench.state())).toBe(
      'The wrench does not send what its profile says. Nothing of it counts: take another wrench.',
    );
  });
});

it('a gap that a stopped gauge reads is given to no plug', () => {
  const { shop, contradict } = stopped('gauge');
  contradict();
  shop.give({
    kind: 'reading',
    tool: 'gauge',
    reading: { kind: 'value', n: shop.next('gauge'), atUs: 9_100_000_000, counts: 7_500 },
  });
  shop.give({ kind: 'flush' });
  expect(shop.events.at(-1)).toMatchObject({ type: 'readings', tool: 'gauge' });
  expect(shop.bench.state().cylinders.every(({ gaps }) => gaps.length === 0)).toBe(true);
  expect(replay(shop.events)).toMatchObject({ ok: true });
});

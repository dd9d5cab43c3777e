import { expect, it } from 'vitest';
import { proofOf } from '../../src/job/proof.ts';
import { replay } from '../../src/job/replay.ts';
import { attemptRows } from '../../src/report/attempts.ts';
import { WRENCH, workshop } from './workshop.ts';

/** A wrench that somebody reads and types, in place of the one that is linked. */
function typedWrench() {
  const shop = workshop();
  const link = { kind: 'keyboard', authenticated: false } as const;
  const description = { ...WRENCH, link };
  shop.give({
    kind: 'link',
    tool: 'wrench',
    driver: 'typed',
    source: 'typed',
    link: { state: 'linked', description },
  });
  const type = (nm: number) => {
    const n = shop.next('wrench');
    const reading = { kind: 'value', n, atUs: n * 1_000_000, counts: Math.round(nm * 100) } as const;
    shop.give({ kind: 'reading', tool: 'wrench', reading });
  };
  return { shop, type };
}

it('a typed torque is one figure on the due cylinder: judged, attested, never proven by a tool', () => {
  const { shop, type } = typedWrench();
  for (let i = 0; i < 4; i += 1) shop.gap(0.75);
  type(27.5);
  expect(shop.cylinder(1)).toMatchObject({
    torque: 'done',
    pulls: [{ kind: 'tightening', because: 'given' }],
  });
  expect(proofOf(shop.bench.state()).figures.torque).toMatchObject({ typed: 1, linked: 0 });
});

it('one beyond the window is asked about like any other, and it all plays back', () => {
  const { shop, type } = typedWrench();
  for (let i = 0; i < 4; i += 1) shop.gap(0.75);
  type(34);
  expect(shop.bench.state().questions).toMatchObject([{ kind: 'over-window', cylinder: 1 }]);
  const again = replay(JSON.parse(JSON.stringify(shop.events)));
  expect(again.ok).toBe(true);
});

it('a gap that no spark plug has goes to no plug', () => {
  const { shop } = typedWrench();
  shop.gap(95);
  expect(shop.cylinder(1).gaps).toEqual([]);
  expect(shop.bench.state().tooEarly).toMatchObject({ what: 'gap', gapMm: 95, because: 'not-possible' });
});

it('has no rise, and no paper shows one', () => {
  const { shop, type } = typedWrench();
  shop.gap(0.75);
  type(27.5);
  const { pulls = [] } = shop.bench.state().cylinders[0] ?? {};
  expect(attemptRows(shop.bench.state(), 1, [], pulls, [])).toMatchObject([{ value: 27.5, riseMs: null }]);
});

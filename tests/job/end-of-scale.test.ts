import { describe, expect, it } from 'vitest';
import { replay } from '../../src/job/replay.ts';
import { WRENCH, workshop } from './workshop.ts';

/** The window is 25 to 30 N·m, and the wrench reads to 27: within the window, but who knows what the plug saw. */
function shortScale() {
  const shop = workshop();
  const description = { ...WRENCH, validRange: { lowerCounts: -2700, upperCounts: 2700 } };
  shop.give({
    kind: 'link',
    tool: 'wrench',
    driver: 'test',
    source: 'linked',
    link: { state: 'linked', description },
  });
  return shop;
}

describe('a pull that stood at the end of the scale', () => {
  it('is asked about and proves nothing, though its reading lies in the window', () => {
    const shop = shortScale();
    shop.pull(27.5);
    expect(shop.cylinder(1)).toMatchObject({
      torque: 'ask',
      pulls: [{ kind: 'unsure', ask: 'end-of-scale', judgement: null }],
    });
    const [question] = shop.bench.state().questions;
    expect(question).toMatchObject({ kind: 'end-of-scale', cylinder: 1, answers: ['refit', 'replace'] });
    expect(shop.cylinder(1).pulls[0]?.because).toBe('end-of-scale');
  });

  it('is asked about on the plug just tightened too', () => {
    const shop = shortScale();
    shop.pull(26.5);
    expect(shop.cylinder(1).torque).toBe('done');
    shop.again(27.5);
    expect(shop.cylinder(1)).toMatchObject({ torque: 'ask', pulls: [{}, { ask: 'end-of-scale' }] });
    expect(shop.cylinder(2).pulls).toEqual([]);
  });

  it('leaves the next pull on the same plug a second one', () => {
    const shop = shortScale();
    shop.pull(27.5);
    shop.again(26.5);
    expect(shop.cylinder(1).pulls.map(({ kind }) => kind)).toEqual(['unsure', 'rehit']);
    expect(shop.bench.state().questions).toHaveLength(1);
  });

  it('is asked about again wherever a person gives it to', () => {
    const shop = shortScale();
    shop.pull(27.5);
    shop.give({ kind: 'command', command: { do: 'give-pull', pull: 1, cylinder: 3, why: 'was there' } });
    expect(shop.cylinder(1)).toMatchObject({ torque: 'todo', pulls: [] });
    expect(shop.cylinder(3)).toMatchObject({ torque: 'ask', pulls: [{ kind: 'unsure', judgement: null }] });
  });

  it('is done with once the plug came out and went in again, and the record says so once more', () => {
    const shop = shortScale();
    shop.pull(27.5);
    shop.loosen(18);
    expect(shop.cylinder(1).pulls.at(-1)).toMatchObject({ kind: 'loosening' });
    shop.answer('refit');
    shop.pull(26.5);
    expect(shop.cylinder(1).torque).toBe('done');
    const again = replay(JSON.parse(JSON.stringify(shop.events)));
    expect(again.ok && again.value.state()).toEqual(shop.bench.state());
  });
});

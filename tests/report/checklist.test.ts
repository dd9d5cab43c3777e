/** The work around the torque on the papers. */
import { describe, expect, it } from 'vitest';
import { foldAll } from '../../src/job/fold.ts';
import { reportModel } from '../../src/report/model.ts';
import { writePdf } from '../../src/report/pdf.ts';
import { aroundJob } from '../evidence/around-job.ts';
import { logOf } from '../evidence/sample-job.ts';
import { modelOf } from './fixtures.ts';
import { hasPoppler, poppler } from './poppler.ts';

const { entries } = logOf(aroundJob());
const state = foldAll(entries.map(({ event }) => event));
if (state === null) throw new Error('no job');
const model = reportModel({
  state,
  entries,
  traces: new Map(),
  recordDigest: 'ab'.repeat(32),
  signers: [],
  technicianSignature: 'not asked for',
  checkpoint: '',
  program: 'plugmark 0.1.0',
  station: 'Bay 1',
  replaces: null,
  beforeSigning: null,
});

describe('a job with the steps around the torque', () => {
  it('shows per cylinder which plug came out and which went in', () => {
    expect(model.around.plugs).toEqual([
      {
        cylinder: 1,
        condition: 'worn',
        damage: 'flashover',
        thread: 'sound',
        gapMm: '1.120',
        removalNm: expect.stringMatching(/^1[89]\.\d\d$/),
        part: 'EXAMPLE-14',
        lot: 'LOT <7>',
      },
      expect.objectContaining({ cylinder: 2, condition: 'normal', damage: '', gapMm: '', removalNm: '' }),
    ]);
  });

  it('shows what was attested, by whom, and what was not done, with the reason', () => {
    expect(model.around.lists.map(({ title }) => title)).toEqual([
      'Before removal',
      'Before fitting',
      'Afterwards',
    ]);
    const [before] = model.around.lists;
    expect(before?.by).toMatch(/^A\. Example, 2026-03-02/);
    expect(before?.items).toContain(
      'Plug wells blown clean with dry air, goggles on, before turning the first plug: NOT DONE (no air on the road)',
    );
    expect(before?.items).toContain('Ignition off, key away: yes');
  });

  it('is complete, and never says that all is proven', () => {
    expect(model.status).toEqual({
      word: 'COMPLETE, NOT ALL PROVEN',
      text: '0 of 2 cylinders OK; see the exceptions.',
    });
    expect(model.cylinders.map(({ verdict }) => verdict)).toEqual(['accepted', 'by-angle']);
  });

  it('names every such thing among the exceptions', () => {
    const said = model.exceptions.map(({ what }) => what);
    for (const what of [
      'Not done: Plug wells blown clean with dry air, goggles on, before turning the first plug (no air on the road).',
      'Cylinder 1, on removal: flashover.',
      'Cylinder 1, pull 2: over the window, left as it is. Answered for by Foreman One: threads sound, customer told.',
      'Cylinder 2 fitted by angle (1/2 turn), NOT proven by torque: no wrench reaches it.',
    ])
      expect(said).toContain(what);
  });

  it.runIf(hasPoppler)(
    'puts plugs of which the same is known on one line of its PDF, and only these',
    async () => {
      const [first, second] = model.around.plugs;
      if (first === undefined || second === undefined) throw new Error('two plugs in the sample');
      const plugs = [
        first,
        { ...second, cylinder: 2 },
        { ...second, cylinder: 3 },
        { ...first, cylinder: 4 },
      ];
      const pdf = await writePdf({ ...model, around: { ...model.around, plugs } }, { recordName: 'x.json' });
      const text = poppler('pdftotext', pdf, ['-raw', '{pdf}', '-']).replace(/\s+/g, ' ');
      expect(text).toMatch(/1, 4 worn flashover sound 1\.120 .*2, 3 normal none seen/);
    },
  );

  it.runIf(hasPoppler)('has them in its PDF', async () => {
    const pdf = await writePdf(model, { recordName: 'x.json' });
    const text = poppler('pdftotext', pdf, ['-raw', '{pdf}', '-']).replace(/\s+/g, ' ');
    for (const part of ['Old and new plugs', 'LOT <7>', 'Attested steps', 'NOT PROVEN', 'BY ANGLE'])
      expect(text).toContain(part);
  });
});

it('a job of a shop that wants none of it shows none of it', () => {
  expect(modelOf().model.around).toEqual({ lists: [], plugs: [] });
});

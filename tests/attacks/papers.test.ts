/** A paper that says something nicer than the record inside it, as a customer or an insurer is given it. */

import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { paper } from '../../src/cli/bench/paper.ts';
import { verify } from '../../src/cli/evidence/verify.ts';
import { programVersion } from '../../src/cli/help/version.ts';
import { papersAgain } from '../../src/cli/station/jobs.ts';
import { readerOf } from '../../src/cli/station/paper-reader.ts';
import { UNITS } from '../../src/cli/station/reads.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { readPaper } from '../../src/report/held/pdf-file.ts';
import { writePdf } from '../../src/report/index.ts';
import { modelOf } from '../../src/report/of-record.ts';
import { type Audience, madeFor } from '../../src/report/reader.ts';
import { err, orThrow } from '../../src/result.ts';
import { problemOf, said } from '../cli/answers.ts';
import { auditStation } from '../cli/audit/audit-station.ts';
import { folder } from '../cli/program.ts';

const station = auditStation();
let pdf = '';
const verified = async (file = pdf) => {
  const { value, text } = await said(() => verify(file, { trust: join(station.data, 'trusted-keys.json') }));
  return { value, text: text.replaceAll(/\s+/g, ' ') };
};
interface Drawn {
  readonly peakNm?: number;
  readonly caution?: string;
  readonly by?: string;
  readonly audience?: Audience;
}
const ENGLISH_SI: Audience = { language: 'en', units: UNITS['N.m-mm'] };

/** Draws the pages of the record anew, and lies about the first pull; the record inside is the true one. */
async function drawn({ peakNm, caution, by = NOW, audience = ENGLISH_SI }: Drawn) {
  const reader = await readerOf(audience);
  const bytes = readFileSync(join(station.data, 'J-1.record.json'));
  const { record } = orThrow(opened(bytes));
  const model = madeFor(reader, () => modelOf(bytes, record));
  const [first, ...others] = model.cylinders;
  if (first === undefined) throw new Error('no cylinder');
  const pulls = first.pulls.map((pull) =>
    peakNm === undefined ? pull : { ...pull, value: peakNm, valueText: peakNm.toFixed(2) },
  );
  const cautions = caution === undefined ? model.cautions : [caution, ...model.cautions.slice(1)];
  const forged = { ...model, cautions, cylinders: [{ ...first, pulls }, ...others] };
  const recordName = 'J-1.record.json';
  writeFileSync(pdf, await writePdf(forged, { recordBytes: bytes, recordName, drawnBy: by, reader }));
}
const NOW = `plugmark ${programVersion()}`;
const BEFORE = 'plugmark 0.0.9';
const opened = (bytes: Uint8Array) => {
  const read = openRecord(bytes);
  return read.ok ? read : err(read.error.problem);
};
/** Edits bytes and keeps every place in the file. */
function edit(from: string, to: string): void {
  expect(to).toHaveLength(from.length);
  const text = readFileSync(pdf, 'latin1');
  expect(text.includes(from), `the paper has ${from}`).toBe(true);
  writeFileSync(pdf, text.replaceAll(from, to), 'latin1');
}

describe('the paper of a job', () => {
  beforeEach(async () => {
    await said(() => papersAgain('J-1', station.scope()));
    pdf = join(station.data, 'J-1.pdf');
  });

  it('is what its record gives, byte for byte, and the record inside is verified', async () => {
    const { value, text } = await verified();
    expect(text).toContain('The pages are what the record inside gives.');
    expect(text).toContain('the record inside: Authentic and complete.');
    expect(value).toBe(0);
    const answer = await said(() =>
      verify(pdf, { trust: join(station.data, 'trusted-keys.json'), json: true }),
    );
    expect(JSON.parse(answer.text)).toMatchObject({ of: 'record', job: 'J-1', paper: { outcome: 'same' } });
  });

  it('in another language and in other units is held in these, and a forged one is found', async () => {
    await said(() => papersAgain('J-1', { ...station.scope(), language: 'de', units: 'lbf.ft-in' }));
    const { value, text } = await verified();
    expect(readPaper(readFileSync(pdf))?.audience.language).toBe('de');
    expect(text).toContain('The pages are what the record inside gives.');
    expect(value).toBe(0);
    const german = readFileSync(pdf);
    await drawn({ peakNm: 26.01, audience: { language: 'de', units: UNITS['lbf.ft-in'] } });
    const forged = await verified();
    expect(forged.text).toContain('NOT the paper of the record inside');
    expect(forged.text).toContain('It says "26.01"');
    expect(forged.value).toBe(1);
    // Of another version words and figures are compared, in its language too.
    await drawn({ by: BEFORE, audience: { language: 'de', units: UNITS['lbf.ft-in'] } });
    expect((await verified()).text).toContain('every word and figure is what the record gives');
    writeFileSync(pdf, german);
    edit('/Lang (de)', '/Lang (fr)');
    expect((await verified()).value).toBe(1);
  });

  it('with another figure on it is refused, and the figure is named', async () => {
    await drawn({});
    expect((await verified()).value).toBe(0);
    await drawn({ peakNm: 26.01 });
    const { value, text } = await verified();
    expect(text).toContain('NOT the paper of the record inside');
    expect(text).toMatch(/It says "26\.01" where the record gives "\d\d\.\d\d"/);
    expect(value).toBe(1);
  });

  it('with a line drawn elsewhere is refused, though every word is right', async () => {
    edit('0.8 w\n', '0.9 w\n');
    const { value, text } = await verified();
    expect(text).toContain('something else of the file was changed');
    expect(value).toBe(1);
  });

  it('with another figure on it is refused as well where it says that another version drew it', async () => {
    await drawn({ peakNm: 26.01, by: BEFORE });
    const { value, text } = await verified();
    expect(text).toContain('it has figures that the record does not give: "26.01"');
    expect(value).toBe(1);
  });

  it('of another version is compared by words and figures, and nobody calls that the same', async () => {
    await drawn({ by: BEFORE });
    const alike = await verified();
    expect(alike.text).toContain(
      'plugmark 0.0.9, pdfkit drew it: every word and figure is what the record gives',
    );
    expect(alike.value).toBe(4);
    await drawn({ caution: 'Mind the engine.', by: BEFORE });
    const { value, text } = await verified();
    expect(text).toContain(
      'it has other words, and every figure and verdict on it is one that the record gives',
    );
    expect(value).toBe(4);
  });

  it('around the record of another job is refused', async () => {
    await said(() => papersAgain('J-3', station.scope()));
    const other = join(station.data, 'J-3.record.json');
    const text = readFileSync(pdf, 'latin1');
    const own = readFileSync(join(station.data, 'J-1.record.json'), 'latin1');
    writeFileSync(pdf, text.replace(own, readFileSync(other, 'latin1')), 'latin1');
    expect((await problemOf(() => verified())).code).toBe('no-record-in-pdf');
  });

  it('around a record that was changed is not relied on', async () => {
    edit('"payload":"eyJ', '"payload":"eyK');
    const { value, text } = await verified();
    expect(text).toContain('Do not rely on this paper.');
    expect(value).not.toBe(0);
  });

  it('with something put behind its end, where a viewer would show that, is refused', async () => {
    writeFileSync(pdf, Buffer.concat([readFileSync(pdf), Buffer.from('\n1 0 obj\n<<>>\nendobj\n')]));
    expect((await problemOf(() => verified())).code).toBe('no-record-in-pdf');
  });

  it.runIf(spawnSync('qpdf', ['--version']).error === undefined || process.env['ALL_TESTS'] !== undefined)(
    'that another program wrote again is not read, and it is said how to get at the record',
    async () => {
      const again = join(folder(), 'again.pdf');
      execFileSync('qpdf', [pdf, again]);
      expect(await problemOf(() => verified(again))).toMatchObject({
        code: 'no-record-in-pdf',
        next: expect.stringContaining('attachments'),
      });
    },
  );

  it('is made by "plugmark paper" as the station made it', async () => {
    const out = join(folder(), 'papers');
    await said(() => paper(join(station.data, 'J-1.record.json'), { out }));
    expect((await verified(join(out, 'J-1.pdf'))).value).toBe(0);
  });
});

it('no damaged paper ends the program: each byte of its table and end, and many between', async () => {
  await said(() => papersAgain('J-1', station.scope()));
  const bytes = readFileSync(join(station.data, 'J-1.pdf'));
  const places = [
    ...Array.from({ length: 60 }, (_, i) => bytes.length - 1 - i),
    ...Array.from({ length: 40 }, (_, i) => Math.floor((i * bytes.length) / 40)),
  ];
  for (const at of places) {
    const damaged = Uint8Array.from(bytes);
    damaged[at] = ((damaged[at] ?? 0) + 1) % 256;
    const read = readPaper(damaged);
    // Read or refused: whatever it says is held against the record afterwards.
    expect(read === null || read.pages() === null || Array.isArray(read.pages())).toBe(true);
  }
});

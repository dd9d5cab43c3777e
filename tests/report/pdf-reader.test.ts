import { beforeAll, describe, expect, test } from 'vitest';
import { writePdf } from '../../src/report/index.ts';
import { modelOf, OTHER_SCRIPTS, pdfOf, SIXTEEN, V8_WITH_REDO } from './fixtures.ts';
import { firstAttachment, fontsIn, hasPoppler, pages, poppler, withoutCopies } from './poppler.ts';

const latin1 = (pdf: Uint8Array) => Buffer.from(pdf).toString('latin1');
/** The text in the order in which it was written, which is the order of the tags. */
const textOf = (pdf: Uint8Array) => poppler('pdftotext', pdf, ['-raw', '{pdf}', '-']);

describe.runIf(hasPoppler)('the document, as another program reads it', () => {
  let pdf: Uint8Array;
  let record: Uint8Array;
  let heard: string;
  beforeAll(async () => {
    ({ pdf, record } = await pdfOf(V8_WITH_REDO));
    heard = poppler('pdfinfo', pdf, ['-struct-text', '{pdf}']);
  });

  test('is tagged, titled, dated by its last entry, and two pages long for eight cylinders', () => {
    const info = poppler('pdfinfo', pdf, ['-isodates', '{pdf}']);
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/Title:\s+Spark plug job record JOB-2041/);
    expect(info).toMatch(/CreationDate:\s+2025-06-03T08:18:37Z/);
    expect(info).toMatch(/Pages:\s+2\n/);
  });

  test('carries the signed record, byte for byte', () => {
    expect(Buffer.compare(firstAttachment(pdf), record)).toBe(0);
    expect(poppler('pdfdetach', pdf, ['-list', '{pdf}'])).toContain('JOB-2041.json');
  });

  test('keeps a folder in the record name out of the attachment, and says when there is none', async () => {
    const { model, record: bytes } = modelOf();
    const named = await writePdf(model, { recordBytes: bytes, recordName: '../../etc/x y.json' });
    expect(poppler('pdfdetach', named, ['-list', '{pdf}'])).toContain('1: _.._etc_x_y.json');
    const without = await writePdf(model, { recordName: 'x.json' });
    expect(poppler('pdfdetach', without, ['-list', '{pdf}'])).toContain('0 embedded files');
    expect(textOf(without)).toContain('The signed record is not attached');
  });

  test('reads in order: what was done, with what result, what was odd, with what instruments, and what it rests on', () => {
    const order = [
      '"Spark plug job record"',
      '"8 of 8 cylinders OK."',
      '"1M8GDM9AXKP042788"',
      '"25.00 to 30.00 N·m"',
      '"Engine and verdict for each cylinder"',
      '"Gap and torque, every attempt"',
      '"31.42"',
      '"NOT OK"',
      '"Exceptions, and who entered or accepted them"',
      '"Instruments and calibration basis"',
      '"Torque over time, every pull given to a cylinder"',
      '"Cautions"',
      '"What this document proves, and what it does not"',
      '"Fingerprint"',
    ].map((words) => heard.indexOf(words));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test('has headed tables, and every picture says in words what it shows', () => {
    const tree = poppler('pdfinfo', pdf, ['-struct', '{pdf}']);
    expect(tree.match(/^ +Table /gm)).toHaveLength(3);
    expect(tree.match(/Scope \/Column/g)?.length).toBe(14 + 3 + 6);
    expect(tree.match(/^ +Figure/gm)).toHaveLength(1 + 8 + 1);
    expect(latin1(pdf).match(/\/Alt \(/g)).toHaveLength(10);
  });

  test('a wrapped text keeps its spaces for who hears it read', () => {
    expect(heard).toContain('8 cylinders, aluminium head"');
  });

  test('embeds a subset of every font, and of no others than its own', () => {
    expect(fontsIn(pdf)).toEqual([
      { name: 'Arimo-Bold', embedded: true, subset: true, unicode: true },
      { name: 'Arimo-Regular', embedded: true, subset: true, unicode: true },
      { name: 'Cousine-Regular', embedded: true, subset: true, unicode: true },
    ]);
  });

  test('holds text and lines only where the shop has no logo: no images', () => {
    expect(poppler('pdfimages', pdf, ['-list', '{pdf}']).trim().split('\n')).toHaveLength(2);
  });

  test('numbers its pages and prints the whole digest', () => {
    const text = textOf(pdf);
    expect(text).toContain('Page 1 of 2');
    expect(text).toContain('Page 2 of 2');
    const { digest } = modelOf(V8_WITH_REDO).model.fingerprint;
    expect(text).toContain((digest.match(/.{8}/g) ?? []).join(' '));
  });

  test('names who signed, how it stands with the technician, and the root of the log', () => {
    const text = textOf(pdf).replace(/\s+/g, ' ');
    const { signers, technician, log } = modelOf(V8_WITH_REDO).model.fingerprint;
    expect(signers).toEqual(['station kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k']);
    for (const words of [...signers, technician]) expect(text).toContain(words);
    expect(text).toContain('Root of the station log of 12 entries');
    expect(text).toContain((log?.root.match(/.{8}/g) ?? ['no root']).join(' '));
  });

  test('a simulated job is stamped on every page and in the text that is read aloud; a real one nowhere', async () => {
    const { pdf: simulated } = await pdfOf({ ...SIXTEEN, source: 'simulated' });
    for (let page = 1; page <= pages(simulated); page++) {
      const text = poppler('pdftotext', simulated, [
        '-raw',
        '-f',
        String(page),
        '-l',
        String(page),
        '{pdf}',
        '-',
      ]);
      expect(text.match(/SIMULATED: NO REAL TOOL MEASURED THIS/g)).toHaveLength(2);
    }
    expect(textOf(simulated)).toContain('SIMULATED: COMPLETE');
    expect(poppler('pdfinfo', simulated, ['{pdf}'])).toMatch(/Title:\s+SIMULATED: /);
    expect(poppler('pdftotext', pdf, ['{pdf}', '-'])).not.toMatch(/simulated/i);
  });

  test('an invented specification is called one at the top', async () => {
    const source = { kind: 'invented-example', title: 'Example' } as const;
    const { pdf: invented } = await pdfOf({
      order: { specification: { torque: '20 N·m', gap: '0.8 mm', threads: 'dry', source } },
    });
    const text = textOf(invented);
    expect(text.indexOf('INVENTED SPECIFICATION')).toBeGreaterThan(0);
    expect(text.indexOf('INVENTED SPECIFICATION')).toBeLessThan(text.indexOf('Technician'));
  });

  test('Latin, Greek and Cyrillic are drawn; what no font has is a box on paper, itself when copied, and the page says so', async () => {
    const { pdf: scripts } = await pdfOf(OTHER_SCRIPTS);
    const text = textOf(scripts);
    expect(text).toContain('王小明 / Łukasz Őry');
    expect(text).toContain('stands for a character that no font here has');
    const printed = textOf(withoutCopies(scripts));
    expect(printed).toContain('□□□ / Łukasz Őry');
    expect(printed).toContain('Ж 777');
    expect(printed).toContain('Фургон');
    expect(printed).not.toContain('U+');
    expect(text).not.toContain('\u202E');
    expect(textOf(pdf)).not.toContain('□');
  });
});

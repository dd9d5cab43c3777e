import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { PNG } from 'pngjs';
import { afterAll, describe, expect, test } from 'vitest';
import { logoOf } from '../../src/cli/station/logo.ts';
import { writePdf } from '../../src/report/index.ts';
import { logoIn } from '../../src/report/logo.ts';
import { reportModel } from '../../src/report/model.ts';
import { madeJob } from './fixtures.ts';
import { hasPoppler, poppler } from './poppler.ts';

const dir = mkdtempSync(join(tmpdir(), 'logo-'));
afterAll(() => rmSync(dir, { recursive: true }));

function pictureFile(width: number, height: number, text = false): string {
  const png = new PNG({ width, height });
  for (let i = 0; i < png.data.length; i += 4) {
    png.data[i] = (i / 4) % 251;
    png.data[i + 3] = i % 8 === 0 ? 255 : 0;
  }
  const bytes = PNG.sync.write(png);
  const note = Buffer.concat([Buffer.from([0, 0, 0, 5]), Buffer.from('tEXtBob\0x'), Buffer.alloc(4)]);
  const file = join(dir, `${width}x${height}.png`);
  const end = bytes.length - 12;
  writeFileSync(file, text ? Buffer.concat([bytes.subarray(0, end), note, bytes.subarray(end)]) : bytes);
  return file;
}

/** A PNG by its header and its unpacked rows. */
function png(header: Buffer, rows: Buffer): string {
  const chunk = (type: string, data: Buffer) => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    return Buffer.concat([length, Buffer.from(type), data, Buffer.alloc(4)]);
  };
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]).toString('base64');
}
const header = (width: number, height: number, rest = [8, 2, 0, 0, 0]) => {
  const bytes = Buffer.alloc(13);
  bytes.writeUInt32BE(width, 0);
  bytes.writeUInt32BE(height, 4);
  Buffer.from(rest).copy(bytes, 8);
  return bytes;
};

describe('the logo in a station file', () => {
  test('becomes a small opaque picture without anything else of its file', async () => {
    const base64 = await logoOf(pictureFile(900, 300, true));
    const logo = logoIn(base64);
    expect(logo).toMatchObject({ width: 350, height: 117 });
    expect(Buffer.from(base64, 'base64').toString('latin1')).not.toContain('Bob');
    expect(base64.length).toBeLessThanOrEqual(65_536);
  });

  test('is refused where it is no picture, or one of absurd size', async () => {
    const file = join(dir, 'no.png');
    writeFileSync(file, 'not a picture');
    await expect(logoOf(file)).rejects.toMatchObject({ problem: { code: 'logo-unreadable' } });
    const bomb = Buffer.from(png(header(60_000, 60_000), Buffer.alloc(10)), 'base64');
    writeFileSync(file, bomb);
    await expect(logoOf(file)).rejects.toMatchObject({ problem: { code: 'logo-unreadable' } });
  });
});

describe('the logo in a record, which anybody may have written', () => {
  test('is taken as our own writing gives it', () => {
    expect(logoIn(png(header(2, 1), Buffer.alloc(7)))).toMatchObject({ width: 2, height: 1 });
  });

  test.each([
    ['more pixels than it says', png(header(2, 1), Buffer.alloc(8))],
    ['fewer', png(header(2, 2), Buffer.alloc(7))],
    ['a bomb', png(header(2, 1), Buffer.alloc(50_000_000))],
    ['too wide', png(header(401, 1), Buffer.alloc(1204))],
    ['with transparency', png(header(2, 1, [8, 6, 0, 0, 0]), Buffer.alloc(9))],
    ['interlaced', png(header(2, 1, [8, 2, 0, 0, 1]), Buffer.alloc(7))],
    ['none at all', ''],
  ])('is left out: %s', (_, base64) => {
    expect(logoIn(base64)).toBeNull();
  });

  test('never throws, whatever it is', () => {
    fc.assert(fc.property(fc.base64String(), (text) => void logoIn(text)));
  });

  test.runIf(hasPoppler)('is one picture on the first page, and a false one is none', async () => {
    const { input, record } = madeJob();
    const images = async (logo: string) => {
      const entries = input.entries.map((entry) =>
        entry.event.type === 'job-opened'
          ? { ...entry, event: { ...entry.event, shop: { name: 'Example Workshop', logo } } }
          : entry,
      );
      const model = reportModel({ ...input, entries });
      const pdf = await writePdf(model, { recordBytes: record, recordName: 'a.json' });
      return poppler('pdfimages', pdf, ['-list', '{pdf}']).trim().split('\n').slice(2);
    };
    expect(await images(await logoOf(pictureFile(90, 30)))).toHaveLength(1);
    expect(await images(png(header(2, 1), Buffer.alloc(50_000_000)))).toHaveLength(0);
  });
});

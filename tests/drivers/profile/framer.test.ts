import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Cut, framerOf } from '../../../drivers/profile/framer.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { changed } from './example.ts';

const MS = 1_000;
const SECOND_US = 1_000_000;
const NM = { is: 'value', type: 'sint16', scale: '0.01', unit: 'N·m' };
const CHECKED = [NM, { is: 'checksum', kind: 'crc-8/smbus' }];
const LINE = [
  { is: 'value', resolution: '0.01' },
  { is: 'unit', texts: [{ text: 'Nm', unit: 'N·m' }] },
];

const bytesIn = (frames: Record<string, unknown>, ...fields: readonly Record<string, unknown>[]) =>
  changed({ frames, layout: { of: 'bytes', byteOrder: 'big', fields } });
const linesIn = (frames: Record<string, unknown>, ...fields: readonly Record<string, unknown>[]) =>
  changed({ frames, layout: { of: 'text', fields } });
const LINES = () => linesIn({ by: 'delimiter', hex: '0d0a' }, { is: 'text', text: 'T' }, ...LINE);

/** Plays arrivals: text or bytes, each with its time in ms. What it makes of them, a value or the raw bytes. */
function play(profile: Profile, ...arrivals: readonly (readonly [atMs: number, bytes: string | Buffer])[]) {
  const cuts: Cut[] = [];
  const framer = framerOf(profile, { openedUs: 0, fromStart: false });
  for (const [atMs, bytes] of arrivals)
    framer.push(
      typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes,
      atMs * MS,
      (cut) => void cuts.push(cut),
    );
  framer.pause((cut) => void cuts.push(cut));
  return cuts;
}
const values = (cuts: readonly Cut[]) =>
  cuts.map(({ bytes, frame }) => frame?.counts[0] ?? `raw ${bytes.toString('latin1')}`);
const hex = (text: string) => Buffer.from(text.replaceAll(' ', ''), 'hex');

describe('lines of text', () => {
  test('one over two notifications, and several in one', () => {
    expect(values(play(LINES(), [0, 'T+025.'], [20, '34Nm\r'], [40, '\nT1.00Nm\r\nT2.00Nm\r\nT3.']))).toEqual(
      [2_534, 100, 200, 'raw T3.'],
    );
  });

  test('a line came when its last byte came', () => {
    const cuts = play(LINES(), [0, 'T+025.'], [20, '34Nm\r\nT1.00Nm\r\n']);
    expect(cuts.map(({ atUs }) => atUs)).toEqual([20 * MS, 20 * MS]);
  });

  test('the first line may be the end of one, unless its beginning shows or there was a pause before it', () => {
    const bare = linesIn({ by: 'delimiter', hex: '0d0a', quietMs: 200 }, ...LINE);
    expect(values(play(bare, [10, '5.34Nm\r\n25.34Nm\r\n']))).toEqual(['raw 5.34Nm\r\n', 2_534]);
    expect(values(play(bare, [300, '25.34Nm\r\n']))).toEqual([2_534]);
    expect(values(play(LINES(), [10, 'T25.34Nm\r\n']))).toEqual([2_534]);
  });

  test('a line that stays unfinished is given up after the pause, and does not spoil the next one', () => {
    expect(values(play(LINES(), [0, 'T+02'], [1_500, 'T25.34Nm\r\n']))).toEqual(['raw T+02', 2_534]);
  });

  test('a line without an end is given up once it is longer than any, up to its end', () => {
    const cuts = play(LINES(), [0, 'T'.repeat(600)], [10, 'T25.34Nm\r\nT1.00Nm\r\n']);
    expect(values(cuts).slice(1)).toEqual(['raw T25.34Nm\r\n', 100]);
  });
});

describe('frames of a length', () => {
  test('one over two notifications, and several in one', () => {
    const profile = bytesIn({ by: 'length' }, { is: 'fixed', hex: 'a5' }, ...CHECKED);
    const cuts = play(profile, [0, hex('a509')], [20, hex('c4 67')], [30, hex('a500018f a5')]);
    expect(cuts.map(({ frame }) => frame?.counts[0])).toEqual([2_500, 1, undefined]);
    expect(cuts.map(({ bytes }) => bytes.toString('hex'))).toEqual(['a509c467', 'a500018f', 'a5']);
  });

  const crc = () =>
    bytesIn({ by: 'length' }, { is: 'fixed', hex: 'a55a' }, NM, { is: 'checksum', kind: 'crc-16/arc' });
  const FRAME = hex('a55a 09c4 1c05'.replaceAll(' ', ''));

  test('a start within a spoilt frame is found, and nothing is made of the spoilt one', () => {
    const spoilt = Buffer.from(FRAME);
    spoilt[3] = 0xc5;
    const good = values(play(crc(), [0, FRAME]));
    expect(good).toEqual([2_500]);
    const cuts = play(crc(), [0, Buffer.concat([spoilt, FRAME, FRAME.subarray(0, 3), FRAME, FRAME])]);
    expect(cuts.map(({ frame }) => frame?.counts[0])).toEqual([undefined, 2_500, undefined, 2_500, 2_500]);
  });

  test('as long as its field says, and never longer than any frame', () => {
    const samples = { is: 'samples', count: 'rest', fields: [NM] };
    const profile = bytesIn(
      { by: 'length' },
      { is: 'fixed', hex: 'a5' },
      { is: 'size', type: 'uint8', adds: 3 },
      samples,
      { is: 'checksum', kind: 'xor-8' },
    );
    const xor = (text: string) => {
      const bytes = hex(text);
      return Buffer.concat([bytes, Buffer.of(bytes.reduce((sum, byte) => sum ^ byte, 0))]);
    };
    const cuts = play(profile, [0, Buffer.concat([xor('a502 0064'), xor('a504 0064 00c8')])]);
    expect(cuts.map(({ frame }) => frame?.counts)).toEqual([[100], [100, 200]]);
    // A size that was spoilt holds the next frame up only until the pause, and that frame keeps its time.
    const late = play(profile, [0, Buffer.concat([hex('a5ff'), xor('a502 0064')])], [400, xor('a502 00c8')]);
    expect(late.map(({ frame, atUs }) => [frame?.counts[0], atUs])).toEqual([
      [undefined, 0],
      [100, 0],
      [200, 400 * MS],
    ]);
  });

  test('without a beginning that shows, only a pause tells where one begins', () => {
    const profile = bytesIn({ by: 'length', quietMs: 10 }, ...CHECKED);
    const frame = hex('0001 07');
    expect(values(play(profile, [5, frame], [20, frame], [21, frame]))).toHaveLength(3);
    const [first, ...others] = play(profile, [5, frame], [20, hex('0001 07')], [40, hex('0001 07')]);
    expect(first?.frame).toBeUndefined();
    expect(others.map(({ frame: made }) => made?.counts[0])).toEqual([1, 1]);
    const spoilt = play(profile, [20, hex('000107 0001ff 000107')], [40, hex('000107')]);
    expect(spoilt.map(({ frame: made }) => made?.counts[0])).toEqual([1, undefined, 1]);
  });
});

test('frames by time end with the pause', () => {
  const profile = linesIn({ by: 'time', quietMs: 50 }, ...LINE);
  expect(
    values(play(profile, [10, '34Nm'], [100, '25.'], [120, '34Nm'], [200, '1.00Nm'], [400, '2.0'])),
  ).toEqual(['raw 34Nm', 2_534, 100, 'raw 2.0']);
});

test('however the bytes are cut on their way, the same frames come out, and no byte is lost', () => {
  const profiles = [
    LINES(),
    bytesIn({ by: 'length' }, { is: 'fixed', hex: 'a5' }, ...CHECKED),
    bytesIn(
      { by: 'length' },
      { is: 'fixed', hex: 'a5a5' },
      { is: 'size', type: 'uint8' },
      { is: 'samples', count: 'rest', fields: [NM] },
      { is: 'checksum', kind: 'crc-16/modbus' },
    ),
  ];
  const pieces = fc.array(
    fc.oneof(
      fc.constantFrom('T25.34Nm\r\n', 'T', '\r\n', '\r', '\n').map((text) => Buffer.from(text, 'latin1')),
      fc.constantFrom('a509c4', 'a509c467', 'a5a50509c4', 'a5').map(hex),
      fc.uint8Array({ maxLength: 6 }).map((bytes) => Buffer.from(bytes)),
    ),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...profiles),
      pieces,
      fc.array(fc.nat(9), { maxLength: 20 }),
      (profile, sent, cutsAt) => {
        const whole = Buffer.concat(sent);
        const parts: [number, Buffer][] = [];
        let at = 0;
        for (const length of [...cutsAt, whole.length]) {
          parts.push([1, whole.subarray(at, at + length)]);
          at += length;
        }
        const once = play(profile, [1, whole]);
        const often = play(profile, ...parts);
        const frames = (cuts: readonly Cut[]) => cuts.filter(({ frame }) => frame !== undefined);
        expect(values(frames(often))).toEqual(values(frames(once)));
        expect(Buffer.concat(often.map(({ bytes }) => bytes))).toEqual(whole);
        expect(Buffer.concat(once.map(({ bytes }) => bytes))).toEqual(whole);
      },
    ),
    { numRuns: 2_000 },
  );
});

test('what is held is bounded, whatever comes', () => {
  const profile = bytesIn(
    { by: 'length', quietMs: 10_000 },
    { is: 'fixed', hex: '00' },
    { is: 'size', type: 'uint16' },
    { is: 'samples', count: 'rest', fields: [NM] },
    { is: 'checksum', kind: 'sum-8' },
  );
  const framer = framerOf(profile, { openedUs: 0, fromStart: false });
  let out = 0;
  let sent = 0;
  for (let i = 0; i < 200; i++) {
    const noise = Buffer.alloc(300, i % 3 === 0 ? 0 : 1);
    sent += noise.length;
    framer.push(noise, i * SECOND_US, ({ bytes }) => {
      out += bytes.length;
    });
    expect(sent - out).toBeLessThan(1_024);
  }
});

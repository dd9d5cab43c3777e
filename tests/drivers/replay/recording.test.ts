import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseRecording } from '../../../drivers/replay/recording.ts';
import { missReasonSchema, type Reading } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { HEADER, write } from './write.ts';

const unnumbered = fc.oneof(
  { weight: 6, arbitrary: fc.record({ kind: fc.constant('value' as const), counts: fc.integer() }) },
  fc.record({ kind: fc.constant('not-known' as const) }),
  fc.record({
    kind: fc.constant('raw' as const),
    source: fc.constant('2c0b'),
    hex: fc.uint8Array({ maxLength: 20 }).map((bytes) => Buffer.from(bytes).toString('hex')),
  }),
  fc.record({
    kind: fc.constant('missed' as const),
    reason: fc.constantFrom(...missReasonSchema.options),
    beforeUs: fc.nat(10_000),
  }),
);
const readings = fc.array(fc.tuple(fc.nat(50_000), unnumbered), { maxLength: 350 }).map((steps) => {
  let atUs = 0;
  return steps.map(([us, step], i): Reading => {
    atUs += us;
    if (step.kind !== 'missed') return { ...step, n: i + 1, atUs };
    return { kind: 'missed', reason: step.reason, fromUs: atUs - step.beforeUs, n: i + 1, atUs };
  });
});

describe('a recording', () => {
  test('gives back exactly what was recorded', () => {
    fc.assert(
      fc.property(readings, (recorded) => {
        expect(good(parseRecording(write(recorded), 'x'))).toEqual({ header: HEADER, readings: recorded });
      }),
    );
  });

  test('puts values into batches, so that a thousand of them are a few lines', () => {
    const values = Array.from(
      { length: 1_000 },
      (_, i): Reading => ({ kind: 'value', n: i + 1, atUs: i * 10_000, counts: i }),
    );
    expect(write(values).split('\n')).toHaveLength(1 + 10 + 1 + 1);
  });

  const turning = { ...HEADER, description: { ...HEADER.description, angle: { exponent: -1 } } };
  const withAngle = fc.array(fc.option(fc.integer(), { nil: undefined }), { maxLength: 250 }).map((angles) =>
    angles.map(
      (angleCounts, i): Reading => ({
        kind: 'value',
        n: i + 1,
        atUs: 1000 * i,
        counts: i,
        ...(angleCounts !== undefined && { angleCounts }),
      }),
    ),
  );

  test('gives back the angles of a tool that sends them, and leaves out what it left out', () => {
    fc.assert(
      fc.property(withAngle, (recorded) => {
        expect(good(parseRecording(write(recorded, turning), 'x')).readings).toEqual(recorded);
      }),
    );
  });

  test('with an angle that the tool does not describe is refused', () => {
    const recorded: Reading[] = [{ kind: 'value', n: 1, atUs: 5, counts: 1, angleCounts: 7 }];
    expect(parseRecording(write(recorded), 'run.jsonl')).toMatchObject({
      ok: false,
      error: { code: 'recording-line', where: 'run.jsonl:2' },
    });
  });

  test('cut anywhere is known to be cut', () => {
    const recorded: Reading[] = [
      { kind: 'value', n: 1, atUs: 10, counts: 1 },
      { kind: 'missed', n: 2, atUs: 30, fromUs: 10, reason: 'out-of-reach' },
      { kind: 'value', n: 3, atUs: 30, counts: 2 },
    ];
    const whole = write(recorded);
    // Without its last line feed it is still whole.
    for (let length = 0; length < whole.length - 1; length++) {
      expect(parseRecording(whole.slice(0, length), 'x').ok).toBe(false);
    }
    const withoutEnd = whole.split('\n').slice(0, -2).join('\n');
    const cut = parseRecording(withoutEnd, 'run.jsonl');
    expect(cut).toMatchObject({ ok: false, error: { code: 'recording-cut-short', where: 'run.jsonl:4' } });
    if (cut.ok) return;
    const line = /\{.*\}/.exec(cut.error.next)?.[0];
    expect(good(parseRecording(`${withoutEnd}\n${line}\n`, 'x')).readings).toEqual(recorded);
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(parseRecording(text, 'x').ok).toBe(false);
        expect(parseRecording(`${JSON.stringify(HEADER)}\n${text}`, 'x')).toMatchObject({ ok: false });
      }),
    );
  });
});

describe('a fault names its file and line', () => {
  const head = JSON.stringify(HEADER);
  const value = '{"kind":"value","n":1,"atUs":5,"counts":1}';
  test.each<[string, readonly string[], number, string, RegExp]>([
    ['no header', [value], 1, 'recording-form', /not a recording of the form/],
    [
      'a form of the future',
      ['{"form":"plugmark/readings/2"}'],
      1,
      'recording-form',
      /plugmark\/readings\/1/,
    ],
    ['a header with too much', [head.replace('{', '{"x":1,')], 1, 'recording-line', /x/],
    ['no JSON', [head, value, 'oops'], 3, 'recording-line', /not JSON/],
    ['an empty line', [head, '', value], 2, 'recording-line', /not JSON/],
    ['an unknown kind', [head, '{"kind":"guess","n":1,"atUs":5}'], 2, 'recording-line', /./],
    ['half counts', [head, '{"kind":"value","n":1,"atUs":5,"counts":0.5}'], 2, 'recording-line', /int/],
    [
      'counts that are text',
      [head, '{"kind":"value","n":1,"atUs":5,"counts":"1"}'],
      2,
      'recording-line',
      /number/,
    ],
    [
      'an additional field',
      [head, '{"kind":"value","n":1,"atUs":5,"counts":1,"x":1}'],
      2,
      'recording-line',
      /x/,
    ],
    [
      'a number left out',
      [head, value, value.replace('"n":1', '"n":3')],
      3,
      'recording-line',
      /number 2, found 3/,
    ],
    ['a number twice', [head, value, value], 3, 'recording-line', /number 2, found 1/],
    [
      'a stamp that goes back',
      [head, value, '{"kind":"not-known","n":2,"atUs":4}'],
      3,
      'recording-line',
      /before the one/,
    ],
    [
      'a gap that ends before it begins',
      [head, '{"kind":"missed","n":1,"atUs":4,"fromUs":5,"reason":"out-of-reach"}'],
      2,
      'recording-line',
      /gap/,
    ],
    [
      'a batch with a count too few',
      [head, '{"kind":"values","n":1,"atUs":[1,2],"counts":[1]}'],
      2,
      'recording-line',
      /as many counts as stamps/,
    ],
    [
      'odd hexadecimal digits',
      [head, '{"kind":"raw","n":1,"atUs":4,"source":"2c0b","hex":"abc"}'],
      2,
      'recording-line',
      /hexadecimal/,
    ],
    [
      'an end that counts wrongly',
      [head, value, '{"kind":"end","readings":2}'],
      3,
      'recording-line',
      /counts 2 readings, but 1/,
    ],
    [
      'lines after the end',
      [head, value, '{"kind":"end","readings":1}', value],
      3,
      'recording-line',
      /1 more/,
    ],
  ])('%s', (_name, lines, line, code, message) => {
    expect(parseRecording(lines.join('\n'), 'run.jsonl')).toMatchObject({
      ok: false,
      error: {
        code,
        message: expect.stringMatching(message),
        where: expect.stringMatching(new RegExp(`^run\\.jsonl:${line}(:|$)`)),
      },
    });
  });
});

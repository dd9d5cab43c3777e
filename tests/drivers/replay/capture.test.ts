import { describe, expect, test } from 'vitest';
import { parseCapture, recordingOf } from '../../../drivers/replay/capture.ts';
import { captureWriter } from '../../../drivers/replay/capture-writer.ts';
import { good } from '../bench.ts';
import { wrenchProfile } from '../profile/example.ts';

const TORQUE = { service: '185a', uuid: '2c0b', properties: ['notify'] };
const SERVICE = '3f8a00015c1d4e2b9a701b2c3d4e5f60';
const OWN = { service: SERVICE, uuid: '3f8a00025c1d4e2b9a701b2c3d4e5f60', properties: ['notify'] };

function written(): string {
  let text = '';
  const about = { address: 'c0:00:00:00:00:01', characteristics: [TORQUE, OWN] };
  const writer = captureWriter(about, (line) => {
    text += line;
  });
  writer.packet(TORQUE, Buffer.from('c4090000', 'hex'), 1_000);
  writer.packet(OWN, Buffer.from('a5010000006400640064006', 'hex'), 2_000);
  writer.packet(OWN, Buffer.from('a50100000064006400640064', 'hex'), 50_000);
  writer.packet(TORQUE, Buffer.from('ffffff7f', 'hex'), 60_000);
  expect(writer.end()).toBe(4);
  return text;
}

test('a capture replays as the readings that its packets are, by the open service or by a profile', () => {
  const capture = good(parseCapture(written(), 'c.jsonl'));
  const meaning = { tool: 'wrench', quantity: 'torque' } as const;
  expect(recordingOf(capture, meaning).readings).toEqual([
    { kind: 'value', n: 1, atUs: 1_000, counts: 2_500 },
    { kind: 'not-known', n: 2, atUs: 60_000 },
  ]);
  const byProfile = recordingOf(capture, { ...meaning, profile: wrenchProfile() });
  expect(byProfile.header.description).toMatchObject({ exponent: -2, quantity: 'torque' });
  expect(byProfile.readings).toMatchObject([
    { kind: 'raw', n: 1, atUs: 2_000 },
    { kind: 'value', n: 2, atUs: 20_000, counts: 200 },
    { kind: 'value', n: 3, atUs: 30_000, counts: 200 },
    { kind: 'value', n: 4, atUs: 40_000, counts: 200 },
    { kind: 'value', n: 5, atUs: 50_000, counts: 200 },
  ]);
});

describe('a capture that is not whole is refused, with the line', () => {
  const lines = written().trimEnd().split('\n');
  test.each<[string, readonly string[], string]>([
    ['without its end', lines.slice(0, -1), 'c.jsonl:5'],
    ['with a packet missing', lines.toSpliced(2, 1), 'c.jsonl:5'],
    ['with time going back', lines.with(2, lines[4] ?? '').with(4, lines[2] ?? ''), 'c.jsonl:4'],
    ['with half a byte', lines.with(1, (lines[1] ?? '').replace('c409', 'c40')), 'c.jsonl:2'],
    ['with a line that is no JSON', lines.with(3, '{'), 'c.jsonl:4'],
    ['of nothing', [''], 'c.jsonl:1'],
  ])('%s', (_name, changed, where) => {
    expect(parseCapture(changed.join('\n'), 'c.jsonl')).toMatchObject({
      ok: false,
      error: { code: 'capture-line', where: expect.stringContaining(where) },
    });
  });
});

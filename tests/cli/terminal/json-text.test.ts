import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { pulls } from '../../../src/cli/bench/pulls.ts';
import { doctor } from '../../../src/cli/station/doctor.ts';
import { makeOwnKey } from '../../../src/cli/station/keys.ts';
import { jsonText } from '../../../src/cli/terminal/json-text.ts';
import { clickPull, drawn } from '../../pull/shapes.ts';
import { said } from '../answers.ts';
import { folder } from '../program.ts';

const STEERING = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u;

it('gives every text back, and holds no control, bidi or invisible character but its line ends', () => {
  const hostile = fc.constantFrom(
    '\u001b',
    '\u007f',
    '\u009b',
    '\u061c',
    '\u202e',
    '\u2028',
    '\u{e0041}',
    '\n',
    '\\',
  );
  const text = fc.array(fc.oneof(hostile, fc.string({ unit: 'binary' }))).map((parts) => parts.join(''));
  fc.assert(
    fc.property(text, (value) => {
      const json = jsonText({ value });
      expect(JSON.parse(json)).toEqual({ value });
      expect(json.replaceAll('\n', '')).not.toMatch(STEERING);
    }),
  );
});

describe('a text from outside in the JSON of a command', () => {
  const HOSTILE = 'x\u009b2J\u202e\u2028y';

  /** What it printed holds the text, and nothing of it as it stands. */
  async function expectEscaped(work: () => unknown, where: (json: unknown) => unknown): Promise<void> {
    const { text } = await said(work);
    expect(where(JSON.parse(text))).toContain(HOSTILE);
    expect(text.replaceAll('\n', '')).not.toMatch(STEERING);
  }

  it('is escaped where a station file is not right: doctor --json', async () => {
    const station = join(folder(), HOSTILE);
    await expectEscaped(() => doctor({ station, json: true }), JSON.stringify);
  });

  it('is escaped in the name of a trace: pulls --json', async () => {
    const file = join(folder(), HOSTILE);
    const rows = drawn([{ atMs: 0, nm: 0 }, ...clickPull(1000, 600, 27, 22, 27.8)]);
    writeFileSync(file, `t,nm\n${rows.map(({ atUs, nm }) => `${atUs / 1e6},${nm.toFixed(3)}`).join('\n')}\n`);
    const columns = { timeColumn: 't', torqueColumn: 'nm', timeUnit: 's', torqueUnit: 'N·m' };
    await expectEscaped(() => pulls(file, { ...columns, json: true }), JSON.stringify);
  });

  it('is escaped in the name of somebody whose key is made: keys make', async () => {
    vi.stubEnv('PLUGMARK_PASSPHRASE', '');
    const file = join(folder(), 'foreman.pem');
    await expectEscaped(() => makeOwnKey(file, { name: HOSTILE, role: 'foreman' }), JSON.stringify);
    vi.unstubAllEnvs();
  });
});

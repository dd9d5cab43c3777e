import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parseProfile } from '../../../drivers/profile/file.ts';
import { captureWriter } from '../../../drivers/replay/capture-writer.ts';
import { CATALOGUE } from '../../../sim/devices/catalogue.ts';
import { good } from '../../drivers/bench.ts';
import { lessonOn } from '../../drivers/teach/bench.ts';
import { typed } from '../answers.ts';

// A device that nobody has documented, recorded on the bench, becomes a profile that the program takes.

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'teach-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const READINGS = { service: '5d090001', uuid: '5d490001', properties: ['notify'] };
const OF = {
  ...READINGS,
  service: '5d0900017c3e4b7a9d102a6b8c0d4e5f',
  uuid: '5d4900017c3e4b7a9d102a6b8c0d4e5f',
};

function capture(name: string, packets: readonly Buffer[]): string {
  let text = '';
  const writer = captureWriter({ address: 'c0:00:00:00:00:31', characteristics: [OF] }, (line) => {
    text += line;
  });
  for (const [i, packet] of packets.entries()) writer.packet(OF, packet, 20_000 * i);
  writer.end();
  writeFileSync(join(folder, name), text);
  return name;
}

test('captures with their figures become a profile, and a figure too few does not', async () => {
  const { observed, proof } = lessonOn(CATALOGUE['negative scale'], [8.23, -6.41, 25.34, 41.07], 30.55);
  const figures = observed.stated.map(({ figure, sent }, i) => `${figure}=${capture(`${i}.jsonl`, sent)}`);
  const given = (some: readonly string[]) => [
    ...['driver', 'teach', '--unit', 'N.m', '--step', '0.01', '--rest', capture('rest.jsonl', observed.rest)],
    ...some.flatMap((one) => ['--figure', one]),
    ...['--proof', `${proof.figure}=${capture('proof.jsonl', proof.sent)}`, '--out', 'my.profile.json'],
  ];
  const few = await typed(given(figures.slice(0, 2)), { cwd: folder });
  expect(few.code).toBe(1);
  expect(few.stdout).toMatch(/^Not written\. Three figures at least/);
  const done = await typed(given(figures), { cwd: folder });
  expect(done.code, done.stdout + done.stderr).toBe(0);
  expect(done.stdout).toMatch(/sint16 at byte 1 \(little end first\), -0\.01 N·m/);
  expect(done.stdout).toMatch(/kept back reads 30\.55/);
  const profile = good(
    parseProfile(readFileSync(join(folder, 'my.profile.json'), 'utf8'), 'my.profile.json'),
  );
  expect(profile.link).toMatchObject({ service: OF.service, characteristic: OF.uuid });
  const again = await typed(given(figures), { cwd: folder });
  expect(again.code).toBe(2);
  const wrong = await typed([...given(figures.slice(1)), '--figure', 'big=0.jsonl'], { cwd: folder });
  expect(wrong.stderr).toMatch(/FIGURE=FILE/);
});

import { createHash, createPublicKey, verify } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { verifyFiles } from '../../../src/cli/evidence/verify-files.ts';
import { contentsAndCompleteness } from '../../../src/evidence/completeness.ts';
import { inTheLog } from '../../../src/evidence/in-the-log.ts';
import { judgedAgain } from '../../../src/evidence/judged-again.ts';
import { checkSignatures } from '../../../src/evidence/jws.ts';
import { openRecord, rulesOf } from '../../../src/evidence/record.ts';
import { stationOf } from '../../../src/evidence/station.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { editionOf } from '../../../src/rules/editions.ts';
import type { Measurement } from '../measurement.ts';
import { compared, cpuMs, demoRecord } from './made.ts';

const GOAL_RATIO = 1.3;
const GOAL_MS = 20;

/** What verification costs, next to the bare check of the signature over the same bytes; then a whole folder on all cores. */
export const verifyRate: Measurement = {
  name: 'verify-rate',
  what: 'verification of records a second, next to the bare signature check [records=10000 seed=1 calls=200]',
  async run({ number, progress }) {
    const made = demoRecord(number('seed', 1));
    try {
      const calls = number('calls', 200);
      const opened = openRecord(made.bytes);
      if (!opened.ok) throw new Error(opened.error.problem.message);
      const { jws, payload, record } = opened.value;
      const edition = editionOf(rulesOf(record.entries));
      const [report] = checkSignatures(jws, payload);
      const [signature] = jws.signatures;
      const station = stationOf(record.background);
      const key = station?.keys.at(-1)?.jwk;
      if (report?.fault !== null || signature === undefined || station === null || key === undefined)
        throw new Error('the record does not hold');
      const publicKey = createPublicKey({ key, format: 'jwk' });
      const signed = Buffer.from(`${signature.protected}.${jws.payload}`);
      const mark = Buffer.from(signature.signature, 'base64url');
      const digest = () => createHash('sha256').update(made.bytes).digest();
      const { oneMs, otherMs, ratio } = compared(
        () => [digest(), verify(null, signed, publicKey, mark)],
        () => [digest(), checkSignatures(jws, payload)],
        10 * calls,
      );
      const [low, middle, high] = ratio.map((value) => value.toFixed(2));
      const parts = [
        ['reading and form', cpuMs(() => openRecord(made.bytes), calls)],
        ['place in the log', cpuMs(() => inTheLog(opened.value, station), calls)],
        ['completeness', cpuMs(() => contentsAndCompleteness(record, station, edition), calls)],
        ['judged again', cpuMs(() => judgedAgain(record, edition), calls)],
      ] as const;
      const whole = cpuMs(() => verifyRecord(made.bytes, made.trust), calls);
      const ms = (value: number) => `${value.toFixed(2)} ms`;
      return [
        `record: ${made.bytes.length} bytes, ${record.entries.length} entries, ${jws.signatures.length} signature(s)`,
        `digest and bare signature check   ${ms(oneMs)}  (${(1000 / oneMs).toFixed(0)} a second)`,
        `digest and signatures as checked  ${ms(otherMs)}  (${(1000 / otherMs).toFixed(0)} a second)`,
        `ratio of the two                  ${middle}, half of 25 rounds within ${low} to ${high} (goal ${GOAL_RATIO})`,
        ...parts.map(([name, value]) => `  ${name.padEnd(31)} ${ms(value)}`),
        `whole verification                ${ms(whole)} of processor time (goal ${GOAL_MS} ms), ${(1000 / whole).toFixed(0)} a second on one core`,
        ...(await folder(made, number('records', 10_000), progress)),
      ];
    } finally {
      made.remove();
    }
  },
};

async function folder(
  { folder, bytes, trust }: ReturnType<typeof demoRecord>,
  count: number,
  progress: (share: number, note: string) => void,
): Promise<string[]> {
  const many = join(folder, 'many');
  mkdirSync(many);
  const files = [...Array(count).keys()].map((i) => join(many, `${i}.record.json`));
  for (const file of files) writeFileSync(file, bytes);
  const started = performance.now();
  let done = 0;
  let sound = 0;
  await verifyFiles(files, { trust: trust, policy: null }, (findings) => {
    done += findings.length;
    // The tools of the demo are simulated, so that its record is authentic and proves nothing.
    sound += findings.filter(({ verdict }) => verdict === 'unproven').length;
    progress(done / count, `${done} records`);
  });
  const seconds = (performance.now() - started) / 1000;
  const rate = (count / seconds).toFixed(0);
  return [
    `folder of ${count}: ${seconds.toFixed(1)} s, ${rate} a second on ${availableParallelism()} cores, ${sound} as the demo's record should be`,
  ];
}

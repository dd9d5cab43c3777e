import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateRawSync } from 'node:zlib';
import { openStationLog } from '../../../db/log.ts';
import { canonical } from '../../../src/evidence/canonical.ts';
import { signedBytes } from '../../../src/evidence/entry.ts';
import type { LogEntry } from '../../../src/evidence/log.ts';
import { fromUtf8 } from '../../../src/evidence/platform/bytes.ts';
import { generate } from '../history/generate.ts';
import type { Measurement } from '../measurement.ts';
import { demoRecord } from './made.ts';

/** Of each kind of event; of what every pull brings more, because their figures are shared by less. */
const EACH = 1;
const EACH_PULL = 8;
/** Deflate reaches no further back. */
const MOST = 32_000;
/** Jobs of the invented station that the packing is tried on. */
const JOBS = 200;

const MIGRATION = new URL('../../../db/migrations/0001-log.sql', import.meta.url);
const BEGINNING = 'INSERT INTO dictionaries (id, text) VALUES (1, ';

/** Makes a text to pack entries with from a demo job, and tells what it comes to on other jobs. */
export const dictionary: Measurement = {
  name: 'dictionary',
  what: 'the text that entries are packed with, made anew; write=1 puts it into the migration [write=0 seed=1]',
  async run({ number }) {
    const seed = number('seed', 1);
    const made = dictionaryOf(await demoEntries(seed));
    if (made.length > MOST) throw new Error(`${made.length} characters; ${MOST} are of use`);
    const sql = `${BEGINNING}'${made.replaceAll("'", "''")}');\n`;
    const migration = readFileSync(MIGRATION, 'utf8');
    const [rules, before = ''] = migration.split(BEGINNING);
    const old = before.slice(1, before.lastIndexOf("');")).replaceAll("''", "'");
    if (number('write', 0) === 1) writeFileSync(MIGRATION, `${rules}${sql}`);
    const row = (what: string, entries: readonly LogEntry[]) =>
      `  ${what.padEnd(34)} ${String(sizeOf(entries)).padStart(9)} ${String(packed(entries, old)).padStart(9)} ${String(packed(entries, made)).padStart(9)}`;
    return [
      `${made.length} characters; bytes of bodies:         plain  as it is      anew`,
      row('another demo job', await demoEntries(seed + 8)),
      row(`${JOBS} jobs of an invented station`, await inventedEntries()),
      number('write', 0) === 1
        ? 'written into db/migrations/0001-log.sql: build again, and make new the logs that were made before'
        : 'nothing was written: write=1 puts it into db/migrations/0001-log.sql',
    ];
  },
};

async function demoEntries(seed: number): Promise<readonly LogEntry[]> {
  const demo = demoRecord(seed);
  try {
    return await entriesIn(join(demo.folder, 'station.db'));
  } finally {
    demo.remove();
  }
}

async function inventedEntries(): Promise<readonly LogEntry[]> {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-bench-'));
  try {
    const path = join(folder, 'station.db');
    await generate(path, JOBS, () => {});
    return await entriesIn(path);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function entriesIn(path: string): Promise<readonly LogEntry[]> {
  const log = await openStationLog(path);
  try {
    return log.streams().flatMap((stream) => log.entries(stream));
  } finally {
    log.close();
  }
}

/** As bodies are packed: what is signed, its salt taken out. */
const withoutSalt = (entry: LogEntry): string =>
  fromUtf8(signedBytes(entry)).replace(`"salt":"${entry.salt}"`, '"salt":""');

const sizeOf = (entries: readonly LogEntry[]): number =>
  entries.reduce((sum, entry) => sum + Buffer.byteLength(withoutSalt(entry)), 0);

function packed(entries: readonly LogEntry[], text: string): number {
  const options = { level: 9, dictionary: Buffer.from(text) };
  return entries.reduce((sum, entry) => sum + 1 + deflateRawSync(withoutSalt(entry), options).length, 0);
}

/** No other entry has the same digests or samples. */
const ITS_OWN = /"_sd":\["[\w-]{43}"\]|"(?:counts|times)":"[^"]*"/g;
const emptied = (text: string) =>
  text.startsWith('"_sd"') ? '"_sd":[""]' : `${text.slice(0, text.indexOf(':'))}:""`;

/** What is frequent stands last: deflate refers to what is near in fewer bits. */
function dictionaryOf(entries: readonly LogEntry[]): string {
  const byType = new Map<string, string[]>();
  for (const entry of entries) {
    const texts = byType.get(entry.event.type) ?? [];
    byType.set(entry.event.type, [...texts, withoutSalt(entry).replace(ITS_OWN, emptied)]);
  }
  const chosen = [...byType]
    .sort(([, a], [, b]) => a.length - b.length)
    .flatMap(([type, texts]) => spread(texts, type === 'readings' || texts.length <= 15 ? EACH : EACH_PULL));
  return [CERTIFICATE, ...chosen].join('\n');
}

/** So many, from all over the list. */
const spread = (texts: readonly string[], most: number) =>
  texts.filter(
    (_, i) => Math.floor((i * most) / texts.length) !== Math.floor(((i - 1) * most) / texts.length),
  );

/** The simulated tools have none; those of a shop have. */
const CERTIFICATE = canonical({
  basis: 'calibration certificate',
  certificate: {
    date: '2026-01-15',
    laboratory: 'Calibration Laboratory',
    number: '2026-0001',
    points: [5, 10, 20, 30, 40, 60].map((reading) => ({ error: 0.01, expanded: 0.2, k: 2, reading })),
    serial: '0001',
    unit: 'N.m',
  },
  id: 'wrench',
  interval: { cycles: 5000, months: 12 },
  quantity: 'torque',
  range: { from: 10, to: 60 },
  resolution: 0.01,
  serial: '0001',
  type: 'setting',
});

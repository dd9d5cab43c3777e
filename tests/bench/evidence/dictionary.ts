import { deflateRawSync } from 'node:zlib';
import { openStationLog } from '../../../db/log.ts';
import { canonical } from '../../../src/evidence/canonical.ts';
import { signedBytes } from '../../../src/evidence/entry.ts';
import type { LogEntry } from '../../../src/evidence/log.ts';
import type { Measurement } from '../measurement.ts';

/** Of each kind of event; of what every pull brings more, because their figures are shared by less. */
const EACH = 2;
const EACH_PULL = 4;

/** Makes a text to pack entries with, as a migration adds it, and tells what it would save on another station. */
export const dictionary: Measurement = {
  name: 'dictionary',
  what: 'a text that entries are packed with, from a log of jobs [from=station.db on=other.db]',
  async run({ text }) {
    const from = await entriesIn(text('from', 'station.db'));
    const made = dictionaryOf(from);
    const on = await entriesIn(text('on', text('from', 'station.db')));
    const packed = (bytes: string) =>
      deflateRawSync(bytes, { level: 9, dictionary: Buffer.from(made) }).length;
    const bodies = on.filter(({ event }) => event.type !== 'readings').map(withoutSalt);
    const plain = bodies.reduce((sum, body) => sum + Buffer.byteLength(body), 0);
    const small = bodies.reduce((sum, body) => sum + packed(body), 0);
    return [
      `INSERT INTO dictionaries (id, text) VALUES (1, '${made.replaceAll("'", "''")}');`,
      '',
      `-- ${made.length} characters; ${bodies.length} entries without samples: ${plain} B plain, ${small} B packed`,
    ];
  },
};

async function entriesIn(path: string): Promise<readonly LogEntry[]> {
  const log = await openStationLog(path);
  try {
    return log.streams().flatMap((stream) => log.entries(stream));
  } finally {
    log.close();
  }
}

/** A digest is in no other entry. */
const DIGEST = /"_sd":\["[\w-]{43}"\]/g;

/** As bodies are packed: what is signed, its salt taken out. */
const withoutSalt = (entry: LogEntry): string =>
  signedBytes(entry).toString('utf8').replace(`"salt":"${entry.salt}"`, '"salt":""');

/** What is frequent stands last: deflate refers to what is near in fewer bits. */
function dictionaryOf(entries: readonly LogEntry[]): string {
  const byType = new Map<string, string[]>();
  for (const entry of entries) {
    if (entry.event.type === 'readings') continue;
    const texts = byType.get(entry.event.type) ?? [];
    byType.set(entry.event.type, [...texts, withoutSalt(entry).replace(DIGEST, '"_sd":[""]')]);
  }
  const chosen = [...byType.values()]
    .sort((a, b) => a.length - b.length)
    .flatMap((texts) => spread(texts, texts.length > 15 ? EACH_PULL : EACH));
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

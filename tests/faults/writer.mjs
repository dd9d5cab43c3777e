// Writes entries into a log as fast as it may and says after each what is on disk: `ack SEQ`. Which ones follows from its key.
// node writer.mjs LOG KEY FROM COUNT [ENTRIES A WRITE]
import { createHash } from 'node:crypto';
import { writeSync } from 'node:fs';
import { openStationLog } from '../../dist/db/log.js';

const [path, key, from, count, most = '4'] = process.argv.slice(2);
const hexOf = (k, i) =>
  createHash('sha256')
    .update(`${k} ${i}`)
    .digest('hex')
    .repeat(1 + (i % 5));

const say = (text) => writeSync(1, `${text}\n`);
try {
  const log = await openStationLog(path, { cutOff: () => {}, mended: () => say('mended') });
  const stream = `job:${key}`;
  let next = Math.max(Number(from), log.entries(stream).length);
  const end = Number(from) + Number(count);
  while (next < end) {
    const size = 1 + (next % Number(most));
    const drafts = Array.from({ length: size }, (_, i) => ({
      by: 'station',
      event: { type: 'raw-value', tool: 'wrench', atUs: next + i, source: 'test', hex: hexOf(key, next + i) },
    }));
    log.append(stream, drafts, { at: new Date().toISOString(), monoUs: next });
    next += size;
    say(`ack ${next}`);
  }
  log.close();
  say('closed');
} catch (error) {
  if (error.problem === undefined) throw error;
  say(`problem ${error.problem.code}`);
  process.exitCode = 2;
}

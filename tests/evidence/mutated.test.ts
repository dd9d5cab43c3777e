/** Whatever stands twice in a record is compared: a station that changes one of the two and signs anew is found out. */
import { expect, it } from 'vitest';
import { entryHash } from '../../src/evidence/entry.ts';
import { jobEntrySchema, stationEntrySchema } from '../../src/evidence/log.ts';
import { treeOf } from '../../src/evidence/merkle.ts';
import { type JobRecord, recordSchema, sealRecord } from '../../src/evidence/record.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { aroundJob } from './around-job.ts';
import { concealedAnew } from './entries.ts';
import { recordOf, signedAnew } from './forge.ts';
import { leavesOf, withLeaf } from './leaves.ts';
import { logOf, PROGRAM, seal, station, technician, trusting } from './sample-job.ts';

const trust = trusting(station);
const log = logOf(aroundJob());
const record = recordOf(seal(log));
const accepted = (file: Buffer) => verifyRecord(file, trust).verdict === 'authentic';

/** Sealed anew, as by a station that works everything out again from what it changed. */
function sealed(background: JobRecord['background'], entries: JobRecord['entries']): boolean {
  const all = [...background, ...entries].map(concealedAnew);
  try {
    const tree = treeOf(all.map(entryHash));
    const made = sealRecord(
      {
        program: PROGRAM,
        station: background.map(concealedAnew),
        entries: entries.map(concealedAnew),
        log: { tree, size: tree.size },
      },
      [station, technician],
    );
    return accepted(made.bytes);
  } catch {
    return false;
  }
}

it('x', () => {
  expect(accepted(seal(log))).toBe(true);
  const free = new Map<string, unknown[]>();
  let n = 0;
  const t = performance.now();
  for (const [list, schema] of [
    ['background', stationEntrySchema],
    ['entries', jobEntrySchema],
  ] as const)
    for (const [i, entry] of record[list].entries())
      for (const { path, name, others } of leavesOf(schema, entry)) {
        for (const other of others) {
          n++;
          const changed = record[list].map((one, j) => (j === i ? withLeaf(one, path, other) : one));
          const ok =
            list === 'entries'
              ? sealed(record.background, changed as typeof record.entries)
              : sealed(changed as typeof record.background, record.entries);
          if (ok) {
            const key = `${entry.event.type}${name.replace(/^\.event/, '')}`;
            free.set(key, [...(free.get(key) ?? []), other]);
          }
        }
      }
  for (const { path, name, others } of leavesOf(
    recordSchema.omit({ background: true, entries: true }),
    record,
  ))
    for (const other of others) {
      n++;
      if (accepted(signedAnew(withLeaf(record, path, other), station, technician)))
        free.set(`content${name}`, [other]);
    }
  console.log(n, performance.now() - t);
  for (const [key, values] of free)
    console.log(key, values.length, JSON.stringify(values.slice(0, 2).map(String)));
});

/**
 * Whatever stands twice in a record is compared. Each leaf of a sealed record is changed in turn, everything that follows
 * from the entries is worked out again and signed with the station's own keys: verification must not say of the result what
 * it says of the record, but where the leaf is free by nature: it is stated once and nothing else in the record tells of it.
 */
import { describe, expect, it } from 'vitest';
import { entryHash } from '../../src/evidence/entry.ts';
import { jobEntrySchema, stationEntrySchema } from '../../src/evidence/log.ts';
import { treeOf } from '../../src/evidence/merkle.ts';
import { type JobRecord, recordSchema } from '../../src/evidence/record.ts';
import { sealRecord } from '../../src/evidence/seal.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { aroundJob } from './around-job.ts';
import { concealedAnew } from './entries.ts';
import { eventfulJob, eventfulStation } from './eventful-job.ts';
import { recordOf, signedAnew } from './forge.ts';
import { leavesOf, withLeaf } from './leaves.ts';
import { logOf, PROGRAM, seal, station, stationEvents, technician, trusting } from './sample-job.ts';

const trust = trusting(station);
const isAuthentic = (file: Buffer) => verifyRecord(file, trust).verdict === 'authentic';

const CLOCK = 'by the clocks of the station alone; nothing but their order and pace can be compared';
const TYPED = 'a person states it, and nothing else tells of it';
const SHOP = "the shop's own texts and choices, stated once";
const TOOL = 'the tool states it of itself; no instrument in the record has it';
const INPUT = 'a reading or an event from outside that nothing is judged by';
const PROGRAM_NAME = 'a name that a program gives itself';

/** Any entry. */
const FREE_IN_ENTRIES: Readonly<Record<string, string>> = {
  '.at': CLOCK,
  '.monoUs': CLOCK,
};

/** By type of event, and `content` for what is no entry. */
const FREE: Readonly<Record<string, string>> = {
  'content.program.name': PROGRAM_NAME,
  'content.program.version': PROGRAM_NAME,
  'session-started.program': PROGRAM_NAME,
  'session-started.platform': PROGRAM_NAME,
  'station-set-up.station': 'the name that the station gives itself',
  'station-set-up.by': 'what a person or the program enters in the stream of the station follows no rule',
  'person-recorded.by': 'see station-set-up.by',
  'instrument-recorded.by': 'see station-set-up.by',
  'specification-recorded.by': 'see station-set-up.by',
  'job-opened.order.vehicle.vin': TYPED,
  'job-opened.order.vehicle.plate': TYPED,
  'job-opened.order.plug.gasket': TYPED,
  'job-opened.order.plug.part': TYPED,
  'job-opened.basis.decision.grades': SHOP,
  'job-opened.routine.confirmWindows': SHOP,
  'job-opened.routine.beforeRemoval[].text': SHOP,
  'job-opened.routine.fitting[].text': SHOP,
  'job-opened.routine.fitting[].choices[].id': SHOP,
  'job-opened.routine.fitting[].choices[].text': SHOP,
  'job-opened.routine.afterwards[].text': SHOP,
  'job-opened.routine.afterwards[].choices[].id': SHOP,
  'job-opened.routine.afterwards[].choices[].text': SHOP,
  'job-opened.routine.afterwards[].notable': SHOP,
  'tool-linked.driver': TOOL,
  'tool-linked.description.samplingFunction': TOOL,
  'tool-linked.description.link.authenticated': TOOL,
  'tool-linked.description.batteryPercent': TOOL,
  'tool-linked.description.updateIntervalMs': TOOL,
  'tool-linked.description.resolutionCounts': TOOL,
  'tool-linked.description.link.address': TOOL,
  'tool-linked.description.link.encrypted': TOOL,
  'tool-lost.reason': INPUT,
  'readings-missed.fromUs': INPUT,
  'readings-missed.toUs': INPUT,
  'readings-missed.readings': INPUT,
  'readings-missed.reason': INPUT,
  'value-not-known.atUs': INPUT,
  'value-stored.atUs': INPUT,
  'value-stored.counts': INPUT,
  'raw-value.atUs': INPUT,
  'raw-value.source': INPUT,
  'old-plugs-read.condition': TYPED,
  'old-plugs-read.damage': TYPED,
  'old-plugs-read.damage[]': TYPED,
  'old-plugs-read.thread': TYPED,
  'new-plugs-checked.lot': TYPED,
  'fitted-by-angle.turn': TYPED,
  'plug-scrapped.reason': TYPED,
  'cylinder-chosen.quantity': TYPED,
  'cylinder-chosen.cylinder': TYPED,
};

/** Of many leaves of one name, in whatever job, so many are tried: the first ones. */
const TRIED = 2;
const tried = new Map<string, number>();

function freeIn(events: readonly JobEvent[], ofStation: readonly StationEvent[]): ReadonlySet<string> {
  const record = recordOf(seal(logOf(events, 'job:WO-1', ofStation)));
  const free = new Set<string>();
  const again = (name: string) => {
    const count = tried.get(name) ?? 0;
    tried.set(name, count + 1);
    return count < TRIED;
  };
  for (const list of ['background', 'entries'] as const)
    for (const [i, entry] of record[list].entries())
      for (const { path, name, others } of leavesOf(
        list === 'entries' ? jobEntrySchema : stationEntrySchema,
        entry,
      )) {
        const called = `${entry.event.type}${name.replace(/^\.event/, '')}`;
        if (FREE_IN_ENTRIES[name] !== undefined || !again(called)) continue;
        if (
          others.some((other) =>
            sealsWell({ ...record, [list]: withLeaf(record[list], [i, ...path], other) }),
          )
        )
          free.add(called);
      }
  const content = recordSchema.omit({ background: true, entries: true });
  for (const { path, name, others } of leavesOf(content, record))
    if (others.some((other) => isAuthentic(signedAnew(withLeaf(record, path, other), station, technician))))
      free.add(`content${name}`);
  return free;
}

/** Whether a station that works everything out again from what it changed gets a record that passes. */
function sealsWell(changed: Pick<JobRecord, 'background' | 'entries'>): boolean {
  const background = changed.background.map(concealedAnew);
  const entries = changed.entries.map(concealedAnew);
  const tree = treeOf([...background, ...entries].map(entryHash));
  const log = { tree, size: tree.size };
  try {
    const file = sealRecord({ program: PROGRAM, station: background, entries, log }, [station, technician]);
    return isAuthentic(Buffer.from(file.bytes));
  } catch {
    // What cannot be played back is not sealed; dishonest-station.test.ts shows that it would not pass either.
    return false;
  }
}

describe('a leaf of a record that is changed and signed anew', () => {
  const jobs: readonly [string, readonly JobEvent[], readonly StationEvent[]][] = [
    ['a job with the steps around the torque', aroundJob(), stationEvents],
    ['a job in which nearly everything happens', eventfulJob(), eventfulStation],
  ];
  const found = new Set<string>();

  it.each(jobs)('%s: is found, unless it is free by nature', (_what, events, ofStation) => {
    expect(isAuthentic(seal(logOf(events, 'job:WO-1', ofStation)))).toBe(true);
    const free = freeIn(events, ofStation);
    for (const name of free) found.add(name);
    expect([...free].filter((name) => FREE[name] === undefined)).toEqual([]);
  });

  it('every leaf that is listed as free is free', () => {
    expect(Object.keys(FREE).filter((name) => !found.has(name))).toEqual([]);
  });
});

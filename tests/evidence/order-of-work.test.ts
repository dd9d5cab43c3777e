/** Work in any order: what was done out of order can nowhere be taken for work that was done in its order. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobHistory } from '../../src/audit/attempt-walk.ts';
import { answerFor } from '../../src/audit/questions.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import { standsOutOfOrder } from '../../src/job/early.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold, foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { STEPS, type Strictness } from '../../src/job/order-of-work.ts';
import { isProvenThroughout } from '../../src/job/proof.ts';
import { replay } from '../../src/job/replay.ts';
import { itemsOf, type ListPhase, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { writeCsv } from '../../src/report/csv.ts';
import { reportModel } from '../../src/report/model.ts';
import { jobStateWords } from '../../src/report/verdict.ts';
import { headlineOf } from '../../src/report/verification.ts';
import { completeBrief, summaryLines } from '../../src/ui/summary.ts';
import { handsOn } from '../job/workshop.ts';
import { signedAnew } from './forge.ts';
import { AT, INSTRUMENTS, logOf, opening, seal, station, trusting } from './sample-job.ts';

const WORK = [
  'windows',
  'before-removal',
  'old-plugs',
  'new-plugs',
  'gaps',
  'fitting',
  'torque 1',
  'torque 2',
  'afterwards',
] as const;
type Part = (typeof WORK)[number];

const attest = (phase: ListPhase): Command => ({
  do: 'attest',
  phase,
  steps: itemsOf(USUAL_ROUTINE, phase).map(({ id, choices }) => ({
    item: id,
    as: choices?.[0]?.id ?? 'done',
  })),
});

/** The parts of the work in the order given; whatever the program asks is answered by keeping it, by name. */
function worked(parts: readonly Part[], strictness: Strictness): readonly JobEvent[] {
  const { order } = opening();
  const every = Object.fromEntries(STEPS.map((step) => [step, strictness]));
  const opened = openJob(order, INSTRUMENTS, {
    on: AT.slice(0, 10),
    decision: USUAL_DECISION,
    overrides: [],
    routine: { ...USUAL_ROUTINE, order: every },
  });
  if (!opened.ok) throw new Error(opened.error.message);
  const events: JobEvent[] = [...opened.value];
  const bench = createBench(fold(null, opened.value[0]));
  const hands = handsOn(bench, events);
  const say = (command: Command) => void hands.give({ kind: 'command', command });
  hands.give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'test' });
  hands.join();
  const keep = () => {
    for (const { pull } of bench.state().questions)
      say({ do: 'accept', pull, by: 'Foreman One', reason: 'it was done, and not confirmed' });
  };
  const part: Readonly<Record<Part, () => void>> = {
    windows: () => say({ do: 'confirm-windows' }),
    'before-removal': () => say(attest('before-removal')),
    'old-plugs': () =>
      say({ do: 'read-old-plugs', cylinders: [1, 2], condition: 'normal', damage: [], thread: 'sound' }),
    'new-plugs': () =>
      say({ do: 'check-new-plugs', cylinders: [1, 2], part: order.plug.part, lot: null, differs: [] }),
    gaps: () => [0.75, 0.74].forEach((mm) => void hands.gap(mm)),
    fitting: () => say(attest('fitting')),
    'torque 1': () => {
      hands.pull(27.4);
      keep();
    },
    'torque 2': () => {
      hands.pull(27.1);
      keep();
    },
    afterwards: () => say(attest('afterwards')),
  };
  for (const one of parts) part[one]();
  // Whatever was refused is made up for at the end, as somebody would who wants to be done.
  for (const one of ['windows', 'before-removal', 'old-plugs', 'new-plugs', 'fitting', 'afterwards'] as const)
    part[one]();
  say({ do: 'close' });
  return events;
}

/**
 * What counted in the end. Where the order binds, a list of the end confirmed before the last pull is refused, and
 * `worked` confirms it once more when all is done: then it came in its order.
 */
function whatCounted(parts: readonly Part[], how: Strictness): readonly Part[] {
  return how === 'binding' ? [...parts.filter((part) => part !== 'afterwards'), 'afterwards'] : parts;
}

/** Worked out from the order of the parts alone, without a line of the program. */
function isInOrder(parts: readonly Part[]): boolean {
  const at = (part: Part) => parts.indexOf(part);
  const pulls = [at('torque 1'), at('torque 2')];
  const before = ['windows', 'before-removal', 'old-plugs', 'new-plugs', 'gaps', 'fitting'] as const;
  return (
    before.every((part) => pulls.every((pull) => at(part) < pull)) &&
    pulls.every((pull) => pull < at('afterwards')) &&
    at('before-removal') < at('old-plugs') &&
    // A reading is a gap of a new plug only when all in front of it is done.
    (['windows', 'before-removal', 'old-plugs', 'new-plugs'] as const).every((part) => at(part) < at('gaps'))
  );
}

/** All that people and programs read of a job, each as a text. */
function everywhere(events: readonly JobEvent[]) {
  const log = logOf(events);
  const record = verifyRecord(seal(log), trusting(station));
  const state = foldAll(events);
  const history = jobHistory(log.entries);
  if (state === null || history === null) throw new Error('no job');
  const model = reportModel({
    state,
    entries: log.entries,
    traces: new Map(),
    recordDigest: '0'.repeat(64),
    signers: [],
    technicianSignature: '',
    checkpoint: '',
    program: 'plugmark test',
    station: 'Bay 1',
    replaces: null,
    beforeSigning: null,
  });
  const job = {
    stream: 'job:WO-1',
    job: 'WO-1',
    state: state.closed?.complete === true ? ('complete' as const) : ('incomplete' as const),
    openedAt: AT,
    lastAt: AT,
    vin: null,
    plate: null,
    fleet: null,
    sources: history.sources,
    outOfOrder: history.outOfOrder,
  };
  const asked = answerFor(job, [], null, []);
  return {
    state,
    record,
    texts: {
      'verify, headline': headlineOf(record),
      'paper, status': `${model.status.word}; ${model.status.text}`,
      'paper, first page': model.outOfOrder,
      CSV: writeCsv(model).split('\r\n')[1] ?? '',
      'list of jobs': jobStateWords(job),
      'ask --exceptions': asked.exceptions.join('; '),
      'end of the job': summaryLines(state).join('\n'),
      screen: completeBrief(state),
    },
    exceptions: model.exceptions.map(({ what }) => what).join('\n'),
  };
}

const orders = fc.shuffledSubarray([...WORK], { minLength: WORK.length });
const strictness = fc.constantFrom<Strictness>('binding', 'told');

describe('work in any order', () => {
  it('that was out of order is said to be so everywhere, and is never proven throughout', () => {
    fc.assert(
      fc.property(orders, strictness, (parts, how) => {
        fc.pre(!isInOrder(whatCounted(parts, how)));
        const { state, record, texts, exceptions } = everywhere(worked(parts, how));
        expect(isProvenThroughout(state)).toBe(false);
        expect(['authentic', 'incomplete']).toContain(record.verdict);
        if (standsOutOfOrder(state).length === 0) {
          // Nothing that counts came too early: then what did was refused, and the job has not its proofs.
          expect(state.closed?.complete).toBe(false);
          return;
        }
        for (const [where, text] of Object.entries(texts)) {
          if (where === 'screen' && state.closed?.complete !== true) continue;
          if (where === 'end of the job' && state.closed?.complete !== true) continue;
          expect(text, where).toMatch(/OUT OF ORDER/);
        }
        expect(exceptions).toMatch(/OUT OF ORDER: .*\(\d{4}-\d\d-\d\d|OUT OF ORDER: .*\(never\)/);
      }),
      { numRuns: 60 },
    );
  });

  it('that was in its order is never said to be out of it', () => {
    const inOrder = WORK.filter((part) => part !== 'windows');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3 }), strictness, (windowsAt, how) => {
        const parts: Part[] = [...inOrder];
        parts.splice(windowsAt, 0, 'windows');
        expect(isInOrder(parts)).toBe(true);
        const { state, record, texts, exceptions } = everywhere(worked(parts, how));
        expect(record.verdict).toBe('authentic');
        expect(isProvenThroughout(state)).toBe(true);
        expect(Object.values(texts).join('\n') + exceptions).not.toMatch(/out of order\b(?!,)/);
        expect(Object.values(texts).join('\n') + exceptions).not.toContain('OUT OF ORDER');
      }),
      { numRuns: 8 },
    );
  });

  it('names no time for a step that was taken back and never done again', () => {
    const parts: Part[] = WORK.filter((part) => part !== 'afterwards');
    const events = worked(parts, 'told');
    const at = events.findIndex((event) => event.type === 'steps-attested' && event.phase === 'fitting');
    const said = events
      .slice(0, at)
      .filter(({ type }) =>
        /confirmed|attested|old-plugs-read|new-plugs-checked|gap-measured/.test(type),
      ).length;
    const back: JobEvent = { type: 'taken-back', said: said + 1, why: 'it was not done' };
    const upTo = events.slice(0, events.findLastIndex((event) => event.type === 'pull-placed') + 1);
    const { exceptions } = everywhere([...upTo, back]);
    expect(exceptions).toContain(
      'OUT OF ORDER: pull 1 on cylinder 1 came before the list before fitting was confirmed (never).',
    );
  });

  it('gives the same again when it is played back, so that nobody can leave it out', () => {
    fc.assert(
      fc.property(orders, strictness, (parts, how) => {
        const events = JSON.parse(JSON.stringify(worked(parts, how)));
        expect(replay(events).ok).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  it('a record whose summary leaves it out is not authentic', () => {
    const parts: Part[] = ['torque 1', ...WORK.filter((part) => part !== 'torque 1')];
    const file = seal(logOf(worked(parts, 'told')));
    const { record } = verifyRecord(file, trusting(station));
    expect(record?.summary.outOfOrder?.map(({ step }) => step)).toEqual([
      'windows',
      'before-removal',
      'fitting',
      'old-plugs',
      'new-plugs',
      'gap',
    ]);
    if (record === null) throw new Error('no record');
    const { outOfOrder: _left, ...summary } = record.summary;
    const forged = verifyRecord(signedAnew({ ...record, summary }, station), trusting(station));
    expect(forged.verdict).toBe('rejected');
    expect(forged.checks.find(({ name }) => name === 'contents')?.outcome).toBe('failed');
  });
});

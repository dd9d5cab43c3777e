import { isDeepStrictEqual } from 'node:util';
import { decodeSamples } from '../pull/trace.ts';
import { err, ok, type Result } from '../result.ts';
import { type Bench, type BenchInput, createBench, RULES } from './bench.ts';
import { commandOf } from './command-event.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { fold } from './fold.ts';
import { openJob } from './open.ts';

/** What the rules make of inputs; everything else in a job's log is input. */
const DERIVED: ReadonlySet<JobEvent['type']> = new Set([
  'uncertainty-declared',
  'gap-measured',
  'old-gap-measured',
  'removal-felt',
  'pull-detected',
  'pull-placed',
  'job-closed',
]);

/**
 * Feeds a job's recorded inputs through a new bench and holds every pull, placement and verdict that comes out against
 * the recorded one. Returns the bench as it stood at the end, or the first place where the two part. This is both how
 * a job goes on after a stop and how it is judged again, years later, from its record alone.
 */
export function replay(events: readonly JobEvent[]): Result<Bench> {
  const [opened, ...rest] = events;
  if (opened?.type !== 'job-opened') return parted(1, 'the job does not start with its opening');
  if (opened.rules !== RULES)
    return err({
      code: isOtherRules(opened.rules) ? 'rules-differ' : 'rules-unknown',
      message: `the job was judged by ${opened.rules}; this program judges by ${RULES}`,
      next: 'Use the version of the program that made it.',
    });
  const opening = openedAgain(opened, rest);
  if (opening !== null) return opening;
  const bench = createBench(fold(null, opened));
  let expected: readonly JobEvent[] = [];
  for (const [i, event] of rest.entries()) {
    const at = i + 2;
    if (DERIVED.has(event.type) && event.type !== 'job-closed') {
      const [due, ...later] = expected;
      if (due === undefined) return parted(at, `${event.type}, but the readings give nothing here`);
      if (!isDeepStrictEqual(due, event)) return parted(at, `${event.type} is not what the readings give`);
      expected = later;
      continue;
    }
    if (expected[0] !== undefined) return parted(at, `${expected[0].type} is missing in front of it`);
    const inputs = inputsOf(event);
    if (!inputs.ok) return parted(at, inputs.error.message);
    const derived: JobEvent[] = [];
    for (const input of inputs.value) {
      const out = bench.accept(input);
      if (!out.ok) return parted(at, out.error.message);
      derived.push(...out.value.filter(({ type }) => DERIVED.has(type)));
      const derivedFirst = out.value.find(({ type }) => !DERIVED.has(type) && type !== 'readings');
      if (input.kind === 'command' && derivedFirst !== undefined && !isDeepStrictEqual(derivedFirst, event))
        return parted(at, `${event.type} differs from the command`);
    }
    if (event.type === 'job-closed') {
      if (!isDeepStrictEqual(derived.pop(), event))
        return parted(at, 'the close of the job does not follow from its events');
    }
    expected = derived;
  }
  if (expected[0] !== undefined)
    return parted(events.length + 1, `${expected[0].type} is missing at the end`);
  return ok(bench);
}

/** Rules that another version of the program has or had; any other name is nobody's. */
function isOtherRules(rules: string): boolean {
  const [, number] = /^plugmark\/rules\/([1-9]\d{0,3})$/.exec(rules) ?? [];
  return number !== undefined && rules !== RULES;
}

/** The windows, the notes and what had to be answered for, worked out again from the order and the instruments. */
function openedAgain(opened: JobEventOf<'job-opened'>, rest: readonly JobEvent[]): Result<Bench> | null {
  const overridden = rest.filter((event) => event.type === 'instrument-overridden');
  const { order, instruments, basis, routine } = opened;
  const asked = routine === undefined ? {} : { routine };
  const again = openJob(order, instruments, { ...basis, ...asked, overrides: overridden });
  if (!again.ok) return parted(1, `it could not have been opened so: ${again.error.message}`);
  const recorded = [opened, ...rest.slice(0, overridden.length)];
  return isDeepStrictEqual(again.value, recorded)
    ? null
    : parted(1, 'its windows are not what the order and the instruments give');
}

function parted(position: number, message: string): Result<Bench> {
  return err({
    code: 'judged-otherwise',
    where: `event ${position}`,
    message,
    next: 'Do not rely on this record; keep it and ask the station for its log.',
  });
}

function inputsOf(event: JobEvent): Result<readonly BenchInput[]> {
  switch (event.type) {
    case 'session-started':
      return ok([
        { kind: 'session', program: event.program, platform: event.platform, simulated: event.simulated },
      ]);
    case 'tool-linked':
      return ok([
        {
          kind: 'link',
          tool: event.tool,
          driver: event.driver,
          link: { state: 'linked', description: event.description },
        },
      ]);
    case 'tool-lost': {
      const { type: _type, tool, ...end } = event;
      return ok([{ kind: 'link', tool, driver: '', link: { state: 'lost', ...end } }]);
    }
    case 'readings': {
      const samples = decodeSamples(event);
      if (!samples.ok) return samples;
      return ok(
        samples.value.counts.map((counts, i) => ({
          kind: 'reading',
          tool: event.tool,
          reading: { kind: 'value', n: event.first + i, atUs: samples.value.atUs[i] ?? 0, counts },
        })),
      );
    }
    case 'readings-missed': {
      const { type: _type, tool, toUs: atUs, ...missed } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'missed', n: 0, atUs, ...missed } }]);
    }
    default: {
      const command = commandOf(event);
      return ok(command === null ? [] : [{ kind: 'command', command }]);
    }
  }
}

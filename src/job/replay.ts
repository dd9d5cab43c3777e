import { isSameData } from '../evidence/platform/same.ts';
import type { Problem } from '../problem.ts';
import { decodeSamples } from '../pull/trace.ts';
import type { FigureSource, LinkDescription } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { type Bench, type BenchInput, createBench } from './bench.ts';
import { commandOf } from './command-event.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { fold } from './fold.ts';
import { openJob } from './open.ts';
import { type PartedProblem, type PartingCode, partedProblem } from './parting.ts';
import { ReadingNumbers } from './reading-numbers.ts';
import { RULES } from './rules.ts';

/** What the rules make of inputs; everything else in a job's log is input. */
const DERIVED: ReadonlySet<JobEvent['type']> = new Set([
  'uncertainty-declared',
  'tool-in-use',
  'gap-measured',
  'gap-out-of-turn',
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
export function replay(events: readonly JobEvent[]): Result<Bench, Problem | PartedProblem> {
  const [opened, ...rest] = events;
  if (opened?.type !== 'job-opened') return parted(1, 'no-opening', opened?.type ?? 'job-opened');
  if (opened.rules !== RULES)
    return err({
      code: 'rules-differ',
      message: w`the job was opened under ${opened.rules}; this program works under ${RULES}`,
      next: w`Finish it with the version of the program that opened it, or declare it void and open it anew.`,
    });
  const opening = openedAgain(opened, rest);
  if (opening !== null) return opening;
  const bench = createBench(fold(null, opened));
  const numbers = new ReadingNumbers();
  let expected: readonly JobEvent[] = [];
  for (const [i, event] of rest.entries()) {
    const at = i + 2;
    if (DERIVED.has(event.type) && event.type !== 'job-closed') {
      const [due, ...later] = expected;
      if (due === undefined) return parted(at, 'from-nothing', event.type);
      if (!isSameData(due, event)) return parted(at, 'other-than-readings', event.type);
      expected = later;
      continue;
    }
    if (expected[0] !== undefined) return parted(at, 'left-out', expected[0].type);
    if (!numbers.follow(event)) return parted(at, 'readings-not-in-order', event.type);
    if (!sourceFits(event)) return parted(at, 'source-not-of-link', event.type);
    const inputs = inputsOf(event);
    if (!inputs.ok) return parted(at, 'not-an-input', event.type, inputs.error.message);
    const derived: JobEvent[] = [];
    for (const input of inputs.value) {
      const out = bench.accept(input);
      if (!out.ok) return parted(at, 'not-to-be-accepted', event.type, out.error.message);
      derived.push(...out.value.filter(({ type }) => DERIVED.has(type)));
      const again = out.value.find(({ type }) => !DERIVED.has(type) && type !== 'readings');
      const isWrittenAgain = event.type !== 'readings' && event.type !== 'job-closed';
      if (isWrittenAgain && !isSameData(again, event)) return parted(at, 'other-than-input', event.type);
    }
    if (event.type === 'job-closed' && !isSameData(derived.pop(), event))
      return parted(at, 'other-close', event.type);
    expected = derived;
  }
  if (expected[0] !== undefined) return parted(events.length + 1, 'left-out', expected[0].type);
  return ok(bench);
}

/** The windows, the notes and what had to be answered for, worked out again from the order and the instruments. */
function openedAgain(
  opened: JobEventOf<'job-opened'>,
  rest: readonly JobEvent[],
): Result<never, PartedProblem> | null {
  const overridden = rest.filter((event) => event.type === 'instrument-overridden');
  const { order, instruments, basis, routine, shop, utcOffsetMin, toolsOf } = opened;
  const asked = {
    ...(routine === undefined ? {} : { routine }),
    ...(shop === undefined ? {} : { shop }),
    ...(utcOffsetMin === undefined ? {} : { utcOffsetMin }),
    ...(toolsOf === undefined ? {} : { toolsOf }),
  };
  const again = openJob(order, instruments, { ...basis, ...asked, overrides: overridden });
  if (!again.ok) return parted(1, 'not-to-be-opened', 'job-opened', again.error.message);
  const recorded = [opened, ...rest.slice(0, overridden.length)];
  return isSameData(again.value, recorded) ? null : parted(1, 'other-windows', 'job-opened');
}

const parted = (
  position: number,
  code: PartingCode,
  event: JobEvent['type'],
  because?: string,
): Result<never, PartedProblem> => err(partedProblem(position, code, event, because));

/** What can come over each kind of link. */
const SOURCES_OVER: Readonly<Record<LinkDescription['kind'], readonly FigureSource[]>> = {
  'bluetooth-le': ['linked', 'simulated'],
  direct: ['simulated'],
  file: ['replayed'],
  keyboard: ['typed'],
  serial: ['linked', 'simulated'],
};

const sourceFits = (event: JobEvent): boolean =>
  event.type !== 'tool-linked' || SOURCES_OVER[event.description.link.kind].includes(event.source);

function inputsOf(event: JobEvent): Result<readonly BenchInput[]> {
  switch (event.type) {
    case 'session-started':
      return ok([{ kind: 'session', program: event.program, platform: event.platform }]);
    case 'tool-linked':
      return ok([
        {
          kind: 'link',
          tool: event.tool,
          driver: event.driver,
          source: event.source,
          link: { state: 'linked', description: event.description },
        },
      ]);
    case 'tool-lost': {
      const { type: _type, tool, ...end } = event;
      // Of a link that ends nobody asks for driver and source.
      return ok([{ kind: 'link', tool, driver: '', source: 'linked', link: { state: 'lost', ...end } }]);
    }
    case 'readings': {
      const samples = decodeSamples(event);
      if (!samples.ok) return samples;
      return ok([{ kind: 'written', tool: event.tool, first: event.first, samples: samples.value }]);
    }
    case 'readings-missed': {
      const { type: _type, tool, toUs: atUs, ...missed } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'missed', n: 0, atUs, ...missed } }]);
    }
    case 'tool-silent':
      return ok([{ kind: 'silence', tool: event.tool, atUs: event.atUs }]);
    case 'value-stored': {
      const { type: _type, tool, reading: n, ...stored } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'stored', n, ...stored } }]);
    }
    case 'value-not-known': {
      const { tool, reading: n, atUs } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'not-known', n, atUs } }]);
    }
    case 'profile-contradicted': {
      const { type: _type, tool, ...contradicted } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'contradicted', n: 0, ...contradicted } }]);
    }
    case 'raw-value': {
      const { type: _type, tool, ...raw } = event;
      return ok([{ kind: 'reading', tool, reading: { kind: 'raw', n: 0, ...raw } }]);
    }
    default: {
      const command = commandOf(event);
      return ok(command === null ? [] : [{ kind: 'command', command }]);
    }
  }
}

/**
 * From when to when a look-back has to look: from the last good check before the errors were found (ISO 9001:2015,
 * 7.1.5.2), as the station's log has it, to the day on which they were found.
 */
import { canonical } from '../evidence/canonical.ts';
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { calibratedAt } from '../metrology/calibration.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';

/** What is asked: a tool of the station, and the certificate that holds what the laboratory found. */
export interface LookBackInput {
  readonly tool: string;
  readonly asFound: Certificate;
  /** Number of the certificate to count from, where the log leaves that open. */
  readonly since: string | null;
  /** ISO date. */
  readonly today: string;
}

export interface Span {
  readonly serial: string;
  /** Null where the tool was never used with a certificate from before. */
  readonly lastGood: Certificate | null;
  /** ISO dates: what was measured from that day on is in question; the day of the finding. */
  readonly from: string;
  readonly foundOn: string;
  /** Certificates of the same calibration or later: what was measured under them is not in question. */
  readonly newer: ReadonlySet<string>;
}

/**
 * The span of a look-back. Problems: `tool-unknown`, `serial-missing`, `as-found-other-serial`, `certificate-unit`,
 * `certificate-in-future`, `certificate-unknown`, `certificates-overlap`, `as-found-too-early`.
 */
export function spanOf(entries: readonly StationEntry[], input: LookBackInput): Result<Span> {
  const { tool, asFound, since } = input;
  const byName = usesOf(entries, ({ id }) => id === tool);
  const wrong = mistaken(byName, entries, input);
  if (wrong !== null) return err(wrong);
  // By serial number, as the attempts are: a tool keeps that under another name.
  const ofTool = usesOf(entries, ({ serial }) => serial === asFound.serial);
  const held = ofTool.flatMap(({ certificate }) => (certificate === null ? [] : [certificate]));
  const before = distinct(held.filter(({ date }) => date < asFound.date));
  const lastGood = since === null ? latest(before, ofTool, asFound) : named(before, since, asFound);
  if (!lastGood.ok) return lastGood;
  const firstUse = ofTool[0]?.on ?? asFound.date;
  const from = lastGood.value?.date ?? firstUse;
  if (from > asFound.date)
    return err(
      problem(
        'as-found-too-early',
        asFound,
        'date',
        `it is dated ${asFound.date}, and ${tool} (${asFound.serial}) is in the log only from ${firstUse} on`,
        'Check the date; nothing of this log can be in question.',
      ),
    );
  const newer = held.filter(({ date }) => date >= asFound.date);
  const reused = newer.find(({ number }) => before.some((one) => one.number === number));
  if (reused !== undefined) return err(sameNumber(before, reused, asFound));
  return ok({
    serial: asFound.serial,
    lastGood: lastGood.value,
    from,
    foundOn: asFound.date,
    newer: new Set(newer.map(({ number }) => number)),
  });
}

/** How far a tool was found to have moved at one of the points that the laboratory looked at. */
export interface FoundPoint {
  readonly reading: number;
  readonly error: number;
  readonly expanded: number;
  /** By the last good check, at the same reading; null where there is none. */
  readonly was: { readonly error: number; readonly expanded: number } | null;
  /** `moved`: by more than the uncertainty of the difference. `not-moved`: by less. `unknown`: nothing to compare with. */
  readonly finding: 'moved' | 'not-moved' | 'unknown';
}

/** The found points beside what the last good check had said there; U at 95 % (k = 2). */
export function foundPoints(asFound: Certificate, lastGood: Certificate | null): readonly FoundPoint[] {
  return asFound.points.map(({ reading, error, expanded, k }) => {
    const found = { reading, error, expanded: (2 * expanded) / k };
    if (lastGood === null) return { ...found, was: null, finding: 'unknown' };
    const then = calibratedAt(lastGood.points, reading, lastGood.number);
    const was = { error: then.error, expanded: 2 * then.term.amount };
    const apart = Math.abs(error - was.error);
    const finding = apart > Math.hypot(found.expanded, was.expanded) ? 'moved' : 'not-moved';
    return { ...found, was, finding };
  });
}

/** One time that the tool was entered into the log. */
interface Use {
  readonly on: string;
  readonly serial: string | null;
  readonly certificate: Certificate | null;
  readonly quantity: 'torque' | 'length';
}

function usesOf(
  entries: readonly StationEntry[],
  isMeant: (instrument: Instrument) => boolean,
): readonly Use[] {
  return entries.flatMap(({ event, at }) =>
    event.type === 'instrument-recorded' && isMeant(event.instrument)
      ? [
          {
            on: at.slice(0, 10),
            serial: event.instrument.serial ?? null,
            certificate: event.instrument.certificate ?? null,
            quantity: event.instrument.quantity,
          },
        ]
      : [],
  );
}

function mistaken(
  uses: readonly Use[],
  entries: readonly StationEntry[],
  { tool, asFound, today }: LookBackInput,
): Problem | null {
  const [use] = uses;
  if (use === undefined) {
    const known = new Set(
      entries.flatMap(({ event }) => (event.type === 'instrument-recorded' ? [event.instrument.id] : [])),
    );
    return {
      code: 'tool-unknown',
      where: tool,
      message: 'the log of this station knows no tool of that name',
      next: `It knows: ${[...known].join(', ') || 'none'}.`,
    };
  }
  const serials = new Set(uses.flatMap(({ serial }) => (serial === null ? [] : [serial])));
  if (serials.size === 0)
    return problem(
      'serial-missing',
      asFound,
      'serial',
      `it is for serial number ${asFound.serial}; tool ${tool} has none in the log`,
      'Without a serial number nobody can tell which tool was used; look at its jobs with "plugmark ask --tool".',
    );
  if (!serials.has(asFound.serial))
    return problem(
      'as-found-other-serial',
      asFound,
      'serial',
      `it is for serial number ${asFound.serial}, but tool ${tool} is ${[...serials].join(' or ')}`,
      'Use what was found of this very tool.',
    );
  const unit = use.quantity === 'torque' ? 'N.m' : 'mm';
  if (asFound.unit !== unit)
    return problem(
      'certificate-unit',
      asFound,
      'unit',
      `its points are in ${asFound.unit}; tool ${tool} measures in ${unit}`,
      'Use what was found of this very tool.',
    );
  if (asFound.date > today)
    return problem(
      'certificate-in-future',
      asFound,
      'date',
      `it is dated ${asFound.date}, after today, ${today}`,
      'Check the date of the certificate and the clock of this computer.',
    );
  return null;
}

/** The latest certificate from before, where the log leaves no doubt which one that is. */
function latest(
  before: readonly Certificate[],
  uses: readonly Use[],
  asFound: Certificate,
): Result<Certificate | null> {
  const day = before
    .map(({ date }) => date)
    .sort()
    .at(-1);
  const [last, other] = before.filter(({ date }) => date === day);
  if (last === undefined) return ok(null);
  if (other !== undefined)
    return err(overlap(asFound, `certificates ${last.number} and ${other.number} are both of ${day}`, last));
  const since = uses.findIndex(({ certificate }) => certificate !== null && same(certificate, last));
  const older = uses
    .slice(since)
    .find(({ certificate }) => certificate !== null && certificate.date < last.date)?.certificate;
  if (older === undefined || older === null) return ok(last);
  return err(
    overlap(
      asFound,
      `certificate ${older.number} of ${older.date} was taken up again after ${last.number} of ${last.date}`,
      older,
    ),
  );
}

function named(
  before: readonly Certificate[],
  since: string,
  asFound: Certificate,
): Result<Certificate | null> {
  const [found, other] = before.filter(({ number }) => number === since);
  if (found !== undefined && other === undefined) return ok(found);
  if (found !== undefined)
    return err(overlap(asFound, `there are two certificates with the number ${since}`, found));
  return err(
    problem(
      'certificate-unknown',
      asFound,
      'date',
      `the log knows no certificate ${since} of this tool from before ${asFound.date}`,
      `It knows: ${before.map(({ number, date }) => `${number} of ${date}`).join(', ') || 'none'}.`,
    ),
  );
}

function overlap(asFound: Certificate, message: string, example: Certificate): Problem {
  return problem(
    'certificates-overlap',
    asFound,
    'last good check',
    `${message}, so that the log does not tell which was the last good check`,
    `Say which one counts, for example: --since "${example.number}". The earlier one looks back further.`,
  );
}

/** Attempts hold the bare number of their certificate, so that two of one number cannot be told apart. */
function sameNumber(before: readonly Certificate[], reused: Certificate, asFound: Certificate): Problem {
  const dates = before.filter(({ number }) => number === reused.number).map(({ date }) => date);
  return problem(
    'certificates-overlap',
    asFound,
    'newer certificate',
    `certificates of ${[...dates, reused.date].join(' and ')} have the same number, ${reused.number}, so that the log does not tell what was measured before the finding`,
    'Look at the jobs of this tool with "plugmark ask --tool", and give every certificate a number of its own.',
  );
}

const same = (a: Certificate, b: Certificate) => canonical(a) === canonical(b);

function distinct(all: readonly Certificate[]): readonly Certificate[] {
  return all.filter((one, i) => all.findIndex((other) => same(one, other)) === i);
}

function problem(code: string, asFound: Certificate, field: string, message: string, next: string): Problem {
  return { code, where: `as-found ${asFound.number}: ${field}`, message, next };
}

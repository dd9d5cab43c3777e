/**
 * The days that an impact assessment covers: from the last good check in the station's log (ISO 9001:2015, 7.1.5.2) to the
 * day on which the errors were found.
 */
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { calibratedAt } from '../metrology/calibration.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { lastGoodCheck, asFoundProblem as problem, type Use } from './impact-checks.ts';

/** A tool of the station, and the certificate with what the laboratory found. */
export interface ImpactInput {
  readonly tool: string;
  readonly asFound: Certificate;
  /** The certificate to count from, by its number or as "NUMBER of DATE", where the log leaves that open. */
  readonly since: string | null;
  /** ISO date. */
  readonly today: string;
}

export interface Span {
  readonly serial: string;
  /** Null where the tool was never used with a certificate from before. */
  readonly lastGood: Certificate | null;
  /** ISO dates: everything measured from that day on is in question; the day of the finding. */
  readonly from: string;
  readonly foundOn: string;
}

/**
 * The span of an impact assessment. Problems: `tool-unknown`, `serial-missing`, `certificate-other-serial`, `certificate-unit`,
 * `certificate-in-future`, `certificate-unknown`, `certificates-overlap`, `as-found-too-early`.
 */
export function spanOf(entries: readonly StationEntry[], input: ImpactInput): Result<Span> {
  const { tool, asFound, since } = input;
  const byName = usesOf(entries, ({ id }) => id === tool);
  const wrong = mistaken(byName, entries, input);
  if (wrong !== null) return err(wrong);
  // By serial number, as the attempts are: a tool keeps that under another name.
  const ofTool = usesOf(entries, ({ serial }) => serial === asFound.serial);
  const lastGood = lastGoodCheck(ofTool, asFound, since);
  if (!lastGood.ok) return lastGood;
  const firstUse = ofTool[0]?.on ?? asFound.date;
  const from = lastGood.value?.date ?? firstUse;
  if (from > asFound.date)
    return err(
      problem(
        'as-found-too-early',
        asFound,
        'date',
        w`it is dated ${asFound.date}, and ${tool} (${asFound.serial}) is in the log only from ${firstUse} on`,
        'Check the date. Nothing in this log can be in question.',
      ),
    );
  return ok({
    serial: asFound.serial,
    lastGood: lastGood.value,
    from,
    foundOn: asFound.date,
  });
}

/** How far a tool has moved at one of the points that the laboratory tested. */
export interface AsFoundPoint {
  readonly reading: number;
  readonly error: number;
  readonly expanded: number;
  /** By the last good check, at the same reading; null where there is none. */
  readonly was: { readonly error: number; readonly expanded: number } | null;
  /** `moved`: by more than the uncertainty of the difference. `not-moved`: by less. `unknown`: nothing to compare with. */
  readonly finding: 'moved' | 'not-moved' | 'unknown';
}

/** The points of the finding beside the last good check at the same readings; U at 95 % (k = 2). */
export function asFoundPoints(asFound: Certificate, lastGood: Certificate | null): readonly AsFoundPoint[] {
  return asFound.points.map(({ reading, error, expanded, k }) => {
    const point = { reading, error, expanded: (2 * expanded) / k };
    if (lastGood === null) return { ...point, was: null, finding: 'unknown' };
    const then = calibratedAt(lastGood.points, reading);
    const was = { error: then.error, expanded: 2 * then.standard };
    const apart = Math.abs(error - was.error);
    const finding = apart > Math.hypot(point.expanded, was.expanded) ? 'moved' : 'not-moved';
    return { ...point, was, finding };
  });
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
  { tool, asFound, today }: ImpactInput,
): Problem | null {
  const [use] = uses;
  if (use === undefined) {
    const known = new Set(
      entries.flatMap(({ event }) => (event.type === 'instrument-recorded' ? [event.instrument.id] : [])),
    );
    return {
      code: 'tool-unknown',
      where: tool,
      message: w`the log of this station has no tool of that name`,
      next: w`It has: ${[...known].join(', ') || w`none`}.`,
    };
  }
  const serials = new Set(uses.flatMap(({ serial }) => (serial === null ? [] : [serial])));
  if (serials.size === 0)
    return problem(
      'serial-missing',
      asFound,
      'serial',
      w`it is for serial number ${asFound.serial}; tool ${tool} has none in the log`,
      w`Without a serial number nobody can tell which tool was used; look at its jobs with "plugmark ask --tool".`,
    );
  if (!serials.has(asFound.serial))
    return problem(
      'certificate-other-serial',
      asFound,
      'serial',
      w`it is for serial number ${asFound.serial}, but tool ${tool} is ${[...serials].join(w` or `)}`,
      w`Give the file of what was found of this tool.`,
    );
  const unit = use.quantity === 'torque' ? 'N.m' : 'mm';
  if (asFound.unit !== unit)
    return problem(
      'certificate-unit',
      asFound,
      'unit',
      w`its points are in ${asFound.unit}; tool ${tool} measures in ${unit}`,
      w`Give the file of what was found of this tool.`,
    );
  if (asFound.date > today)
    return problem(
      'certificate-in-future',
      asFound,
      'date',
      w`it is dated ${asFound.date}, after today, ${today}`,
      w`Check the date of the certificate and the clock of this computer.`,
    );
  return null;
}

import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { AttemptRow } from '../audit/attempt.ts';
import { type WrenchDrift, wrenchDrift } from '../audit/drift.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import { ProblemError } from '../problem.ts';
import { ewmaDrawing } from '../report/charts/control.ts';
import { controlSvg } from '../report/charts/control-svg.ts';
import { controlText } from '../report/charts/control-text.ts';
import { orThrow } from '../result.ts';
import { textSize } from './capability.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import type { Archive } from './station.ts';
import { type Whose, withArchive } from './whose.ts';

export interface DriftOptions extends Whose {
  /** Per cent of the middle of the limits; the tool's own permissible deviation unless told. */
  readonly permissible?: number;
  readonly last: number;
  readonly out?: string;
}

/** Whether a wrench has moved since its calibration. Exit code 1 where it wants a look before it is due. */
export function showDrift(tool: string, options: DriftOptions): Promise<ExitCode> {
  return withArchive(options, async (archive) => {
    const rows = archive.log.history.attemptsOf({ tool, quantity: 'torque' });
    const newest = rows.at(-1);
    if (newest === undefined) throw unknownTool(tool);
    // One serial number under one certificate: a wrench that came back from the laboratory begins anew.
    const current = rows.filter(
      (row) =>
        row.certificate === newest.certificate && row.serial === newest.serial && row.tool === newest.tool,
    );
    const instrument = instrumentOf(archive, newest);
    const permissiblePercent = permissibleOf(instrument, newest, options.permissible);
    const due = dueDate(instrument);
    const found = orThrow(wrenchDrift(current, { permissiblePercent, due }));
    const name = newest.serial ?? newest.tool;
    const drawing = ewmaDrawing(lastOf(found, options.last), {
      title: `${name}, first pulls of a day against the middle of their limits`,
      unit: '%',
      labels: found.days.slice(-options.last).map(({ day }) => day),
    });
    const lines = [
      ...(current.some(({ simulated }) => simulated)
        ? ['SIMULATED: this tool was, and nothing is said of any.']
        : []),
      ...wordsOf(found, { name, due, permissiblePercent, certificate: newest.certificate }),
      '',
      ...controlText(drawing, textSize()),
    ];
    if (options.out !== undefined) {
      await mkdir(options.out, { recursive: true });
      const file = join(options.out, 'drift.svg');
      await writeFile(file, controlSvg(drawing, { width: 900, height: 320 }));
      lines.push('', `Written: ${safeLine(file)}`);
    }
    process.stdout.write(`${lines.join('\n')}\n`);
    return found.warn ? EXIT.failed : EXIT.done;
  });
}

function wordsOf(
  { days, drift, isTrend, shiftedSince, outsideOn, warn }: WrenchDrift,
  about: {
    readonly name: string;
    readonly due: string | null;
    readonly permissiblePercent: number;
    readonly certificate: string | null;
  },
): readonly string[] {
  const { name, due, permissiblePercent, certificate } = about;
  const perYear = 365.25 * drift.perDay;
  const slope = `${perYear > 0 ? '+' : ''}${perYear.toFixed(2)} % a year (standard uncertainty ${(365.25 * drift.perDayUncertainty).toFixed(2)})`;
  return [
    `${warn ? 'WARNING: ' : ''}${safeLine(name)}, certificate ${safeLine(certificate ?? 'none')}, due ${due ?? 'not known'}`,
    `${days.length} days of use, ${days.reduce((sum, { pulls }) => sum + pulls, 0)} first pulls since ${days[0]?.day ?? '-'}.`,
    isTrend ? `Trend: ${slope}.` : `No trend beyond chance: ${slope}.`,
    shiftedSince === null
      ? 'The weighted mean lies within its limits.'
      : `The weighted mean has been beyond its limits since ${shiftedSince}.`,
    outsideOn === null
      ? `Nothing says that it leaves the ${permissiblePercent.toFixed(1)} % permitted before it is due.`
      : `Going on so, it leaves the ${permissiblePercent.toFixed(1)} % permitted on ${outsideOn}${due === null ? '' : `, before it is due on ${due}`}.`,
    ...(warn ? ['Have the wrench checked now, or look who and what has changed since.'] : []),
  ];
}

function lastOf({ chart }: WrenchDrift, most: number): WrenchDrift['chart'] {
  return { ...chart, points: chart.points.slice(-most) };
}

function instrumentOf({ log }: Archive, { setupKey, tool }: AttemptRow): Instrument {
  const found = log.history.setupOf(setupKey).instruments.find(({ id }) => id === tool);
  if (found === undefined) throw unknownTool(tool);
  return found;
}

function permissibleOf(instrument: Instrument, row: AttemptRow, given: number | undefined): number {
  if (given !== undefined) return given;
  const { permissibleDeviation } = instrument;
  const middle = (row.lowerLimit + row.upperLimit) / 2;
  if (permissibleDeviation !== undefined) return (100 * permissibleAt(permissibleDeviation, middle)) / middle;
  throw new ProblemError({
    code: 'no-permissible',
    where: instrument.id,
    message: 'nothing says how far this tool may be off',
    next: 'Give it with --permissible, in per cent.',
  });
}

function unknownTool(tool: string): ProblemError {
  return new ProblemError({
    code: 'tool-unknown',
    where: tool,
    message: 'no pull in the records was made with a tool of this name or serial number',
    next: 'See "plugmark calendar" for the tools of this station.',
  });
}

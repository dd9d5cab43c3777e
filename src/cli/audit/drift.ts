import { join } from 'node:path';
import type { AttemptRow } from '../../audit/attempt.ts';
import { type CertificateLines, firstBeyond } from '../../audit/certificate-line.ts';
import { type WrenchDrift, wrenchDrift } from '../../audit/drift.ts';
import type { StationEntry } from '../../evidence/log.ts';
import { outputFolder, writeWhole } from '../../files/output.ts';
import { dueDate } from '../../instrument/fitness.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { calibratedAt } from '../../metrology/calibration.ts';
import type { PermissibleDeviation } from '../../metrology/permissible.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { certificatesSvg } from '../../report/charts/certificates-svg.ts';
import { type ControlDrawing, ewmaDrawing } from '../../report/charts/control.ts';
import { controlSvg } from '../../report/charts/control-svg.ts';
import { controlText } from '../../report/charts/control-text.ts';
import { err, type Result } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { toolDrift } from '../answers/tools.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { readStationFile } from '../station/station-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { wrapped } from '../terminal/wrapped.ts';
import { textSize } from './capability.ts';
import { laboratoryLines, laboratoryOf, unitOf } from './drift-laboratory.ts';

export interface DriftOptions extends Scope {
  /** Per cent of the reading; the tool's own permissible deviation unless told. */
  readonly permissible?: number;
  readonly last: number;
  readonly out?: string;
  readonly json?: true;
}

const PICTURE = { width: 900, height: 320 } as const;

/**
 * Whether a tool has moved: by its pulls since its calibration, and by its certificates. Each half says for itself what it
 * lacks. Exit code 1 where the tool wants a look before it is due.
 */
export async function showDrift(tool: string, options: DriftOptions): Promise<ExitCode> {
  // The station file is newer than what jobs recorded, where it is at hand.
  const named = options.data === undefined ? (await readStationFile(options.station)).instruments : [];
  return await withStationFolder(options, async (stationFolder) => {
    const entries = stationFolder.log.stationEntries();
    const subject = subjectOf(stationFolder, entries, tool, named);
    const { instrument, rows, name } = subject;
    const permissible = permissibleOf(instrument, options.permissible);
    const pulls = pullsOf(subject, permissible);
    const used = median(rows.flatMap(({ readingSi }) => (readingSi === null ? [] : [readingSi])));
    const frozen = frozenWith(stationFolder, subject);
    const laboratory = await laboratoryOf(stationFolder, entries, instrument, { permissible, frozen, used });
    const { lines, lost } = laboratory;
    if (!pulls.ok && !lines.ok) throw nothingToSay(name, pulls.error, lines.error);
    const word = verdictOf(pulls, lines);
    const due = dueDate(instrument);
    const chart = pulls.ok ? drawingOf(pulls.value, name, options.last) : null;
    const pictures =
      options.out === undefined
        ? []
        : await writePictures(
            options.out,
            chart,
            lines.ok
              ? certificatesSvg(lines.value, { title: name, unit: unitOf(instrument) }, PICTURE)
              : null,
          );
    const code = word === null ? EXIT.done : EXIT.failed;
    const simulated = rows.some((row) => row.simulated);
    if (options.json === true) {
      printJson(toolDrift({ name, instrument, simulated, verdict: word, due, pulls, lines, lost }));
      return code;
    }
    print([
      `${word === null ? '' : `${word}: `}${name}, certificate ${instrument.certificate?.number ?? 'none'}, due ${due ?? 'not known'}`,
      ...(simulated ? ['SIMULATED: this tool was simulated; this says nothing about any real one.'] : []),
      '',
    ]);
    if (pulls.ok) print(pullWords(pulls.value, due));
    else print([`Pulls: nothing to say. ${sentence(pulls.error)}`]);
    write(chart === null ? [''] : ['', ...controlText(chart, textSize()), '']);
    if (lines.ok) sayLaboratory(lines.value, instrument, used);
    else print([`Certificates: nothing to say. ${sentence(lines.error)}`]);
    if (lost.length > 0)
      print([`Not as they were kept, and left out: ${lost.join(', ')}. See "plugmark certificates check".`]);
    if (pictures.length > 0) print([`Written: ${pictures.join(', ')}`]);
    return code;
  });
}

/** What both halves come to; null where nothing speaks against the tool. */
function verdictOf(
  pulls: Result<WrenchDrift>,
  lines: Result<CertificateLines>,
): 'WARNING' | 'UNDECIDED' | null {
  const first = lines.ok ? firstBeyond(lines.value) : null;
  if ((pulls.ok && pulls.value.warn) || first?.finding === 'warning') return 'WARNING';
  return first === null ? null : 'UNDECIDED';
}

interface Subject {
  readonly name: string;
  /** As the station file or else the log has it last. */
  readonly instrument: Instrument;
  /** All its attempts, the oldest first. */
  readonly rows: readonly AttemptRow[];
}

function subjectOf(
  { log }: StationFolder,
  entries: readonly StationEntry[],
  tool: string,
  named: readonly Instrument[],
): Subject {
  const isIt = ({ id, serial }: Instrument) => id === tool || serial === tool;
  const recorded = entries.flatMap(({ event }) =>
    event.type === 'instrument-recorded' ? [event.instrument] : [],
  );
  const newest = () => log.history.attemptsOf({ tool }).at(-1);
  const instrument = named.find(isIt) ?? recorded.findLast(isIt) ?? ofRow(log, newest(), tool);
  const { serial, id } = instrument;
  // By serial number: a tool keeps that under another name, and its name may have been another tool's.
  const rows = log.history
    .attemptsOf({ tool: serial ?? id })
    .filter((row) => (serial === undefined ? row.serial === null && row.tool === id : row.serial === serial));
  return { name: serial ?? id, instrument, rows };
}

function ofRow({ history }: StationFolder['log'], row: AttemptRow | undefined, tool: string): Instrument {
  const found =
    row === undefined
      ? undefined
      : history.setupOf(row.setupKey).instruments.find(({ id }) => id === row.tool);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'tool-unknown',
    where: tool,
    message: 'neither the records nor the station file know a tool of this name or serial number',
    next: 'See "plugmark calendar" for the tools of this station.',
  });
}

/** Under its certificate of today: a wrench that came back from the laboratory begins anew. */
function pullsOf({ instrument, rows }: Subject, permissible: PermissibleDeviation): Result<WrenchDrift> {
  const { quantity, certificate } = instrument;
  if (quantity === 'length') return err(noPulls());
  // By its day as well: laboratories use numbers again.
  const current = rows.filter(
    (row) => row.certificate === (certificate?.number ?? null) && row.on >= (certificate?.date ?? ''),
  );
  const points = certificate?.points ?? [];
  const errorAt = (nm: number) => (points.length === 0 ? 0 : calibratedAt(points, nm, '').error);
  return wrenchDrift(current, { permissible, errorAt, due: dueDate(instrument) });
}

/** The certificates that its jobs were done by. */
function frozenWith({ log }: StationFolder, { rows, instrument }: Subject) {
  const keys = new Set(rows.map(({ setupKey }) => setupKey));
  return [...keys].flatMap((key) =>
    log.history
      .setupOf(key)
      .instruments.flatMap(({ serial, certificate }) =>
        serial === instrument.serial && certificate !== undefined ? [certificate] : [],
      ),
  );
}

function permissibleOf(
  { permissibleDeviation, id }: Instrument,
  given: number | undefined,
): PermissibleDeviation {
  if (given !== undefined) return { kind: 'relative', percent: given };
  if (permissibleDeviation !== undefined) return permissibleDeviation;
  throw new ProblemError({
    code: 'no-permissible',
    where: id,
    message: 'nothing says how far this tool may be off',
    next: 'Give it with --permissible, in per cent.',
  });
}

function pullWords(found: WrenchDrift, due: string | null): readonly string[] {
  const { days, drift, isTrend, permissiblePercent, errorPercent, shiftedSince, outsideOn, warn } = found;
  const perYear = 365.25 * drift.perDay;
  const slope = `${signed(perYear)} % a year (standard uncertainty ${(365.25 * drift.perDayUncertainty).toFixed(2)})`;
  const permitted = `the ${permissiblePercent.toFixed(1)} % permitted (it began at ${signed(errorPercent)} % by its certificate)`;
  return [
    `Pulls: ${days.length} days of use, ${days.reduce((sum, { pulls }) => sum + pulls, 0)} first pulls since ${days[0]?.day ?? '-'}.`,
    isTrend ? `Trend: ${slope}.` : `No trend beyond chance: ${slope}.`,
    shiftedSince === null
      ? 'The weighted mean lies within its limits.'
      : `WARNING: the weighted mean has been beyond its limits since ${shiftedSince}.`,
    outsideOn === null
      ? `No line that its pulls bear out leaves ${permitted} before it is due.`
      : `WARNING: going on so, it leaves ${permitted} on ${outsideOn}${due === null ? '' : `, before it is due on ${due}`}.`,
    ...(warn ? ['Have the wrench checked now, or look who and what has changed since.'] : []),
  ];
}

const signed = (percent: number) => `${percent > 0 ? '+' : ''}${percent.toFixed(2)}`;

function sayLaboratory(found: CertificateLines, instrument: Instrument, used: number | null): void {
  const { before, tables, words } = laboratoryLines(found, instrument, used);
  print([before]);
  write([...tables, '']);
  print(words);
}

const drawingOf = ({ chart, days }: WrenchDrift, name: string, last: number): ControlDrawing =>
  ewmaDrawing(
    { ...chart, points: chart.points.slice(-last) },
    {
      title: `${name}, first pulls of a day against the middle of their limits`,
      unit: '%',
      labels: days.slice(-last).map(({ day }) => day),
    },
  );

async function writePictures(
  folder: string,
  chart: ControlDrawing | null,
  certificates: string | null,
): Promise<readonly string[]> {
  const files: (readonly [string, string])[] = [
    ...(chart === null ? [] : [['drift.svg', controlSvg(chart, PICTURE)] as const]),
    ...(certificates === null ? [] : [['certificates.svg', certificates] as const]),
  ];
  outputFolder(folder);
  for (const [name, content] of files) await writeWhole(join(folder, name), content);
  return files.map(([name]) => join(folder, name));
}

function print(lines: readonly string[]): void {
  const { width } = textSize();
  write(lines.flatMap((one) => wrapped(safeLine(one), width)));
}

const write = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);

function median(values: readonly number[]): number | null {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? null;
}

const sentence = ({ message, next }: Problem) =>
  `${message.charAt(0).toUpperCase()}${message.slice(1)}. ${next}`;

const noPulls = (): Problem => ({
  code: 'no-pulls',
  message: 'what a gauge reads says how the plugs are, not how the gauge is',
  next: 'Its certificates alone can show it.',
});

function nothingToSay(name: string, pulls: Problem, laboratory: Problem): ProblemError {
  return new ProblemError({
    code: pulls.code,
    where: name,
    message: `${pulls.message}; and ${laboratory.message}`,
    next: laboratory.next,
  });
}

import { join } from 'node:path';
import { GROUPINGS, type Grouping, type ProcessGroup, processGroups, valuesOf } from '../audit/capability.ts';
import { type DeliveredUnder, deliveredGaps } from '../audit/delivered.ts';
import { ProblemError } from '../problem.ts';
import { individualsDrawing, rangesDrawing } from '../report/charts/control.ts';
import { controlSvg } from '../report/charts/control-svg.ts';
import { controlText } from '../report/charts/control-text.ts';
import { histogramSvg } from '../report/charts/histogram-svg.ts';
import { histogramText } from '../report/charts/histogram-text.ts';
import type { TextSize } from '../report/charts/plain.ts';
import { figure } from '../report/figures.ts';
import { writePaper } from '../report/paper.ts';
import {
  chartTitle,
  GROUP_HEAD,
  groupLines,
  groupRow,
  type ProcessCharts,
  processCharts,
  processPaper,
  shareText,
  unitOf,
} from '../report/process.ts';
import { orThrow, type Result } from '../result.ts';
import { type Asked, filterOf } from './ask.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { outputFolder, writeWhole } from './output.ts';
import { speaksUtf8 } from './run.ts';
import { type Archive, stateOf } from './station.ts';
import { textTable } from './text-table.ts';
import { programVersion } from './version.ts';
import { type Whose, withArchive } from './whose.ts';

export interface CapabilityOptions extends Whose, Asked {
  readonly by: string;
  readonly specification?: string;
  readonly cylinder?: number;
  readonly gap?: true;
  /** Readings that the charts show, the newest. */
  readonly last: number;
  readonly out?: string;
}

const PICTURE = { width: 900, height: 320 } as const;

/** What the process can do: one specification in full with its charts, or all that match in a table. */
export function showCapability(options: CapabilityOptions): Promise<ExitCode> {
  return withArchive(options, async (archive) => {
    const groups = groupsOf(archive, options);
    const [only, ...others] = groups;
    if (only === undefined) throw nothingMatches();
    const simulated = groups.filter((group) => group.simulated);
    if (simulated.length > 0)
      print([
        `SIMULATED: ${simulated.length} of ${groups.length} groups; they say nothing about any engine.`,
      ]);
    // Simulated groups come last: one real group is shown in full whatever was played beside it.
    if (others.some((group) => group.simulated === only.simulated)) {
      print(textTable(GROUP_HEAD, groups.map(groupRow)));
      print(['', 'Its charts: name one by --specification, and a tool, a technician or a cylinder.']);
      if (options.out !== undefined) throw severalMatch(groups.length);
      return EXIT.done;
    }
    if (others.length > 0)
      print([`Left out here: ${others.length} SIMULATED with ${firstsOf(others)} first attempts.`, '']);
    const charts = processCharts(only, options.last);
    print(groupLines(only));
    print(['', ...histogramLines(only), '', ...chartLines(charts)]);
    if (options.out !== undefined) await writeFiles(options.out, archive, only, charts);
    return EXIT.done;
  });
}

function groupsOf({ log }: Archive, options: CapabilityOptions): readonly ProcessGroup[] {
  const { by, specification, cylinder, gap } = options;
  const rows = log.history.processOf({
    ...filterOf(options),
    ...(specification !== undefined && { specification }),
    quantity: gap === true ? 'length' : 'torque',
  });
  const wanted = cylinder === undefined ? rows : rows.filter((row) => row.cylinder === cylinder);
  return processGroups(wanted, groupingOf(by)).filter(
    ({ notOkAtWorst, product }) => notOkAtWorst.n + product.n > 0,
  );
}

const firstsOf = (groups: readonly ProcessGroup[]) =>
  groups.reduce((sum, { notOkAtWorst }) => sum + notOkAtWorst.n, 0);

function groupingOf(text: string): Grouping {
  const found = GROUPINGS.find((one) => one === text);
  if (found !== undefined) return found;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--by',
    message: `expected ${GROUPINGS.join(', ')}`,
    next: 'Leave it out to see one line a specification.',
  });
}

function histogramLines(group: ProcessGroup): readonly string[] {
  return histogramText(valuesOf(group.process.rows), limitsOf(group), captionOf(group), textSize());
}

function chartLines(charts: Result<ProcessCharts>): readonly string[] {
  if (!charts.ok) return [`No chart: ${charts.error.message}.`];
  const { individuals, caption } = charts.value;
  return [
    ...controlText(individualsDrawing(individuals, caption), textSize()),
    '',
    ...controlText(rangesDrawing(individuals, caption), textSize()),
  ];
}

const limitsOf = ({ lowerLimit, upperLimit }: ProcessGroup) => ({ lower: lowerLimit, upper: upperLimit });
const captionOf = (group: ProcessGroup) => ({ title: chartTitle(group), unit: unitOf(group) });

async function writeFiles(
  folder: string,
  archive: Archive,
  group: ProcessGroup,
  charts: Result<ProcessCharts>,
): Promise<void> {
  outputFolder(folder);
  const paper = processPaper(group, charts, {
    station: stateOf(archive).name,
    program: `plugmark ${programVersion()}`,
    madeAt: new Date().toISOString(),
  });
  const readings = valuesOf(group.process.rows);
  const files: (readonly [string, string | Uint8Array])[] = [
    ['capability.pdf', await writePaper(paper)],
    ['histogram.svg', histogramSvg(readings, limitsOf(group), captionOf(group), PICTURE)],
  ];
  if (charts.ok) {
    const { individuals, caption } = charts.value;
    files.push(
      ['individuals.svg', controlSvg(individualsDrawing(individuals, caption), PICTURE)],
      ['ranges.svg', controlSvg(rangesDrawing(individuals, caption), PICTURE)],
    );
  }
  for (const [name, content] of files) await writeWhole(join(folder, name), content);
  print(['', `Written: ${files.map(([name]) => join(folder, name)).join(', ')}`].map(safeLine));
}

/** Gaps of new plugs as they came out of the box, by part and lot. */
export function showDelivered(options: Whose & Asked): Promise<ExitCode> {
  return withArchive(options, ({ log: { history } }) => {
    const rows = history.attemptsOf({ ...filterOf(options), quantity: 'length' });
    const known = new Map<string, boolean>();
    const isNew = (key: string) => {
      const there = known.get(key) ?? history.setupOf(key).plug.condition !== 'used';
      known.set(key, there);
      return there;
    };
    const { under, simulated, simulatedLeftOut } = orThrow(deliveredGaps(rows, isNew));
    if (under.length === 0) throw nothingMatches();
    if (simulated) print(['SIMULATED: these say nothing about any plug.']);
    if (simulatedLeftOut > 0) print([`Left out: ${simulatedLeftOut} gaps of SIMULATED jobs.`]);
    for (const one of under) print(deliveredLines(one));
    return EXIT.done;
  });
}

function deliveredLines({ lowerLimit, upperLimit, lots }: DeliveredUnder): readonly string[] {
  const mm = (value: number | null) => (value === null ? '-' : figure(value, 'mm'));
  const cells = lots.map((lot) => [
    lot.part,
    lot.lot ?? '(none)',
    String(lot.n),
    String(lot.measured),
    mm(lot.meanMm),
    mm(lot.standardDeviationMm),
    mm(lot.smallestMm),
    mm(lot.largestMm),
    shareText(lot.outside),
    lot.outsideAtWorst.n === lot.outside.n ? '-' : shareText(lot.outsideAtWorst),
  ]);
  const head = [
    'part',
    'lot',
    'plugs',
    'measured',
    'mean',
    's',
    'smallest',
    'largest',
    'out of gap (95 %)',
    'at worst',
  ];
  return [
    `Gaps as delivered, limits ${figure(lowerLimit, 'mm')} to ${figure(upperLimit, 'mm')} mm`,
    ...textTable(head, cells),
    ...(lots.some(({ n, measured }) => measured < n)
      ? [
          'Plugs that were not measured were tried with wires; at worst: were those out that wires could not decide on.',
        ]
      : []),
  ];
}

export const textSize = (): TextSize => ({
  width: Math.min(process.stdout.columns ?? 80, 120),
  ascii: !speaksUtf8(),
});

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);

function nothingMatches(): ProblemError {
  return new ProblemError({
    code: 'nothing-matches',
    message: 'no attempt in the records matches this',
    next: 'Widen the period, or name less; "plugmark ask --attempts" shows what there is.',
  });
}

function severalMatch(count: number): ProblemError {
  return new ProblemError({
    code: 'several-match',
    where: '--out',
    message: `papers and pictures are of one group; ${count} match`,
    next: 'Name the specification, as above, and a tool, a technician or a cylinder.',
  });
}

import {
  GROUPINGS,
  type Grouping,
  type ProcessGroup,
  processGroups,
  valuesOf,
} from '../../audit/capability.ts';
import { ProblemError } from '../../problem.ts';
import { individualsDrawing, rangesDrawing } from '../../report/charts/control.ts';
import { controlText } from '../../report/charts/control-text.ts';
import { histogramText } from '../../report/charts/histogram-text.ts';
import type { TextSize } from '../../report/charts/plain.ts';
import { GROUP_HEAD, groupLines, groupRow, type ProcessCharts, processCharts } from '../../report/process.ts';
import type { Result } from '../../result.ts';
import { printJson } from '../answers/answer.ts';
import { groupsAnswered } from '../answers/process.ts';
import { speaksUtf8 } from '../bench/run.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { type Asked, filterOf } from './ask.ts';
import { captionOf, limitsOf, writeGroup, writeGroups } from './capability-files.ts';

export interface CapabilityOptions extends Scope, Asked {
  readonly per: string;
  readonly specification?: string;
  readonly cylinder?: number;
  readonly gap?: true;
  /** Readings that the charts show, the newest. */
  readonly last: number;
  readonly out?: string;
  readonly json?: true;
}

/** What the process can do: one specification in full with its charts, or all that match in a table. */
export function showCapability(options: CapabilityOptions): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const groups = groupsOf(stationFolder, options);
    const [only, ...others] = groups;
    if (only === undefined) {
      refuseUnknown(stationFolder, options.specification);
      if (options.out !== undefined) throw nothingMatches('--out');
      if (options.json === true) printJson(groupsAnswered([]));
      else print(['No attempt matches.']);
      return EXIT.done;
    }
    // Simulated groups come last: one real group is shown in full whatever was played beside it.
    const several = others.some((group) => group.simulated === only.simulated);
    const charts = processCharts(only, options.last);
    const written = await filesOf(stationFolder, several ? groups : only, options, charts);
    if (options.json === true) printJson(groupsAnswered(groups));
    else
      print([
        ...simulatedLines(groups),
        ...(several ? tableLines(groups, options) : groupAlone(only, others, charts)),
        ...written,
      ]);
    return EXIT.done;
  });
}

/** Writes what `--out` asks for; the lines that say so. */
async function filesOf(
  stationFolder: StationFolder,
  what: ProcessGroup | readonly ProcessGroup[],
  { out, last }: CapabilityOptions,
  charts: Result<ProcessCharts>,
): Promise<readonly string[]> {
  if (out === undefined) return [];
  if ('process' in what) return writeGroup(out, stationFolder, what, charts);
  return writeGroups(out, stationFolder, what, last);
}

function simulatedLines(groups: readonly ProcessGroup[]): readonly string[] {
  const simulated = groups.filter((group) => group.simulated).length;
  return simulated === 0
    ? []
    : [`SIMULATED: ${simulated} of ${groups.length} groups; they say nothing about any engine.`];
}

const tableLines = (groups: readonly ProcessGroup[], { out }: CapabilityOptions): readonly string[] => [
  ...textTable(GROUP_HEAD, groups.map(groupRow)),
  ...(out === undefined
    ? [
        '',
        'Its charts: name one with --specification, and a tool, a technician or a cylinder; or all of them with --out.',
      ]
    : []),
];

const groupAlone = (
  only: ProcessGroup,
  others: readonly ProcessGroup[],
  charts: Result<ProcessCharts>,
): readonly string[] => [
  ...(others.length === 0
    ? []
    : [`Left out here: ${others.length} SIMULATED with ${firstsOf(others)} first attempts.`, '']),
  ...groupLines(only),
  '',
  ...histogramLines(only),
  '',
  ...chartLines(charts),
];

function groupsOf({ log }: StationFolder, options: CapabilityOptions): readonly ProcessGroup[] {
  const { per, specification, cylinder, gap } = options;
  const rows = log.history.processOf({
    ...filterOf(options),
    ...(specification !== undefined && { specification }),
    quantity: gap === true ? 'length' : 'torque',
  });
  const wanted = cylinder === undefined ? rows : rows.filter((row) => row.cylinder === cylinder);
  return processGroups(wanted, groupingOf(per)).filter(
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
    where: '--per',
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
    '',
    charts.value.labels,
  ];
}

export const textSize = (): TextSize => ({
  width: Math.min(process.stdout.columns ?? 80, 120),
  ascii: !speaksUtf8(),
});

const nothingMatches = (where: string) =>
  new ProblemError({
    code: 'nothing-matches',
    where,
    message: 'no attempt in the records matches, so that there is nothing to write',
    next: 'Widen the period, or name less; "plugmark ask --attempts" shows what there is.',
  });

/** Throws where no specification has such a key, and says which there are. */
function refuseUnknown({ log }: StationFolder, specification: string | undefined): void {
  if (specification === undefined) return;
  const all = log.history.specifications();
  if (all.some(({ specificationKey }) => specificationKey.startsWith(specification.toLowerCase()))) return;
  const keys = all
    .slice(0, MOST_KEYS)
    .map(
      ({ specificationKey, setup }) =>
        `${specificationKey}${setup.engine === null ? '' : ` (${setup.engine})`}`,
    );
  const more = all.length > MOST_KEYS ? ` and ${all.length - MOST_KEYS} more` : '';
  throw new ProblemError({
    code: 'specification-unknown',
    where: '--specification',
    message: `no job was done by a specification whose key begins with "${specification}"`,
    next: keys.length === 0 ? 'No job has an attempt yet.' : `There are: ${keys.join(', ')}${more}.`,
  });
}

/** So many fit into a sentence. */
const MOST_KEYS = 8;

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
import { speaksUtf8 } from '../bench/run.ts';
import type { Asked } from '../declare/filters.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { filterOf } from './ask.ts';
import { captionOf, limitsOf, writeGroup, writeGroups } from './capability-files.ts';

export interface CapabilityOptions extends Scope, Asked {
  readonly by: string;
  readonly specification?: string;
  readonly cylinder?: number;
  readonly gap?: true;
  /** Readings that the charts show, the newest. */
  readonly last: number;
  readonly out?: string;
}

/** What the process can do: one specification in full with its charts, or all that match in a table. */
export function showCapability(options: CapabilityOptions): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const groups = groupsOf(stationFolder, options);
    const [only, ...others] = groups;
    if (only === undefined) {
      refuseUnknown(stationFolder, options.specification);
      if (options.out !== undefined) throw nothingMatches('--out');
      print(['No attempt matches.']);
      return EXIT.done;
    }
    const simulated = groups.filter((group) => group.simulated);
    if (simulated.length > 0)
      print([
        `SIMULATED: ${simulated.length} of ${groups.length} groups; they say nothing about any engine.`,
      ]);
    // Simulated groups come last: one real group is shown in full whatever was played beside it.
    if (others.some((group) => group.simulated === only.simulated)) {
      print(textTable(GROUP_HEAD, groups.map(groupRow)));
      if (options.out === undefined)
        print([
          '',
          'Its charts: name one by --specification, and a tool, a technician or a cylinder; or all of them with --out.',
        ]);
      else await writeGroups(options.out, stationFolder, groups, options.last);
      return EXIT.done;
    }
    if (others.length > 0)
      print([`Left out here: ${others.length} SIMULATED with ${firstsOf(others)} first attempts.`, '']);
    const charts = processCharts(only, options.last);
    print(groupLines(only));
    print(['', ...histogramLines(only), '', ...chartLines(charts)]);
    if (options.out !== undefined) await writeGroup(options.out, stationFolder, only, charts);
    return EXIT.done;
  });
}

function groupsOf({ log }: StationFolder, options: CapabilityOptions): readonly ProcessGroup[] {
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

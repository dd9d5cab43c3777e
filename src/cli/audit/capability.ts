import { GROUPINGS, type Grouping, type ProcessGroup, processGroups } from '../../audit/capability.ts';
import { ProblemError } from '../../problem.ts';
import { GROUP_HEAD, groupRow } from '../../report/process.ts';
import type { Asked } from '../declare/filters.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { filterOf } from './ask.ts';
import { workOf, writeGroup, writeGroups } from './capability-files.ts';
import { printPaper } from './papers.ts';

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
    // Simulated groups come last: one real group is shown in full whatever was simulated beside it.
    if (others.some((group) => group.simulated === only.simulated)) {
      const simulated = groups.filter((group) => group.simulated).length;
      if (simulated > 0)
        print([`SIMULATED: ${simulated} of ${groups.length} groups; they say nothing about an engine.`]);
      print(textTable(GROUP_HEAD, groups.map(groupRow)));
      if (options.out === undefined)
        print([
          '',
          'For charts name one group: --specification, and a tool, a technician or a cylinder. Or write all of them with --out.',
        ]);
      else await writeGroups(options.out, stationFolder, groups, options.last);
      return EXIT.done;
    }
    if (others.length > 0)
      print([
        `Left out: ${others.length} SIMULATED group${others.length === 1 ? '' : 's'} with ${firstsOf(others)} first attempts.`,
        '',
      ]);
    const work = workOf(stationFolder, only, options.last);
    printPaper(work.paper);
    if (options.out !== undefined) await writeGroup(options.out, work);
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
    next: 'Leave it out for one line a specification.',
  });
}

const nothingMatches = (where: string) =>
  new ProblemError({
    code: 'nothing-matches',
    where,
    message: 'no attempt matches, so there is nothing to write',
    next: 'Ask for a longer period, or for less; "plugmark ask --attempts" shows what there is.',
  });

/** Throws where no specification has such a key, and lists those that there are. */
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
    message: `no job used a specification whose key starts with "${specification}"`,
    next: keys.length === 0 ? 'No job has an attempt yet.' : `There are: ${keys.join(', ')}${more}.`,
  });
}

/** So many fit into a sentence. */
const MOST_KEYS = 8;

import { GROUPINGS, type Grouping, type ProcessGroup, processGroups } from '../../audit/capability.ts';
import type { Records } from '../../audit/records.ts';
import { marksOf } from '../../job/proof.ts';
import { ProblemError } from '../../problem.ts';
import { groupHead, groupNote, groupRow } from '../../report/process.ts';
import { MARK_WORD, marksText } from '../../report/words/index.ts';
import { plural, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { groupsAnswered } from '../answers/capability.ts';
import type { Asked } from '../declare/filters.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { readerOf } from '../station/paper-reader.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { filterOf } from './ask.ts';
import { type AskedScope, withRecords } from './asked.ts';
import { workOf, writeGroup, writeGroups } from './capability-files.ts';
import { printPaper } from './papers.ts';

export interface CapabilityOptions extends AskedScope, Asked, AudienceOptions {
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
  return withRecords(options, async ({ records, name }) => {
    const groups = await groupsOf(records, options);
    const [only, ...others] = groups;
    if (only === undefined) {
      await refuseUnknown(records, options.specification);
      if (options.out !== undefined) throw nothingMatches('--out');
      if (options.json === true) printJson(groupsAnswered([]));
      else print([w`No attempt matches.`]);
      return EXIT.done;
    }
    // Marked groups come last: one real group is shown in full whatever was simulated or replayed beside it.
    const several = others.some((group) => group.mark === only.mark);
    const work = () => workOf(name(), only, options.last);
    const reader = await readerOf(await audienceOf(options));
    const written =
      options.out === undefined
        ? []
        : several
          ? await writeGroups(options.out, groups, reader, (group) => workOf(name(), group, options.last))
          : await writeGroup(options.out, reader, work);
    if (options.json === true) printJson(groupsAnswered(groups));
    else {
      print(several ? tableLines(groups, options) : leftOutLines(others));
      if (!several) printPaper(work().paper);
      print(written);
    }
    return EXIT.done;
  });
}

async function groupsOf(records: Records, options: CapabilityOptions): Promise<readonly ProcessGroup[]> {
  const { per, specification, cylinder, gap } = options;
  const rows = await records.processOf({
    ...filterOf(options),
    ...(specification !== undefined && { specification }),
    quantity: gap === true ? 'length' : 'torque',
  });
  const wanted = cylinder === undefined ? rows : rows.filter((row) => row.cylinder === cylinder);
  return processGroups(wanted, groupingOf(per)).filter(
    ({ notOkAtWorst, product }) => notOkAtWorst.n + product.n > 0,
  );
}

function tableLines(groups: readonly ProcessGroup[], { out }: CapabilityOptions): readonly string[] {
  return [
    ...marksOf(groups.flatMap(({ mark }) => mark ?? [])).map((mark) => {
      const marked = groups.filter((group) => group.mark === mark).length;
      return w`${MARK_WORD[mark]}: ${marked} of ${groups.length} groups; they say nothing about an engine.`;
    }),
    ...textTable(groupHead(), groups.map(groupRow)),
    '',
    groupNote(),
    ...(out === undefined
      ? [
          '',
          w`For charts name one group: --specification, and a tool, a technician or a cylinder. Or write all of them with --out.`,
        ]
      : []),
  ];
}

const leftOutLines = (others: readonly ProcessGroup[]): readonly string[] =>
  others.length === 0
    ? []
    : [
        w`Left out: ${plural(others.length, { one: '# group', other: '# groups' })} (${marksText(marksOf(others.flatMap(({ mark }) => mark ?? [])))}) with ${plural(firstsOf(others), { one: '# first attempt', other: '# first attempts' })}.`,
        '',
      ];

const firstsOf = (groups: readonly ProcessGroup[]) =>
  groups.reduce((sum, { notOkAtWorst }) => sum + notOkAtWorst.n, 0);

function groupingOf(text: string): Grouping {
  const grouping = GROUPINGS.find((one) => one === text);
  if (grouping !== undefined) return grouping;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--per',
    message: w`expected ${GROUPINGS.join(', ')}`,
    next: w`Leave it out for one line a specification.`,
  });
}

const nothingMatches = (where: string) =>
  new ProblemError({
    code: 'nothing-matches',
    where,
    message: w`no attempt matches, so there is nothing to write`,
    next: w`Ask for a longer period, or for less; "plugmark ask --attempts" shows what there is.`,
  });

/** Throws where no specification has such a key, and lists those that there are. */
async function refuseUnknown(records: Records, specification: string | undefined): Promise<void> {
  if (specification === undefined) return;
  const all = await records.specifications();
  if (all.some(({ specificationKey }) => specificationKey.startsWith(specification.toLowerCase()))) return;
  const keys = all
    .slice(0, MOST_KEYS)
    .map(
      ({ specificationKey, setup }) =>
        `${specificationKey}${setup.engine === null ? '' : ` (${setup.engine})`}`,
    );
  const more = all.length > MOST_KEYS ? w` and ${all.length - MOST_KEYS} more` : '';
  throw new ProblemError({
    code: 'specification-unknown',
    where: '--specification',
    message: w`no job used a specification whose key starts with "${specification}"`,
    next: keys.length === 0 ? w`No job has an attempt yet.` : w`There are: ${keys.join(', ')}${more}.`,
  });
}

/** So many fit into a sentence. */
const MOST_KEYS = 8;

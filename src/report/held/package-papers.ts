/** The files for people in a package, beside the papers of its jobs, as its records and its station's entries give them. */
import { type ImpactAssessment, impactsOf } from '../../audit/impact-state.ts';
import type { SignedCheckpoint } from '../../evidence/checkpoint.ts';
import type { StationEntry } from '../../evidence/log.ts';
import { toHex } from '../../evidence/platform/bytes.ts';
import type { JobRecord } from '../../evidence/record.ts';
import { foldAll } from '../../job/fold.ts';
import type { PackageLog } from '../../package/checks.ts';
import { PACKAGE_FILES, type PackageIndex } from '../../package/format.ts';
import { vehiclesCsv } from '../impact-csv.ts';
import type { Paper } from '../paper.ts';
import type { PaperMakers } from './paper-makers.ts';

/** The file on a claim. */
export const DISPUTE_PAPER = 'dispute.pdf';

/** A file as its text, or as a paper that whoever draws makes of it. */
export interface ForPeople {
  readonly path: string;
  readonly content: ((papers: PaperMakers) => Paper) | string;
}

/** The impact assessments that touch these jobs, as "plugmark impact show --out" writes them. */
export function impactFiles(
  entries: readonly StationEntry[],
  jobs: ReadonlySet<string>,
  made: { readonly log: SignedCheckpoint; readonly program: string },
): readonly ForPeople[] {
  const context = { log: { size: made.log.size, root: toHex(made.log.root) }, program: made.program };
  const touches = ({ items }: ImpactAssessment) => items.some(({ job }) => jobs.has(job));
  return impactsOf(entries)
    .filter(touches)
    .flatMap((one) => {
      const stem = `${PACKAGE_FILES.impacts}/${one.assessment}`;
      return [
        { path: `${stem}.pdf`, content: (papers) => papers.impact(one, context) },
        { path: `${stem}.vehicles.csv`, content: vehiclesCsv(one) },
      ];
    });
}

/** The file on a claim, from the records of its package. */
export function disputeFile(
  index: PackageIndex,
  { checkpoint, entries }: PackageLog,
  records: readonly JobRecord[],
): ForPeople | null {
  const { claim, program, at, station: name } = index;
  const jobs = records
    .flatMap((record) => {
      const state = foldAll(record.entries.map(({ event }) => event));
      return state === null ? [] : [{ state, entries: record.entries }];
    })
    .sort((a, b) => (openedAt(a) < openedAt(b) ? -1 : openedAt(a) > openedAt(b) ? 1 : 0));
  if (claim === undefined || jobs.length === 0) return null;
  const content: ForPeople['content'] = (papers) =>
    papers.dispute({
      claim,
      jobs,
      station: { name, entries, impacts: impactsOf(entries) },
      log: { size: checkpoint.size, root: toHex(checkpoint.root) },
      program,
      madeAt: at,
    });
  return { path: DISPUTE_PAPER, content };
}

const openedAt = ({ entries }: { readonly entries: JobRecord['entries'] }) => entries[0]?.at ?? '';

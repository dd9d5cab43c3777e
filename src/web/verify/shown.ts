/** What the page shows, as plain data: the worker makes it, and every text in it is ready to be read. */
import type { Check } from '../../evidence/check.ts';
import type { Verdict } from '../../evidence/verdict.ts';
import type { ReportModel } from '../../report/model.ts';
import type { CylinderPlot } from '../../report/plots.ts';
import type { Verdict as PaperVerdict } from '../../report/verdict.ts';

/** How a verdict looks, beside its words: never colour alone. */
export type Tone = 'good' | 'caution' | 'bad';

export interface Verdicted {
  readonly file: string;
  readonly tone: Tone;
  /** `authentic, not complete`. */
  readonly word: string;
  readonly sentence: string;
}

export interface CheckShown {
  readonly outcome: Check['outcome'];
  readonly name: string;
  readonly text: string;
}

export interface RecordShown extends Verdicted {
  readonly kind: 'record';
  readonly verdict: Verdict;
  /** Job, station and signers, in a line; empty where the file cannot be read. */
  readonly about: string;
  readonly worth: string;
  /** What to do about a signer whom nobody trusts yet; empty for any other. */
  readonly advice: string;
  readonly checks: readonly CheckShown[];
  readonly log: string;
  readonly withheld: string;
  readonly notProven: readonly string[];
  /** Null where nothing of it is to be believed. */
  readonly job: JobShown | null;
}

/** What the paper of the job says, with what the page draws. */
export interface JobShown
  extends Pick<
    ReportModel,
    | 'job'
    | 'status'
    | 'outOfOrder'
    | 'jobFacts'
    | 'specificationFacts'
    | 'torqueWindow'
    | 'gapWindow'
    | 'exceptions'
    | 'around'
    | 'instruments'
    | 'proves'
    | 'cautions'
  > {
  /** Above everything where the figures prove nothing; else empty. */
  readonly stamp: string;
  readonly window: readonly string[];
  readonly cylinders: readonly CylinderShown[];
  readonly digest: string;
}

export interface CylinderShown {
  readonly cylinder: number;
  readonly verdict: PaperVerdict;
  readonly word: string;
  readonly plots: readonly CylinderPlot[];
  readonly attempts: readonly AttemptShown[];
}

export interface AttemptShown {
  /** ISO. */
  readonly at: string;
  readonly what: string;
  readonly value: string;
  readonly verdict: PaperVerdict;
  readonly word: string;
  readonly click: string;
  readonly quantity: 'gap' | 'torque';
  /** The figure that was judged; null where none was. */
  readonly judged: number | null;
}

/** One of several records. */
export interface RowShown {
  readonly file: string;
  readonly tone: Tone;
  readonly word: string;
  readonly job: string;
  readonly what: string;
}

export interface RecordsShown extends Verdicted {
  readonly kind: 'records';
  readonly rows: readonly RowShown[];
  readonly remarks: readonly string[];
}

export interface PackageShown extends Verdicted {
  readonly kind: 'package';
  readonly about: string;
  readonly advice: string;
  readonly checks: readonly CheckShown[];
  readonly questions: readonly string[];
  readonly leftOut: readonly string[];
  readonly withheld: string;
  readonly notProven: readonly string[];
  readonly rows: readonly RowShown[];
}

export type Shown = RecordShown | RecordsShown | PackageShown;

export interface TrustShown {
  readonly file: string;
  readonly keys: readonly { readonly name: string; readonly kid: string; readonly note: string }[];
}

/** Something that could not be used, and why: what is wrong, and what to do. */
export interface Refusal {
  readonly where: string;
  readonly what: string;
  readonly next: string;
}

export interface NamedFile {
  readonly path: string;
  readonly file: Blob;
}

/** What the reader has given so far. */
export interface HeldFiles {
  /** What is to be verified: a record, a PDF, an archive, or all files of a folder. */
  readonly subject: readonly NamedFile[];
  readonly trust: NamedFile | null;
  /** The checkpoint that the reader kept from before. */
  readonly kept: NamedFile | null;
  /** Proofs that a record is in a later log, and notes of witnesses. */
  readonly later: readonly NamedFile[];
  /** Which logs and witnesses the reader asks for. */
  readonly policy: NamedFile | null;
  /** A time stamp over the record, and the certificates that the reader believes its authority by. */
  readonly time: NamedFile | null;
  readonly authorities: NamedFile | null;
}

export const NOTHING_HELD: HeldFiles = {
  subject: [],
  trust: null,
  kept: null,
  later: [],
  policy: null,
  time: null,
  authorities: null,
};

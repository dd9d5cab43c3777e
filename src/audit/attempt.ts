/**
 * Attempts: the rows that questions to the records are asked of. A job's attempts follow from its entries alone, by the
 * same fold that shows the job on the screen; whatever a person said later about a pull is in them.
 */
import type { Evaluation, Judgement, Window } from '../metrology/judgement.ts';
import type { FigureSource } from '../reading.ts';
import type { PullKind } from '../sequence/kind.ts';

/**
 * Why an attempt has no value to compute with. `cut`: its samples broke off. `saturated`: the readings stood at the end of
 * the scale. `undecided`: nobody said what the pull was. `bounded`: wires told bounds and no figure.
 */
export type Censored = 'cut' | 'saturated' | 'undecided' | 'bounded';

/** One pull or gap reading that was given to a cylinder. Amounts in N·m (torque) or mm (length). */
export interface Attempt {
  /** The log entry that gave it to its cylinder, the last one where that changed. */
  readonly seq: number;
  /** When it was made; ISO, UTC. */
  readonly at: string;
  readonly quantity: 'torque' | 'length';
  readonly cylinder: number;
  /** Of the pull within the job, or of the reading. */
  readonly number: number;
  readonly tool: string;
  /** Where its figure came from: see src/job/proof.ts for what that is worth. */
  readonly source: FigureSource;
  /** Who worked on the job then. */
  readonly technician: string;
  readonly kind: PullKind | 'gap';
  /** Null where it was not judged. */
  readonly result: Evaluation | null;
  readonly side: Judgement['side'] | null;
  /** What the tool read; null for wires. */
  readonly readingSi: number | null;
  /** What was judged: corrected, at the plug. Of a pull that was cut or saturated what it came to at least, not judged. */
  readonly valueSi: number | null;
  readonly expanded: number | null;
  /** Standard uncertainty of the peak as the pull gives it, in the tool's own reading; null for gaps. */
  readonly peakStandardSi: number | null;
  /** The step of a two-step tightening that it was judged for; `final` for everything else. */
  readonly stage: 'first' | 'final';
  readonly censored: Censored | null;
  /** The first attempt on its plug: what the process does. Never one of a first step. */
  readonly first: boolean;
  /** The one that stands for the plug that is in the engine: what was delivered. */
  readonly last: boolean;
  /** It came before a step whose order the shop wants kept; `held`: one whose order is binding, so that it proves nothing. */
  readonly early: boolean;
  readonly held: boolean;
  readonly part: string;
  readonly lot: string | null;
}

/** An attempt with what its job and its tool add. */
export interface AttemptRow extends Attempt {
  readonly stream: string;
  readonly job: string;
  /** The day of `at`, and the day that the job's verdicts rest on. */
  readonly day: string;
  readonly on: string;
  readonly serial: string | null;
  /** Number of the calibration certificate that was in force; null where there was none. */
  readonly certificate: string | null;
  readonly lowerLimit: number;
  readonly upperLimit: number;
  /** The same for the same engine, thread, seat and specification. */
  readonly specificationKey: string;
  /** Names all that was frozen with the job: see `Setup`. */
  readonly setupKey: string;
  readonly vin: string | null;
  readonly plate: string | null;
  readonly fleet: string | null;
  readonly engine: string | null;
  /** A void job proves nothing about any engine. */
  readonly voided: boolean;
  /** The job is still open: nothing of it was delivered yet. */
  readonly open: boolean;
  /** Name of its station, where the records are of several. */
  readonly station?: string;
}

/** What of an attempt shows what a process can do: far less than all of it, of far more attempts. */
export type ProcessRow = Pick<
  AttemptRow,
  | 'stream'
  | 'day'
  | 'quantity'
  | 'cylinder'
  | 'tool'
  | 'serial'
  | 'technician'
  | 'result'
  | 'valueSi'
  | 'expanded'
  | 'stage'
  | 'censored'
  | 'first'
  | 'last'
  | 'lowerLimit'
  | 'upperLimit'
  | 'specificationKey'
  | 'engine'
  | 'source'
  | 'voided'
  | 'open'
>;

/** The window that an attempt was held against. */
export function windowOf(
  setup: {
    readonly torqueWindow: Window;
    readonly firstTorqueWindow: Window | null;
    readonly gapWindow: Window | null;
  },
  { quantity, stage }: Pick<Attempt, 'quantity' | 'stage'>,
): Window | null {
  if (quantity === 'length') return setup.gapWindow;
  return stage === 'first' ? setup.firstTorqueWindow : setup.torqueWindow;
}
